"""The buckle in balance sideways and along the track: limiting cases, a general library on the same equations, the energy."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from scipy.integrate import solve_bvp
from scipy.optimize import brentq

from railrules_api.domain.stability import (
    BuckleShape,
    defect_path,
    mode_constants,
)
from railrules_api.domain.stability.lobes import Line
from railrules_api.domain.stability.modes import half_shape
from railrules_api.domain.stability.trace import Point, trace
from tests.domain.defect_help import balance_at, inputs, line


@pytest.mark.parametrize(("lobes", "mode"), [(1, 1), (2, 3)])
def test_without_a_defect_the_closed_form_comes_back(lobes: int, mode: int) -> None:
    constants, half = mode_constants(mode), half_shape(mode)
    straight = line(lobes=lobes, amplitude=0.0)
    for point in trace(straight):
        reach, balance = point.shape.half_length, point.balance
        length = 2.0 * reach / constants.whole_length
        assert point.shape.angle == pytest.approx(half.middle, rel=1e-8)
        assert balance.half_length == pytest.approx(reach, rel=1e-8)
        assert point.deflection == pytest.approx(constants.deflection * length**4, rel=1e-8)
        take_up = constants.shortening * length**7 / 2.0
        relief = take_up * straight.decay / (1.0 + straight.decay * reach)
        assert balance.take_up == pytest.approx(take_up, rel=1e-8)
        assert balance.middle_force == pytest.approx(constants.force / length**2, rel=1e-8)
        assert balance.far_force == pytest.approx(constants.force / length**2 + straight.axial * relief, rel=1e-8)


@pytest.mark.parametrize("lobes", [1, 2])
def test_without_a_defect_and_all_but_free_rails_it_matters_not_where_they_are_held(lobes: int) -> None:
    inside, outside = (trace(line(lobes=lobes, inner=inner, amplitude=0.0, stiffness=1e-11)) for inner in (True, False))
    for one, two in zip(inside, outside, strict=True):
        relieved = [point.balance.far_force - point.balance.middle_force for point in (one, two)]
        assert relieved[0] == pytest.approx(relieved[1], rel=1e-6)
        assert one.balance.far_force == pytest.approx(two.balance.far_force, rel=1e-6)
        assert one.balance.half_length == pytest.approx(two.balance.half_length, rel=1e-6)


@pytest.mark.parametrize("shape", list(BuckleShape))
def test_infinite_longitudinal_stiffness_outside(shape: BuckleShape) -> None:
    """Rails that cannot move outside the buckle: `dT = P/(EA alpha) + Z/(alpha b)` at every point."""
    data = inputs(stiffness=1e16, shape=shape)
    axial = 2.0 * data["elastic_modulus"] * data["area"]
    for point in defect_path(**data).points[1:]:  # the first is where movement begins, without a length
        strain = point.buckled_force / axial + point.take_up / point.half_length
        assert point.temperature_rise * data["expansion_coefficient"] == pytest.approx(strain, rel=1e-6)


@pytest.mark.parametrize("lobes", [1, 2])
@pytest.mark.parametrize("amplitude", [0.0, 1.5])
def test_infinite_longitudinal_stiffness_throughout(lobes: int, amplitude: float) -> None:
    """The rise goes to a limit; that it is the right one, scipy's solver tells below."""
    rigid, stiffer = (line(lobes=lobes, inner=True, amplitude=amplitude, stiffness=stiffness) for stiffness in (1e18, 1e20))
    points, again = trace(rigid), trace(stiffer)
    assert len(points) >= 15
    for point, other in zip(points, again, strict=True):
        assert point.balance.far_force == pytest.approx(other.balance.far_force, rel=1e-7)
        assert point.balance.take_up == pytest.approx(other.balance.take_up, rel=1e-7)


def from_scipy(crooked: Line, point: Point, *, rigid: bool) -> tuple[float, float]:
    """Force far from the buckle and half length by scipy's boundary-value solver: the same equations, none of our numerics."""

    def relief(place: Any, slope: Any, moved: Any) -> tuple[Any, Any]:
        ratio = place / crooked.reach
        own = -4.0 * crooked.amplitude / crooked.reach * ratio * (1.0 - ratio**2)
        return own, slope**2 / 2.0 + slope * own + crooked.curvature * moved

    def change(share: Any, state: Any, sought: Any) -> Any:
        far, half = sought
        slope, bend, moved, load, along, strain = state
        own, intake = relief(share * half, slope, moved)
        force = far - crooked.axial * (intake if rigid else strain)
        rows = [bend, load - force * (slope + own), slope, crooked.curvature * force - 1.0]
        rows += [0.0 * along, 0.0 * strain] if rigid else [strain - intake, crooked.decay**2 * along]
        return half * np.array(rows)

    def ends(first: Any, last: Any, _: Any) -> Any:
        outer = last[5] if rigid else last[5] + crooked.decay * last[4]
        return np.array([first[0], last[0], last[1], last[2], first[2] - point.deflection, first[3], first[4], outer])

    share = np.linspace(0.0, 1.0, 41)
    rest, half = 1.0 - share**2, point.balance.half_length
    moved = point.deflection * np.array([-6.0 * share * rest**2 / half, 6.0 * rest * (5.0 * share**2 - 1.0) / half**2, rest**3])
    rough = np.vstack([moved, -half * share, np.zeros((2, len(share)))])
    found = solve_bvp(
        change, ends, share, rough, p=[point.balance.far_force, point.balance.half_length], tol=1e-9, max_nodes=50_000
    )
    assert found.success
    assert found.p is not None
    return float(found.p[0]), float(found.p[1])


