"""Equilibrium path of a track with a line defect: temperature rise against deflection, upper and lower rise."""

from __future__ import annotations

import math
from itertools import groupby

from railrules_api.domain.errors import refuse
from railrules_api.domain.stability._inputs import require_not_negative, require_positive
from railrules_api.domain.stability.lobes import Line, integrate
from railrules_api.domain.stability.results import (
    BuckleShape,
    BucklingPath,
    Equilibrium,
    LongitudinalRestraint,
    PathKind,
)
from railrules_api.domain.stability.trace import Point, solve, trace

_LEAST_FALL = 2e-3  # share by which the rise must fall after a peak; less is a corner where the lobes change
_FLAT = 1e-4  # share by which the rise differs between the points around a turn that need no search
_STIFFEST = 2.0  # `psi b` up to which the force in a buckle restrained throughout is even enough
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

    `EI w'''' + P (w'' + w0'') = P/R - F sign(w)`, `w0 = d (1 - (x/a)^2)^2`, ends free to find their place;
    `dT = P / (EA alpha) + Z psi / (alpha (1 + psi b))`, `Z = int_0^b (w'^2/2 + w' w0' + w/R) dx`,
    `psi = sqrt(k / EA)` (restraint outside the buckle; see `lobes.integrate` for restraint throughout). `EI = 2 E I`
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
            is too stiff for the model (`psi b > 2`), or when a turning point cannot be found.
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
    line = Line(
        bending=2.0 * elastic_modulus * second_moment,
        axial=2.0 * elastic_modulus * area,
        expansion=expansion_coefficient,
        resistance=lateral_resistance,
        stiffness=longitudinal_stiffness,
        amplitude=defect_amplitude,
        reach=defect_half_length,
        curvature=curvature,
        lobes=_HALF_LOBES[shape],
        inner_restraint=restraint is LongitudinalRestraint.THROUGHOUT,
    )
    points = trace(line)
    if len(points) < _FEWEST_POINTS:
        raise refuse("curvature", reason="the load of the curve leaves no buckle of this shape", value=curvature)
    decay = math.sqrt(line.stiffness / line.axial)
    if line.inner_restraint and decay * points[-1].shape.half_length > _STIFFEST:
        raise refuse(
            "longitudinal_stiffness",
            reason="so stiff a restraint in the buckle makes the force in it too uneven for this model",
            value=longitudinal_stiffness,
        )
    return _assemble(points)


def _assemble(points: list[Point]) -> BucklingPath:
    onset = _onset(points[0].line)
    values = [*onset, *(part for group in _groups(points) for part in _values(group))]
    rises = [value.temperature_rise for value in values]
    top = _first_peak(rises)
    upper = lower = None
    kind = PathKind.PROGRESSIVE
    if top is not None:
        low = min(range(top, len(rises)), key=rises.__getitem__)
        lower = _turn(points, low - len(onset), sign=1.0)
        kind = PathKind.NO_DEFECT if points[0].line.amplitude == 0.0 else PathKind.UPPER_BEYOND_PATH
        if top > 0:
            upper = _turn(points, top - len(onset), sign=-1.0)
        elif onset:
            upper = values[0]
        if upper is not None:
            kind = PathKind.SNAP_THROUGH
    if kind is PathKind.NO_DEFECT and lower is not None:
        values = [value for value in values if value.temperature_rise < _STRAIGHT_CEILING * lower.temperature_rise]
    line = points[0].line
    shift = line.resistance / (line.curvature * line.axial * line.expansion) if line.curvature > 0.0 else None
    return BucklingPath(kind=kind, upper=upper, lower=lower, points=tuple(values), curve_shift_rise=shift)


def _onset(line: Line) -> list[Equilibrium]:
    """Return the state in which movement sets in, `P = F / (4 d/a^2 + 1/R)`; nothing where a path begins otherwise."""
    if line.lobes > 1 or line.amplitude == 0.0:
        return []
    force = line.resistance / (4.0 * line.amplitude / line.reach**2 + line.curvature)
    return [
        Equilibrium(
            temperature_rise=force / (line.axial * line.expansion),
            deflection=0.0,
            buckled_force=force,
            half_length=0.0,
            lobes=1,
            take_up=0.0,
            energy=0.0,
        )
    ]


def _first_peak(rises: list[float]) -> int | None:
    """Return where the rise first turns down by more than the corner of a change of lobes could feign; None if never."""
    best = 0
    for index, rise in enumerate(rises):
        if rise >= rises[best]:
            best = index
        elif rise < rises[best] * (1.0 - _LEAST_FALL):
            return best
    return None


def _groups(points: list[Point]) -> list[list[Point]]:
    """Return the points in runs that solve one and the same problem."""
    return [list(group) for _, group in groupby(points, key=lambda point: point.line)]


def _values(group: list[Point]) -> list[Equilibrium]:
    """Return the equilibria of points that solve one and the same problem."""
    found = integrate(group[0].line, [point.shape for point in group])
    return [
        Equilibrium(
            temperature_rise=float(found.rise[index]),
            deflection=point.deflection,
            buckled_force=float(found.force[index]),
            half_length=point.shape.half_length,
            lobes=2 * point.line.lobes - 1,
            take_up=float(found.take_up[index]),
            energy=float(found.energy[index]),
        )
        for index, point in enumerate(group)
    ]


def _turn(points: list[Point], index: int, *, sign: float) -> Equilibrium:
    """Return the turning point of the rise between the neighbours of a point: a minimum for sign 1, else a maximum."""
    from scipy.optimize import minimize_scalar  # noqa: PLC0415

    centre = points[index]
    # Where the number of lobes changes the rise may have a corner; the search stays on the point's own side of it.
    near = [point for point in points[max(index - 1, 0) : index + 2] if point.line == centre.line]

    def state(log_deflection: float) -> Equilibrium:
        deflection = math.exp(log_deflection)
        shape = next(filter(None, (solve(centre.line, deflection, point.shape) for point in (centre, *near))), None)
        if shape is None:
            raise refuse(
                "defect_half_length",
                reason="with a defect of this shape a turning point of the rise cannot be found by this model",
                value=centre.line.reach,
            )
        return _values([Point(centre.line, deflection, shape)])[0]

    around = [value.temperature_rise for value in _values(near)]
    # So flat a turn needs no search; it lies at deflections of micrometres, where round-off would defeat one.
    if max(around) - min(around) <= _FLAT * max(around):
        return _values([centre])[0]
    found = minimize_scalar(
        lambda place: sign * state(place).temperature_rise,
        bounds=(math.log(near[0].deflection), math.log(near[-1].deflection)),
        method="bounded",
        options={"xatol": 1e-4},
    )
    return state(float(found.x))
