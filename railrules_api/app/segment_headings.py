"""Headings of a table of segments: paths of a segment's own fields, with or without a unit."""

from __future__ import annotations

import re
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache
from typing import TYPE_CHECKING, Any, Final

from railrules_api.app.cell_values import (
    IN_ONE_CELL,
    CellError,
    Signs,
    count,
    flag,
    nearest,
    plain_number,
    quantity,
    text_of,
    unit_code,
    word,
)
from railrules_api.domain.fields import Slot, slots_of
from railrules_api.domain.kinds import Kind
from railrules_api.rules.takeoff.job import Segment

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from railrules_api.app.spreadsheets import Value

Steps = tuple[str | int, ...]
"""Where a value stands in a segment: field names, and positions in lists."""
_HEADING: Final = re.compile(r"^(?P<path>[^\[\]()]+?)\s*(?:[\[(]\s*(?P<unit>[^\[\]()]+?)\s*[\])])?$")


@dataclass(frozen=True, slots=True)
class Column:
    """A column by its heading: where its cells go, and how they are read."""

    heading: str
    position: int
    steps: Steps
    unit: str
    slot: Slot | None

    def value(self, cell: Value, signs: Signs) -> Any:  # noqa: ANN401  a JSON tree
        """Return what a cell stands for, in its wire form."""
        if isinstance(cell, str) and cell.startswith("#") and cell.endswith(("!", "?", "#N/A")):
            raise CellError(f"the cell shows the error {cell}")
        slot = self.slot
        if slot is None or slot.shape == "text":
            return text_of(cell)
        if slot.shape == "records":
            return IN_ONE_CELL[slot.name](cell, self.unit, signs)
        if slot.shape == "quantity":
            assert slot.field.kind is not None
            return quantity(cell, slot.field.kind, self.unit, signs)
        if slot.shape == "word":
            return word(cell, slot.words)
        readers: dict[str, Callable[[], Any]] = {
            "number": lambda: plain_number(cell, signs),
            "count": lambda: count(cell, signs),
            "flag": lambda: flag(cell),
        }
        return readers[slot.shape]()


@cache
def paths_of(record: type, prefix: str = "") -> tuple[str, ...]:
    """Return the headings that a record's fields can have, N standing for the number of an entry."""
    found: list[str] = []
    for slot in slots_of(record):
        if slot.field.taken is not None and slot.field.taken.by != slot.name:
            found.append(prefix + slot.field.taken.by)
        if slot.record is None:
            found.append(prefix + slot.name)
        elif slot.shape == "record":
            found += paths_of(slot.record, f"{prefix}{slot.name}.")
        else:
            if not prefix and record is Segment and slot.name in IN_ONE_CELL:
                found.append(slot.name)
            found += paths_of(slot.record, f"{prefix}{slot.name}.N.")
    return tuple(dict.fromkeys(found))


def _resolved(record: type, words: Sequence[str]) -> tuple[Steps, Slot | None] | None:
    """Follow a heading's path through the fields of a record; None where it leads nowhere."""
    name, *rest = words
    slots = {slot.name: slot for slot in slots_of(record)}
    by_row = {slot.field.taken.by for slot in slots.values() if slot.field.taken is not None}
    if name in by_row and not rest:
        return (name,), None
    slot = slots.get(name)
    if slot is None:
        return None
    if slot.record is None:
        return ((name,), slot) if not rest else None
    steps: Steps = (name,)
    if slot.shape == "records":
        if not rest and record is Segment and name in IN_ONE_CELL:
            return (name,), slot
        if not rest or not rest[0].isdecimal() or not 1 <= int(rest[0]) <= slot.field.most_items:
            return None
        steps, rest = (name, int(rest[0]) - 1), rest[1:]
    below = _resolved(slot.record, rest) if rest else None
    return None if below is None else ((*steps, *below[0]), below[1])


def column_of(text: Value, position: int, record: type, own: Sequence[str]) -> Column:
    """Return the column that a heading asks for.

    Args:
        text: the heading.
        position: its position in the row.
        record: the record whose fields the columns are.
        own: further columns that hold text.

    Raises:
        CellError: it is no heading, names no field, or has a unit that does not measure it.
    """
    found = _HEADING.match(text_of(text))
    if found is None:
        raise CellError(f"`{text_of(text)}` is no heading of the form `field` or `field [unit]`")
    path = re.sub(r"[\s-]+", "_", found["path"].strip().casefold())
    unit = found["unit"] or ""
    resolved = ((path,), None) if path in own else _resolved(record, path.split("."))
    if resolved is None:
        below = [known for known in paths_of(record) if known.startswith(f"{path}.")]
        if below:
            raise CellError(f"`{path}` is a group of fields, so name one of them: {', '.join(below[:8])}")
        near = get_close_matches(re.sub(r"\.[0-9]+\.", ".N.", path), [*own, *paths_of(record)], n=4, cutoff=0.5)
        raise CellError(f"no field `{path}`; {nearest(near)}")
    steps, slot = resolved
    if unit:
        kind = None if slot is None else Kind.LENGTH if slot.shape == "records" else slot.field.kind
        if kind is None:
            raise CellError(f"`{path}` has no unit")
        unit_code(unit, kind)
    return Column(text_of(text), position, steps, unit, slot)
