"""Units of the wire and of the data files: closed lists of codes, exact factors to coherent SI.

The factors are built from the exact definitions of the units as fractions and rounded once. Tests prove every one of them
against the units library `pint`; at run time no caller's text ever reaches a units parser.
Converted at two edges only: the catalogue while loading, and the wire.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType
from typing import TYPE_CHECKING, Literal

from railrules_api.domain.kinds import Kind

if TYPE_CHECKING:
    from collections.abc import Mapping

System = Literal["us", "si"]
"""The two unit systems an answer can be asked for in."""


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit code and its way to SI: `si = value * factor + offset`.

    Attributes:
        code: the plain identifier used on the wire.
        kind: the kind of quantity it measures.
        factor: SI units per unit.
        offset: SI value of the unit's zero; other than 0 only for temperatures.
        label: how it is printed for people.
        definition: the same unit as an expression of the units library, for the tests and the client.
    """

    code: str
    kind: Kind
    factor: float
    offset: float
    label: str
    definition: str

    def to_si(self, value: float) -> float:
        """Return the value in coherent SI."""
        return value * self.factor + self.offset

    def from_si(self, value: float) -> float:
        """Return an SI value in this unit."""
        return (value - self.offset) / self.factor


# Exact definitions (international yard and pound, 1959; standard gravity; litre; US gallon of 231 cubic inches).
_INCH = Fraction(254, 10_000)
_FOOT = 12 * _INCH
_YARD = 3 * _FOOT
_MILE = 5280 * _FOOT
_POUND = Fraction(45_359_237, 100_000_000)
_GRAVITY = Fraction(980_665, 100_000)
_POUND_FORCE = _POUND * _GRAVITY
_KILOGRAM_FORCE = _GRAVITY
_PSI = _POUND_FORCE / _INCH**2
_RANKINE = Fraction(5, 9)
_GALLON = 231 * _INCH**3
_LITRE = Fraction(1, 1000)
_MM = Fraction(1, 1000)
_CM = Fraction(1, 100)
_FAHRENHEIT_ZERO = Fraction(45_967, 100) * _RANKINE
_CELSIUS_ZERO = Fraction(27_315, 100)
_ONE = Fraction(1)

