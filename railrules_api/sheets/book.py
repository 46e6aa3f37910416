"""A workbook under construction: typed cells, headings that stay in view, widths, print set-up, names for what may be changed."""

from __future__ import annotations

import io
import re
from dataclasses import dataclass, field
from datetime import UTC, datetime
from textwrap import wrap
from typing import TYPE_CHECKING, Any, Final, Literal

import xlsxwriter
from xlsxwriter.utility import xl_rowcol_to_cell

if TYPE_CHECKING:
    from collections.abc import Sequence

    from xlsxwriter.format import Format
    from xlsxwriter.worksheet import Worksheet

    from railrules_api.sheets.model import Block

_ANY_DAY: Final = datetime(2000, 1, 1, tzinfo=UTC).replace(tzinfo=None)
"""The date the file says it was made on: the same answer gives the same bytes."""
# a spreadsheet takes a cell that begins so for a formula once it is copied through text; a quote in front keeps it text
_FORMULA: Final = ("=", "+", "-", "@", "\t", "\r")
_NARROWEST, _WIDEST, _SMALL = 5, 32, 8
_LINE_HEIGHT, _HEAD_HEIGHT = 15, 46
_FROM_EDGE: Final = 0.42
"""Inches from the edge of the paper to the line at its head and its foot."""
_PAPER: Final = {"letter": 1, "A4": 9}
_NAME = re.compile(r"[^A-Za-z0-9_]")

_NUMBERS: Final = {"large": "#,##0.00", "middling": "0.0###", "small": "0.0#####"}
"""How a number is shown that is not whole, by its size; the cell holds all of it."""

Kind = Literal["text", "number", "whole", "share", "money"]


def text_of(value: str) -> str:
    """Return a text that no spreadsheet takes for a formula.

    >>> text_of("=1+1"), text_of("spikes")
    ("'=1+1", 'spikes')
    """
    return f"'{value}" if value.startswith(_FORMULA) else value


@dataclass(frozen=True, slots=True)
class Formula:
    """A live cell: the formula, and what the service answers for it."""

    text: str
    value: float | str


@dataclass(frozen=True, slots=True)
class Changeable:
    """A number that a person may change; `name` is what formulas may call it, empty for none."""

    value: float | None
    name: str = ""
    least: float = 0.0


Cell = str | int | float | bool | Formula | Changeable | None


@dataclass(frozen=True, slots=True)
class Column:
    """A column: its heading and what stands in it."""

    heading: str
    kind: Kind = "number"


def _shape(kind: Kind, value: float | str) -> str:
    """Return the number format of a cell."""
    if kind != "number" or isinstance(value, str):
        return "whole" if kind == "number" else kind
    if value == round(value):
        return "whole"
    return "large" if abs(value) >= 100.0 else "middling" if abs(value) >= 1.0 else "small"  # noqa: PLR2004  for the eye only


def _wide(value: float | str) -> int:
    """Return how many characters a cell takes as it is shown."""
    if isinstance(value, str):
        return len(value)
    if value == round(value):
        return len(f"{value:,.0f}")
    return len(f"{value:,.2f}") if abs(value) >= 1.0 else _SMALL


@dataclass(slots=True)
class Page:
    """A sheet of the workbook with its heading row."""

    sheet: Worksheet
    columns: tuple[Column, ...]
    row: int
    widths: list[int] = field(default_factory=list)
    widest: int = _WIDEST

    def place(self, column: str, row: int | None = None, *, fixed: bool = False) -> str:
        """Return the address of a cell by the heading of its column; the row being written unless another is named."""
        at = next(position for position, item in enumerate(self.columns) if item.heading == column)
        address: str = xl_rowcol_to_cell(self.row if row is None else row, at, row_abs=fixed, col_abs=fixed)
        return address


