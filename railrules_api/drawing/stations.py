"""Stations for people: miles and feet, or kilometres and metres, and the marks of a station axis."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from railrules_api.drawing.marks import line, text

if TYPE_CHECKING:
    from railrules_api.drawing.sheet import Scale
    from railrules_api.units import System

MILE: Final = 1609.344
KILOMETRE: Final = 1000.0
_FOOT: Final = 0.3048
_FEET: Final = 5280
_METRES: Final = 1000


def big_unit(system: System) -> tuple[float, str]:
    """Return the mile or the kilometre [m], and its label."""
    return (MILE, "mi") if system == "us" else (KILOMETRE, "km")


def station_text(station: float, system: System) -> str:
    """Return a station as whole miles and feet, or kilometres and metres.

    >>> station_text(13.1 * 1609.344, "us"), station_text(-0.3048, "us"), station_text(21082.4, "si")
    ('13 mi 528 ft', '-0 mi 1 ft', '21 km 82 m')
    """
    small, count, names = (_FOOT, _FEET, ("mi", "ft")) if system == "us" else (1.0, _METRES, ("km", "m"))
    whole, rest = divmod(round(abs(station) / small), count)
    sign = "-" if station < 0 and (whole or rest) else ""
    return f"{sign}{whole} {names[0]} {rest} {names[1]}"


def axis(scale: Scale, system: System, y: float, top: float) -> list[str]:
    """Return the station axis: a mark every tenth, a label and a line up through the bands every half."""
    big, label = big_unit(system)
    tenths = (scale.high - scale.low) / big * 10
    step = next(step for step in (1, 2, 5, 10, 50, 100, 1000, 10**6) if tenths / step <= 60)  # noqa: PLR2004  marks that a sheet holds
    parts = [line(scale.start, y, scale.stop, y, "rule")]
    first = int(scale.low / big * 10 / step) - 1
    for index in range(first, int(scale.high / big * 10 / step) + 2):
        station = index * step * big / 10
        if not scale.low - 1e-6 <= station <= scale.high + 1e-6:
            continue
        x = scale.at(station)
        labelled = (index * step) % 5 == 0 or tenths < 8  # noqa: PLR2004  short jobs label every tenth
        parts.append(line(x, y, x, y + (2.2 if labelled else 1.2), "rule"))
        if labelled:
            parts += [line(x, top, x, y, "grid"), text(x, y + 4.8, f"{index * step / 10:g} {label}", "size", "middle")]
    return parts
