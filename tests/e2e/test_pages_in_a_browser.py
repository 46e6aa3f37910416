"""The pages in a browser without a network: they load in silence, work by keyboard, and axe finds nothing serious."""

from __future__ import annotations

import contextlib
import json
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.app import sample
from railrules_api.pages.assets import read
from tests.support.job_files import HEAD, LINE, NAME

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from playwright.sync_api import Browser, Page

pytestmark = pytest.mark.e2e
PATHS = (
    "/", "/docs", "/handbook", "/handbook/worked-relay", "/handbook/counting", "/handbook/rulebooks", "/handbook/calling",
    "/handbook/rules/thermal.break-gap", "/handbook/rules/takeoffs", "/problems", "/problems/refused",
)  # fmt: skip
SIZES = {"desk": (1280, 900), "phone": (390, 800)}
PATIENCE = 180_000  # milliseconds; the machine may have other work


@contextlib.contextmanager
def opened(browser: Browser, address: str, path: str, *, size: str = "desk", scheme: Any = "light") -> Iterator[Page]:
    """Open a page; on leaving, nothing may have been said on the console nor asked of another host."""
    width, height = SIZES[size]
    # the policy of the pages stays in force for what they load; axe itself is brought in past it
    context = browser.new_context(viewport={"width": width, "height": height}, color_scheme=scheme, accept_downloads=True)
    page = context.new_page()
    said: list[str] = []
    page.on("console", lambda message: said.append(message.text) if message.type in ("error", "warning") else None)
    page.on("pageerror", lambda error: said.append(str(error)))
    page.on("request", lambda request: None if request.url.startswith((address, "blob:", "data:")) else said.append(request.url))
    page.goto(address + path, wait_until="load")
    if path == "/docs":
        page.wait_for_selector(".opblock-tag", timeout=PATIENCE)
    yield page
    assert said == []
    context.close()


def findings(page: Page, axe: str) -> list[str]:
    """Return what axe takes for serious."""
    # evaluated by the debugger, which the page's policy does not bind
    page.evaluate(axe + "; 0")
    found = page.evaluate("axe.run(document)")
    assert len(found["passes"]) > 10, "axe has looked at the page"
    return [
        f"{item['id']}: {node['html'][:160]} {node.get('failureSummary', '')[:300]}"
        for item in found["violations"]
        if item["impact"] in ("serious", "critical")
        for node in item["nodes"]
    ]


