from _typeshed import Incomplete
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from msgspec import Struct
from railrules_client._generated.models import JobFeature as JobFeature, Length as Length, Segment as Segment
from railrules_client._units import convert as convert
from railrules_client.jobs.cells import CellError as CellError, SIGNS as SIGNS, Signs as Signs, nearest as nearest
from railrules_client.jobs.files import Tree as Tree
from railrules_client.jobs.headings import Column as Column, Steps as Steps, column_of as column_of
from railrules_client.jobs.shapes import slots_of as slots_of
from railrules_client.jobs.spreadsheets import Grid as Grid, Row as Row, SpreadsheetError as SpreadsheetError, letter as letter, place as place
from typing import Final

TABLE: Final[str]
LISTS: Final[Incomplete]
PLACED: Final[Incomplete]
MOST_ERRORS: Final[int]

@dataclass(slots=True)
class Errors:
    found: list[str] = field(default_factory=list[str])
    def add(self, where: str, what: str) -> None: ...
    def stop(self) -> None: ...

@dataclass(slots=True)
class Entry:
    row: int
    tree: Tree
    places: dict[Steps, str]

def signs_of(grid: Grid, errors: Errors) -> tuple[Signs, int]: ...
def put(tree: Tree, steps: Steps, value: object) -> None: ...
def listed(tree: object) -> object: ...
def entries_of(grid: Grid, record: type[Struct], own: Sequence[str], required: Sequence[str], errors: Errors) -> list[Entry]: ...

@dataclass(slots=True)
class SegmentTable:
    segments: list[Tree]
    places: dict[Steps, str]

def read(grid: Grid, tables: Mapping[str, Grid], shared: Mapping[str, object]) -> SegmentTable: ...
