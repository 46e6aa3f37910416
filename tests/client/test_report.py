"""The takeoff as a page of text: every part of the answer stands on it, with the answer's own figures."""

from __future__ import annotations

import re
from typing import Any

import pytest
from railrules_client.command_line import report
from railrules_client.command_line.report import number
from railrules_client.jobs.files import with_quantities
from railrules_client.models import OperationAmount

from railrules_api.api.service import Service
from tests.support.asking import ask
from tests.support.demo import demo_job
from tests.support.random_jobs import random_job


@pytest.fixture(scope="module")
def demo(service: Service) -> dict[str, Any]:
    return ask(service, "takeoffs", demo_job())


def part(page: str, heading: str) -> list[str]:
    """Return the lines under a heading."""
    return page.split(f"\n\n{heading.upper()}\n")[1].split("\n\n", maxsplit=1)[0].splitlines()


def cells(line: str) -> list[str]:
    return re.split(r"\s{2,}", line.strip())


def test_every_piece_stands_on_the_page_in_the_order_of_the_trains(demo: dict[str, Any]) -> None:
    plan = demo["result"]["rail"][0]
    rows = [cells(line) for line in part(report.render(demo), "Strings in the order they come off the trains")[3:]]
    assert [int(row[1]) for row in rows] == [piece["string"] for piece in plan["layout"]["pieces"]]
    assert [row[3] for row in rows] == [report.quantity(piece["begin"]) for piece in plan["layout"]["pieces"]]
    first_of_second = plan["trains"]["loads"][1]["first_string"]
    assert [row[0] for row in rows] == ["2" if int(row[1]) >= first_of_second else "1" for row in rows]
    assert sum(row[6].startswith("cut") for row in rows) == plan["supply"]["cut_pieces"]


def test_the_work_plan_names_what_governs(demo: dict[str, Any]) -> None:
    work = demo["result"]["work"]
    lines = part(report.render(demo), "Work plan")
    rows = {cells(line)[0].removeprefix("> "): cells(line) for line in lines[2 : 2 + len(work["operations"])]}
    for operation in work["operations"]:
        row = rows[operation["title"]]
        assert row[1] == report.quantity(operation["amount"])
        assert row[3] == report.quantity(operation["per_mile"])
        if "days" in operation:
            assert row[7:] == [number(operation["days"]), number(operation["occupancies"])]
    (marked,) = [line for line in lines[: 2 + len(rows)] if line.startswith("> ")]
    governing = max(work["operations"], key=lambda operation: operation.get("days", 0.0))
    assert governing["title"] in marked
    assert f"{governing['title']} governs the pace" in " ".join(lines)


def test_loads_and_joints_and_notes_are_told(demo: dict[str, Any]) -> None:
    result, page = demo["result"], report.render(demo)
    loads = "\n".join(part(page, "Tons and loads"))
    for hauled in (result["hauled_in"], result["hauled_out"]):
        assert report.quantity(hauled["mass"], 1) in loads
        assert all(load["vehicle"] in loads for load in hauled["mixed"])
    assert "2 plain, 2 insulated; of plain ones 4 bars, 12 bolts, 12 nuts, 12 washers, 2 bonds" in page
    notes = " ".join(" ".join(part(page, "Notes")).split())
    for segment in result["segments"]:
        for note in segment["notes"]:
            assert note in notes


def test_without_rates_vehicles_and_parts_of_joints_the_page_says_so(service: Service) -> None:
    body = demo_job()
    del body["production"], body["hauling"], body["supply"]["joints"]
    page = report.render(ask(service, "takeoffs", body))
    assert "No time: the job gives no production rates." in page
    assert "governs" not in page
    assert "loads" not in "\n".join(part(page, "Tons and loads")[:2])
    assert "2 plain joints are not counted" in " ".join(part(page, "Notes"))


@pytest.mark.parametrize("seed", range(12))
def test_any_job_can_be_told(seed: int, service: Service) -> None:
    body = random_job(seed)
    body["supply"]["test_weld_share"] = 0.01
    answer = ask(service, "takeoffs", body)
    page = report.render(answer)
    assert "drive" not in page or "New spikes to drive" in page
    assert len(part(page, "Work plan")) >= len(answer["result"]["work"]["operations"])
    assert page.count("Field welds: ") == page.count("Test welds: ") == len(answer["result"]["rail"])


def test_track_of_single_rails_has_no_strings_on_the_page(service: Service) -> None:
    body = demo_job()
    body["segments"] = body["segments"][:1]
    body["segments"][0]["features"] = []
    body["segments"][0]["new"]["joints"] = {"rail_length": {"value": 39, "unit": "ft"}, "bolts_per_joint": 4}
    page = report.render(ask(service, "takeoffs", body))
    assert "STRINGS IN THE ORDER" not in page
    assert "joint bars" in page


def test_amounts_may_be_spoken_in_a_job_file() -> None:
    def spoken(text: str) -> object:
        tree: Any = with_quantities({"amount": text}, OperationAmount)
        return tree["amount"]

    assert spoken("1,200 each") == {"value": 1200.0, "unit": "each"}
    assert spoken("3500 ft") == {"value": 3500.0, "unit": "ft"}
    assert spoken("8 h") == "8 h"
    assert spoken("plenty") == "plenty"
