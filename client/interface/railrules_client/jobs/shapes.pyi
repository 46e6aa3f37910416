from dataclasses import dataclass
from functools import cache
from msgspec import Struct
from railrules_client._quantities import Quantity as Quantity
from typing import TypeAlias

Shape: TypeAlias

@dataclass(frozen=True, slots=True)
class Slot:
    name: str
    shape: Shape
    record: type[Struct] | None = ...
    words: tuple[str, ...] = ...
    codes: tuple[str, ...] = ...
    kind: str = ...

@cache
def slots_of(record: type[Struct]) -> tuple[Slot, ...]: ...
