"""What is written for formulas told in words: every text, symbol, kind, part and note, not only what the sum comes to.

Numbers are kept to six digits: some are places of a greatest value, which no machine finds to more. What only tells how little
a root misses is left out of the notes, as it is arithmetic noise and each machine has its own.
"""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import TYPE_CHECKING, Any

from railrules_api.api.replying import bind
from railrules_api.api.resources import calculation_of
from railrules_api.rules.registry import BY_ID
from railrules_api.rules.takeoff.takeoff import take_off
from railrules_api.rules.written import written
from tests.hostile.extremes import examples
from tests.rules.written_variants import VARIANTS, body_of
from tests.support.demo import demo_job

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.api.service import Service
    from railrules_api.domain.amounts import Amount
    from railrules_api.rules.model import Rule

SUMS = Path(__file__).with_name("sums.jsonl")
NOISE = 1e-12
"""Below this a number is what is left of a difference: the least that is written is a share, the smallest figure of a rail a
second moment [m4] or an expansion [1/K], both above a millionth."""
SEARCHED = ("lower_rise", "upper_rise")
"""Left out: states of a path that is followed step by step, whose last digits, and which of two near states is met, differ."""
_MISS = re.compile(r"-?\d\.\de[-+]\d\d")


def _figure(amount: Amount) -> list[Any]:
    value = 0.0 if abs(amount.value) < NOISE else float(f"{amount.value:.6g}")
    return [value, None if amount.kind is None else amount.kind.value, list(amount.answer or ())]


def _lines(rule: Rule[Any, Any], given: Any, found: Any) -> Iterator[str]:
    for place, formula in enumerate(rule.formulas, 1):
        if formula.gives in SEARCHED:
            continue
        for item in written(rule, place, given, found):
            numbers = {name: _figure(amount) for name, amount in item.numbers.items()}
            told = [rule.id, formula.gives, item.text, numbers, _figure(item.result), item.of, _MISS.sub("*", item.note)]
            yield json.dumps(told, ensure_ascii=False, separators=(",", ":"))


def _uses(service: Service, of: str) -> Iterator[tuple[Rule[Any, Any], Any, Any]]:
    """Yield a rule with its input and output, for every good request to it; for a job, every question asked within it too."""
    calculation = calculation_of(of)
    if of == "takeoffs":
        bound = bind(calculation, json.dumps(demo_job()).encode(), service)
        done = take_off(bound.given, service.terms(bound.rulebook))
        yield calculation.rule, bound.given, done.result
        yield from ((working.rule, working.given, working.found) for working in done.workings)
        return
    bodies = [body for rule, body in examples() if rule == of]
    for body in (*bodies, *(body_of(of, changes) for rule, changes in VARIANTS if rule == of)):
        given = bind(calculation, json.dumps(body).encode(), service).given
        yield BY_ID[of], given, BY_ID[of].evaluate(given)


def sums(service: Service, of: str) -> list[str]:
    """Return a line for every different sum that is written for a rule; first, whose it is."""
    found = (f'["{of}",{line[1:]}' for use in _uses(service, of) for line in _lines(*use))
    return list(dict.fromkeys(found))
