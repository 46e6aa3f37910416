"""Two takeoffs side by side, line by line: what changes if the other rail is laid, or every tie is boxed.

    found = client.takeoffs.compare(jobs.read("as-designed.toml").request, jobs.read("with-115.toml").request)
    print(found)                      # what differs: totals, orders, bill, checks, money
    found.orders.to_csv("orders.csv") # every line, also those that stay the same

Lines are paired by what they are: first by item and product, then, where the product is another one, by item alone. Differences
are the second job less the first; where the two answers are in different units, the second is told in those of the first.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from html import escape
from typing import TYPE_CHECKING, TypeVar, cast

import msgspec
from msgspec import Struct, UnsetType

from railrules_client.tables import Cell, Column, Table, write_xlsx

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
    from os import PathLike

    from railrules_client._generated.models import JobCheck, TakeoffAnswer
    from railrules_client._quantities import Quantity
    from railrules_client.tables import Kind

_Item = TypeVar("_Item")
SAME = "same"
CHANGED = "changed"
ONLY_FIRST = "only in the first"
ONLY_SECOND = "only in the second"
_CLOSE = 1e-12
"""Relative difference below which two figures are the same: what is below comes from a conversion of units."""


def _paired(
    first: Iterable[_Item], second: Iterable[_Item], *keys: Callable[[_Item], object]
) -> Iterator[tuple[_Item | None, _Item | None]]:
    """Yield the items of two lists in pairs, by the first key that tells them to be the same thing.

    Items of one key are paired in their order, where there are equally many of them on both sides.
    """
    left, right = list(first), list(second)
    partner: dict[int, int] = {}
    taken: set[int] = set()
    for rank, key in enumerate(keys):
        groups: dict[object, tuple[list[int], list[int]]] = {}
        for side, items in enumerate((left, right)):
            for number, item in enumerate(items):
                if number not in (partner if side == 0 else taken):
                    groups.setdefault(key(item), ([], []))[side].append(number)
        for one, other in groups.values():
            if rank == 0 or len(one) == len(other):
                partner |= dict(zip(one, other, strict=False))
                taken |= set(other[: len(one)])
    for number, item in enumerate(left):
        yield item, right[partner[number]] if number in partner else None
    for number, item in enumerate(right):
        if number not in taken:
            yield None, item


@dataclass(slots=True)
class _Rows:
    """Columns that grow row by row."""

    title: str
    kinds: dict[str, Kind] = field(default_factory=dict[str, "Kind"])
    units: dict[str, str] = field(default_factory=dict[str, str])
    cells: dict[str, list[Cell]] = field(default_factory=dict[str, "list[Cell]"])

    def text(self, *names: str) -> _Rows:
        """Add columns of words."""
        for name in names:
            self.kinds[name], self.cells[name] = "text", []
        return self

    def numbers(self, name: str, *, units: bool = True) -> _Rows:
        """Add columns of a number in both jobs and its difference, with their unit."""
        columns = [f"{name}_first", f"{name}_second", f"{name}_difference"]
        for column in columns:
            self.kinds[column], self.cells[column] = "number", []
        if units:
            self.text(f"{name}_unit")
            self.units |= dict.fromkeys(columns, f"{name}_unit")
        return self

    def add(self, **cells: Cell) -> None:
        """Add a row."""
        for name, column in self.cells.items():
            column.append(cells.get(name))

    def table(self) -> Table:
        """Return the rows as a table."""
        return Table(
            self.title,
            (Column(name, self.kinds[name], tuple(cells), units=self.units.get(name, "")) for name, cells in self.cells.items()),
        )


def _text(one: object, other: object, name: str) -> str:
    """Return a word of the first item, else of the second."""
    value: object = getattr(one if one is not None else other, name)
    return "" if isinstance(value, UnsetType) else str(value)


def _both(one: object, other: object, name: str) -> dict[str, Cell]:
    return {
        f"{name}_first": None if one is None else str(cast("object", getattr(one, name))),
        f"{name}_second": None if other is None else str(cast("object", getattr(other, name))),
    }


def _quantity(item: object, name: str) -> Quantity[str] | None:
    found: object = None if item is None else getattr(item, name)
    return None if found is None or isinstance(found, UnsetType) else cast("Quantity[str]", found)


def _measure(one: object, other: object, name: str, column: str = "") -> dict[str, Cell]:
    """Return the cells of a quantity of two items; an item that is not there has none of it."""
    column = column or name
    first, second = _quantity(one, name), _quantity(other, name)
    if first is not None and second is not None and first.unit != second.unit:
        second = second.to(first.unit)
    known = first or second
    if known is None:
        return {}
    low, high = (None if found is None else float(found.value) for found in (first, second))
    low, high = (0.0 if one is None else low), (0.0 if other is None else high)
    return {**_figures(column, low, high), f"{column}_unit": known.unit}


def _figures(column: str, low: float | None, high: float | None) -> dict[str, Cell]:
    difference = None
    if low is not None and high is not None:
        difference = high - low
        if abs(difference) <= _CLOSE * max(abs(low), abs(high)):
            difference = 0.0
    return {f"{column}_first": low, f"{column}_second": high, f"{column}_difference": difference}


def _change(one: object, other: object, cells: Mapping[str, Cell]) -> str:
    if one is None or other is None:
        return ONLY_SECOND if one is None else ONLY_FIRST
    differs = any(cell for name, cell in cells.items() if name.endswith("_difference"))
    words = {name.removesuffix("_first") for name, cell in cells.items() if name.endswith("_first") and isinstance(cell, str)}
    return CHANGED if differs or any(cells[f"{name}_first"] != cells[f"{name}_second"] for name in words) else SAME


# ---------------------------------------------------------------- the tables


def _orders(first: TakeoffAnswer, second: TakeoffAnswer) -> Table:
    rows = _Rows("orders").text("direction", "item", "title", "product_first", "product_second")
    rows.numbers("net").numbers("order").numbers("mass").text("change")
    pairs = _paired(
        first.result.orders, second.result.orders,
        lambda order: (order.direction, order.item, order.product), lambda order: (order.direction, order.item),
    )  # fmt: skip
    for one, other in pairs:
        direction = _text(one, other, "direction")
        cells: dict[str, Cell] = {
            **_both(one, other, "product"), **_measure(one, other, "net"), **_measure(one, other, "order"),
            **_measure(one, other, "order_mass" if direction == "order" else "net_mass", "mass"),
        }  # fmt: skip
        words = {name: _text(one, other, name) for name in ("item", "title")}
        rows.add(direction=direction, **words, **cells, change=_change(one, other, cells))
    return rows.table()


def _bill(first: TakeoffAnswer, second: TakeoffAnswer) -> Table:
    rows = _Rows("bill").text("of_first", "of_second", "rule", "item", "product_first", "product_second")
    rows.numbers("net").numbers("mass").text("change")
    pairs = _paired(
        first.result.lines, second.result.lines,
        lambda line: (line.of, line.rule, line.item, line.product),
        lambda line: (line.of, line.rule, line.item),
        lambda line: (line.rule, line.item),
    )  # fmt: skip
    for one, other in pairs:
        cells: dict[str, Cell] = {
            **_both(one, other, "product"),
            **_measure(one, other, "net"),
            **_measure(one, other, "mass"),
        }
        words = {"rule": _text(one, other, "rule"), "item": _text(one, other, "item"), **_both(one, other, "of")}
        rows.add(**words, **cells, change=_change(one, other, cells))
    return rows.table()


def _checks(first: TakeoffAnswer, second: TakeoffAnswer) -> Table:
    rows = _Rows("checks").text("of_first", "of_second", "rule", "code", "title", "verdict_first", "verdict_second")
    rows.numbers("utilisation", units=False).text("change")

    def of(item: JobCheck | None) -> str | None:
        return None if item is None else item.of

    def use(item: JobCheck | None) -> float | None:
        return None if item is None or isinstance(item.check.utilisation, UnsetType) else item.check.utilisation

    pairs = _paired(
        first.result.checks, second.result.checks,
        lambda item: (item.of, item.rule, item.check.code), lambda item: (item.rule, item.check.code),
    )  # fmt: skip
    for one, other in pairs:
        known = one if one is not None else other
        assert known is not None
        verdicts = _both(one and one.check, other and other.check, "verdict")
        cells: dict[str, Cell] = {**verdicts, **_figures("utilisation", use(one), use(other))}
        rows.add(
            of_first=of(one), of_second=of(other), rule=known.rule, code=known.check.code, title=known.check.title,
            **cells, change=_change(one, other, cells),
        )  # fmt: skip
    return rows.table()


def _money(first: TakeoffAnswer, second: TakeoffAnswer) -> Table:
    rows = _Rows("money").text("kind", "item", "title", "product_first", "product_second")
    rows.numbers("amount", units=False).text("currency", "change")
    ours, theirs = first.result.money, second.result.money
    one_costs = [] if isinstance(ours, UnsetType) else ours.costs
    other_costs = [] if isinstance(theirs, UnsetType) else theirs.costs
    currencies = {money.currency for money in (ours, theirs) if not isinstance(money, UnsetType)}
    currency = " and ".join(sorted(currencies))
    pairs = _paired(
        one_costs, other_costs,
        lambda cost: (cost.credit, cost.item, cost.product, cost.per), lambda cost: (cost.credit, cost.item),
    )  # fmt: skip
    for one, other in pairs:
        known = one if one is not None else other
        assert known is not None
        amounts = (0.0 if cost is None else float(cost.amount) for cost in (one, other))
        cells: dict[str, Cell] = {**_both(one, other, "product"), **_figures("amount", *amounts)}
        kind = "credit" if known.credit else "cost"
        rows.add(kind=kind, item=known.item, title=known.title, currency=currency, **cells, change=_change(one, other, cells))
    return rows.table()


def _totals(first: TakeoffAnswer, second: TakeoffAnswer) -> Table:
    rows = _Rows("totals").text("figure").numbers("value").text("change")
    one, other = first.result, second.result

    def told(figure: str, cells: dict[str, Cell]) -> None:
        rows.add(figure=figure, **cells, change=_change(one, other, cells))

    def length(answer: TakeoffAnswer) -> float:
        return sum(segment.length.to(first.result.segments[0].length.unit).value for segment in answer.result.segments)

    unit = first.result.segments[0].length.unit
    told("track", {**_figures("value", length(first), length(second)), "value_unit": unit})
    ties = (float(sum(segment.ties for segment in result.segments)) for result in (one, other))
    told("ties", {**_figures("value", *ties), "value_unit": "each"})
    told("mass in", _measure(one, other, "mass_in", "value"))
    told("mass out", _measure(one, other, "mass_out", "value"))
    for verdict in ("fails", "not-checked", "passes"):
        counts = (float(sum(item.check.verdict == verdict for item in result.checks)) for result in (one, other))
        told(f"checks: {verdict}", {**_figures("value", *counts), "value_unit": "each"})
    ours, theirs = one.money, other.money
    if not isinstance(ours, UnsetType) and not isinstance(theirs, UnsetType) and ours.currency == theirs.currency:
        for name in ("cost", "credit", "balance"):
            amounts = (float(cast("str", getattr(money, name))) for money in (ours, theirs))
            told(name, {**_figures("value", *amounts), "value_unit": ours.currency})
    return rows.table()


def _leaves(tree: object, at: str = "") -> Iterator[tuple[str, str]]:
    if isinstance(tree, dict):
        known = cast("Mapping[str, object]", tree)
        if set(known) == {"value", "unit"}:
            yield at, f"{known['value']} {known['unit']}"
            return
        for name, value in known.items():
            yield from _leaves(value, f"{at}/{name.replace('~', '~0').replace('/', '~1')}")
    elif isinstance(tree, (list, tuple)):
        for number, value in enumerate(cast("Sequence[object]", tree)):
            yield from _leaves(value, f"{at}/{number}")
    else:
        yield at, str(tree)


def _jobs(first: object, second: object) -> Table:
    """Return where two requests differ, by JSON pointer."""
    one, other = dict(_leaves(msgspec.to_builtins(first))), dict(_leaves(msgspec.to_builtins(second)))
    differing = [pointer for pointer in dict.fromkeys([*one, *other]) if one.get(pointer) != other.get(pointer)]
    return Table("jobs", (
        Column("field", "text", tuple(differing)),
        Column("first", "text", tuple(one.get(pointer) for pointer in differing)),
        Column("second", "text", tuple(other.get(pointer) for pointer in differing)),
    ))  # fmt: skip


@dataclass(frozen=True, slots=True)
class Comparison:
    """Two takeoffs side by side.

    Attributes:
        first: the answer to the first job.
        second: the answer to the second.
        jobs: fields in which the two jobs differ, where they are known.
        totals: the two jobs at a glance.
        orders: totals by item and product: net, order and mass.
        bill: the lines of the bill.
        checks: every check, with both verdicts.
        money: costs and credits, where prices were given.
    """

    first: TakeoffAnswer
    second: TakeoffAnswer
    jobs: Table
    totals: Table
    orders: Table
    bill: Table
    checks: Table
    money: Table

    @property
    def newly_failing(self) -> Table:
        """Checks that fail in the second job and did not in the first."""
        return self.checks.where(lambda row: row["verdict_second"] == "fails" and row["verdict_first"] != "fails")

    def to_tables(self) -> dict[str, Table]:
        """Return every table, by name."""
        tables = (self.jobs, self.totals, self.orders, self.bill, self.checks, self.money)
        return {table.title: table for table in tables}

    def to_csv(self, path: str | PathLike[str] | None = None) -> str:
        """Return, and write where a path is given, the orders side by side as comma-separated values.

        Raises:
            OSError: the file cannot be written.
        """
        return self.orders.to_csv(path)

    def to_xlsx(self, path: str | PathLike[str]) -> None:
        """Write a workbook with every table, a sheet each.

        Raises:
            ImportError: xlsxwriter is not installed.
            OSError: the file cannot be written.
        """
        write_xlsx(path, self.to_tables())

    def __arrow_c_stream__(self, requested_schema: object | None = None) -> object:
        """Hand the orders side by side out as an Arrow stream.

        Raises:
            ImportError: neither nanoarrow (the extra `arrow`) nor pyarrow is installed.
        """
        return self.orders.__arrow_c_stream__(requested_schema)

    def differing(self) -> dict[str, Table]:
        """Return every table with the rows that differ, and no table without one."""
        found = {"jobs": self.jobs}
        for name, table in self.to_tables().items():
            if name != "jobs":
                found[name] = table.where(lambda row: row["change"] != SAME)
        return {name: table for name, table in found.items() if len(table)}

    def _title(self) -> str:
        return f"{self.first.result.name} (first) and {self.second.result.name} (second)"

    def __str__(self) -> str:
        """Return what differs as plain text."""
        found = self.differing()
        parts = [f"{name.upper()}\n{table}" for name, table in found.items()] or ["Nothing differs."]
        return "\n\n".join([self._title(), *parts])

    def _repr_html_(self) -> str:
        """Return what differs for a notebook."""
        return self.to_html()

    def to_html(self) -> str:
        """Return what differs as a piece of a page."""
        found = self.differing()
        parts = [table.to_html() for table in found.values()] or ["<p>Nothing differs.</p>"]
        return "".join([f"<h4>{escape(self._title())}</h4>", *parts])


def compare(
    first: TakeoffAnswer,
    second: TakeoffAnswer,
    *,
    jobs: tuple[Struct | Mapping[str, object], Struct | Mapping[str, object]] | None = None,
) -> Comparison:
    """Put two takeoffs side by side.

    Args:
        first: the answer to the first job.
        second: the answer to the second.
        jobs: the two requests, to tell where they differ.

    Raises:
        ValueError: the two answers have units that do not measure the same thing.
    """
    return Comparison(
        first=first,
        second=second,
        jobs=_jobs(*jobs) if jobs is not None else _jobs({}, {}),
        totals=_totals(first, second),
        orders=_orders(first, second),
        bill=_bill(first, second),
        checks=_checks(first, second),
        money=_money(first, second),
    )
