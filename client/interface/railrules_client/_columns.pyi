from collections.abc import Sequence
from dataclasses import dataclass, field
from railrules_client._units import label_of as label_of
from typing import TypeAlias

Kind: TypeAlias
Cell: TypeAlias

@dataclass(frozen=True, slots=True)
class Column:
    name: str
    kind: Kind
    cells: tuple[Cell, ...] = field(repr=False)
    units: str = ...

def shown(value: Cell, unit: str = '') -> str: ...
def plain(headings: Sequence[str], rows: Sequence[Sequence[str]], *, right: Sequence[int] = ()) -> str: ...
