"""Answers as tables, held against the libraries that take them and against the answer itself."""

from __future__ import annotations

import csv
import html.parser
import io
import json
import math
import re
import sys
from pathlib import Path
from typing import Any

import duckdb
import openpyxl
import pandas as pd
import polars as pl
import pyarrow as pa  # type: ignore[import-untyped]
import pytest
from railrules_client import Client, models, tables
from railrules_client._units import label_of

from railrules_api.units import UNITS
from tests.client.conftest import ROOT
from tests.support.demo import demo_job

Answer = models.TakeoffAnswer


@pytest.fixture(scope="module")
def answer() -> Answer:
    with Client.in_process() as client:
        return client.takeoffs.create(demo_job())


def raw(answer: Answer) -> list[tuple[Any, ...]]:
    """Return what the frames of the orders should hold, taken from the answer by hand."""
    return [
        (
            order.item, order.net.value, order.net.unit, order.packages if isinstance(order.packages, int) else None,
            order.order_mass.value if isinstance(order.order_mass, models.Mass) else None,
        )
        for order in answer.result.orders
    ]  # fmt: skip


NAMES = ["item", "net", "net_unit", "packages", "order_mass"]


# ---------------------------------------------------------------- libraries


def test_polars_pandas_pyarrow_and_duckdb_hold_the_same(answer: Answer) -> None:
    wanted = raw(answer)
    assert answer.to_polars().select(NAMES).rows() == wanted
    assert pl.DataFrame(answer).select(NAMES).rows() == wanted  # by the Arrow stream
    frame = answer.to_pandas()[NAMES]
    assert [tuple(None if pd.isna(cell) else cell for cell in row) for row in frame.itertuples(index=False)] == wanted
    assert str(frame["packages"].dtype) == "Int64"
    assert str(frame["net"].dtype) == "float64"
    arrow = pa.table(answer)
    assert [tuple(row[name] for name in NAMES) for row in arrow.to_pylist()] == wanted
    arrow.validate(full=True)
    orders = answer.to_table()
    relation = duckdb.sql(f"select {', '.join(NAMES)} from orders")
    assert relation is not None
    assert relation.fetchall() == wanted
    assert len(orders) == len(wanted)


def test_the_stream_needs_no_pyarrow_and_does_with_it_alone(answer: Answer, monkeypatch: pytest.MonkeyPatch) -> None:
    table = answer.to_table("checks")
    by_nanoarrow = pl.DataFrame(table)
    monkeypatch.setitem(sys.modules, "nanoarrow", None)
    assert pl.DataFrame(table).equals(by_nanoarrow)
    monkeypatch.setitem(sys.modules, "pyarrow", None)
    with pytest.raises(ImportError, match=r"railrules-client\[arrow\]"):
        table.__arrow_c_stream__()


def test_the_stream_loads_no_pyarrow() -> None:
    import subprocess  # noqa: PLC0415

    code = (
        "import sys; from railrules_client import models, tables; t = tables.of([models.Length(1, 'ft')]); "
        "t.__arrow_c_stream__(); print('pyarrow' in sys.modules, 'nanoarrow' in sys.modules)"
    )
    found = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=ROOT / "client")
    assert found.stdout.split() == ["False", "True"]


@pytest.mark.parametrize("kind", ["text", "number", "count", "flag"])
def test_every_kind_of_cell_goes_through_every_library(kind: Any) -> None:
    values: dict[str, tuple[Any, ...]] = {
        "text": ("é", None, ""), "number": (1.5, None, -0.0), "count": (2**53, None, 0), "flag": (True, None, False),
    }  # fmt: skip
    table = tables.Table("t", [tables.Column("x", kind, values[kind])])
    assert table.to_polars()["x"].to_list() == list(values[kind])
    assert pl.DataFrame(table)["x"].to_list() == list(values[kind])
    assert pa.table(table)["x"].to_pylist() == list(values[kind])
    assert [None if pd.isna(cell) else cell for cell in table.to_pandas()["x"]] == list(values[kind])


def test_an_empty_table_keeps_its_columns(answer: Answer) -> None:
    empty = answer.to_table("orders").where(lambda _: False)
    assert len(empty) == 0
    assert pl.DataFrame(empty).columns == list(empty.names)
    assert empty.to_csv().count("\r\n") == 1
    assert "<tbody></tbody>" in empty.to_html()


# ---------------------------------------------------------------- files


def test_csv_is_exact_and_holds_no_formula(answer: Answer, tmp_path: Path) -> None:
    text = answer.to_csv(tmp_path / "orders.csv")
    assert (tmp_path / "orders.csv").read_bytes().decode() == text
    rows = list(csv.DictReader(io.StringIO(text)))
    assert [float(row["net"]) for row in rows] == [order.net.value for order in answer.result.orders]
    hostile = tables.Table("t", [tables.Column("x", "text", ("=1+1", "+1", "-1", "@x", "\t=1", "a=1"))])
    cells = [row["x"] for row in csv.DictReader(io.StringIO(hostile.to_csv()))]
    assert cells == ["'=1+1", "'+1", "'-1", "'@x", "'\t=1", "a=1"]


def test_a_workbook_has_a_sheet_a_table_and_numbers_as_numbers(answer: Answer, tmp_path: Path) -> None:
    answer.to_xlsx(tmp_path / "answer.xlsx")
    book = openpyxl.load_workbook(tmp_path / "answer.xlsx")
    found = answer.to_tables()
    assert len(book.sheetnames) == len(found)
    sheet = book["orders"]
    headings = [cell.value for cell in sheet[1]]
    assert headings == list(found["orders"].names)
    column = headings.index("net") + 1
    assert [sheet.cell(row, column).value for row in range(2, sheet.max_row + 1)] == [
        pytest.approx(order.net.value, rel=1e-15) for order in answer.result.orders
    ]
    assert sheet.freeze_panes == "A2"
    hostile = tables.Table("a/b:c", [tables.Column("x", "text", ("=1+1", "http://x"))])
    hostile.to_xlsx(tmp_path / "hostile.xlsx")
    (only,) = openpyxl.load_workbook(tmp_path / "hostile.xlsx").worksheets
    assert [only["A2"].data_type, only["A3"].hyperlink] == ["s", None]


