"""A copy of the data folder to spoil, and the good catalogue."""

from __future__ import annotations

import csv
import shutil
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

import railrules_api
from railrules_api.catalogue import load

if TYPE_CHECKING:
    from railrules_api.catalogue import Catalogue

DATA = Path(railrules_api.__file__).parent / "data"


class Copy:
    """A copy of the data folder in which one thing at a time is made wrong."""

    def __init__(self, directory: Path) -> None:
        """Copy the data folder."""
        self.directory = directory
        shutil.copytree(DATA, directory)

    def replace(self, file: str, old: str, new: str) -> None:
        """Replace the first occurrence of a text, which must be there."""
        path = self.directory / file
        text = path.read_text(encoding="utf-8")
        assert old in text, f"{old!r} is not in {file}"
        path.write_text(text.replace(old, new, 1), encoding="utf-8")

    def append(self, file: str, text: str) -> None:
        """Put a text at the end of a file."""
        path = self.directory / file
        path.write_text(path.read_text(encoding="utf-8") + text, encoding="utf-8")

    def cell(self, file: str, row: str, column: str, value: str) -> None:
        """Set a cell of a CSV file."""
        path = self.directory / file
        with path.open(encoding="utf-8", newline="") as stream:
            lines = list(csv.DictReader(stream))
        next(line for line in lines if line["id"] == row)[column] = value
        with path.open("w", encoding="utf-8", newline="") as stream:
            writer = csv.DictWriter(stream, list(lines[0]))
            writer.writeheader()
            writer.writerows(lines)


@pytest.fixture
def copy(tmp_path: Path) -> Copy:
    return Copy(tmp_path / "data")


@pytest.fixture(scope="session")
def catalogue() -> Catalogue:
    return load()
