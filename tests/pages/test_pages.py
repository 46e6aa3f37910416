"""Pages are served with the right headers, lead nowhere that is not there, and ask nothing of any other host."""

from __future__ import annotations

import re
from html.parser import HTMLParser
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.api.problems import TITLES
from railrules_api.drawing.sheet import STYLE_HASH
from railrules_api.pages.assets import TYPES
from railrules_api.rules.registry import RESOURCES

if TYPE_CHECKING:
    from litestar import Litestar
    from litestar.testing import TestClient

BROWSER = {"Accept": "text/html,application/xhtml+xml,application/xml;q=0.9,image/avif,image/webp,*/*;q=0.8"}
TEXTS = ("worked-relay", "counting", "rulebooks", "calling", "running")
PAGES = (
    "/", "/docs", "/handbook", "/problems", *(f"/handbook/{name}" for name in TEXTS),
    *(f"/handbook/rules/{rule.id}" for rule in RESOURCES), *(f"/problems/{slug}" for slug, _ in TITLES.values()),
)  # fmt: skip
VOID = {"area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr"}


class Reader(HTMLParser):
    """Reads a page: its links, its ids, whether its elements close, and what a strict policy would not let run."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.links: list[str] = []
        self.ids: list[str] = []
        self.inline: list[str] = []
        self.open: list[str] = []
        self.crossed: list[str] = []
        self.headings: list[int] = []
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        found = dict(attrs)
        self.links += [value for name in ("href", "src") if (value := found.get(name))]
        self.ids += [value for value in (found.get("id"),) if value]
        if (
            "style" in found
            or tag == "style"
            or (tag == "script" and not found.get("src"))
            or any(n.startswith("on") for n in found)
        ):
            self.inline.append(self.get_starttag_text() or tag)
        if re.fullmatch(r"h[1-6]", tag):
            self.headings.append(int(tag[1]))
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        if not self.open or self.open.pop() != tag:
            self.crossed.append(tag)


@pytest.mark.parametrize("path", PAGES)
def test_a_page(path: str, site: TestClient[Litestar]) -> None:
    answer = site.get(path, headers=BROWSER)
    assert answer.status_code == 200
    assert answer.headers["content-type"] == "text/html; charset=utf-8"
    assert answer.headers["x-content-type-options"] == "nosniff"
    policy = answer.headers["content-security-policy"]
    assert "default-src 'none'" in policy
    assert "script-src 'self';" in policy
    assert "unsafe" not in policy
    assert "http" not in policy
    page = Reader(answer.text)
    assert not page.crossed
    assert not page.open
    assert not page.inline
    assert len(page.ids) == len(set(page.ids))
    assert page.headings.count(1) == 1
    assert not [link for link in page.links if re.match(r"(?:[a-z]+:)?//", link)], "another host is asked or linked to"


def test_every_link_leads_somewhere(site: TestClient[Litestar]) -> None:
    seen: set[str] = set()
    ahead = ["/"]
    while ahead:
        path = ahead.pop()
        if path in seen:
            continue
        seen.add(path)
        answer = site.get(path, headers=BROWSER)
        assert answer.status_code == 200, path
        if answer.headers["content-type"].startswith("text/html"):
            page = Reader(answer.text)
            for link in page.links:
                target, _, fragment = link.partition("#")
                if not target:
                    assert fragment in page.ids
                ahead += [target] if target else []
    assert seen >= set(PAGES)


@pytest.mark.parametrize("name", list(TYPES))
def test_a_file(name: str, site: TestClient[Litestar]) -> None:
    answer = site.get(f"/static/{name}")
    assert answer.status_code == 200
    assert answer.headers["content-type"].partition(";")[0] == TYPES[name]
    assert answer.headers["content-type"].count("charset") <= 1
    again = site.get(f"/static/{name}", headers={"If-None-Match": answer.headers["etag"]})
    assert again.status_code == 304
    if TYPES[name] == "text/css":
        asked = re.findall(r"""url\(\s*["']?([^"')]{0,5})""", answer.text)
        assert all(one.startswith(("data:", "#")) for one in asked), "a style sheet asks for nothing more"


@pytest.mark.parametrize(
    "path",
    ["/static/checks.json", "/static/..%2Fchecks.json", "/static/swagger", "/handbook/nothing", "/handbook/rules/thermal.nothing",
     "/problems/nothing", "/handbook/worked-relay/0", "/handbook/worked-relay/99", "/handbook/worked-relay/x"],
)  # fmt: skip
def test_what_is_not_there_is_a_problem(path: str, site: TestClient[Litestar]) -> None:
    answer = site.get(path)
    assert answer.status_code == 404
    assert answer.headers["content-type"] == "application/problem+json"


def test_the_type_of_every_problem_leads_to_its_page(site: TestClient[Litestar]) -> None:
    found: dict[str, Any] = site.get("/nowhere").json()
    assert site.get(found["type"], headers=BROWSER).status_code == 200
    refused = site.post("/v1/thermal/force", json={}).json()
    assert refused["title"] in site.get(refused["type"], headers=BROWSER).text


def test_pages_answer_head_and_nothing_else(site: TestClient[Litestar]) -> None:
    assert site.head("/").status_code == 200
    assert site.post("/").status_code == 405


def test_the_pages_stand_in_no_document(site: TestClient[Litestar]) -> None:
    paths = site.get("/openapi.json").json()["paths"]
    assert all(path.startswith(("/v1/", "/health/")) for path in paths)


@pytest.mark.parametrize("query", ["", "?drawing=track-chart&sheet=2", "?drawing=tie-panel&sheet=4"])
def test_a_job_is_drawn(query: str, site: TestClient[Litestar]) -> None:
    body = site.get("/static/demo-job.json").content
    headers = {"Accept": "image/svg+xml", "Content-Type": "application/json"}
    answer = site.post(f"/v1/takeoffs{query}", content=body, headers=headers)
    assert answer.status_code == 200
    assert answer.headers["content-type"] == "image/svg+xml"
    assert f"style-src '{STYLE_HASH}'" in answer.headers["content-security-policy"]
    assert answer.text.startswith("<svg ")


@pytest.mark.parametrize(
    "query", ["?sheet=0", "?sheet=-1", "?sheet=1.5", "?sheet=", "?sheet=99999999999", "?drawing=map", "?paper=a4"]
)
def test_a_sheet_that_cannot_be_is_a_problem(query: str, site: TestClient[Litestar]) -> None:
    body = site.get("/static/demo-job.json").content
    for accept in ("image/svg+xml", "application/json"):
        answer = site.post(f"/v1/takeoffs{query}", content=body, headers={"Accept": accept, "Content-Type": "application/json"})
        assert answer.status_code == 400
        assert answer.headers["content-type"] == "application/problem+json"


def test_a_sheet_that_is_not_there_is_told_how_many_there_are(site: TestClient[Litestar]) -> None:
    body = site.get("/static/demo-job.json").content
    headers = {"Accept": "image/svg+xml", "Content-Type": "application/json"}
    answer = site.post("/v1/takeoffs?sheet=4", content=body, headers=headers)
    assert answer.status_code == 404
    assert "it has 3" in answer.json()["detail"]


def test_the_front_page_offers_what_the_service_does(site: TestClient[Litestar]) -> None:
    page = site.get("/", headers=BROWSER).text
    body = site.get("/static/demo-job.json").content
    offered = re.findall(r'data-accept="([^"]+)"', page)
    assert "text/csv" in offered
    for media_type in offered:
        headers = {"Accept": media_type, "Content-Type": "application/json"}
        # paper needs system libraries, which the suite is not to need; `make e2e` sets pages where they are
        good = 406 if media_type == "application/pdf" and not _sets_pages() else 200
        assert site.post("/v1/takeoffs", content=body, headers=headers).status_code == good


def _sets_pages() -> bool:
    try:
        from weasyprint import HTML  # noqa: F401, PLC0415  an extra
    except OSError:
        return False
    return True
