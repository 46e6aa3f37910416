from collections.abc import Callable as Callable, Mapping
from msgspec import Struct
from pint import UnitRegistry as UnitRegistry
from pint.registry import Quantity as PintQuantity
from railrules_client._units import convert as convert, parse as parse, unit_of as unit_of
from typing import ClassVar, Generic, Protocol, Self, TypeAlias, TypeVar

Code = TypeVar('Code', bound=str)

class SupportsUnits(Protocol):
    @property
    def magnitude(self) -> object: ...
    @property
    def units(self) -> object: ...

class _Convertible(SupportsUnits, Protocol):
    def to(self, other: str) -> _Convertible: ...

Measured: TypeAlias

class Quantity(Struct, Generic[Code], frozen=True, gc=False):
    codes: ClassVar[tuple[str, ...]] = ...
    value: float
    unit: Code
    @classmethod
    def of(cls, given: Self | Measured) -> Self: ...
    @property
    def magnitude(self) -> float: ...
    def to(self, unit: Code) -> Self: ...
    def to_pint(self, registry: UnitRegistry[float] | None = None) -> PintQuantity[float]: ...

def measured(struct: Struct, makers: Mapping[str, Callable[[Measured], object]]) -> None: ...
