"""Numbers at and beyond the limits of the schema: answered with finite numbers or refused, never anything else."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.api.resources import calculations
from tests.hostile.extremes import examples, leaves_of, outcome, replaced

if TYPE_CHECKING:
    from railrules_api.api.service import Service

RULES = [resource.rule.id for resource in calculations()]
SLOW = ("sections.properties",)  # a second an answer: the whole grid is for `make resilience`


def first_example(rule: str) -> dict[str, object]:
    return next(body for name, body in examples() if name == rule)


@pytest.mark.parametrize("rule", RULES)
def test_every_calculation_has_a_good_example(rule: str, service: Service) -> None:
    assert outcome(service, rule, first_example(rule)) == 200


@pytest.mark.parametrize("rule", [rule for rule in RULES if rule not in SLOW])
def test_one_number_after_another(rule: str, service: Service) -> None:
    body = first_example(rule)
    found = {outcome(service, rule, replaced(body, {path: value})) for path, values in leaves_of(rule, body) for value in values}
    assert found <= {200, 422}


@pytest.mark.parametrize("rule", [rule for rule in RULES if rule not in SLOW])
def test_several_numbers_at_once(rule: str, service: Service) -> None:
    body = first_example(rule)
    numbers = leaves_of(rule, body)
    if not numbers:
        assert rule == "sections.compatibility"
        return

    @settings(max_examples=40, deadline=None, database=None, derandomize=True)
    @given(st.data())
    def check(data: st.DataObject) -> None:
        chosen = data.draw(st.lists(st.integers(0, len(numbers) - 1), min_size=1, max_size=6, unique=True))
        changes = {}
        for place in chosen:
            path, values = numbers[place]
            changes[path] = data.draw(st.sampled_from(values) | st.floats(allow_nan=False, allow_infinity=False))
        assert outcome(service, rule, replaced(body, changes)) in (200, 422)

    check()
