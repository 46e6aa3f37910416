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
from typing import TYPE_CHECKING, Any, Final

from railrules_api.app import job_file
from railrules_api.app.cell_values import SIGNS, CellError, Signs, Tree, nearest
from railrules_api.app.segment_headings import Column, Steps, column_of
from railrules_api.app.spreadsheets import Grid, Row, SpreadsheetError, grids, letter, place
from railrules_api.domain.fields import slots_of
from railrules_api.domain.kinds import Kind
from railrules_api.rules.takeoff.job import Job, JobFeature, Segment
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence
    from pathlib import Path

TABLE: Final = "segments"
LISTS: Final = {slot.name: slot.record for slot in slots_of(Segment) if slot.shape == "records" and slot.record is not None}
"""Lists of a segment that may stand in tables of their own, and their records."""
PLACED: Final = (*LISTS, "begin_closing", "end_closing")
"""What belongs to one place on the line and is never taken over from another segment."""
MOST_ERRORS: Final = 40
_STATED: Final = re.compile(r"^#\s*(?P<key>decimal|thousands)\s*[:=]\s*(?P<sign>\w+)\s*$", re.IGNORECASE)


@dataclass(slots=True)
class _Errors:
    """What is wrong with a file, all of it together."""

    found: list[str] = field(default_factory=list)

    def add(self, where: str, what: str) -> None:
        self.found.append(f"{where}: {what}")

    def stop(self) -> None:
        """Refuse the file if anything was found."""
        if self.found:
            more = len(self.found) - MOST_ERRORS
            raise SpreadsheetError("\n".join(self.found[:MOST_ERRORS]) + (f"\nand {more} more" if more > 0 else ""))


@dataclass(slots=True)
class _Entry:
    """A row read: its tree, and where each of its values stands."""

    row: int
    tree: Tree
    places: dict[Steps, str]


def _is_remark(row: Row) -> bool:
    return isinstance(row.cells[0], str) and row.cells[0].startswith("#")


def _signs(grid: Grid, errors: _Errors) -> tuple[Signs, int]:
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


def _columns(grid: Grid, row: Row, record: type, own: Sequence[str], errors: _Errors) -> list[Column]:
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


def _put(tree: Tree, steps: Steps, value: Any) -> None:  # noqa: ANN401  a JSON tree
    """Put a value into a tree; entries of lists stand under their numbers until the row is whole."""
    at: Any = tree  # numbers stand for entries of lists until `_listed`
    for step in steps[:-1]:
        at = at.setdefault(step, {})
    at[steps[-1]] = value


def _listed(tree: Any) -> Any:  # noqa: ANN401  a JSON tree
    """Turn numbered entries into lists; refuse a list with a gap."""
    if not isinstance(tree, dict):
        return tree
    if tree and all(isinstance(key, int) for key in tree):
        missing = next((number for number in range(len(tree)) if number not in tree), None)
        if missing is not None:
            raise CellError(f"entry {missing + 1} of a list is blank and a later one is not")
        return [_listed(tree[number]) for number in sorted(tree)]
    return {key: _listed(value) for key, value in tree.items()}


def _entry(grid: Grid, row: Row, columns: Sequence[Column], signs: Signs, errors: _Errors) -> _Entry:
    entry = _Entry(row.number, {}, {})
    for column in columns:
        cell = row.cells[column.position]
        if cell is None:
            continue
        where = place(grid.name, row.number, column.position)
        try:
            _put(entry.tree, column.steps, column.value(cell, signs))
        except CellError as error:
            errors.add(f"{where} ({column.heading})", str(error))
        entry.places[column.steps] = f"{where} ({column.heading})"
    try:
        entry.tree = _listed(entry.tree)
    except CellError as error:
        errors.add(f"{grid.name}, row {row.number}", str(error))
    return entry


def _entries_of(grid: Grid, record: type, own: Sequence[str], required: Sequence[str], errors: _Errors) -> list[_Entry]:
    """Read a grid row by row; wrong headings end the reading, since nothing below them can be trusted."""
    signs, position = _signs(grid, errors)
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
    entries = []
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

    def where(self, pointer: str) -> str:
        """Return the file, row and column of a value of the job, by its JSON pointer; empty where it came from elsewhere."""
        steps: Steps = tuple(int(step) if step.isdecimal() else step for step in pointer.split("/")[1:])
        while steps:
            if steps in self.places:
                return self.places[steps]
            steps = steps[:-1]
        return ""


def _merged(base: Mapping[str, Any], over: Mapping[str, Any]) -> Tree:
    merged = dict(base)
    for key, value in over.items():
        both = isinstance(value, dict) and isinstance(merged.get(key), dict) and "unit" not in value
        merged[key] = _merged(merged[key], value) if both else value
    return merged


def _metres(quantity: object) -> float | None:
    """Return a station in metres; None where it is not one, which is told elsewhere."""
    if isinstance(quantity, dict) and quantity.get("unit") in UNITS[Kind.LENGTH]:
        return UNITS[Kind.LENGTH][quantity["unit"]].to_si(quantity["value"])
    return None


