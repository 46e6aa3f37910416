"""The takeoff: a line asked for alone is the line in the job; units and cuts change nothing; money is exact."""

from __future__ import annotations

import copy
import json
import math
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from railrules_api.api.replying import bind, worked
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service
from railrules_api.rules.model import Working
from railrules_api.units import UNITS, si_unit
from tests.support.asking import ask, body_of
from tests.support.demo import demo_job

PER_TIE = ("cross-ties", "tie-plates", "spikes", "tie-plugs", "plate-pins", "preservative", "anchors", "salvage-ties")


def workings(service: Service, body: dict[str, Any]) -> tuple[Working, ...]:
    resource = calculation_of("takeoffs")
    return worked(resource, bind(resource, json.dumps(body).encode(), service), service)[1]


def totals(service: Service, body: dict[str, Any]) -> dict[tuple[str, str], float]:
    answer = ask(service, "takeoffs", body)
    return {(order["item"], order["product"]): order["net"]["value"] for order in answer["result"]["orders"]}


def test_every_line_of_the_job_is_the_line_asked_for_alone(service: Service) -> None:
    compared = 0
    for working in workings(service, demo_job()):
        alone = ask(service, working.rule.id, {**body_of(working.given), "units": "si"})["result"]
        lines = getattr(working.found, "lines", ())
        assert len(alone.get("lines", ())) == len(lines)
        for line, told in zip(lines, alone.get("lines", ()), strict=True):
            compared += 1
            kind = line.net.kind
            value = told["net"]["value"] if kind is None else UNITS[kind][told["net"]["unit"]].to_si(told["net"]["value"])
            assert (told["item"], told["product"]) == (line.item, line.product)
            assert math.isclose(value, line.net.value, rel_tol=1e-12, abs_tol=1e-12), (working.rule.id, line.item)
        for check, told in zip(getattr(working.found, "checks", ()), alone.get("checks", ()), strict=True):
            assert (told["code"], told["verdict"]) == (check.code, check.verdict)
    assert compared > 50


def in_si(tree: Any) -> Any:
    """Return a body with every quantity in the SI unit of its kind."""
    if isinstance(tree, dict):
        if tree.keys() == {"value", "unit"}:
            for units in UNITS.values():
                if tree["unit"] in units:
                    unit = units[tree["unit"]]
                    return {"value": unit.to_si(tree["value"]), "unit": si_unit(unit.kind).code}
        return {key: in_si(value) for key, value in tree.items()}
    return [in_si(value) for value in tree] if isinstance(tree, list) else tree


def test_the_units_of_the_request_do_not_matter(service: Service) -> None:
    body = demo_job()
    us, si = totals(service, body), totals(service, in_si(body))
    assert us.keys() == si.keys()
    for key, value in us.items():
        assert math.isclose(si[key], value, rel_tol=1e-12, abs_tol=1e-9), key


@given(st.floats(12.01, 14.59))
@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_cutting_a_segment_changes_no_count_of_what_stands_on_ties(service: Service, mile: float) -> None:
    body = demo_job()
    segment = body["segments"][0]
    for curve in segment.pop("curves"):
        assert curve
    segment.pop("features")
    whole = totals(service, body)
    cut = copy.deepcopy(body)
    first, second = copy.deepcopy(segment), copy.deepcopy(segment)
    first["end"] = second["begin"] = {"value": mile, "unit": "mi"}
    second["name"] = "the rest"
    cut["segments"][:1] = [first, second]
    parts = totals(service, cut)
    for (item, product), value in whole.items():
        if item in PER_TIE:
            assert math.isclose(parts[item, product], value, rel_tol=1e-12), item


def test_overlapping_zones_are_counted_once(service: Service) -> None:
    body = demo_job()
    segment = body["segments"][1]
    joint = {"kind": "bolted-joint", "begin": {"value": 16.2, "unit": "mi"}}
    segment["features"].append(joint)
    once = totals(service, body)["anchors", "drive-on"]
    segment["features"].append({**joint, "kind": "end-of-cwr"})
    assert totals(service, body)["anchors", "drive-on"] == once


def test_orders_are_rounded_once_and_upwards(service: Service) -> None:
    for order in ask(service, "takeoffs", demo_job())["result"]["orders"]:
        wanted = order["net"]["value"] * (1 + order["allowance"])
        assert order["order"]["value"] >= wanted * (1 - 1e-9)
        if order["direction"] == "order" and order["order"]["unit"] == "each":
            assert order["order"]["value"] == math.ceil(wanted - 1e-6)


