"""Answers as tables: for people, spreadsheets, and the libraries that take Arrow.

    from railrules_client import tables

    tables.of(answer.result.orders).to_pandas()      # or .to_polars(), .to_csv("orders.csv")
    pyarrow.table(tables.of(answer.result.lines))    # whatever takes an Arrow stream takes a table as it is
    answer.to_xlsx("takeoff.xlsx")                   # every table of an answer, a sheet each

Each number stands in a column of its own, and beside it, under the same name and `_unit`, the code of its unit. Records inside
a row are laid flat, `check_verdict` for the `verdict` of its `check`; lists of words are joined by semicolons; lists of records
inside a row are tables of their own, so that they are left out. What is not known is empty, never zero.
"""

from __future__ import annotations

import re
from dataclasses import replace
from html import escape
from pathlib import Path
from typing import TYPE_CHECKING, ClassVar, Literal, cast, get_args, get_origin

from msgspec import Struct, UnsetType
from msgspec.structs import fields

from railrules_client._columns import Cell, Column, Kind, plain, shown
from railrules_client._quantities import Quantity
from railrules_client._table_files import csv_text, workbook
from railrules_client._table_libraries import arrow, pandas, polars

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
    from os import PathLike

    import pandas as pd
    import polars as pl

__all__ = ["MOST_SHOWN", "Cell", "Column", "Kind", "Table", "all_of", "of", "plain", "shown", "write_xlsx"]

MOST_SHOWN = 200
"""Rows that a notebook shows."""
_KINDS: dict[object, Kind] = {str: "text", float: "number", int: "count", bool: "flag"}