def test_names_of_sheets_that_would_collide(tmp_path: Path) -> None:
    one = tables.Table("t", [tables.Column("x", "count", (1,))])
    tables.write_xlsx(tmp_path / "x.xlsx", {"a" * 40 + "1": one, "A" * 40 + "2": one})
    assert len(openpyxl.load_workbook(tmp_path / "x.xlsx").sheetnames) == 2


# ---------------------------------------------------------------- what a table holds


def test_money_in_decimal_text_is_a_number_and_the_list_of_such_fields_is_whole() -> None:
    document = json.loads((ROOT / "openapi" / "openapi.json").read_text())
    received = {name: kind for name, kind in vars(models).items() if isinstance(kind, type) and hasattr(kind, "to_tables")}
    decimals = {
        (name, field)
        for name, schema in document["components"]["schemas"].items()
        for field, kind in schema.get("properties", {}).items()
        if re.match(r"\^-?\??\[0-9\]\{1,\d+\}\(\\\.|\^-\?\[0-9\]", kind.get("pattern", "")) and name in received
    }
    assert ("Cost", "price") in decimals
    assert decimals == {(name, field) for name, kind in received.items() for field in vars(kind).get("decimal_fields", ())}


def test_labels_are_those_of_the_service() -> None:
    for units in UNITS.values():
        for code, unit in units.items():
            assert label_of(code) == unit.label
    assert label_of("furlong") == "furlong"


def test_records_inside_rows_are_laid_flat_and_units_stand_beside(answer: Answer) -> None:
    checks = answer.to_table("checks")
    assert {"of", "rule", "check_code", "check_verdict", "check_demand", "check_demand_unit"} <= set(checks.names)
    assert checks["check_demand"].units == "check_demand_unit"
    assert [row["check_verdict"] for row in checks] == [item.check.verdict for item in answer.result.checks]


def test_a_catalogue_table_is_a_frame() -> None:
    with Client.in_process() as client:
        frame = client.rail_sections.list().to_polars()
    row = frame.row(by_predicate=pl.col("id") == "136RE", named=True)
    assert (row["values_height_value"], row["values_height_value_unit"]) == (7.3125, "in")


def test_answers_without_lists_have_their_values() -> None:
    request = models.ThermalForceRequest(rail_temperature="130 degF", neutral_temperature="95 degF", section="136RE")
    with Client.in_process() as client:
        answer = client.thermal.force(request)
    row = next(iter(answer.to_table("result")))
    assert row["force"] == answer.result.force.value
    assert row["force_unit"] == "lbf"


def test_what_is_not_there_is_told(answer: Answer) -> None:
    with pytest.raises(KeyError, match="there are"):
        answer.to_table("ordres")
    with pytest.raises(KeyError):
        answer.to_table()["ordres"]
    with pytest.raises(TypeError, match="one type"):
        tables.of([models.Length(1, "ft"), models.Mass(1, "lb")])
    with pytest.raises(ValueError, match="different lengths"):
        tables.Table("t", [tables.Column("x", "count", (1,)), tables.Column("y", "count", ())])
    with pytest.raises(ValueError, match="one name"):
        tables.Table("t", [tables.Column("x", "count", (1,)), tables.Column("x", "count", (2,))])


# ---------------------------------------------------------------- people


class Page(html.parser.HTMLParser):
    """Reads a page's cells and checks that its tags are closed."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.open: list[str] = []
        self.cells: list[str] = []
        self.feed(text)
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: Any) -> None:  # noqa: ARG002  the base has it
        self.open.append(tag)
        if tag in ("td", "th"):
            self.cells.append("")

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        if self.open and self.open[-1] in ("td", "th"):
            self.cells[-1] += data


def test_a_notebook_shows_orders_checks_and_money_with_units_and_words(answer: Answer) -> None:
    page = Page(answer._repr_html_())
    assert "\u2717 FAIL" in page.cells
    assert "\u2713 pass" in page.cells
    assert any(cell.endswith(" lb") for cell in page.cells)
    assert "Caution." in answer.to_html()
    for part in (answer.result, answer.result.orders[0], answer.result.checks[0], answer.to_table("checks")):
        assert Page(part._repr_html_()).cells


def test_a_page_holds_no_markup_of_others() -> None:
    table = tables.Table("<i>", [tables.Column("<b>", "text", ("<script>alert(1)</script>",))])
    assert "<script" not in table.to_html()
    assert "<i>" not in table.to_html()
    assert Page(table.to_html()).cells == ["<b>", "<script>alert(1)</script>"]


def test_long_tables_are_cut_on_the_page() -> None:
    table = tables.Table("t", [tables.Column("x", "count", tuple(range(tables.MOST_SHOWN + 5)))])
    assert "and 5 rows more" in table.to_html()


def test_plain_text_and_the_short_form(answer: Answer) -> None:
    table = answer.to_table()
    assert len(str(table).splitlines()) == len(table) + 2
    assert len(repr(table)) <= 1024
    assert str(tables.of([], "orders")) == "orders: nothing"
    assert tables.shown(True) == "yes"
    assert math.isclose(float(tables.shown(0.000123456)), 0.0001235)