def _refuse_backward(entry: _Entry, errors: _Errors) -> None:
    begin, end = _metres(entry.tree.get("begin")), _metres(entry.tree.get("end"))
    if begin is not None and end is not None and end <= begin:
        errors.add(entry.places["end",], "does not lie beyond the begin of its row: stations must rise")


def _refuse_behind(entry: _Entry, line: Steps, reached: dict[Steps, tuple[float, int]], errors: _Errors) -> None:
    """Refuse a row that begins before the one above it on the same line."""
    begin = _metres(entry.tree.get("begin"))
    if begin is None:
        return
    before = reached.get(line)
    if before is not None and begin < before[0]:
        errors.add(entry.places["begin",], f"lies before the begin of row {before[1]}: mile posts run backward")
    reached[line] = (begin, entry.row)


def _own_segments(entries: Sequence[_Entry], shared: Mapping[str, Any], grid: Grid, errors: _Errors) -> dict[str, Tree]:
    """Give every row what it shares and what it is like; refuse names that stand twice and stations that run backward."""
    done: dict[str, Tree] = {}
    rows: dict[str, int] = {}
    reached: dict[Steps, tuple[float, int]] = {}
    for entry in entries:
        own = dict(entry.tree)
        name, like = own.get("name"), own.pop("like", None)
        _refuse_backward(entry, errors)
        base: Mapping[str, Any] = shared
        if like is not None:
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


def _add_lists(tables: Mapping[str, Grid], segments: Mapping[str, Tree], table: SegmentTable, errors: _Errors) -> None:
    """Add the rows of tables of their own to the lists of the segments that they name."""
    numbers = {name: number for number, name in enumerate(segments)}
    for list_name, grid in tables.items():
        record = LISTS[list_name]
        required = ("segment", "item") if list_name == "custom" else ("segment", "begin")
        own_lists = {name for name, segment in segments.items() if list_name in segment}
        reached: dict[Steps, tuple[float, int]] = {}
        for entry in _entries_of(grid, record, ("segment",), required, errors):
            name = entry.tree.pop("segment", None)
            if name is None:
                continue
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
            listed = segments[name].setdefault(list_name, [])
            _note(table, (TABLE, numbers[name], list_name, len(listed)), entry, f"{grid.name}, row {entry.row}")
            listed.append(entry.tree)


def _note(table: SegmentTable, at: Steps, entry: _Entry, row: str) -> None:
    table.places[at] = row
    for steps, where in entry.places.items():
        table.places[*at, *steps] = where


def _tables(paths: Iterable[Path]) -> tuple[Grid, dict[str, Grid]]:
    """Find the table of segments and the tables of their lists among files and sheets."""
    found: dict[str, Grid] = {}
    for number, path in enumerate(paths):
        sheets = {name: grid for name, grid in grids(path).items() if grid.rows}
        if len(sheets) == 1 and number == 0 and next(iter(sheets)) not in LISTS:
            sheets = {TABLE: next(iter(sheets.values()))}  # the first file's only table is the segments, whatever its name
        for name, grid in sheets.items():
            if name not in (TABLE, *LISTS):
                raise SpreadsheetError(
                    f"{grid.name}: a table is named {', '.join((TABLE, *LISTS))}; put # before the name of a sheet that is none"
                )
            if name in found:
                raise SpreadsheetError(f"{grid.name}: {found[name].name} holds the {name} already")
            found[name] = grid
    if TABLE not in found:
        raise SpreadsheetError("no table of segments among the files")
    return found.pop(TABLE), found


def read(paths: Sequence[Path], shared: Mapping[str, Any]) -> SegmentTable:
    """Read segments from a CSV file or a workbook, and their lists from further files or sheets.

    Args:
        paths: the file of segments first, then those of lists.
        shared: fields of a segment that all rows have unless they say otherwise, in the form of a job file.

    Raises:
        SpreadsheetError: anything does not fit; the message names row and column, one line a fault.
    """
    errors = _Errors()
    grid, tables = _tables(paths)
    entries = _entries_of(grid, Segment, ("like",), ("name", "begin", "end"), errors)
    segments = _own_segments(entries, shared, grid, errors)
    table = SegmentTable([], {})
    if not errors.found:  # a list can only be put to a row that was read
        for number, entry in enumerate(entries):
            _note(table, (TABLE, number), entry, f"{grid.name}, row {entry.row}")
        _add_lists(tables, segments, table, errors)
    errors.stop()
    table.segments = list(segments.values())
    return table


def job(path: Path, files: Sequence[Path]) -> tuple[Tree, SegmentTable]:
    """Read a job file whose segments stand in spreadsheets, as the body of a takeoff request.

    Raises:
        JobFileError: the job file cannot be read or has segments of its own, or a spreadsheet does not fit.
    """
    tree = job_file.read(path)
    if TABLE in tree:
        raise job_file.JobFileError(f"{path}: has segments of its own; leave them out where a spreadsheet has them")
    shared = tree.pop("segment", {})
    if not isinstance(shared, dict):
        raise job_file.JobFileError(f"{path}: `segment` must be a table with what all segments share")
    table = read(files, shared)
    tree[TABLE] = table.segments
    body = job_file.with_quantities(tree, Job)
    assert isinstance(body, dict)
    return body, table