def test_money_adds_up_to_the_cent(service: Service) -> None:
    money = ask(service, "takeoffs", demo_job())["result"]["money"]
    for cost in money["costs"]:
        exact = Decimal(cost["quantity"]) * Decimal(cost["price"])
        assert abs(Decimal(cost["amount"]) - exact) <= Decimal("0.005")
    spent = sum((Decimal(cost["amount"]) for cost in money["costs"] if not cost["credit"]), Decimal(0))
    back = sum((Decimal(cost["amount"]) for cost in money["costs"] if cost["credit"]), Decimal(0))
    assert (Decimal(money["cost"]), Decimal(money["credit"])) == (spent, back)
    assert Decimal(money["balance"]) == spent - back


def test_an_answer_repeats_byte_for_byte(service: Service) -> None:
    body = json.dumps(demo_job()).encode()
    assert ask(service, "takeoffs", body) == ask(service, "takeoffs", body)


@pytest.mark.parametrize("zone", ["turnout", "open-deck-bridge", "insulated-joint", "end-of-cwr"])
def test_the_demo_says_by_how_much_195_ft_fall_short(service: Service, zone: str) -> None:
    checks = ask(service, "takeoffs", demo_job())["result"]["checks"]
    found = next(item["check"] for item in checks if item["check"]["title"].endswith(zone))
    assert found["verdict"] == "fails"
    # 30 lb/in over 195 ft hold 70,200 lb: fra-ord-13-16, appendix D p. 159, and 49 CFR 213.119(c), worked by hand
    assert found["capacity"]["value"] == pytest.approx(30 * 195 * 12)


def test_the_demo_worked_by_hand(service: Service) -> None:
    """Pencil and paper on the demo's own figures; 115RE has 11.2171 in2, steel 30e6 psi and 6.5e-6 per °F."""
    result = ask(service, "takeoffs", demo_job())["result"]
    net = {order["item"]: order["net"]["value"] for order in result["orders"]}
    # ties at 19.5 in with begin <= x < end; the first segment is without the turnout's 0.03 mi; the curve keeps
    # 95 of 100 of its plates, on its high rail
    ties = [segment["ties"] for segment in result["segments"]]
    assert ties == [8350, 7798, 1300, 8773]
    assert net["tie-plates"] == pytest.approx(2 * (8350 + 7798 + 8773) + 0.05 * 1300, rel=1e-12)
    assert net["cross-ties"] == pytest.approx(0.15 * (8350 + 7798 + 8773))
    plan, safety = result["rail"][0], result["safety"][0]
    assert plan["supply"]["string_length"]["value"] == pytest.approx(20 * 80 - 19 * 0.75 / 12)
    per_degree = 30e6 * 6.5e-6 * 11.2171
    assert safety["hot"]["force"]["value"] == pytest.approx(per_degree * (126 - (100 - 30)))
    assert safety["cold"]["force"]["value"] == pytest.approx(per_degree * (4 - 100))
    assert safety["break_gap"]["gap"]["value"] == pytest.approx(30e6 * 11.2171 * (6.5e-6 * 96) ** 2 / 30)
    assert safety["laying"]["movement"]["value"] == pytest.approx(6.5e-6 * 12 * 1598.8125 * (100 - 78))
    assert (result["range"]["lower"]["value"], result["range"]["upper"]["value"]) == (
        pytest.approx((2 * 126 + 4) / 3 + 10),
        pytest.approx((2 * 126 + 4) / 3 + 25),
    )


def test_what_is_recovered_is_a_credit_and_what_is_bought_a_cost(service: Service) -> None:
    result = ask(service, "takeoffs", demo_job())["result"]
    directions = {order["item"]: order["direction"] for order in result["orders"]}
    for cost in result["money"]["costs"]:
        assert cost["credit"] == cost["item"].startswith("salvage-"), cost["item"]
        assert directions[cost["item"]] == ("recover" if cost["credit"] else "order")
    spikes = next(order for order in result["orders"] if order["item"] == "spikes")
    assert spikes["order"]["value"] == math.ceil(spikes["net"]["value"] * 1.03)
    assert spikes["packages"] == math.ceil(spikes["order"]["value"] / 250)
