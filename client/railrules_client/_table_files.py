"""Tables as files: comma-separated values, and workbooks."""

from __future__ import annotations

import csv
import importlib
import io
import re
from pathlib import Path
from typing import TYPE_CHECKING, Protocol, cast

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from os import PathLike

    from railrules_client._columns import Cell, Column
    from railrules_client._table_libraries import Function

# a spreadsheet takes a cell that begins so for a formula; a quote in front keeps it text
_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def _csv(cell: Cell) -> str:
    if cell is None:
        return ""
    if isinstance(cell, bool):
        return "true" if cell else "false"
    if isinstance(cell, str):
        return f"'{cell}" if cell.startswith(_FORMULA) else cell
    return repr(cell)


def csv_text(columns: Sequence[Column]) -> str:
    """Return comma-separated values (RFC 4180); text that a spreadsheet would take for a formula gets a quote in front."""
    sheet = io.StringIO(newline="")
    writer = csv.writer(sheet, lineterminator="\r\n")
    writer.writerow([column.name for column in columns])
    writer.writerows([_csv(cell) for cell in row] for row in zip(*(column.cells for column in columns), strict=True))
    return sheet.getvalue()


class _Sheet(Protocol):
    def write_row(self, row: int, column: int, values: object, form: object) -> object: ...
    def write_string(self, row: int, column: int, value: str) -> object: ...
    def write_number(self, row: int, column: int, value: float) -> object: ...
    def write_boolean(self, row: int, column: int, value: bool) -> object: ...  # noqa: FBT001  the library's own
    def freeze_panes(self, row: int, column: int) -> object: ...
    def autofilter(self, top: int, left: int, bottom: int, right: int) -> object: ...
    def set_column(self, first: int, last: int, width: float) -> object: ...


class _Book(Protocol):
    def add_worksheet(self, name: str) -> _Sheet: ...
    def add_format(self, settings: Mapping[str, object]) -> object: ...
    def close(self) -> object: ...


def _sheet_name(title: str, taken: set[str]) -> str:
    """Return a name that a sheet may have: at most 31 characters, none of its special signs, each once."""
    plain_name = re.sub(r"[\[\]:*?/\\']", " ", title).strip()[:28] or "table"
    name, number = plain_name, 1
    while name.lower() in taken:
        number += 1
        name = f"{plain_name} {number}"
    taken.add(name.lower())
    return name


def workbook(path: str | PathLike[str], tables: Mapping[str, Sequence[Column]]) -> None:
    """Write a workbook (the extra `xlsx`), a sheet each table: headings that stay in sight, filters, numbers as numbers.

    Args:
        path: the file.
        tables: the columns of each sheet, by its name.

    Raises:
        ImportError: xlsxwriter is not installed.
        OSError: the file cannot be written.
    """
    library = importlib.import_module("xlsxwriter")
    Path(path).open("ab").close()  # the library tells a folder that is not there by an error of its own
    book = cast("_Book", cast("Function", library.Workbook)(str(path), {"strings_to_formulas": False, "strings_to_urls": False}))
    bold = book.add_format({"bold": True, "bottom": 1})
    taken: set[str] = set()
    for name, columns in tables.items():
        sheet = book.add_worksheet(_sheet_name(name, taken))
        sheet.write_row(0, 0, [column.name for column in columns], bold)
        for position, column in enumerate(columns):
            for row, value in enumerate(column.cells, 1):
                if isinstance(value, bool):
                    sheet.write_boolean(row, position, value)
                elif isinstance(value, str):
                    sheet.write_string(row, position, value)
                elif value is not None:
                    sheet.write_number(row, position, value)
            widest = max((len(str(value)) for value in column.cells[:500] if value is not None), default=0)
            sheet.set_column(position, position, min(60, max(len(column.name), widest) + 2))
        sheet.freeze_panes(1, 0)
        if columns and columns[0].cells:
            sheet.autofilter(0, 0, len(columns[0].cells), len(columns) - 1)
    book.close()