class Table:
    """Rows of one kind: what an answer lists, ready for whatever takes tables.

    Attributes:
        title: what it holds.
        columns: its columns, all of one length.
    """

    __slots__ = ("columns", "title")
    __hash__: ClassVar[None] = None  # type: ignore[assignment]  # pyright: ignore[reportIncompatibleMethodOverride]

    def __init__(self, title: str, columns: Iterable[Column]) -> None:
        """Put columns together.

        Raises:
            ValueError: they are of different lengths, or two have one name.
        """
        self.title: str = title
        self.columns: tuple[Column, ...] = tuple(columns)
        if len({len(column.cells) for column in self.columns}) > 1:
            raise ValueError(f"{title}: columns of different lengths")
        if len({column.name for column in self.columns}) < len(self.columns):
            raise ValueError(f"{title}: two columns of one name")

    def __len__(self) -> int:
        """Return the number of rows."""
        return len(self.columns[0].cells) if self.columns else 0

    def __iter__(self) -> Iterator[dict[str, Cell]]:
        """Yield the rows, each by its headings."""
        names = self.names
        for cells in self.rows():
            yield dict(zip(names, cells, strict=True))

    def __getitem__(self, name: str) -> Column:
        """Return a column by its name.

        Raises:
            KeyError: there is none.
        """
        for column in self.columns:
            if column.name == name:
                return column
        raise KeyError(name)

    def __eq__(self, other: object) -> bool:
        """Tell whether another table holds the same."""
        return isinstance(other, Table) and (self.title, self.columns) == (other.title, other.columns)

    def unit(self, column: Column, row: int) -> str:
        """Return the unit of a number; empty where it has none."""
        return str(self[column.units].cells[row] or "") if column.units else ""

    def where(self, wanted: Callable[[dict[str, Cell]], bool]) -> Table:
        """Return the rows that a function says yes to, each given by its headings."""
        kept = [number for number, row in enumerate(self) if wanted(row)]
        return Table(
            self.title,
            (replace(column, cells=tuple(column.cells[number] for number in kept)) for column in self.columns),
        )

    @property
    def names(self) -> tuple[str, ...]:
        """The headings."""
        return tuple(column.name for column in self.columns)

    def rows(self) -> Iterator[tuple[Cell, ...]]:
        """Yield the rows as tuples."""
        return zip(*(column.cells for column in self.columns), strict=True)

    # ------------------------------------------------------------ libraries

    def __arrow_c_stream__(self, requested_schema: object | None = None) -> object:
        """Hand the rows out as an Arrow stream, for polars, pandas, pyarrow, duckdb and others.

        Args:
            requested_schema: a schema that the taker would like better, as the Arrow PyCapsule interface has it.

        Raises:
            ImportError: neither nanoarrow (the extra `arrow`) nor pyarrow is installed.
        """
        return arrow(self.columns, requested_schema)

    def to_pandas(self) -> pd.DataFrame:
        """Return a data frame of pandas (the extra `pandas`); what is not known is missing.

        Raises:
            ImportError: pandas is not installed.
        """
        return pandas(self.columns)

    def to_polars(self) -> pl.DataFrame:
        """Return a data frame of polars (the extra `polars`); what is not known is null.

        Raises:
            ImportError: polars is not installed.
        """
        return polars(self.columns)

    # ------------------------------------------------------------ files

    def to_csv(self, path: str | PathLike[str] | None = None) -> str:
        """Return, and write where a path is given, comma-separated values (RFC 4180, UTF-8), numbers as exact as they are.

        Text that a spreadsheet would take for a formula gets a quote in front.

        Raises:
            OSError: the file cannot be written.
        """
        text = csv_text(self.columns)
        if path is not None:
            Path(path).write_text(text, encoding="utf-8", newline="")
        return text

    def to_xlsx(self, path: str | PathLike[str]) -> None:
        """Write a workbook with one sheet (the extra `xlsx`).

        Raises:
            ImportError: xlsxwriter is not installed.
            OSError: the file cannot be written.
        """
        write_xlsx(path, {self.title: self})

    # ------------------------------------------------------------ people

    def _for_people(self) -> Iterator[tuple[str, bool, list[str]]]:
        """Yield heading, whether it is numbers, and cells of each column that says anything; units stand behind their numbers."""
        beside = {column.units for column in self.columns}
        for column in self.columns:
            if column.name in beside or all(value is None or value == "" for value in column.cells):
                continue
            cells = [shown(value, self.unit(column, row)) for row, value in enumerate(column.cells)]
            yield column.name.replace("_", " "), column.kind in ("number", "count"), cells

    def __str__(self) -> str:
        """Return the table as plain text."""
        columns = list(self._for_people())
        if not columns:
            return f"{self.title}: nothing"
        return plain(
            [heading for heading, _, _ in columns],
            list(zip(*(cells for _, _, cells in columns), strict=True)),
            right=[number for number, (_, right, _) in enumerate(columns) if right],
        )

    def __repr__(self) -> str:
        """Return what it is, not what it holds."""
        return f"<Table {self.title!r}: {len(self)} rows of {', '.join(self.names)}>"[:1024]

    def _repr_html_(self) -> str:
        """Return the table for a notebook."""
        return self.to_html()

    def to_html(self) -> str:
        """Return the table as a piece of a page: units with numbers, verdicts as words."""
        columns = list(self._for_people())
        head = "".join(f'<th scope="col">{escape(heading)}</th>' for heading, _, _ in columns)
        body: list[str] = []
        for row in range(min(len(self), MOST_SHOWN)):
            cells = "".join(
                f'<td style="text-align:{"right" if right else "left"}">{escape(cells[row])}</td>' for _, right, cells in columns
            )
            body.append(f"<tr>{cells}</tr>")
        more = f"<p>and {len(self) - MOST_SHOWN:,} rows more</p>" if len(self) > MOST_SHOWN else ""
        caption = f'<caption style="text-align:left">{escape(self.title)}</caption>'
        return f"<table>{caption}<thead><tr>{head}</tr></thead><tbody>{''.join(body)}</tbody></table>{more}"


# ---------------------------------------------------------------- from answers


def _bare(kind: object) -> object:
    """Return a type without the arms that stand for nothing."""
    arms = [arm for arm in get_args(kind) if arm not in (UnsetType, type(None))]
    return arms[0] if len(arms) == 1 and len(arms) < len(get_args(kind)) else kind


def _decimals_of(record: type[Struct]) -> frozenset[str]:
    """Return the fields that travel as decimal text, for exactness; in a table they are numbers."""
    return cast("frozenset[str]", getattr(record, "decimal_fields", frozenset[str]()))


def _known(value: object) -> object:
    return None if isinstance(value, UnsetType) else value


