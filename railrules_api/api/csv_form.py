"""The takeoff as comma-separated values: totals, lines and checks in one table, so that a spreadsheet can sort them."""

from __future__ import annotations

import csv
import io
from typing import TYPE_CHECKING, Any

from railrules_api.api.answering import amount_answer
from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.rules.ordering import Order
    from railrules_api.rules.takeoff.book import JobCheck, JobLine
    from railrules_api.rules.takeoff.result import TakeoffResult
    from railrules_api.units import System

MEDIA_TYPE = "text/csv"
HEADINGS = (
    "record", "of", "rule", "item", "title", "product", "direction", "net", "net_unit", "allowance", "order", "order_unit",
    "packages", "package", "mass", "mass_unit", "verdict", "demand", "capacity", "utilisation", "unit", "would_pass", "place",
    "needs",
)  # fmt: skip
# a spreadsheet takes a cell that begins so for a formula; a quote in front keeps it text
_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def _text(value: str) -> str:
    return f"'{value}" if value.startswith(_FORMULA) else value


def _number(value: float) -> str:
    """Return a number to 12 digits: what is beyond is the noise of binary fractions."""
    return f"{value:.12g}"


def _amount(amount: Amount | None, system: System) -> tuple[str, str]:
    if amount is None:
        return "", ""
    answer: Any = amount_answer(amount, system)
    return _number(answer.value), answer.unit


def _mass(value: float | None, system: System) -> tuple[str, str]:
    return ("", "") if value is None else _amount(Amount(value, Kind.MASS), system)


def _total(order: Order, system: System) -> dict[str, str]:
    net, net_unit = _amount(order.net, system)
    wanted, order_unit = _amount(order.order, system)
    mass, mass_unit = _mass(order.order_mass if order.direction == "order" else order.net_mass, system)
    return {
        "record": "total", "item": _text(order.item), "title": _text(order.title), "product": _text(order.product),
        "direction": order.direction, "net": net, "net_unit": net_unit, "allowance": _number(order.allowance),
        "order": wanted, "order_unit": order_unit, "packages": "" if order.packages is None else str(order.packages),
        "package": _text(order.package or ""), "mass": mass, "mass_unit": mass_unit,
    }  # fmt: skip


def _line(line: JobLine, system: System) -> dict[str, str]:
    net, net_unit = _amount(line.net, system)
    mass, mass_unit = _mass(line.mass, system)
    return {
        "record": "line", "of": _text(line.of), "rule": line.rule, "item": _text(line.item), "product": _text(line.product),
        "net": net, "net_unit": net_unit, "mass": mass, "mass_unit": mass_unit,
    }  # fmt: skip


def _check(item: JobCheck, system: System) -> dict[str, str]:
    check = item.check
    demand, unit = _amount(check.demand, system)
    capacity, capacity_unit = _amount(check.capacity, system)
    return {
        "record": "check", "of": _text(item.of), "rule": item.rule, "item": check.code, "title": _text(check.title),
        "verdict": check.verdict, "demand": demand, "capacity": capacity, "unit": unit or capacity_unit,
        "utilisation": "" if check.utilisation is None else _number(check.utilisation),
        "would_pass": _text(check.would_pass), "place": _text(check.place),
        "needs": " or ".join(item.needs),
    }  # fmt: skip


def _rows(result: TakeoffResult, system: System) -> Iterator[dict[str, str]]:
    yield from (_total(order, system) for order in result.orders)
    yield from (_line(line, system) for line in result.lines)
    yield from (_check(check, system) for check in result.checks)


def encode(result: TakeoffResult, system: System) -> bytes:
    """Return a takeoff as CSV with CRLF line ends (RFC 4180), UTF-8."""
    sheet = io.StringIO(newline="")
    writer = csv.DictWriter(sheet, HEADINGS, restval="", lineterminator="\r\n")
    writer.writeheader()
    writer.writerows(_rows(result, system))
    return sheet.getvalue().encode()
