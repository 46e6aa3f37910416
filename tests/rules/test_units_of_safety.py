"""The units of a question to the rules of safety and of sections do not matter: what is answered is the same to twelve digits."""

from __future__ import annotations

import json
import math
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from railrules_api.api.replying import bind
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service
from railrules_api.domain.amounts import Amount
from railrules_api.rules.registry import BY_ID
from railrules_api.units import UNITS

CASES = Path(__file__).parent.parent / "checks"
TWELVE = 1e-12


@cache
def cases() -> list[dict[str, Any]]:
    files = ("thermal.toml", "strength.toml", "sections.toml")
    return [case for file in files for case in tomllib.loads((CASES / file).read_text(encoding="utf-8"))["case"]]


def other_units(tree: Any, step: int) -> Any:
    """Return a request with every quantity in another unit of its kind: the one so many places on in the list of its units."""
    if isinstance(tree, list):
        return [other_units(item, step) for item in tree]
    if not isinstance(tree, dict):
        return tree
    if tree.keys() == {"value", "unit"}:
        kinds = [units for units in UNITS.values() if tree["unit"] in units]
        units = kinds[0]  # `in3` measures volumes and section moduli: what all of them share is sure to suit
        codes = [code for code in units if all(code in other for other in kinds)]
        code = codes[(codes.index(tree["unit"]) + step) % len(codes)]
        return {"value": units[code].from_si(units[tree["unit"]].to_si(tree["value"])), "unit": code}
    return {key: other_units(value, step) for key, value in tree.items()}


def found(service: Service, rule: str, body: dict[str, Any]) -> Any:
    return BY_ID[rule].evaluate(bind(calculation_of(rule), json.dumps(body).encode(), service).given)


def apart(one: Any, other: Any, path: str = "") -> list[str]:
    """Return where two results differ by more than the twelfth digit."""
    if isinstance(one, float) and isinstance(other, float):
        close = math.isclose(one, other, rel_tol=TWELVE, abs_tol=1e-18)
        return [] if close else [f"{path}: {one!r} {other!r}"]
    if isinstance(one, Amount):
        return apart(one.value, other.value, path)
    if isinstance(one, tuple):
        assert len(one) == len(other), path
        return [fault for number, pair in enumerate(zip(one, other, strict=True)) for fault in apart(*pair, f"{path}.{number}")]
    if hasattr(one, "__dataclass_fields__"):
        return [
            fault
            for name in one.__dataclass_fields__
            for fault in apart(getattr(one, name), getattr(other, name), f"{path}.{name}")
        ]
    if isinstance(one, str) and any(sign.isdigit() for sign in one):
        return []  # sentences round their numbers
    assert one == other, path
    return []


@pytest.mark.parametrize("step", [1, 2])
@pytest.mark.parametrize("case", cases(), ids=lambda case: f"{case['rule']}: {case['title']}")
def test_the_units_of_the_question_do_not_matter(case: dict[str, Any], step: int, service: Service) -> None:
    first = found(service, case["rule"], case["inputs"])
    second = found(service, case["rule"], other_units(case["inputs"], step))
    assert apart(first, second) == []
