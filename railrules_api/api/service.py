"""What a running service knows: catalogue, rulebooks, settings. Immutable, made once, handed to whoever needs it."""

from __future__ import annotations

from dataclasses import dataclass, field
from types import MappingProxyType
from typing import TYPE_CHECKING, Any

from railrules_api import __version__
from railrules_api.api.envelope import Citation, Versions
from railrules_api.catalogue import load, load_rulebook
from railrules_api.rules.ordering import ItemTerms

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping
    from pathlib import Path

    from railrules_api.catalogue.catalogue import Catalogue
    from railrules_api.catalogue.model import Item, Provenance
    from railrules_api.catalogue.rulebook import Rulebook


def setting(default: Any, about: str, *, unit: str = "", least: float = 0, most: float = 2**40) -> Any:  # noqa: ANN401  a field
    """Return a dataclass field that is a setting: its default, what it does, its unit and its limits."""
    return field(default=default, metadata={"about": about, "unit": unit, "least": least, "most": most})


@dataclass(frozen=True, slots=True, kw_only=True)
class Settings:
    """Limits that the HTTP edge keeps wherever it runs; `railrules-server serve --settings` tells them all."""

    max_body_bytes: int = setting(16 * 1024 * 1024, "largest request body read", unit="bytes", least=1024)
    max_items: int = setting(1_000_000, "most values in one request body, counted as commas", least=100)
    thread_above_bytes: int = setting(
        20_000, "requests with more body than this are worked in a thread, so that others are served meanwhile", unit="bytes"
    )


@dataclass(frozen=True, slots=True)
class Service:
    """The immutable context of every answer."""

    catalogue: Catalogue
    rulebooks: Mapping[str, Rulebook]
    settings: Settings

    @property
    def house(self) -> Rulebook:
        """The rulebook in force when a request names none: the last one loaded, else the built-in one."""
        return list(self.rulebooks.values())[-1]

    def terms(self, rulebook: Rulebook) -> Mapping[str, ItemTerms]:
        """Return how each item is ordered under a rulebook."""
        return {item.id: _terms(item, rulebook) for item in self.catalogue.items.values()}

    def versions(self, rulebook: Rulebook) -> Versions:
        """Return the versions that decide an answer."""
        return Versions(__version__, self.catalogue.version, f"{rulebook.id} {rulebook.edition}")

    def citation(self, source: str, where: str, status: str) -> Citation:
        """Return a place in a source, with the source's title."""
        return Citation(source, self.catalogue.sources[source].title, where, status)  # type: ignore[arg-type]

    def citation_of(self, provenance: Provenance) -> Citation:
        """Return where a value comes from."""
        source = self.catalogue.sources[provenance.source]
        return Citation(provenance.source, source.title, provenance.where, provenance.status)


def start(rulebook_files: Iterable[Path] = (), settings: Settings | None = None) -> Service:
    """Load the catalogue and the house's rulebooks.

    Raises:
        CatalogueError: a row of either is wrong.
    """
    catalogue = load()
    books = {catalogue.rulebook.id: catalogue.rulebook}
    for path in rulebook_files:
        book = load_rulebook(path, catalogue)
        books[book.id] = book
    return Service(catalogue, MappingProxyType(books), settings or Settings())


def _terms(item: Item, rulebook: Rulebook) -> ItemTerms:
    allowance = rulebook.defaults[f"allowance-{item.id}"].si
    assert not isinstance(allowance, str)
    return ItemTerms(
        item=item.id,
        title=item.title_plural,
        direction=item.direction,
        order_step=item.order_step,
        package=item.package.name if item.package else "",
        package_size=item.package.size if item.package else None,
        allowance=allowance,
    )
