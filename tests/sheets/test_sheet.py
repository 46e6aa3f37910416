"""What stands on a sheet, whoever reads it: title block, marks, signs, and nothing of the caller's that runs."""

from __future__ import annotations

import base64
import hashlib
import json
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.api.examples import requests
from railrules_api.sheets.html import policy
from railrules_api.sheets.numbers import printed
from tests.sheets.conftest import examples
from tests.sheets.reading import Node, cells_of, page_of

if TYPE_CHECKING:
    from collections.abc import Callable

    from litestar import Litestar
    from litestar.testing import TestClient

DOCUMENT = {
    "project": "Alder Flat relay", "location": "MP 3.1 to 4.0", "prepared": "R. Finch", "checked": "T. Plover",
    "date": "2 May 2031",
}  # fmt: skip
BREAK = requests()["calculateBreakGap"]


def block_of(page: Node) -> dict[str, str]:
    """Return the title block as labels and values."""
    header = next(page.all("header", "block"))
    return {next(cell.all("span", "label")).text: next(cell.all("span", "value")).text for cell in header.all("td")}


def heading(page: Node, title: str) -> list[Node]:
    """Return what stands between a heading and the next of its level."""
    main = next(page.all("main"))
    begin = next(place for place, node in enumerate(main.children) if node.tag == "h2" and node.text == title)
    end = next((place for place, node in enumerate(main.children) if place > begin and node.tag == "h2"), len(main.children))
    return main.children[begin + 1 : end]


def test_the_title_block_says_who_where_when_and_what_answered(
    on_paper: Callable[..., bytes], in_json: Callable[..., Any]
) -> None:
    block = block_of(page_of(on_paper("thermal.break-gap", {**BREAK, "document": DOCUMENT}).decode()))
    versions = in_json("thermal.break-gap", BREAK)["versions"]
    assert {name: block[name.title()] for name in DOCUMENT} == DOCUMENT
    assert block["Versions"] == (
        f"service {versions['service']}, catalogue {versions['catalogue']}, rulebook {versions['rulebook']}"
    )
    assert len(block["Input digest"]) == 64
    assert block["Subject"] == "Gap at a break or cut of cold rail"


def test_what_is_not_given_is_left_blank(on_paper: Callable[..., bytes]) -> None:
    block = block_of(page_of(on_paper("thermal.break-gap", BREAK).decode()))
    assert [block[name] for name in ("Project", "Location", "Prepared", "Checked", "Date")] == [""] * 5


def test_the_digest_follows_the_inputs_and_not_the_title_block(on_paper: Callable[..., bytes]) -> None:
    def digest(body: Any) -> str:
        return block_of(page_of(on_paper("thermal.break-gap", body).decode()))["Input digest"]

    plain = digest(BREAK)
    assert digest({**BREAK, "document": DOCUMENT, "explain": True}) == plain
    assert digest(dict(reversed(BREAK.items()))) == plain
    assert digest({**BREAK, "rail_temperature": {"value": 5, "unit": "degF"}}) != plain


def test_defaults_and_catalogue_values_are_marked_where_they_stand(on_paper: Callable[..., bytes]) -> None:
    page = page_of(on_paper("thermal.break-gap", BREAK).decode())
    rows = {cells_of(row)[0]: cells_of(row) for table in page.all("table", "inputs") for row in table.all("tr")}
    assert rows["Cross-section of one rail"][3] == "catalogue C1"
    assert rows["Modulus of elasticity of rail steel"][3] == "default D1"
    assert rows["Temperature of the rail"][3] == "given"
    told = [cells_of(row)[0] for node in heading(page, "Defaults that stood in") for row in node.all("tr")]
    assert "D1" in told


@pytest.mark.parametrize(("limit", "sign", "word"), [(4.5, "✓", "passes"), (2.0, "✗", "FAILS")])
def test_a_verdict_is_a_sign_and_a_word(on_paper: Callable[..., bytes], limit: float, sign: str, word: str) -> None:
    body = {**BREAK, "gap_limit": {"value": limit, "unit": "in"}}
    table = next(page_of(on_paper("thermal.break-gap", body).decode()).all("table", "checks"))
    assert next(table.all("td", "verdict")).text == f"{sign} {word}"
    assert [node.text for node in table.all("span", "governing")] == ["governing"]


