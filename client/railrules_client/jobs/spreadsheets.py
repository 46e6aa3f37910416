"""Cells of a CSV file or an XLSX workbook, as they stand: nothing is guessed, and what would be lost in reading is refused."""

from __future__ import annotations

import csv
import datetime as dt
import importlib
import io
import warnings
import zipfile
import zlib
from typing import TYPE_CHECKING, Final, NamedTuple, Protocol, TypeAlias, cast

from railrules_client.jobs.files import JobFileError

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from railrules_client.jobs.sources import Source

Value: TypeAlias = str | float | bool | None
"""What stands in a cell; None where nothing does."""

SEPARATORS: Final = (",", ";", "\t")
LARGEST_FILE: Final = 32 * 1024 * 1024
LARGEST_UNPACKED: Final = 64 * 1024 * 1024
MOST_ROWS: Final = 50_000
_ALPHABET: Final = 26
_BROKEN: Final = (
    OSError, ValueError, LookupError, TypeError, AttributeError, ArithmeticError, EOFError, RuntimeError, SyntaxError,
    zipfile.BadZipFile, zlib.error,
)  # fmt: skip
"""What a broken part of a workbook ends in, by the library and those that it rests on."""


class SpreadsheetError(JobFileError):
    """A table that cannot be read; the message names file, row and column."""


class Row(NamedTuple):
    """A row that is not blank, by the number that a spreadsheet shows beside it."""

    number: int
    cells: tuple[Value, ...]


class Grid(NamedTuple):
    """The rows of a file or sheet that are not blank."""

    name: str
    rows: tuple[Row, ...]


def letter(column: int) -> str:
    """Return the letters of a column counted from 0.

    >>> letter(0), letter(25), letter(26), letter(701), letter(702)
    ('A', 'Z', 'AA', 'ZZ', 'AAA')
    """
    letters = ""
    column += 1
    while column:
        column, rest = divmod(column - 1, _ALPHABET)
        letters = chr(ord("A") + rest) + letters
    return letters


def place(name: str, row: int, column: int) -> str:
    """Return where a cell stands, for a message."""
    return f"{name}, row {row}, column {letter(column)}"


def grids(path: Source) -> dict[str, Grid]:
    """Read a CSV file, whose stem names its one grid, or the sheets of an XLSX workbook.

    Raises:
        SpreadsheetError: the file is not there, too large, of another form, or a cell says less than it shows.
    """
    try:
        size = path.size()
    except OSError as error:
        raise SpreadsheetError(f"{path}: {error}") from error
    if size > LARGEST_FILE:
        raise SpreadsheetError(f"{path}: larger than {LARGEST_FILE // 2**20} MB")
    form = path.suffix
    if form in (".xlsx", ".xlsm"):
        return _workbook(path)
    if form in (".csv", ".tsv", ".txt"):
        return {path.stem: _separated(path)}
    raise SpreadsheetError(f"{path}: CSV or XLSX is wanted; save it as one of them")


# ---------------------------------------------------------------- CSV


def _decoded(path: Source) -> str:
    try:
        raw = path.read()
    except OSError as error:
        raise SpreadsheetError(f"{path}: {error}") from error
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        row = raw[: error.start].count(b"\n") + 1
        raise SpreadsheetError(f"{path.name}, row {row}: not UTF-8; save it as `CSV UTF-8`") from error
    if "\0" in text:
        raise SpreadsheetError(f"{path.name}: not UTF-8 text; save it as `CSV UTF-8`")
    return text


def _separator(text: str, name: str) -> str:
    """Return what parts the headings: no heading has one of the separators in it, so the one that is there is it."""
    headings = next((line for line in text.splitlines() if line.strip(' ,;\t"') and not line.lstrip(' "').startswith("#")), "")
    found = [separator for separator in SEPARATORS if separator in headings]
    if len(found) > 1:
        raise SpreadsheetError(f"{name}: the headings have more than one of comma, semicolon and tab between them")
    return found[0] if found else ","


