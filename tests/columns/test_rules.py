"""One formula for numbers and columns: the same bits."""

from __future__ import annotations

import math
import random
import subprocess
import sys
from contextlib import suppress
from dataclasses import replace
from typing import Any

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from railrules_api.columns import NUMBERS, ColumnsError, evaluate, rules
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.fields import Slot, slots_of
from railrules_api.rules.model import Rule
from railrules_api.rules.registry import ALL, BY_ID

ONE_BY_ONE = {"quantities.train-loads", "thermal.destressing", "thermal.buckling"}
"""Rules that list trains and marks, or look for a root step by step: their rows share no arithmetic."""
READY = [rule for rule in ALL if rule.columns]


def number(slot: Slot) -> st.SearchStrategy[Any]:
    field = slot.field
    low = field.above if field.above is not None else field.at_least
    low = -1e9 if low is None else low
    high = 1e9 if field.at_most is None else field.at_most
    if slot.shape == "count":
        return st.integers(math.ceil(low), math.floor(high))
    return st.floats(low, high, exclude_min=field.above is not None)


def one(slot: Slot) -> st.SearchStrategy[Any]:
    if slot.shape == "word":
        return st.sampled_from(slot.words)
    if slot.shape == "flag":
        return st.booleans()
    if slot.shape == "text":
        return st.sampled_from(("", "136RE"))
    return number(slot)


def rows_of(rule: Rule[Any, Any]) -> st.SearchStrategy[list[dict[str, Any]]]:
    """Rows of which about half are a good row with a few numbers changed, so that not all of them are refused."""
    slots = slots_of(rule.input)

    def rows(seed: int) -> st.SearchStrategy[list[dict[str, Any]]]:
        # the same inputs are left out of every row: a column is there or it is not
        good = good_row(rule, random.Random(seed))
        given = {slot.name: st.just(good[slot.name]) | one(slot) for slot in slots if slot.name in good}
        changed = st.fixed_dictionaries({name: st.sampled_from((good[name],) * 9) | way for name, way in given.items()})
        return st.lists(st.just(good) | changed | st.fixed_dictionaries(given), min_size=1, max_size=12)

    return st.integers(0, 5).flatmap(rows)


def good_row(rule: Rule[Any, Any], chosen: random.Random) -> dict[str, Any]:
    for _ in range(5000):
        row = {slot.name: picked(slot, chosen) for slot in slots_of(rule.input) if not slot.optional or chosen.random() < 0.7}
        with suppress(RefusedError, ArithmeticError):
            rule.evaluate(rule.input(**row))
            return row
    raise AssertionError("no good row was found")


def bits(values: Any) -> list[str]:
    return [float(value).hex() for value in values]


def test_the_registry_names_rules_that_take_columns() -> None:
    assert {rule.id for rule in READY} == {rule.id for rule in rules()} - ONE_BY_ONE
    assert len(READY) >= 11


@pytest.mark.parametrize("rule", rules(), ids=lambda rule: rule.id)
def test_a_column_gives_the_bits_of_its_numbers(rule: Rule[Any, Any]) -> None:
    answered = 0

    @settings(max_examples=60 if rule.columns else 15, deadline=None, suppress_health_check=list(HealthCheck))
    @given(rows_of(rule))
    def check(rows: list[dict[str, Any]]) -> None:
        nonlocal answered
        alone = []
        for position, row in enumerate(rows):
            try:
                alone.append(rule.evaluate(rule.input(**row)))
            except (RefusedError, ArithmeticError) as error:
                refused_alike(rule, rows, position, error)
                del rows[position:]
                break
        if not rows:
            return
        answered += len(rows)
        together = evaluate(rule.id, **{name: np.array([row[name] for row in rows]) for name in rows[0]})
        for slot in slots_of(rule.output):
            if slot.shape in NUMBERS:
                values = [getattr(found, slot.name) for found in alone]
                told = together.get(slot.name, [math.nan] * len(rows))
                assert bits(told) == bits(math.nan if value is None else value for value in values)

    check()
    assert answered


def refused_alike(rule: Rule[Any, Any], rows: list[dict[str, Any]], position: int, error: Exception) -> None:
    """Hold the refusal of columns against that of the first row that is refused alone."""
    with pytest.raises(type(error)) as caught:
        evaluate(rule.id, **{name: np.array([row[name] for row in rows]) for name in rows[0]})
    if isinstance(error, RefusedError) and isinstance(caught.value, RefusedError):
        assert caught.value.refusals == error.below("row", position).refusals


