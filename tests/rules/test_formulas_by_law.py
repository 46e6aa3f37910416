"""The equations of a break and of a free end, law by law: each gives what the rule gives, and each output has one that holds."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.domain.fields import slots_of
from railrules_api.domain.slip import LAWS
from railrules_api.rules.thermal import break_gap, end_movement
from railrules_api.sheets.expressions import evaluate
from railrules_api.sheets.working import symbols_of

if TYPE_CHECKING:
    from railrules_api.rules.model import Rule

RAIL = {"area": 8.6e-3, "elastic_modulus": 2.07e11, "expansion": 1.17e-5, "neutral_temperature": 308.0}
HELD = {"resistance": 6000.0, "stiffness": 4e6}
ASKED = [
    (break_gap.RULE, break_gap.BreakGapInput, {"rail_temperature": cold, "gap_limit": 0.05}) for cold in (300.0, 260.0)
] + [
    (end_movement.RULE, end_movement.EndMovementInput, {"hottest": hot, "coldest": 250.0, "joint_force": 5e4})
    for hot in (309.0, 330.0)
]  # fmt: skip


@pytest.mark.parametrize("law", LAWS)
@pytest.mark.parametrize(("rule", "record", "more"), ASKED)
def test_the_equations_that_hold_give_the_answer(rule: Rule[Any, Any], record: Any, more: dict[str, float], law: str) -> None:
    known = {slot.name for slot in slots_of(record)}
    given = record(**{name: value for name, value in {**RAIL, **HELD, **more}.items() if name in known}, law=law)
    found = rule.evaluate(given)
    numbers = {name: number.value for record_ in (given, found) for name, number in symbols_of(record_).items()}
    told = [formula for formula in rule.formulas if formula.holds_for(given)]
    checked = 0
    for formula in told:
        value = getattr(found, formula.gives)
        if formula.exact and value is not None:
            checked += 1
            assert math.isclose(evaluate(formula.text, numbers), value, rel_tol=1e-9, abs_tol=1e-12), formula
    assert checked >= (5 if rule is break_gap.RULE else 4)
    assert len({formula.gives for formula in told}) == len(told), "one equation an output"
