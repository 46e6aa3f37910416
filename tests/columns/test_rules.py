"""One formula for numbers and columns: the same bits."""

from __future__ import annotations

import math
import random
import subprocess
import sys
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.columns import NUMBERS, ColumnsError, evaluate, rules
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.fields import Slot, slots_of
from railrules_api.rules.model import Rule
from railrules_api.rules.registry import ALL, BY_ID

READY = [rule for rule in ALL if rule.columns]


def number(slot: Slot) -> st.SearchStrategy[Any]:
    field = slot.field
    low = field.above if field.above is not None else field.at_least
    low = -1e9 if low is None else low
    high = 1e9 if field.at_most is None else field.at_most
    if slot.shape == "count":
        return st.integers(math.ceil(low), math.floor(high))
    return st.floats(low, high, exclude_min=field.above is not None)


def rows_of(rule: Rule[Any, Any]) -> st.SearchStrategy[list[dict[str, Any]]]:
    # the same inputs are left out of every row: a column is there or it is not
    slots = slots_of(rule.input)
    full = {slot.name: number(slot) for slot in slots}
    bare = {slot.name: number(slot) for slot in slots if not slot.optional}
    return st.lists(st.fixed_dictionaries(full), min_size=1, max_size=5) | st.lists(
        st.fixed_dictionaries(bare), min_size=1, max_size=5
    )


def bits(values: Any) -> list[str]:
    return [float(value).hex() for value in values]


def test_the_registry_names_rules_that_take_columns() -> None:
    assert {rule.id for rule in READY} >= {"thermal.force", "quantities.rail-mass", "quantities.cribbing"}
    assert set(READY) <= set(rules())


@pytest.mark.parametrize("rule", READY, ids=lambda rule: rule.id)
def test_a_column_gives_the_bits_of_its_numbers(rule: Rule[Any, Any]) -> None:
    @settings(max_examples=100, deadline=None)
    @given(rows_of(rule))
    def check(rows: list[dict[str, Any]]) -> None:
        columns = {name: np.array([row[name] for row in rows]) for name in rows[0]}
        together = evaluate(rule.id, **columns)
        for position, row in enumerate(rows):
            alone = rule.evaluate(rule.input(**row))
            for slot in slots_of(rule.output):
                value = getattr(alone, slot.name)
                if slot.shape in NUMBERS and value is not None:
                    assert bits([together[slot.name][position]]) == bits([value])

    check()


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
