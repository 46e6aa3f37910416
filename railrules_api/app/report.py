"""The takeoff as a page of text: what to order, what comes out, what the work is, what must be checked, and on which sources."""

from __future__ import annotations

import textwrap
from typing import TYPE_CHECKING, Any

from railrules_api.app.tables import number, table
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Iterator

WIDTH = 118
_LABELS = {code: unit.label for units in UNITS.values() for code, unit in units.items()}
_HEADINGS = {
    "order": "To order",
    "recover": "Comes out",
    "work": "Work and haulage",
}
_VERDICTS = {"passes": "pass", "fails": "FAIL", "not-checked": "open"}
_MARKS = {
    "published": "read in the source",
    "computed": "computed",
    "derived": "worked out from the source",
    "from-memory": "from memory",
    "common-practice": "common practice",
}


def quantity(value: dict[str, Any] | None, digits: int = 2) -> str:
    """Return a quantity of the wire for people; empty for none."""
    if value is None:
        return ""
    unit = value["unit"]
    label = "" if unit == "each" else f" {_LABELS.get(unit, unit)}"
    return number(value["value"], digits) + label


def _wrapped(text: str, indent: str = "  ") -> str:
    return textwrap.fill(text, WIDTH, initial_indent=indent, subsequent_indent=indent + "  ")


def _orders(result: dict[str, Any], direction: str) -> str:
    rows = [
        (
            order["title"],
            order["product"],
            quantity(order["net"]),
            f"{order['allowance'] * 100:g} %" if order["allowance"] else "",
            quantity(order["order"]),
            f"{number(order['packages'])} {order['package']}s" if "packages" in order else "",
            quantity(order.get("order_mass" if direction == "order" else "net_mass"), 0),
        )
        for order in result["orders"]
        if order["direction"] == direction and order["net"]["value"]
    ]
    if direction == "order":
        return table(("item", "product", "net", "allow.", "order", "packages", "mass"), rows, right=(2, 3, 4, 5, 6))
    return table(("item", "net", "mass"), [(row[0], row[2], row[6]) for row in rows], right=(1, 2))


def _strings(plan: dict[str, Any]) -> Iterator[str]:
    supply, trains = plan["supply"], plan["trains"]
    yield _wrapped(
        f"{plan['of']}: {number(supply['strings'])} strings of {quantity(supply['string_length'])} "
        f"({number(supply['stock_rails_per_string'])} stock rails, {number(supply['plant_welds_per_string'])} plant welds each); "
        f"{number(supply['field_welds'])} field welds, {number(supply['cuts'])} cuts, "
        f"{number(supply['closures'])} closures; {quantity(supply['rail_length'], 0)} of rail in the track, "
        f"{quantity(supply['rail_mass'], 1)}."
    )
    for load in trains["loads"]:
        yield _wrapped(
            f"Train {load['train']}: strings {load['first_string']} to {load['last_string']}, {quantity(load['mass'], 1)}, "
            f"{number(trains['cars_per_train'])} cars, drawn off {number(load['unloadings'])} times."
        )


def _gathered(checks: list[dict[str, Any]]) -> Iterator[tuple[dict[str, Any], int]]:
    """Yield each check that does not pass; of those that pass, the most used of each kind and in how many more places it does."""
    more: dict[tuple[str, str, str], int] = {}
    for item in checks:
        key = (item["rule"], item["check"]["code"], item["check"]["verdict"])
        more[key] = more.get(key, -1) + 1
    told: set[tuple[str, str, str]] = set()
    for item in checks:  # within a verdict the answer lists the most used first
        key = (item["rule"], item["check"]["code"], item["check"]["verdict"])
        if key[2] != "passes":
            yield item, 0
        elif key not in told:
            told.add(key)
            yield item, more[key]


def _checks(result: dict[str, Any]) -> Iterator[str]:
    for item, more in _gathered(result["checks"]):
        check = item["check"]
        use = f", {check['utilisation'] * 100:.0f} % used" if "utilisation" in check else ""
        demand = f": {quantity(check['demand'])} against {quantity(check['capacity'])}" if "capacity" in check else ""
        others = f" and {more} more" if more else ""
        where = f" [{item['of']}{others}]" if item["of"] else ""
        yield _wrapped(f"{_VERDICTS[check['verdict']]}  {check['title']}{where}{demand}{use}. {item['rule']}; {check['place']}.")
        if check["verdict"] == "not-checked":
            yield _wrapped(f"      needs: {check['governing']}.")
        elif check["would_pass"]:
            yield _wrapped(f"      would pass with {check['would_pass']}.")


def _money(result: dict[str, Any]) -> Iterator[str]:
    money = result.get("money")
    if money is None:
        return
    rows = [
        (
            ("credit: " if cost["credit"] else "") + cost["title"],
            f"{float(cost['quantity']):,.2f}".removesuffix(".00"),
            cost["per"],
            cost["price"],
            f"{float(cost['amount']):,.2f}",
        )
        for cost in money["costs"]
    ]
    yield table(("item", "quantity", "per", "price", money["currency"]), rows, right=(1, 3, 4))
    yield (
        f"  cost {float(money['cost']):,.2f}  less credit {float(money['credit']):,.2f}  = {float(money['balance']):,.2f} "
        f"{money['currency']}"
    )
    yield _wrapped("Without a price: " + ", ".join(money["unpriced"]) + ".")


def _sections(answer: dict[str, Any]) -> Iterator[tuple[str, Iterator[str]]]:
    result = answer["result"]
    for direction, heading in _HEADINGS.items():
        yield heading, iter([_orders(result, direction)])
    yield "New rail", (line for plan in result["rail"] for line in _strings(plan))
    yield "Checks", _checks(result)
    if "money" in result:
        yield "Money", _money(result)
    yield (
        "Rules and where they come from",
        iter([_wrapped(f"{item['title']}: {item['where']} ({_MARKS[item['status']]})") for item in answer["sources"]]),
    )
    yield (
        "Defaults and catalogue values that stood in for what the job leaves open",
        iter(
            [
                _wrapped(
                    f"{item['name']} = {item['value']}  [{item['origin']}] {item['cite']['title']}, {item['cite']['where']} "
                    f"({_MARKS[item['cite']['status']]})"
                )
                for item in answer["assumptions"]
            ]
        ),
    )
    yield "Cautions", iter([_wrapped(item["text"]) for item in answer["cautions"]])


def render(answer: dict[str, Any]) -> str:
    """Return a takeoff answer as text."""
    result, versions = answer["result"], answer["versions"]
    lengths = [segment["length"] for segment in result["segments"]]
    unit = lengths[0]["unit"]
    total = {"value": sum(length["value"] for length in lengths), "unit": unit}
    ties = sum(segment["ties"] for segment in result["segments"])
    extent = f"{len(lengths)} segments, {quantity(total, 0)} of track, {number(ties)} ties"
    lines = [
        result["name"],
        f"{extent}; {quantity(result['mass_in'], 1)} in, {quantity(result['mass_out'], 1)} out",
        f"laying range {quantity(result['range']['lower'], 1)} to {quantity(result['range']['upper'], 1)}",
    ]
    for heading, body in _sections(answer):
        lines += ["", heading.upper(), *body]
    lines += ["", f"service {versions['service']}, catalogue {versions['catalogue']}, rulebook {versions['rulebook']}"]
    return "\n".join(lines)
