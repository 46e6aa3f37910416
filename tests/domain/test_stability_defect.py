"""Track with a line defect: known values, limiting cases, balance of energy, properties."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_bvp
from scipy.optimize import brentq

from railrules_api.domain.errors import RefusedError
from railrules_api.domain.stability import (
    BuckleShape,
    BucklingPath,
    Equilibrium,
    LongitudinalRestraint,
    PathKind,
    buckling_energy,
    defect_path,
    mode_constants,
)
from railrules_api.domain.stability import path as path_module
from railrules_api.domain.stability import trace as trace_module
from railrules_api.domain.stability.balance import Balance, settle
from railrules_api.domain.stability.lobes import Line, Shape
from railrules_api.domain.stability.modes import half_shape
from railrules_api.domain.stability.trace import Point, at, solve, trace

INCH = 0.0254
PSI = 6894.757293168
POUND_PER_INCH = 4.4482216152605 / INCH
FAHRENHEIT = 1.8
EVERY_MODEL = [(shape, restraint) for shape in BuckleShape for restraint in LongitudinalRestraint]


def inputs(**changed: Any) -> dict[str, Any]:
    """The note's track: 136 lb section, 60 lb/in, 200 psi, 1.5 in over 360 in; changes in those units."""
    given_ = {"lateral": 60.0, "stiffness": 200.0, "amplitude": 1.5, "reach": 180.0, "degrees": 0.0, **changed}
    return {
        "elastic_modulus": 30e6 * PSI,
        "second_moment": 14.5 * INCH**4,
        "area": 13.35 * INCH**2,
        "expansion_coefficient": 6.5e-6 * FAHRENHEIT,
        "lateral_resistance": given_["lateral"] * POUND_PER_INCH,
        "longitudinal_stiffness": given_["stiffness"] * PSI,
        "defect_amplitude": given_["amplitude"] * INCH,
        "defect_half_length": given_["reach"] * INCH,
        "shape": given_.get("shape", BuckleShape.ONE_LOBE),
        "restraint": given_.get("restraint", LongitudinalRestraint.OUTSIDE),
        "curvature": given_["degrees"] / 1746.4,  # a degree of curve on a 100 ft chord, near enough
    }


def path(**changed: Any) -> BucklingPath:
    return defect_path(**inputs(**changed))


def rises(found: BucklingPath) -> tuple[float, float]:
    assert found.upper is not None
    assert found.lower is not None
    return found.upper.temperature_rise * FAHRENHEIT, found.lower.temperature_rise * FAHRENHEIT


def test_rises_of_the_note() -> None:
    """82.5 and 68.2 F were found with a Fourier series by other people; 73.8 F without a defect."""
    upper, lower = rises(path())
    assert upper == pytest.approx(82.5, abs=0.05)
    assert lower == pytest.approx(68.2, abs=0.05)
    straight = path(amplitude=0.0)
    assert straight.kind is PathKind.NO_DEFECT
    assert straight.upper is None
    assert straight.lower is not None
    assert straight.lower.temperature_rise * FAHRENHEIT == pytest.approx(73.8, abs=0.05)


def line(*, lobes: int = 1, inner: bool = False, **changed: Any) -> Line:
    """The same in units in which bending stiffness and lateral resistance are 1."""
    data = inputs(**changed)
    bending = 2.0 * data["elastic_modulus"] * data["second_moment"]
    axial = 2.0 * data["elastic_modulus"] * data["area"]
    length = (bending / data["lateral_resistance"]) ** (1.0 / 3.0)
    return Line(
        axial=axial / (data["lateral_resistance"] * length),
        decay=math.sqrt(data["longitudinal_stiffness"] / axial) * length,
        amplitude=data["defect_amplitude"] / length,
        reach=data["defect_half_length"] / length,
        curvature=data["curvature"] * length,
        lobes=lobes,
        inner_restraint=inner,
    )


def balance_at(crooked: Line, log_deflection: float, *near: Point) -> Balance:
    found = next(filter(None, (at(crooked, math.exp(log_deflection), point.shape) for point in near)), None)
    assert found is not None
    return found.balance


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


