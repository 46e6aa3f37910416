"""The tables of a takeoff: segments, new rail, trains, salvage, work, the bill line by line, money."""

from __future__ import annotations

from dataclasses import replace
from math import fsum
from typing import TYPE_CHECKING, Any

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.sheets.model import Table
from railrules_api.sheets.numbers import MINUS, MOST, USUAL, Printed
from railrules_api.sheets.records import results, table
from railrules_api.sheets.working import Number, shown

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from railrules_api.rules.ordering import Order
    from railrules_api.rules.takeoff.book import JobLine
    from railrules_api.rules.takeoff.money import Money
    from railrules_api.rules.takeoff.result import TakeoffResult
    from railrules_api.units import System


def _amount(value: Amount, system: System, significant: int = USUAL) -> Printed:
    return shown(Number(value.value, value.kind, value.answer), system, significant=significant)


def _mass(value: float | None, system: System) -> str:
    return "" if value is None else shown(Number(value, Kind.MASS, None), system).text


def _direction(title: str, orders: Sequence[Order], direction: str, system: System) -> Table:
    rows = tuple(
        (order.title, order.product, _amount(order.net, system).text, _mass(order.net_mass, system))
        for order in orders
        if order.direction == direction and order.net.value
    )
    return Table(title, ("Item", "Product", "Net", "Mass"), rows, frozenset({2, 3}))


def _adding_up(lines: Sequence[JobLine], system: System) -> tuple[list[Printed], Printed]:
    """Print lines and their total so that the printed lines add up to the printed total."""
    kind = lines[0].net.kind
    total = _amount(Amount(fsum(line.net.value for line in lines), kind, lines[0].net.answer), system)
    parts: list[Printed] = []
    for significant in range(USUAL, MOST + 1):
        parts = [_amount(line.net, system, significant) for line in lines]
        if abs(fsum(part.value for part in parts) - total.value) <= total.half * (1 + 1e-9):
            break
    return parts, total


def _bill(result: TakeoffResult, system: System) -> Table:
    groups: dict[tuple[str, str], list[JobLine]] = {}
    for line in result.lines:
        if line.net.value:
            groups.setdefault((line.item, line.product), []).append(line)
    titles = {(order.item, order.product): order.title for order in result.orders}
    rows: list[tuple[str, ...]] = []
    for key, lines in groups.items():
        parts, total = _adding_up(lines, system)
        named = [titles[key], *("" for _ in lines[1:])]
        totals = [*("" for _ in lines[1:]), total.text]
        rows += [
            (name, line.of, line.rule, part.text, ending)
            for name, line, part, ending in zip(named, lines, parts, totals, strict=True)
        ]
    note = "The total of an item stands beside its last line. Lines of nothing are left out."
    columns = ("Item", "Of", "Rule", "Net", "Total")
    return Table("The bill, line by line", columns, tuple(rows), frozenset({3, 4}), note)


def _trains(result: TakeoffResult, system: System) -> Iterator[Table]:
    for plan in result.rail:
        yield table(f"Train loads: {plan.of}", plan.trains.loads, system)


def _layout(result: TakeoffResult, system: System) -> Iterator[Table]:
    for plan in result.rail:
        yield table(f"String layout: {plan.of}", plan.layout.pieces, system)
        yield table(f"Field welds: {plan.of}", plan.layout.welds, system)
        if plan.layout.block_closures:
            yield table(f"Temporary closures: {plan.of}", plan.layout.block_closures, system)


def _zones(result: TakeoffResult, system: System) -> Iterator[Table]:
    for segment in result.segments:
        if segment.zones:
            yield table(f"Anchor zones: {segment.name}", segment.zones, system)


def _money(money: Money) -> Table:
    rows: list[tuple[str, ...]] = [
        (
            cost.title,
            cost.product,
            f"{cost.quantity:,f}",
            cost.per.replace("_", " "),
            f"{cost.price:,f}",
            (MINUS if cost.credit else "") + f"{cost.amount:,f}",
        )
        for cost in money.costs
    ]
    rows += [
        ("cost", "", "", "", "", f"{money.cost:,f}"),
        ("less credit", "", "", "", "", f"{MINUS}{money.credit:,f}"),
        ("balance", "", "", "", "", f"{money.balance:,f}".replace("-", MINUS)),
    ]
    note = f"Without a price: {', '.join(money.unpriced)}." if money.unpriced else ""
    headings = ("Item", "Product", "Quantity", "Per", "Price", money.currency)
    return Table("Money", headings, tuple(rows), frozenset({2, 4, 5}), note)


_SEGMENT = ("name", "track", "begin", "end", "length", "ties", "spacing", "anchors")


def tables(result: TakeoffResult, system: System) -> tuple[Table, ...]:
    """Return the tables of a takeoff, in the order in which a reader asks: what a summary has, then the details."""
    found: list[Table] = [] if result.money is None else [_money(result.money)]
    found += [
        _direction("Comes out", result.orders, "recover", system),
        _direction("Work and haulage", result.orders, "work", system),
        *_trains(result, system),
        table("Segments", result.segments, system, _SEGMENT),
    ]
    details: list[Table] = []
    for plan in result.rail:
        details += _named(f"New rail: {plan.of}", results(plan.supply, system, frozenset({"lines"})))
    details += [*_layout(result, system), *_zones(result, system)]
    details += _named("Laying temperature range", results(result.range, system, frozenset({"checks"})))
    if result.stability:
        details.append(table("Stability of hot track", result.stability, system))
    details.append(_bill(result, system))
    whole = [*found, *(replace(item, detail=True) for item in details)]
    return tuple(item.without_empty_columns() for item in whole if item.rows)


def _named(title: str, found: Iterator[Any]) -> list[Table]:
    return [
        Table(f"{title}{', ' if item.title else ''}{item.title.lower()}", item.headings, item.rows, item.right, item.note)
        for item in found
    ]
