"""Every printed line follows from what is printed, and prints what the service answers."""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.rules.registry import RESOURCES
from tests.rules.written_variants import VARIANTS, body_of
from tests.sheets.conftest import examples
from tests.sheets.reading import Node, half_of, in_si, numbers_of, page_of, sum_of, unit_of, value_of
from tests.test_check_cases import cases, label

if TYPE_CHECKING:
    from collections.abc import Callable

RULES = {rule.id: rule for rule in RESOURCES}
SYSTEMS = ("us", "si")


def check_line(row: Node) -> None:
    """Do the sum of a line with its printed digits, then follow its result from unit to unit."""
    expression, results = numbers_of(row)
    results = results or [next(next(row.all("td", "result")).all("math"))]
    first = value_of(sum_of(results[0]).lstrip("="))
    assert abs(value_of(expression) - first) <= half_of(results[0]) * (1 + 1e-6) + abs(first) * 1e-11, row.text
    for before, after in pairwise(results):
        labels = unit_of(before), unit_of(after)
        one = in_si(value_of(sum_of(before).lstrip("=")), labels[0], labels[1])
        other = value_of(sum_of(after).lstrip("="))
        half = half_of(after)
        low, high = in_si(other - half, labels[1], labels[0]), in_si(other + half, labels[1], labels[0])
        slack = abs(one) * 1e-11
        assert low - slack <= one <= high + slack, row.text
    # the last column repeats the last result
    assert sum_of(next(next(row.all("td", "result")).all("math"))) == sum_of(results[-1]).lstrip("=")


UNDONE: dict[str, int] = {}
"""Lines by rule that no reader can do again from what is printed: none."""


def check_page(page: Node, rule: str) -> int:
    """Do every line of a sheet again; return how many there are. A line that hands a number on as it is has nothing to do."""
    rows = list(page.all("tr", "line"))
    undone = [row.text for row in rows if not list(row.all("div", "numbers")) and not list(row.all("div", "same"))]
    assert len(undone) == UNDONE.get(rule, 0), undone
    for row in rows:
        if list(row.all("div", "numbers")):
            check_line(row)
    return len(rows)


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize(("rule", "request_body"), examples(), ids=[rule for rule, _ in examples()])
def test_each_printed_line_follows_from_its_printed_numbers(
    on_paper: Callable[..., bytes], rule: str, request_body: Any, system: str
) -> None:
    assert check_page(page_of(on_paper(rule, {**request_body, "units": system}).decode()), rule)


@pytest.mark.parametrize("case", [case for case in cases() if case["rule"] in RULES], ids=label)
def test_each_printed_line_of_a_check_case_follows(on_paper: Callable[..., bytes], case: dict[str, Any]) -> None:
    check_page(page_of(on_paper(case["rule"], case["inputs"]).decode()), case["rule"])


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize(("rule", "changes"), VARIANTS, ids=[f"{rule} {place}" for place, (rule, _) in enumerate(VARIANTS)])
def test_each_printed_line_of_every_case_of_a_formula_follows(
    on_paper: Callable[..., bytes], rule: str, changes: dict[str, Any], system: str
) -> None:
    check_page(page_of(on_paper(rule, {**body_of(rule, changes), "units": system}).decode()), rule)


@pytest.mark.parametrize("system", SYSTEMS)
def test_each_line_of_a_whole_job_follows_from_its_printed_numbers(
    on_paper: Callable[..., bytes], demo: dict[str, Any], system: str
) -> None:
    assert check_page(page_of(on_paper("takeoffs", {**demo, "units": system}).decode()), "takeoffs") > 300


@pytest.mark.parametrize("system", SYSTEMS)
def test_each_order_is_rounded_up_from_its_printed_net(on_paper: Callable[..., bytes], demo: dict[str, Any], system: str) -> None:
    page = page_of(on_paper("takeoffs", {**demo, "units": system}).decode())
    rows = list(page.all("tr", "order"))
    packed = 0
    for row in rows:
        check_line(row)
        for packing in row.all("div", "packing"):
            packed += 1
            packages = next(cell for cell in row.children[3:4]).text
            assert value_of(sum_of(next(packing.all("math")))) == float(
                packages.split("\u00a0")[0].replace(",", "").replace("\u202f", "")
            )
    assert len(rows) > 8
    assert packed >= 4


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize(("rule", "request_body"), examples(), ids=[rule for rule, _ in examples()])
def test_the_sheet_prints_the_numbers_of_the_json_answer(
    on_paper: Callable[..., bytes], in_json: Callable[..., Any], rule: str, request_body: Any, system: str
) -> None:
    if rule == "takeoffs":
        return
    body = {**request_body, "units": system}
    result = in_json(rule, body)["result"]
    for row in page_of(on_paper(rule, body).decode()).all("tr", "line"):
        if "part" in row.attributes["class"]:
            continue  # what leads to a result, or a part of one
        reference = next(row.all("div", "reference")).text.split()
        field = RULES[reference[0]].formulas[int(reference[1]) - 1].gives
        told = result[field]["value"] if isinstance(result[field], dict) else result[field]
        cell = next(next(row.all("td", "result")).all("math"))
        assert abs(value_of(sum_of(cell)) - told) <= half_of(cell) * (1 + 1e-6) + abs(told) * 1e-11, field


def test_the_bill_adds_up_as_printed(on_paper: Callable[..., bytes], demo: dict[str, Any]) -> None:
    page = page_of(on_paper("takeoffs", demo).decode())
    bill = next(table for table in page.all("table") if "Of" in table.text[:20] and "Total" in table.text[:40])
    parts, totals = 0.0, 0
    for row in next(bill.all("tbody")).children:
        cells = [cell.text.split("\u00a0")[0].replace(",", "") for cell in row.children]
        parts += float(cells[3])
        if cells[4]:
            digits = cells[4].partition(".")[2]
            assert abs(parts - float(cells[4])) <= 0.5 * 10 ** -len(digits) + 1e-9 * abs(parts)
            parts, totals = 0.0, totals + 1
    assert totals > 15
    assert parts == 0.0