def _separated(path: Source) -> Grid:
    text = _decoded(path)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=_separator(text, path.name), strict=True)
    rows: list[Row] = []
    number = 0
    try:
        for number, cells in enumerate(reader, 1):
            if any(cell.strip() for cell in cells):
                rows.append(Row(number, tuple(cell.strip() or None for cell in cells)))
            _refuse_too_long(path.name, number)
    except csv.Error as error:
        raise SpreadsheetError(f"{path.name}, row {number + 1}: {error}") from error
    return Grid(path.name, tuple(rows))


def _refuse_too_long(name: str, number: int) -> None:
    if number > MOST_ROWS:
        raise SpreadsheetError(f"{name}: more than {MOST_ROWS} rows")


# ---------------------------------------------------------------- XLSX


class _Cell(Protocol):
    """A cell as the library has it; the library itself has no types."""

    value: object
    data_type: str
    row: int
    column: int


class _Areas(Protocol):
    ranges: Iterable[object]


class _Sheet(Protocol):
    title: str
    merged_cells: _Areas

    def iter_rows(self) -> Iterable[tuple[_Cell, ...]]: ...
    def cell(self, row: int, column: int) -> _Cell: ...


class _Book(Protocol):
    worksheets: list[_Sheet]

    def __getitem__(self, title: str) -> _Sheet: ...


def _loader() -> Callable[..., _Book]:
    try:
        return cast("Callable[..., _Book]", importlib.import_module("openpyxl").load_workbook)
    except ModuleNotFoundError as error:
        raise SpreadsheetError(
            "XLSX files need the extra `xlsx`: install railrules-client[xlsx], or save the sheets as CSV"
        ) from error


def _workbook(path: Source) -> dict[str, Grid]:
    load = _loader()
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")  # about print settings and the like, which are not read here
            content = path.read()
            _refuse_too_large(content)
            values = load(io.BytesIO(content), data_only=True)
            formulas = load(io.BytesIO(content))
    except _BROKEN as error:
        raise SpreadsheetError(f"{path.name}: not a workbook that can be read: {error}") from error
    return {
        sheet.title: _sheet(f"{path.name}, sheet {sheet.title}", sheet, formulas[sheet.title])
        for sheet in values.worksheets
        if not sheet.title.startswith("#")
    }


def _refuse_too_large(content: bytes) -> None:
    """Refuse an archive that is small only as long as it is packed.

    Raises:
        ValueError: it is larger than a workbook that is read here.
    """
    with zipfile.ZipFile(io.BytesIO(content)) as archive:
        if sum(part.file_size for part in archive.infolist()) > LARGEST_UNPACKED:
            raise ValueError(f"unpacked it is larger than {LARGEST_UNPACKED // 2**20} MB")


def _sheet(name: str, sheet: _Sheet, formulas: _Sheet) -> Grid:
    if sheet.merged_cells.ranges:
        merged = min(str(area) for area in sheet.merged_cells.ranges)
        raise SpreadsheetError(f"{name}: cells {merged} are merged; give every row its own values")
    rows: list[Row] = []
    for number, cells in enumerate(sheet.iter_rows(), 1):
        _refuse_too_long(name, number)
        read = tuple(_cell(name, cell, formulas) for cell in cells)
        if any(value is not None for value in read):
            rows.append(Row(number, read))
    widest = max((_width(row) for row in rows), default=0)
    # a sheet is a rectangle: cells to the right of the last one that is filled anywhere are not there
    return Grid(name, tuple(Row(row.number, (row.cells + (None,) * widest)[:widest]) for row in rows))


def _width(row: Row) -> int:
    return max(position + 1 for position, value in enumerate(row.cells) if value is not None)


def _cell(name: str, cell: _Cell, formulas: _Sheet) -> Value:
    value, where = cell.value, place(name, cell.row, cell.column - 1)
    if value is None:
        if formulas.cell(cell.row, cell.column).data_type == "f":
            raise SpreadsheetError(f"{where}: a formula whose result is not in the file; open it, recalculate and save it")
        return None
    if cell.data_type == "e":
        raise SpreadsheetError(f"{where}: the cell shows the error {value}")
    if isinstance(value, (dt.date, dt.time, dt.timedelta)):
        raise SpreadsheetError(f"{where}: a date or time; spreadsheets make dates of entries like 12-6, so enter it as text")
    if isinstance(value, bool):
        return value
    if isinstance(value, (int, float)):
        return float(value)
    return str(value).strip() or None
