from __future__ import annotations

from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.rules.quantities import plate_pins as rule
from railrules_api.rules.quantities.plate_pins import PlatePinsInput, PlatePinsResult
from tests.rules.stretches import INCH, formulas_hold, stretch


def count(**rest: Any) -> PlatePinsResult:
    given = PlatePinsInput(**{"stretch": stretch(), "tie_kind": "wood", "every": 5, "per_plate": 2, **rest})
    result = rule.evaluate(given)
    formulas_hold(rule.RULE, given, result)
    return result


def test_two_studs_at_every_fifth_tie() -> None:
    result = count(stretch=stretch(end=100 * 19.5 * INCH), pin_mass=0.5)
    assert (result.ties_pinned, result.plates_pinned, result.pins, result.mass) == (20, 40, 80, 40.0)
    assert count(tie_kind="concrete").pins == 0


@settings(max_examples=100, deadline=None)
@given(st.floats(1, 2000), st.floats(0.01, 0.99), st.integers(1, 12))
def test_counts_add_up_under_any_cut(end: float, share: float, every: int) -> None:
    cut = end * share
    parts = [count(stretch=stretch(a, b), every=every).pins for a, b in ((0.0, cut), (cut, end))]
    assert count(stretch=stretch(0.0, end), every=every).pins == sum(parts)
