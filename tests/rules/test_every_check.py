"""Every safety check says what it must: demand, capacity, what decides, where the limit stands, and what would make it pass."""

from __future__ import annotations

import json
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from railrules_api.api.examples import requests
from railrules_api.api.replying import bind
from railrules_api.api.resources import calculation_of, calculations
from railrules_api.api.service import Service
from railrules_api.domain.fields import slots_of
from railrules_api.rules.checks import Check
from railrules_api.rules.registry import ALL, BY_ID

CASES = Path(__file__).parent.parent / "checks"
FAMILIES = ("thermal.", "strength.", "regulation.")
SAFETY = {rule.id for rule in ALL if rule.id.startswith(FAMILIES)}
LAYING_NO_UTILISATION = {"laid-cold", "laid-hot", "destressing-cold", "added-below-range"}
"""Held against a limit of nothing: how far outside is told, a share of nothing cannot be."""
YES_OR_NO = {"torch-cut", "anchored-turnouts", "welded-rail-plan", "record-kept", "added-below-range", "buckling"}
"""Checks of a fact, that have no number; and buckling where no rise at all is allowed."""


@cache
def bodies() -> list[tuple[str, dict[str, Any]]]:
    found = [
        (case["rule"], case["inputs"])
        for file in sorted(CASES.glob("*.toml"))
        for case in tomllib.loads(file.read_text(encoding="utf-8"))["case"]
        if case["rule"] in SAFETY
    ]
    ids = {resource.path: resource.rule.id for resource in calculations()}
    from railrules_api.api.resources import operations  # noqa: PLC0415

    for operation in operations():
        example = requests().get(operation.id)
        if example is not None and ids.get(operation.path) in SAFETY:
            found.append((ids[operation.path], example))
    return found


def checks_of(service: Service, rule: str, body: dict[str, Any]) -> tuple[Check, ...]:
    given = bind(calculation_of(rule), json.dumps(body).encode(), service).given
    found: tuple[Check, ...] = getattr(BY_ID[rule].evaluate(given), "checks", ())
    return found


def inputs_of(record: type) -> set[str]:
    names: set[str] = set()
    for slot in slots_of(record):
        names.add(slot.name)
        if slot.record is not None:
            names |= inputs_of(slot.record)
    return names


def test_a_check_says_what_it_must(service: Service) -> None:
    verdicts: set[tuple[str, str]] = set()
    for rule, body in bodies():
        known = inputs_of(BY_ID[rule].input)
        for check in checks_of(service, rule, body):
            verdicts.add((rule, check.verdict))
            where = f"{rule} {check.code}"
            assert check.title, where
            assert check.place, where
            assert check.governing, where
            if check.verdict == "not-checked":
                assert check.capacity is None, where
                assert check.utilisation is None, where
                missing = set(check.governing.replace(",", " ").split())
                assert missing & known or check.governing.startswith("not available"), where
                continue
            assert (check.would_pass != "") is (check.verdict == "fails"), where
            if check.code in YES_OR_NO and check.capacity is None:
                continue
            assert check.demand is not None, where
            assert check.capacity is not None, where
            passes = check.demand.value <= check.capacity.value * (1 + 1e-9)
            assert passes is (check.verdict == "passes"), where
            if check.capacity.value > 0.0:
                assert check.utilisation == pytest.approx(check.demand.value / check.capacity.value, rel=1e-9), where
            else:
                assert check.code in LAYING_NO_UTILISATION, where
    seen = {verdict: {rule for rule, told in verdicts if told == verdict} for verdict in ("passes", "fails", "not-checked")}
    assert len(seen["passes"]) >= 9
    assert len(seen["fails"]) >= 5
    assert len(seen["not-checked"]) >= 5


@pytest.mark.parametrize("rule", sorted(SAFETY))
def test_cautions_defer_to_the_railroad_and_to_a_qualified_person(rule: str) -> None:
    codes = {caution.code for caution in BY_ID[rule].cautions}
    assert "own-standards-decide" in codes
    if rule.startswith("thermal.") and rule != "thermal.joint-gap":
        assert "neutral-temperature-drifts" in codes
