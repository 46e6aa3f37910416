"""The takeoff as a page of text: what to order, what comes out, what the work is, what must be checked, and on which sources."""

from __future__ import annotations

import textwrap
from typing import TYPE_CHECKING, Any

from railrules_client._units import label_of
from railrules_client.tables import plain

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

WIDTH = 118
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
    "fitted": "fitted by us to what the source prints",
    "from-memory": "from memory",
    "common-practice": "common practice",
}


def number(value: float, digits: int = 2) -> str:
    """Return a number with its thousands set apart; a whole one without decimals.

    >>> number(6498.0), number(12996.923), number(0.05)
    ('6,498', '12,996.92', '0.05')
    """
    rounded = round(value, digits)
    return f"{rounded:,.0f}" if rounded == int(rounded) else f"{rounded:,.{digits}f}"


def quantity(value: dict[str, Any] | None, digits: int = 2) -> str:
    """Return a quantity of the wire for people; empty for none."""
    if value is None:
        return ""
    return f"{number(value['value'], digits)} {label_of(value['unit'])}".rstrip()


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
        return plain(("item", "product", "net", "allow.", "order", "packages", "mass"), rows, right=(2, 3, 4, 5, 6))
    return plain(("item", "net", "mass"), [(row[0], row[2], row[6]) for row in rows], right=(1, 2))


_WELDS = (("junctions", "between pieces"), ("tie_ins", "to rail of the same section"), ("compromise_welds", "to another section"))
_JOINTS = (
    ("closing_joints", "plain"),
    ("closing_insulated_joints", "insulated"),
    ("closing_compromise_joints", "compromise"),
)

_PARTS = ("bars", "bolts", "nuts", "washers", "bonds")


def _kinds(found: dict[str, Any], kinds: tuple[tuple[str, str], ...]) -> str:
    return ", ".join(f"{number(found[name])} {words}" for name, words in kinds if found[name])


def _strings(plan: dict[str, Any]) -> Iterator[str]:
    supply, laid, trains = plan["supply"], plan["layout"], plan["trains"]
    yield _wrapped(
        f"{plan['of']}: {number(supply['strings'])} strings of {quantity(supply['string_length'])} "
        f"({number(supply['stock_rails_per_string'])} stock rails, {number(supply['plant_welds_per_string'])} plant welds each); "
        f"{number(supply['stock_rails'])} stock rails in all; {quantity(supply['rail_length'], 0)} of rail in the track, "
        f"{quantity(supply['rail_mass'], 1)}; {number(supply['cuts'])} cuts, {number(supply['closures'])} closures, "
        f"{quantity(supply['offcut_length'], 1)} left over."
    )
    if supply["test_welds"]:
        yield _wrapped(f"Test welds: {number(supply['test_welds'])}.")
    yield _wrapped(f"Field welds: {number(supply['field_welds'])}; {_kinds(supply, _WELDS) or 'none'}.")
    joints = _kinds(supply, _JOINTS)
    if joints:
        parts: dict[str, Any] = plan.get("joints") or {}
        made = ", ".join(
            f"{number(parts[part])} {part}" for part in ("bars", "bolts", "nuts", "washers", "bonds") if part in parts
        )
        yield _wrapped(f"Joints left in it: {joints}" + (f"; of plain ones {made}." if made else "."))
    for load in trains["loads"]:
        yield _wrapped(
            f"Train {load['train']}: strings {load['first_string']} to {load['last_string']}, {quantity(load['mass'], 1)}, "
            f"{number(trains['cars_per_train'])} cars, drawn off {number(load['unloadings'])} times."
        )
    if laid["block_closures"]:
        places = ", ".join(
            f"{quantity(end['station'])} {end['rail']}{'' if end['at_string_end'] else ' (inside a string)'}"
            for end in laid["block_closures"]
        )
        yield _wrapped(f"Temporary closures at the ends of work blocks: {places}.")


def _train_of(string: int, trains: dict[str, Any]) -> str:
    return next((str(load["train"]) for load in trains["loads"] if load["first_string"] <= string <= load["last_string"]), "")


def _laid(plan: dict[str, Any]) -> Iterator[str]:
    """Yield where each piece lies, in the order in which strings come off the trains."""
    rows = [
        (
            _train_of(piece["string"], plan["trains"]),
            str(piece["string"]),
            piece["rail"],
            quantity(piece["begin"]),
            quantity(piece["end"]),
            quantity(piece["length"]),
            "whole" if piece["whole"] else f"cut, {quantity(piece['cut_begin'])} to {quantity(piece['cut_end'])} of it",
        )
        for piece in plan["layout"]["pieces"]
    ]
    yield f"  {plan['of']}"
    yield plain(("train", "string", "rail", "from", "to", "rail in it", "string"), rows, right=(0, 1, 3, 4, 5))


def _hours(value: dict[str, Any] | None) -> str:
    return quantity(value, 1)


