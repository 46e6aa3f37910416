"""The workbook without a spreadsheet program: what its cells hold, and what a program finds before it calculates."""

from __future__ import annotations

import io
from typing import TYPE_CHECKING, Any

import openpyxl
import pytest

from railrules_api.api.sheet_form import XLSX

if TYPE_CHECKING:
    from collections.abc import Callable

PAGES = [
    "Job", "Bill", "Salvage", "Work", "Checks", "Segments", "Zones", "Supply", "Strings", "Welds", "Trains", "Lines", "Parts",
    "Defaults", "Sources",
]  # fmt: skip


def rows_of(sheet: Any) -> list[dict[str, Any]]:
    """Return a sheet's rows by their headings."""
    heads = [cell.value for cell in sheet[2]]
    return [
        dict(zip(heads, values, strict=False))
        for values in sheet.iter_rows(min_row=3, values_only=True)
        if any(value is not None for value in values)
    ]


def opened(body: bytes, *, values: bool = True) -> Any:
    return openpyxl.load_workbook(io.BytesIO(body), data_only=values)


@pytest.mark.parametrize("system", ["us", "si"])
def test_what_a_program_finds_in_the_cells_is_what_the_service_answers(
    on_paper: Callable[..., bytes], in_json: Callable[..., Any], demo: dict[str, Any], system: str
) -> None:
    body = {**demo, "units": system}
    book, told = opened(on_paper("takeoffs", body, XLSX)), in_json("takeoffs", body)["result"]
    assert book.sheetnames == PAGES
    compare(book, told)


def compare(book: Any, told: Any) -> None:
    """Hold the sheets of a workbook against the JSON answer."""
    orders = dict(enumerate(told["orders"], 1))
    costs = {(cost["item"], cost["product"]): cost for cost in told["money"]["costs"]}
    for page, amount in (("Bill", "Order"), ("Salvage", "Net")):
        for row in rows_of(book[page]):
            if row["No."] is None:
                continue
            order = orders[row["No."]]
            assert row["Net"] == pytest.approx(order["net"]["value"], rel=1e-12)
            wanted = order["order"] if amount == "Order" else order["net"]
            assert row[amount] == pytest.approx(wanted["value"], rel=1e-12)
            assert row.get("Packages") == order.get("packages")
            mass = next(value for head, value in row.items() if head.startswith("Mass, "))
            if "order_mass" in order and wanted["value"]:
                known = order["order_mass" if page == "Bill" else "net_mass"]["value"]
                assert mass == pytest.approx(known, rel=1e-12)
            cost = costs.get((order["item"], order["product"]))
            assert (
                row["Amount"] in ("", None) if cost is None else row["Amount"] == pytest.approx(float(cost["amount"]), abs=1e-9)
            )
    front = {row["About the job"]: row["Entry"] for row in rows_of(book["Job"])}
    for word in ("cost", "credit", "balance"):
        assert front[f"{word.title()}, USD"] == pytest.approx(float(told["money"][word]), abs=1e-6)
    for row, segment in zip(rows_of(book["Segments"]), told["segments"], strict=True):
        assert (row["Segment"], row["Ties"], row["Anchors"]) == (segment["name"], segment["ties"], segment["anchors"])
    pieces = [piece for plan in told["rail"] for piece in plan["layout"]["pieces"]]
    for row, piece in zip(rows_of(book["Strings"]), pieces, strict=True):
        begin = next(value for head, value in row.items() if head.startswith("Begin"))
        assert (row["String"], row["Rail"], row["Whole"]) == (piece["string"], piece["rail"], piece["whole"])
        assert begin == pytest.approx(piece["begin"]["value"], rel=1e-12)
    assert [row["Strings"] for row in rows_of(book["Trains"])] == [
        load["strings"] for plan in told["rail"] for load in plan["trains"]["loads"]
    ]
    words = {"fails": "✗ FAILS", "passes": "✓ passes", "not-checked": "○ not checked"}
    for row, item in zip(rows_of(book["Checks"]), told["checks"], strict=True):
        assert row["Verdict"] == words[item["check"]["verdict"]]
        used = item["check"].get("utilisation")
        assert row["Used"] is None if used is None else row["Used"] == pytest.approx(used, rel=1e-12)


def test_cells_that_a_person_may_change_are_named_and_live(on_paper: Callable[..., bytes], demo: dict[str, Any]) -> None:
    book = opened(on_paper("takeoffs", demo, XLSX), values=False)
    names = set(book.defined_names)
    assert {"allowance_spikes", "price_cross_ties", "package_spikes", "spacing_1", "renewed_share_1"} <= names
    live = {page: sum(cell.data_type == "f" for row in book[page] for cell in row) for page in book.sheetnames}
    assert all(live[page] for page in ("Job", "Bill", "Salvage", "Work", "Checks", "Segments", "Lines", "Parts"))
    assert not any(live[page] for page in ("Zones", "Strings", "Welds", "Trains", "Defaults", "Sources"))


def test_headings_stay_in_view_and_pages_are_set_up_for_print(on_paper: Callable[..., bytes], demo: dict[str, Any]) -> None:
    for system, paper in (("us", 1), ("si", 9)):
        for sheet in opened(on_paper("takeoffs", {**demo, "units": system}, XLSX)):
            assert sheet.freeze_panes is not None
            assert sheet.print_title_rows == "$2:$2"
            assert (sheet.page_setup.orientation, int(sheet.page_setup.paperSize)) == ("landscape", paper)
            assert sheet.sheet_properties.pageSetUpPr.fitToPage
            assert all(dimension.width >= 5 for dimension in sheet.column_dimensions.values())


@pytest.mark.parametrize("begin", ["=", "+", "-", "@", "\t"])
def test_no_text_of_the_caller_becomes_a_formula(on_paper: Callable[..., bytes], demo: dict[str, Any], begin: str) -> None:
    nasty = f"{begin}1+cmd|' /C calc'!A0" if begin != "\t" else "=HYPERLINK(A1)"
    first = {**demo["segments"][0], "name": nasty, "custom": [{"item": nasty, "per_tie": 1}]}
    body = {**demo, "name": nasty, "segments": [first, *demo["segments"][1:]], "document": {"project": nasty}}
    found = 0
    for sheet in opened(on_paper("takeoffs", body, XLSX), values=False):
        for row in sheet.iter_rows():
            for cell in row:
                if cell.data_type == "f":
                    assert "cmd" not in cell.value
                    assert "HYPERLINK" not in cell.value
                elif isinstance(cell.value, str):
                    assert not cell.value.startswith(("=", "+", "-", "@", "\t"))
                    found += nasty in cell.value
    assert found > 10


def test_the_same_answer_gives_the_same_bytes(on_paper: Callable[..., bytes], demo: dict[str, Any]) -> None:
    assert on_paper("takeoffs", demo, XLSX) == on_paper("takeoffs", demo, XLSX)


def test_a_job_without_prices_has_cells_to_put_them_in(on_paper: Callable[..., bytes], demo: dict[str, Any]) -> None:
    bare = {key: value for key, value in demo.items() if key != "prices"}
    book = opened(on_paper("takeoffs", bare, XLSX), values=False)
    assert "price_cross_ties" in book.defined_names
