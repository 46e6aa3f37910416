"""Short ways to write quantities in scripts."""

from __future__ import annotations

from difflib import get_close_matches
from typing import TYPE_CHECKING, cast

from railrules_client._generated.models import (
    QUANTITIES,
    Angle,
    Force,
    Length,
    Mass,
    Stress,
    Temperature,
    TemperatureChange,
)
from railrules_client._quantities import Quantity
from railrules_client._units import parse

if TYPE_CHECKING:
    from railrules_client._quantities import Measured


def quantity(given: Measured) -> Quantity[str]:
    """Return text such as `"39 ft"`, or a pint quantity, as a quantity of the first kind that has such a unit.

    >>> quantity("39 ft").to("in").magnitude
    468.0
    >>> str(quantity("2-1/4 in"))
    '2.25 in'

    Raises:
        ValueError: the text is not a number with a unit of the service; like units are named.
        TypeError: no kind of quantity has such a unit.
    """
    if isinstance(given, Quantity):
        return given
    # kinds that take many units, such as an amount, come last
    kinds = sorted(cast("tuple[type[Quantity[str]], ...]", QUANTITIES), key=lambda kind: len(kind.codes))
    if isinstance(given, str):
        value, code = parse(given)
    else:
        found = kinds[-1].of(given)
        value, code = found.value, found.unit
    for kind in kinds:
        if code in kind.codes:
            return kind(value, code)
    near = get_close_matches(code, {known for kind in kinds for known in kind.codes}, n=5)
    hint = f"; near: {', '.join(sorted(near))}" if near else ""
    raise ValueError(f"{given!r}: there is no unit {code!r}{hint}")


def feet(value: float) -> Length:
    """Return a length in feet."""
    return Length(value, "ft")


def inches(value: float) -> Length:
    """Return a length in inches."""
    return Length(value, "in")


def miles(value: float) -> Length:
    """Return a length in miles."""
    return Length(value, "mi")


def metres(value: float) -> Length:
    """Return a length in metres."""
    return Length(value, "m")


def millimetres(value: float) -> Length:
    """Return a length in millimetres."""
    return Length(value, "mm")


def kilometres(value: float) -> Length:
    """Return a length in kilometres."""
    return Length(value, "km")


def pounds(value: float) -> Mass:
    """Return a mass in pounds."""
    return Mass(value, "lb")


def kilograms(value: float) -> Mass:
    """Return a mass in kilograms."""
    return Mass(value, "kg")


def pounds_force(value: float) -> Force:
    """Return a force in pounds."""
    return Force(value, "lbf")


def kilonewtons(value: float) -> Force:
    """Return a force in kilonewtons."""
    return Force(value, "kN")


def pounds_per_square_inch(value: float) -> Stress:
    """Return a stress in pounds per square inch."""
    return Stress(value, "psi")


def megapascals(value: float) -> Stress:
    """Return a stress in megapascals."""
    return Stress(value, "MPa")


def fahrenheit(value: float) -> Temperature:
    """Return a temperature in degrees Fahrenheit."""
    return Temperature(value, "degF")


def celsius(value: float) -> Temperature:
    """Return a temperature in degrees Celsius."""
    return Temperature(value, "degC")


def fahrenheit_change(value: float) -> TemperatureChange:
    """Return a change of temperature in degrees Fahrenheit."""
    return TemperatureChange(value, "delta_degF")


def celsius_change(value: float) -> TemperatureChange:
    """Return a change of temperature in degrees Celsius."""
    return TemperatureChange(value, "delta_degC")


def degrees(value: float) -> Angle:
    """Return an angle, or a degree of curve, in degrees."""
    return Angle(value, "deg")
