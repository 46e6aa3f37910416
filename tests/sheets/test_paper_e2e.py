"""The sheet on paper and the workbook in a spreadsheet program: needs Pango, poppler's tools, Chromium and LibreOffice."""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

import openpyxl
import pytest
from PIL import Image

from railrules_api.api.sheet_form import PDF, XLSX
from railrules_api.sheets import pdf
from tests.sheets.conftest import examples
from tests.sheets.test_workbook import compare, opened, rows_of

if TYPE_CHECKING:
    from collections.abc import Callable

pytestmark = pytest.mark.e2e
PAPERS = {"letter": ("us", 612, 792), "A4": ("si", 595.276, 841.89)}
DPI = 50
CLEAR = 8 / 25.4
"""Inches at the edges of a sheet in which nothing stands: most printers do not reach further."""
DOCUMENT = {"project": "Alder Flat relay", "location": "MP 3.1 to 4.0", "prepared": "R. Finch"}


def tool(*names: str) -> str:
    """Return a program of the system; these tests are for machines that have it."""
    found = next((path for name in names if (path := shutil.which(name))), None)
    assert found is not None, f"{names[0]} is not installed"
    return found


def run(*command: str, **more: Any) -> str:
    done: str = subprocess.run(command, check=True, capture_output=True, text=True, timeout=300, **more).stdout
    return done


def pages_of(path: Path) -> list[str]:
    """Return the text of each page of a PDF."""
    return run(tool("pdftotext"), "-layout", str(path), "-").split("\f")[:-1]


def edges_are_clear(path: Path, folder: Path) -> int:
    """Draw every page and look for ink where none may be; return the number of pages."""
    run(tool("pdftoppm"), "-r", str(DPI), "-gray", "-png", str(path), str(folder / "page"))
    drawn = sorted(folder.glob("page*.png"))
    edge = int(CLEAR * DPI)
    for name in drawn:
        with Image.open(name).convert("L") as image:
            width, height = image.size
            inside = image.crop((edge, edge, width - edge, height - edge))
            whole = image.copy()
            whole.paste(255, (edge, edge, width - edge, height - edge))
            assert min(whole.tobytes()) == 255, f"{name.name}: ink in the margin"
            assert min(inside.tobytes()) < 128, f"{name.name}: an empty sheet"
        name.unlink()
    return len(drawn)


@pytest.mark.parametrize("paper", list(PAPERS))
@pytest.mark.parametrize(("rule", "request_body"), examples(), ids=[rule for rule, _ in examples()])
def test_a_sheet_fits_its_paper_and_every_page_bears_the_title_block(
    on_paper: Callable[..., bytes], tmp_path: Path, rule: str, request_body: Any, paper: str
) -> None:
    system, width, height = PAPERS[paper]
    body = {**request_body, "units": system, "document": {**DOCUMENT, "paper": paper}}
    path = tmp_path / "sheet.pdf"
    path.write_bytes(on_paper(rule, body, PDF))
    size = re.search(r"Page size: +([\d.]+) x ([\d.]+)", run(tool("pdfinfo"), str(path)))
    assert size is not None
    assert (float(size[1]), float(size[2])) == pytest.approx((width, height), abs=0.1)
    texts = pages_of(path)
    assert edges_are_clear(path, tmp_path) == len(texts)
    for number, text in enumerate(texts, 1):
        assert f"{number} of {len(texts)}" in text
        for part in ("Alder Flat relay", "MP 3.1 to 4.0", "R. Finch", "INPUT DIGEST", "CHECKED"):
            assert part in text, f"sheet {number}"


def test_no_title_block_is_too_long_for_its_page(on_paper: Callable[..., bytes], tmp_path: Path) -> None:
    rule, body = next((rule, body) for rule, body in examples() if rule == "thermal.break-gap")
    most = {"project": 80, "location": 80, "prepared": 60, "checked": 60, "date": 24}
    longest = {name: "W" * length for name, length in most.items()}
    path = tmp_path / "sheet.pdf"
    path.write_bytes(on_paper(rule, {**body, "document": longest}, PDF))
    edges_are_clear(path, tmp_path)
    for text in pages_of(path):
        assert "INPUT DIGEST" in text


