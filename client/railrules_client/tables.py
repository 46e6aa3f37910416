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

import csv
import importlib
import io
import re
from dataclasses import dataclass, field, replace
from html import escape
from pathlib import Path
from typing import TYPE_CHECKING, ClassVar, Literal, Protocol, TypeAlias, cast, get_args, get_origin

from msgspec import Struct, UnsetType
from msgspec.structs import fields

from railrules_client._generated import models
from railrules_client._quantities import Quantity
from railrules_client._units import label_of

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
    from os import PathLike

    import pandas as pd
    import polars as pl

Kind: TypeAlias = Literal["text", "number", "count", "flag"]
Cell: TypeAlias = "str | float | bool | None"
DECIMALS: dict[type[Struct], frozenset[str]] = {
    models.Cost: frozenset({"quantity", "price", "amount"}),
    models.Money: frozenset({"cost", "credit", "balance"}),
}
"""Fields that travel as decimal text, for exactness; in a table they are numbers."""
MOST_SHOWN = 200
"""Rows that a notebook shows."""
_KINDS: dict[object, Kind] = {str: "text", float: "number", int: "count", bool: "flag"}
_VERDICTS = {"passes": "\u2713 pass", "fails": "\u2717 FAIL", "not-checked": "\u2013 open"}
# a spreadsheet takes a cell that begins so for a formula; a quote in front keeps it text
_FORMULA = ("=", "+", "-", "@", "\t", "\r")
_POLARS = {"text": "String", "number": "Float64", "count": "Int64", "flag": "Boolean"}
_PANDAS = {"text": "object", "number": "float64", "count": "Int64", "flag": "boolean"}
_ARROW = {"text": "string", "number": "float64", "count": "int64", "flag": "bool_"}


class ArrowStream(Protocol):
    """Anything that hands out its rows by the Arrow PyCapsule interface."""

    def __arrow_c_stream__(self, requested_schema: object | None = None) -> object:
        """Return a capsule with a stream."""
        ...


@dataclass(frozen=True, slots=True)
class Column:
    """A column of a table.

    Attributes:
        name: its heading.
        kind: what its cells hold, where they hold anything.
        cells: its cells, None where nothing is known.
        units: the column that holds the units of its numbers; empty where they have none.
    """

    name: str
    kind: Kind
    cells: tuple[Cell, ...] = field(repr=False)
    units: str = ""


def shown(value: Cell, unit: str = "") -> str:
    """Return a cell for people: thousands set apart, two decimals, a unit behind it, a word for a verdict.

    >>> shown(12996.923, "lb"), shown(6498.0), shown(0.05237), shown("fails"), shown(None)
    ('12,996.92 lb', '6,498', '0.05237', '✗ FAIL', '')
    """
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, str):
        return _VERDICTS.get(value, value)
    # below a unit as many digits as tell it apart, above it two decimals, and none where they would be noughts
    figure = round(value, 2) if abs(value) >= 1 else value
    text = f"{figure:,.0f}" if figure == int(figure) else f"{figure:,.2f}" if abs(figure) >= 1 else f"{figure:.4g}"
    return f"{text} {label_of(unit)}".rstrip() if unit else text


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
        try:
            return _by_nanoarrow(self).__arrow_c_stream__(requested_schema)
        except ModuleNotFoundError as error:
            try:
                return _by_pyarrow(self).__arrow_c_stream__(requested_schema)
            except ModuleNotFoundError:
                raise ImportError("Arrow needs the extra `arrow`: pip install 'railrules-client[arrow]'") from error

    def to_pandas(self) -> pd.DataFrame:
        """Return a data frame of pandas (the extra `pandas`); what is not known is missing.

        Raises:
            ImportError: pandas is not installed.
        """
        library = cast("_Pandas", importlib.import_module("pandas"))
        return library.DataFrame(
            {column.name: library.Series(list(column.cells), dtype=_PANDAS[column.kind]) for column in self.columns}
        )

    def to_polars(self) -> pl.DataFrame:
        """Return a data frame of polars (the extra `polars`); what is not known is null.

        Raises:
            ImportError: polars is not installed.
        """
        library = importlib.import_module("polars")
        make = cast("_Polars", library)
        return make.DataFrame(
            [make.Series(column.name, list(column.cells), getattr(library, _POLARS[column.kind])) for column in self.columns]
        )

    # ------------------------------------------------------------ files

    def to_csv(self, path: str | PathLike[str] | None = None) -> str:
        """Return, and write where a path is given, comma-separated values (RFC 4180, UTF-8), numbers as exact as they are.

        Text that a spreadsheet would take for a formula gets a quote in front.

        Raises:
            OSError: the file cannot be written.
        """
        sheet = io.StringIO(newline="")
        writer = csv.writer(sheet, lineterminator="\r\n")
        writer.writerow(self.names)
        writer.writerows([_csv(cell) for cell in row] for row in self.rows())
        text = sheet.getvalue()
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


