"""Geometry of a turnout from straight track: frog, switch and the curve between them."""

from __future__ import annotations

from railrules_api.domain.errors import refuse
from railrules_api.domain.roots import square_root


def lead_radius(*, number: float, gauge: float) -> float:
    """Return the radius of a turnout curved all the way from the stock rail to the point of the frog: `2 g N^2` [m].

    With `N = cot(F/2) / 2` it is exact. A turnout with a straight switch and a straight frog curves more sharply.

    Source: Webb, Railroad Construction, section 262.

    Args:
        number: `N` of the frog.
        gauge: `g` [m].

    >>> lead_radius(number=6, gauge=36.0)
    2592.0
    """
    return 2.0 * gauge * number**2


def closure_rail_radius(*, number: float, gauge: float, heel_spread: float, toe_spread: float, switch_sine: float) -> float:
    """Return the radius of the curved closure rail between a straight switch and a straight frog [m].

    `R = (g - h - e) / (cos S - cos F)`: with a long chord `(g - h - e) / sin((F + S)/2)` the same as equations 6-13 and
    6-14 of TI 850-02. `cos F = (4 N^2 - 1) / (4 N^2 + 1)`; the difference is taken from what both cosines lack of one, so
    that no digits are lost. The smaller the switch angle the smaller the radius: with none it is the sharpest of all.

    Args:
        number: `N` of the frog, `F = 2 atan(1 / (2 N))`.
        gauge: `g` [m].
        heel_spread: `h`, from gage line to gage line at the heel of the switch [m].
        toe_spread: `e`, likewise at the toe of the frog [m].
        switch_sine: sine of the switch angle `S`, zero or more.

    Raises:
        RefusedError: spreads that leave nothing of the gauge; a switch that turns as far as the frog.
    """
    spread = gauge - heel_spread - toe_spread
    if spread <= 0.0:
        raise refuse("frog_toe_spread", reason="the spreads leave nothing of the gauge", value=toe_spread)
    turned = 2.0 / (1.0 + 4.0 * number**2) - switch_sine**2 / (1.0 + square_root(1.0 - switch_sine**2))
    if turned <= 0.0:
        raise refuse("switch_point_length", reason="so short a switch turns as far as the frog")
    return spread / turned
