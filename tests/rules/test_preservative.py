from __future__ import annotations

from typing import Any

import pytest

from railrules_api.rules.quantities import preservative as rule
from railrules_api.rules.quantities.preservative import PreservativeInput, PreservativeResult
from tests.rules.stretches import FOOT, GALLON, INCH, formulas_hold, stretch


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