@pytest.mark.parametrize("lobes", [1, 2])
def test_rails_held_in_the_buckle_too_need_a_higher_rise(lobes: int) -> None:
    inside, outside = trace(line(lobes=lobes, inner=True)), trace(line(lobes=lobes))
    for one, two in zip(inside[-20:], outside[-20:], strict=True):
        assert one.deflection == two.deflection
        assert one.balance.far_force > two.balance.far_force


@pytest.mark.parametrize(("shape", "restraint"), EVERY_MODEL)
def test_points_run_to_growing_deflections_and_bracket_the_turns(shape: BuckleShape, restraint: LongitudinalRestraint) -> None:
    found = path(shape=shape, restraint=restraint)
    assert found.kind is PathKind.SNAP_THROUGH
    assert all(one.deflection < two.deflection for one, two in pairwise(found.points))
    assert found.upper is not None
    assert found.lower is not None
    assert found.upper.temperature_rise >= max(p.temperature_rise for p in found.points if p.deflection < found.lower.deflection)
    assert found.lower.temperature_rise <= min(p.temperature_rise for p in found.points if p.deflection > found.upper.deflection)


@pytest.mark.parametrize(("shape", "restraint"), EVERY_MODEL)
def test_a_big_short_defect_is_progressive(shape: BuckleShape, restraint: LongitudinalRestraint) -> None:
    found = path(amplitude=4.0, reach=150.0, shape=shape, restraint=restraint)
    assert found.kind is PathKind.PROGRESSIVE
    assert found.upper is None
    assert found.lower is None
    assert all(one.temperature_rise < two.temperature_rise for one, two in pairwise(found.points))


def test_movement_begins_where_the_resistance_is_overcome() -> None:
    """`P = F a^2 / (4 d)` at the middle of the defect."""
    data = inputs(amplitude=0.5)
    onset = data["lateral_resistance"] * data["defect_half_length"] ** 2 / (4.0 * data["defect_amplitude"])
    assert defect_path(**data).points[0].buckled_force == pytest.approx(onset, rel=0.05)


def test_curve_and_straight_agree_as_the_radius_grows() -> None:
    straight = rises(path(shape=BuckleShape.THREE_LOBES))
    assert rises(path(shape=BuckleShape.THREE_LOBES, degrees=1e-7)) == pytest.approx(straight, rel=1e-6)
    assert rises(path(shape=BuckleShape.THREE_LOBES, degrees=3.0)) < straight


def test_buckling_energy_falls_from_the_lower_to_the_upper_rise() -> None:
    found = path()
    assert found.upper is not None
    assert found.lower is not None
    low, high = found.lower.temperature_rise, found.upper.temperature_rise
    energies = [buckling_energy(path=found, temperature_rise=low + share * (high - low)) for share in (0.0, 0.25, 0.5, 0.75, 1.0)]
    assert all(one > two for one, two in pairwise(energies))
    assert energies[-1] == pytest.approx(0.0, abs=1e-3 * energies[0])
    with pytest.raises(RefusedError) as caught:
        buckling_energy(path=found, temperature_rise=high + 1.0)
    assert caught.value.refusals[0].maximum == high
    with pytest.raises(RefusedError):
        buckling_energy(path=path(amplitude=0.0), temperature_rise=low)


@pytest.mark.parametrize("field", ["elastic_modulus", "lateral_resistance", "longitudinal_stiffness", "defect_half_length"])
@pytest.mark.parametrize("value", [0.0, -1.0, math.nan, math.inf])
def test_refuses_what_is_not_a_positive_number(field: str, value: float) -> None:
    with pytest.raises(RefusedError) as caught:
        defect_path(**{**inputs(), field: value})
    assert caught.value.refusals[0].path == (field,)


@pytest.mark.parametrize("field", ["defect_amplitude", "curvature"])
def test_refuses_negative_amplitude_and_curvature(field: str) -> None:
    with pytest.raises(RefusedError) as caught:
        defect_path(**{**inputs(), field: -0.001})
    assert caught.value.refusals[0].path == (field,)


def test_a_sharp_curve_slides_out_before_it_buckles() -> None:
    """Load `P/R` of the curve above `F` at every force at which the track could stand buckled."""
    with pytest.raises(RefusedError) as caught:
        path(lateral=5.0, degrees=25.0)
    assert caught.value.refusals[0].path == ("curvature",)


