"""Jobs in workbooks: sheets of segments, and a whole job in one workbook or in tables alone."""

from __future__ import annotations

import datetime as dt
from pathlib import Path
from typing import Any

import pytest
from railrules_client.command_line.commands import BAD_INPUT, GOOD
from railrules_client.command_line.running import main
from railrules_client.jobs import JobFileError, SpreadsheetError, read

from tests.client.job_files import JOB, long_line, written

# ---------------------------------------------------------------- workbooks


@pytest.fixture
def book() -> Any:
    return pytest.importorskip("openpyxl").Workbook()


def filled(book: Any, path: Path, **sheets: Any) -> Path:
    book.remove(book.active)
    for title, rows in sheets.items():
        sheet = book.create_sheet(title)
        for row in rows:
            sheet.append(row)
    book.save(path)
    return path


HEADINGS = ["name", "begin [mi]", "end [mi]", "track", "track_class"]


def test_sheets_of_a_workbook(tmp_path: Path, book: Any) -> None:
    path = filled(
        book,
        tmp_path / "line.xlsx",
        segments=[HEADINGS, [], ["a", 12, 14.6, 1, 4], [None, None], ["b", "14.6 mi", 17, "main 2", None]],
        curves=[["segment", "begin [mi]", "end [mi]", "degree [deg]", "hand"], ["a", 12.4, 12.7, 2, "left"]],
    )
    read_segments: Any = read(path).request["segments"]
    first, second = read_segments
    assert (first["begin"], first["track"], first["track_class"]) == ({"value": 12.0, "unit": "mi"}, "1", 4)
    assert first["curves"][0]["degree"] == {"value": 2.0, "unit": "deg"}
    assert (second["begin"], second["track"]) == ({"value": 14.6, "unit": "mi"}, "main 2")
    assert "track_class" not in second


def test_500_rows_of_a_workbook_are_read_and_answered(tmp_path: Path, book: Any, capsys: pytest.CaptureFixture[str]) -> None:
    rows: list[list[Any]] = [["name", "begin [mi]", "end [mi]", "renewed_share"]]
    for number in range(500):
        rows.append([f"segment {number}", round(10 + number / 10, 4), round(10 + (number + 1) / 10, 4), number % 10 / 10])
        if number % 50 == 0:
            rows.append([None] * 4)
    path = filled(book, tmp_path / "line.xlsx", segments=rows)
    job_path = written(tmp_path, JOB, "job.toml")
    found = read(job_path, path)
    assert isinstance(found.request["segments"], list)
    assert len(found.request["segments"]) == 500
    assert found.request["segments"][499]["end"] == {"value": 60.0, "unit": "mi"}
    assert found.where("/segments/499/end") == "line.xlsx, sheet segments, row 511, column C (end [mi])"
    assert main(["takeoff", str(job_path), "--segments", str(path)]) == GOOD
    assert "500 segments, 264,000 ft of track" in capsys.readouterr().out
    # the mistakes that people make are told with sheet, row and column among 500 rows as among three
    rows[300][1] = "12,5"
    rows[401][2] = rows[401][1]
    rows[450][0] = "segment 7"
    told = filled(pytest.importorskip("openpyxl").Workbook(), tmp_path / "line.xlsx", segments=rows)
    with pytest.raises(SpreadsheetError) as refused:
        read(job_path, told)
    complaints = str(refused.value).splitlines()
    assert [line.split(":")[0] for line in complaints] == [
        "line.xlsx, sheet segments, row 301, column B (begin [mi])",
        "line.xlsx, sheet segments, row 402, column C (end [mi])",
        "line.xlsx, sheet segments, row 451, column A (name)",
    ]


