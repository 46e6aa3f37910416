"""Formulas with their numbers, so that every figure can be checked by hand."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

from railrules_api.api.envelope import Step
from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import slots_of
from railrules_api.rules.written import written
from railrules_api.units import si_unit

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from railrules_api.rules.model import Working

_LONGEST_NAME, _LONGEST_TEXT = 200, 4000
"""Characters that the wire form leaves to what a step is about, and to a formula with its numbers."""
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


def _put(text: str, numbers: Mapping[str, float]) -> str:
    """Return a formula with its numbers put in for its symbols."""
    return _SYMBOL.sub(lambda match: repr(numbers[match.group()]) if match.group() in numbers else match.group(), text)


def _with_unit(amount: Amount) -> str:
    return f"{amount.value!r} {si_unit(amount.kind).label}" if amount.kind is not None else repr(amount.value)


def _written(working: Working, place: int, symbol: str) -> Iterator[Step]:
    """Yield a formula that is told in words as it is written out for one use, line by line."""
    formula = working.rule.formulas[place - 1]
    for item in written(working.rule, place, working.given, working.found):
        numbers = {name: amount.value for name, amount in item.numbers.items()}
        note = f" ({item.note})" if item.note else ""
        put = f"{'' if item.of else symbol}{_put(item.text, numbers)}{note}"
        yield Step(
            rule=working.rule.id,
            of=": ".join(filter(None, (working.of, item.of)))[:_LONGEST_NAME],
            field=formula.gives,
            formula=symbol + formula.text,
            substituted=put if len(put) <= _LONGEST_TEXT else f"{put[: _LONGEST_TEXT - 1]}\u2026",
            result=_with_unit(item.result),
        )


def steps_of(working: Working) -> list[Step]:
    """Return each formula of a rule with the numbers of one use put in for its symbols; those that gave nothing are left out."""
    numbers = {**symbols_of(working.found), **symbols_of(working.given)}
    fields = {slot.name: slot for slot in slots_of(type(working.found))}
    steps: list[Step] = []
    for place, formula in enumerate(working.rule.formulas, 1):
        if not formula.holds_for(working.given):
            continue
        slot = fields[formula.gives]
        symbol = f"{slot.field.symbol} = " if slot.field.symbol else ""
        result = _number(getattr(working.found, formula.gives))
        if not formula.exact:
            steps += _written(working, place, symbol)
        elif result is not None:
            unit = f" {si_unit(slot.field.kind).label}" if slot.field.kind is not None else ""
            steps.append(
                Step(
                    rule=working.rule.id,
                    of=working.of,
                    field=formula.gives,
                    formula=symbol + formula.text,
                    substituted=symbol + _put(formula.text, numbers),
                    result=result + unit,
                )
            )
    return steps
