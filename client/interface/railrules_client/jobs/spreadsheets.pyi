from _typeshed import Incomplete
from collections.abc import Callable as Callable, Iterable
from railrules_client.jobs.files import JobFileError as JobFileError
from railrules_client.jobs.sources import Source as Source
from typing import Final, NamedTuple, Protocol, TypeAlias

Value: TypeAlias = str | float | bool | None
SEPARATORS: Final[Incomplete]
LARGEST_FILE: Final[Incomplete]
LARGEST_UNPACKED: Final[Incomplete]
MOST_ROWS: Final[int]

class SpreadsheetError(JobFileError): ...

class Row(NamedTuple):
    number: int
    cells: tuple[Value, ...]

class Grid(NamedTuple):
    name: str
    rows: tuple[Row, ...]

def letter(column: int) -> str: ...
def place(name: str, row: int, column: int) -> str: ...
def grids(path: Source) -> dict[str, Grid]: ...

class _Cell(Protocol):
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
