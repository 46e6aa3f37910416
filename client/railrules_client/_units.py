"""What the unit codes of the service mean, exactly.

A code is a plain identifier such as `lb_per_yd`. It is read as what it says: units multiplied by `_`, raised by a digit, and
divided after `_per_`. So the table below holds only the units that codes are made of; the tests prove every code of the
OpenAPI document against the units library `pint`.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import TypeAlias

Dimension: TypeAlias = tuple[int, int, int, int, int]
"""Powers of length, mass, time, temperature and count."""

_LENGTH: Dimension = (1, 0, 0, 0, 0)
_MASS: Dimension = (0, 1, 0, 0, 0)
_TIME: Dimension = (0, 0, 1, 0, 0)
_CHANGE: Dimension = (0, 0, 0, 1, 0)
_COUNT: Dimension = (0, 0, 0, 0, 1)
_NONE: Dimension = (0, 0, 0, 0, 0)
_VOLUME: Dimension = (3, 0, 0, 0, 0)
_FORCE: Dimension = (1, 1, -2, 0, 0)
_STRESS: Dimension = (-1, 1, -2, 0, 0)
_ENERGY: Dimension = (2, 1, -2, 0, 0)

# Exact definitions: international yard and pound (1959), standard gravity, litre, US gallon of 231 cubic inches.
_INCH = Fraction(254, 10_000)
_POUND = Fraction(45_359_237, 100_000_000)
_GRAVITY = Fraction(980_665, 100_000)
_POUND_FORCE = _POUND * _GRAVITY
_PSI = _POUND_FORCE / _INCH**2
_RANKINE = Fraction(5, 9)
_PI = Fraction(3.141592653589793)

_SINGLE: dict[str, tuple[Fraction, Dimension, str]] = {  # code -> SI units in one, dimension, name in the units library
    "m": (Fraction(1), _LENGTH, "meter"),
    "mm": (Fraction(1, 1000), _LENGTH, "millimeter"),
    "cm": (Fraction(1, 100), _LENGTH, "centimeter"),
    "km": (Fraction(1000), _LENGTH, "kilometer"),
    "in": (_INCH, _LENGTH, "inch"),
    "ft": (12 * _INCH, _LENGTH, "foot"),
    "yd": (36 * _INCH, _LENGTH, "yard"),
    "mi": (63_360 * _INCH, _LENGTH, "mile"),
    "l": (Fraction(1, 1000), _VOLUME, "liter"),
    "gal": (231 * _INCH**3, _VOLUME, "gallon"),
    "kg": (Fraction(1), _MASS, "kilogram"),
    "g": (Fraction(1, 1000), _MASS, "gram"),
    "t": (Fraction(1000), _MASS, "metric_ton"),
    "lb": (_POUND, _MASS, "pound"),
    "short_ton": (2000 * _POUND, _MASS, "short_ton"),
    "long_ton": (2240 * _POUND, _MASS, "long_ton"),
    "N": (Fraction(1), _FORCE, "newton"),
    "kN": (Fraction(1000), _FORCE, "kilonewton"),
    "MN": (Fraction(10**6), _FORCE, "meganewton"),
    "lbf": (_POUND_FORCE, _FORCE, "pound_force"),
    "kip": (1000 * _POUND_FORCE, _FORCE, "kip"),
    "kgf": (_GRAVITY, _FORCE, "kilogram_force"),
    "Pa": (Fraction(1), _STRESS, "pascal"),
    "kPa": (Fraction(1000), _STRESS, "kilopascal"),
    "MPa": (Fraction(10**6), _STRESS, "megapascal"),
    "GPa": (Fraction(10**9), _STRESS, "gigapascal"),
    "psi": (_PSI, _STRESS, "psi"),
    "ksi": (1000 * _PSI, _STRESS, "ksi"),
    "J": (Fraction(1), _ENERGY, "joule"),
    "kJ": (Fraction(1000), _ENERGY, "kilojoule"),
    "delta_K": (Fraction(1), _CHANGE, "kelvin"),
    "delta_degC": (Fraction(1), _CHANGE, "delta_degC"),
    "delta_degF": (_RANKINE, _CHANGE, "delta_degF"),
    "s": (Fraction(1), _TIME, "second"),
    "min": (Fraction(60), _TIME, "minute"),
    "h": (Fraction(3600), _TIME, "hour"),
    "d": (Fraction(86_400), _TIME, "day"),
    "rad": (Fraction(1), _NONE, "radian"),
    "deg": (_PI / 180, _NONE, "degree"),
    "percent": (Fraction(1, 100), _NONE, "percent"),
    "each": (Fraction(1), _COUNT, "dimensionless"),
}
# A code that is one of these alone is a temperature, which has a zero of its own; inside a longer code it is a change.
_TEMPERATURES: dict[str, tuple[Fraction, Fraction, str]] = {  # code -> factor, SI value of its zero, name
    "K": (Fraction(1), Fraction(0), "kelvin"),
    "degC": (Fraction(1), Fraction(27_315, 100), "degC"),
    "degF": (_RANKINE, Fraction(45_967, 100) * _RANKINE, "degF"),
}
_PART = re.compile(r"_(per_)?((?:short|long)_ton|delta_(?:K|deg[CF])|[A-Za-z]+)([2-9]?)")


class UnknownUnitError(ValueError):
    """A unit code that this version of the client cannot read."""


@dataclass(frozen=True, slots=True)
class Unit:
    """The meaning of a unit code: `si = value * factor + zero`.

    Attributes:
        code: the code as the service writes it.
        factor: SI units in one.
        zero: SI value of its zero; other than 0 only for temperatures.
        dimension: powers of length, mass, time, temperature and count.
        absolute: it is a temperature, not a temperature change.
        definition: the unit in the words of the units library `pint`.
    """

    code: str
    factor: Fraction
    zero: Fraction
    dimension: Dimension
    absolute: bool
    definition: str


def _power(base: Dimension, power: int) -> Dimension:
    first, second, third, fourth, fifth = base
    return first * power, second * power, third * power, fourth * power, fifth * power


def _product(left: Dimension, right: Dimension) -> Dimension:
    first, second, third, fourth, fifth = (one + other for one, other in zip(left, right, strict=True))
    return first, second, third, fourth, fifth


@cache
def unit_of(code: str) -> Unit:
    """Return the meaning of a unit code.

    Raises:
        UnknownUnitError: the code is not made of units that are known here.
    """
    if code in _TEMPERATURES:
        factor, zero, name = _TEMPERATURES[code]
        return Unit(code, factor, zero, _CHANGE, absolute=True, definition=name)
    factor, dimension, definition = Fraction(1), _NONE, "1"
    text, position, divided = f"_{code}", 0, False
    while position < len(text):
        found = _PART.match(text, position)
        name = "" if found is None else found[2]
        single = _SINGLE.get(f"delta_{name}" if name in _TEMPERATURES else name)
        if found is None or single is None:
            raise UnknownUnitError(f"unit {code!r} is not known to this version of the client")
        divided = divided or found[1] is not None
        power = int(found[3] or 1) * (-1 if divided else 1)
        factor *= single[0] ** power
        dimension = _product(dimension, _power(single[1], power))
        definition += f" * {single[2]}**{power}"
        position = found.end()
    return Unit(code, factor, Fraction(0), dimension, absolute=False, definition=definition.removeprefix("1 * "))


def convert(value: float, source: str, target: str) -> float:
    """Convert a number from one unit code to another, exactly and rounded once.

    >>> convert(39, "ft", "in")
    468.0
    >>> convert(95, "degF", "degC")
    35.0

    Raises:
        UnknownUnitError: one of the codes is not known here.
        ValueError: the two do not measure the same thing.
    """
    if source == target:
        return float(value)
    old, new = unit_of(source), unit_of(target)
    if old.dimension != new.dimension or old.absolute != new.absolute:
        raise ValueError(f"{source} and {target} do not measure the same thing")
    return float((Fraction(value) * old.factor + old.zero - new.zero) / new.factor)


_SIGNS = str.maketrans({"²": "2", "³": "3", "⁴": "4", "·": "_", "*": "_", "−": "-", "°": "deg", "’": "'", "″": '"', "′": "'"})  # noqa: RUF001
_WRITTEN = {  # other ways to write a unit -> its code; `ton` alone is left out because it may be any of three
    "feet": "ft", "foot": "ft", "'": "ft", "inches": "in", "inch": "in", '"': "in", "yards": "yd", "yard": "yd",
    "miles": "mi", "mile": "mi", "lbs": "lb", "pounds": "lb", "pound": "lb", "tonne": "t", "tonnes": "t",
    "short_tons": "short_ton", "long_tons": "long_ton", "mph": "mi_per_h", "F": "degF", "C": "degC", "L": "l",
    "gallons": "gal", "gallon": "gal", "meters": "m", "metres": "m", "meter": "m", "metre": "m", "degrees": "deg",
    "degree": "deg", "pieces": "each", "kips": "kip", "hours": "h", "hour": "h", "days": "d", "day": "d",
    "minutes": "min", "minute": "min", "sec": "s", "%": "percent",
}  # fmt: skip
_NUMBER = re.compile(
    r"(?P<sign>[+-]?)(?:(?:(?P<whole>\d+)[ -])?(?P<over>\d+)/(?P<under>\d+)"
    r"|(?P<plain>(?:\d{1,3}(?:,\d{3})+|\d+)?(?:\.\d*)?(?:[eE][+-]?\d+)?))\s*(?P<unit>(?:1\s*/|[^\W\d_]|['\"%/]).*|)$"
)


def code_of(written: str) -> str:
    """Return the code of a unit as people write it; what is not recognised comes back as it stands.

    >>> code_of("lb/yd"), code_of("°F"), code_of("in²"), code_of("feet")
    ('lb_per_yd', 'degF', 'in2', 'ft')
    """
    text = re.sub(r"^(?:1\s*)?/\s*", "per_", written.strip().translate(_SIGNS))
    text = re.sub(r"\s+", "_", re.sub(r"\s*/\s*", "_per_", text))
    if text in _WRITTEN:
        return _WRITTEN[text]
    return "_per_".join("_".join(_WRITTEN.get(word, word) for word in part.split("_")) for part in text.split("_per_"))


def parse(text: str) -> tuple[float, str]:
    """Read a number with its unit as people write it.

    >>> parse("39 ft"), parse("2-1/4 in"), parse("1,440 ft"), parse("6.5e-6 1/degF")
    ((39.0, 'ft'), (2.25, 'in'), (1440.0, 'ft'), (6.5e-06, 'per_degF'))

    Raises:
        ValueError: the text does not begin with a number, or has no unit.
    """
    cleaned = text.strip().translate(_SIGNS)
    found = _NUMBER.match(cleaned)
    written = (found["unit"] or "") if found else ""
    if found is None or not written.strip() or not (found["over"] or found["plain"].strip(".")):
        raise ValueError(f"{text!r}: write a number and a unit, such as '39 ft', '2-1/4 in' or '95 degF'")
    if found["over"]:
        if int(found["under"]) == 0:
            raise ValueError(f"{text!r}: a fraction over zero")
        number = float(int(found["whole"] or 0) + Fraction(int(found["over"]), int(found["under"])))
    else:
        number = float(found["plain"].replace(",", ""))
    return (-number if found["sign"] == "-" else number), code_of(written)


_LABELS = {
    "l": "L", "degC": "°C", "degF": "°F", "deg": "°", "mi_per_h": "mph", "short_ton": "short tons", "long_ton": "long tons",
    "delta_K": "K", "delta_degC": "°C", "delta_degF": "°F", "each": "",
}  # fmt: skip
_RAISED = str.maketrans("23456789", "²³⁴⁵⁶⁷⁸⁹")


@cache
def label_of(code: str) -> str:
    """Return a unit as people write it; pieces have none, and a code that is not known here stands as it is.

    >>> label_of("lb_per_yd"), label_of("N_m"), label_of("ft2_per_gal"), label_of("per_degF")
    ('lb/yd', 'N·m', 'ft²/gal', '1/°F')
    """
    if code in _LABELS:
        return _LABELS[code]
    try:
        unit_of(code)
    except UnknownUnitError:
        return code
    over, _, under = f"_{code}".partition("_per_")
    above, below = (
        "·".join(_LABELS.get(word, word) if word in _LABELS else word.translate(_RAISED) for word in part.strip("_").split("_"))
        for part in (over, under)
    )
    return f"{above or '1'}/{below}" if below else above