def until(page: Page, expression: str) -> None:
    """Wait until an expression holds, without asking the page to evaluate text."""
    for _ in range(PATIENCE // 100):
        if page.evaluate(expression):
            return
        page.wait_for_timeout(100)
    raise AssertionError(f"not within {PATIENCE} ms: {expression}")


def answer_demo(page: Page) -> None:
    page.click("#demo")
    until(page, "document.getElementById('job').value.length > 1000")
    page.click("#go")
    page.wait_for_selector("#answer:not([hidden])", timeout=PATIENCE)
    until(page, "document.getElementById('picture').naturalWidth > 0")


@pytest.mark.parametrize("size", list(SIZES))
@pytest.mark.parametrize("path", PATHS)
def test_a_page_loads_without_a_word_and_without_sideways_scrolling(path: str, size: str, browser: Browser, address: str) -> None:
    with opened(browser, address, path, size=size) as page:
        assert page.evaluate("document.documentElement.scrollWidth") <= SIZES[size][0]


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("path", PATHS)
def test_axe_finds_nothing_serious(path: str, scheme: str, browser: Browser, address: str, axe: str) -> None:
    with opened(browser, address, path, scheme=scheme) as page:
        assert findings(page, axe) == []


@pytest.mark.parametrize("size", list(SIZES))
def test_the_demo_is_answered(size: str, browser: Browser, address: str, axe: str) -> None:
    with opened(browser, address, "/", size=size) as page:
        answer_demo(page)
        assert page.inner_text("#job-name") == json.loads(read("static/demo-job.json"))["name"]
        assert "checks:" in page.inner_text("#verdict")
        assert page.inner_text("#sheet-of") == "sheet 1 of 3"
        page.click("#after")
        until(page, "document.getElementById('sheet-of').textContent === 'sheet 2 of 3'")
        page.select_option("#drawing", "tie-panel")
        until(page, "document.getElementById('sheet-of').textContent === 'sheet 1 of 4'")
        assert page.evaluate("document.documentElement.scrollWidth") <= SIZES[size][0]
        assert findings(page, axe) == []


def test_every_form_can_be_saved(browser: Browser, address: str, tmp_path: Path) -> None:
    with opened(browser, address, "/") as page:
        answer_demo(page)
        for button in page.query_selector_all("button[data-accept], #save-chart"):
            with page.expect_download(timeout=PATIENCE) as waiting:
                button.click()
            file = tmp_path / waiting.value.suggested_filename
            waiting.value.save_as(file)
            assert file.stat().st_size > 500


def test_the_front_page_by_keyboard_alone(browser: Browser, address: str) -> None:
    with opened(browser, address, "/") as page:
        reached = []
        for _ in range(12):
            page.keyboard.press("Tab")
            if page.evaluate("document.activeElement === document.body"):
                break  # past the last one
            reached.append(page.evaluate("document.activeElement.id || document.activeElement.textContent"))
            outline = page.evaluate("getComputedStyle(document.activeElement).outlineStyle")
            assert outline != "none", f"focus on {reached[-1]} is not shown"
        assert reached[0] == "Skip to the content"
        assert [name for name in ("job", "go", "demo", "choose", "units") if name in reached] == [
            "job",
            "go",
            "demo",
            "choose",
            "units",
        ]
        page.focus("#demo")
        page.keyboard.press("Enter")
        until(page, "document.getElementById('job').value.length > 1000")
        page.focus("#job")
        page.keyboard.press("Control+Enter")
        page.wait_for_selector("#answer:not([hidden])", timeout=PATIENCE)
        until(page, "document.activeElement.id === 'answer'")


def test_what_is_refused_is_told_where(browser: Browser, address: str) -> None:
    job = json.loads(read("static/demo-job.json"))
    job["segments"][0]["new"]["section"] = "115XE"
    with opened(browser, address, "/") as page:
        page.fill("#job", "{ not json")
        page.click("#go")
        assert "not JSON" in page.inner_text("#trouble")
    context = browser.new_context()
    page = context.new_page()  # the browser itself notes a 422 on its console
    page.goto(address + "/")
    page.fill("#job", json.dumps(job))
    page.click("#go")
    page.wait_for_selector("#trouble:not([hidden])", timeout=PATIENCE)
    assert "/segments/0/new/section" in page.inner_text("#trouble")
    assert "115RE" in page.inner_text("#trouble")
    assert page.evaluate("document.activeElement.id") == "trouble"
    context.close()


def test_progress_is_shown_while_waiting(browser: Browser, address: str) -> None:
    with opened(browser, address, "/") as page:
        page.click("#demo")
        until(page, "document.getElementById('job').value.length > 1000")
        page.evaluate(
            "new MutationObserver(() => { window.seen = true; }).observe(document.getElementById('bar'), {attributes: true})"
        )
        page.click("#go")
        page.wait_for_selector("#answer:not([hidden])", timeout=PATIENCE)
        assert page.evaluate("window.seen === true")
        until(page, "document.getElementById('bar').hidden")


def test_a_long_job_shows_how_far_it_is(browser: Browser, address: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("railrules_api.api.progress.EVERY", 0.02)
    with opened(browser, address, "/") as page:
        page.fill("#job", json.dumps(sample.job(150, 1)))
        page.evaluate(
            """window.told = [];
            new MutationObserver(() => {
              window.told.push([document.getElementById('count').textContent, document.getElementById('bar').value,
                document.getElementById('bar').max]);
            }).observe(document.getElementById('count'), {childList: true});"""
        )
        page.click("#go")
        page.wait_for_selector("#answer:not([hidden])", timeout=PATIENCE)
        told = [line for line in page.evaluate("window.told") if line[0].endswith("of 150")]
        assert told
        assert [round(float(line[0].split()[0])) for line in told] == [line[1] for line in told]
        assert {line[2] for line in told} == {150}
        until(page, "document.getElementById('bar').hidden")


@pytest.mark.parametrize("size", list(SIZES))
def test_a_job_may_stand_in_files(size: str, browser: Browser, address: str, tmp_path: Path, axe: str) -> None:
    line = tmp_path / "line.csv"
    head = tmp_path / "job.toml"
    head.write_text(HEAD)
    line.write_text(LINE)
    with opened(browser, address, "/", size=size) as page:
        page.set_input_files("#file", [str(line), str(head)])
        until(page, "document.getElementById('files').textContent.includes('line.csv')")
        assert page.input_value("#job") == HEAD
        assert page.evaluate("document.documentElement.scrollWidth") <= SIZES[size][0]
        assert findings(page, axe) == []
        page.click("#go")
        page.wait_for_selector("#answer:not([hidden])", timeout=PATIENCE)
        assert page.inner_text("#job-name") == NAME
        until(page, "document.getElementById('picture').naturalWidth > 0")
        page.click("#files button")
        assert not page.is_visible("#files")


def test_what_is_wrong_in_a_file_is_told_by_row_and_column(browser: Browser, address: str, tmp_path: Path) -> None:
    line = tmp_path / "line.csv"
    context = browser.new_context()
    page = context.new_page()  # the browser itself notes a 422 on its console
    page.goto(address + "/")
    page.fill("#job", HEAD)
    for cells, place in (("1.5,two", "line.csv, row 3, column C"), ("1.2,2", "line.csv, row 3, column B")):
        line.write_text(LINE.replace("1.5,2", cells))
        page.set_input_files("#file", str(line))
        page.click("#go")
        page.wait_for_selector("#trouble:not([hidden])", timeout=PATIENCE)
        until(page, f"document.getElementById('trouble').textContent.includes({place!r})")
    page.fill("#job", "name = = 1")
    page.click("#go")
    until(page, "document.getElementById('trouble').textContent.includes('line 1')")
    context.close()


def test_a_drawing_keeps_its_colours_when_opened_alone(browser: Browser, address: str) -> None:
    with opened(browser, address, "/handbook/worked-relay/1") as page:
        assert page.evaluate("getComputedStyle(document.querySelector('.paper')).fill") == "rgb(251, 251, 248)"
