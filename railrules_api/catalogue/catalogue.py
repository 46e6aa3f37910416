"""The catalogue as a whole: everything in `data/` by its id, and names that look like one."""

from __future__ import annotations

import difflib
from dataclasses import dataclass
from typing import TYPE_CHECKING

from railrules_api.catalogue.model import plain

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_api.catalogue.model import Item, Row, Source, Table
    from railrules_api.catalogue.outlines import RailProfile
    from railrules_api.catalogue.rulebook import Rulebook


@dataclass(frozen=True, slots=True, kw_only=True)
class Catalogue:
    """Everything in `data/`, read and checked.

    Attributes:
        version: edition of the data, and a short digest of its files.
        sources: documents by id.
        tables: tables by id.
        items: items by id.
        rulebook: the built-in rulebook.
        profiles: drawings of rail sections, and the outlines built from them, by the section's id.
    """

    version: str
    sources: Mapping[str, Source]
    tables: Mapping[str, Table]
    items: Mapping[str, Item]
    rulebook: Rulebook
    profiles: Mapping[str, RailProfile]

    def row(self, table: str, name: str, rulebook: Rulebook | None = None) -> Row | None:
        """Return a row by its exact id, a rulebook's own patterns first; None when there is none.

        Raises:
            KeyError: there is no such table.
        """
        own = rulebook.rows.get(table, {}).get(name) if rulebook else None
        return own or self.tables[table].rows.get(name)

    def near(self, table: str, name: str, most: int = 3) -> tuple[str, ...]:
        """Return ids of a table that look like a name, the best first.

        A row whose id or further name differs only in case, spaces or hyphens stands alone; then those that begin alike.

        Raises:
            KeyError: there is no such table.
        """
        ids = {plain(known): row.id for row in self.tables[table].rows.values() for known in (row.id, *row.also)}
        wanted = plain(name)
        if wanted in ids:
            return (ids[wanted],)
        longer = [known for known in ids if wanted and known.startswith(wanted)]
        close = difflib.get_close_matches(wanted, ids, n=2 * most, cutoff=0.5)
        return tuple(dict.fromkeys(ids[match] for match in (*longer, *close)))[:most]
