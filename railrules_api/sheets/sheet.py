"""The calculation sheet: a bound request and its workings, put in the order in which a checker reads."""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING, Any, NamedTuple

from railrules_api.domain.amounts import Amount
from railrules_api.rules.checks import checks_in
from railrules_api.rules.model import Working
from railrules_api.rules.takeoff.result import TakeoffResult
from railrules_api.sheets import job
from railrules_api.sheets.model import CheckRow, Place, Sheet, Step, Worked
from railrules_api.sheets.orders import order_row, percent, selling
from railrules_api.sheets.records import inputs, results
from railrules_api.sheets.working import Number, shown, worked_lines

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from railrules_api.rules.checks import Check
    from railrules_api.rules.model import Cite, Rule
    from railrules_api.sheets.model import Material, OrderRow, Table
    from railrules_api.sheets.working import WorkedLine
    from railrules_api.units import System

VERDICTS = {"passes": ("✓", "passes"), "fails": ("✗", "FAILS"), "not-checked": ("○", "not checked")}
"""Sign and word of each verdict: neither needs colour."""
_NAMED = 8
_GRAVITY = {"fails": 0, "not-checked": 1, "passes": 2}


class Held(NamedTuple):
    """A check, the part of the job it is about, its rule, and where in the job to give what it lacks."""

    of: str
    rule: str
    check: Check
    needs: tuple[str, ...] = ()


def checks_of(material: Material) -> list[Held]:
    """Return every check, the governing one first: what fails by most, then what lacks an input, then what passes by least."""
    told: dict[tuple[str, str, str], tuple[str, ...]] = {}
    if isinstance(material.found, TakeoffResult):
        told = {(item.of, item.rule, item.check.title): item.needs for item in material.found.checks}
    found = [
        Held(working.of, working.rule.id, check, told.get((working.of, working.rule.id, check.title), ()))
        for working in material.workings
        for check in checks_in(working.found)
    ]
    return sorted(found, key=lambda item: (_GRAVITY[item.check.verdict], -(item.check.utilisation or 0.0)))


def _amount_text(amount: Amount | None, system: System) -> str:
    """Return an amount as the answer has it; empty for none."""
    return "" if amount is None else shown(Number(amount.value, amount.kind, amount.answer), system).text


def needed(check: Check, needs: Sequence[str]) -> str:
    """Return what a check lacks, and where in the job to give it."""
    return " or ".join(needs) or check.governing.replace("_", " ")


def _advice(check: Check, needs: Sequence[str]) -> str:
    if check.verdict == "not-checked":
        lacks = needed(check, needs)
        # an input is named; why a check cannot be made is told in a phrase
        phrase = not needs and " " in check.governing
        return f"{lacks[:1].upper()}{lacks[1:]}." if phrase else f"Needs {lacks}."
    return f"Would pass with {check.would_pass}." if check.would_pass else f"Governed by {check.governing.replace('_', ' ')}."


def _parts(places: Mapping[str, Sequence[str]], *, passes: bool) -> tuple[str, ...]:
    """Return parts of the job in words, each with the places in it; of many that pass, the first few."""
    told = ((of, ", ".join(dict.fromkeys(filter(None, named)))) for of, named in places.items())
    parts = tuple(": ".join(filter(None, part)) for part in told if any(part))
    if not passes or len(parts) <= _NAMED:
        return parts
    return (*parts[: _NAMED - 1], f"and {len(parts) - _NAMED + 1} more")


def _check_rows(material: Material) -> tuple[CheckRow, ...]:
    """Return the checks; those that are alike but for the part or the place they are about share a row."""
    rows: dict[CheckRow, dict[str, list[str]]] = {}
    for of, rule, check, needs in checks_of(material):
        sign, verdict = VERDICTS[check.verdict]
        title, _, place = check.title.partition(": ")
        row = CheckRow(
            title=title,
            of=(),
            demand=_amount_text(check.demand, material.system),
            capacity=_amount_text(check.capacity, material.system),
            utilisation="" if check.utilisation is None else percent(check.utilisation, material.system),
            sign=sign,
            verdict=verdict,
            advice=_advice(check, needs),
            rule=rule,
            place=check.place,
        )
        rows.setdefault(row, {}).setdefault(of, []).append(place.replace("-", " ").replace("cwr", "CWR"))
    return tuple(
        CheckRow(
            row.title, _parts(parts, passes=row.verdict == VERDICTS["passes"][1]), row.demand, row.capacity, row.utilisation,
            row.sign, row.verdict, row.advice, row.rule, row.place,
        )
        for row, parts in rows.items()
    )  # fmt: skip


