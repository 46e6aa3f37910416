"""Headings of a table of segments: paths of a segment's own fields, with or without a unit."""

from __future__ import annotations

import re
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache
from typing import TYPE_CHECKING, Final, TypeAlias

from railrules_client._generated.models import Length, Segment
from railrules_client.jobs.cells import (
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
from railrules_client.jobs.shapes import Slot, slots_of

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from msgspec import Struct

    from railrules_client.jobs.spreadsheets import Value

Steps: TypeAlias = "tuple[str | int, ...]"
"""Where a value stands in a segment: field names, and positions in lists."""
MOST_NUMBERED: Final = 1000
"""Entries of a list in numbered columns at most: more columns than a spreadsheet is wide help nobody."""
_HEADING: Final = re.compile(r"^(?P<path>[^\[\]()]+?)\s*(?:[\[(]\s*(?P<unit>[^\[\]()]+?)\s*[\])])?$")


@dataclass(frozen=True, slots=True)
class Column:
    """A column by its heading: where its cells go, and how they are read."""

    heading: str
    position: int
    steps: Steps
    unit: str
    slot: Slot | None

    def value(self, cell: Value, signs: Signs) -> object:
        """Return what a cell stands for, in its wire form."""
        if isinstance(cell, str) and cell.startswith("#") and cell.endswith(("!", "?", "#N/A")):
            raise CellError(f"the cell shows the error {cell}")
        slot = self.slot
        if slot is None or slot.shape == "text":
            return text_of(cell)
        if slot.shape == "records":
            return IN_ONE_CELL[slot.name](cell, self.unit, signs)
        if slot.shape == "quantity":
            return quantity(cell, slot.codes, slot.kind, self.unit, signs)
        if slot.shape == "word":
            return word(cell, slot.words)
        readers: dict[str, Callable[[], object]] = {
            "number": lambda: plain_number(cell, signs),
            "count": lambda: count(cell, signs),
            "flag": lambda: flag(cell),
            "texts": lambda: [word.strip() for word in text_of(cell).split(";") if word.strip()],
        }
        return readers[slot.shape]()


@cache
def paths_of(record: type[Struct], prefix: str = "") -> tuple[str, ...]:
    """Return the headings that a record's fields can have, N standing for the number of an entry."""
    found: list[str] = []
    for slot in slots_of(record):
        if slot.record is None:
            found.append(prefix + slot.name)
        elif slot.shape == "record":
            found += paths_of(slot.record, f"{prefix}{slot.name}.")
        else:
            if not prefix and record is Segment and slot.name in IN_ONE_CELL:
                found.append(slot.name)
            found += paths_of(slot.record, f"{prefix}{slot.name}.N.")
    return tuple(dict.fromkeys(found))


def _resolved(record: type[Struct], words: Sequence[str]) -> tuple[Steps, Slot | None] | None:
    """Follow a heading's path through the fields of a record; None where it leads nowhere."""
    name, *rest = words
    slots = {slot.name: slot for slot in slots_of(record)}
    slot = slots.get(name)
    if slot is None:
        return None
    if slot.record is None:
        return ((name,), slot) if not rest else None
    steps: Steps = (name,)
    if slot.shape == "records":
        if not rest and record is Segment and name in IN_ONE_CELL:
            return (name,), slot
        if not rest or not rest[0].isdecimal() or not 1 <= int(rest[0]) <= MOST_NUMBERED:
            return None
        steps, rest = (name, int(rest[0]) - 1), rest[1:]
    below = _resolved(slot.record, rest) if rest else None
    return None if below is None else ((*steps, *below[0]), below[1])


def column_of(text: Value, position: int, record: type[Struct], own: Sequence[str]) -> Column:
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
        if slot is None or slot.shape not in ("quantity", "records"):
            raise CellError(f"`{path}` has no unit")
        units, kind = (Length.codes, "length") if slot.shape == "records" else (slot.codes, slot.kind)
        unit_code(unit, units, kind)
    return Column(text_of(text), position, steps, unit, slot)
