from __future__ import annotations

from typing import Any

import pytest

from railrules_api.domain.amounts import Amount
from railrules_api.domain.track import Curve
from railrules_api.rules.quantities import tie_plates as rule
from railrules_api.rules.quantities.tie_plates import TiePlatesInput, TiePlatesResult
from tests.rules.stretches import FOOT, INCH, MILE, POUND, SHORT_TON, formulas_hold, stretch


def count(**rest: Any) -> TiePlatesResult:
    given = TiePlatesInput(**{"stretch": stretch(), "tie_kind": "wood", "plated_share": 1.0, "recovered_share": 1.0, **rest})
    result = rule.evaluate(given)
    formulas_hold(rule.RULE, given, result)
    return result


def test_tons_per_mile_of_plan_12() -> None:
    result = count(stretch=stretch(end=100 * MILE), plate_mass=21.47 * POUND)
    assert result.mass is not None
    assert result.mass / 100 / SHORT_TON == pytest.approx(69.76, abs=0.005)


def test_one_plate_to_each_rail_of_each_tie() -> None:
    assert count(stretch=stretch(end=39 * FOOT)).plates == 48
    assert count(stretch=stretch(end=39 * FOOT, rails="right")).plates == 24
    assert count(tie_kind="concrete").plates == 0
    assert count(tie_kind="concrete").note


def test_plates_used_again_are_not_ordered() -> None:
    result = count(reused=True)
    assert (result.plates, result.plates_new, result.lines, result.notes) == (6500, 0, (), ())


def test_missing_plates_are_ordered_new_by_their_name() -> None:
    """24 ties of a 39-ft panel, 48 seats: plates at 3 of 4 are 36, half of them recovered 18, so that 30 are missing."""
    panel = stretch(end=39 * FOOT)
    result = count(stretch=panel, reused=True, plated_share=0.75, recovered_share=0.5, product="8-14", plate_mass=10.0)
    assert (result.plates, result.plates_new, result.mass) == (48, 30.0, 480.0)
    assert [(line.item, line.product, line.net.value, line.mass) for line in result.lines] == [
        ("tie-plates", "8-14", 30.0, 300.0)
    ]
    (note,) = result.notes
    assert "again at 18 of 48 seats" in note
    assert "other 30 are ordered new" in note
    assert "No plate is named" not in note


def test_missing_plates_without_a_name_are_ordered_and_the_answer_asks_for_it() -> None:
    result = count(stretch=stretch(end=39 * FOOT), reused=True, plated_share=0.75)
    assert [(line.product, line.net.value) for line in result.lines] == [("", 12.0)]
    assert result.notes[0].endswith("No plate is named for them: say which matches those in track.")


def test_missing_plates_are_split_by_rail_exactly() -> None:
    panel = stretch(end=39 * FOOT)
    both = count(stretch=panel, reused=True, plated_share=0.9, handed=True)
    assert [line.item for line in both.lines] == ["tie-plates-left", "tie-plates-right"]
    assert [line.net.value for line in both.lines] == pytest.approx([2.4, 2.4], rel=1e-12)
    one = count(stretch=stretch(end=39 * FOOT, rails="right"), reused=True, plated_share=0.0, handed=True)
    assert [(line.item, line.net.value) for line in one.lines] == [("tie-plates-right", 24.0)]


@pytest.mark.parametrize("tie_kind", ["concrete", "steel"])
def test_ties_without_plates_miss_none(tie_kind: str) -> None:
    result = count(tie_kind=tie_kind, reused=True, plated_share=0.5)
    assert (result.plates_new, result.lines, result.notes) == (0.0, (), ())


def test_shares_of_the_old_track_are_nothing_to_new_plates() -> None:
    result = count(plated_share=0.5, recovered_share=0.5)
    assert (result.plates_new, result.lines[0].net.value, result.notes) == (6500.0, 6500.0, ())


def test_handed_plates_are_split_by_rail() -> None:
    lines = count(handed=True, plate_mass=1.0).lines
    assert [(line.item, line.net.value, line.mass) for line in lines] == [
        ("tie-plates-left", 3250.0, 3250.0),
        ("tie-plates-right", 3250.0, 3250.0),
    ]


@pytest.mark.parametrize(
    ("rails", "hand", "item"),
    [("high", "left", "right"), ("low", "left", "left"), ("high", "right", "left"), ("low", "right", "right")],
)
def test_high_rail_lies_opposite_to_the_hand_of_the_curve(rails: str, hand: Any, item: str) -> None:
    where = stretch(end=100.0, rails=rails, curves=(Curve(begin=0.0, end=100.0, radius=500.0, hand=hand),))
    (line,) = count(stretch=where, handed=True).lines
    assert line.item == f"tie-plates-{item}"


@pytest.mark.parametrize(
    ("base", "verdicts"),
    [(6.0, ("passes", "passes")), (6.25, ("fails", "passes")), (5.5, ("passes", "fails")), (None, ("not-checked",) * 2)],
)
def test_base_width_is_checked(base: float | None, verdicts: tuple[str, str]) -> None:
    result = count(plate_rail_base_least=152.4 / 1000, plate_rail_base=6 * INCH, rail_base=None if base is None else base * INCH)
    assert tuple(check.verdict for check in result.checks) == verdicts


def test_plates_come_in_bundles() -> None:
    result = count(stretch=stretch(end=39 * FOOT), per_bundle=20.0)
    assert result.bundles == 48 / 20
    assert [(line.package, line.package_size) for line in result.lines] == [("bundle", Amount(20.0))]
    assert count(reused=True, per_bundle=20.0).bundles == 0.0