def _tables(material: Material) -> tuple[Table, ...]:
    if isinstance(material.found, TakeoffResult):
        return job.tables(material.found, material.system)
    return tuple(
        table for table in results(material.found, material.system, frozenset({"check", "checks", "lines"})) if table.rows
    )


def _order_rows(material: Material) -> tuple[OrderRow, ...]:
    packaging = getattr(material.given, "packaging", ()) if isinstance(material.found, TakeoffResult) else ()
    sold = selling(material.orders, material.workings, material.terms, packaging)
    return tuple(
        order_row(order, sold[order.item, order.product], material.system)
        for order in material.orders
        if order.direction == "order" and order.net.value
    )


def _uses(material: Material) -> tuple[Working, ...]:
    """Return every use of a rule; the rule that was asked comes last where it only adds up what others found."""
    if any(working.rule is material.rule for working in material.workings):
        return material.workings
    return (*material.workings, Working(material.rule, "", material.given, material.found))


def _rules(material: Material) -> Iterator[Rule[Any, Any]]:
    """Yield every rule used once, in the order of use."""
    yield from {working.rule.id: working.rule for working in _uses(material)}.values()


def _steps(uses: list[Working], system: System) -> Iterator[Step]:
    """Yield the formulas of a rule with the numbers of all its uses."""
    by_formula: dict[int, list[tuple[list[str], WorkedLine]]] = {}
    for use in uses:
        for line in worked_lines(use, system):
            lines = by_formula.setdefault(line.number, [])
            alike = next((of for of, other in lines if other == line), None)
            if alike is None:
                lines.append(([use.of], line))
            else:
                alike.append(use.of)
    for _, lines in sorted(by_formula.items()):
        alone = len(lines) == 1 and len(lines[0][0]) == len(uses)
        yield Step(tuple((() if alone else tuple(dict.fromkeys(of)), line) for of, line in lines))


def _workings(material: Material, numbers: dict[Place, int]) -> Iterator[Worked]:
    """Yield the rules used, each with all its uses, in the order of first use; a rule that has no line to show is left out."""
    for rule in _rules(material):
        uses = [working for working in _uses(material) if working.rule is rule]
        steps = tuple(_steps(uses, material.system))
        if steps:
            of = tuple(dict.fromkeys(use.of for use in uses if use.of))
            places = dict.fromkeys(numbers[_place(cite, material)] for cite in rule.cites)
            yield Worked(rule.id, rule.title, of, steps, tuple(places))


def _place(cite: Cite, material: Material) -> Place:
    return Place(material.title_of(cite.source), cite.where, cite.status)


def verdict_of(material: Material) -> tuple[str, str]:
    """Return the sign of the gravest verdict, and how many checks came to each."""
    verdicts = [item.check.verdict for item in checks_of(material)]
    if not verdicts:
        return "", ""
    counts = Counter[str](verdicts)
    told = (
        (counts["fails"], "FAILS", "FAIL"),
        (counts["not-checked"], "lacks an input", "lack an input"),
        (counts["passes"], "passes", "pass"),
    )
    words = "; ".join(f"{count} {one if count == 1 else several}" for count, one, several in told if count)
    return VERDICTS[verdicts[0]][0], f"{len(verdicts)} check{'' if len(verdicts) == 1 else 's'}: {words}."


def build(material: Material) -> Sheet:
    """Return the sheet of a question and its answer."""
    cited = [_place(cite, material) for rule in _rules(material) for cite in rule.cites]
    cited += [value.place for value in material.stood_in]
    numbers = {place: number for number, place in enumerate(dict.fromkeys(cited), 1)}
    name = getattr(material.given, "name", "") if isinstance(material.found, TakeoffResult) else ""
    return Sheet(
        title=name or material.rule.title,
        subject=material.rule.title if name else "",
        rule=material.rule.id,
        summary=material.rule.summary,
        verdict=verdict_of(material),
        block=material.block,
        versions=material.versions,
        digest=material.digest,
        checks=_check_rows(material),
        orders=_order_rows(material),
        tables=_tables(material),
        inputs=inputs(material.given, material.stood_in, material.system),
        stood_in=tuple((value, numbers[value.place]) for value in material.stood_in),
        assumptions=tuple((f"{rule.title} ({rule.id})", rule.summary) for rule in _rules(material)),
        workings=tuple(_workings(material, numbers)),
        cautions=tuple(f"{text} ({place.text})" for text, place in material.cautions),
        sources=tuple(numbers),
    )
