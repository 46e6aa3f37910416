from __future__ import annotations

from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.api.service import Service
from railrules_api.domain.amounts import Amount
from railrules_api.rules.quantities import plate_pins as rule
from railrules_api.rules.quantities.plate_pins import PlatePinsInput, PlatePinsResult
from tests.rules.stretches import INCH, formulas_hold, stretch
from tests.support.asking import ask


def count(**rest: Any) -> PlatePinsResult:
    given = PlatePinsInput(**{"stretch": stretch(), "tie_kind": "wood", "every": 5, "per_plate": 2, **rest})
    result = rule.evaluate(given)
    formulas_hold(rule.RULE, given, result)
    return result


def test_two_studs_at_every_fifth_tie() -> None:
    result = count(stretch=stretch(end=100 * 19.5 * INCH), pin_mass=0.5)
    assert (result.ties_pinned, result.plates_pinned, result.pins, result.mass) == (20, 40, 80, 40.0)
    assert count(tie_kind="concrete").pins == 0


def test_pins_come_in_kegs_where_it_is_known_what_one_holds(service: Service) -> None:
    where = stretch(end=2400 * 19.5 * INCH)
    bare, kegs = count(stretch=where), count(stretch=where, per_keg=384.0)
    assert (bare.kegs, bare.lines[0].package_size) == (None, None)
    assert kegs.kegs == 1920 / 384 == 5.0
    assert (kegs.lines[0].package, kegs.lines[0].package_size) == ("keg", Amount(384.0))
    # the row of the catalogue says what a keg holds, and says that it is common practice
    body = {
        "stretch": {"begin": miles(0), "end": miles(1), "rails": "both", "ties": {"spacing": {"value": 19.5, "unit": "in"}}},
        "pin": "hold-down-pin",
    }
    answer = ask(service, rule.RULE.id, body)
    assert answer["result"]["kegs"] == answer["result"]["pins"] / 384
    told = next(item for item in answer["assumptions"] if item["name"] == "count_per_package")
    assert told["cite"]["status"] == "common-practice"


def miles(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "mi"}


@settings(max_examples=100, deadline=None)
@given(st.floats(1, 2000), st.floats(0.01, 0.99), st.integers(1, 12))
def test_counts_add_up_under_any_cut(end: float, share: float, every: int) -> None:
    cut = end * share
    parts = [count(stretch=stretch(a, b), every=every).pins for a, b in ((0.0, cut), (cut, end))]
    assert count(stretch=stretch(0.0, end), every=every).pins == sum(parts)
