"""Formulas told in words, written out: every one can be, and what is written comes to what the rule answers."""

from __future__ import annotations

import json
import math
from dataclasses import replace
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.api.examples import requests
from railrules_api.api.replying import bind
from railrules_api.api.resources import calculation_of, calculations, operations
from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.rules.registry import BY_ID, RESOURCES
from railrules_api.rules.takeoff.takeoff import take_off
from railrules_api.rules.written import WAYS, way_of, written
from railrules_api.rules.written.terms import added, count, weighted
from railrules_api.sheets.expressions import evaluate, symbols_in
from tests.rules.written_variants import VARIANTS, body_of
from tests.support.demo import demo_job
from tests.test_check_cases import cases, label

if TYPE_CHECKING:
    from railrules_api.api.service import Service
    from railrules_api.rules.model import Rule

FEW = 1e-12
"""Below this a difference of two numbers is float noise: the least of what is written here is a share."""


def check(rule: Rule[Any, Any], given: Any, found: Any) -> int:
    """Do every sum that is written for a use of a rule; return how many there are."""
    lines = 0
    for place, formula in enumerate(rule.formulas, 1):
        value = getattr(found, formula.gives)
        items = list(written(rule, place, given, found))
        lines += len(items)
        for item in items:
            assert set(symbols_in(item.text)) == set(item.numbers), (rule.id, formula.gives, item.text)
            told = evaluate(item.text, {name: amount.value for name, amount in item.numbers.items()})
            assert math.isclose(told, item.result.value, rel_tol=1e-9, abs_tol=FEW), (rule.id, formula.gives, item)
        if items and isinstance(value, (int, float)) and not isinstance(value, bool):
            # the result itself stands on a line, beside what leads to it
            assert any(math.isclose(item.result.value, value, rel_tol=1e-9, abs_tol=FEW) for item in items), formula.gives
        if not formula.exact and formula.holds_for(given) and isinstance(value, float) and value:
            assert items, (rule.id, formula.gives)
    return lines


@pytest.mark.parametrize("case", [case for case in cases() if case["rule"] in BY_ID], ids=label)
def test_what_is_written_comes_to_what_the_rule_answers(case: dict[str, Any], service: Service) -> None:
    rule = BY_ID[case["rule"]]
    given = bind(calculation_of(rule.id), json.dumps(case["inputs"]).encode(), service).given
    check(rule, given, rule.evaluate(given))


@pytest.mark.parametrize(("rule", "changes"), VARIANTS, ids=[f"{rule} {place}" for place, (rule, _) in enumerate(VARIANTS)])
def test_so_it_does_in_every_case_of_a_formula(service: Service, rule: str, changes: dict[str, Any]) -> None:
    given = bind(calculation_of(rule), json.dumps(body_of(rule, changes)).encode(), service).given
    check(BY_ID[rule], given, BY_ID[rule].evaluate(given))


def test_so_it_does_in_a_whole_job_and_in_every_worked_request(service: Service) -> None:
    ids = {operation.path: operation.id for operation in operations()}
    for resource in calculations():
        body = requests().get(ids[resource.path])
        if body is not None and resource.rule.id != "takeoffs":
            given = bind(calculation_of(resource.rule.id), json.dumps(body).encode(), service).given
            check(resource.rule, given, resource.rule.evaluate(given))
    bound = bind(calculation_of("takeoffs"), json.dumps(demo_job()).encode(), service)
    done = take_off(bound.given, service.terms(bound.rulebook))
    assert check(calculation_of("takeoffs").rule, bound.given, done.result) == len(("mass in", "mass out"))
    assert sum(check(working.rule, working.given, working.found) for working in done.workings) > 200


def test_what_is_not_known_is_not_written(service: Service) -> None:
    given = bind(calculation_of("quantities.anchors"), json.dumps(body_of("quantities.anchors", {})).encode(), service).given
    anchors = BY_ID["quantities.anchors"]
    bare = replace(given, per_bag=None)
    check(anchors, bare, anchors.evaluate(bare))
    bound = bind(calculation_of("takeoffs"), json.dumps(demo_job()).encode(), service)
    result = replace(take_off(bound.given, service.terms(bound.rulebook)).result, orders=(), mass_in=0.0, mass_out=0.0)
    assert check(calculation_of("takeoffs").rule, bound.given, result) == 0


def test_every_formula_in_words_has_a_way_to_be_written_and_no_way_is_left_over() -> None:
    ways = {
        (rule.id, formula.gives): way_of(rule, place)
        for rule in RESOURCES
        for place, formula in enumerate(rule.formulas, 1)
        if not formula.exact
    }
    assert [name for name, way in ways.items() if way is None] == []
    assert {(rule, name.split()[0]) for rule, name in WAYS} == set(ways)


def test_terms_that_are_alike_stand_once() -> None:
    text, numbers = added([count(2), count(3), count(2)])
    assert (text, evaluate(text, {name: amount.value for name, amount in numbers.items()})) == ("2 * a_1 + a_2", 7)
    text, numbers = weighted([(count(2), count(3)), (count(2), count(3)), (count(1), Amount(4.0, Kind.LENGTH))], "ab")
    assert (text, evaluate(text, {name: amount.value for name, amount in numbers.items()})) == ("2 * a_1 * b_1 + a_2 * b_2", 16)
