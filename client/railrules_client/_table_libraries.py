"""Tables for the libraries that take them: Arrow streams, pandas, polars."""

from __future__ import annotations

import importlib
from typing import TYPE_CHECKING, Protocol, cast

if TYPE_CHECKING:
    from collections.abc import Sequence

    import pandas as pd
    import polars as pl

    from railrules_client._columns import Column

_POLARS = {"text": "String", "number": "Float64", "count": "Int64", "flag": "Boolean"}
_PANDAS = {"text": "object", "number": "float64", "count": "Int64", "flag": "boolean"}
_ARROW = {"text": "string", "number": "float64", "count": "int64", "flag": "bool_"}


class ArrowStream(Protocol):
    """Anything that hands out its rows by the Arrow PyCapsule interface."""

    def __arrow_c_stream__(self, requested_schema: object | None = None) -> object:
        """Return a capsule with a stream."""
        ...


class _Pandas(Protocol):
    def DataFrame(self, data: object) -> pd.DataFrame: ...  # noqa: N802  the library's name
    def Series(self, data: object, *, dtype: str) -> object: ...  # noqa: N802


class _Polars(Protocol):
    def DataFrame(self, data: object) -> pl.DataFrame: ...  # noqa: N802  the library's name
    def Series(self, name: str, values: object, dtype: object) -> object: ...  # noqa: N802


class Function(Protocol):
    """Something of a library that is called."""

    def __call__(self, *arguments: object, **named: object) -> object:
        """Call it."""
        ...


def _called(library: object, name: str, *arguments: object, **named: object) -> object:
    return cast("Function", getattr(library, name))(*arguments, **named)


def arrow(columns: Sequence[Column], requested_schema: object | None = None) -> object:
    """Return a capsule with the rows as an Arrow stream.

    Raises:
        ImportError: neither nanoarrow (the extra `arrow`) nor pyarrow is installed.
    """
    try:
        return _by_nanoarrow(columns).__arrow_c_stream__(requested_schema)
    except ModuleNotFoundError as error:
        try:
            return _by_pyarrow(columns).__arrow_c_stream__(requested_schema)
        except ModuleNotFoundError:
            raise ImportError("Arrow needs the extra `arrow`: pip install 'railrules-client[arrow]'") from error


def _by_nanoarrow(columns: Sequence[Column]) -> ArrowStream:
    library = importlib.import_module("nanoarrow")
    types = {column.name: _called(library, _ARROW[column.kind]) for column in columns}
    children = [_called(library, "c_array", column.cells, types[column.name]) for column in columns]
    rows = len(columns[0].cells) if columns else 0
    struct = _called(library, "struct", types)
    array = _called(library, "c_array_from_buffers", struct, rows, buffers=[None], children=children)
    return cast("ArrowStream", _called(library, "c_array_stream", _called(library, "Array", array)))


def _by_pyarrow(columns: Sequence[Column]) -> ArrowStream:
    library = importlib.import_module("pyarrow")
    arrays = [_called(library, "array", column.cells, _called(library, _ARROW[column.kind])) for column in columns]
    schema = _called(
        library, "schema", [_called(library, "field", column.name, _called(library, _ARROW[column.kind])) for column in columns]
    )
    return cast("ArrowStream", _called(library.Table, "from_arrays", arrays, schema=schema))


def pandas(columns: Sequence[Column]) -> pd.DataFrame:
    """Return a data frame of pandas.

    Raises:
        ImportError: pandas is not installed.
    """
    library = cast("_Pandas", importlib.import_module("pandas"))
    return library.DataFrame({column.name: library.Series(list(column.cells), dtype=_PANDAS[column.kind]) for column in columns})


def polars(columns: Sequence[Column]) -> pl.DataFrame:
    """Return a data frame of polars.

    Raises:
        ImportError: polars is not installed.
    """
    library = importlib.import_module("polars")
    make = cast("_Polars", library)
    return make.DataFrame(
        [make.Series(column.name, list(column.cells), getattr(library, _POLARS[column.kind])) for column in columns]
    )