def _work(work: dict[str, Any]) -> Iterator[str]:
    timed = "governing" in work
    headings = ("operation", "amount", "a tie", "a mile", "crews", "crew time", "time", "days", "blocks")
    rows = [
        (
            ("> " if operation["operation"] == work.get("governing") else "  ") + operation["title"],
            quantity(operation["amount"]),
            quantity(operation["per_tie"]),
            quantity(operation["per_mile"]),
            number(operation["crews"]) if "crews" in operation else "",
            _hours(operation.get("crew_time")),
            _hours(operation.get("time")),
            number(operation["days"]) if "days" in operation else "",
            number(operation["occupancies"]) if "occupancies" in operation else "",
        )
        for operation in work["operations"]
    ]
    shown = len(headings) if timed else 4
    yield plain(headings[:shown], [row[:shown] for row in rows], right=range(1, shown))
    if not timed:
        yield _wrapped("No time: the job gives no production rates.")
        return
    title = next(item["title"] for item in work["operations"] if item["operation"] == work["governing"])
    blocks = f", {number(work['occupancies'])} track occupancies" if "occupancies" in work else ""
    yield _wrapped(
        f"> {title} governs the pace: {_hours(work['time'])}, {number(work['days'])} working days{blocks}; "
        f"{_hours(work['crew_time'])} of all crews together."
    )
    if work["without_rate"]:
        titles = {item["operation"]: item["title"] for item in work["operations"]}
        yield _wrapped("Without a rate, and so perhaps slower: " + ", ".join(titles[task] for task in work["without_rate"]) + ".")


def _hauled(result: dict[str, Any]) -> Iterator[str]:
    titles = {order["item"]: order["title"] for order in result["orders"]}
    vehicles = [load["vehicle"] for load in result["hauled_in"]["mixed"]]

    def loads(found: list[dict[str, Any]]) -> list[str]:
        by_name = {load["vehicle"]: number(load["loads"]) for load in found}
        return [by_name.get(vehicle, "") for vehicle in vehicles]

    for name, heading in (("hauled_in", "in"), ("hauled_out", "out")):
        hauled = result[name]
        rows = [
            (titles.get(item["item"], item["item"]), quantity(item["mass"], 1), *loads(item["loads"]))
            for item in hauled["goods"]
            if "mass" in item
        ]
        rows.append(("all together", quantity(hauled["mass"], 1), *loads(hauled["mixed"])))
        yield plain((heading, "mass", *(f"{vehicle} loads" for vehicle in vehicles)), rows, right=range(1, 2 + len(vehicles)))
        if hauled["without_mass"]:
            names = ", ".join(titles.get(item, item) for item in hauled["without_mass"])
            yield _wrapped(f"Mass not known, in no load: {names}.")
    if vehicles:
        yield _wrapped("One kind of vehicle stands in place of another; all together is the mixed load of what each may carry.")


def _notes(result: dict[str, Any]) -> list[str]:
    """Return what the rules say of segments and joints, each note once with all it is about."""
    about: dict[str, list[str]] = {}
    for segment in result["segments"]:
        for note in segment["notes"]:
            about.setdefault(note, []).append(segment["name"])
    for plan in result["rail"]:
        joints: dict[str, Any] = plan.get("joints") or {}
        for note in joints.get("notes", ()):
            about.setdefault(note, []).append(plan["of"])
    return [_wrapped(f"{note} [{'; '.join(names)}]") for note, names in about.items()]


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


def lacking(needs: Sequence[str], governing: str) -> str:
    """Tell where in the job to give what a check lacks; else why it cannot be made, or which input of its rule is not known."""
    if needs:
        return f"needs {' or '.join(needs)}"
    return governing if " " in governing else f"needs {governing.replace('_', ' ')}"


def _checks(result: dict[str, Any]) -> Iterator[str]:
    for item, more in _gathered(result["checks"]):
        check = item["check"]
        use = f", {check['utilisation'] * 100:.0f} % used" if "utilisation" in check else ""
        demand = f": {quantity(check['demand'])} against {quantity(check['capacity'])}" if "capacity" in check else ""
        others = f" and {more} more" if more else ""
        where = f" [{item['of']}{others}]" if item["of"] else ""
        yield _wrapped(f"{_VERDICTS[check['verdict']]}  {check['title']}{where}{demand}{use}. {item['rule']}; {check['place']}.")
        if check["verdict"] == "not-checked":
            yield _wrapped(f"      {lacking(item['needs'], check['governing'])}.")
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
    yield plain(("item", "quantity", "per", "price", money["currency"]), rows, right=(1, 3, 4))
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
    if result["rail"]:
        yield "Strings in the order they come off the trains", (line for plan in result["rail"] for line in _laid(plan))
    yield "Work plan", _work(result["work"])
    yield "Tons and loads", _hauled(result)
    notes = _notes(result)
    if notes:
        yield "Notes", iter(notes)
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
