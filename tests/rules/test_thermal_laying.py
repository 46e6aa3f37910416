"""Laying range, adjustment, destressing, neutral temperature, curves, joint gaps: extremes, signs, consistency."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.catalogue.loading import load
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.patterns import JointGap, JointGapTable
from railrules_api.rules.thermal import (
    break_gap,
    curve_load,
    destressing,
    joint_gap,
    laying_adjustment,
    neutral_temperature,
    temperature_range,
)
from railrules_api.rules.thermal.temperature_range import TemperatureRangeInput

FAHRENHEIT = 5 / 9
STEEL: dict[str, Any] = {"area": 0.0086, "elastic_modulus": 2.07e11, "expansion": 1.17e-5}
temperatures = st.floats(233.0, 333.0)


def kelvin(fahrenheit: float) -> float:
    return (fahrenheit + 459.67) * FAHRENHEIT


def path_of(call: Any) -> tuple[str | int, ...]:
    with pytest.raises(RefusedError) as caught:
        call()
    return caught.value.refusals[0].path


# ---- temperature range

RANGE = TemperatureRangeInput(
    rule="two-thirds",
    hottest_rail=kelvin(140.0),
    coldest_rail=kelvin(-20.0),
    rail_above_air=30 * FAHRENHEIT,
    drift=30 * FAHRENHEIT,
    margin=20 * FAHRENHEIT,
)


@settings(deadline=None)
@given(hot=temperatures, cold=temperatures, warmer=st.floats(0.0, 20.0))
def test_a_hotter_place_never_lowers_the_range(hot: float, cold: float, warmer: float) -> None:
    low, high = sorted((hot, cold))
    one = temperature_range.evaluate(replace(RANGE, hottest_rail=high, coldest_rail=low))
    two = temperature_range.evaluate(replace(RANGE, hottest_rail=high + warmer, coldest_rail=low))
    assert two.lower >= one.lower
    assert one.upper - one.lower == pytest.approx(15 * FAHRENHEIT)
    assert one.coldest <= one.middle


def test_a_house_rule_can_be_the_published_one() -> None:
    house = temperature_range.evaluate(
        replace(RANGE, rule="house", house_weight=2 / 3, house_lower=10 * FAHRENHEIT, house_upper=25 * FAHRENHEIT)
    )
    published = temperature_range.evaluate(RANGE)
    assert (house.lower, house.upper) == (published.lower, published.upper)


def test_no_allowed_rise_is_not_checked() -> None:
    result = temperature_range.evaluate(RANGE)
    assert result.restriction is None
    assert result.checks[0].verdict == "not-checked"
    assert result.neutral_laid == result.lower


def test_restriction_and_check_agree() -> None:
    weak = temperature_range.evaluate(replace(RANGE, allowed_rise=60 * FAHRENHEIT, laid_at=kelvin(105.0)))
    assert weak.restriction is not None
    assert weak.restriction == pytest.approx(kelvin(115.0))
    assert weak.restriction < weak.hottest
    assert weak.checks[0].verdict == "fails"
    assert "25.0 °F" in weak.checks[0].would_pass


def test_range_refusals() -> None:
    run = temperature_range.evaluate
    assert path_of(lambda: run(replace(RANGE, hottest_rail=None))) == ("hottest_rail",)
    assert path_of(lambda: run(replace(RANGE, hottest_air=300.0))) == ("hottest_rail",)
    assert path_of(lambda: run(replace(RANGE, coldest_air=300.0))) == ("coldest_rail",)
    assert path_of(lambda: run(replace(RANGE, coldest_rail=340.0))) == ("coldest_rail",)
    assert path_of(lambda: run(replace(RANGE, coldest_rail=None, coldest_air=340.0))) == ("coldest_air",)
    assert path_of(lambda: run(replace(RANGE, hottest_rail=None, hottest_air=300.0))) == ("rail_from_air",)
    cold = replace(RANGE, hottest_rail=None, hottest_air=270.0, rail_from_air="ratio")
    assert path_of(lambda: run(cold)) == ("hottest_air",)
    assert path_of(lambda: run(replace(RANGE, rule="house"))) == ("house_weight",)
    turned = replace(RANGE, rule="house", house_weight=0.5, house_lower=5.0, house_upper=4.0)
    assert path_of(lambda: run(turned)) == ("house_upper",)


# ---- laying adjustment

LAY = laying_adjustment.LayingAdjustmentInput(
    **STEEL,
    string_length=438.912,
    rail_temperature=kelvin(60.0),
    target_temperature=kelvin(95.0),
    weld_opening=0.0254,
    friction=100.0,
    range_lower=kelvin(90.0),
    range_upper=kelvin(105.0),
)


@settings(deadline=None)
@given(temperature=temperatures, target=temperatures, length=st.floats(1e-3, 1e5))
def test_making_the_movement_reaches_the_target(temperature: float, target: float, length: float) -> None:
    base = replace(LAY, rail_temperature=temperature, target_temperature=target, string_length=length)
    plan = laying_adjustment.evaluate(base)
    done = laying_adjustment.evaluate(replace(base, movement_made=plan.movement))
    assert done.neutral_achieved == pytest.approx(target, abs=1e-9)
    assert plan.quarter_movement + plan.three_quarter_movement == pytest.approx(plan.movement, abs=1e-15)
    assert plan.gap - plan.movement == pytest.approx(base.weld_opening, abs=1e-9)
    assert (plan.pull_force is None) == (target <= temperature)


def test_signs_of_the_adjustment() -> None:
    hot = laying_adjustment.evaluate(replace(LAY, rail_temperature=kelvin(130.0)))
    assert hot.movement < 0.0
    assert hot.means == "shorten"
    assert hot.pull_force is None
    same = laying_adjustment.evaluate(replace(LAY, rail_temperature=LAY.target_temperature))
    assert same.movement == 0.0
    assert same.means == "none"
    assert same.gap_eighths == 8


@pytest.mark.parametrize(
    ("fahrenheit", "verdicts", "words"),
    [
        (60.0, ["fails", "passes"], "later adjustment"),
        (54.0, ["fails", "passes"], "40 °F"),
        (95.0, ["passes", "passes"], "Record place"),
        (120.0, ["passes", "fails"], "break gap"),
    ],
)
def test_what_follows_from_laying_hot_or_cold(fahrenheit: float, verdicts: list[str], words: str) -> None:
    result = laying_adjustment.evaluate(replace(LAY, rail_temperature=kelvin(fahrenheit)))
    assert [check.verdict for check in result.checks] == verdicts
    assert any(words in step for step in result.follows)
    unknown = laying_adjustment.evaluate(replace(LAY, range_lower=None, range_upper=None))
    assert [check.verdict for check in unknown.checks] == ["not-checked", "not-checked"]


def test_table_agrees_with_the_single_answer() -> None:
    wanted = laying_adjustment.TableWanted(
        coldest=kelvin(40.0),
        hottest=kelvin(100.0),
        step=5 * FAHRENHEIT,
        lengths=(laying_adjustment.StringLength(length=438.912), laying_adjustment.StringLength(length=100.0)),
    )
    table = laying_adjustment.evaluate(replace(LAY, table=wanted)).table
    assert len(table) == 26
    row = next(row for row in table if math.isclose(row.rail_temperature, kelvin(60.0)) and row.length > 400)
    alone = laying_adjustment.evaluate(LAY)
    assert row.gap == pytest.approx(alone.gap, abs=1e-12)
    assert row.gap_eighths == alone.gap_eighths
    assert path_of(lambda: laying_adjustment.evaluate(replace(LAY, table=replace(wanted, hottest=200.0)))) == ("table", "hottest")
    assert path_of(lambda: laying_adjustment.evaluate(replace(LAY, table=replace(wanted, step=0.01)))) == ("table", "step")


def test_range_turned_round_is_refused() -> None:
    assert path_of(lambda: laying_adjustment.evaluate(replace(LAY, range_upper=280.0))) == ("range_upper",)


# ---- destressing

PLAN = destressing.DestressingInput(
    **STEEL,
    begin=100.0,
    end=500.0,
    mark_spacing=30.0,
    rail_temperature=280.0,
    target_temperature=308.0,
    weld_opening=0.025,
    resistance=5000.0,
)


@settings(deadline=None)
@given(cut=st.floats(100.0, 500.0), spacing=st.floats(1.0, 300.0))
def test_the_ends_at_the_cut_close_the_gap_less_the_weld(cut: float, spacing: float) -> None:
    plan = destressing.evaluate(replace(PLAN, cut=cut, mark_spacing=spacing))
    stations = [mark.station for mark in plan.marks]
    assert stations == sorted(stations)
    closing = max(mark.movement for mark in plan.marks) - min(mark.movement for mark in plan.marks)
    assert closing == pytest.approx(plan.extension, rel=1e-9)
    assert plan.gap - closing == pytest.approx(PLAN.weld_opening, rel=1e-9)
    assert plan.marks[0].movement == plan.marks[-1].movement == 0.0


def test_rail_at_target_needs_no_rail_and_no_pull() -> None:
    plan = destressing.evaluate(replace(PLAN, rail_temperature=308.0, neutral_temperature=308.0, weld_opening=0.0))
    assert plan.gap == plan.extension == plan.pull_force == 0.0
    assert plan.rail_to_remove == 0.0
    assert plan.checks[0].verdict == "passes"


def test_destressing_checks_and_refusals() -> None:
    hot = destressing.evaluate(replace(PLAN, rail_temperature=320.0, anchored_beyond=1.0))
    assert [check.verdict for check in hot.checks] == ["fails", "fails"]
    assert destressing.evaluate(replace(PLAN, anchored_beyond=1e5)).checks[1].verdict == "passes"
    assert destressing.evaluate(PLAN).checks[1].verdict == "not-checked"
    assert path_of(lambda: destressing.evaluate(replace(PLAN, end=100.0))) == ("end",)
    assert path_of(lambda: destressing.evaluate(replace(PLAN, cut=99.0))) == ("cut",)
    assert path_of(lambda: destressing.evaluate(replace(PLAN, mark_spacing=0.2))) == ("mark_spacing",)


# ---- neutral temperature

NEUTRAL = neutral_temperature.NeutralTemperatureInput(
    **STEEL, rail_temperature=270.0, resistance=5000.0, accepted_loss=16.0, neutral_temperature=308.0
)


@settings(deadline=None)
@given(drop=st.floats(0.5, 80.0), resistance=st.floats(100.0, 1e5))
def test_a_gap_tells_the_neutral_temperature_that_made_it(drop: float, resistance: float) -> None:
    broken = break_gap.evaluate(
        break_gap.BreakGapInput(
            **STEEL,
            rail_temperature=270.0,
            neutral_temperature=270.0 + drop,
            law="rigid-plastic",
            resistance=resistance,
            gap_limit=0.05,
        )
    )
    base = replace(NEUTRAL, resistance=resistance)
    told = neutral_temperature.evaluate(replace(base, neutral_temperature=None, measured_gap=broken.gap))
    assert told.before == pytest.approx(270.0 + drop, abs=1e-9)
    filled = neutral_temperature.evaluate(replace(base, neutral_temperature=270.0 + drop, rail_added=broken.gap))
    assert filled.change_by_rail == pytest.approx(-drop / 2, rel=1e-9)
    assert filled.at_cut == 270.0


@settings(deadline=None)
@given(added=st.floats(-0.05, 0.05), length=st.floats(50.0, 5000.0))
def test_what_would_restore_does_restore(added: float, length: float) -> None:
    once = neutral_temperature.evaluate(replace(NEUTRAL, rail_added=added, disturbed_length=length))
    assert once.rail_to_restore is not None
    left = added - once.rail_to_restore
    again = neutral_temperature.evaluate(replace(NEUTRAL, rail_added=left, disturbed_length=length))
    assert again.after == pytest.approx(308.0, abs=1e-9)


def test_inward_loses_outward_gains() -> None:
    inward = neutral_temperature.evaluate(replace(NEUTRAL, inward_shift=0.05, radius=400.0))
    outward = neutral_temperature.evaluate(replace(NEUTRAL, inward_shift=-0.05, radius=400.0))
    assert inward.after < 308.0 < outward.after
    assert inward.change_by_shift == -outward.change_by_shift


def test_rail_added_in_the_cold_is_held_against_the_regulation() -> None:
    cold = neutral_temperature.evaluate(replace(NEUTRAL, rail_added=0.02, disturbed_length=100.0, range_lower=300.0))
    assert [check.verdict for check in cold.checks] == ["fails", "fails"]
    removed = neutral_temperature.evaluate(replace(NEUTRAL, rail_added=-0.02, disturbed_length=100.0, range_lower=300.0))
    assert [check.verdict for check in removed.checks] == ["passes", "passes"]


def test_neutral_temperature_refusals() -> None:
    run = neutral_temperature.evaluate
    assert path_of(lambda: run(replace(NEUTRAL, neutral_temperature=None))) == ("neutral_temperature",)
    assert path_of(lambda: run(replace(NEUTRAL, measured_gap=0.01))) == ("neutral_temperature",)
    assert path_of(lambda: run(replace(NEUTRAL, rail_temperature=308.0, rail_added=0.01))) == ("disturbed_length",)
    assert path_of(lambda: run(replace(NEUTRAL, radius=400.0))) == ("inward_shift",)
    assert path_of(lambda: run(replace(NEUTRAL, inward_shift=0.01))) == ("radius",)
    assert path_of(lambda: run(replace(NEUTRAL, rail_added=10.0, disturbed_length=1.0))) == ("rail_added",)


# ---- curves

CURVE = curve_load.CurveLoadInput(
    **STEEL,
    radius=400.0,
    neutral_temperature=308.0,
    hottest=335.0,
    coldest=255.0,
    tie_spacing=0.5,
    inward_shift=0.0,
    accepted_loss=16.0,
)


@settings(deadline=None)
@given(radius=st.floats(50.0, 1e5), factor=st.floats(1.0, 10.0))
def test_a_flatter_curve_never_loads_more(radius: float, factor: float) -> None:
    sharp = curve_load.evaluate(replace(CURVE, radius=radius))
    flat = curve_load.evaluate(replace(CURVE, radius=radius * factor))
    assert abs(flat.hot_load) <= abs(sharp.hot_load)
    assert flat.resistance_needed <= sharp.resistance_needed
    assert sharp.hot_load > 0.0 > sharp.cold_load


def test_curve_checks_at_their_limits() -> None:
    limit = curve_load.evaluate(CURVE).shift_for_loss
    at_limit = curve_load.evaluate(replace(CURVE, inward_shift=limit * (1 - 1e-12)))
    over = curve_load.evaluate(replace(CURVE, inward_shift=limit * 1.01))
    assert [at_limit.checks[0].verdict, over.checks[0].verdict] == ["passes", "fails"]
    needed = curve_load.evaluate(CURVE).resistance_needed
    assert curve_load.evaluate(replace(CURVE, tie_resistance=needed)).checks[1].verdict == "passes"
    assert curve_load.evaluate(replace(CURVE, tie_resistance=needed * 0.99)).checks[1].verdict == "fails"
    assert curve_load.evaluate(CURVE).checks[1].verdict == "not-checked"
    assert path_of(lambda: curve_load.evaluate(replace(CURVE, degree=0.1))) == ("radius",)
    assert path_of(lambda: curve_load.evaluate(replace(CURVE, hottest=250.0))) == ("coldest",)


# ---- joints

GAPS = load().tables["joint-gap-tables"].rows["ti-850-02"].record
assert isinstance(GAPS, JointGapTable)
JOINT = joint_gap.JointGapInput(
    rail_length=39 * 0.3048,
    rail_temperature=kelvin(50.0),
    table=GAPS,
    expansion=1.17e-5,
    closing_temperature=kelvin(85.0),
)


@settings(deadline=None)
@given(cold=st.floats(-60.0, 130.0), warmer=st.floats(0.0, 60.0), feet=st.sampled_from([20.0, 33.0, 39.0, 80.0, 160.0]))
def test_warmer_rail_never_asks_for_a_wider_gap(cold: float, warmer: float, feet: float) -> None:
    one = joint_gap.evaluate(replace(JOINT, rail_length=feet * 0.3048, rail_temperature=kelvin(cold)))
    two = joint_gap.evaluate(replace(JOINT, rail_length=feet * 0.3048, rail_temperature=kelvin(cold + warmer)))
    assert one.table_gap is not None
    assert two.table_gap is not None
    assert two.table_gap <= one.table_gap
    assert two.computed_gap <= one.computed_gap


@pytest.mark.parametrize("feet", [33.1, 36.0, 38.9, 161.0])
def test_lengths_that_the_table_does_not_list_have_no_table_gap(feet: float) -> None:
    result = joint_gap.evaluate(replace(JOINT, rail_length=feet * 0.3048))
    assert result.table_gap is None
    assert not result.table_row
    assert result.computed_gap > 0.0


def test_the_row_is_named() -> None:
    assert joint_gap.evaluate(JOINT).table_row == "rails of 39 to 160 ft, 46 to 65 °F"
    assert joint_gap.evaluate(replace(JOINT, rail_temperature=kelvin(120.0))).table_row.endswith("over 85 °F")
    assert joint_gap.evaluate(replace(JOINT, rail_temperature=kelvin(-40.0))).table_row.endswith("below 6 °F")
    assert joint_gap.evaluate(replace(JOINT, rail_length=5.0)).table_row == "rails up to 33 ft, 35 to 59 °F"


def test_a_house_has_a_table_of_its_own() -> None:
    warm_only = JointGapTable(gaps=(JointGap(longest=12.0, coldest=kelvin(50.0), gap=0.002),))
    always = JointGapTable(gaps=(JointGap(longest=12.0, gap=0.001),))
    found = joint_gap.evaluate(replace(JOINT, table=warm_only))
    assert (found.table_gap, found.table_row) == (0.002, "rails up to 39.3701 ft, over 49 °F")
    assert joint_gap.evaluate(replace(JOINT, table=warm_only, rail_temperature=kelvin(49.0))).table_gap is None
    assert joint_gap.evaluate(replace(JOINT, table=always)).table_row == "rails up to 39.3701 ft, however warm"
