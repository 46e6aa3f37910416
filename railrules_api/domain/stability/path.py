"""Equilibrium path of a track with a line defect: temperature rise against deflection, upper and lower rise."""

from __future__ import annotations

import math
from typing import NamedTuple

from railrules_api.domain.errors import RefusedError, refuse
from railrules_api.domain.stability._inputs import require_not_negative, require_positive
from railrules_api.domain.stability.balance import Balance
from railrules_api.domain.stability.lobes import Line
from railrules_api.domain.stability.results import (
    BuckleShape,
    BucklingPath,
    Equilibrium,
    LongitudinalRestraint,
    PathKind,
)
from railrules_api.domain.stability.trace import Point, at, trace

_LEAST_FALL = 2e-3  # share by which the rise must fall after a peak; less is a corner where the lobes change
_FLAT = 1e-4  # share by which the rise may differ beside a turn that the search cannot find
_FEWEST_POINTS = 3  # a turning point needs a point on either side
_HALF_LOBES = {BuckleShape.ONE_LOBE: 1, BuckleShape.THREE_LOBES: 2}
_STRAIGHT_CEILING = 3.0  # a straight track's path begins at this multiple of its lower rise


def defect_path(  # noqa: PLR0913 - one keyword for each physical input
    *,
    elastic_modulus: float,
    second_moment: float,
    area: float,
    expansion_coefficient: float,
    lateral_resistance: float,
    longitudinal_stiffness: float,
    defect_amplitude: float,
    defect_half_length: float,
    shape: BuckleShape,
    restraint: LongitudinalRestraint,
    curvature: float,
) -> BucklingPath:
    """Return the equilibrium path of a track with one line defect, and its upper and lower buckling rise.

    `EI w'''' + (N (w' + w0'))' = N/R - F sign(w)`, `w0 = d (1 - (x/a)^2)^2`, ends free to find their place;
    `N = EA alpha dT - EA e`, `e = u' + z`, `z = w'^2/2 + w' w0' + w/R`, `EA e' = k u`, all from one potential, see
    `balance`. With restraint outside the buckle only `e' = 0` in it, so that `N` is even and
    `dT = N / (EA alpha) + Z psi / (alpha (1 + psi b))`, `Z = int_0^b z dx`, `psi = sqrt(k / EA)`. `EI = 2 E I`
    and `EA = 2 E A`; turning stiffness of the fastenings is left out; lateral resistance is constant.

    The upper rise is the first maximum of the rise along the path, the lower rise the smallest value after it. A fall of
    less than 0.2 per cent of the rise does not count as a snap: such a path is called progressive. In a curve every rise
    stays below `F R / (EA alpha)`, at which the whole curve slides outwards.

    Args:
        elastic_modulus: of the rail steel [Pa].
        second_moment: of one rail about its vertical axis [m4].
        area: of one rail [m2].
        expansion_coefficient: of the rail steel [1/K].
        lateral_resistance: `F`, of the track [N/m].
        longitudinal_stiffness: `k`, force along the track per length of track and per movement, both rails [Pa].
        defect_amplitude: `d`, zero for a straight track [m].
        defect_half_length: `a`, from the middle to where the defect ends [m].
        shape: how the track around the defect may move.
        restraint: where the rails are held along the track.
        curvature: `1/R`, zero for straight track; the defect points outwards [1/m].

    Returns:
        The path.

    Raises:
        RefusedError: for an input that is not finite or not above zero (amplitude and curvature may be zero), and when
            the load of the curve overcomes the lateral resistance before the track can buckle, when restraint throughout
            is so stiff that the path is lost before its lower rise, or when a turning point cannot be found.
    """
    require_positive(
        elastic_modulus=elastic_modulus,
        second_moment=second_moment,
        area=area,
        expansion_coefficient=expansion_coefficient,
        lateral_resistance=lateral_resistance,
        longitudinal_stiffness=longitudinal_stiffness,
        defect_half_length=defect_half_length,
    )
    require_not_negative(defect_amplitude=defect_amplitude, curvature=curvature)
    bending, axial = 2.0 * elastic_modulus * second_moment, 2.0 * elastic_modulus * area
    length = math.cbrt(bending / lateral_resistance)
    scale = _Scale(length=length, force=lateral_resistance * length, heating=axial * expansion_coefficient)
    line = Line(
        axial=axial / scale.force,
        decay=math.sqrt(longitudinal_stiffness / axial) * length,
        amplitude=defect_amplitude / length,
        reach=defect_half_length / length,
        curvature=curvature * length,
        lobes=_HALF_LOBES[shape],
        inner_restraint=restraint is LongitudinalRestraint.THROUGHOUT,
    )
    points = trace(line)
    if len(points) < _FEWEST_POINTS:
        raise refuse("curvature", reason="the load of the curve leaves no buckle of this shape", value=curvature)
    found = _assemble(points, scale)
    if found.lower is not None and found.lower.deflection == found.points[-1].deflection:
        raise refuse(
            "longitudinal_stiffness",
            reason="with so stiff a restraint the path cannot be followed as far as its lower rise",
            value=longitudinal_stiffness,
        )
    return found