def test_the_governing_check_stands_first_and_what_lacks_an_input_is_not_passed(
    on_paper: Callable[..., bytes], demo: dict[str, Any]
) -> None:
    table = next(page_of(on_paper("takeoffs", demo).decode()).all("table", "checks"))
    verdicts = [node.text.partition(" ")[2] for node in table.all("td", "verdict")]
    order = ["FAILS", "not checked", "passes"]
    assert sorted(verdicts, key=order.index) == verdicts
    assert set(verdicts) == set(order)
    first = next(table.all("tbody"))
    assert "governing" in first.text


def test_every_part_of_a_sheet_is_there(on_paper: Callable[..., bytes], demo: dict[str, Any]) -> None:
    page = page_of(on_paper("takeoffs", demo).decode())
    assert [node.text for node in page.all("h2")] == [
        "Checks", "To order", "Results", "Cautions", "Details", "Inputs", "Defaults that stood in", "Catalogue values used",
        "Assumptions", "Working", "Sources",
    ]  # fmt: skip
    assert len(list(page.all("h1"))) == 1
    assert not list(page.all("img"))
    assert not list(page.all("svg"))
    assert not list(page.all("script"))


def test_nothing_the_caller_writes_becomes_markup(on_paper: Callable[..., bytes], demo: dict[str, Any]) -> None:
    nasty = "<img src=x onerror=alert(1)>&amp;\"'"
    body = {**demo, "name": nasty, "document": {"project": nasty}}
    page = page_of(on_paper("takeoffs", body).decode())
    assert not list(page.all("img"))
    assert block_of(page)["Project"] == nasty
    assert next(page.all("h1")).text == nasty
    assert block_of(page)["Subject"] == nasty


def test_the_policy_names_the_style_of_the_page(http: TestClient[Litestar]) -> None:
    reply = http.post("/v1/thermal/break-gap", json=BREAK, headers={"Accept": "text/html"})
    assert reply.status_code == 200
    assert reply.headers["content-type"] == "text/html; charset=utf-8"
    style = next(page_of(reply.text).all("style")).text
    digest = base64.b64encode(hashlib.sha256(style.encode()).digest()).decode()
    assert reply.headers["content-security-policy"] == policy()
    assert f"'sha256-{digest}'" in policy()
    assert ' style="' not in reply.text


def test_the_same_request_gives_the_same_page(on_paper: Callable[..., bytes]) -> None:
    assert on_paper("thermal.break-gap", BREAK) == on_paper("thermal.break-gap", BREAK)


def test_a_field_that_no_title_block_has_is_refused(http: TestClient[Litestar]) -> None:
    reply = http.post("/v1/thermal/break-gap", json={**BREAK, "document": {"sponsor": "x"}}, headers={"Accept": "text/html"})
    assert reply.status_code in {400, 422}
    assert "sponsor" in reply.text


def test_a_field_twice_in_the_title_block_is_refused(http: TestClient[Litestar]) -> None:
    text = json.dumps({**BREAK, "document": {"date": "x"}}).replace('{"date": "x"}', '{"date": "x", "date": "y"}')
    reply = http.post("/v1/thermal/break-gap", content=text, headers={"Content-Type": "application/json"})
    assert reply.status_code == 400


def test_a_job_too_long_for_paper_is_refused(http: TestClient[Litestar], demo: dict[str, Any]) -> None:
    one = {**demo["segments"][0], "features": [], "curves": []}
    limits = [{"value": 0.1 * place, "unit": "mi"} for place in range(202)]
    many = [{**one, "name": f"s{place}", "begin": limits[place], "end": limits[place + 1]} for place in range(201)]
    reply = http.post("/v1/takeoffs", json={**demo, "segments": many}, headers={"Accept": "text/html"})
    assert reply.status_code == 422
    assert reply.json()["errors"][0]["pointer"] == "/segments"


PRINTED = [
    (0.0, "0"), (39.0, "39"), (1466473.107, "1,466,473"), (0.1 + 0.2, "0.3"),
    (-96.0, "\u221296"), (2e11, "2 \u00d7 10\u00b9\u00b9"),
    (1 / 3, "0.333333"), (195.0004, "195.000"),
]  # fmt: skip


@pytest.mark.parametrize(("value", "text"), PRINTED)
def test_numbers_are_printed_to_six_figures_or_in_full(value: float, text: str) -> None:
    assert printed(value, "us").text == text


