from __future__ import annotations

from typing import Any

import pytest

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.rules.quantities import preservative as rule
from railrules_api.rules.quantities.preservative import PreservativeInput, PreservativeResult
from tests.rules.stretches import FOOT, GALLON, INCH, formulas_hold, refused_at, stretch


def count(**rest: Any) -> PreservativeResult:
    given = PreservativeInput(
        **{
            "stretch": stretch(),
            "tie_kind": "wood",
            "renewed_share": 0.0,
            "plate_length": 14 * INCH,
            "plate_width": 7.75 * INCH,
            "adze_margin": 0.0,
            "coats": 1,
            "coverage": 100 * FOOT**2 / GALLON,
            **rest,
        }
    )
    result = rule.evaluate(given)
    formulas_hold(rule.RULE, given, result)
    return result


@pytest.mark.parametrize(("margin", "area", "gallons"), [(0.0, 4898, 49.0), (1.0, 7042, 70.4)])
def test_a_mile_of_3250_ties(margin: float, area: float, gallons: float) -> None:
    result = count(adze_margin=margin * INCH)
    assert result.area / FOOT**2 == pytest.approx(area, abs=0.5)
    assert result.volume / GALLON == pytest.approx(gallons, abs=0.05)


def test_coats_and_kept_ties() -> None:
    assert count(coats=2).volume == pytest.approx(2 * count().volume)
    assert count(renewed_share=0.5).seats == 3250
    assert [line.item for line in count().lines] == ["preservative", "tie-seats-adzed"]
    assert count(tie_kind="concrete").volume == 0.0


ROUGH, SMOOTH = 100 * FOOT**2 / GALLON, 225 * FOOT**2 / GALLON


def test_the_surface_decides_the_coverage_and_the_product_its_drum() -> None:
    product = {"product": "copper-brush-on", "coverage_rough": ROUGH, "coverage_smooth": SMOOTH, "drum_volume": 55 * GALLON}
    rough, smooth = count(surface="rough", **product), count(surface="smooth", **product)
    assert rough.volume == pytest.approx(smooth.volume * 2.25)
    assert rough.coverage_used == ROUGH
    assert rough.drums == pytest.approx(rough.volume / GALLON / 55)
    line = rough.lines[0]
    assert (line.product, line.package, line.package_size) == ("copper-brush-on", "drum", Amount(55 * GALLON, Kind.VOLUME))
    # with no surface named the caller's own coverage holds, whatever the product says
    assert count(coverage=2 * ROUGH, **product).volume == pytest.approx(rough.volume / 2)


def test_a_surface_of_unknown_coverage_is_refused() -> None:
    assert refused_at(lambda: count(surface="sprayed", coverage_rough=ROUGH)) == ("surface",)
