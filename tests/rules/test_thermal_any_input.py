"""Whatever lies within the limits of the fields is answered with finite numbers or refused by name, never anything else."""

from __future__ import annotations

import dataclasses
import math
from typing import TYPE_CHECKING, Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.fields import slots_of
from railrules_api.rules.strength import hauling_curve, regulation, vertical_bending
from railrules_api.rules.thermal import (
    break_gap,
    curve_load,
    destressing,
    end_movement,
    joint_gap,
    laying_adjustment,
    neutral_temperature,
    restraint,
    temperature_range,
    worn_rail,
)

if TYPE_CHECKING:
    from railrules_api.domain.errors import Refusal
    from railrules_api.domain.fields import Slot
    from railrules_api.rules.model import Rule

RULES: tuple[Rule[Any, Any], ...] = (
    break_gap.RULE,
    curve_load.RULE,
    destressing.RULE,
    end_movement.RULE,
    joint_gap.RULE,
    laying_adjustment.RULE,
    neutral_temperature.RULE,
    restraint.RULE,
    temperature_range.RULE,
    hauling_curve.RULE,
    regulation.RULE,
    vertical_bending.RULE,
    worn_rail.RULE,
)
STEEL = {
    "area": st.floats(1e-4, 0.05),
    "elastic_modulus": st.floats(1e9, 1e12),
    "expansion": st.floats(1e-7, 1e-4),
}


def numbers(slot: Slot) -> st.SearchStrategy[Any]:
    if slot.name in STEEL:
        return STEEL[slot.name]
    low = slot.field.at_least if slot.field.at_least is not None else slot.field.above
    high = slot.field.at_most
    low = 0.0 if low is None else low
    high = 1e3 if high is None else high
    exclude = slot.field.above is not None
    plain = st.floats(low, high, exclude_min=exclude)
    if low == 0.0:  # nothing at all, or something that can be measured
        plain = st.just(0.0) | st.floats(1e-6, high) if high > 0.0 else st.just(0.0)
    if high > 0.0 and low >= 0.0 and high / max(low, 1e-9) > 1e3:  # spread over the decades too
        decades = st.floats(math.log(max(low, 1e-9)) + 1e-12, math.log(high) - 1e-12).map(math.exp)
        return st.one_of(plain, decades)
    return plain


def one(slot: Slot) -> st.SearchStrategy[Any]:
    found: st.SearchStrategy[Any]
    match slot.shape:
        case "quantity" | "number":
            found = numbers(slot)
        case "count":
            found = st.integers(int(slot.field.at_least or 0), int(slot.field.at_most or 100))
        case "flag":
            found = st.booleans()
        case "word":
            found = st.sampled_from(slot.words)
        case "text":
            found = st.just("somewhere")
        case "record":
            assert slot.record is not None
            found = records(slot.record)
        case "records":
            assert slot.record is not None
            found = st.lists(records(slot.record), max_size=3).map(tuple)
        case _:
            raise TypeError(slot.shape)
    return st.one_of(st.none(), found) if slot.optional else found


def records(record: Any) -> st.SearchStrategy[Any]:
    return st.builds(record, **{slot.name: one(slot) for slot in slots_of(record)})


def answer(rule: Rule[Any, Any], body: Any) -> tuple[tuple[Refusal, ...], Any]:
    try:
        return (), rule.evaluate(body)
    except RefusedError as error:
        return error.refusals, None


def floats_in(value: Any) -> list[float]:
    if isinstance(value, float):
        return [value]
    if isinstance(value, Amount):
        return [value.value]
    if isinstance(value, tuple):
        return [number for part in value for number in floats_in(part)]
    if dataclasses.is_dataclass(value):
        return [number for item in dataclasses.fields(value) for number in floats_in(getattr(value, item.name))]
    return []


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.id)
@settings(deadline=None, max_examples=150, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(data=st.data())
def test_any_input_is_answered_or_refused(rule: Rule[Any, Any], data: st.DataObject) -> None:
    body = data.draw(records(rule.input))
    refusals, result = answer(rule, body)
    record: Any = rule.input
    names = {slot.name for slot in slots_of(record)}
    assert all(refusal.path and refusal.path[0] in names for refusal in refusals)
    assert all(math.isfinite(number) for number in floats_in(result))
    for check in result.checks if hasattr(result, "checks") else ():
        assert check.title
        assert check.place
        assert check.governing
        assert (check.would_pass == "") == (check.verdict != "fails")
