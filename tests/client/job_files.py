"""Job files written for the tests: a job without segments, and spreadsheets beside it."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from railrules_client.jobs import SpreadsheetError, read

JOB = """
name = "invented line"
[temperatures]
hottest_rail = "126 degF"
coldest_rail = "4 degF"
[supply]
tie_in = "weld"
fixed_tie_in = "weld"
[supply.string]
stock = [{ length = "80 ft", count = 18 }]
[segment]
rails = "both"
[segment.ties]
spacing = "19.5 in"
[segment.old]
section = "90RA-A"
[segment.new]
section = "115RE"
plates = "new"
"""


def written(folder: Path, text: str, name: str = "line.csv") -> Path:
    path = folder / name
    path.write_text(text, encoding="utf-8")
    return path


def segments(folder: Path, text: str, *further: Path, **shared: Any) -> list[Any]:
    found = read(written(folder, text), *further, segment=shared).request["segments"]
    assert isinstance(found, list)
    return found


def complaint(folder: Path, text: str, *further: Path) -> str:
    with pytest.raises(SpreadsheetError) as caught:
        segments(folder, text, *further)
    return str(caught.value)


def long_line(rows: int) -> str:
    lines = ["name,begin [mi],end [mi],renewed_share,curves [mi]"]
    for number in range(rows):
        begin, end = 10 + number / 10, 10 + (number + 1) / 10
        curve = f"{begin + 0.01:.4f} to {end - 0.01:.4f} 2 deg left" if number % 3 == 0 else ""
        lines.append(f"segment {number},{begin:.4f},{end:.4f},0.{number % 10},{curve}")
    return "\n".join(lines)
