"""What every answer can do with itself: tables, data frames, files, and a page in a notebook."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING, ClassVar, cast

from msgspec import Struct

if TYPE_CHECKING:
    from os import PathLike

    import pandas as pd
    import polars as pl

    from railrules_client.tables import Table

_MAIN = ("orders", "lines", "checks", "rows")
"""The table that an answer is about, where it has one of these; else its first, or its single values."""
_SHOWN = ("orders", "checks", "lines", "money_costs")


class Answered(Struct, frozen=True, kw_only=True):
    """An answer of the service, or a part of one.

    Attributes:
        decimal_fields: fields that travel as decimal text, for exactness.
    """

    decimal_fields: ClassVar[frozenset[str]] = frozenset()

    def to_tables(self) -> dict[str, Table]:
        """Return every table in it, by name: the lists of records, and the single values as one row under `result`."""
        from railrules_client.tables import all_of  # noqa: PLC0415  most scripts want no table

        result: object = getattr(self, "result", None)
        return all_of(result if isinstance(result, Struct) else self)

    def to_table(self, name: str = "") -> Table:
        """Return one table of it.

        Args:
            name: which; when left out, what it is about: orders, else lines, checks, rows, else what comes first.

        Raises:
            KeyError: it has no such table.
        """
        found = self.to_tables()
        if not name:
            name = next((main for main in _MAIN if main in found), "") or next(iter(found), "")
        if name not in found:
            raise KeyError(f"no table {name!r}; there are {', '.join(found)}")
        return found[name]

    def to_pandas(self, name: str = "") -> pd.DataFrame:
        """Return one table of it as a data frame of pandas; see `to_table`.

        Raises:
            KeyError: it has no such table.
            ImportError: pandas is not installed.
        """
        return self.to_table(name).to_pandas()

    def to_polars(self, name: str = "") -> pl.DataFrame:
        """Return one table of it as a data frame of polars; see `to_table`.

        Raises:
            KeyError: it has no such table.
            ImportError: polars is not installed.
        """
        return self.to_table(name).to_polars()

    def to_csv(self, path: str | PathLike[str] | None = None, name: str = "") -> str:
        """Return, and write where a path is given, one table of it as comma-separated values; see `to_table`.

        Raises:
            KeyError: it has no such table.
            OSError: the file cannot be written.
        """
        return self.to_table(name).to_csv(path)

    def to_xlsx(self, path: str | PathLike[str]) -> None:
        """Write a workbook with every table of it, a sheet each.

        Raises:
            ImportError: xlsxwriter is not installed.
            OSError: the file cannot be written.
        """
        from railrules_client.tables import write_xlsx  # noqa: PLC0415  most scripts want no workbook

        write_xlsx(path, self.to_tables())

    def __arrow_c_stream__(self, requested_schema: object | None = None) -> object:
        """Hand what it is about out as an Arrow stream; see `to_table`.

        Raises:
            ImportError: neither nanoarrow (the extra `arrow`) nor pyarrow is installed.
        """
        return self.to_table().__arrow_c_stream__(requested_schema)

    def _repr_html_(self) -> str:
        """Return it for a notebook."""
        return self.to_html()

    def to_html(self) -> str:
        """Return it as a piece of a page: what it answers, the values and tables, cautions and sources."""
        from railrules_client.tables import shown  # noqa: PLC0415  most scripts have no notebook

        found = self.to_tables()
        title = str(getattr(self, "title", "") or type(self).__name__)
        parts = [f"<h4>{escape(title)}</h4>"]
        single = found.pop("result", None)
        if single is not None:
            beside = {column.units for column in single.columns}
            rows = "".join(
                f'<tr><th scope="row" style="text-align:left">{escape(column.name.replace("_", " "))}</th>'
                f"<td>{escape(shown(column.cells[0], single.unit(column, 0)))}</td></tr>"
                for column in single.columns
                if column.name not in beside and column.cells[0] is not None
            )
            parts.append(f"<table><tbody>{rows}</tbody></table>")
        chosen = [name for name in _SHOWN if name in found] or list(found)[:3]
        parts += [found[name].to_html() for name in chosen if len(found[name])]
        others = [name for name in found if name not in chosen]
        if others:
            parts.append(f"<p>Also <code>to_table(name)</code> of {escape(', '.join(others))}.</p>")
        for caution in cast("list[Struct]", getattr(self, "cautions", [])):
            parts.append(f"<p><strong>Caution.</strong> {escape(str(getattr(caution, 'text', '')))}</p>")
        for source in cast("list[Struct]", getattr(self, "sources", [])):
            told = ", ".join(str(getattr(source, name, "")) for name in ("title", "where", "status"))
            parts.append(f"<p><small>{escape(told)}</small></p>")
        return "".join(parts)
