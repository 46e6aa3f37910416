from __future__ import annotations

import math
from typing import Any

import pytest

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.rules.quantities import order, tie_plugs
from railrules_api.rules.quantities.tie_plugs import TiePlugsInput, TiePlugsResult
from tests.rules.stretches import INCH, formulas_hold, stretch

MILE_OF_3250 = stretch()


def count(**rest: Any) -> TiePlugsResult:
    given = TiePlugsInput(
        **{
            "stretch": MILE_OF_3250,
            "tie_kind": "wood",
            "renewed_share": 0.0,
            "old_spikes_per_plate": 2.0,
            "filling": "plugs",
            "hole_shape": "square",
            "hole_side": 0.625 * INCH,
            "hole_depth": 5 * INCH,
            "compound_waste": 0.1,
            "per_bundle": 500.0,
            **rest,
        }
    )
    result = tie_plugs.evaluate(given)
    formulas_hold(tie_plugs.RULE, given, result)
    return result


@pytest.mark.parametrize(("old_spikes", "plugs", "bundles"), [(2.0, 13_000, 26.0), (4.0, 26_000, 52.0)])
def test_a_mile_of_plugs(old_spikes: float, plugs: int, bundles: float) -> None:
    result = count(old_spikes_per_plate=old_spikes)
    assert (result.plugs, result.bundles) == (plugs, bundles)


def test_one_plug_more_is_a_bundle_more() -> None:
    bundle = Amount(500.0)
    assert order.evaluate(order.OrderInput(net=Amount(13_000.0), package_size=bundle)).packages == 26
    assert order.evaluate(order.OrderInput(net=Amount(13_001.0), package_size=bundle)).packages == 27


def test_renewed_ties_take_no_plugs() -> None:
    assert count(renewed_share=0.25).plugs == 9_750
    assert count(renewed_share=1.0).plugs == 0
    assert count(tie_kind="steel").plugs == 0


def test_compound_fills_the_holes_and_is_lost_in_part() -> None:
    result = count(filling="compound")
    (line,) = result.lines
    assert line.item == "plug-compound"
    assert line.net == Amount(result.compound, Kind.VOLUME)
    assert result.compound / INCH**3 == pytest.approx(13_000 * 0.625**2 * 5 * 1.1)


def test_a_round_hole_takes_what_a_cylinder_does() -> None:
    square, round_ = count(filling="compound"), count(filling="compound", hole_shape="round")
    # a cylinder of 5/8 in by 5 in: 0.3068 in2 by 5 in
    assert round_.hole_volume / INCH**3 == pytest.approx(1.534, abs=0.0005)
    assert round_.compound == pytest.approx(square.compound * math.pi / 4.0, rel=1e-12)
    assert round_.plugs == square.plugs
