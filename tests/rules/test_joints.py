from __future__ import annotations

from typing import Any

import pytest

from railrules_api.rules.quantities import joints as rule
from railrules_api.rules.quantities.joints import JointsInput, JointsResult
from tests.rules.stretches import FOOT, POUND, formulas_hold, refused_at, stretch


def count(feet: float, **rest: Any) -> JointsResult:
    given = JointsInput(
        **{
            "stretch": stretch(),
            "rail_length": feet * FOOT,
            "bars_per_joint": 2,
            "bolts_per_joint": 4,
            "nuts_per_bolt": 1,
            "washers_per_bolt": 1,
            "bonds_per_joint": 0,
            **rest,
        }
    )
    result = rule.evaluate(given)
    formulas_hold(rule.RULE, given, result)
    return result


@pytest.mark.parametrize(
    ("feet", "joints", "whole", "up"),
    [
        (20, 528, 528, 528),
        (24, 440, 440, 440),
        (26, 406.154, 406, 407),
        (30, 352, 352, 352),
        (33, 320, 320, 320),
        (39, 270.769, 270, 271),
        (80, 132, 132, 132),
    ],
)
def test_joints_of_a_mile(feet: float, joints: float, whole: int, up: int) -> None:
    result = count(feet)
    assert result.joints == pytest.approx(joints, abs=0.0005)
    assert (result.joints_whole, result.joints_up) == (whole, up)


@pytest.mark.parametrize(
    ("feet", "holes", "bolts", "bars"),
    [(39, 4, 1083.1, 541.5), (39, 6, 1624.6, 541.5), (33, 6, 1920, 640), (1440, 4, 29.3, 14.7)],
)
def test_bars_and_bolts_of_a_mile(feet: float, holes: int, bolts: float, bars: float) -> None:
    result = count(feet, bolts_per_joint=holes, bolt_mass=1.0)
    assert result.bolts == pytest.approx(bolts, abs=0.05)
    assert result.bars == pytest.approx(bars, abs=0.05)
    assert (result.nuts, result.washers, result.bolts_mass) == (result.bolts, result.bolts, result.bolts)


def test_special_joints_stand_in_place_of_plain_ones() -> None:
    result = count(33, insulated_joints=4, section_changes=3, bonds_per_joint=2, pair_mass=40 * POUND)
    assert (result.joints_insulated, result.joints_compromise) == (4, 6)
    assert result.joints_plain == pytest.approx(310)
    assert result.bonds == pytest.approx(632)
    assert result.bars_mass == pytest.approx(310 * 40 * POUND)
    assert refused_at(lambda: count(1000, insulated_joints=12)) == ("insulated_joints",)
    assert refused_at(lambda: count(1000, section_changes=6)) == ("section_changes",)


@pytest.mark.parametrize(
    ("track_class", "welded", "bolts", "verdict"),
    [
        (None, False, 4, "not-checked"),
        (1, False, 2, "passes"),
        (1, True, 2, "fails"),
        (2, False, 2, "fails"),
        (5, True, 4, "passes"),
    ],
)
def test_least_bolts(track_class: int | None, welded: bool, bolts: int, verdict: str) -> None:  # noqa: FBT001
    assert count(39, track_class=track_class, welded=welded, bolts_per_joint=bolts).check.verdict == verdict


def test_compromise_joints_at_the_ends_stand_there_besides_the_joints_within() -> None:
    where = stretch(end=390 * FOOT)
    plain, ended = count(39, stretch=where, bonds_per_joint=1), count(39, stretch=where, bonds_per_joint=1, compromise_joints=4)
    assert (ended.joints_plain, ended.joints_compromise) == (plain.joints_plain, 4)
    assert ended.bonds == plain.bonds + 4
    # a stretch shorter than a rail has ends as well
    short = count(39, stretch=stretch(end=FOOT), compromise_joints=4)
    assert short.joints_compromise == 4
    within = count(39, stretch=where, section_changes=1)
    assert within.joints_plain == plain.joints_plain - 2
