"""Track with a line defect: known values, limiting cases, balance of energy, properties."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.domain.errors import RefusedError
from railrules_api.domain.stability import (
    BuckleShape,
    Equilibrium,
    LongitudinalRestraint,
    PathKind,
    buckling_energy,
    defect_path,
)
from railrules_api.domain.stability import path as path_module
from railrules_api.domain.stability import trace as trace_module
from railrules_api.domain.stability.balance import settle
from railrules_api.domain.stability.lobes import Line, Shape
from railrules_api.domain.stability.trace import solve, trace
from tests.domain.defect_help import EVERY_MODEL, FAHRENHEIT, inputs, line, path, rises


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
