"""Numbers inside sentences, in both unit systems: what a check says would make it pass.

An answer's own figures are converted at the edge. A sentence cannot be, so it gives each number twice, US units first. The
factors are exact (international inch and pound, standard gravity).
"""

from __future__ import annotations

from typing import Any, Final

INCH: Final = 0.0254
FOOT: Final = 0.3048
POUND_FORCE: Final = 0.45359237 * 9.80665
FAHRENHEIT_DEGREE: Final = 5 / 9
DAY: Final = 86_400.0
_HUNDREDS = 100.0
_THOUSANDS = 1000.0


def figure(value: Any) -> str:  # noqa: ANN401  a number, or a column of them
    """Print a number with about four significant digits, thousands set apart.

    >>> figure(130162.5), figure(361.5625), figure(1.41009), figure(0.0312)
    ('130,162', '361.6', '1.41', '0.0312')
    """
    if not isinstance(value, float | int):
        return "…"  # of a column no sentence is told
    size = abs(value)
    if size >= _THOUSANDS:
        return f"{value:,.0f}"
    if size >= _HUNDREDS:
        return f"{value:.1f}"
    if size >= 1.0 or size == 0.0:
        return f"{value:.2f}"
    return f"{value:.3g}"


def fahrenheit(temperature: float) -> float:
    """Return a temperature [K] on the Fahrenheit scale.

    >>> round(fahrenheit(273.15), 9)
    32.0
    """
    return temperature * 9 / 5 - 459.67


def small_length(value: float) -> str:
    """Say a length [m] of the size of a gap, in inches and millimetres."""
    return f"{figure(value / INCH)} in ({figure(value * 1000.0)} mm)"


def fine_length(value: float) -> str:
    """Say a length [m] of the size of a rail's base, to a thousandth of an inch: fractions of an inch come out in full."""
    return f"{value / INCH:.3f} in ({value * 1000.0:.1f} mm)"


def long_length(value: float) -> str:
    """Say a length [m] of the size of a zone, in feet and metres."""
    return f"{figure(value / FOOT)} ft ({figure(value)} m)"


def force(value: float) -> str:
    """Say a force [N]."""
    return f"{figure(value / POUND_FORCE)} lb ({figure(value / 1000.0)} kN)"


def force_per_length(value: float) -> str:
    """Say a force per length [N/m]."""
    return f"{figure(value / POUND_FORCE * INCH)} lb/in ({figure(value / 1000.0)} kN/m)"


def stress(value: float) -> str:
    """Say a stress [Pa]."""
    return f"{figure(value / POUND_FORCE * INCH**2)} psi ({figure(value / 1e6)} MPa)"


def temperature(value: float) -> str:
    """Say a temperature [K]."""
    return f"{fahrenheit(value):.1f} °F ({value - 273.15:.1f} °C)"


def temperature_change(value: float) -> str:
    """Say a temperature change [K]."""
    return f"{value / FAHRENHEIT_DEGREE:.1f} °F ({value:.1f} °C)"
