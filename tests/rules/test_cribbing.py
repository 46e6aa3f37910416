from __future__ import annotations

import pytest

from railrules_api.rules.quantities import cribbing as rule
from railrules_api.rules.quantities.cribbing import CribbingInput
from tests.rules.stretches import FOOT, INCH, formulas_hold


def test_pockets_of_a_mile_of_alternate_ties() -> None:
    given = CribbingInput(
        anchors=6500.0,
        pocket_length=6 * INCH,
        pocket_width=18 * INCH,
        pocket_depth=4 * INCH,
        full_share=0.5,
        ballast_density=1500.0,
    )
    result = rule.evaluate(given)
    formulas_hold(rule.RULE, given, result)
    assert result.pocket / FOOT**3 == pytest.approx(0.25)
    assert result.volume / (3 * FOOT) ** 3 == pytest.approx(6500 * 0.25 / 2 / 27)
    assert result.mass == pytest.approx(result.volume * 1500)
