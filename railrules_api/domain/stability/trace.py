"""Following the equilibria of a track with a line defect from large deflections to small ones."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from itertools import dropwhile, pairwise, takewhile
from typing import TYPE_CHECKING

from railrules_api.domain.stability.balance import Balance, settle
from railrules_api.domain.stability.lobes import Line, Shape, mismatch
from railrules_api.domain.stability.modes import half_shape, mode_constants

if TYPE_CHECKING:
    from collections.abc import Iterator

    import numpy as np
    import numpy.typing as npt

_STEP = 0.8  # ratio of neighbouring deflections on the way down
_SMALLEST_STEP = 0.97  # a path that needs finer steps than this has come to its end
_BEYOND_LOWER = 2.5  # how far above the straight track's deflection at the lower rise a path ends
_FIRST_DEFLECTION = 2e-4  # of the amplitude of the defect: where a path begins, if not lower by the next line
_FIRST_OF_ONSET = 1e-3  # of the deflection at which the beam's own stiffness tells, see `_first_deflection`
_START_OVER_DEFECT = 20.0  # at this deflection the defect hardly matters, the straight track's shape is a sure start
_BISECTIONS = 8  # of the gap below the three-lobe part of a path
_CORNER = 1e-3  # share by which the rise of one lobe may exceed that of three where they meet
_CLOSE = 1e-8  # how well the conditions of an equilibrium, all pure numbers, must be met


@dataclass(frozen=True, slots=True)
class Point:
    """One equilibrium.

    Attributes:
        line: the problem it solves; its number of lobes may differ along a path.
        deflection: at the middle [m].
        shape: of an even force.
        balance: what is read off it, uneven as the force may be.
    """

    line: Line
    deflection: float
    shape: Shape
    balance: Balance


def trace(line: Line) -> list[Point]:
    """Return the equilibria of a track in the order of growing deflection; empty when there are none.

    With three lobes the part near the beginning needs care. While the movement is small the side lobes have not yet
    met the main one: a stretch of track between them is at rest, and the three-lobe shape would move it against its
    resistance. There the main lobe stands alone, so the path goes on as a one-lobe path.
    """
    points = _settled(line, list(_walk(line)))
    # A curve may be unable to stand the rises of the largest deflections; the path then ends before them.
    after = dropwhile(lambda point: point is None, points)
    kept = [point for point in takewhile(lambda point: point is not None, after) if point is not None]
    # Three lobes that lead all the way down leave nothing to the main one alone.
    if kept and line.lobes > 1 and line.amplitude > 0.0 and kept[-1].deflection > _first_deflection(line):
        kept.extend(_alone(kept[-1]))
    kept.reverse()
    return kept


def _settled(line: Line, found: list[tuple[float, Shape]]) -> list[Point | None]:
    balances = settle(line, [deflection for deflection, _ in found], [shape for _, shape in found]) if found else []
    return [None if balance is None else Point(line, *one, balance) for one, balance in zip(found, balances, strict=True)]


def _alone(last: Point) -> list[Point]:
    """Return what comes below the last three-lobe equilibrium: its true end, found by bisection, then one lobe."""
    line = last.line
    found: list[Point] = []
    low, high = math.log(last.deflection) + 2.0 * math.log(_STEP), math.log(last.deflection)
    end = last
    for _ in range(_BISECTIONS):
        middle = (low + high) / 2.0
        point = at(line, math.exp(middle), end.shape)
        if point is not None:
            high, end = middle, point
        else:
            low = middle
    if end is not last:
        found.append(end)
    share = 1.0 - max(end.shape.nodes)
    alone = replace(line, lobes=1)
    start = Shape(end.shape.angle * share, end.shape.half_length * share, ())
    first = solve(alone, end.deflection * 0.999, start)
    if first is None:
        return found
    points = [point for point in _settled(alone, list(_down(alone, end.deflection * 0.999, first))) if point is not None]
    forces = [point.balance.far_force for point in points]
    begin = 0
    if len(forces) == 1 or forces[0] > forces[1]:
        # A lobe alone that leaves out what the sides have moved already needs a rise too high: no peak may come of that.
        corner = end.balance.far_force * (1.0 + _CORNER)
        begin = next((index for index, force in enumerate(forces) if force <= corner), len(forces))
    return found + points[begin:]


def at(line: Line, deflection: float, guess: Shape) -> Point | None:
    """Return the equilibrium with the given deflection that lies near a guess; None when there is none."""
    shape = solve(line, deflection, guess)
    return None if shape is None else _settled(line, [(deflection, shape)])[0]


def solve(line: Line, deflection: float, guess: Shape) -> Shape | None:
    """Return the shape under an even force, with a deflection at the middle, that lies near a guess; None if there is none."""
    from scipy.optimize import root  # noqa: PLC0415

    # Unknowns of order one; the logarithm keeps the length above zero whatever the solver tries.
    def conditions(unknowns: npt.NDArray[np.float64]) -> list[float]:
        return mismatch(line, _shape(guess, unknowns.tolist()), deflection)

    first = [guess.angle, 0.0, *guess.nodes]
    solution = root(conditions, first, method="hybr", options={"xtol": 1e-12})
    shape = _shape(guess, solution.x.tolist())
    # The solver may stop for want of progress at round-off; the conditions themselves decide.
    if max(map(abs, mismatch(line, shape, deflection))) > _CLOSE:
        return None
    places = (0.0, *shape.nodes, 1.0)
    sound = shape.angle > 0.0 and all(low < high for low, high in pairwise(places))
    return shape if sound else None


def _shape(guess: Shape, unknowns: list[float]) -> Shape:
    # A wild step of the solver must not overflow; so long a buckle misses its conditions anyway.
    return Shape(float(unknowns[0]), guess.half_length * math.exp(min(float(unknowns[1]), 50.0)), tuple(map(float, unknowns[2:])))


def _straight(line: Line, deflection: float) -> Shape:
    """Return the shape of a straight, perfect track at a deflection: `w = k4 L^4`."""
    mode = 1 if line.lobes == 1 else 3
    half = half_shape(mode)
    constants = mode_constants(mode)
    length = (deflection / constants.deflection) ** 0.25
    nodes = () if half.node is None else (half.node / half.middle,)
    return Shape(half.middle, constants.whole_length * length / 2.0, nodes)


def _lower_scale(line: Line) -> float:
    """Return about how far a straight track has moved at its lower rise.

    Minimum of `angle^2 / b^2 + EA Z psi / (1 + psi b)` with `Z` growing as `b^7`, for small and for large `psi b`;
    the larger length of the two.
    """
    mode = 1 if line.lobes == 1 else 3
    constants = mode_constants(mode)
    angle = half_shape(mode).middle
    ratio = constants.whole_length / 2.0
    growth = line.axial * constants.shortening / 2.0 / ratio**7
    weak = math.pow(2.0 * angle**2 / (7.0 * growth * line.decay), 1.0 / 9.0)
    stiff = math.pow(2.0 * angle**2 / (6.0 * growth), 1.0 / 8.0)
    length = max(weak, stiff) / ratio
    return constants.deflection * length**4


def _first_deflection(line: Line) -> float:
    """Return where a path begins.

    Movement sets in when the curvature of the defect and of the line turn the force into the resistance,
    `P = 1 / (4 d/a^2 + 1/R)`. A buckle as long as the beam's own length at that force, `1/sqrt(P)`, moves by about
    `1/P^2`; the upper rise lies within a few powers of ten of the smaller of that and the amplitude.
    """
    if line.amplitude == 0.0:
        return _lower_scale(line) / 100.0
    onset = 1.0 / (4.0 * line.amplitude / line.reach**2 + line.curvature)
    return min(_FIRST_DEFLECTION * line.amplitude, _FIRST_OF_ONSET / onset**2)


def _walk(line: Line) -> Iterator[tuple[float, Shape]]:
    """Yield equilibria from large deflections to small ones until the path or its range ends."""
    last = _BEYOND_LOWER * _lower_scale(line)
    deflection = max(last, _START_OVER_DEFECT * line.amplitude)
    shape = solve(line, deflection, _straight(line, deflection))
    if shape is not None:
        yield from (found for found in _down(line, deflection, shape) if found[0] <= last * 1.000001)


def _down(line: Line, deflection: float, shape: Shape | None) -> Iterator[tuple[float, Shape]]:
    """Yield equilibria from a known one down, with finer steps where the solver needs them."""
    end = _first_deflection(line)
    step = _STEP
    before: tuple[float, Shape] | None = None
    while shape is not None:
        yield deflection, shape
        following: Shape | None = None
        while deflection > end and following is None and step < _SMALLEST_STEP:
            guess = shape if before is None else _ahead(before, (deflection, shape), deflection * step)
            following = solve(line, deflection * step, guess)
            if following is None:
                step = math.sqrt(step)
        before = (deflection, shape)
        deflection *= step
        shape = following


def _ahead(before: tuple[float, Shape], now: tuple[float, Shape], deflection: float) -> Shape:
    """Return a guess by a straight line through two equilibria over the logarithm of the deflection."""
    share = math.log(deflection / now[0]) / math.log(now[0] / before[0])
    old, new = before[1], now[1]
    return Shape(
        new.angle + share * (new.angle - old.angle),
        new.half_length * (new.half_length / old.half_length) ** share,
        tuple(now_at + share * (now_at - was_at) for was_at, now_at in zip(old.nodes, new.nodes, strict=True)),
    )