# kind -> rows of (code, factor, label, definition); the first US and first SI code of a kind stand in `_ANSWER` below.
_ROWS: dict[Kind, tuple[tuple[str, Fraction, str, str], ...]] = {
    Kind.LENGTH: (
        ("m", _ONE, "m", "meter"),
        ("mm", _MM, "mm", "millimeter"),
        ("cm", _CM, "cm", "centimeter"),
        ("km", Fraction(1000), "km", "kilometer"),
        ("in", _INCH, "in", "inch"),
        ("ft", _FOOT, "ft", "foot"),
        ("yd", _YARD, "yd", "yard"),
        ("mi", _MILE, "mi", "mile"),
    ),
    Kind.AREA: (
        ("m2", _ONE, "m²", "meter**2"),
        ("mm2", _MM**2, "mm²", "millimeter**2"),
        ("cm2", _CM**2, "cm²", "centimeter**2"),
        ("in2", _INCH**2, "in²", "inch**2"),
        ("ft2", _FOOT**2, "ft²", "foot**2"),
    ),
    Kind.VOLUME: (
        ("m3", _ONE, "m³", "meter**3"),
        ("l", _LITRE, "L", "liter"),
        ("gal", _GALLON, "gal", "gallon"),
        ("ft3", _FOOT**3, "ft³", "foot**3"),
        ("yd3", _YARD**3, "yd³", "yard**3"),
        ("in3", _INCH**3, "in³", "inch**3"),
    ),
    Kind.SECTION_MODULUS: (
        ("m3", _ONE, "m³", "meter**3"),
        ("mm3", _MM**3, "mm³", "millimeter**3"),
        ("cm3", _CM**3, "cm³", "centimeter**3"),
        ("in3", _INCH**3, "in³", "inch**3"),
    ),
    Kind.SECOND_MOMENT: (
        ("m4", _ONE, "m⁴", "meter**4"),
        ("mm4", _MM**4, "mm⁴", "millimeter**4"),
        ("cm4", _CM**4, "cm⁴", "centimeter**4"),
        ("in4", _INCH**4, "in⁴", "inch**4"),
    ),
    Kind.MASS: (
        ("kg", _ONE, "kg", "kilogram"),
        ("t", Fraction(1000), "t", "metric_ton"),
        ("lb", _POUND, "lb", "pound"),
        ("short_ton", 2000 * _POUND, "short tons", "short_ton"),
        ("long_ton", 2240 * _POUND, "long tons", "long_ton"),
    ),
    Kind.MASS_PER_LENGTH: (
        ("kg_per_m", _ONE, "kg/m", "kilogram/meter"),
        ("lb_per_yd", _POUND / _YARD, "lb/yd", "pound/yard"),
        ("lb_per_ft", _POUND / _FOOT, "lb/ft", "pound/foot"),
    ),
    Kind.DENSITY: (
        ("kg_per_m3", _ONE, "kg/m³", "kilogram/meter**3"),
        ("g_per_cm3", Fraction(1000), "g/cm³", "gram/centimeter**3"),
        ("lb_per_ft3", _POUND / _FOOT**3, "lb/ft³", "pound/foot**3"),
        ("lb_per_in3", _POUND / _INCH**3, "lb/in³", "pound/inch**3"),
    ),
    Kind.FORCE: (
        ("N", _ONE, "N", "newton"),
        ("kN", Fraction(1000), "kN", "kilonewton"),
        ("lbf", _POUND_FORCE, "lbf", "pound_force"),
        ("kip", 1000 * _POUND_FORCE, "kip", "kip"),
        ("kgf", _KILOGRAM_FORCE, "kgf", "kilogram_force"),
    ),
    Kind.FORCE_PER_LENGTH: (
        ("N_per_m", _ONE, "N/m", "newton/meter"),
        ("kN_per_m", Fraction(1000), "kN/m", "kilonewton/meter"),
        ("lbf_per_in", _POUND_FORCE / _INCH, "lbf/in", "pound_force/inch"),
        ("lbf_per_ft", _POUND_FORCE / _FOOT, "lbf/ft", "pound_force/foot"),
    ),
    Kind.STRESS: (
        ("Pa", _ONE, "Pa", "pascal"),
        ("MPa", Fraction(10**6), "MPa", "megapascal"),
        ("GPa", Fraction(10**9), "GPa", "gigapascal"),
        ("psi", _PSI, "psi", "psi"),
        ("ksi", 1000 * _PSI, "ksi", "ksi"),
        ("kgf_per_cm2", _KILOGRAM_FORCE / _CM**2, "kgf/cm²", "kilogram_force/centimeter**2"),
    ),
    Kind.FOUNDATION_MODULUS: (
        ("N_per_m2", _ONE, "N/m²", "newton/meter**2"),
        ("MN_per_m2", Fraction(10**6), "MN/m²", "meganewton/meter**2"),
        ("lbf_per_in2", _PSI, "lbf/in²", "pound_force/inch**2"),
    ),
    Kind.STIFFNESS: (
        ("N_per_m", _ONE, "N/m", "newton/meter"),
        ("kN_per_mm", Fraction(10**6), "kN/mm", "kilonewton/millimeter"),
        ("lbf_per_in", _POUND_FORCE / _INCH, "lbf/in", "pound_force/inch"),
    ),
    Kind.MOMENT: (
        ("N_m", _ONE, "N·m", "newton*meter"),
        ("kN_m", Fraction(1000), "kN·m", "kilonewton*meter"),
        ("lbf_in", _POUND_FORCE * _INCH, "lbf·in", "pound_force*inch"),
        ("kip_in", 1000 * _POUND_FORCE * _INCH, "kip·in", "kip*inch"),
        ("kgf_cm", _KILOGRAM_FORCE * _CM, "kgf·cm", "kilogram_force*centimeter"),
    ),
    Kind.TEMPERATURE: (
        ("K", _ONE, "K", "kelvin"),
        ("degC", _ONE, "°C", "degC"),
        ("degF", _RANKINE, "°F", "degF"),
    ),
    Kind.TEMPERATURE_CHANGE: (
        ("delta_K", _ONE, "K", "kelvin"),
        ("delta_degC", _ONE, "°C", "delta_degC"),
        ("delta_degF", _RANKINE, "°F", "delta_degF"),
    ),
    Kind.EXPANSION: (
        ("per_K", _ONE, "1/K", "1/kelvin"),
        ("per_degC", _ONE, "1/°C", "1/delta_degC"),
        ("per_degF", 1 / _RANKINE, "1/°F", "1/delta_degF"),
    ),
    Kind.COVERAGE: (
        ("m2_per_m3", _ONE, "m²/m³", "meter**2/meter**3"),
        ("m2_per_l", 1 / _LITRE, "m²/L", "meter**2/liter"),
        ("ft2_per_gal", _FOOT**2 / _GALLON, "ft²/gal", "foot**2/gallon"),
    ),
    Kind.CURVATURE: (("per_m", _ONE, "1/m", "1/meter"), ("per_ft", 1 / _FOOT, "1/ft", "1/foot")),
    Kind.ANGLE: (
        ("rad", _ONE, "rad", "radian"),
        # pi to double precision, so the degree is as exact as a float can be
        ("deg", Fraction(3.141592653589793) / 180, "°", "degree"),
    ),
    Kind.SPEED: (
        ("m_per_s", _ONE, "m/s", "meter/second"),
        ("km_per_h", Fraction(1000, 3600), "km/h", "kilometer/hour"),
        ("mi_per_h", _MILE / 3600, "mph", "mile/hour"),
    ),
    Kind.DURATION: (
        ("s", _ONE, "s", "second"),
        ("min", Fraction(60), "min", "minute"),
        ("h", Fraction(3600), "h", "hour"),
        ("d", Fraction(86_400), "d", "day"),
    ),
    Kind.FORCE_PER_TEMPERATURE: (
        ("N_per_K", _ONE, "N/K", "newton/kelvin"),
        ("kN_per_degC", Fraction(1000), "kN/°C", "kilonewton/delta_degC"),
        ("lbf_per_degF", _POUND_FORCE / _RANKINE, "lbf/°F", "pound_force/delta_degF"),
    ),
    Kind.STRESS_PER_TEMPERATURE: (
        ("Pa_per_K", _ONE, "Pa/K", "pascal/kelvin"),
        ("MPa_per_degC", Fraction(10**6), "MPa/°C", "megapascal/delta_degC"),
        ("psi_per_degF", _PSI / _RANKINE, "psi/°F", "psi/delta_degF"),
    ),
    Kind.LENGTH_PER_TEMPERATURE: (
        ("m_per_K", _ONE, "m/K", "meter/kelvin"),
        ("mm_per_degC", _MM, "mm/°C", "millimeter/delta_degC"),
        ("in_per_degF", _INCH / _RANKINE, "in/°F", "inch/delta_degF"),
    ),
    Kind.ENERGY: (
        ("J", _ONE, "J", "joule"),
        ("kJ", Fraction(1000), "kJ", "kilojoule"),
        ("lbf_in", _POUND_FORCE * _INCH, "lbf·in", "pound_force*inch"),
    ),
}
_OFFSETS: dict[str, Fraction] = {"degC": _CELSIUS_ZERO, "degF": _FAHRENHEIT_ZERO}

