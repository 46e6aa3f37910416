from __future__ import annotations

from railrules_api.rules.quantities import closing_joints as rule
from railrules_api.rules.quantities.closing_joints import ClosingJointsInput
from railrules_api.rules.quantities.joints import JointSet

MADE_OF = JointSet(bars_per_joint=2, bolts_per_joint=4, nuts_per_bolt=1, washers_per_bolt=1, bonds_per_joint=2, bar_mass=17.0)


def test_special_joints_come_complete() -> None:
    given = ClosingJointsInput(plain=3, insulated=2, compromise=1, made_of=MADE_OF, track_class=3)
    result = rule.evaluate(given)
    assert {line.item: line.net.value for line in result.lines} == {
        "joint-bars": 6.0, "track-bolts": 12.0, "track-nuts": 12.0, "spring-washers": 12.0, "rail-bonds": 8.0,
        "insulated-joints": 2.0, "compromise-joints": 1.0,
    }  # fmt: skip
    assert result.bars_mass == 102.0
    assert [check.verdict for check in result.checks] == ["passes"]


def test_a_joint_in_welded_rail_needs_two_bolts_in_each_rail_even_in_class_1() -> None:
    made_of = JointSet(bars_per_joint=2, bolts_per_joint=2, nuts_per_bolt=1, washers_per_bolt=1, bonds_per_joint=0)
    (check,) = rule.evaluate(ClosingJointsInput(plain=1, insulated=0, compromise=0, made_of=made_of, track_class=1)).checks
    assert check.verdict == "fails"


def test_without_its_parts_a_joint_is_counted_and_said_to_be_unfinished() -> None:
    result = rule.evaluate(ClosingJointsInput(plain=4, insulated=2, compromise=0))
    assert (result.joints, result.bars) == (6, None)
    assert [line.item for line in result.lines] == ["insulated-joints", "compromise-joints"]
    assert result.notes
    assert not rule.evaluate(ClosingJointsInput(plain=0, insulated=2, compromise=0)).notes
