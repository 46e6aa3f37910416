"""Job files that the front page takes: read as the client reads them, refused with file, row and column."""

from __future__ import annotations

import base64
import importlib
import io
import json
import random
import zipfile
from typing import TYPE_CHECKING, Any

import openpyxl
import pytest
from railrules_client import jobs

from railrules_api.pages import job_files
from tests.support.demo import DEMO
from tests.support.job_files import HEAD, LINE

if TYPE_CHECKING:
    from collections.abc import Iterator

    from litestar import Litestar
    from litestar.testing import TestClient


def sent(*files: tuple[str, bytes], **more: Any) -> dict[str, Any]:
    return {"files": [{"name": name, "content": base64.b64encode(content).decode()} for name, content in files], **more}


def workbook(rows: list[list[Any]]) -> bytes:
    book = openpyxl.Workbook()
    sheet = book.active
    assert sheet is not None
    for row in rows:
        sheet.append(row)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


@pytest.fixture
def asked_anew() -> Iterator[None]:
    job_files.available.cache_clear()
    yield
    job_files.available.cache_clear()


def test_a_toml_job_is_what_the_client_reads_of_it(site: TestClient[Litestar]) -> None:
    answer = site.post("/job", json=sent(("job.toml", DEMO.read_bytes())))
    assert answer.status_code == 200
    assert answer.json() == json.loads(json.dumps(jobs.read(DEMO).request))
    taken = site.post("/v1/takeoffs", content=answer.content, headers={"Content-Type": "application/json"})
    assert taken.status_code == 200


def test_segments_come_from_a_spreadsheet_in_either_form_and_order(site: TestClient[Litestar]) -> None:
    rows = [line.split(",") for line in LINE.splitlines()]
    cells: list[list[Any]] = [rows[0], *([name, float(begin), float(end), section] for name, begin, end, section in rows[1:])]
    head = ("job.toml", HEAD.encode())
    by_csv = site.post("/job", json=sent(("line.csv", LINE.encode()), head))
    by_book = site.post("/job", json=sent(head, ("line.xlsx", workbook(cells))))
    assert by_csv.status_code == by_book.status_code == 200, by_csv.text + by_book.text
    assert by_csv.json() == by_book.json()
    assert [segment["name"] for segment in by_csv.json()["segments"]] == ["A", "B"]
    taken = site.post("/v1/takeoffs", content=by_csv.content, headers={"Content-Type": "application/json"})
    assert taken.status_code == 200, taken.text


def test_what_the_service_refuses_is_found_in_the_file(site: TestClient[Litestar]) -> None:
    files = (("job.toml", HEAD.encode()), ("line.csv", LINE.encode()))
    asked = ["/segments/1/begin", "/segments/0/new/section", "/name"]
    found = site.post("/job", json=sent(*files, pointers=asked)).json()
    assert found["/segments/1/begin"].startswith("line.csv, row 3, column B")
    assert found["/segments/0/new/section"].startswith("line.csv, row 2, column D")
    assert found["/name"] == ""


@pytest.mark.parametrize(
    ("files", "said"),
    [
        ([("job.toml", b"name = \nx")], "line 1"),
        ([("job.toml", b"\xff")], "job.toml"),
        ([("job.toml", b"a=" + b"[" * 5000)], "job.toml"),
        ([("job.json", b"[1]")], "an object"),
        ([("job.json", b"1" * 5000)], "job.json"),
        ([("job.toml", HEAD.encode()), ("line.csv", LINE.replace("1.5,2", "1.5,two").encode())], "line.csv, row 3, column C"),
        ([("job.toml", HEAD.encode()), ("line.csv", b"name,begn\nA,1\n")], "line.csv, row 1, column B"),
        ([("line.xlsx", b"PK no workbook")], "line.xlsx: not a workbook"),
        ([("line.doc", b"")], "CSV or XLSX is wanted"),
    ],
)
def test_files_that_cannot_be_read_are_a_problem_with_row_and_column(
    files: list[tuple[str, bytes]], said: str, site: TestClient[Litestar]
) -> None:
    answer = site.post("/job", json=sent(*files))
    assert answer.status_code == 422
    assert answer.headers["content-type"] == "application/problem+json"
    assert said in " ".join(fault["detail"] for fault in answer.json()["errors"])


def test_an_archive_that_is_large_unpacked_is_not_unpacked(site: TestClient[Litestar]) -> None:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("xl/worksheets/sheet1.xml", b"0" * (65 * 1024 * 1024))
    assert len(out.getvalue()) < 100_000
    answer = site.post("/job", json=sent(("bomb.xlsx", out.getvalue())))
    assert answer.status_code == 422
    assert "unpacked it is larger than 64 MB" in answer.json()["detail"]


def test_broken_workbooks_are_refused_and_never_a_failure(site: TestClient[Litestar]) -> None:
    whole = workbook([["name", "begin [mi]"], ["A", 1.0]])
    for seed in range(60):
        rng = random.Random(seed)
        broken = bytearray(whole)
        for _ in range(rng.randint(1, 20)):
            broken[rng.randrange(len(broken))] = rng.randrange(256)
        answer = site.post("/job", json=sent(("line.xlsx", bytes(broken))))
        assert answer.status_code in (200, 422), (seed, answer.text)


@pytest.mark.parametrize(
    "body",
    [
        {"files": []},
        {"files": [{"name": "../job.toml", "content": ""}]},
        {"files": [{"name": "job.toml", "content": "no base64"}]},
        {"files": [{"name": "job.toml"}]},
        {"files": [{"name": "a.csv", "content": ""}] * 9},
        {},
    ],
)
def test_what_is_no_list_of_files_is_refused(body: Any, site: TestClient[Litestar]) -> None:
    assert site.post("/job", json=body).status_code == 422


@pytest.mark.usefixtures("asked_anew")
def test_without_the_client_beside_it_the_page_takes_json_and_says_so(
    monkeypatch: pytest.MonkeyPatch, site: TestClient[Litestar]
) -> None:
    def missing(name: str) -> Any:
        raise ModuleNotFoundError(name)

    with monkeypatch.context() as patch:
        patch.setattr(importlib, "import_module", missing)
        answer = site.post("/job", json=sent(("job.toml", b"")))
        page = job_files.available()
    assert (answer.status_code, page) == (404, False)
    assert "JSON only" in answer.json()["detail"]


@pytest.mark.usefixtures("asked_anew")
def test_the_page_says_what_it_takes(monkeypatch: pytest.MonkeyPatch, site: TestClient[Litestar]) -> None:
    page = site.get("/", headers={"Accept": "text/html"}).text
    assert 'accept=".json,.toml,.csv,.tsv,.xlsx"' in page
    assert 'data-files="/job"' in page
    from railrules_api.pages import front  # noqa: PLC0415

    monkeypatch.setattr(job_files, "available", lambda: False)
    alone = front.front(None).decode()  # type: ignore[arg-type]
    assert 'accept=".json"' in alone
    assert "data-files" not in alone
    assert "railrules job FILE" in alone