def plain(headings: Sequence[str], rows: Sequence[Sequence[str]], *, right: Sequence[int] = ()) -> str:
    """Return rows under their headings in columns for a terminal; the columns named in `right` are set to the right."""
    widths = [max(len(row[column]) for row in (headings, *rows)) for column in range(len(headings))]

    def line(cells: Sequence[str]) -> str:
        placed = (
            cell.rjust(width) if column in right else cell.ljust(width)
            for column, (cell, width) in enumerate(zip(cells, widths, strict=True))
        )
        return "  ".join(placed).rstrip()

    return "\n".join([line(headings), "  ".join("-" * width for width in widths), *(line(row) for row in rows)])


# ---------------------------------------------------------------- from answers


def _bare(kind: object) -> object:
    """Return a type without the arms that stand for nothing."""
    arms = [arm for arm in get_args(kind) if arm not in (UnsetType, type(None))]
    return arms[0] if len(arms) == 1 and len(arms) < len(get_args(kind)) else kind


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
    exact = DECIMALS.get(record, frozenset[str]())
    for item in fields(record):
        cells = [None if value is None else _known(cast("object", getattr(value, item.name))) for value in values]
        yield from _laid(prefix + item.encode_name, item.type, cells, decimal=item.name in exact)


def of(records: Iterable[Struct] | Struct, title: str = "") -> Table:
    """Return a table of records: a list inside an answer, answers of one kind, or one record as one row.

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
            single += _laid(name, item.type, [value], decimal=item.name in DECIMALS.get(type(record), ()))
    return {"result": Table("result", single), **found} if single else found


# ---------------------------------------------------------------- to files and libraries


def _csv(cell: Cell) -> str:
    if cell is None:
        return ""
    if isinstance(cell, bool):
        return "true" if cell else "false"
    if isinstance(cell, str):
        return f"'{cell}" if cell.startswith(_FORMULA) else cell
    return repr(cell)


class _Pandas(Protocol):
    def DataFrame(self, data: object) -> pd.DataFrame: ...  # noqa: N802  the library's name
    def Series(self, data: object, *, dtype: str) -> object: ...  # noqa: N802


class _Polars(Protocol):
    def DataFrame(self, data: object) -> pl.DataFrame: ...  # noqa: N802  the library's name
    def Series(self, name: str, values: object, dtype: object) -> object: ...  # noqa: N802


class _Function(Protocol):
    def __call__(self, *arguments: object, **named: object) -> object: ...


def _by_nanoarrow(table: Table) -> ArrowStream:
    library = importlib.import_module("nanoarrow")

    def call(name: str, *arguments: object, **named: object) -> object:
        return cast("_Function", getattr(library, name))(*arguments, **named)

    types = {column.name: call(_ARROW[column.kind]) for column in table.columns}
    children = [call("c_array", column.cells, types[column.name]) for column in table.columns]
    rows = call("c_array_from_buffers", call("struct", types), len(table), buffers=[None], children=children)
    return cast("ArrowStream", call("c_array_stream", call("Array", rows)))


def _by_pyarrow(table: Table) -> ArrowStream:
    library = importlib.import_module("pyarrow")

    def call(name: str, *arguments: object) -> object:
        return cast("_Function", getattr(library, name))(*arguments)

    columns = [call("array", column.cells, call(_ARROW[column.kind])) for column in table.columns]
    schema = call("schema", [call("field", column.name, call(_ARROW[column.kind])) for column in table.columns])
    return cast("ArrowStream", cast("_Function", library.Table.from_arrays)(columns, schema=schema))


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


def write_xlsx(path: str | PathLike[str], tables: Mapping[str, Table]) -> None:
    """Write a workbook (the extra `xlsx`), a sheet each table: headings that stay in sight, filters, numbers as numbers.

    Args:
        path: the file.
        tables: tables by the names of their sheets.

    Raises:
        ImportError: xlsxwriter is not installed.
        OSError: the file cannot be written.
    """
    library = importlib.import_module("xlsxwriter")
    Path(path).open("ab").close()  # the library tells a folder that is not there by an error of its own
    book = cast("_Book", cast("_Function", library.Workbook)(str(path), {"strings_to_formulas": False, "strings_to_urls": False}))
    bold = book.add_format({"bold": True, "bottom": 1})
    taken: set[str] = set()
    for name, table in tables.items():
        sheet = book.add_worksheet(_sheet_name(name, taken))
        sheet.write_row(0, 0, table.names, bold)
        for position, column in enumerate(table.columns):
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
        if len(table) and table.columns:
            sheet.autofilter(0, 0, len(table), len(table.columns) - 1)
    book.close()
