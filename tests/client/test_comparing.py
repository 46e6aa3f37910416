"""Two jobs side by side, held against the two answers themselves."""

from __future__ import annotations

import asyncio
from copy import deepcopy
from pathlib import Path
from typing import Any

import openpyxl
import polars as pl
import pytest
from railrules_client import AsyncClient, Client, models
from railrules_client.comparing import CHANGED, ONLY_FIRST, ONLY_SECOND, SAME, Comparison, compare

from tests.support.demo import demo_job


def with_new(**new: Any) -> dict[str, Any]:
    job = deepcopy(demo_job())
    for segment in job["segments"]:
        segment["new"] |= new
    return job


@pytest.fixture(scope="module")
def heavier() -> Comparison:
    with Client.in_process() as client:
        return client.takeoffs.compare(demo_job(), with_new(section="136RE"))


def test_every_order_of_both_stands_in_it_once_with_its_difference(heavier: Comparison) -> None:
    for side, answer in (("first", heavier.first), ("second", heavier.second)):
        told = [(row["item"], row[f"product_{side}"]) for row in heavier.orders if row[f"product_{side}"] is not None]
        assert sorted(told, key=str) == sorted(((order.item, order.product) for order in answer.result.orders), key=str)
    by_item = {order.item: order for order in heavier.second.result.orders}
    for row in heavier.orders:
        if row["change"] in (SAME, CHANGED) and row["item"] == "new-rail":
            assert row["mass_second"] == by_item["new-rail"].order_mass.value
            assert row["mass_difference"] == row["mass_second"] - row["mass_first"]  # type: ignore[operator]
            assert row["mass_difference"] > 0  # type: ignore[operator]


def test_every_line_of_the_bill_is_there(heavier: Comparison) -> None:
    rows = list(heavier.bill)
    assert sum(row["of_first"] is not None for row in rows) == len(heavier.first.result.lines)
    assert sum(row["of_second"] is not None for row in rows) == len(heavier.second.result.lines)
    rail = next(row for row in rows if row["item"] == "new-rail")
    assert (rail["of_first"], rail["of_second"]) == ("115RE", "136RE")


def test_money_and_masses_at_a_glance(heavier: Comparison) -> None:
    totals = {str(row["figure"]): row for row in heavier.totals}
    one, other = heavier.first.result, heavier.second.result
    assert isinstance(one.money, models.Money)
    assert isinstance(other.money, models.Money)
    assert totals["cost"]["value_difference"] == pytest.approx(float(other.money.cost) - float(one.money.cost))
    assert totals["mass in"]["value_difference"] == pytest.approx(other.mass_in.value - one.mass_in.value)
    assert totals["track"]["change"] == SAME
    amounts = [row["amount_difference"] for row in heavier.money if row["kind"] == "cost"]
    assert sum(float(str(amount)) for amount in amounts) == pytest.approx(totals["cost"]["value_difference"])


def test_checks_that_newly_fail_are_named(heavier: Comparison) -> None:
    def failing(answer: models.TakeoffAnswer) -> int:
        return sum(item.check.verdict == "fails" for item in answer.result.checks)

    newly = heavier.newly_failing
    assert len(newly) == failing(heavier.second) - failing(heavier.first) > 0
    assert {row["verdict_first"] for row in newly} == {"passes"}


def test_what_the_jobs_differ_in_is_told_by_pointer(heavier: Comparison) -> None:
    assert [dict(row) for row in heavier.jobs] == [
        {"field": f"/segments/{number}/new/section", "first": "115RE", "second": "136RE"} for number in range(4)
    ]


def test_other_units_do_not_make_a_difference() -> None:
    with Client.in_process() as client:
        found = client.takeoffs.compare(demo_job(), {**demo_job(), "units": "si"})
    assert set(found.differing()) == {"jobs"}


def test_what_only_one_of_them_has() -> None:
    bare = demo_job()
    del bare["prices"]
    bare["segments"] = bare["segments"][:2]
    with Client.in_process() as client:
        found = client.takeoffs.compare(demo_job(), bare)
    assert {row["change"] for row in found.money} == {ONLY_FIRST}
    assert ONLY_FIRST in {row["change"] for row in found.bill}
    assert "cost" not in {row["figure"] for row in found.totals}
    turned = compare(found.second, found.first)
    assert {row["change"] for row in turned.money} == {ONLY_SECOND}


def test_boxing_every_tie_changes_the_anchors() -> None:
    with Client.in_process() as client:
        found = client.takeoffs.compare(demo_job(), with_new(anchor_pattern="box-every-tie"))
    anchors = next(row for row in found.orders if row["item"] == "anchors")
    assert anchors["net_difference"] > 0  # type: ignore[operator]
    assert anchors["change"] == CHANGED


def test_as_text_page_workbook_and_frame(heavier: Comparison, tmp_path: Path) -> None:
    assert "newly" not in str(heavier)
    for heading in ("JOBS", "TOTALS", "ORDERS", "BILL", "CHECKS", "MONEY"):
        assert heading in str(heavier)
    assert heavier._repr_html_().count("<table>") == 6
    heavier.to_xlsx(tmp_path / "both.xlsx")
    assert set(openpyxl.load_workbook(tmp_path / "both.xlsx").sheetnames) == set(heavier.to_tables())
    assert heavier.to_csv(tmp_path / "orders.csv").count("\r\n") == len(heavier.orders) + 1
    assert len(pl.DataFrame(heavier)) == len(heavier.orders)
    assert "Nothing differs." in str(compare(heavier.first, heavier.first))


def test_awaited() -> None:
    async def run() -> Comparison:
        async with AsyncClient.in_process() as client:
            return await client.takeoffs.compare(demo_job(), with_new(section="136RE"))

    assert len(asyncio.run(run()).newly_failing) > 0
