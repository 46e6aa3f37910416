"""Reading rulebook entries: of the built-in rulebook, and of a house that overrides them."""

from __future__ import annotations

import dataclasses
from typing import TYPE_CHECKING

from railrules_api.catalogue.model import plain
from railrules_api.catalogue.reading import (
    BadEntryError,
    id_of,
    number_of,
    provenance_of,
    refuse_unknown,
    text_of,
    to_si,
)
from railrules_api.catalogue.rulebook import Default, Given
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.kinds import Kind

if TYPE_CHECKING:
    from collections.abc import Container, Mapping

    from railrules_api.catalogue.model import Row, Table

_KEYS = frozenset({"id", "about", "value", "unit", "kind", "table", "words", "at_least", "at_most"})
_PROVENANCE = frozenset({"source", "where", "status", "also_in"})
HOUSE = "house-rulebook"
"""The source that a house's entry cites unless it names another."""


def _kind(entry: Mapping[str, object]) -> Kind | None:
    name = text_of(entry, "kind", required=False)
    if not name:
        return None
    try:
        return Kind(name)
    except ValueError as error:
        msg = f"kind {name!r} is unknown"
        raise BadEntryError(msg) from error


def _word(entry: Mapping[str, object], word: str, tables: Mapping[str, Table]) -> tuple[str, tuple[str, ...]]:
    table = text_of(entry, "table", required=False)
    listed = entry.get("words", [])
    if not isinstance(listed, list) or (table and listed):
        msg = "give one of table and words"
        raise BadEntryError(msg)
    if table and table not in tables:
        msg = f"table {table!r} is unknown"
        raise BadEntryError(msg)
    words = tuple(tables[table].rows) if table else tuple(map(str, listed))
    if words and word not in words:
        msg = f"value {word!r} is not " + (f"a row of {table}" if table else f"one of {', '.join(words)}")
        raise BadEntryError(msg)
    return table, words


def handbook_entry(entry: Mapping[str, object], tables: Mapping[str, Table], sources: Container[str], rulebook: str) -> Default:
    """Read one `[[default]]` block of the built-in rulebook.

    Its limits, in the unit of its value, bind whoever overrides it.

    Raises:
        BadEntryError: whatever is wrong with it.
    """
    refuse_unknown(entry, _KEYS | _PROVENANCE)
    name, meaning, kind = id_of(entry), text_of(entry, "about"), _kind(entry)
    provenance = provenance_of(entry, sources)
    unit = text_of(entry, "unit", required=False)
    raw = entry.get("value")
    if isinstance(raw, str) and kind is None:  # with a kind it is a number such as "4 1/2"
        if unit:
            msg = f"unit {unit!r} without a kind"
            raise BadEntryError(msg)
        table, words = _word(entry, text_of(entry, "value"), tables)
        return Default(
            id=name, about=meaning, si=raw, printed=raw, unit="", kind=None,
            provenance=provenance, rulebook=rulebook, table=table, words=words,
        )  # fmt: skip
    number, printed = number_of(raw)
    if kind is None and unit:
        msg = f"unit {unit!r} without a kind"
        raise BadEntryError(msg)

    def in_si(value: float) -> float:
        return to_si(value, unit, kind) if kind is not None else value

    lowest, highest = (in_si(number_of(entry[key])[0]) if key in entry else None for key in ("at_least", "at_most"))
    si = raw if kind is None and isinstance(raw, int) else in_si(number)
    if (lowest is not None and si < lowest) or (highest is not None and si > highest):
        msg = f"value {printed} is outside its own limits"
        raise BadEntryError(msg)
    return Default(
        id=name, about=meaning, si=si, printed=printed, unit=unit, kind=kind,
        provenance=provenance, rulebook=rulebook, at_least=lowest, at_most=highest,
    )  # fmt: skip


def house_provenance(entry: Mapping[str, object]) -> dict[str, object]:
    """Return a house's entry with the house as its source, where it names no other."""
    return dict(entry) if "source" in entry else {"source": HOUSE, "status": "common-practice", **entry}


def entries(base: Mapping[str, Default], own: Mapping[str, Mapping[str, Row]]) -> dict[str, Default]:
    """Return the entries a house starts from: words that name a pattern may name its own patterns too."""
    return {
        name: dataclasses.replace(entry, words=(*entry.words, *own[entry.table])) if entry.table in own else entry
        for name, entry in base.items()
    }


def overriding(entry: Mapping[str, object], known: Mapping[str, Default], sources: Container[str], rulebook: str) -> Default:
    """Read one `[[default]]` block of a house: id, value, unit, and where it stands in the house's own papers.

    Raises:
        BadEntryError: no such entry, another kind of value, or outside the limits.
    """
    refuse_unknown(entry, {"id", "value", "unit", *_PROVENANCE})
    name = id_of(entry)
    if name not in known:
        close = [other for other in known if plain(name) in plain(other)]
        msg = "no such entry in the built-in rulebook" + (f"; near: {', '.join(close[:3])}" if close else "")
        raise BadEntryError(msg)
    provenance = provenance_of(house_provenance(entry), sources)
    unit = text_of(entry, "unit", required=False)
    raw = entry.get("value")
    worded = isinstance(raw, str) and known[name].kind is None
    number, printed = (None, "") if worded else number_of(raw)
    word = text_of(entry, "value") if worded else None
    try:
        return known[name].replaced(Given(number=number, unit=unit, word=word, printed=printed), provenance, rulebook)
    except RefusedError as error:
        first = error.refusals[0]
        allowed = f"; allowed: {', '.join(first.allowed)}" if first.allowed else ""
        msg = f"{'/'.join(map(str, first.path))}: {first.reason}{allowed}"
        raise BadEntryError(msg) from error
