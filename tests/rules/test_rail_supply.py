"""Rail supply: facts of the trade, mass balance, and agreement with the layout."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.domain.errors import RefusedError
from railrules_api.domain.strings import StockLength
from railrules_api.rules.quantities import string_layout
from railrules_api.rules.quantities.rail_supply import RailSupplyInput, RailSupplyResult, evaluate
from tests.rules.laying_help import FT, IN, MILE, keep_out, laying, run, string

LB_PER_YD = 0.45359237 / 0.9144
EXTRA: dict[str, Any] = {
    "mass_per_length": 115 * LB_PER_YD,
    "spare_share": 0.0,
    "rail_reject_share": 0.0,
    "weld_reject_share": 0.0,
    "weld_reject_cut": 2 * FT,
    "test_weld_share": 0.0,
    "test_weld_rail": 4 * FT,
}


def supply(*runs: Any, **changes: Any) -> RailSupplyResult:
    return evaluate(RailSupplyInput(**(EXTRA | laying(*runs) | changes)))


def amounts(found: RailSupplyResult) -> dict[str, float]:
    return {line.item: line.net.value for line in found.lines}


def test_a_string_of_37_rails_of_39_ft() -> None:
    found = supply(run("left", 0, 5280), string=string(39.0, 37))
    assert found.string_length / FT == pytest.approx(1440.75, abs=1e-9)
    assert (found.stock_rails_per_string, found.plant_welds_per_string) == (37, 36)


@pytest.mark.parametrize(("count", "length", "welds"), [(18, 1440, 17), (20, 1600, 19)])
def test_strings_of_80_ft_rails(count: int, length: float, welds: int) -> None:
    found = supply(run("left", 0, 5280), string=string(80.0, count))
    assert found.plant_welds_per_string == welds
    assert found.string_length / FT == pytest.approx(length - welds * 0.75 / 12, abs=1e-9)
    pressed = supply(run("left", 0, 5280), string=string(80.0, count, process="gas-pressure"))
    assert pressed.string_length / FT == pytest.approx(length - welds / 12, abs=1e-9)


@pytest.mark.parametrize(("length", "strings"), [(1440, 22 / 3), (1600, 6.6)])
def test_strings_in_a_mile_of_track(length: int, strings: float) -> None:
    found = supply(run("left", 0, 5280), string=string(80.0, length // 80, flash_butt_consumption=0.0))
    assert found.strings_per_track_mile == pytest.approx(strings, rel=1e-12)


def test_stock_of_several_lengths() -> None:
    mixed = string(stock=(StockLength(length=80 * FT, count=10), StockLength(length=78 * FT, count=2)), end_trim=0.5 * IN)
    found = supply(run("left", 0, 5280), string=mixed)
    assert found.stock_rails_per_string == 12
    assert found.string_length / FT == pytest.approx(956 - 11 * 0.75 / 12 - 1 / 12, abs=1e-9)
    assert found.stock_length_average / FT == pytest.approx(956 / 12)


def test_a_string_is_longer_on_a_hot_day() -> None:
    hot = string(made_temperature=294.0, rail_temperature=314.0, drilled_ends=1)
    found = supply(run("left", 0, 5280), string=hot)
    assert found.string_length_laid == pytest.approx((found.string_length - 18 * IN) * (1 + 6.5e-6 * 1.8 * 20), rel=1e-12)
    cold = supply(run("left", 0, 5280), string=string(drilled_ends=1))
    # rail stretched by heat weighs less per length
    assert found.rail_mass / found.rail_length == pytest.approx(115 * LB_PER_YD / (1 + 6.5e-6 * 1.8 * 20), rel=1e-12)
    assert cold.rail_mass / cold.rail_length == pytest.approx(115 * LB_PER_YD, rel=1e-12)
    assert found.drilled_ends == found.strings


def test_a_mile_of_both_rails_by_hand() -> None:
    found = supply(run("left", 0, 5280), run("right", 0, 5280), old_rail_length=39 * FT)
    # 5,280 ft in strings of 1,598.8125 ft: three welds a rail, two tie-ins a rail
    assert (found.junctions, found.tie_ins, found.field_welds) == (6, 4, 10)
    assert found.joints_replaced == pytest.approx(270.77, abs=0.005)
    # four gaps of an inch a rail: three within, two halves at the ends
    assert found.rail_length / FT == pytest.approx(10560 - 8 / 12, abs=1e-6)
    assert found.rail_mass / 907.18474 == pytest.approx(115 * (10560 - 8 / 12) / 3 / 2000, rel=1e-9)
    assert found.strings == 7
    assert found.strings_exact == pytest.approx((10560 - 8 / 12) / 1598.8125, rel=1e-9)
    assert found.stock_rails == 140
    assert found.plant_welds == 133
    assert amounts(found) == {
        "new-rail": found.rail_length,
        "stock-rails": 140,
        "plant-welds": 133,
        "strings": 7,
        "field-welds": 10,
        "thermite-kits": 10,
        "closures": found.closures,
        "rail-offcuts": found.offcut_length,
    }


def test_what_the_plant_loses() -> None:
    found = supply(
        run("left", 0, 5280),
        spare_share=0.05,
        rail_reject_share=0.02,
        weld_reject_share=0.01,
        test_weld_share=0.04,
    )
    welds = found.plant_welds
    lost = (welds / 0.99 - welds) * 2 + welds * 0.04 * 4
    assert found.stock_rails == pytest.approx((found.stock_rails_in_strings * 1.05 + lost / 80) / 0.98, rel=1e-12)
    assert found.plant_welds_made == pytest.approx(welds / 0.99, rel=1e-12)
    assert amounts(found)["stock-rails"] == found.stock_rails


def test_ends_of_every_kind() -> None:
    found = supply(
        run("left", 0, 1000, "compromise-weld", "insulated-joint"),
        run("left", 1000, 2000, "insulated-joint", "joint"),
        run("right", 0, 2000, "compromise-joint", "weld"),
    )
    assert (found.compromise_welds, found.tie_ins, found.junctions) == (1, 1, 1)
    assert (found.closing_insulated_joints, found.closing_joints, found.closing_compromise_joints) == (1, 1, 1)
    lines = amounts(found)
    assert (lines["field-welds"], lines["thermite-kits"], lines["compromise-weld-kits"]) == (3, 2, 1)
    pressed = amounts(supply(run("left", 0, 2000), field_weld="flash-butt"))
    assert "thermite-kits" not in pressed
    assert pressed["field-welds"] == 3


@settings(max_examples=150, deadline=None)
@given(
    lengths=st.lists(st.floats(60, 9000), min_size=1, max_size=5),
    rail=st.sampled_from(["left", "right"]),
    trim=st.floats(0, 2),
    drilled=st.integers(0, 2),
    field=st.sampled_from(["thermite", "flash-butt"]),
)
def test_no_rail_appears_or_vanishes(lengths: list[float], rail: str, trim: float, drilled: int, field: str) -> None:
    runs = []
    place = 0.0
    for length in lengths:
        runs.append(run(rail, place, place + length))
        place += length + 50
    made = string(end_trim=trim * FT, drilled_ends=drilled)
    asked = RailSupplyInput(**(EXTRA | laying(*runs, string=made, field_weld=field, keep_outs=(keep_out(500, 560, 10),))))
    try:
        found = evaluate(asked)
    except RefusedError:
        return
    stock = found.strings * 1600 * FT
    at_the_plant = found.strings * (19 * 0.75 * IN + 2 * trim * FT + drilled * 18 * IN)
    left = stock - at_the_plant - found.rail_length - found.offcut_length
    # the rest is saw cuts; a cut that meets the end of the string takes less than its width
    assert -1e-3 <= left <= found.cuts * 0.25 * IN + 1e-3
    gaps = found.field_welds - len(lengths)
    takes = 1.5 * IN if field == "flash-butt" else -1 * IN
    assert found.rail_length == pytest.approx(found.run_length + takes * gaps, abs=1e-3)


def test_the_layout_says_the_same() -> None:
    given_ = laying(run("left", 0, 30_000), run("right", 0, 28_000, "joint"), keep_outs=(keep_out(7000, 7100, 10),))
    found = evaluate(RailSupplyInput(**(EXTRA | given_)))
    layout = string_layout.evaluate(string_layout.StringLayoutInput(**given_))
    assert (found.strings, found.field_welds, found.cuts) == (layout.strings, layout.field_welds, layout.cuts)
    assert found.offcut_length == layout.offcut_length
    assert found.run_length == pytest.approx(58_000 * FT)


def test_forty_five_thousand_feet_of_rail() -> None:
    found = supply(run("left", 0, 22_500), run("right", 0, 22_500))
    assert found.run_length / (2 * MILE) == pytest.approx(4.26, abs=0.005)
