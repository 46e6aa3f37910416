from __future__ import annotations

from itertools import pairwise
from typing import Any

import pytest

from railrules_api.rules.quantities import custom as rule
from railrules_api.rules.quantities import joints, salvage, ties
from railrules_api.rules.quantities.custom import CustomInput, CustomResult
from tests.rules.stretches import FOOT, MILE, POUND, formulas_hold, refused_at, stretch

LONG_TON = 2240 * POUND
HUNDREDWEIGHT = 112 * POUND


def count(**rest: Any) -> CustomResult:
    given = CustomInput(**{"item": "thing", "stretch": stretch(), **rest})
    result = rule.evaluate(given)
    formulas_hold(rule.RULE, given, result)
    return result


def mills(sleepers_per_rail: int) -> Any:
    return stretch(spacing=30 * FOOT / sleepers_per_rail)


@pytest.mark.parametrize(
    ("pounds", "sleepers_per_rail", "rails_tons", "pair", "plates_pounds", "sleepers", "spikes"),
    [(100, 14, 157.15, 42, 14_784, 2_464, 8_448), (74, 11, 116.2875, 30.5, 10_724, 1_936, 6_336)],
)
def test_mills_flange_rail_bills(  # noqa: PLR0913, PLR0917  the lines of a bill
    pounds: float, sleepers_per_rail: int, rails_tons: float, pair: float, plates_pounds: float, sleepers: int, spikes: int
) -> None:
    where, rail_length = mills(sleepers_per_rail), 30 * FOOT
    assert ties.evaluate(ties.TiesInput(stretch=where, renewed_share=1.0)).ties == sleepers
    assert count(stretch=where, per_tie=4.0, per_joint=-4.0, rail_length=rail_length).count == pytest.approx(spikes)
    assert count(stretch=where, per_joint=2.0, rail_length=rail_length).count == pytest.approx(704)
    assert count(stretch=where, per_joint=4.0, rail_length=rail_length).count == pytest.approx(1408)
    rails = salvage.evaluate(
        salvage.SalvageInput(
            stretch=where, tie_kind="wood", renewed_share=0.0, old_mass_per_length=pounds * POUND / (3 * FOOT), worn_share=0.0,
            relay_share=1.0, reroll_share=0.0, bars_per_joint=2, plated_share=0.0, old_spikes_per_plate=0.0, recovered_share=1.0,
        )
    )  # fmt: skip
    assert rails.rail_mass / LONG_TON == pytest.approx(rails_tons, abs=16.5 / 2240)
    plates = joints.evaluate(
        joints.JointsInput(
            stretch=where, rail_length=rail_length, bars_per_joint=2, bolts_per_joint=4, nuts_per_bolt=1, washers_per_bolt=0,
            bonds_per_joint=0, pair_mass=pair * POUND,
        )
    )  # fmt: skip
    assert plates.bars_mass is not None
    assert plates.bars_mass / POUND == pytest.approx(plates_pounds, abs=14)


def test_mills_bull_head_bill() -> None:
    where = mills(12)
    chairs = count(stretch=where, item="chairs", per_seat=1.0, mass_each=50 * POUND)
    assert chairs.count == 4224
    assert chairs.mass == pytest.approx(94 * LONG_TON + 5 * HUNDREDWEIGHT + 84 * POUND, abs=4.5 * POUND)
    assert count(stretch=where, item="keys", per_seat=1.0).count == 4224
    assert count(stretch=where, item="treenails", per_tie=4.0).count == 8448
    assert chairs.lines[0].item == "chairs"


def test_by_length_and_by_rail() -> None:
    assert count(pieces=40.0, per_length=MILE, per_rail=1.0, rail_length=33 * FOOT).count == pytest.approx(360)
    assert count().count == 0.0


def test_refusals_name_their_field() -> None:
    assert refused_at(lambda: count(per_joint=1.0)) == ("rail_length",)
    assert refused_at(lambda: count(pieces=1.0)) == ("per_length",)
    assert refused_at(lambda: count(per_length=1.0)) == ("pieces",)
    assert refused_at(lambda: count(per_joint=-1.0, rail_length=10.0)) == ("per_joint",)
    assert refused_at(lambda: count(per_tie=-1.0)) == ("per_tie",)


def test_pieces_add_up_though_one_without_ties_takes_away() -> None:
    counted = {"per_tie": 2.0, "per_joint": -1.0, "rail_length": 30 * FOOT}
    whole = count(**counted).count
    cut = [0.0, 100.01 * FOOT, 100.02 * FOOT, MILE]
    pieces = [count(stretch=stretch(begin=begin, end=end), piece=True, **counted) for begin, end in pairwise(cut)]
    assert pieces[1].count < 0.0
    assert sum(piece.count for piece in pieces) == pytest.approx(whole, rel=1e-12)
    assert refused_at(lambda: count(stretch=stretch(begin=cut[1], end=cut[2]), **counted)) == ("per_joint",)
