"""Bills of one mile of track out of Mills, Railway Construction (1898), pp. 242-247, line by line through the service.

Weights are in long tons, hundredweights, quarters and pounds, as printed. Mills rounds them to a quarter of a hundredweight,
28 lb, so a line agrees within half of that. Weights of one bolt, fang clip and crab bolt are not printed: they are what the
printed weight makes of each, so for those lines only the count and the sum are reproduced.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import pytest

from railrules_api.api.service import Service
from railrules_api.domain.kinds import Kind
from railrules_api.units import UNITS
from tests.support.asking import ask

HALF_A_QUARTER = 14.0
RAILS_OFF = 16.5
"""The 100-lb rails are printed 16 lb over the exact weight."""


def pounds(tons: int, hundredweights: int, quarters: int, rest: int = 0) -> float:
    """Return a weight in pounds avoirdupois."""
    return float(((tons * 20 + hundredweights) * 4 + quarters) * 28 + rest)


@dataclass(frozen=True)
class Item:
    """A line that no rule of its own counts: how it goes, the printed count, what one weighs, the printed weight in pounds."""

    name: str
    count: int
    each: float | None
    printed: float | None
    per_tie: float | None = None
    per_joint: float | None = None

    def inputs(self) -> dict[str, Any]:
        given: dict[str, Any] = {"item": self.name}
        for name in ("per_tie", "per_joint"):
            if (value := getattr(self, name)) is not None:
                given[name] = value
        if self.each is not None:
            given["mass_each"] = {"value": self.each, "unit": "lb"}
        return given


@dataclass(frozen=True)
class Bill:
    """A bill of one mile of standard gauge track, 30-ft rails."""

    title: str
    rail: float
    rails: float
    pair: float
    plates: float
    plates_tolerance: float
    bolts: float
    sleepers: int
    to_a_rail: int
    items: tuple[Item, ...]


def flange_items(spikes: int, weight: float) -> tuple[Item, ...]:
    clips, crabs = pounds(0, 8, 3), pounds(1, 6, 3)
    return (
        # two crab bolts with fang clips hold each end of the sleepers beside a joint, in place of spikes
        Item("spikes by hand", spikes, 0.875, weight, per_tie=4, per_joint=-4),
        Item("fang clips", 704, clips / 704, clips, per_joint=2),
        Item("crab bolts", 1408, crabs / 1408, crabs, per_joint=4),
    )


BILLS = (
    Bill(
        title="bull-head 90 lb", rail=90, rails=pounds(141, 8, 2), pair=41, plates=pounds(6, 10, 0),
        # 352 pairs of 41 lb weigh 6-8-3-12; the print is 128 lb over, and no rounding makes that
        plates_tolerance=128.0, bolts=pounds(1, 4, 0), sleepers=2112, to_a_rail=12,
        items=(
            Item("chairs", 4224, 50, pounds(94, 5, 3), per_tie=2),
            Item("spikes by hand", 8448, pounds(3, 15, 2) / 8448, pounds(3, 15, 2), per_tie=4),
            Item("treenails", 8448, None, None, per_tie=4),
            Item("keys", 4224, None, None, per_tie=2),
        ),
    ),
    Bill(
        title="flange 100 lb", rail=100, rails=pounds(157, 3, 0), pair=42, plates=pounds(6, 12, 0), plates_tolerance=0.0,
        bolts=pounds(1, 5, 0), sleepers=2464, to_a_rail=14, items=flange_items(8448, pounds(3, 6, 0)),
    ),
    Bill(
        title="flange 74 lb", rail=74, rails=pounds(116, 5, 3), pair=30.5, plates=pounds(4, 15, 3),
        plates_tolerance=HALF_A_QUARTER, bolts=pounds(1, 1, 0), sleepers=1936, to_a_rail=11,
        items=flange_items(6336, pounds(2, 9, 2)),
    ),
)  # fmt: skip


def quantity(value: float, unit: str) -> dict[str, Any]:
    return {"value": value, "unit": unit}


def in_pounds(found: dict[str, Any]) -> float:
    units = UNITS[Kind.MASS]
    return units["lb"].from_si(units[found["unit"]].to_si(found["value"]))


def mile(bill: Bill) -> dict[str, Any]:
    ties = {"count": bill.to_a_rail, "per_length": quantity(30, "ft")}
    return {"begin": quantity(0, "mi"), "end": quantity(1, "mi"), "rails": "both", "ties": ties}


@pytest.mark.parametrize("bill", BILLS, ids=lambda bill: bill.title)
def test_rails_sleepers_plates_and_bolts(bill: Bill, service: Service) -> None:
    rails = ask(
        service,
        "quantities.rail-mass",
        {"mass_per_length": quantity(bill.rail, "lb_per_yd"), "length": quantity(1, "mi"), "rail_lines": 2},
    )["result"]
    assert in_pounds(rails["mass"]) == pytest.approx(bill.rails, abs=RAILS_OFF)
    ties = ask(service, "quantities.ties", {"stretch": mile(bill), "renewed_share": 1.0})["result"]
    assert ties["ties"] == bill.sleepers
    joints = ask(
        service,
        "quantities.joints",
        {
            "stretch": mile(bill),
            "rail_length": quantity(30, "ft"),
            "bolts_per_joint": 4,
            "pair_mass": quantity(bill.pair, "lb"),
            "bolt_mass": quantity(bill.bolts / 1408, "lb"),
        },
    )["result"]
    assert joints["joints"] == pytest.approx(352, rel=1e-12)
    assert in_pounds(joints["bars_mass"]) == pytest.approx(bill.plates, abs=bill.plates_tolerance + 1e-6)
    assert joints["bolts"] == pytest.approx(1408, rel=1e-12)
    assert in_pounds(joints["bolts_mass"]) == pytest.approx(bill.bolts, rel=1e-12)


@pytest.mark.parametrize(("bill", "item"), [(bill, item) for bill in BILLS for item in bill.items], ids=str)
def test_items_by_hand(bill: Bill, item: Item, service: Service) -> None:
    body = {"stretch": mile(bill), "rail_length": quantity(30, "ft"), **item.inputs()}
    answer = ask(service, "quantities.custom", body)
    assert answer["result"]["count"] == pytest.approx(item.count, rel=1e-12)
    assert [order["order"]["value"] for order in answer["orders"]] == [item.count]
    if item.printed is not None:
        assert in_pounds(answer["result"]["mass"]) == pytest.approx(item.printed, abs=HALF_A_QUARTER)


def job(bill: Bill) -> dict[str, Any]:
    """Return the bill as a job: track laid of single rails, nothing but what the bill has in it."""
    return {
        "name": bill.title,
        "segments": [
            {
                "name": "one mile",
                **mile(bill),
                "renewed_share": 1.0,
                "old": {"mass_per_length": quantity(bill.rail, "lb_per_yd")},
                "new": {
                    "area": quantity(bill.rail / 10, "in2"),
                    "mass_per_length": quantity(bill.rail, "lb_per_yd"),
                    "plates": "reused",
                    "pins_per_plate": 0,
                    "spikes": {"bands": [{"rail_spikes": 0, "plate_spikes": 0}], "extra_at_joint_ties": 0},
                    "anchors": {},
                    "joints": {
                        "rail_length": quantity(30, "ft"),
                        "bolts_per_joint": 4,
                        "pair_mass": quantity(bill.pair, "lb"),
                        "bolt_mass": quantity(bill.bolts / 1408, "lb"),
                    },
                },
                "custom": [item.inputs() for item in bill.items],
            }
        ],
        "supply": {"string": {"stock": []}, "tie_in": "joint", "fixed_tie_in": "joint"},
        "temperatures": {"hottest_rail": quantity(120, "degF"), "coldest_rail": quantity(10, "degF")},
    }


@pytest.mark.parametrize("bill", BILLS, ids=lambda bill: bill.title)
def test_the_bill_as_one_job(bill: Bill, service: Service) -> None:
    result = ask(service, "takeoffs", job(bill))["result"]
    orders = {order["item"]: order for order in result["orders"] if order["net"]["value"]}
    assert in_pounds(orders["new-rail"]["order_mass"]) == pytest.approx(bill.rails, abs=RAILS_OFF)
    assert orders["cross-ties"]["order"]["value"] == bill.sleepers
    assert orders["joint-bars"]["order"]["value"] == 704
    assert in_pounds(orders["joint-bars"]["order_mass"]) == pytest.approx(bill.plates, abs=bill.plates_tolerance + 1e-6)
    assert orders["track-bolts"]["order"]["value"] == 1408
    for item in bill.items:
        assert orders[item.name]["order"]["value"] == item.count
        if item.printed is not None:
            assert in_pounds(orders[item.name]["order_mass"]) == pytest.approx(item.printed, abs=HALF_A_QUARTER)
    for absent in ("spikes", "tie-plates", "anchors", "strings", "field-welds", "thermite-kits"):
        assert absent not in orders
