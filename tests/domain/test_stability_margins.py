"""Allowed rises by margin rules."""

from __future__ import annotations

import math

import pytest

from railrules_api.domain.errors import RefusedError
from railrules_api.domain.stability import UIC_720, DifferenceRule, allowed_by_difference, allowed_by_lower_rise


@pytest.mark.parametrize(
    ("difference", "allowed"), [(40.0, 60.0), (20.0, 50.0), (12.0, 50.0), (5.0, 50.0), (4.9, 45.0), (0.1, 45.0), (0.0, None)]
)
def test_branches_of_the_difference_rule(difference: float, allowed: float | None) -> None:
    found = allowed_by_difference(upper_rise=50.0 + difference, lower_rise=50.0, rule=UIC_720)
    assert found.temperature_rise == (None if allowed is None else pytest.approx(allowed))
    assert found.difference == pytest.approx(difference)


def test_a_deduction_that_leaves_nothing_is_not_permitted() -> None:
    assert allowed_by_difference(upper_rise=4.5, lower_rise=4.0, rule=UIC_720).temperature_rise is None


def test_refusals() -> None:
    with pytest.raises(RefusedError) as caught:
        allowed_by_difference(upper_rise=40.0, lower_rise=50.0, rule=UIC_720)
    assert caught.value.refusals[0].path == ("upper_rise",)
    with pytest.raises(RefusedError) as caught:
        allowed_by_difference(upper_rise=math.nan, lower_rise=math.inf, rule=UIC_720)
    assert [refusal.path for refusal in caught.value.refusals] == [("upper_rise",), ("lower_rise",)]
    crossed = DifferenceRule(large_difference=1.0, small_difference=5.0, share=0.25, deduction=5.0)
    with pytest.raises(RefusedError) as caught:
        allowed_by_difference(upper_rise=60.0, lower_rise=50.0, rule=crossed)
    assert caught.value.refusals[0].path == ("small_difference",)


def test_lower_rise_less_a_margin() -> None:
    assert allowed_by_lower_rise(lower_rise=40.0, margin=10.0) == 30.0
    with pytest.raises(RefusedError) as caught:
        allowed_by_lower_rise(lower_rise=40.0, margin=40.0)
    assert caught.value.refusals[0].path == ("margin",)