@pytest.mark.parametrize(
    ("row", "what"),
    [
        (["a", dt.datetime(2026, 12, 6), 2, 1, 4], "row 2, column B: a date or time"),  # noqa: DTZ001  as a workbook keeps it
        (["a", "=1+1", 2, 1, 4], "row 2, column B: a formula whose result is not in the file"),
        (["a", "1,234", 2000, 1, 4], "row 2, column B (begin [mi]): `1,234` may be 1234 or 1.234"),
        (["a", True, 2, 1, 4], "row 2, column B (begin [mi]): a number is wanted"),
        (["a", 1, 2, 1, 4.5], "row 2, column E (track_class): a whole number"),
    ],
)
def test_mistakes_in_workbooks(tmp_path: Path, book: Any, row: list[Any], what: str) -> None:
    path = filled(book, tmp_path / "line.xlsx", Line=[HEADINGS, row])
    with pytest.raises(SpreadsheetError) as caught:
        read(path)
    assert str(caught.value).startswith("line.xlsx, sheet Line, ")
    assert what in str(caught.value)


def test_merged_cells_and_unknown_sheets_are_refused(tmp_path: Path, book: Any) -> None:
    path = filled(book, tmp_path / "line.xlsx", segments=[HEADINGS, ["a", 1, 2, 1, 4]], notes=[["read me"]])
    with pytest.raises(SpreadsheetError, match="sheet notes: a table is named"):
        read(path)
    book["notes"].title = "# notes"
    book["segments"].merge_cells("D2:D3")
    book.save(path)
    with pytest.raises(SpreadsheetError, match=r"sheet segments: cells D2:D3 are merged"):
        read(path)


def test_a_workbook_that_is_none(tmp_path: Path) -> None:
    pytest.importorskip("openpyxl")
    with pytest.raises(SpreadsheetError, match="not a workbook"):
        read(written(tmp_path, "name,begin", "line.xlsx"))