_ONE = """
import json, sys
from railrules_api.api.replying import answer_on_paper
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import start
ask = calculation_of("thermal.break-gap")
body = json.load(sys.stdin)
sys.stdout.buffer.write(answer_on_paper(ask, json.dumps(body).encode(), start(), "application/pdf"))
"""


def test_another_process_sets_the_same_bytes() -> None:
    body = json.dumps(next(body for rule, body in examples() if rule == "thermal.break-gap"))
    made = [
        subprocess.run(
            [sys.executable, "-c", _ONE], input=body.encode(), check=True, capture_output=True, timeout=120,
            cwd=Path(__file__).parents[2], env={**os.environ, "PYTHONHASHSEED": seed, "TZ": zone},
        ).stdout
        for seed, zone in (("1", "UTC"), ("2", "Asia/Tokyo"))
    ]  # fmt: skip
    assert made[0] == made[1]
    assert made[0].startswith(b"%PDF-")
    assert not re.search(rb"/(CreationDate|ModDate)", made[0])


def test_a_browser_prints_the_page_with_the_title_block_on_every_sheet(
    on_paper: Callable[..., bytes], demo: dict[str, Any], tmp_path: Path
) -> None:
    page, path = tmp_path / "sheet.html", tmp_path / "browser.pdf"
    page.write_bytes(on_paper("takeoffs", {**demo, "document": DOCUMENT}))
    run(
        tool("chromium", "chromium-browser", "google-chrome"), "--headless", "--no-sandbox", "--disable-gpu",
        f"--user-data-dir={tmp_path / 'profile'}", "--no-pdf-header-footer", f"--print-to-pdf={path}", page.as_uri(),
    )  # fmt: skip
    texts = pages_of(path)
    assert edges_are_clear(path, tmp_path) == len(texts)
    for text in texts:
        assert "Alder Flat relay" in text
        assert "INPUT DIGEST" in text