_ANSWER: dict[Kind, tuple[str, str]] = {  # the usual unit of an answer: (us, si)
    Kind.LENGTH: ("ft", "m"),
    Kind.AREA: ("in2", "cm2"),
    Kind.VOLUME: ("gal", "l"),
    Kind.SECTION_MODULUS: ("in3", "cm3"),
    Kind.SECOND_MOMENT: ("in4", "cm4"),
    Kind.MASS: ("lb", "kg"),
    Kind.MASS_PER_LENGTH: ("lb_per_yd", "kg_per_m"),
    Kind.DENSITY: ("lb_per_in3", "kg_per_m3"),
    Kind.FORCE: ("lbf", "kN"),
    Kind.FORCE_PER_LENGTH: ("lbf_per_in", "kN_per_m"),
    Kind.STRESS: ("psi", "MPa"),
    Kind.FOUNDATION_MODULUS: ("lbf_per_in2", "MN_per_m2"),
    Kind.STIFFNESS: ("lbf_per_in", "kN_per_mm"),
    Kind.MOMENT: ("lbf_in", "kN_m"),
    Kind.TEMPERATURE: ("degF", "degC"),
    Kind.TEMPERATURE_CHANGE: ("delta_degF", "delta_degC"),
    Kind.EXPANSION: ("per_degF", "per_degC"),
    Kind.COVERAGE: ("ft2_per_gal", "m2_per_l"),
    Kind.CURVATURE: ("per_ft", "per_m"),
    Kind.ANGLE: ("deg", "deg"),
    Kind.SPEED: ("mi_per_h", "km_per_h"),
    Kind.DURATION: ("h", "h"),
    Kind.FORCE_PER_TEMPERATURE: ("lbf_per_degF", "kN_per_degC"),
    Kind.STRESS_PER_TEMPERATURE: ("psi_per_degF", "MPa_per_degC"),
    Kind.LENGTH_PER_TEMPERATURE: ("in_per_degF", "mm_per_degC"),
    Kind.ENERGY: ("lbf_in", "kJ"),
}


def _build() -> dict[Kind, Mapping[str, Unit]]:
    return {
        kind: MappingProxyType(
            {
                code: Unit(code, kind, float(factor), float(_OFFSETS.get(code, 0)), label, definition)
                for code, factor, label, definition in rows
            }
        )
        for kind, rows in _ROWS.items()
    }


UNITS: Mapping[Kind, Mapping[str, Unit]] = MappingProxyType(_build())
"""Every unit code of every kind; codes of one kind are unique, the same code may serve two kinds."""


def answer_unit(kind: Kind, system: System, preferred: tuple[str, str] | None = None) -> Unit:
    """Return the unit in which a quantity of this kind is answered in a system; `preferred` is (us, si)."""
    codes = preferred or _ANSWER[kind]
    return UNITS[kind][codes[0] if system == "us" else codes[1]]


def si_unit(kind: Kind) -> Unit:
    """Return the coherent SI unit of a kind: the one in which values stand inside the house."""
    return next(unit for unit in UNITS[kind].values() if unit.factor == 1.0 and unit.offset == 0.0)


def kinds_of(code: str) -> tuple[Kind, ...]:
    """Return the kinds that know a unit code, to tell a caller what kind of unit he sent."""
    return tuple(kind for kind, units in UNITS.items() if code in units)
