"""Mass of rail against the handbooks' tables."""

from __future__ import annotations

import pytest

from railrules_api.rules.quantities.rail_mass import RailMassInput, RailMassResult, evaluate

FT = 0.3048
MILE = 1609.344
LB = 0.45359237


def of(pounds: float, length: float = MILE, lines: int = 2) -> RailMassResult:
    return evaluate(RailMassInput(mass_per_length=pounds * LB / 0.9144, length=length, rail_lines=lines, stock_length=39 * FT))


@pytest.mark.parametrize(("pounds", "short", "long"), [(50, 44.0, 39.29), (70, 61.6, 55.0), (80, 70.4, 62.86)])
def test_one_mile_of_one_rail(pounds: float, short: float, long: float) -> None:
    found = of(pounds, lines=1)
    assert found.short_tons_per_rail_mile == pytest.approx(short, abs=0.005)
    assert found.long_tons_per_rail_mile == pytest.approx(long, abs=0.005)
    assert found.mass == pytest.approx(found.long_tons_per_rail_mile * 2240 * LB)


@pytest.mark.parametrize(("pounds", "tons", "hundredweight", "quarters"), [(90, 141, 8, 2), (100, 157, 3, 0), (74, 116, 5, 3)])
def test_one_mile_of_track_in_long_tons(pounds: float, tons: int, hundredweight: int, quarters: int) -> None:
    printed = tons * 2240 + hundredweight * 112 + quarters * 28
    found = of(pounds)
    assert abs(found.long_tons_per_track_mile * 2240 - printed) <= 16
    assert found.mass / LB == pytest.approx(3520 * pounds)


def test_the_rule_of_eleven_sevenths_is_exact() -> None:
    for pounds in range(30, 180):
        assert of(pounds).long_tons_per_track_mile == pytest.approx(11 * pounds / 7, rel=1e-13)


def test_a_39_ft_rail_weighs_13_times_its_pounds_per_yard() -> None:
    found = of(115)
    assert found.stock_rail_mass is not None
    assert found.stock_rail_mass / LB == pytest.approx(13 * 115)
    assert evaluate(RailMassInput(mass_per_length=50.0, length=1.0, rail_lines=1)).stock_rail_mass is None


def test_forty_five_thousand_feet_make_just_over_four_miles() -> None:
    assert of(115, length=22_500 * FT).track_miles == pytest.approx(4.26, abs=0.005)