@pytest.mark.parametrize(("stiffness", "rigid"), [(200.0, False), (5000.0, False), (1e20, True)])
@pytest.mark.parametrize("changed", [{"amplitude": 0.0}, {"reach": 300.0}, {"reach": 300.0, "degrees": 2.0}], ids=str)
def test_the_solver_of_a_general_library_finds_the_same(changed: dict[str, Any], stiffness: float, rigid: bool) -> None:  # noqa: FBT001
    crooked = line(inner=True, stiffness=stiffness, **changed)
    points = [point for point in trace(crooked) if point.balance.half_length < crooked.reach or crooked.amplitude == 0.0]
    for point in points[5:-1:8]:
        far, half = from_scipy(crooked, point, rigid=rigid)
        assert point.balance.far_force == pytest.approx(far, rel=1e-6)
        assert point.balance.half_length == pytest.approx(half, rel=1e-6)


@pytest.mark.parametrize("shape", list(BuckleShape))
def test_no_longitudinal_stiffness_leaves_the_force_alone(shape: BuckleShape) -> None:
    data = inputs(stiffness=1e-14, shape=shape)
    axial = 2.0 * data["elastic_modulus"] * data["area"]
    for point in defect_path(**data).points:
        if point.deflection < 0.1:
            assert point.temperature_rise * axial * data["expansion_coefficient"] == pytest.approx(point.buckled_force, rel=1e-5)


TRACKS_OF_ENERGY: list[dict[str, Any]] = [
    {},
    {"degrees": 3.0},
    {"stiffness": 1000.0, "amplitude": 1.0},
    {"stiffness": 50.0, "lateral": 100.0, "degrees": 5.0},
    {"amplitude": 4.0, "reach": 150.0},
    {"amplitude": 0.0},
]


@pytest.mark.parametrize("inner", [False, True])
@pytest.mark.parametrize("changed", TRACKS_OF_ENERGY, ids=str)
@pytest.mark.parametrize("lobes", [1, 2])
def test_balance_of_energy_at_every_point_of_the_path(lobes: int, changed: dict[str, Any], inner: bool) -> None:  # noqa: FBT001
    """Along a path of equilibria `dE = -2 Z d(EA alpha dT)`: nothing else can change the energy of the held track.

    With restraint outside the buckle only, a growing buckle also does away with springs; they held `(P0 - P)^2 / (2 EA)`
    per length. The path is followed on both sides of its turns.
    """
    crooked = line(lobes=lobes, inner=inner, **changed)
    points = [point for point in trace(crooked) if point.line == crooked][1::3]
    assert len(points) >= 7
    for point in points:
        place = math.log(point.deflection)
        near = [balance_at(crooked, place + step, point) for step in (-0.004, -0.002, 0.0, 0.002, 0.004)]
        weights = [weight / 0.002 for weight in (1.0 / 12.0, -8.0 / 12.0, 0.0, 8.0 / 12.0, -1.0 / 12.0)]
        energy, growth, slope = (
            sum(w * value for w, value in zip(weights, column, strict=True))
            for column in zip(*((one.energy, one.half_length, one.far_force) for one in near), strict=True)
        )
        here = near[2]
        expected = -2.0 * here.take_up * here.slope
        if not inner:
            expected -= (here.far_force - here.middle_force) ** 2 / crooked.axial * growth
        assert slope == pytest.approx(here.slope, rel=1e-6, abs=1e-8 * here.far_force)
        assert energy == pytest.approx(expected, rel=0.0, abs=1e-6 * 2.0 * here.take_up * here.far_force)


@pytest.mark.parametrize("changed", TRACKS_OF_ENERGY, ids=str)
@pytest.mark.parametrize("lobes", [1, 2])
def test_work_done_is_stored_or_used_up_along_the_whole_path(lobes: int, changed: dict[str, Any]) -> None:
    """What the heat does from the first movement on, `int 2 P0 dZ`, is in beam, rails and springs or spent on the resistance."""
    crooked = line(lobes=lobes, inner=True, **changed)
    points = [point for point in trace(crooked) if point.line == crooked]
    work = 0.0
    first = points[0].balance
    for one, two in pairwise(points):
        near = (two, one)
        begin, end = math.log(one.deflection), math.log(two.deflection)
        marks = [begin, end]
        if (one.balance.half_length < crooked.reach) != (two.balance.half_length < crooked.reach):
            # where the end of the buckle passes that of the defect the slope has a corner, which no quadrature likes
            corner = brentq(lambda place, near=near: balance_at(crooked, place, *near).half_length - crooked.reach, begin, end)
            marks.insert(1, float(corner))
        for low, high in pairwise(marks):
            for place, weight in zip(*np.polynomial.legendre.leggauss(6 * (len(marks) - 1) ** 2), strict=True):
                there = balance_at(crooked, low + (high - low) * (float(place) + 1.0) / 2.0, *near)
                work -= 2.0 * there.take_up * there.slope * float(weight) * (high - low) / 2.0
        # integrated by parts, since the slope of the force is known and that of the take-up is not
        now = two.balance
        done = 2.0 * (now.far_force * now.take_up - first.far_force * first.take_up) + work
        assert now.stored - first.stored == pytest.approx(done, rel=1e-6)
