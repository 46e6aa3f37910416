"""Every check case of `tests/checks`, put to the service as a caller would: one case tests decoding, units, rule and answer."""

from __future__ import annotations

import math
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from railrules_api.api.service import Service
from railrules_api.domain.fields import slots_of
from railrules_api.rules.registry import ALL, BY_ID
from railrules_api.units import UNITS
from tests.support.asking import ask

FOLDER = Path(__file__).parent / "checks"
KINDS = ("published", "hand-worked", "common-practice", "regression")


@cache
def cases() -> tuple[dict[str, Any], ...]:
    return tuple(case for file in sorted(FOLDER.glob("*.toml")) for case in tomllib.loads(file.read_text())["case"])


def label(case: dict[str, Any]) -> str:
    return f"{case['rule']}: {case['title']}"


def at(tree: Any, path: str) -> Any:
    for step in path.split("."):
        tree = tree[int(step)] if isinstance(tree, list) else tree[step]
    return tree


def in_unit(found: dict[str, Any], code: str) -> float:
    """Return a quantity of an answer in another unit of its kind."""
    for units in UNITS.values():
        if code in units and found["unit"] in units:
            return units[code].from_si(units[found["unit"]].to_si(found["value"]))
    if code == found["unit"]:
        return float(found["value"])
    raise AssertionError(f"{found['unit']} is no {code}")


def agrees(found: Any, expected: Any, tolerance: float) -> bool:
    if isinstance(expected, dict):
        value = in_unit(found, expected["unit"]) if "unit" in expected else found
        return math.isclose(value, expected["value"], rel_tol=0.0, abs_tol=expected.get("tolerance", tolerance))
    if isinstance(expected, (str, bool)):
        return bool(found == expected)
    if isinstance(expected, list):
        return len(found) == len(expected) and all(agrees(a, b, tolerance) for a, b in zip(found, expected, strict=True))
    value = found["value"] if isinstance(found, dict) else found
    return math.isclose(value, expected, rel_tol=0.0, abs_tol=tolerance)


@pytest.mark.parametrize("case", cases(), ids=label)
def test_case(case: dict[str, Any], service: Service) -> None:
    assert case["kind"] in KINDS
    assert case["cite"]["where"]
    assert case["cite"]["source"] in service.catalogue.sources
    assert case["expect"], "a case that expects nothing cannot fail"
    result = ask(service, case["rule"], case["inputs"])["result"]
    for path, expected in case["expect"].items():
        found = at(result, path)
        assert agrees(found, expected, case.get("tolerance", 1e-9)), f"{path}: {found} for {expected}"


@pytest.mark.parametrize("rule", [rule.id for rule in ALL])
def test_every_rule_has_a_check_that_is_not_our_own_output(rule: str) -> None:
    assert any(case["rule"] == rule and case["kind"] != "regression" for case in cases())


FUNCTIONS = {"ceil": math.ceil, "floor": math.floor, "sqrt": math.sqrt, "min": min, "max": max, "abs": abs, "pi": math.pi}
FUNCTIONS |= {name: getattr(math, name) for name in ("sin", "cos", "tan", "exp", "log", "atan", "asin", "log10")}


def _symbols(record: Any) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for slot in slots_of(type(record)):
        value = getattr(record, slot.name)
        if slot.shape == "record" and value is not None:
            found = {**_symbols(value), **found}
        elif slot.field.symbol and isinstance(value, (int, float)):
            found[slot.field.symbol] = value
    return found


@pytest.mark.parametrize("case", cases(), ids=label)
def test_formula_texts_say_what_the_function_does(case: dict[str, Any], service: Service) -> None:
    import json  # noqa: PLC0415

    from railrules_api.api.replying import bind  # noqa: PLC0415
    from railrules_api.api.resources import calculation_of  # noqa: PLC0415

    rule = BY_ID[case["rule"]]
    given = bind(calculation_of(rule.id), json.dumps(case["inputs"]).encode(), service).given
    found = rule.evaluate(given)
    names = {**FUNCTIONS, **_symbols(found), **_symbols(given)}
    for formula in rule.formulas:
        value = getattr(found, formula.gives)
        if not formula.exact or value is None or not formula.holds_for(given):
            continue
        told = eval(formula.text, {"__builtins__": {}}, names)  # the registry's own text, in a bare namespace
        assert math.isclose(told, value, rel_tol=1e-9, abs_tol=1e-12), f"{formula.gives} = {formula.text}"
