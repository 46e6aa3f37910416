"""Shapes of a perfectly straight track buckled against a constant resistance, and their constants.

Each lobe obeys `EI w'''' + P w'' = -s rho`, `s` being +1 or -1 so that the resistance opposes the movement. Neighbouring
lobes share slope, moment and shear at a node with `w = 0`. The position of the outer ends is unknown, so there
`w = w' = w'' = 0`. The four lowest shapes are two symmetric ones (one lobe, three lobes) and two antisymmetric ones (two
lobes, four lobes). No constant is typed in: all come out of these conditions.

Source: the family of shapes is that of Kerr, "Analysis of thermal track buckling in the lateral plane", Acta Mechanica
30, 1978 (title known, text not read); constants derived here and compared with those of Hobbs, ASCE Journal of
Transportation Engineering 110(2), 1984, as remembered.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from typing import TYPE_CHECKING

from railrules_api.domain.errors import refuse
from railrules_api.domain.stability.response import SHEAR_RUNG, ladder

if TYPE_CHECKING:
    from collections.abc import Callable

MODES = (1, 2, 3, 4)
"""The modes known here: 1 one lobe, 2 two lobes, 3 three lobes, 4 four lobes; odd ones are symmetric."""

_SCAN_STEP = 0.05
_SCAN_END = 25.0


@dataclass(frozen=True, slots=True, kw_only=True)
class ModeConstants:
    """Constants of one lateral mode; all are pure numbers.

    Attributes:
        mode: 1 to 4, the number of lobes.
        force: k1 in `P = k1 EI / L^2`.
        feed_in: k2 in `sqrt(1 + k2 EA rho^2 L^5 / (r EI^2))`.
        length_factor: k3 in `P0 = P + k3 r L (sqrt(...) - 1)`; half the ratio of whole buckle to `L`.
        deflection: k4 in `w_max = k4 rho L^4 / EI`.
        moment: k5 in `M_max = k5 rho L^2`.
        shortening: c in `S = c (rho/EI)^2 L^7`, the length the shape takes up over the whole buckle.
        whole_length: whole length of the buckle divided by `L`.
    """

    mode: int
    force: float
    feed_in: float
    length_factor: float
    deflection: float
    moment: float
    shortening: float
    whole_length: float


@dataclass(frozen=True, slots=True)
class HalfShape:
    """One half of a buckled shape for `P = EI = rho = 1`, measured in angles from the outer end.

    Attributes:
        end_shear: third derivative at the outer end.
        node: where the inner lobe begins; None when the half has one lobe.
        middle: the middle of the buckle.
    """

    end_shear: float
    node: float | None
    middle: float

    def derivative(self, order: int, angle: float) -> float:
        """Return the derivative of the deflection of the given order (0 to 3) at an angle from the outer end."""
        value = self.end_shear * _shear_response(order, angle) - _load_response(order, angle)
        if self.node is not None and angle > self.node:
            value += 2.0 * _load_response(order, angle - self.node)
        return value


def _shear_response(order: int, angle: float) -> float:
    return ladder(angle, 1.0)[SHEAR_RUNG - order]


def _load_response(order: int, angle: float) -> float:
    return ladder(angle, 1.0)[SHEAR_RUNG + 1 - order]


def _first_root(function: Callable[[float], float], start: float) -> float:
    """Return the lowest root above `start`; the functions used here have one before the scan ends."""
    from scipy.optimize import brentq  # noqa: PLC0415

    low, value = start, function(start)
    while low < _SCAN_END:
        high = low + _SCAN_STEP
        next_value = function(high)
        # A jump through a pole also changes sign; there the values are large, at a root they are small.
        if value * next_value <= 0.0 and abs(value) + abs(next_value) < 1.0:
            return float(brentq(function, low, high, xtol=1e-15, rtol=1e-14))
        low, value = high, next_value
    msg = "no root found: the conditions of the mode are wrong"
    raise ArithmeticError(msg)


@cache
def half_shape(mode: int) -> HalfShape:
    """Return the shape of one half of the buckle.

    At the middle a symmetric shape has no slope and no shear, an antisymmetric one no deflection and no moment. The
    first of the two conditions is met by choosing the middle, the second by choosing the length of the outer lobe (or,
    with one lobe in the half, the shear at the end).

    Args:
        mode: 1 to 4.

    Returns:
        The shape for `P = EI = rho = 1`.

    Raises:
        RefusedError: when there is no such mode here.
    """
    if mode not in MODES:
        raise refuse("mode", reason="no such mode", value=mode, allowed=tuple(map(str, MODES)))
    first, second = (1, 3) if mode % 2 else (0, 2)

    if mode <= 2:  # noqa: PLR2004 - modes 1 and 2 have one lobe in the half

        def single(middle: float) -> HalfShape:
            return HalfShape(_load_response(first, middle) / _shear_response(first, middle), None, middle)

        return single(_first_root(lambda middle: single(middle).derivative(second, middle), 1.0))

    def double(node: float) -> HalfShape:
        open_shape = HalfShape(_load_response(0, node) / _shear_response(0, node), node, node)
        # Start beyond the node, which for an antisymmetric shape is itself a root of the first condition.
        middle = _first_root(lambda angle: open_shape.derivative(first, angle), node + _SCAN_STEP)
        return HalfShape(open_shape.end_shear, node, middle)

    def mismatch(node: float) -> float:
        shape = double(node)
        return shape.derivative(second, shape.middle)

    return double(_first_root(mismatch, 1.0))


@cache
def mode_constants(mode: int) -> ModeConstants:
    """Return the constants of a mode.

    `L` is the whole buckle in mode 1, one lobe in mode 2, the middle lobe in mode 3 and an inner lobe in mode 4.
    With `c` the shortening constant and `m` the whole length over `L`: `k2 = 4 c / m^2`, `k3 = m / 2`.

    Args:
        mode: 1 to 4.

    Returns:
        The constants.

    Raises:
        RefusedError: when there is no such mode here.
    """
    from scipy.integrate import quad  # noqa: PLC0415

    shape = half_shape(mode)
    inner = shape.middle - (shape.node or 0.0)
    length = 2.0 * inner if mode % 2 else inner
    places = [0.0, shape.middle] if shape.node is None else [0.0, shape.node, shape.middle]
    # Both halves of `int w'^2 / 2`.
    shortening = sum(
        float(quad(lambda angle: shape.derivative(1, angle) ** 2, low, high, epsabs=0.0, epsrel=1e-12)[0])
        for low, high in pairwise(places)
    )
    ratio = 2.0 * shape.middle / length
    constant = shortening / length**7
    return ModeConstants(
        mode=mode,
        force=length * length,
        feed_in=4.0 * constant / ratio**2,
        length_factor=ratio / 2.0,
        deflection=_largest(shape, 0) / length**4,
        moment=_largest(shape, 2) / length**2,
        shortening=constant,
        whole_length=ratio,
    )


def _largest(shape: HalfShape, order: int) -> float:
    """Return the largest size of a derivative over the half, sampled and then refined around the best sample."""
    from scipy.optimize import minimize_scalar  # noqa: PLC0415

    count = 400
    step = shape.middle / count
    best = max(range(count + 1), key=lambda index: abs(shape.derivative(order, index * step)))
    low, high = max(best - 1, 0) * step, min(best + 1, count) * step
    found = minimize_scalar(
        lambda angle: -abs(shape.derivative(order, angle)),
        bounds=(low, high),
        method="bounded",
        options={"xatol": 1e-10},
    )
    return max(-float(found.fun), abs(shape.derivative(order, best * step)))