@pytest.mark.parametrize("rule", READY, ids=lambda rule: rule.id)
def test_rows_of_one_branch_are_worked_out_together(rule: Rule[Any, Any], monkeypatch: pytest.MonkeyPatch) -> None:
    """A thousand rows, each a good one moved a little: hardly any is asked by itself."""
    row = good_row(rule, random.Random(3))
    moved = [
        {name: value * (1.0 + 1e-12 * number) if isinstance(value, float) else value for name, value in row.items()}
        for number in range(1000)
    ]
    asked = 0

    def counting(given: Any) -> Any:
        nonlocal asked
        asked += 1
        return rule.evaluate(given)

    monkeypatch.setattr("railrules_api.columns.BY_ID", {rule.id: replace(rule, evaluate=counting)})
    evaluate(rule.id, **{name: np.array([row[name] for row in moved]) for name in row})
    assert asked < 40


def picked(slot: Slot, chosen: random.Random) -> Any:
    if slot.shape == "word":
        return chosen.choice(slot.words)
    if slot.shape == "flag":
        return chosen.random() < 0.5
    low = slot.field.above if slot.field.above is not None else slot.field.at_least
    low = 0.0 if low is None else low
    high = low + 1.0 if slot.field.at_most is None else slot.field.at_most
    if slot.shape == "count":
        return chosen.randint(math.ceil(low), math.floor(min(high, low + 100)))
    return low + (high - low) * chosen.choice((0.3, 0.5, 0.01, 0.1)) * (0.9 + chosen.random() / 10)


def test_any_other_rule_is_asked_row_by_row() -> None:
    chosen = random.Random(5)
    rows: list[dict[str, Any]] = [
        {
            "area": chosen.uniform(0.005, 0.01),
            "elastic_modulus": 2.07e11,
            "expansion": 1.17e-5,
            "rail_temperature": chosen.uniform(230.0, 290.0),
            "neutral_temperature": chosen.uniform(290.0, 320.0),
            "law": chosen.choice(("rigid-plastic", "elastic")),
            "resistance": chosen.uniform(2000.0, 9000.0),
            "stiffness": chosen.uniform(1e6, 1e7),
            "gap_limit": 0.05,
        }
        for _ in range(50)
    ]
    rule = BY_ID["thermal.break-gap"]
    columns = {name: np.array([row[name] for row in rows]) for name in rows[0]}
    together = evaluate(rule.id, **columns)
    alone = [rule.evaluate(rule.input(**row)) for row in rows]
    for slot in slots_of(rule.output):
        if slot.shape in NUMBERS:
            values = [getattr(found, slot.name) for found in alone]
            assert bits(together[slot.name]) == bits(math.nan if value is None else value for value in values)


def test_single_values_stand_for_every_row() -> None:
    temperatures = np.linspace(250.0, 320.0, 8)
    steel = {"area": 0.0086, "elastic_modulus": 2.07e11, "expansion": 1.17e-5}
    found = evaluate("thermal.force", **steel, rail_temperature=temperatures, neutral_temperature=300.0)
    assert {name: len(column) for name, column in found.items()} == dict.fromkeys(found, 8)
    assert bits(found["force_per_degree"]) == bits([2.07e11 * 1.17e-5 * 0.0086] * 8)


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"area": np.array([0.01, math.nan])}, "area, row 1"),
        ({"area": np.array([0.01, -1.0])}, "area, row 1"),
        ({"area": np.array([0.01, 0.01, 0.01])}, "one length"),
        ({"depth": 1.0}, "unknown columns"),
        ({"area": np.ones((2, 2))}, "one length"),
    ],
)
def test_columns_that_make_no_sense_are_refused(changes: dict[str, Any], said: str) -> None:
    good = {
        "area": 0.01,
        "elastic_modulus": 2e11,
        "expansion": 1e-5,
        "rail_temperature": np.array([300.0, 310.0]),
        "neutral_temperature": 290.0,
    }
    with pytest.raises(ColumnsError, match=said):
        evaluate("thermal.force", **{**good, **changes})
    del good["area"]
    with pytest.raises(ColumnsError, match="missing"):
        evaluate("thermal.force", **good)


@pytest.mark.parametrize("rule", ["nothing.at-all", "quantities.ties", "takeoffs"])
def test_rules_with_nested_input_take_no_columns(rule: str) -> None:
    with pytest.raises(ColumnsError):
        evaluate(rule)


def test_a_refusal_names_its_row() -> None:
    with pytest.raises(RefusedError) as caught:
        evaluate(
            "thermal.break-gap", area=0.01, elastic_modulus=2e11, expansion=1e-5, rail_temperature=np.array([250.0, 260.0]),
            neutral_temperature=300.0, law=np.array(["rigid-plastic", "elastic"]), resistance=3000.0, gap_limit=0.05,
        )  # fmt: skip
    assert caught.value.refusals[0].path[:2] == ("row", 1)


def test_numpy_is_loaded_only_when_columns_are_used() -> None:
    code = (
        "import sys, railrules_api.columns, railrules_api.api.app; "
        "sys.exit(any(name in sys.modules for name in ('numpy', 'pyarrow', 'scipy')))"
    )
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
