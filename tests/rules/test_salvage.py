from __future__ import annotations

from typing import Any

import pytest

from railrules_api.rules.quantities import salvage as rule
from railrules_api.rules.quantities.salvage import SalvageInput, SalvageResult
from tests.rules.stretches import FOOT, POUND, SHORT_TON, formulas_hold, per_rail, refused_at, stretch

YARD = 3 * FOOT


def count(**rest: Any) -> SalvageResult:
    given = SalvageInput(
        **{
            "stretch": stretch(),
            "tie_kind": "wood",
            "renewed_share": 0.0,
            "old_mass_per_length": 112 * POUND / YARD,
            "worn_share": 0.0,
            "relay_share": 0.0,
            "reroll_share": 0.0,
            "old_rail_length": 39 * FOOT,
            "bars_per_joint": 2,
            "bolts_per_joint": 4,
            "bar_mass": 37.6 * POUND,
            "plated_share": 1.0,
            "plate_mass": 22.90 * POUND,
            "old_spikes_per_plate": 2.0,
            "spike_mass": 0.8 * POUND,
            "old_anchors": per_rail(8, 0),
            "anchor_mass": 2.2 * POUND,
            "recovered_share": 1.0,
            **rest,
        }
    )
    result = rule.evaluate(given)
    formulas_hold(rule.RULE, given, result)
    return result


def test_a_mile_of_112_lb_rail() -> None:
    result = count()
    tons = {line.item: line.mass / SHORT_TON for line in result.lines if line.mass is not None}
    assert result.rail_mass / SHORT_TON == pytest.approx(197.1, abs=0.05)
    assert tons["salvage-tie-plates"] == pytest.approx(74.4, abs=0.05)
    assert tons["salvage-joint-bars"] == pytest.approx(10.2, abs=0.05)
    assert tons["salvage-spikes"] == pytest.approx(5.2, abs=0.05)
    assert tons["salvage-anchors"] == pytest.approx(2.4, abs=0.05)
    assert result.without_mass == ("salvage-track-bolts",)


@pytest.mark.parametrize(("pounds", "one_rail"), [(50, 44.00), (70, 61.60), (80, 70.40)])
def test_tons_of_one_line_of_rail(pounds: float, one_rail: float) -> None:
    result = count(stretch=stretch(rails="left"), old_mass_per_length=pounds * POUND / YARD)
    assert result.rail_mass / SHORT_TON == pytest.approx(one_rail, abs=0.01)


def test_classes_share_the_worn_mass() -> None:
    result = count(worn_share=0.1, relay_share=0.5, reroll_share=0.2, car_capacity=50 * SHORT_TON)
    assert result.rail_mass / SHORT_TON == pytest.approx(197.12 * 0.9)
    assert result.relay_mass + result.reroll_mass + result.scrap_mass == pytest.approx(result.rail_mass)
    assert result.scrap_mass == pytest.approx(0.3 * result.rail_mass)
    assert result.cars == pytest.approx((result.rail_mass + result.other_mass) / 50 / SHORT_TON)
    assert count(relay_share=0.5, scrap_share=0.5).scrap_mass > 0


def test_refusals_name_their_field() -> None:
    assert refused_at(lambda: count(relay_share=0.5, scrap_share=0.6)) == ("scrap_share",)
    assert refused_at(lambda: count(relay_share=0.6, reroll_share=0.5)) == ("reroll_share",)
    assert refused_at(lambda: count(bolts_per_joint=None)) == ("bolts_per_joint",)
    assert refused_at(lambda: count(old_anchors=per_rail(30, 0)))[0] == "old_anchors"


def test_welded_track_without_anchors_gives_rail_plates_and_spikes() -> None:
    result = count(old_rail_length=None, bolts_per_joint=None, old_anchors=None, renewed_share=0.2, recovered_share=0.5)
    net = {line.item: line.net.value for line in result.lines}
    assert (net["salvage-joint-bars"], net["salvage-anchors"], net["salvage-ties"]) == (0, 0, 650)
    assert net["salvage-spikes"] == 6500
    assert count(spike_mass=None, keg_mass=200.0, per_keg=400.0).other_mass > 0


@pytest.mark.parametrize(
    ("worn", "limits", "name"),
    [
        (0.05, {"relay_wear": 0.05, "reroll_wear": 0.2}, "relay"),
        (0.051, {"relay_wear": 0.05, "reroll_wear": 0.2}, "reroll"),
        (0.21, {"relay_wear": 0.05, "reroll_wear": 0.2}, "scrap"),
        (0.06, {"relay_wear": 0.05}, "scrap"),
        (0.0, {"reroll_wear": 0.1}, "reroll"),
    ],
)
def test_wear_decides_the_class(worn: float, limits: dict[str, float], name: str) -> None:
    result = count(worn_share=worn, **limits)
    masses = {"relay": result.relay_mass, "reroll": result.reroll_mass, "scrap": result.scrap_mass}
    assert masses.pop(name) == result.rail_mass
    assert set(masses.values()) == {0.0}


def test_limits_of_wear_go_with_no_shares_and_in_order() -> None:
    assert refused_at(lambda: count(relay_wear=0.1, relay_share=0.5)) == ("relay_wear",)
    assert refused_at(lambda: count(reroll_wear=0.1, scrap_share=1.0)) == ("reroll_wear",)
    assert refused_at(lambda: count(relay_wear=0.1, reroll_wear=0.05)) == ("reroll_wear",)


def test_what_goes_back_into_track_is_no_salvage() -> None:
    net = {line.item: line.net.value for line in count(anchors_reapplied=100.0, plates_reused=True).lines}
    full = {line.item: line.net.value for line in count().lines}
    assert net["salvage-anchors"] == full["salvage-anchors"] - 100.0
    assert net["salvage-tie-plates"] == 0.0
    assert net["salvage-spikes"] == full["salvage-spikes"]
    assert refused_at(lambda: count(anchors_reapplied=full["salvage-anchors"] + 1.0)) == ("anchors_reapplied",)