@pytest.mark.parametrize("lateral", [25.0, 40.0])
def test_a_long_slight_defect_in_a_curve_buckles_where_movement_begins(lateral: float) -> None:
    data = inputs(lateral=lateral, amplitude=0.2, reach=1600.0, degrees=3.5)
    found = defect_path(**data)
    load = 4.0 * data["defect_amplitude"] / data["defect_half_length"] ** 2 + data["curvature"]
    assert found.kind is PathKind.SNAP_THROUGH
    assert found.upper is not None
    assert found.upper.buckled_force == pytest.approx(data["lateral_resistance"] / load, rel=2e-3)
    assert found.lower is not None
    assert buckling_energy(path=found, temperature_rise=found.lower.temperature_rise) > 0.0


@pytest.mark.parametrize("shape", list(BuckleShape))
def test_no_rise_exceeds_that_which_moves_the_whole_curve(shape: BuckleShape) -> None:
    data = inputs(degrees=8.0, shape=shape)
    found = defect_path(**data)
    axial = 2.0 * data["elastic_modulus"] * data["area"]
    shift = data["lateral_resistance"] / (data["curvature"] * axial * data["expansion_coefficient"])
    assert found.curve_shift_rise == pytest.approx(shift, rel=1e-12)
    assert shift > max(point.temperature_rise for point in found.points) > 0.8 * shift
    assert path(shape=shape).curve_shift_rise is None


UNIT = path_module._Scale(length=1.0, force=1.0, heating=1.0)  # noqa: SLF001


def test_a_path_that_begins_beyond_its_peak_says_so() -> None:
    line_ = line(lobes=2)
    beyond = [point for point in trace(line_) if point.deflection > 0.5 * line_.amplitude]
    found = path_module._assemble(beyond, UNIT)  # noqa: SLF001
    assert found.kind is PathKind.UPPER_BEYOND_PATH
    assert found.upper is None
    assert found.lower is not None


def test_refuses_when_the_solver_fails_between_points(monkeypatch: pytest.MonkeyPatch) -> None:
    points = trace(line())
    monkeypatch.setattr(path_module, "at", lambda *_: None)
    with pytest.raises(RefusedError) as caught:
        path_module._assemble(points, UNIT)  # noqa: SLF001
    assert caught.value.refusals[0].path == ("defect_half_length",)


def test_a_turn_at_movements_lost_in_round_off_is_read_off_its_flat_neighbourhood() -> None:
    """A defect of a fifth of an inch over eighty feet: the upper rise lies at some hundredths of a micrometre."""
    data = inputs(shape=BuckleShape.THREE_LOBES, restraint=LongitudinalRestraint.THROUGHOUT)
    slight: dict[str, Any] = {"defect_amplitude": 0.00535, "defect_half_length": 11.97, "curvature": 7.56e-5}
    own: dict[str, Any] = {
        "elastic_modulus": 1.57e11,
        "second_moment": 2.416e-6,
        "area": 0.004735,
        "expansion_coefficient": 1.17e-5,
    }
    found = defect_path(**{**data, **slight, **own, "lateral_resistance": 2999.0, "longitudinal_stiffness": 361_900.0})
    assert found.kind is PathKind.SNAP_THROUGH
    assert found.upper is not None
    assert found.upper.deflection < 1e-6
    assert found.upper.temperature_rise == pytest.approx(max(p.temperature_rise for p in found.points), rel=1e-4)


def test_a_path_lost_before_its_lower_rise_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(
        path_module, "trace", lambda crooked: [one for one in trace(crooked) if one.deflection < crooked.amplitude]
    )
    with pytest.raises(RefusedError) as caught:
        path(restraint=LongitudinalRestraint.THROUGHOUT)
    assert caught.value.refusals[0].path == ("longitudinal_stiffness",)


def test_what_never_settles_is_no_equilibrium() -> None:
    assert settle(line(inner=True), [1e-3], [Shape(0.1, 50.0, ())]) == [None]


