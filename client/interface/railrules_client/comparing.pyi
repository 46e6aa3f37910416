from collections.abc import Callable as Callable, Mapping
from dataclasses import dataclass, field
from msgspec import Struct
from os import PathLike
from railrules_client._generated.models import JobCheck as JobCheck, TakeoffAnswer as TakeoffAnswer
from railrules_client._quantities import Quantity as Quantity
from railrules_client.tables import Cell as Cell, Column as Column, Kind as Kind, Table as Table, write_xlsx as write_xlsx

SAME: str
CHANGED: str
ONLY_FIRST: str
ONLY_SECOND: str

@dataclass(slots=True)
class _Rows:
    title: str
    kinds: dict[str, Kind] = field(default_factory=dict[str, 'Kind'])
    units: dict[str, str] = field(default_factory=dict[str, str])
    cells: dict[str, list[Cell]] = field(default_factory=dict[str, 'list[Cell]'])
    def text(self, *names: str) -> _Rows: ...
    def numbers(self, name: str, *, units: bool = True) -> _Rows: ...
    def add(self, **cells: Cell) -> None: ...
    def table(self) -> Table: ...

@dataclass(frozen=True, slots=True)
class Comparison:
    first: TakeoffAnswer
    second: TakeoffAnswer
    jobs: Table
    totals: Table
    orders: Table
    bill: Table
    checks: Table
    money: Table
    @property
    def newly_failing(self) -> Table: ...
    def to_tables(self) -> dict[str, Table]: ...
    def to_csv(self, path: str | PathLike[str] | None = None) -> str: ...
    def to_xlsx(self, path: str | PathLike[str]) -> None: ...
    def __arrow_c_stream__(self, requested_schema: object | None = None) -> object: ...
    def differing(self) -> dict[str, Table]: ...
    def to_html(self) -> str: ...

def compare(first: TakeoffAnswer, second: TakeoffAnswer, *, jobs: tuple[Struct | Mapping[str, object], Struct | Mapping[str, object]] | None = None) -> Comparison: ...
