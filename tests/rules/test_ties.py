from __future__ import annotations

import math

import pytest

from railrules_api.rules.quantities import ties as rule
from railrules_api.rules.quantities.ties import TiesInput
from tests.rules.stretches import FOOT, INCH, stretch


@pytest.mark.parametrize(
    ("spacing", "verdicts"),
    [
        (18 * INCH, ["passes", "passes"]),
        (1.5 * FOOT, ["passes", "passes"]),
        (math.nextafter(24 * INCH, 1.0), ["passes", "passes"]),
        (17.9 * INCH, ["fails", "passes"]),
        (24.1 * INCH, ["passes", "fails"]),
    ],
)
def test_spacing_of_wood_ties_is_held_against_the_manual(spacing: float, verdicts: list[str]) -> None:
    result = rule.evaluate(TiesInput(stretch=stretch(spacing=spacing), renewed_share=0.0))
    assert [check.verdict for check in result.checks] == verdicts
    assert [bool(check.would_pass) for check in result.checks] == [verdict == "fails" for verdict in verdicts]


def test_other_ties_have_other_spacings() -> None:
    assert rule.evaluate(TiesInput(stretch=stretch(), renewed_share=0.0, tie_kind="concrete")).checks == ()
