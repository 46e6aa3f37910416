"""What must hold wherever the client is installed: run as a script, with nothing of this project beside it but the client.

Every module is imported, a call goes out and comes back, quantities go through pint, a job is read from CSV and XLSX, a table
goes to pandas, polars, Arrow and XLSX, jobs are streamed, a span is made, completion is printed.
"""

from __future__ import annotations

import asyncio
import contextlib
import hashlib
import importlib
import io
import json
import pkgutil
import platform
import tempfile
from importlib.metadata import version
from pathlib import Path

import httpx
import openpyxl
import pandas as pd
import pint
import polars as pl
import railrules_client
from railrules_client import AsyncClient, Client, RefusedError, jobs, models, quantity, tables
from railrules_client.command_line.running import main
from railrules_client.telemetry import OpenTelemetryHook

CITE = {"source": "s", "title": "t", "where": "w", "status": "published"}
ROW = {
    "id": "136RE", "title": "136 RE", "texts": {"grade": ["B"]}, "also": [], "notes": "", "cite": CITE, "newer": 1,
    "values": {"height": {"printed": "7 5/16 in", "value": {"value": 7.3125, "unit": "in"}, "cite": CITE}},
}  # fmt: skip
LINE = "name,begin [mi],end [mi],rails,ties.spacing,old.section,new.section\na,0,1,both,19.5 in,90RA-A,115RE\n"


def answered(request: httpx.Request) -> httpx.Response:
    """Stand in for the service."""
    if request.url.path.endswith("/bulk"):
        lines = b"".join(
            b'{"line":%d,"problem":{"type":"x","title":"x","status":422,"detail":""}}\n' % number
            for number, _ in enumerate(request.content.splitlines(), 1)
        )
        trailer = {
            "lines": 1, "answered": 0, "refused": 1, "digest": f"sha-256:{hashlib.sha256(lines).hexdigest()}", "totals": [],
            "versions": {"service": "9", "catalogue": "1", "rulebook": "1"},
        }  # fmt: skip
        return httpx.Response(200, content=lines + json.dumps({"trailer": trailer}).encode() + b"\n")
    if request.url.path.endswith("/136RE"):
        return httpx.Response(200, json=ROW, headers={"ETag": '"1"'})
    refusal = {"type": "x", "title": "Refused", "status": 422, "detail": "no", "errors": [{"pointer": "/a", "detail": "b"}]}
    return httpx.Response(422, json=refusal)


async def awaited() -> models.CatalogueRow:
    """Ask as a program that awaits."""
    async with AsyncClient("http://service.example", transport=httpx.MockTransport(answered)) as client:
        return await client.rail_sections.get("136RE")


def checks(folder: Path) -> None:
    """Run everything once."""
    for module in pkgutil.walk_packages(railrules_client.__path__, "railrules_client."):
        if not module.name.endswith("__main__"):
            importlib.import_module(module.name)
    with Client("http://service.example", transport=httpx.MockTransport(answered), hooks=[OpenTelemetryHook()]) as client:
        row = client.rail_sections.get("136RE")
        assert asyncio.run(awaited()) == row
        refused: list[RefusedError] = []
        try:
            client.takeoffs.create({})
        except RefusedError as error:
            refused.append(error)
        assert [error.faults[0].pointer for error in refused] == ["/a"]
        assert [done.number for done in client.takeoffs.stream([{}] * 100, progress=True)] == list(range(100))
    table = tables.of([row])
    assert table.to_pandas()["values_height_value"].tolist() == [7.3125]
    assert table.to_polars()["texts_grade"].to_list() == ["B"]
    assert pl.DataFrame(table).equals(table.to_polars())
    assert len(pd.DataFrame(table.to_pandas())) == 1
    table.to_xlsx(folder / "row.xlsx")
    assert openpyxl.load_workbook(folder / "row.xlsx").worksheets[0]["A2"].value == "136RE"
    assert "<table>" in row.to_html()
    assert models.Length.of(pint.UnitRegistry().Quantity(39, "foot")).to("in").magnitude == 468
    assert str(quantity("39 ft").to_pint().to("yard").magnitude).startswith("13")
    (folder / "line.csv").write_text(LINE)
    book = openpyxl.Workbook()
    assert book.active is not None
    for cells in LINE.splitlines():
        book.active.append(cells.split(","))
    book.save(folder / "line.xlsx")
    for name in ("line.csv", "line.xlsx"):
        assert jobs.read(folder / name, name="x").request["name"] == "x"
    (folder / "job.toml").write_text('name = "x"\n[supply]\ntie_in = "weld"\n')
    assert jobs.read(folder / "job.toml").request["supply"] == {"tie_in": "weld"}
    said = io.StringIO()
    with contextlib.redirect_stdout(said):
        assert main(["convert", "39 ft", "m"]) == 0
        assert main(["completion", "fish"]) == 0
    assert "11.8872 m" in said.getvalue()


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as name, contextlib.redirect_stderr(io.StringIO()):
        checks(Path(name))
    told = (
        "httpx",
        "msgspec",
        "pint",
        "pandas",
        "polars",
        "nanoarrow",
        "openpyxl",
        "xlsxwriter",
        "tqdm",
        "shtab",
        "opentelemetry-api",
    )
    print(f"good on {platform.python_version()} with", ", ".join(f"{name} {version(name)}" for name in told))  # noqa: T201