class _Scale(NamedTuple):
    """What turns the pure numbers of a path into quantities.

    Attributes:
        length: `(EI/F)^(1/3)` [m].
        force: `(EI F^2)^(1/3)` [N].
        heating: `EA alpha`, force far from the buckle for each kelvin of rise [N/K].
    """

    length: float
    force: float
    heating: float

    def equilibrium(self, point: Point) -> Equilibrium:
        balance = point.balance
        return Equilibrium(
            temperature_rise=balance.far_force * self.force / self.heating,
            deflection=point.deflection * self.length,
            buckled_force=balance.middle_force * self.force,
            half_length=balance.half_length * self.length,
            lobes=2 * point.line.lobes - 1,
            take_up=balance.take_up * self.length,
            energy=balance.energy * self.force * self.length,
            slope=balance.slope / balance.far_force,
        )


def _assemble(points: list[Point], scale: _Scale) -> BucklingPath:
    line = points[0].line
    onset = _onset(points[0])
    every = [*onset, *points]
    top = _first_peak(every)
    upper = lower = None
    kind = PathKind.PROGRESSIVE
    if top is not None:
        low = min(range(top, len(every)), key=lambda index: every[index].balance.far_force)
        lower = _turn(points, low - len(onset))
        kind = PathKind.NO_DEFECT if line.amplitude == 0.0 else PathKind.UPPER_BEYOND_PATH
        if top > 0:
            upper = _turn(points, top - len(onset))
        elif onset:
            upper = onset[0]
        if upper is not None:
            kind = PathKind.SNAP_THROUGH
    if kind is PathKind.NO_DEFECT and lower is not None:
        ceiling = _STRAIGHT_CEILING * lower.balance.far_force
        every = [point for point in every if point.balance.far_force < ceiling]
    return BucklingPath(
        kind=kind,
        upper=None if upper is None else scale.equilibrium(upper),
        lower=None if lower is None else scale.equilibrium(lower),
        points=tuple(map(scale.equilibrium, every)),
        curve_shift_rise=scale.force / (line.curvature * scale.heating) if line.curvature > 0.0 else None,
    )


def _onset(first: Point) -> list[Point]:
    """Return the state in which movement sets in, `P = F / (4 d/a^2 + 1/R)`; nothing where a path begins otherwise."""
    line = first.line
    if line.lobes > 1 or line.amplitude == 0.0:
        return []
    force = 1.0 / (4.0 * line.amplitude / line.reach**2 + line.curvature)
    return [Point(line, 0.0, first.shape, Balance(force, force, 0.0, 0.0, 0.0, 0.0, 0.0))]


def _first_peak(points: list[Point]) -> int | None:
    """Return where the rise first turns down by more than the corner of a change of lobes could feign; None if never."""
    forces = [point.balance.far_force for point in points]
    best = 0
    for index, force in enumerate(forces):
        if force >= forces[best]:
            best = index
        elif force < forces[best] * (1.0 - _LEAST_FALL):
            return best
    return None


def _turn(points: list[Point], index: int) -> Point:
    """Return the turning point of the rise beside a point: where its slope over the deflection is zero.

    Where the number of lobes changes the rise may have a corner: a point whose slope has the same sign as that of its
    neighbours with as many lobes is a corner itself.
    """
    from scipy.optimize import brentq  # noqa: PLC0415

    centre = points[index]
    beside = [
        point
        for point in points[max(index - 1, 0) : index + 2]
        if point.line == centre.line and point.balance.slope * centre.balance.slope < 0.0
    ]
    if not beside:
        return centre
    ends = (centre, beside[0])
    seen = {math.log(point.deflection): point for point in ends}

    def slope(log_deflection: float) -> float:
        if log_deflection not in seen:
            deflection = math.exp(log_deflection)
            found = next(filter(None, (at(centre.line, deflection, point.shape) for point in ends)), None)
            if found is None:
                raise refuse(
                    "defect_half_length",
                    reason="with a defect of this shape a turning point of the rise cannot be found by this model",
                    value=centre.line.reach,
                )
            seen[log_deflection] = found
        return seen[log_deflection].balance.slope

    low, high = sorted(seen)
    try:
        place = float(brentq(slope, low, high, xtol=1e-13, rtol=1e-14))
    except RefusedError:
        # A turn at movements of less than a micrometre is defeated by round-off; it is flat, so that no search is needed.
        forces = [point.balance.far_force for point in ends]
        if max(forces) - min(forces) > _FLAT * max(forces):
            raise
        return centre
    return min(seen.items(), key=lambda item: abs(item[0] - place))[1]
