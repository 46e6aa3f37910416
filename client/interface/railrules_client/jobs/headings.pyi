from collections.abc import Callable as Callable, Sequence
from dataclasses import dataclass
from functools import cache
from msgspec import Struct
from railrules_client._generated.models import Length as Length, Segment as Segment
from railrules_client.jobs.cells import CellError as CellError, IN_ONE_CELL as IN_ONE_CELL, Signs as Signs, count as count, flag as flag, nearest as nearest, plain_number as plain_number, quantity as quantity, text_of as text_of, unit_code as unit_code, word as word
from railrules_client.jobs.shapes import Slot as Slot, slots_of as slots_of
from railrules_client.jobs.spreadsheets import Value as Value
from typing import Final, TypeAlias

Steps: TypeAlias
MOST_NUMBERED: Final[int]

@dataclass(frozen=True, slots=True)
class Column:
    heading: str
    position: int
    steps: Steps
    unit: str
    slot: Slot | None
    def value(self, cell: Value, signs: Signs) -> object: ...

@cache
def paths_of(record: type[Struct], prefix: str = '') -> tuple[str, ...]: ...
def column_of(text: Value, position: int, record: type[Struct], own: Sequence[str]) -> Column: ...
