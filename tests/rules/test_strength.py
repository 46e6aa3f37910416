"""Vertical bending against a boundary-value solution, hauling, and the joint rules of Part 213."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from railrules_api.catalogue.profiles import read_profiles
from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.kinds import Kind
from railrules_api.domain.profile.builder import build_outline
from railrules_api.domain.profile.properties import section_properties
from railrules_api.domain.profile.wear import wear_head
from railrules_api.rules.sections.section_records import SectionShape
from railrules_api.rules.strength import hauling_curve, regulation, vertical_bending
from railrules_api.rules.strength.bending_fields import BendingSection, VerticalBendingInput, VerticalBendingResult, Wheel
from railrules_api.rules.strength.combined_stress import ThermalExtremes
from railrules_api.rules.strength.joint_rules import Joint
from railrules_api.rules.words import DAY

BENDING = VerticalBendingInput(
    elastic_modulus=2.068e11,
    second_moment=3.95e-5,
    section_modulus_base=4.637e-4,
    section_modulus_head=3.9e-4,
    track_modulus=2.068e7,
    wheels=(Wheel(position=0.0, load=160_000.0),),
    speed_rule="none",
    tie_spacing=0.4953,
    tie_bending_limit=1100 * 6894.757293168361,
    ballast_pressure_limit=65 * 6894.757293168361,
    yield_strength=4.826e8,
    thermal_stress=1.379e8,
    lateral_share=0.2,
    condition_share=0.25,
    wear_share=0.15,
    unbalance_share=0.15,
)
TRUCK = (Wheel(position=0.0, load=160_000.0), Wheel(position=1.78, load=150_000.0), Wheel(position=4.0, load=100_000.0))


def path_of(call: Any) -> tuple[str | int, ...]:
    with pytest.raises(RefusedError) as caught:
        call()
    return caught.value.refusals[0].path


def test_single_wheel_by_hand() -> None:
    result = vertical_bending.evaluate(BENDING)
    wave = result.wave_number
    assert result.deflection == pytest.approx(160_000.0 * wave / (2 * 2.068e7), rel=1e-12)
    assert result.moment == pytest.approx(160_000.0 / (4 * wave), rel=1e-12)
    assert result.uplift == pytest.approx(result.deflection * math.exp(-math.pi), rel=1e-6)
    assert result.reverse_moment == pytest.approx(result.moment * math.exp(-math.pi / 2), rel=1e-6)


def test_wheels_far_apart_do_not_know_each_other() -> None:
    far = (Wheel(position=0.0, load=160_000.0), Wheel(position=100.0, load=160_000.0))
    one, two = vertical_bending.evaluate(BENDING), vertical_bending.evaluate(replace(BENDING, wheels=far))
    assert two.moment == pytest.approx(one.moment, rel=1e-9)
    assert two.deflection == pytest.approx(one.deflection, rel=1e-9)


@settings(deadline=None, max_examples=30)
@given(modulus=st.floats(1e6, 1e9), factor=st.floats(1.0, 10.0))
def test_a_stiffer_bed_never_bends_the_rail_more(modulus: float, factor: float) -> None:
    soft = vertical_bending.evaluate(replace(BENDING, track_modulus=modulus))
    stiff = vertical_bending.evaluate(replace(BENDING, track_modulus=modulus * factor))
    assert stiff.moment <= soft.moment * (1 + 1e-12)
    assert stiff.deflection <= soft.deflection * (1 + 1e-12)
    assert stiff.seat_load >= soft.seat_load * (1 - 1e-12)


def test_a_second_section_equal_to_the_first_changes_nothing() -> None:
    same = BendingSection(second_moment=3.95e-5, section_modulus_base=4.637e-4, section_modulus_head=3.9e-4)
    result = vertical_bending.evaluate(replace(BENDING, wheels=TRUCK, other=same))
    assert result.other is not None
    assert (result.other.deflection_ratio, result.other.base_stress_ratio, result.other.seat_load_ratio) == (1.0, 1.0, 1.0)
    assert [under.position for under in result.wheels] == [0.0, 1.78, 4.0]
    assert result.other.head_stress == result.head_stress


def test_bending_checks() -> None:
    light = vertical_bending.evaluate(replace(BENDING, tie_section="7x9"))
    assert [check.verdict for check in light.checks] == ["passes", "passes", "passes", "not-checked"]
    heavy = vertical_bending.evaluate(
        replace(BENDING, wheels=(Wheel(position=0.0, load=1_200_000.0),), tie_section="6x8", condition="poor", track_modulus=None)
    )
    assert [check.verdict for check in heavy.checks] == ["fails", "fails", "fails", "not-checked"]
    assert "thermal stress" not in heavy.checks[0].would_pass
    assert vertical_bending.evaluate(BENDING).checks[1].verdict == "not-checked"
    # a house that allows less ballast pressure is told so: the limit is its own, and only this check changes
    stricter = vertical_bending.evaluate(replace(BENDING, tie_section="7x9", ballast_pressure_limit=1e5))
    assert [check.verdict for check in stricter.checks] == ["passes", "passes", "fails", "not-checked"]
    assert stricter.checks[2].capacity == Amount(1e5, Kind.STRESS)


def combined(cold: float, hot: float, neutral: float = 305.0, **changed: Any) -> VerticalBendingResult:
    extremes = ThermalExtremes(hottest=hot, coldest=cold, neutral_temperature=neutral, expansion=1.17e-5)
    return vertical_bending.evaluate(replace(BENDING, wheels=TRUCK, thermal=extremes, **changed))


@settings(deadline=None, max_examples=60)
@given(cold=st.floats(200.0, 305.0), load=st.floats(1e3, 1e6), spread=st.floats(0.0, 60.0))
def test_combined_stress_is_the_allowable_stress_the_other_way_round(cold: float, load: float, spread: float) -> None:
    """Bending raised by the shares plus thermal stress stays below yield just where bending stays below what is allowed."""
    thermal = 2.068e11 * 1.17e-5 * (305.0 - cold)
    assume(thermal < BENDING.yield_strength)
    wheels = (Wheel(position=0.0, load=load),)
    both = vertical_bending.evaluate(
        replace(
            BENDING,
            wheels=wheels,
            thermal_stress=thermal,
            thermal=ThermalExtremes(hottest=305.0 + spread, coldest=cold, neutral_temperature=305.0, expansion=1.17e-5),
        )
    )
    base = next(check for check in both.checks if check.code == "combined-stress-base-cold")
    assert both.combined[0].thermal == pytest.approx(thermal, rel=1e-12)
    room = both.allowable_stress - both.base_stress
    assert BENDING.yield_strength - both.combined[0].together == pytest.approx(room * 1.2 * 1.25 * 1.15 * 1.15, rel=1e-9, abs=1.0)
    if abs(room) > 1.0:
        assert base.verdict == both.checks[0].verdict


def test_colder_rail_pulls_more_and_hotter_rail_presses_more() -> None:
    mild, harsh = combined(290.0, 310.0), combined(250.0, 335.0)
    for place in range(4):
        assert harsh.combined[place].together > mild.combined[place].together
        assert harsh.combined[place].bending == mild.combined[place].bending
    # no thermal stress of the other sense is ever taken off
    never = combined(310.0, 310.0).combined
    assert [item.thermal for item in never] == [
        0.0,
        0.0,
        pytest.approx(2.068e11 * 1.17e-5 * 5.0),
        pytest.approx(never[2].thermal),
    ]


def test_what_would_pass_names_the_wheel_loads_that_do() -> None:
    found = combined(235.0, 310.0, yield_strength=2.6e8, thermal_stress=0.0)
    worst = next(check for check in found.checks if check.code == "combined-stress-base-cold")
    assert worst.verdict == "fails"
    share = float(worst.would_pass.split("wheel loads of ")[1].split(" %")[0].replace(",", "")) / 100
    lighter = tuple(Wheel(position=wheel.position, load=wheel.load * share * 0.999) for wheel in TRUCK)
    eased = vertical_bending.evaluate(
        replace(
            BENDING,
            wheels=lighter,
            yield_strength=2.6e8,
            thermal_stress=0.0,
            thermal=ThermalExtremes(hottest=310.0, coldest=235.0, neutral_temperature=305.0, expansion=1.17e-5),
        )
    )
    assert next(check for check in eased.checks if check.code == "combined-stress-base-cold").verdict == "passes"


def test_cold_alone_beyond_yield_says_that_no_wheel_helps() -> None:
    found = combined(175.0, 310.0, yield_strength=3e8, thermal_stress=0.0, neutral=320.0)
    check = next(check for check in found.checks if check.code == "combined-stress-base-cold")
    assert check.verdict == "fails"
    assert "no lighter wheel" in check.would_pass


def test_a_worn_section_bends_more_by_what_its_outline_has_lost() -> None:
    parameters = read_profiles()["136RE"].parameters
    shape = SectionShape(profile=parameters, vertical_wear=0.0, measuring_tolerance=1e-4)
    worn = replace(shape, vertical_wear=0.0127)
    new, less = (vertical_bending.evaluate(replace(BENDING, worn=one)) for one in (shape, worn))
    outline = section_properties(wear_head(build_outline(parameters), 0.0127, []))
    assert (less.section_from, less.second_moment_used) == ("worn-outline", outline.second_moment_horizontal)
    assert (less.modulus_base_used, less.modulus_head_used) == (outline.section_modulus_base, outline.section_modulus_head)
    assert less.base_stress > new.base_stress
    assert less.deflection > new.deflection
    assert vertical_bending.evaluate(BENDING).section_from == "as-given"


@pytest.mark.parametrize(
    ("changed", "path"),
    [
        ({"wheels": ()}, ("wheels",)),
        (
            {"thermal": ThermalExtremes(hottest=280.0, coldest=290.0, neutral_temperature=305.0, expansion=1.17e-5)},
            ("thermal", "coldest"),
        ),
        ({"worn": SectionShape(vertical_wear=0.01, measuring_tolerance=1e-4)}, ("worn", "vertical_wear")),
        ({"wheels": (Wheel(position=-900.0, load=1.0), Wheel(position=900.0, load=1.0))}, ("wheels",)),
        ({"condition": "good"}, ("track_modulus",)),
        ({"track_modulus": None}, ("track_modulus",)),
        ({"speed_rule": "given"}, ("speed_factor",)),
        ({"speed_rule": "hundredth"}, ("speed",)),
        ({"speed_rule": "speed-over-diameter", "speed": 20.0}, ("wheel_diameter",)),
        ({"thermal_stress": 5e8}, ("thermal_stress",)),
    ],
)
def test_bending_refusals(changed: dict[str, Any], path: tuple[str, ...]) -> None:
    assert path_of(lambda: vertical_bending.evaluate(replace(BENDING, **changed))) == path


def test_given_factor_and_no_speed() -> None:
    assert vertical_bending.evaluate(replace(BENDING, speed_rule="given", speed_factor=1.5)).speed_factor == 1.5
    assert vertical_bending.evaluate(replace(BENDING, speed_rule="hundredth", speed=0.0)).speed_factor == 1.0


# ---- hauling

HAUL = hauling_curve.HaulingCurveInput(
    gauge=1.4351,
    heel_spread=0.15875,
    frog_toe_spread=0.2159,
    radius=120.0,
    elastic_modulus=2.068e11,
    base_width=0.1524,
    yield_strength=5.1e8,
    string_length=440.0,
    clamped_at="middle",
    rack_spacing=9.0,
    rack_offset=1.2,
    facing_ends=2,
)


@settings(deadline=None)
@given(radius=st.floats(20.0, 1e5), factor=st.floats(1.0, 10.0))
def test_a_flatter_curve_is_never_worse(radius: float, factor: float) -> None:
    sharp = hauling_curve.evaluate(replace(HAUL, radius=radius))
    flat = hauling_curve.evaluate(replace(HAUL, radius=radius * factor))
    assert flat.base_stress <= sharp.base_stress
    assert flat.rack_versine <= sharp.rack_versine
    assert flat.clearance_used <= sharp.clearance_used


def test_clamped_at_the_end_shifts_twice() -> None:
    middle = hauling_curve.evaluate(HAUL)
    end = hauling_curve.evaluate(replace(HAUL, clamped_at="end"))
    assert end.end_shift == pytest.approx(2 * middle.end_shift)
    short = hauling_curve.evaluate(replace(HAUL, turn_angle=0.1))
    assert short.end_shift == pytest.approx(0.12)


def test_hauling_checks() -> None:
    open_ = hauling_curve.evaluate(HAUL)
    assert [check.verdict for check in open_.checks] == ["not-checked", "not-checked"]
    tight = hauling_curve.evaluate(replace(HAUL, yield_share=0.2, end_clearance=0.1, head_width=0.07, second_moment_lateral=6e-6))
    assert [check.verdict for check in tight.checks] == ["fails", "fails"]
    assert tight.head_stress is not None
    assert tight.head_stress < tight.base_stress
    assert tight.moment == pytest.approx(2.068e11 * 6e-6 / 118.8)
    needed = 2.068e11 * 0.0762 / (0.2 * 5.1e8) + 1.2
    roomy = hauling_curve.evaluate(replace(HAUL, radius=needed * (1 + 1e-12), yield_share=0.2, end_clearance=99.0))
    assert [check.verdict for check in roomy.checks] == ["passes", "passes"]
    assert path_of(lambda: hauling_curve.evaluate(replace(HAUL, radius=10.0, rack_spacing=50.0))) == ("rack_spacing",)
    assert path_of(lambda: hauling_curve.evaluate(replace(HAUL, radius=10.0, rack_offset=9.99))) == ("rack_offset",)


# ---- regulation

JOB = regulation.TrackJointsInput(track_class=4, rail_length=500.0)


def test_missing_inputs_are_not_checked_and_never_pass() -> None:
    result = regulation.evaluate(JOB)
    assert result.continuous_welded_rail
    assert result.not_checked == len(result.checks) == 4
    full = regulation.evaluate(
        replace(
            JOB,
            anchored_at_turnouts=True,
            laid_at=300.0,
            range_lower=305.0,
            later_adjustment=True,
            plan_in_force=True,
            record_kept=366 * DAY,
        )
    )
    assert [check.verdict for check in full.checks] == ["passes"] * 4
    warm = regulation.evaluate(replace(JOB, laid_at=310.0, range_lower=305.0))
    assert next(check for check in warm.checks if check.code == "added-below-range").verdict == "passes"
    cold = regulation.evaluate(replace(JOB, laid_at=300.0, range_lower=305.0))
    assert next(check for check in cold.checks if check.code == "added-below-range").governing == "later_adjustment"


def test_short_rail_laid_as_welded_rail_remains_so() -> None:
    assert regulation.evaluate(replace(JOB, rail_length=30.0, laid_as_welded_rail=True)).continuous_welded_rail
    assert not regulation.evaluate(replace(JOB, rail_length=30.0, laid_as_welded_rail=False)).continuous_welded_rail


def joint_check(code: str, **changed: Any) -> str:
    made: dict[str, Any] = {"name": "j", "origin": "service-failure", "bolts_in_rail": 2, **changed}
    result = regulation.evaluate(replace(JOB, joints=(Joint(**made),)))
    return next(check for check in result.checks if check.code == code).verdict


def test_ways_after_a_failure() -> None:
    nothing = {
        "welded_after": 90 * DAY,
        "anchors_adjusted": False,
        "bolt_added": False,
        "anchored_each_way": 10.0,
        "rail_added_with_provision": False,
    }
    assert joint_check("joint-failure") == "not-checked"
    assert joint_check("joint-failure", **nothing) == "fails"
    assert joint_check("joint-failure", **{**nothing, "welded_after": 0.0}) == "passes"
    assert joint_check("joint-failure", **{**nothing, "welded_after": 30 * DAY}) == "fails"
    assert joint_check("joint-failure", **{**nothing, "welded_after": 30 * DAY, "anchors_adjusted": True}) == "passes"
    assert joint_check("joint-failure", **{**nothing, "bolt_added": True, "anchors_adjusted": True}) == "passes"
    assert joint_check("joint-failure", **{**nothing, "rail_added_with_provision": True, "anchors_adjusted": True}) == "passes"
    assert joint_check("joint-failure", **{**nothing, "anchored_each_way": 195 * 0.3048}) == "passes"


def test_mismatch_by_class() -> None:
    eighth = 0.0254 / 8
    assert joint_check("mismatch-tread", tread_mismatch=eighth) == "passes"
    assert joint_check("mismatch-tread", tread_mismatch=eighth * 1.001) == "fails"
    assert joint_check("mismatch-gage", gage_mismatch=2 * eighth) == "fails"
    assert joint_check("torch-cut", torch_cut=False) == "passes"
    assert joint_check("torch-cut") == "not-checked"


def test_without_the_class_or_the_bolts_what_hangs_on_them_is_not_checked() -> None:
    unknown = replace(JOB, track_class=None)
    rail = Joint(name="j", origin="existing", torch_cut=True, tread_mismatch=0.001, gage_mismatch=0.001)
    found = {check.code: check for check in regulation.evaluate(replace(unknown, joints=(rail,))).checks}
    governing = {"joint-bolts": "bolts_in_rail", "torch-cut": "track_class", "mismatch-tread": "track_class"}
    for code, name in governing.items():
        assert (found[code].verdict, found[code].governing) == ("not-checked", name)
    jointed = replace(unknown, rail_length=12.0, joints=(replace(rail, bolts_in_rail=2),))
    (bolts,) = [check for check in regulation.evaluate(jointed).checks if check.code == "joint-bolts"]
    assert (bolts.verdict, bolts.governing) == ("not-checked", "track_class")
    for anchored, verdict, name in ((True, "passes", "anchored_at_turnouts"), (False, "not-checked", "track_class")):
        answered = regulation.evaluate(replace(unknown, anchored_at_turnouts=anchored))
        (turnouts,) = [check for check in answered.checks if check.code == "anchored-turnouts"]
        assert (turnouts.verdict, turnouts.governing) == (verdict, name)
    assert joint_check("joint-new", origin="installation", bolts_in_rail=None) == "not-checked"
    assert joint_check("joint-new", origin="installation", bolts_in_rail=None, welded_after=60 * DAY) == "passes"
    assert joint_check("torch-cut", torch_cut=True) == "fails"


def test_jointed_track_of_class_1_needs_one_bolt() -> None:
    rail = Joint(name="j", origin="existing", bolts_in_rail=1)
    jointed = regulation.evaluate(replace(JOB, track_class=1, rail_length=12.0, joints=(rail,)))
    assert [check.verdict for check in jointed.checks] == ["passes"]
    faster = regulation.evaluate(replace(JOB, track_class=2, rail_length=12.0, joints=(rail,)))
    assert [check.verdict for check in faster.checks] == ["fails"]