def test_a_path_ends_where_the_lone_lobe_cannot_be_found(monkeypatch: pytest.MonkeyPatch) -> None:
    whole = trace(line(lobes=2))

    def lame(crooked: Line, deflection: float, guess: Shape) -> Shape | None:
        return None if crooked.lobes == 1 else solve(crooked, deflection, guess)

    monkeypatch.setattr(trace_module, "solve", lame)
    part = trace(line(lobes=2))
    assert {point.line.lobes for point in part} == {2}
    assert part == [point for point in whole if point.line.lobes == 2]


TRACKS = {
    "lateral": st.floats(30.0, 120.0),
    "stiffness": st.floats(50.0, 500.0),
    "amplitude": st.floats(0.5, 2.5),
    "reach": st.floats(110.0, 260.0),
}
MODELS = st.sampled_from(EVERY_MODEL)


def turns(**changed: Any) -> tuple[float, float]:
    """Upper and lower rise; a progressive path counts as having neither, both zero."""
    found = path(**changed)
    upper = found.upper.temperature_rise if found.upper else 0.0
    return upper, found.lower.temperature_rise if found.lower else 0.0


@settings(max_examples=25, deadline=None)
@given(**TRACKS, model=MODELS, more=st.floats(1.01, 2.0), grown=st.sampled_from(["lateral", "stiffness"]))
def test_more_resistance_never_lowers_either_rise(model: Any, more: float, grown: str, **data: float) -> None:
    shape, restraint = model
    one = turns(shape=shape, restraint=restraint, **data)
    two = turns(shape=shape, restraint=restraint, **{**data, grown: data[grown] * more})
    if min(*one, *two) > 0.0:
        assert two[0] >= one[0] * (1.0 - 1e-3)
        assert two[1] >= one[1] * (1.0 - 1e-3)


@settings(max_examples=25, deadline=None)
@given(**TRACKS, model=MODELS, more=st.floats(1.01, 2.0))
def test_a_larger_defect_never_raises_the_upper_rise(model: Any, more: float, **data: float) -> None:
    shape, restraint = model
    one = turns(shape=shape, restraint=restraint, **data)
    two = turns(shape=shape, restraint=restraint, **{**data, "amplitude": data["amplitude"] * more})
    if min(*one, *two) > 0.0:
        assert two[0] <= one[0] * (1.0 + 1e-3)


@settings(max_examples=15, deadline=None)
@given(length=st.floats(1e-2, 1e2), force=st.floats(1e-2, 1e2), model=MODELS)
def test_units_of_length_and_force_do_not_matter(length: float, force: float, model: Any) -> None:
    data = inputs(shape=model[0], restraint=model[1], degrees=1.0)
    scaled = {
        **data,
        "elastic_modulus": data["elastic_modulus"] * force / length**2,
        "second_moment": data["second_moment"] * length**4,
        "area": data["area"] * length**2,
        "lateral_resistance": data["lateral_resistance"] * force / length,
        "longitudinal_stiffness": data["longitudinal_stiffness"] * force / length**2,
        "defect_amplitude": data["defect_amplitude"] * length,
        "defect_half_length": data["defect_half_length"] * length,
        "curvature": data["curvature"] / length,
    }
    one, two = defect_path(**data), defect_path(**scaled)
    assert rises(two) == pytest.approx(rises(one), rel=1e-12)
    assert len(two.points) == len(one.points)
    for before, after in zip([one.upper, one.lower, *one.points], [two.upper, two.lower, *two.points], strict=True):
        assert before is not None
        assert after is not None
        assert after.temperature_rise == pytest.approx(before.temperature_rise, rel=1e-12)
        assert after.deflection == pytest.approx(before.deflection * length, rel=1e-12)
        assert after.buckled_force == pytest.approx(before.buckled_force * force, rel=1e-12)
        # of a movement of micrometres the last digits of length and take-up are round-off
        assert after.half_length == pytest.approx(before.half_length * length, rel=1e-11)
        assert after.take_up == pytest.approx(before.take_up * length, rel=1e-11)
        # energy goes through zero: it is a small difference of large parts
        assert after.energy == pytest.approx(before.energy * length * force, rel=1e-12, abs=1e-12 * work(after))


def work(state: Equilibrium) -> float:
    return state.buckled_force * state.take_up
