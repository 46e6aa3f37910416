"""The guard of the client's interface passes what is there, and finds each kind of break when one is made."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from tests.client.interface import CLIENT, breaks


def copied(folder: Path) -> Path:
    made = folder / "railrules_client"
    shutil.copytree(CLIENT / "railrules_client", made, ignore=shutil.ignore_patterns("__pycache__", "models.py"))
    shutil.copy(CLIENT / "railrules_client" / "models.py", made)
    shutil.copy(CLIENT / "railrules_client" / "_generated" / "models.py", made / "_generated")
    return made


BREAKS = [
    ("_client.py", "api_key: str | None = None,", "key: str | None = None,", "api_key"),
    ("_client.py", '        application: str = "",\n', "        application: str,\n", "application"),
    ("_client.py", "    def close(self)", "    def shut(self)", "Client.close"),
    ("_takeoffs.py", "    def compare(", "    def set_side_by_side(", "Takeoffs.compare"),
    ("_client.py", "        retries: int = DEFAULT_RETRIES,\n", "", "retries"),
    ("_showing.py", "    def to_pandas(", "    def to_frame(", "Answered.to_pandas"),
    ("tables.py", "    def to_csv(", "    def csv(", "Table.to_csv"),
    ("tables.py", "def write_xlsx(path", "def write_xlsx(where, path", "write_xlsx"),
    ("jobs/reading.py", "def read(job", "def read(path, job", "jobs"),
    ("__init__.py", "    inches,\n", "", "inches"),
    ("_errors.py", "class RefusedError(ProblemError)", "class RefusedError(Exception)", "RefusedError"),
    ("_generated/operations.py", "    def create(\n", "    def make(\n", "TakeoffsResource.create"),
]


def test_nothing_that_users_call_was_taken_away_and_what_is_added_is_no_break(tmp_path: Path) -> None:
    path = copied(tmp_path) / "tables.py"
    path.write_text(path.read_text(encoding="utf-8") + "\n\ndef further() -> None:\n    '''Do more.'''\n", encoding="utf-8")
    assert breaks(tmp_path) == []


def test_each_kind_of_break_is_found(tmp_path: Path) -> None:
    made = copied(tmp_path)
    for file, old, new, _ in BREAKS:
        path = made / file
        text = path.read_text(encoding="utf-8")
        assert old in text
        path.write_text(text.replace(old, new), encoding="utf-8")
    found = breaks(tmp_path)
    for _, old, _, told in BREAKS:
        assert any(told in line for line in found), (old, found)


def test_without_a_kept_interface_nothing_is_said_to_be_whole(tmp_path: Path) -> None:
    with pytest.raises(FileNotFoundError):
        breaks(kept=tmp_path)