class Book:
    """A workbook in memory."""

    def __init__(self, names: Sequence[str], title: str, block: Block, decimals: int) -> None:
        """Begin a workbook.

        Args:
            names: of all its sheets, in the order in which they are read.
            title: what every printed page says at its head.
            block: title block.
            decimals: decimals of money.
        """
        self.buffer = io.BytesIO()
        # no text becomes a formula, a link or a number by its looks
        guarded = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
        self.file: Any = xlsxwriter.Workbook(self.buffer, guarded)
        self.file.set_properties({"title": title, "created": _ANY_DAY})
        self.title, self.block = title, block
        money = "#,##0" + ("." + "0" * decimals if decimals else "")
        shapes = {"text": "@", "flag": "General", "whole": "#,##0", "share": "0.0##%", "money": money, **_NUMBERS}
        self.plain: dict[str, Format] = {}
        self.input: dict[str, Format] = {}
        self.strong: dict[str, Format] = {}
        for kind, shape in shapes.items():
            base: dict[str, Any] = {"num_format": shape, "valign": "top"}
            if kind == "text":
                base |= {"text_wrap": True, "align": "left", "indent": 1}
            self.plain[kind] = self.file.add_format(base)
            self.input[kind] = self.file.add_format({**base, "bg_color": "#E8E8E8", "border": 1})
            self.strong[kind] = self.file.add_format({**base, "bold": True, "top": 1})
        self.front_money = self.file.add_format({"num_format": money, "align": "left", "indent": 1, "bold": True})
        above = {"bold": True, "text_wrap": True, "valign": "bottom", "bottom": 2}
        self.heading = self.file.add_format({**above, "align": "left", "indent": 1})
        self.number_heading = self.file.add_format({**above, "align": "right"})
        self.names: set[str] = set()
        self.sheets: dict[str, Worksheet] = {name: self.file.add_worksheet(name) for name in names}

    def page(self, name: str, about: str, columns: Sequence[Column], *, kept: int = 1, widest: int = _WIDEST) -> Page:
        """Begin a sheet: a line about it, then the headings, which stay in view with the first columns."""
        sheet = self.sheets[name]
        sheet.write_string(0, 0, text_of(about))
        for position, column in enumerate(columns):
            style = self.heading if column.kind == "text" else self.number_heading
            sheet.write_string(1, position, column.heading, style)
        sheet.set_row(1, _HEAD_HEIGHT)
        sheet.freeze_panes(2, kept)
        sheet.repeat_rows(1)
        sheet.set_landscape()
        sheet.set_paper(_PAPER[self.block.paper])
        sheet.fit_to_pages(1, 0)
        sheet.set_margins(left=0.5, right=0.5, top=0.85, bottom=0.75)
        head = f"{self.title}"[:100].replace("&", "&&")
        sheet.set_header(f"&L{head}&R{name}", {"margin": _FROM_EDGE})
        sheet.set_footer("&Rsheet &P of &N", {"margin": _FROM_EDGE})
        widths = [max([_NARROWEST, *(len(word) + 2 for word in column.heading.split())]) for column in columns]
        return Page(sheet, tuple(columns), 2, widths, widest)

    def add(self, page: Page, cells: Sequence[Cell], *, strong: bool = False) -> int:
        """Write a row; return its number."""
        longest = 1
        for position, (column, cell) in enumerate(zip(page.columns, cells, strict=True)):
            length = self._write(page, position, column.kind, cell, self.strong if strong else self.plain)
            page.widths[position] = max(page.widths[position], min(length + 2, page.widest))
            if isinstance(cell, str):
                longest = max(longest, len(wrap(cell, page.widest)))
        if longest > 1:  # no program that opens the file need measure the text
            page.sheet.set_row(page.row, _LINE_HEIGHT * longest)
        page.row += 1
        return page.row - 1

    def _write(self, page: Page, position: int, kind: Kind, cell: Cell, styles: dict[str, Format]) -> int:
        """Write a cell; return how many characters wide it is."""
        sheet, row = page.sheet, page.row
        if isinstance(cell, Changeable):
            return self._write_changeable(page, position, kind, cell)
        if cell is None:
            sheet.write_blank(row, position, None, styles[kind if kind != "number" else "whole"])
            return 0
        if isinstance(cell, Formula):
            sheet.write_formula(row, position, cell.text, styles[_shape(kind, cell.value)], cell.value)
            return _wide(cell.value)
        if isinstance(cell, bool):
            sheet.write_boolean(row, position, cell, styles["flag"])
            return 5
        if isinstance(cell, str):
            sheet.write_string(row, position, text_of(cell), styles[kind if kind == "text" else "whole"])
            return len(cell)
        sheet.write_number(row, position, cell, styles[_shape(kind, cell)])
        return _wide(cell)

    def _write_changeable(self, page: Page, position: int, kind: Kind, cell: Changeable) -> int:
        sheet = page.sheet
        if cell.value is None:
            sheet.write_blank(page.row, position, None, self.input[kind if kind != "number" else "whole"])
        else:
            sheet.write_number(page.row, position, cell.value, self.input[_shape(kind, cell.value)])
        sheet.data_validation(
            page.row, position, page.row, position,
            {"validate": "decimal", "criteria": ">=", "value": cell.least, "error_message": f"A number from {cell.least:g} up."},
        )  # fmt: skip
        if cell.name:
            at = xl_rowcol_to_cell(page.row, position, row_abs=True, col_abs=True)
            self.file.define_name(self._free(cell.name), f"={sheet.get_name()}!{at}")
        return 0 if cell.value is None else _wide(cell.value) + 1  # its border takes some

    def _free(self, wanted: str) -> str:
        """Return a name of cells that none has yet."""
        base = _NAME.sub("_", wanted)[:60]
        name, number = base, 1
        while name.lower() in self.names:
            number += 1
            name = f"{base}_{number}"
        self.names.add(name.lower())
        return name

    def close(self, page: Page) -> None:
        """Set the widths of a sheet that is written."""
        for position, width in enumerate(page.widths):
            page.sheet.set_column(position, position, width)

    def done(self) -> bytes:
        """Return the workbook."""
        self.file.close()
        return self.buffer.getvalue()
