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
    BucklingPath,
    LongitudinalRestraint,
    PathKind,
    buckling_energy,
    defect_path,
    mode_constants,
)
from railrules_api.domain.stability import path as path_module
from railrules_api.domain.stability import trace as trace_module
from railrules_api.domain.stability.lobes import Line, Shape, integrate
from railrules_api.domain.stability.modes import half_shape
from railrules_api.domain.stability.trace import solve, trace

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
    data = inputs(**changed)
    return Line(
        bending=2.0 * data["elastic_modulus"] * data["second_moment"],
        axial=2.0 * data["elastic_modulus"] * data["area"],
        expansion=data["expansion_coefficient"],
        resistance=data["lateral_resistance"],
        stiffness=data["longitudinal_stiffness"],
        amplitude=data["defect_amplitude"],
        reach=data["defect_half_length"],
        curvature=data["curvature"],
        lobes=lobes,
        inner_restraint=inner,
    )


@pytest.mark.parametrize(("lobes", "mode"), [(1, 1), (2, 3)])
def test_without_a_defect_the_closed_form_comes_back(lobes: int, mode: int) -> None:
    constants, half = mode_constants(mode), half_shape(mode)
    straight = line(lobes=lobes, amplitude=0.0)
    decay = math.sqrt(straight.stiffness / straight.axial)
    for point in trace(straight):
        reach = point.shape.half_length
        length = 2.0 * reach / constants.whole_length
        assert point.shape.angle == pytest.approx(half.middle, rel=1e-8)
        assert point.deflection == pytest.approx(
            constants.deflection * straight.resistance * length**4 / straight.bending, rel=1e-6
        )
        take_up = constants.shortening * (straight.resistance / straight.bending) ** 2 * length**7 / 2.0
        rise = constants.force * straight.bending / length**2 / straight.axial + take_up * decay / (1.0 + decay * reach)
        found = integrate(straight, [point.shape])
        assert float(found.take_up[0]) == pytest.approx(take_up, rel=1e-6)
        assert float(found.rise[0]) * straight.expansion == pytest.approx(rise, rel=1e-6)


@pytest.mark.parametrize(("shape", "restraint"), EVERY_MODEL)
def test_infinite_longitudinal_stiffness(shape: BuckleShape, restraint: LongitudinalRestraint) -> None:
    """Rails that cannot move: with restraint outside only, `dT = P/(EA alpha) + Z/(alpha b)` at every point."""
    data = inputs(stiffness=1e16, shape=shape, restraint=LongitudinalRestraint.OUTSIDE)
    axial = 2.0 * data["elastic_modulus"] * data["area"]
    for point in defect_path(**data).points[1:]:  # the first is where movement begins, without a length
        strain = point.buckled_force / axial + point.take_up / point.half_length
        assert point.temperature_rise * data["expansion_coefficient"] == pytest.approx(strain, rel=1e-6)
    # Held everywhere the stiff limit is higher than held at the ends only, and finite either way.
    if restraint is LongitudinalRestraint.THROUGHOUT:
        held = defect_path(**inputs(stiffness=1e4, shape=shape, restraint=restraint))
        assert all(math.isfinite(point.temperature_rise) for point in held.points)


@pytest.mark.parametrize("shape", list(BuckleShape))
def test_no_longitudinal_stiffness_leaves_the_force_alone(shape: BuckleShape) -> None:
    data = inputs(stiffness=1e-14, shape=shape)
    axial = 2.0 * data["elastic_modulus"] * data["area"]
    for point in defect_path(**data).points:
        if point.deflection < 0.1:
            assert point.temperature_rise * axial * data["expansion_coefficient"] == pytest.approx(point.buckled_force, rel=1e-5)


@pytest.mark.parametrize("inner", [False, True])
@pytest.mark.parametrize("degrees", [0.0, 3.0])
@pytest.mark.parametrize("lobes", [1, 2])
def test_balance_of_energy_along_the_path(lobes: int, degrees: float, inner: bool) -> None:  # noqa: FBT001
    """Along a path of equilibria `dE = -2 Z d(EA alpha dT)`: nothing else can change the energy of the held track.

    With restraint outside the buckle only, a growing buckle also does away with springs; they held `(P0 - P)^2 / (2 EA)`
    per length. With restraint throughout, the force in the buckle is a weighted mean, so the balance is near but not exact.
    """
    crooked = line(lobes=lobes, degrees=degrees, inner=inner)
    points = trace(crooked)
    chosen = [point for point in points if point.line.lobes == lobes and 0.02 < point.deflection < 0.3][::3]
    assert len(chosen) >= 4
    for point in chosen:
        shapes = []
        for step in (-0.004, -0.002, 0.0, 0.002, 0.004):
            shape = solve(point.line, point.deflection * math.exp(step), point.shape)
            assert shape is not None
            shapes.append(shape)
        found = integrate(point.line, shapes)
        weights = (1.0 / 12.0, -8.0 / 12.0, 0.0, 8.0 / 12.0, -1.0 / 12.0)
        energy = sum(w * float(e) for w, e in zip(weights, found.energy, strict=True))
        far = [crooked.axial * crooked.expansion * float(rise) for rise in found.rise]
        expected = -2.0 * float(found.take_up[2]) * sum(w * value for w, value in zip(weights, far, strict=True))
        size = 2.0 * float(found.take_up[2]) * far[2] * 0.002
        if not inner:
            growth = sum(w * shape.half_length for w, shape in zip(weights, shapes, strict=True))
            expected -= (far[2] - float(found.force[2])) ** 2 / crooked.axial * growth
        assert energy == pytest.approx(expected, rel=0.0, abs=(2e-2 if inner else 1e-6) * size)


@pytest.mark.parametrize("lobes", [1, 2])
def test_restraint_changes_the_rise_and_not_the_shape(lobes: int) -> None:
    """Restraint within the buckle changes the rise, never the shape: both models share force, length and take-up."""
    inside, outside = trace(line(lobes=lobes, inner=True)), trace(line(lobes=lobes))
    for one, two in zip(inside[-20:], outside[-20:], strict=True):
        assert one.shape == two.shape
        assert float(integrate(one.line, [one.shape]).rise[0]) > float(integrate(two.line, [two.shape]).rise[0])


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


def test_restraint_throughout_has_a_stiffest_case() -> None:
    with pytest.raises(RefusedError) as caught:
        path(stiffness=1e6, restraint=LongitudinalRestraint.THROUGHOUT)
    assert caught.value.refusals[0].path == ("longitudinal_stiffness",)


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


def test_a_path_that_begins_beyond_its_peak_says_so() -> None:
    line_ = line(lobes=2)
    beyond = [point for point in trace(line_) if point.deflection > 0.02]
    found = path_module._assemble(beyond)  # noqa: SLF001
    assert found.kind is PathKind.UPPER_BEYOND_PATH
    assert found.upper is None
    assert found.lower is not None


def test_refuses_when_the_solver_fails_between_points(monkeypatch: pytest.MonkeyPatch) -> None:
    points = trace(line())
    monkeypatch.setattr(path_module, "solve", lambda *_: None)
    with pytest.raises(RefusedError) as caught:
        path_module._assemble(points)  # noqa: SLF001
    assert caught.value.refusals[0].path == ("defect_half_length",)


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
    assert rises(defect_path(**scaled)) == pytest.approx(rises(defect_path(**data)), rel=1e-6)
