"""The calculation sheet: a bound request and its workings, put in the order in which a checker reads."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, NamedTuple

from railrules_api.domain.amounts import Amount
from railrules_api.rules.takeoff.takeoff import TakeoffResult
from railrules_api.sheets import job
from railrules_api.sheets.model import CheckRow, Place, Sheet, Worked
from railrules_api.sheets.orders import order_row, percent, selling
from railrules_api.sheets.records import inputs, results
from railrules_api.sheets.working import Number, shown, worked_lines

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.rules.checks import Check
    from railrules_api.rules.model import Rule
    from railrules_api.sheets.model import Material, OrderRow, Table
    from railrules_api.units import System

VERDICTS = {"passes": ("✓", "passes"), "fails": ("✗", "FAILS"), "not-checked": ("○", "not checked")}
"""Sign and word of each verdict: neither needs colour."""
_GRAVITY = {"fails": 0, "not-checked": 1, "passes": 2}


class Held(NamedTuple):
    """A check, the part of the job it is about, and its rule."""

    of: str
    rule: str
    check: Check


def checks_of(material: Material) -> list[Held]:
    """Return every check, the governing one first: what fails by most, then what lacks an input, then what passes by least."""
    found = [
        Held(working.of, working.rule.id, check)
        for working in material.workings
        for check in getattr(working.found, "checks", ())
    ]
    return sorted(found, key=lambda item: (_GRAVITY[item.check.verdict], -(item.check.utilisation or 0.0)))


def amount_text(amount: Amount | None, system: System) -> str:
    """Return an amount as the answer has it; empty for none."""
    return "" if amount is None else shown(Number(amount.value, amount.kind, None), system).text


def _advice(check: Check) -> str:
    if check.verdict == "not-checked":
        return f"Needs {check.governing.replace('_', ' ')}."
    return f"Would pass with {check.would_pass}." if check.would_pass else f"Governed by {check.governing.replace('_', ' ')}."


def _check_rows(material: Material) -> tuple[CheckRow, ...]:
    """Return the checks; those that are alike but for the part they are about share a row."""
    rows: dict[CheckRow, list[str]] = {}
    for of, rule, check in checks_of(material):
        sign, verdict = VERDICTS[check.verdict]
        row = CheckRow(
            title=check.title,
            of=(),
            demand=amount_text(check.demand, material.system),
            capacity=amount_text(check.capacity, material.system),
            utilisation="" if check.utilisation is None else percent(check.utilisation, material.system),
            sign=sign,
            verdict=verdict,
            advice=_advice(check),
            rule=rule,
            place=check.place,
        )
        rows.setdefault(row, []).append(of)
    return tuple(
        CheckRow(
            row.title, tuple(dict.fromkeys(of for of in parts if of)), row.demand, row.capacity, row.utilisation, row.sign,
            row.verdict, row.advice, row.rule, row.place,
        )
        for row, parts in rows.items()
    )  # fmt: skip


def _tables(material: Material) -> tuple[Table, ...]:
    if isinstance(material.found, TakeoffResult):
        return job.tables(material.found, material.system)
    return tuple(table for table in results(material.found, material.system, frozenset({"checks", "lines"})) if table.rows)


def _order_rows(material: Material) -> tuple[OrderRow, ...]:
    packaging = getattr(material.given, "packaging", ()) if isinstance(material.found, TakeoffResult) else ()
    sold = selling(material.orders, material.workings, material.terms, packaging)
    return tuple(
        order_row(order, sold[order.item, order.product], material.system)
        for order in material.orders
        if order.direction == "order" and order.net.value
    )


def _rules(material: Material) -> Iterator[Rule[Any, Any]]:
    """Yield every rule used once, in the order of use."""
    yield from {working.rule.id: working.rule for working in material.workings}.values()


def build(material: Material) -> Sheet:
    """Return the sheet of a question and its answer."""
    numbers: dict[tuple[str, str, str], int] = {}
    for rule in _rules(material):
        for cite in rule.cites:
            numbers.setdefault((cite.source, cite.where, cite.status), len(numbers) + 1)
    workings = tuple(
        Worked(
            rule=working.rule.id,
            title=working.rule.title,
            of=working.of,
            lines=worked_lines(working, material.system),
            sources=tuple(numbers[cite.source, cite.where, cite.status] for cite in working.rule.cites),
        )
        for working in material.workings
    )
    name = getattr(material.given, "name", "") if isinstance(material.found, TakeoffResult) else ""
    return Sheet(
        title=name or material.rule.title,
        subject=material.rule.title if name else "",
        rule=material.rule.id,
        summary=material.rule.summary,
        block=material.block,
        versions=material.versions,
        digest=material.digest,
        checks=_check_rows(material),
        orders=_order_rows(material),
        tables=_tables(material),
        inputs=inputs(material.given, material.stood_in, material.system),
        stood_in=material.stood_in,
        assumptions=tuple((f"{rule.title} ({rule.id})", rule.summary) for rule in _rules(material)),
        workings=tuple(worked for worked in workings if worked.lines),
        cautions=tuple(f"{text} ({place.text})" for text, place in material.cautions),
        sources=tuple(Place(material.title_of(source), where, status) for source, where, status in numbers),
    )