def _laid(name: str, kind: object, values: list[object], *, decimal: bool = False) -> Iterator[Column]:
    """Yield the columns of one field."""
    kind = _bare(kind)
    if get_origin(kind) is Literal:
        kind = str if isinstance(get_args(kind)[0], str) else int
    if decimal:
        yield Column(name, "number", tuple(None if value is None else float(str(value)) for value in values))
    elif kind is float:
        yield Column(name, "number", tuple(None if value is None else float(cast("float", value)) for value in values))
    elif kind in _KINDS:
        yield Column(name, _KINDS[kind], cast("tuple[Cell, ...]", tuple(values)))
    elif isinstance(kind, type) and issubclass(kind, Quantity):
        measured = cast("list[Quantity[str] | None]", values)
        numbers = tuple(None if value is None else float(value.value) for value in measured)
        yield Column(name, "number", numbers, units=f"{name}_unit")
        yield Column(f"{name}_unit", "text", tuple(None if value is None else value.unit for value in measured))
    elif isinstance(kind, type) and issubclass(kind, Struct):
        yield from _flat(kind, cast("list[Struct | None]", values), f"{name}_")
    elif get_origin(kind) is list and get_args(kind)[0] in (str, int, float):
        lists = cast("list[list[object] | None]", values)
        yield Column(name, "text", tuple(None if value is None else "; ".join(map(str, value)) for value in lists))
    elif get_origin(kind) is dict:
        tables = cast("list[Mapping[str, object] | None]", values)
        for key in dict.fromkeys(key for value in tables for key in value or ()):
            yield from _laid(f"{name}_{key}", get_args(kind)[1], [None if value is None else value.get(key) for value in tables])


def _flat(record: type[Struct], values: Sequence[Struct | None], prefix: str = "") -> Iterator[Column]:
    """Yield the columns of a record's fields."""
    exact = _decimals_of(record)
    for item in fields(record):
        cells = [None if value is None else _known(cast("object", getattr(value, item.name))) for value in values]
        yield from _laid(prefix + item.encode_name, item.type, cells, decimal=item.name in exact)


def of(records: Iterable[Struct] | Struct, title: str = "") -> Table:
    """Return a table of records: a list inside an answer, answers of one kind, or one record as one row.

    >>> from railrules_client import models
    >>> of([models.Length(39, "ft"), models.Length(80, "ft")]).to_csv().splitlines()
    ['value,unit', '39.0,ft', '80.0,ft']

    Args:
        records: structs of one type.
        title: what they are; the name of their type when left out.

    Raises:
        TypeError: they are of several types.
    """
    rows = [records] if isinstance(records, Struct) else list(records)
    types = {type(row) for row in rows}
    if len(types) > 1:
        raise TypeError(f"records of one type are wanted, not {', '.join(sorted(kind.__name__ for kind in types))}")
    if not types:
        return Table(title, ())
    record = next(iter(types))
    return Table(title or _spaced(record.__name__), _flat(record, rows))


def _spaced(name: str) -> str:
    return re.sub(r"(?<=[a-z])(?=[A-Z])", " ", name).lower()


def _empty(kind: object, title: str) -> Table:
    """Return the table of a list that is empty, with its columns."""
    return Table(title, _flat(cast("type[Struct]", kind), ()))


def all_of(record: Struct, above: str = "") -> dict[str, Table]:
    """Return every table of a record, by name: its lists of records, and its own values as one row under `result`.

    Lists of records inside records are found too, `money_costs`; those inside lists are not.
    """
    found: dict[str, Table] = {}
    single: list[Column] = []
    for item in fields(record):
        value, kind = _known(cast("object", getattr(record, item.name))), _bare(item.type)
        name = above + item.encode_name
        if get_origin(kind) is list and isinstance(get_args(kind)[0], type) and issubclass(get_args(kind)[0], Struct):
            title = name.replace("_", " ")
            rows = cast("list[Struct]", value or [])
            found[name] = of(rows, title) if rows else _empty(get_args(kind)[0], title)
        elif isinstance(value, Struct) and not isinstance(value, Quantity):
            inner = all_of(value, f"{name}_")
            own = inner.pop("result", None)
            single += own.columns if own is not None else ()
            found |= inner
        else:
            single += _laid(name, item.type, [value], decimal=item.name in _decimals_of(type(record)))
    return {"result": Table("result", single), **found} if single else found


def write_xlsx(path: str | PathLike[str], tables: Mapping[str, Table]) -> None:
    """Write a workbook (the extra `xlsx`), a sheet each table: headings that stay in sight, filters, numbers as numbers.

    Args:
        path: the file.
        tables: tables by the names of their sheets.

    Raises:
        ImportError: xlsxwriter is not installed.
        OSError: the file cannot be written.
    """
    workbook(path, {name: table.columns for name, table in tables.items()})