def test_without_the_library_the_extra_is_named(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    import sys  # noqa: PLC0415

    monkeypatch.setitem(sys.modules, "openpyxl", None)
    with pytest.raises(SpreadsheetError, match=r"railrules-client\[xlsx\]"):
        read(written(tmp_path, "", "line.xlsx"))


# ---------------------------------------------------------------- a whole job in one workbook, or in tables alone

FIELDS: list[list[Any]] = [
    ["field", "value"],
    ["name", "invented line"],
    ["temperatures.hottest_rail", "126 degF"],
    ["temperatures.coldest_rail [degF]", 4],
    ["supply.tie_in", "weld"],
    ["supply.fixed_tie_in", "weld"],
    ["supply.string.stock.1.length", "80 ft"],
    ["supply.string.stock.1.count", 18],
    ["segment.rails", "both"],
    ["segment.ties.spacing [in]", 19.5],
    ["segment.old.section", "90RA-A"],
    ["segment.new.section", "115RE"],
    ["segment.new.plates", "new"],
    ["segment.new.plate", "8-14"],
    ["prices.currency", "USD"],
    ["prices.decimals", 2],
    ["hauling.vehicles.1.name", "flat car"],
    ["hauling.vehicles.1.items", "tie-plates; spikes"],
    ["units", None],
]
LINE: list[list[Any]] = [["name", "begin [mi]", "end [mi]", "new.section"], ["a", 0, 1, None], ["b", 1, 2, "136RE"]]


def test_one_workbook_is_a_whole_job(tmp_path: Path, book: Any) -> None:
    path = filled(
        book,
        tmp_path / "job.xlsx",
        job=FIELDS,
        segments=LINE,
        allowances=[["item", "share"], ["spikes", 0.02]],
        **{"prices.items": [["item", "price", "per"], ["tie-plates", 12.5, "each"]]},
    )
    found = read(path)
    request: Any = found.request
    first, second = request["segments"]
    assert (first["new"]["section"], second["new"]["section"]) == ("115RE", "136RE")
    assert request["temperatures"]["coldest_rail"] == {"value": 4.0, "unit": "degF"}
    assert request["supply"]["string"]["stock"] == [{"length": {"value": 80.0, "unit": "ft"}, "count": 18}]
    assert request["hauling"]["vehicles"][0]["items"] == ["tie-plates", "spikes"]
    assert request["allowances"] == [{"item": "spikes", "share": 0.02}]
    assert request["prices"]["items"][0]["item"] == "tie-plates"
    assert "units" not in request
    assert "segment" not in request
    assert found.where("/segments/0/new/section") == "job.xlsx, sheet job, row 12, column B (segment.new.section)"
    assert found.where("/segments/1/new/section") == "job.xlsx, sheet segments, row 3, column D (new.section)"
    assert found.where("/allowances/0/share") == "job.xlsx, sheet allowances, row 2, column B (share)"
    assert found.where("/name") == "job.xlsx, sheet job, row 2, column B (name)"


def test_it_is_answered_and_refused_with_row_and_column(tmp_path: Path, book: Any, capsys: pytest.CaptureFixture[str]) -> None:
    rows = [[field, value] for field, value in FIELDS if not str(field).startswith(("prices", "hauling"))]
    path = filled(book, tmp_path / "job.xlsx", job=rows, segments=LINE)
    assert main(["takeoff", str(path)]) == GOOD
    assert "2 segments" in capsys.readouterr().out
    rows[2][1] = "1260 degF"
    book.remove(book["job"])
    sheet = book.create_sheet("job")
    for row in rows:
        sheet.append(row)
    book.save(path)
    assert main(["takeoff", str(path)]) == BAD_INPUT
    assert "job.xlsx, sheet job, row 3, column B (temperatures.hottest_rail)" in capsys.readouterr().err


def test_tables_alone_with_fields_as_arguments(tmp_path: Path) -> None:
    line = written(tmp_path, "name,begin [mi],end [mi]\na,0,1\n")
    found = read(line, name="North line", units="si", segment={"rails": "both"})
    assert (found.request["name"], found.request["units"]) == ("North line", "si")
    assert found.request["segments"][0]["rails"] == "both"  # type: ignore[index]
    job = written(tmp_path, "field,value\nname,x\n", "job.csv")
    assert read(line, job).request["name"] == "x"


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("field,worth\nname,x\n", "has the headings `field` and `value`"),
        ("field,value\nnaem,x\n", "row 2, column A: no field `naem`"),
        ("field,value\n,x\n", "row 2, column A: no field"),
        ("field,value\nname,x\nname,y\n", "row 3, column B (name): the same field as job.csv, row 2"),
        ("field,value\ntemperatures.hottest_rail,126\n", "row 2, column B (temperatures.hottest_rail): no unit"),
        ("field,value\nsegment.rails,Both\n", "row 2, column B (segment.rails): `Both` is not one of its words"),
        ("field,value\nsupply.string.stock.2.count,3\n", "entry 1 of a list is blank"),
    ],
)
def test_mistakes_in_a_table_of_the_job(tmp_path: Path, text: str, told: str) -> None:
    line = written(tmp_path, "name,begin [mi],end [mi]\na,0,1\n")
    with pytest.raises(SpreadsheetError) as caught:
        read(line, written(tmp_path, text, "job.csv"))
    assert str(caught.value).startswith("job.csv")
    assert told in str(caught.value)


def test_a_job_is_in_one_place_only(tmp_path: Path) -> None:
    line, table = written(tmp_path, "name,begin [mi],end [mi]\na,0,1\n"), written(tmp_path, "field,value\nname,x\n", "job.csv")
    with pytest.raises(JobFileError, match=r"job\.toml is the job already"):
        read(written(tmp_path, JOB, "job.toml"), line, table)


def test_changes_by_path(tmp_path: Path) -> None:
    job = read(written(tmp_path, JOB, "job.toml"), written(tmp_path, long_line(3)))
    changed = job.changed({"segments.*.renewed_share": "0.5", "segments.2.ties.spacing": "20 in", "supply.tie_in": "joint"})
    request: Any = changed.request
    assert [segment["renewed_share"] for segment in request["segments"]] == [0.5, 0.5, 0.5]
    assert request["segments"][1]["ties"]["spacing"] == {"value": 20.0, "unit": "in"}
    assert request["supply"]["tie_in"] == "joint"
    assert job.request["supply"] != request["supply"]  # the job itself stays as it was
    with pytest.raises(JobFileError, match="no field"):
        job.changed({"supply.tie": "joint"})
