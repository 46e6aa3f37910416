"""Segments of a job from a spreadsheet: one row a segment, headings that are the paths of a segment's own fields.

    # decimal: point
    name,begin [mi],end [mi],rails,ties.spacing [in],old.section,new.section,curves [mi]
    Marl Pit to Cinder Road,12.0,14.6,both,19.5,90RA-A,115RE,12.42 to 12.71 2 deg left; 13.55 to 13.83 4 deg right

- A unit stands in the heading (`begin [mi]`) or in the cell (`12.0 mi`); where it stands in both it must be the same.
- The decimal sign is a point, and digits are not grouped, unless a row above the headings says `# decimal: comma` or
  `# thousands: comma` (point, space, apostrophe). What could be read in two ways is refused.
- Lists are numbered columns (`curves.1.begin`), one column (`curves`, `features`, `left_out`), or tables of their own named
  `curves`, `features`, `left_out`, `custom`, each row with the name of its `segment`.
- A cell left blank leaves the field out. A row may be `like` a row above it; the job file's table `[segment]` holds what all
  rows share. Both are overridden field by field.
- Blank rows are skipped. Everything else that does not fit is refused with its row and column.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from difflib import get_close_matches
from typing import TYPE_CHECKING, Final, cast

from railrules_client._generated.models import JobFeature, Length, Segment
from railrules_client._units import convert
from railrules_client.jobs.cells import SIGNS, CellError, Signs, nearest
from railrules_client.jobs.headings import Column, Steps, column_of
from railrules_client.jobs.shapes import slots_of
from railrules_client.jobs.spreadsheets import Grid, Row, SpreadsheetError, letter, place

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from msgspec import Struct

    from railrules_client.jobs.files import Tree

TABLE: Final = "segments"
LISTS: Final = {slot.name: slot.record for slot in slots_of(Segment) if slot.shape == "records" and slot.record is not None}
"""Lists of a segment that may stand in tables of their own, and their records."""
PLACED: Final = (*LISTS, "begin_closing", "end_closing")
"""What belongs to one place on the line and is never taken over from another segment."""
MOST_ERRORS: Final = 40
_STATED: Final = re.compile(r"^#\s*(?P<key>decimal|thousands)\s*[:=]\s*(?P<sign>\w+)\s*$", re.IGNORECASE)


@dataclass(slots=True)
class Errors:
    """What is wrong with a file, all of it together."""

    found: list[str] = field(default_factory=list[str])

    def add(self, where: str, what: str) -> None:
        """Note a fault and its place."""
        self.found.append(f"{where}: {what}")

    def stop(self) -> None:
        """Refuse the file if anything was found."""
        if self.found:
            more = len(self.found) - MOST_ERRORS
            raise SpreadsheetError("\n".join(self.found[:MOST_ERRORS]) + (f"\nand {more} more" if more > 0 else ""))


@dataclass(slots=True)
class Entry:
    """A row read: its tree, and where each of its values stands."""

    row: int
    tree: Tree
    places: dict[Steps, str]


def _is_remark(row: Row) -> bool:
    return isinstance(row.cells[0], str) and row.cells[0].startswith("#")


def signs_of(grid: Grid, errors: Errors) -> tuple[Signs, int]:
    """Return the signs that the rows above the headings state, and the position of the row of headings."""
    stated = {"decimal": ".", "thousands": ""}
    position = 0
    while position < len(grid.rows) and _is_remark(grid.rows[position]):
        row = grid.rows[position]
        position += 1
        found = _STATED.match(str(row.cells[0]))
        if found is None:
            continue
        key, sign = found["key"].lower(), found["sign"].lower()
        if sign not in SIGNS or (key == "decimal" and sign not in ("comma", "point")):
            errors.add(f"{grid.name}, row {row.number}", f"`{sign}` is no sign; one of {', '.join(SIGNS)}")
        else:
            stated[key] = SIGNS[sign]
    if stated["decimal"] == stated["thousands"]:
        errors.add(grid.name, "decimals and thousands cannot have the same sign")
    return Signs(stated["decimal"], stated["thousands"]), position


def _columns(grid: Grid, row: Row, record: type[Struct], own: Sequence[str], errors: Errors) -> list[Column]:
    columns: list[Column] = []
    seen: dict[Steps, int] = {}
    for position, text in enumerate(row.cells):
        where = place(grid.name, row.number, position)
        if text is None:
            filled = next((other.number for other in grid.rows if len(other.cells) > position and other.cells[position]), None)
            if filled is not None:
                errors.add(where, f"no heading, and row {filled} has something in this column")
            continue
        try:
            column = column_of(text, position, record, own)
        except CellError as error:
            errors.add(where, str(error))
            continue
        if column.steps in seen:
            errors.add(where, f"the same field as column {letter(seen[column.steps])}")
        seen[column.steps] = position
        columns.append(column)
    return columns


def put(tree: Tree, steps: Steps, value: object) -> None:
    """Put a value into a tree; entries of lists stand under their numbers until the row is whole."""
    at = cast("dict[str | int, object]", tree)
    for step in steps[:-1]:
        at = cast("dict[str | int, object]", at.setdefault(step, {}))
    at[steps[-1]] = value


def listed(tree: object) -> object:
    """Turn numbered entries into lists.

    Raises:
        CellError: a list has a gap.
    """
    if not isinstance(tree, dict):
        return tree
    entries = cast("dict[str | int, object]", tree)
    if entries and all(isinstance(key, int) for key in entries):
        missing = next((number for number in range(len(entries)) if number not in entries), None)
        if missing is not None:
            raise CellError(f"entry {missing + 1} of a list is blank and a later one is not")
        return [listed(entries[number]) for number in range(len(entries))]
    return {key: listed(value) for key, value in entries.items()}


def _entry(grid: Grid, row: Row, columns: Sequence[Column], signs: Signs, errors: Errors) -> Entry:
    entry = Entry(row.number, {}, {})
    for column in columns:
        cell = row.cells[column.position]
        if cell is None:
            continue
        where = place(grid.name, row.number, column.position)
        try:
            put(entry.tree, column.steps, column.value(cell, signs))
        except CellError as error:
            errors.add(f"{where} ({column.heading})", str(error))
        entry.places[column.steps] = f"{where} ({column.heading})"
    try:
        entry.tree = cast("Tree", listed(entry.tree))
    except CellError as error:
        errors.add(f"{grid.name}, row {row.number}", str(error))
    return entry


def entries_of(grid: Grid, record: type[Struct], own: Sequence[str], required: Sequence[str], errors: Errors) -> list[Entry]:
    """Read a grid row by row; wrong headings end the reading, since nothing below them can be trusted."""
    signs, position = signs_of(grid, errors)
    if position == len(grid.rows):
        errors.add(grid.name, "no headings")
    errors.stop()
    heading = grid.rows[position]
    columns = _columns(grid, heading, record, own, errors)
    by_name = {column.steps[0]: column for column in columns if len(column.steps) == 1}
    for name in required:
        if name not in by_name:
            errors.add(f"{grid.name}, row {heading.number}", f"no column `{name}`")
    errors.stop()
    width = len(heading.cells)
    entries: list[Entry] = []
    for row in grid.rows[position + 1 :]:
        if len(row.cells) != width:
            reason = f"{len(row.cells)} cells under {width} headings; a cell with the separator in it needs quotes"
            errors.add(f"{grid.name}, row {row.number}, column {letter(min(len(row.cells), width))}", reason)
            continue
        for name in required:
            if row.cells[by_name[name].position] is None:
                errors.add(f"{place(grid.name, row.number, by_name[name].position)} ({by_name[name].heading})", "blank")
        entries.append(_entry(grid, row, columns, signs, errors))
    return entries


# ---------------------------------------------------------------- segments


@dataclass(slots=True)
class SegmentTable:
    """Segments in the form of a request, and where each of their values stands in the files."""

    segments: list[Tree]
    places: dict[Steps, str]


def _merged(base: Mapping[str, object], over: Mapping[str, object]) -> Tree:
    merged = dict(base)
    for key, value in over.items():
        under = merged.get(key)
        both = isinstance(value, dict) and isinstance(under, dict) and "unit" not in value
        merged[key] = _merged(cast("Tree", under), cast("Tree", value)) if both else value
    return merged


def _metres(quantity: object) -> float | None:
    """Return a station in metres; None where it is not one, which is told elsewhere."""
    if isinstance(quantity, dict):
        told = cast("Tree", quantity)
        if told.get("unit") in Length.codes:
            return convert(cast("float", told["value"]), str(told["unit"]), "m")
    return None


def _refuse_backward(entry: Entry, errors: Errors) -> None:
    begin, end = _metres(entry.tree.get("begin")), _metres(entry.tree.get("end"))
    if begin is not None and end is not None and end <= begin:
        errors.add(entry.places["end",], "does not lie beyond the begin of its row: stations must rise")


def _refuse_behind(entry: Entry, line: Steps, reached: dict[Steps, tuple[float, int]], errors: Errors) -> None:
    """Refuse a row that begins before the one above it on the same line."""
    begin = _metres(entry.tree.get("begin"))
    if begin is None:
        return
    before = reached.get(line)
    if before is not None and begin < before[0]:
        errors.add(entry.places["begin",], f"lies before the begin of row {before[1]}: mile posts run backward")
    reached[line] = (begin, entry.row)


def _own_segments(entries: Sequence[Entry], shared: Mapping[str, object], grid: Grid, errors: Errors) -> dict[str, Tree]:
    """Give every row what it shares and what it is like; refuse names that stand twice and stations that run backward."""
    done: dict[str, Tree] = {}
    rows: dict[str, int] = {}
    reached: dict[Steps, tuple[float, int]] = {}
    for entry in entries:
        own = dict(entry.tree)
        name, like = own.get("name"), own.pop("like", None)
        _refuse_backward(entry, errors)
        base: Mapping[str, object] = shared
        if like is not None:
            like = str(like)
            if like not in done:
                near = get_close_matches(like, done, n=3)
                errors.add(entry.places["like",], f"no row above is named `{like}`; {nearest(near)}")
            base = {key: value for key, value in done.get(like, {}).items() if key not in PLACED}
        if not isinstance(name, str):
            continue
        if name in rows:
            errors.add(entry.places["name",], f"`{name}` is the name of row {rows[name]} already")
        rows[name] = entry.row
        segment = _merged(base, own)
        _refuse_behind(entry, (str(segment.get("track", "")), str(segment.get("rails", ""))), reached, errors)
        done[name] = segment
    if not entries:
        errors.add(grid.name, "no rows below the headings")
    return done


def _add_lists(tables: Mapping[str, Grid], segments: Mapping[str, Tree], table: SegmentTable, errors: Errors) -> None:
    """Add the rows of tables of their own to the lists of the segments that they name."""
    numbers = {name: number for number, name in enumerate(segments)}
    for list_name, grid in tables.items():
        record = LISTS[list_name]
        required = ("segment", "item") if list_name == "custom" else ("segment", "begin")
        own_lists = {name for name, segment in segments.items() if list_name in segment}
        reached: dict[Steps, tuple[float, int]] = {}
        for entry in entries_of(grid, record, ("segment",), required, errors):
            name = entry.tree.pop("segment", None)
            if name is None:
                continue
            name = str(name)
            if name not in segments:
                errors.add(
                    entry.places["segment",], f"no segment is named `{name}`; {nearest(get_close_matches(name, segments, n=3))}"
                )
                continue
            if name in own_lists:
                errors.add(entry.places["segment",], f"`{name}` has its {list_name} in its own row already")
                continue
            if record is not JobFeature or "end" in entry.tree:
                _refuse_backward(entry, errors)
            _refuse_behind(entry, (name,), reached, errors)
            own = cast("list[Tree]", segments[name].setdefault(list_name, []))
            _note(table, (TABLE, numbers[name], list_name, len(own)), entry, f"{grid.name}, row {entry.row}")
            own.append(entry.tree)


def _note(table: SegmentTable, at: Steps, entry: Entry, row: str) -> None:
    table.places[at] = row
    for steps, where in entry.places.items():
        table.places[*at, *steps] = where


def read(grid: Grid, tables: Mapping[str, Grid], shared: Mapping[str, object]) -> SegmentTable:
    """Read segments from a table, and their lists from further ones.

    Args:
        grid: the table of segments.
        tables: those of lists, by the name of the list.
        shared: fields of a segment that all rows have unless they say otherwise, in the form of a job file.

    Raises:
        SpreadsheetError: anything does not fit; the message names row and column, one line a fault.
    """
    errors = Errors()
    entries = entries_of(grid, Segment, ("like",), ("name", "begin", "end"), errors)
    segments = _own_segments(entries, shared, grid, errors)
    table = SegmentTable([], {})
    if not errors.found:  # a list can only be put to a row that was read
        for number, entry in enumerate(entries):
            _note(table, (TABLE, number), entry, f"{grid.name}, row {entry.row}")
        _add_lists(tables, segments, table, errors)
    errors.stop()
    table.segments = list(segments.values())
    return table
