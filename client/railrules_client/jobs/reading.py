"""A whole job from its files: a job file, spreadsheets, or both together.

- `job.toml` (or `.json`): everything in one file.
- `job.toml` and a CSV file or workbook: the segments stand in the spreadsheet; the job file's table `[segment]` holds what all
  rows share.
- spreadsheets alone: a table (sheet, or CSV file) named `job` has the headings `field` and `value`, one row a field of the job by
  its path (`supply.tie_in`, `segment.rails` for what all segments share); tables named `allowances`, `packaging` and
  `prices.items` have a row an entry. A CSV file alone takes the fields of the job as arguments.
"""

from __future__ import annotations

from copy import deepcopy
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Final, cast

from railrules_client._errors import told
from railrules_client._generated.models import Segment, TakeoffRequest
from railrules_client.jobs.cells import CellError, Signs
from railrules_client.jobs.files import JobFileError, like, tree_of, with_quantities
from railrules_client.jobs.headings import column_of
from railrules_client.jobs.segments import LISTS, TABLE, Errors, entries_of, listed, put, signs_of
from railrules_client.jobs.segments import read as read_segments
from railrules_client.jobs.shapes import slots_of
from railrules_client.jobs.sources import File, Source
from railrules_client.jobs.spreadsheets import Grid, SpreadsheetError, grids, place

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence
    from os import PathLike

    from msgspec import Struct

    from railrules_client._errors import ProblemError
    from railrules_client.jobs.files import Tree
    from railrules_client.jobs.headings import Steps

JOB: Final = "job"
SHARED: Final = "segment"


def _entry_lists(record: type[Struct], above: tuple[str, ...] = ()) -> dict[str, type[Struct]]:
    """Return the lists of a job, other than its segments, that may stand in tables of their own."""
    found: dict[str, type[Struct]] = {}
    for slot in slots_of(record):
        if slot.record is None or (not above and slot.name == TABLE):
            continue
        if slot.shape == "records":
            found[".".join((*above, slot.name))] = slot.record
        elif not above:
            found |= _entry_lists(slot.record, (slot.name,))
    return found


ENTRIES: Final = _entry_lists(TakeoffRequest)
NAMES: Final = (TABLE, JOB, *LISTS, *ENTRIES)
"""Names that a table may have."""


@dataclass(frozen=True, slots=True)
class Job:
    """A job as it was read.

    Attributes:
        request: body of a takeoff request: `client.takeoffs.create(job.request)`.
        places: file, row and column of each value that came from a spreadsheet.
    """

    request: dict[str, object]
    places: Mapping[Steps, str] = field(default_factory=dict["Steps", str], repr=False)

    def where(self, pointer: str) -> str:
        """Return the file, row and column of a value, by its JSON pointer; empty where no spreadsheet has it."""
        steps: Steps = tuple(int(step) if step.isdecimal() else step for step in pointer.split("/")[1:])
        while steps:
            if steps in self.places:
                return self.places[steps]
            steps = steps[:-1]
        return ""

    def changed(self, changes: Mapping[str, str]) -> Job:
        """Return the job with some fields changed, to compare it with what it was.

        Args:
            changes: new values by the path of the field, both written as in a spreadsheet:
                `{"segments.*.new.section": "115RE", "temperatures.hottest_rail": "126 degF"}`. `*` stands for every entry of a
                list, a number for one, from 1.

        Raises:
            JobFileError: there is no such field or entry, or the value is none of its kind.
        """
        request = deepcopy(self.request)
        for path, value in changes.items():
            words = path.strip().split(".")
            try:
                column = column_of(".".join("1" if word == "*" else word for word in words), 0, TakeoffRequest, ())
                _change(request, words, column.value(value, Signs()))
            except CellError as error:
                raise JobFileError(f"{path}: {error}") from error
        return Job(request, self.places)

    def told(self, error: ProblemError) -> str:
        """Return what the service refused, each fault with its place in the files where it has one."""
        lines = [f"refused: {error.problem.detail}"]
        lines += [f"  {told(fault, self.where(fault.pointer))}" for fault in error.faults]
        return "\n".join(lines)


def _change(at: object, words: Sequence[str], value: object) -> None:
    """Put a value into a tree, in every place that a path names.

    Raises:
        CellError: an entry of a list is not there.
    """
    name, *below = words
    if isinstance(at, list):
        entries = cast("list[object]", at)
        numbers = range(len(entries)) if name == "*" else [int(name) - 1]
        if any(number >= len(entries) for number in numbers):
            raise CellError(f"there are {len(entries)} entries, and none of the number {name}")
        for number in numbers:
            if below:
                _change(entries[number], below, value)
            else:
                entries[number] = value
    elif isinstance(at, dict):
        fields = cast("Tree", at)
        if below:
            _change(fields.setdefault(name, [] if below[0] == "*" or below[0].isdecimal() else {}), below, value)
        else:
            fields[name] = value
    else:
        raise CellError(f"`{name}` has nothing to stand in")