def test_a_summary_has_what_stands_before_the_details(on_paper: Callable[..., bytes], demo: dict[str, Any]) -> None:
    whole = page_of(on_paper("takeoffs", demo).decode())
    brief = page_of(on_paper("takeoffs", {**demo, "document": {"extent": "summary"}}).decode())
    titles = [node.text for node in brief.all("h2")]
    assert titles == ["Checks", "To order", "Results", "Cautions"]
    for title in titles:
        shared = [node.text for node in heading(whole, title)]
        assert [node.text for node in heading(brief, title)][: len(shared)] == shared
    assert block_of(brief)["Input digest"] == block_of(whole)["Input digest"]
    assert "This is the summary of a sheet" in next(brief.all("main")).text


def test_the_checks_are_counted_by_their_verdicts(
    on_paper: Callable[..., bytes], in_json: Callable[..., Any], demo: dict[str, Any]
) -> None:
    verdicts = [item["check"]["verdict"] for item in in_json("takeoffs", demo)["result"]["checks"]]
    total = next(page_of(on_paper("takeoffs", demo).decode()).all("p", "total")).text
    assert total == (
        f"✗ {len(verdicts)} checks: {verdicts.count('fails')} FAIL; {verdicts.count('not-checked')} lack an input; "
        f"{verdicts.count('passes')} pass."
    )


def test_checks_that_differ_in_their_place_alone_share_a_row(on_paper: Callable[..., bytes], demo: dict[str, Any]) -> None:
    table = next(page_of(on_paper("takeoffs", demo).decode()).all("table", "checks"))
    first = next(table.all("tbody")).text
    assert "115RE: turnout, open deck bridge, insulated joint, end of CWR. " in first
    assert table.text.count("Anchored zone holds the thermal force") == 1


def test_a_formula_stands_once_and_below_it_the_numbers_of_each_part(
    on_paper: Callable[..., bytes], demo: dict[str, Any]
) -> None:
    page = page_of(on_paper("takeoffs", demo).decode())
    titles = [section.children[0].text for section in page.all("section", "working")]
    assert len(titles) == len(set(titles))
    plates = next(section for section in page.all("section", "working") if section.text.startswith("Tie plates"))
    parts = [cells_of(row)[0] for row in plates.all("tr", "part")]
    names = [segment["name"] for segment in demo["segments"]]
    assert parts[: len(names)] == names
    forces = next(section for section in page.all("section", "working") if section.text.startswith("Thermal force in fully"))
    assert {cells_of(row)[0] for row in forces.all("tr", "part")} == {"115RE, hottest rail", "115RE, coldest rail"}


@pytest.mark.parametrize(("rule", "request_body"), examples(), ids=[rule for rule, _ in examples()])
def test_every_check_of_the_answer_stands_on_the_sheet(
    on_paper: Callable[..., bytes], in_json: Callable[..., Any], rule: str, request_body: Any
) -> None:
    result = in_json(rule, request_body)["result"]
    told = [item.get("check", item) for item in result.get("checks", ())] + [
        result[name] for name in ("check",) if name in result
    ]
    page = page_of(on_paper(rule, request_body).decode())
    said = [node.text for node in page.all("p", "total")]
    assert len(said) == bool(told)
    if told:
        assert said[0].partition(" ")[2].startswith(f"{len(told)} check")
        titles = next(page.all("table", "checks")).text
        assert all(check["title"].partition(": ")[0] in titles for check in told)


def test_a_pdf_too_long_to_set_in_time_is_refused_with_what_would_do(http: TestClient[Litestar], demo: dict[str, Any]) -> None:
    first = demo["segments"][1]
    bare = {key: value for key, value in first.items() if key not in ("curves", "features")}
    segments = [
        {**bare, "name": f"part {number}", "begin": {"value": number, "unit": "mi"}, "end": {"value": number + 1, "unit": "mi"}}
        for number in range(1, 10)
    ]
    reply = http.post("/v1/takeoffs", json={**demo, "segments": segments}, headers={"Accept": "application/pdf"})
    assert reply.status_code == 422
    assert reply.json()["errors"][0]["pointer"] == "/segments"
    assert "document.extent" in reply.json()["errors"][0]["detail"]
