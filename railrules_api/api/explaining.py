"""Formulas with their numbers, so that every figure can be checked by hand."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

from railrules_api.api.envelope import Step
from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import slots_of
from railrules_api.units import si_unit

if TYPE_CHECKING:
    from railrules_api.rules.model import Working

_SYMBOL = re.compile(r"(?<![A-Za-z0-9_.])[A-Za-z][A-Za-z0-9_]*")


def _number(value: object) -> str | None:
    if isinstance(value, bool) or value is None:
        return None
    if isinstance(value, Amount):
        value = value.value
    if isinstance(value, (int, float)):
        return repr(value)
    return None


def symbols_of(record: Any) -> dict[str, float]:  # noqa: ANN401  any described record
    """Return the numbers of a record and of the records in it by their symbols; the first of a name wins."""
    found: dict[str, float] = {}
    for slot in slots_of(type(record)):
        value = getattr(record, slot.name)
        if slot.shape == "record" and value is not None:
            for name, number in symbols_of(value).items():
                found.setdefault(name, number)
        elif slot.field.symbol and _number(value) is not None:
            found.setdefault(slot.field.symbol, value.value if isinstance(value, Amount) else value)
    return found


def steps_of(working: Working) -> list[Step]:
    """Return each formula of a rule with the numbers of one use put in for its symbols."""
    numbers = {**symbols_of(working.found), **symbols_of(working.given)}
    fields = {slot.name: slot for slot in slots_of(type(working.found))}

    def put(match: re.Match[str]) -> str:
        number = numbers.get(match.group())
        return match.group() if number is None else repr(number)

    steps: list[Step] = []
    for formula in working.rule.formulas:
        if not formula.holds_for(working.given):
            continue
        slot = fields[formula.gives]
        result = _number(getattr(working.found, formula.gives))
        unit = f" {si_unit(slot.field.kind).label}" if slot.field.kind is not None else ""
        symbol = f"{slot.field.symbol} = " if slot.field.symbol else ""
        steps.append(
            Step(
                rule=working.rule.id,
                of=working.of,
                field=formula.gives,
                formula=symbol + formula.text,
                substituted=symbol + (_SYMBOL.sub(put, formula.text) if formula.exact else formula.text),
                result="see the result" if result is None else result + unit,
            )
        )
    return steps