def _tables(paths: Iterable[Source]) -> dict[str, Grid]:
    """Find the tables among files and sheets, by name."""
    found: dict[str, Grid] = {}
    for number, path in enumerate(paths):
        sheets = {name: grid for name, grid in grids(path).items() if grid.rows}
        if len(sheets) == 1 and number == 0 and next(iter(sheets)) not in NAMES:
            sheets = {TABLE: next(iter(sheets.values()))}  # the first file's only table is the segments, whatever its name
        for name, grid in sheets.items():
            if name not in NAMES:
                raise SpreadsheetError(
                    f"{grid.name}: a table is named {', '.join(NAMES)}; put # before the name of a sheet that is none"
                )
            if name in found:
                raise SpreadsheetError(f"{grid.name}: {found[name].name} holds the {name} already")
            found[name] = grid
    if TABLE not in found:
        raise SpreadsheetError("no table of segments among the files")
    return found


def _fields(grid: Grid) -> tuple[Tree, dict[Steps, str]]:
    """Read a table of the job's own fields.

    Raises:
        SpreadsheetError: anything does not fit.
    """
    errors = Errors()
    signs, position = signs_of(grid, errors)
    errors.stop()
    rows = grid.rows[position:]
    headings = tuple(str(cell).strip().casefold() for cell in rows[0].cells if cell is not None) if rows else ()
    if headings[:2] != ("field", "value"):
        raise SpreadsheetError(f"{grid.name}: a table of the job has the headings `field` and `value`")
    tree: Tree = {}
    places: dict[Steps, str] = {}
    for row in rows[1:]:
        name, cell = row.cells[0], row.cells[1] if len(row.cells) > 1 else None
        where = place(grid.name, row.number, 0)
        if name is None:
            errors.add(where, "no field")
            continue
        if cell is None:
            continue
        shared = str(name).startswith(f"{SHARED}.")
        own = str(name).removeprefix(f"{SHARED}.")
        try:
            column = column_of(own, 1, Segment if shared else TakeoffRequest, ())
        except CellError as error:
            errors.add(where, str(error))
            continue
        where = f"{place(grid.name, row.number, 1)} ({name})"
        steps: Steps = (SHARED, *column.steps) if shared else column.steps
        if steps in places:
            errors.add(where, f"the same field as {places[steps]}")
        try:
            put(tree, steps, column.value(cell, signs))
        except CellError as error:
            errors.add(where, str(error))
        places[steps] = where
    try:
        tree = cast("Tree", listed(tree))
    except CellError as error:
        errors.add(grid.name, str(error))
    errors.stop()
    return tree, places


def _add_entries(tree: Tree, places: dict[Steps, str], name: str, grid: Grid) -> None:
    errors = Errors()
    required = tuple(slot.name for slot in slots_of(ENTRIES[name]) if slot.name == "item")
    entries = entries_of(grid, ENTRIES[name], (), required, errors)
    steps: Steps = tuple(name.split("."))
    holder = tree
    for step in steps[:-1]:
        holder = cast("Tree", holder.setdefault(str(step), {}))
    if steps[-1] in holder:
        errors.add(grid.name, f"the job has {name} of its own already")
    errors.stop()
    holder[str(steps[-1])] = [entry.tree for entry in entries]
    for number, entry in enumerate(entries):
        places[*steps, number] = f"{grid.name}, row {entry.row}"
        for below, where in entry.places.items():
            places[*steps, number, *below] = where


def read(job: str | PathLike[str] | File, *tables: str | PathLike[str] | File, **fields: object) -> Job:
    """Read a job from its files.

    Args:
        job: a TOML or JSON file, or a spreadsheet (CSV, XLSX): its path, or a `File` that is in memory.
        *tables: spreadsheets with the segments and their lists.
        **fields: fields of the job, in place of what the files say: `name="North line"`, `units="si"`; `segment` holds what all
            rows of a spreadsheet share.

    Raises:
        JobFileError: a file cannot be read or does not fit; the message names file, row and column, one line a fault.
    """
    first, further = Source(job), [Source(table) for table in tables]
    tree: Tree = {}
    places: dict[Steps, str] = {}
    spoken = first.suffix in (".toml", ".json")
    sheets: dict[str, Grid] = {}
    if spoken:
        tree = tree_of(first)
        if further and TABLE in tree:
            raise JobFileError(f"{first}: has segments of its own; leave them out where a spreadsheet has them")
        sheets = _tables(further) if further else {}
    else:
        sheets = _tables([first, *further])
    if JOB in sheets:
        if spoken:
            raise JobFileError(f"{sheets[JOB].name}: {first.name} is the job already")
        tree, places = _fields(sheets.pop(JOB))
    tree |= fields
    if sheets:
        shared = tree.pop(SHARED, {})
        if not isinstance(shared, dict):
            raise JobFileError(f"{first}: `segment` must be a table with what all segments share")
        shared_places = {steps[1:]: where for steps, where in places.items() if steps[0] == SHARED}
        for name in ENTRIES:
            if name in sheets:
                _add_entries(tree, places, name, sheets[name])
        lists = {name: grid for name, grid in sheets.items() if name in LISTS}
        table = read_segments(sheets[TABLE], lists, cast("Tree", shared))
        tree[TABLE] = table.segments
        places |= table.places
        for number in range(len(table.segments)):
            for steps, where in shared_places.items():
                places.setdefault((TABLE, number, *steps), where)
    elif isinstance(tree.get(TABLE), list):
        tree[TABLE] = like(cast("list[object]", tree[TABLE]), first)
    request = with_quantities(tree, TakeoffRequest)
    return Job(cast("Tree", request), places)
