"""Break gap, end movement, restraint: extremes, monotonicity, continuity between the laws of restraint."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.domain.errors import RefusedError
from railrules_api.domain.slip import Law, Restraint, force_for_movement, free_end, resistance_for_movement
from railrules_api.rules.thermal import break_gap, end_movement, restraint
from railrules_api.rules.thermal.break_gap import BreakGapInput
from railrules_api.rules.thermal.restraint import RestraintInput, Zone

NEUTRAL = 308.15
STEEL: dict[str, Any] = {"area": 0.0086, "elastic_modulus": 2.07e11, "expansion": 1.17e-5}
GAP = BreakGapInput(
    **STEEL,
    rail_temperature=268.15,
    neutral_temperature=NEUTRAL,
    law="rigid-plastic",
    resistance=5000.0,
    stiffness=7e5,
    gap_limit=0.05,
)
LAWS: list[Law] = ["rigid-plastic", "elastic", "bilinear"]
colder = st.floats(0.0, 130.0)
resistances = st.floats(1e-3, 1e7)
stiffnesses = st.floats(1e-3, 1e11)


def gap(**changed: Any) -> float:
    return break_gap.evaluate(replace(GAP, **changed)).gap


@pytest.mark.parametrize("law", LAWS)
def test_nothing_opens_at_or_above_neutral(law: Law) -> None:
    for temperature in (NEUTRAL, NEUTRAL + 1e-9, NEUTRAL + 60.0):
        result = break_gap.evaluate(replace(GAP, law=law, rail_temperature=temperature))
        assert result.gap == 0.0
        assert result.slip_length == 0.0
        assert math.copysign(1.0, result.force) == 1.0
        assert result.resistance_at_limit is None
        assert result.checks[0].verdict == "passes"


@settings(deadline=None)
@given(drop=colder, more=st.floats(0.0, 50.0), law=st.sampled_from(LAWS))
def test_colder_never_opens_less(drop: float, more: float, law: Law) -> None:
    one = gap(law=law, rail_temperature=NEUTRAL - min(drop, 130.0 - more))
    two = gap(law=law, rail_temperature=NEUTRAL - min(drop, 130.0 - more) - more)
    assert two >= one * (1 - 1e-12)


@settings(deadline=None)
@given(weak=resistances, factor=st.floats(1.0, 1e3), drop=colder, law=st.sampled_from(LAWS), stiffness=stiffnesses)
def test_more_restraint_never_opens_more(weak: float, factor: float, drop: float, law: Law, stiffness: float) -> None:
    cold = NEUTRAL - drop
    weak_gap = gap(law=law, rail_temperature=cold, resistance=weak, stiffness=stiffness)
    strong_gap = gap(law=law, rail_temperature=cold, resistance=weak * factor, stiffness=stiffness)
    stiff_gap = gap(law=law, rail_temperature=cold, resistance=weak, stiffness=stiffness * factor)
    assert strong_gap <= weak_gap * (1 + 1e-12)
    assert stiff_gap <= weak_gap * (1 + 1e-12)
    assert math.isfinite(weak_gap)


@settings(deadline=None)
@given(drop=st.floats(0.1, 130.0), resistance=st.floats(10.0, 1e6))
def test_bilinear_tends_to_both_other_laws(drop: float, resistance: float) -> None:
    cold = NEUTRAL - drop
    rigid = gap(rail_temperature=cold, resistance=resistance)
    stiff = gap(law="bilinear", rail_temperature=cold, resistance=resistance, stiffness=1e20)
    assert stiff == pytest.approx(rigid, rel=1e-5)
    elastic = gap(law="elastic", rail_temperature=cold)
    strong = gap(law="bilinear", rail_temperature=cold, resistance=1e12)
    assert strong == elastic


@settings(deadline=None)
@given(force=st.floats(1.0, 1e7), resistance=st.floats(1.0, 1e6), stiffness=st.floats(1.0, 1e9))
def test_bilinear_lies_above_both_other_laws(force: float, resistance: float, stiffness: float) -> None:
    axial = 1.8e9
    bilinear = free_end(force, axial, Restraint("bilinear", resistance, stiffness)).movement
    rigid = free_end(force, axial, Restraint("rigid-plastic", resistance, stiffness)).movement
    elastic = free_end(force, axial, Restraint("elastic", resistance, stiffness)).movement
    assert bilinear >= elastic * (1 - 1e-12)
    assert bilinear >= rigid * (1 - 1e-12)


def test_bilinear_is_continuous_where_it_begins_to_slip() -> None:
    held = Restraint("bilinear", 5000.0, 7e5)
    axial = 1.8e9
    limit = held.resistance * math.sqrt(axial / held.stiffness)
    below, above = free_end(limit * (1 - 1e-12), axial, held), free_end(limit * (1 + 1e-12), axial, held)
    assert above.movement == pytest.approx(below.movement, rel=1e-11)
    assert below.slip_length == 0.0
    assert above.slip_length == pytest.approx(0.0, abs=1e-6)


@settings(deadline=None)
@given(force=st.floats(1.0, 1e7), resistance=st.floats(1.0, 1e6), stiffness=st.floats(1.0, 1e9), law=st.sampled_from(LAWS))
def test_inverse(force: float, resistance: float, stiffness: float, law: Law) -> None:
    held = Restraint(law, resistance, stiffness)
    axial = 1.8e9
    movement = free_end(force, axial, held).movement
    assert force_for_movement(movement, axial, held) == pytest.approx(force, rel=1e-9)
    needed = resistance_for_movement(movement, force, axial, held)
    if needed is not None:
        reached = free_end(force, axial, Restraint(law, needed, stiffness)).movement
        assert reached == pytest.approx(movement, rel=1e-6)


@pytest.mark.parametrize("law", LAWS)
def test_force_comes_back_with_distance(law: Law) -> None:
    """Equilibrium: the force found by adding up the restraint equals the share that the domain tells."""
    held, axial, force = Restraint(law, 5000.0, 7e5), 1.8e9, 9e5
    slip = free_end(force, axial, held)
    reach = force / held.resistance
    assert slip.force_share(0.0, reach) == pytest.approx(0.0, abs=1e-12)
    shares = [slip.force_share(distance, reach) for distance in range(0, 2000, 5)]
    assert all(one <= two + 1e-12 for one, two in pairwise(shares))
    assert shares[-1] == pytest.approx(1.0, abs=1e-9)
    # movement = integral of the missing strain
    step = 0.05
    lost = sum(1.0 - slip.force_share((number + 0.5) * step, reach) for number in range(60_000)) * step
    assert lost * force / axial == pytest.approx(slip.movement, rel=1e-4)


def test_what_would_pass_does_pass() -> None:
    failing = break_gap.evaluate(replace(GAP, rail_temperature=253.15))
    assert failing.checks[0].verdict == "fails"
    assert failing.resistance_at_limit is not None
    assert gap(rail_temperature=253.15, resistance=failing.resistance_at_limit) == pytest.approx(0.05, rel=1e-12)
    assert gap(rail_temperature=NEUTRAL - failing.drop_at_limit) == pytest.approx(0.05, rel=1e-12)
    assert "lb/in" in failing.checks[0].would_pass


def test_elastic_and_bilinear_need_a_stiffness() -> None:
    for law in ("elastic", "bilinear"):
        with pytest.raises(RefusedError) as caught:
            break_gap.evaluate(replace(GAP, law=law, stiffness=None))
        assert caught.value.refusals[0].path == ("stiffness",)


def test_resistance_that_cannot_be_enough_is_absent() -> None:
    soft = break_gap.evaluate(replace(GAP, law="bilinear", stiffness=1e3, rail_temperature=253.15))
    assert soft.resistance_at_limit is None
    assert "stiffer" in soft.checks[0].would_pass


END = end_movement.EndMovementInput(
    **STEEL,
    neutral_temperature=NEUTRAL,
    hottest=335.0,
    coldest=250.0,
    law="rigid-plastic",
    resistance=5000.0,
    joint_force=0.0,
)


def test_end_movement_is_half_a_break_gap() -> None:
    cold = end_movement.evaluate(END)
    assert 2 * cold.cold_movement == pytest.approx(gap(rail_temperature=250.0), rel=1e-14)
    assert [check.verdict for check in cold.checks] == ["not-checked", "not-checked"]


def test_a_joint_that_holds_everything_stops_the_end() -> None:
    still = end_movement.evaluate(replace(END, joint_force=1e7, room_to_close=0.0, room_to_open=0.0))
    assert still.travel == 0.0
    assert still.breathing_length == 0.0
    assert [check.verdict for check in still.checks] == ["passes", "passes"]


@settings(deadline=None)
@given(one=st.floats(0.0, 2e6), two=st.floats(0.0, 2e6))
def test_a_stronger_joint_never_moves_more(one: float, two: float) -> None:
    weak, strong = sorted((one, two))
    assert (
        end_movement.evaluate(replace(END, joint_force=strong)).travel
        <= end_movement.evaluate(replace(END, joint_force=weak)).travel
    )


def test_end_movement_refuses_hot_below_cold() -> None:
    with pytest.raises(RefusedError) as caught:
        end_movement.evaluate(replace(END, hottest=240.0))
    assert caught.value.refusals[0].path == ("coldest",)


HOLD = RestraintInput(
    **STEEL,
    rail_temperature=268.15,
    neutral_temperature=NEUTRAL,
    tie_spacing=0.5,
    anchor_slip=22_000.0,
    anchors_acting=1,
    ballast_resistance=5000.0,
    zones=(Zone(name="joint", length=59.436, every=1), Zone(name="plain", length=59.436, every=2)),
)


def test_every_second_tie_holds_less_and_both_fall_short() -> None:
    every, second = restraint.evaluate(HOLD).zones
    assert second.held == pytest.approx(0.9 * every.held)
    assert every.short > 0.0
    assert every.held + every.short == pytest.approx(abs(restraint.evaluate(HOLD).force))


@settings(deadline=None)
@given(resistance=st.floats(1e-3, 1e7), slip=st.floats(1e-3, 1e6), length=st.floats(0.0, 1e5), spacing=st.floats(0.2, 5.0))
def test_length_needed_would_pass(resistance: float, slip: float, length: float, spacing: float) -> None:
    given_ = replace(
        HOLD,
        ballast_resistance=resistance,
        anchor_slip=slip,
        tie_spacing=spacing,
        zones=(Zone(name="end", length=length, every=1),),
    )
    (found,) = restraint.evaluate(given_).zones
    assert found.resistance == min(found.anchors_hold, found.ballast_holds)
    assert found.governing == ("anchors" if found.anchors_hold < found.ballast_holds else "ballast")
    again = replace(given_, zones=(Zone(name="end", length=found.length_needed * (1 + 1e-12), every=1),))
    assert restraint.evaluate(again).checks[0].verdict == "passes"


def test_hot_and_cold_ask_for_the_same_zone() -> None:
    hot = restraint.evaluate(replace(HOLD, rail_temperature=NEUTRAL + 40.0))
    cold = restraint.evaluate(replace(HOLD, rail_temperature=NEUTRAL - 40.0))
    assert hot.force == -cold.force
    assert hot.zones == cold.zones


def test_sparse_pattern_needs_its_share() -> None:
    with pytest.raises(RefusedError) as caught:
        restraint.evaluate(replace(HOLD, zones=(HOLD.zones[0], Zone(name="sparse", length=10.0, every=3))))
    assert caught.value.refusals[0].path == ("zones", 1, "ballast_share")
    ok = restraint.evaluate(replace(HOLD, zones=(Zone(name="sparse", length=10.0, every=3, ballast_share=0.7),)))
    assert ok.zones[0].ballast_holds == pytest.approx(3500.0)


def test_no_force_needs_nothing() -> None:
    rest = restraint.evaluate(replace(HOLD, rail_temperature=NEUTRAL, zones=(Zone(name="none", length=0.0, every=1),)))
    assert rest.zones[0].length_needed == 0.0
    assert rest.zones[0].ties_needed == 0
    assert rest.checks[0].verdict == "passes"
    assert rest.checks[0].utilisation is None