def test_where_pdf_cannot_be_made_the_answer_says_what_does(http: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    def missing(_sheet: object) -> bytes:
        raise pdf.NoPdfError

    monkeypatch.setattr(pdf, "encode", missing)
    body = next(body for rule, body in examples() if rule == "thermal.break-gap")
    reply = http.post("/v1/thermal/break-gap", json=body, headers={"Accept": "application/pdf"})
    assert reply.status_code == 406
    assert "text/html" in reply.json()["detail"]


# ---------------------------------------------------------------- the workbook, recalculated by a program that is not ours


def recalculated(body: bytes, folder: Path, changes: dict[str, float] | None = None) -> Any:
    """Change named cells, throw every calculated value away, and let the spreadsheet program work them out anew."""
    book = opened(body, values=False)
    for name, value in (changes or {}).items():
        page, cell = book.defined_names[name].attr_text.replace("$", "").split("!")
        book[page][cell] = value
    source = folder / "given"
    source.mkdir()
    book.save(source / "book.xlsx")  # formulas only: the library keeps no calculated values
    bare = openpyxl.load_workbook(source / "book.xlsx", data_only=True)
    assert all(cell.value is None for row in bare["Parts"].iter_rows(min_row=3, min_col=5, max_col=5) for cell in row)
    run(
        tool("soffice", "libreoffice"), f"-env:UserInstallation={(folder / 'profile').as_uri()}", "--headless",
        "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", str(folder / "worked"), str(source / "book.xlsx"),
    )  # fmt: skip
    return opened((folder / "worked/book.xlsx").read_bytes())


@pytest.mark.parametrize("system", ["us", "si"])
def test_the_program_works_out_what_the_service_answers(
    on_paper: Callable[..., bytes], in_json: Callable[..., Any], demo: dict[str, Any], tmp_path: Path, system: str
) -> None:
    body = {**demo, "units": system}
    compare(recalculated(on_paper("takeoffs", body, XLSX), tmp_path), in_json("takeoffs", body)["result"])


def test_changed_allowance_price_and_package_give_what_the_service_answers_to_the_changed_job(
    on_paper: Callable[..., bytes], in_json: Callable[..., Any], demo: dict[str, Any], tmp_path: Path
) -> None:
    changes = {"allowance_spikes": 0.07, "price_cross_ties": 61.25, "price_salvage_rail_scrap": 198.0, "package_spikes": 180.0}
    changed = json.loads(json.dumps(demo))
    next(entry for entry in changed["allowances"] if entry["item"] == "spikes")["share"] = 0.07
    for item, price in (("cross-ties", "61.25"), ("salvage-rail-scrap", "198.00")):
        next(entry for entry in changed["prices"]["items"] if entry["item"] == item)["price"] = price
    changed["packaging"] = [{"item": "spikes", "package": "keg", "pieces": 180.0}]
    told = in_json("takeoffs", changed)["result"]
    assert told["money"] != in_json("takeoffs", demo)["result"]["money"]
    compare(recalculated(on_paper("takeoffs", demo, XLSX), tmp_path, changes), told)


SPACINGS = {"us": (("in", 20.25), ("in", 18.0), ("in", 21.0)), "si": (("mm", 525.0), ("mm", 480.0), ("mm", 550.0))}


@pytest.mark.parametrize("system", ["us", "si"])
def test_a_changed_spacing_and_share_give_what_the_service_answers_to_the_changed_job(
    on_paper: Callable[..., bytes], in_json: Callable[..., Any], demo: dict[str, Any], tmp_path: Path, system: str
) -> None:
    job = {**demo, "units": system}
    changed, changes = json.loads(json.dumps(job)), {"renewed_share_1": 0.22}
    changed["segments"][0]["renewed_share"] = 0.22
    for number, (unit, value) in enumerate(SPACINGS[system], 1):
        changed["segments"][number - 1]["ties"] = {"spacing": {"value": value, "unit": unit}}
        changes[f"spacing_{number}"] = value
    told, before = in_json("takeoffs", changed)["result"], in_json("takeoffs", job)["result"]
    assert [order["item"] for order in told["orders"]] == [order["item"] for order in before["orders"]]
    book = recalculated(on_paper("takeoffs", job, XLSX), tmp_path, changes)
    for row, segment in zip(rows_of(book["Segments"]), told["segments"], strict=True):
        assert (row["Ties"], row["Anchors"]) == (segment["ties"], segment["anchors"])
    again, moved = set(), set()
    for page in ("Bill", "Salvage", "Work"):
        for row in rows_of(book[page]):
            if row["No."] is None:
                continue  # the sum below
            order = told["orders"][int(row["No."]) - 1]
            if row["State"] == "ask again":
                again.add(order["item"])
                continue
            assert row["Net"] == pytest.approx(order["net"]["value"], rel=1e-9), order["item"]
            moved |= {order["item"]} if before["orders"][int(row["No."]) - 1]["net"] != order["net"] else set()
            if page == "Bill":
                assert row["Order"] == pytest.approx(order["order"]["value"], rel=1e-9), order["item"]
                assert row.get("Packages") == order.get("packages")
    # old anchors went by rail length: what comes off does not go by the number of ties alone
    assert again == {"salvage-anchors"}
    assert moved >= {
        "cross-ties", "tie-plates", "spikes", "tie-plugs", "plate-pins", "preservative", "anchors", "tie-seats-adzed",
        "crib-ballast", "salvage-tie-plates", "salvage-spikes", "salvage-ties",
    }  # fmt: skip


def test_the_program_prints_the_workbook_sheet_by_sheet(
    on_paper: Callable[..., bytes], demo: dict[str, Any], tmp_path: Path
) -> None:
    (tmp_path / "book.xlsx").write_bytes(on_paper("takeoffs", demo, XLSX))
    run(
        tool("soffice", "libreoffice"), f"-env:UserInstallation={(tmp_path / 'profile').as_uri()}", "--headless",
        "--convert-to", "pdf", "--outdir", str(tmp_path), str(tmp_path / "book.xlsx"),
    )  # fmt: skip
    texts = pages_of(tmp_path / "book.pdf")
    assert all(f"sheet {number} of {len(texts)}" in text for number, text in enumerate(texts, 1))
    assert not any("###" in text for text in texts)
    assert edges_are_clear(tmp_path / "book.pdf", tmp_path) == len(texts)
