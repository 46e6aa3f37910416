"""Physical quantities: a number with the code of its unit, and the ways to make and read one."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar, Generic, Protocol, Self, TypeAlias, TypeVar, cast

from msgspec import UNSET, Struct
from msgspec.structs import force_setattr

from railrules_client._units import convert, parse, unit_of

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from pint import UnitRegistry
    from pint.registry import Quantity as PintQuantity

Code = TypeVar("Code", bound=str)


class SupportsUnits(Protocol):
    """A quantity of the units library `pint`, or anything that reads like one."""

    @property
    def magnitude(self) -> object:
        """The number."""

    @property
    def units(self) -> object:
        """The unit."""


class _Convertible(SupportsUnits, Protocol):
    def to(self, other: str) -> _Convertible: ...


Measured: TypeAlias = "str | Quantity[str] | SupportsUnits"
"""What may stand for a quantity in a request besides its own struct: `"39 ft"`, `quantity("39 ft")`, a pint quantity."""


class Quantity(Struct, Generic[Code], frozen=True, gc=False):
    """A physical quantity: a number with its unit.

    Nothing is checked here that the service checks: a wrong unit is refused there, with the place and the allowed units.

    Attributes:
        value: the number.
        unit: the code of its unit.
    """

    codes: ClassVar[tuple[str, ...]] = ()
    """Unit codes of this kind of quantity that were known when the client was made."""

    value: float
    unit: Code

    @classmethod
    def of(cls, given: Self | Measured) -> Self:
        """Make a quantity of this kind from text such as `"39 ft"`, a pint quantity or another quantity.

        Raises:
            ValueError: the text is not a number with a unit.
            TypeError: it measures something else, as far as a pint quantity can tell.
        """
        if type(given) is cls:
            return given
        if isinstance(given, Quantity):
            other = cast("Quantity[str]", given)
            return cls(other.value, cast("Code", other.unit))
        if isinstance(given, str):
            value, code = parse(given)
            return cls(value, cast("Code", code))
        if hasattr(given, "magnitude") and hasattr(given, "units"):
            value, code = _from_pint(cast("_Convertible", given), cls.codes)
            return cls(value, cast("Code", code))
        raise TypeError(f"{type(given).__name__!r} is not a quantity: give {cls.__name__}(1, {cls.codes[0]!r}), text or pint")

    @property
    def magnitude(self) -> float:
        """The number alone."""
        return self.value

    def to(self, unit: Code) -> Self:
        """Return the same quantity in another unit, converted exactly and rounded once.

        Raises:
            ValueError: the unit does not measure the same thing, or is not known to this version of the client.
        """
        return type(self)(convert(self.value, self.unit, unit), unit)

    def to_pint(self, registry: UnitRegistry[float] | None = None) -> PintQuantity[float]:
        """Return the quantity for the units library `pint` (the extra `railrules-client[pint]`).

        Args:
            registry: where its unit lives; pint's application registry when left out.

        Raises:
            ImportError: pint is not installed.
            ValueError: the unit is not known to this version of the client.
        """
        if registry is None:
            import pint  # noqa: PLC0415  optional, and slow to import

            registry = cast("UnitRegistry[float]", pint.application_registry)
        definition = unit_of(self.unit).definition
        # older releases of the library do not say what kind of number the quantity holds
        return cast("PintQuantity[float]", registry.Quantity(self.value, definition))  # pyright: ignore[reportUnnecessaryCast]

    def __str__(self) -> str:
        return f"{self.value:.12g} {self.unit}"


def _from_pint(given: _Convertible, codes: tuple[str, ...]) -> tuple[float, str]:
    """Return the number and the code of a pint quantity: in its own unit where that has a code, else in an SI one."""
    spelled = format(given.units, "D")
    change = "delta_" in spelled
    chosen: tuple[object, str] | None = None
    for code in codes:
        unit = unit_of(code)
        # pint converts a change of temperature to a temperature, and back, without a word; here they are different kinds
        if (unit.absolute and change) or (not unit.absolute and not change and spelled.startswith("degree_")):
            continue
        try:
            converted = given.to(unit.definition)
        except TypeError:  # pint's DimensionalityError
            continue
        if converted.units == given.units:
            return float(cast("float", converted.magnitude)), code
        if chosen is None or (unit.factor == 1 and not unit.zero):
            chosen = converted.magnitude, code
    if chosen is None:
        raise TypeError(f"a quantity in {spelled} was given where one of {', '.join(codes)} is wanted")
    return float(cast("float", chosen[0])), chosen[1]


def measured(struct: Struct, makers: Mapping[str, Callable[[Measured], object]]) -> None:
    """Turn what was given for the quantities of a request into their structs; for the generated code."""
    for name, make in makers.items():
        given: object = getattr(struct, name)
        if isinstance(given, (list, tuple)):
            force_setattr(struct, name, [make(item) for item in cast("list[Measured]", given)])
        elif given is not UNSET:
            force_setattr(struct, name, make(cast("Measured", given)))
