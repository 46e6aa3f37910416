"""Counting things that stand at regular stations, exactly, in spite of binary floats.

Ties stand at `origin + k * spacing` for every whole number k. A stretch owns those with `begin <= x < end`. A count over
a stretch is the difference of two whole numbers that each depend on one station alone, so counts add up however a line is
cut: count(a, c) = count(a, b) + count(b, c).

A station that lies within `SLACK` spacings of a tie counts as standing on it; so 39 ft hold 24 spacings of 19.5 in, never 23,
in whatever unit either was given. `SLACK` is a millionth of a spacing: half a micrometre at 19.5 in, ten thousand times the
rounding error of a station 1,000 miles out, and far below anything a tape can measure.
"""

from __future__ import annotations

import math

SLACK = 1e-6
"""Distance from a whole number, in spacings, that still counts as the whole number."""

RELATIVE_SLACK = 1e-9
"""The same for a net quantity that is rounded up to an order: a billionth of it, for sums of many floats."""


def first_tie_from(station: float, *, origin: float, spacing: float) -> int:
    """Return the number of the first tie at or beyond a station.

    k = ceil((station - origin) / spacing), a station within `SLACK` of a tie standing on it.

    Args:
        station: place along the line [m].
        origin: station of tie 0 [m].
        spacing: distance between ties, above zero [m].

    >>> first_tie_from(39 * 0.3048, origin=0.0, spacing=19.5 * 0.0254)
    24
    """
    ratio = (station - origin) / spacing
    nearest = round(ratio)
    return nearest if abs(ratio - nearest) <= SLACK else math.ceil(ratio)


def multiples_between(first: int, beyond: int, every: int, remainder: int = 0) -> int:
    """Return how many whole numbers k with `first <= k < beyond` have `k mod every == remainder`.

    >>> multiples_between(0, 24, 2)
    12
    """
    return -((remainder - beyond) // every) + ((remainder - first) // every)


def round_up(value: float, step: float = 1.0) -> float:
    """Round a net quantity up to whole steps; what exceeds a step by float noise only does not cost another step.

    Args:
        value: net quantity, zero or more.
        step: smallest amount that can be ordered, above zero.

    >>> round_up(6498.0000000001), round_up(6498.46), round_up(7.2, 0.5)
    (6498.0, 6499.0, 7.5)
    """
    ratio = value / step
    nearest = round(ratio)
    if abs(ratio - nearest) <= RELATIVE_SLACK * max(1.0, abs(ratio)):
        return nearest * step
    return math.ceil(ratio) * step


def round_down(value: float) -> float:
    """Return the whole things in a net quantity; what misses the next one by float noise only has it.

    Args:
        value: net quantity, zero or more.

    >>> round_down(23.9999999999), round_down(23.99)
    (24.0, 23.0)
    """
    return float(math.floor(value + RELATIVE_SLACK * max(1.0, value)))
