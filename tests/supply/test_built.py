"""What is handed out: the same tree gives the same bytes, wherever and whenever it is built, and they hold what they should."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tarfile
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
EPOCH = "1760000000"
LEFT_OUT = shutil.ignore_patterns(
    ".git", ".venv", "build", "dist", "node_modules", "__pycache__", ".*_cache", ".hypothesis", ".coverage*"
)


def built(source: Path, into: Path) -> dict[str, bytes]:
    environment = {**os.environ, "SOURCE_DATE_EPOCH": EPOCH}
    for project in (source, source / "client"):
        command = [sys.executable, "-m", "hatchling", "build", "--directory", str(into)]
        subprocess.run(command, cwd=project, env=environment, check=True, capture_output=True)
    return {file.name: file.read_bytes() for file in sorted(into.iterdir())}


@pytest.fixture(scope="module")
def twice(tmp_path_factory: pytest.TempPathFactory) -> list[dict[str, bytes]]:
    found = []
    for turn in range(2):
        folder = tmp_path_factory.mktemp(f"built-{turn}")
        before = os.umask(0o022 if turn else 0o077)
        try:
            # copied files are new: their times, and their modes beyond those of the owner, differ from turn to turn
            shutil.copytree(ROOT, folder / "source", ignore=LEFT_OUT, copy_function=shutil.copyfile)
            found.append(built(folder / "source", folder / "out"))
        finally:
            os.umask(before)
    return found


def test_two_builds_have_the_same_bytes(twice: list[dict[str, bytes]]) -> None:
    one, other = twice
    kinds = sorted((name.partition("-")[0], Path(name).suffix) for name in one)
    assert kinds == [("railrules", ".gz"), ("railrules", ".whl"), ("railrules_client", ".gz"), ("railrules_client", ".whl")]
    assert one.keys() == other.keys()
    assert [name for name in one if one[name] != other[name]] == []


def test_the_wheel_of_the_service_holds_code_data_and_licence_and_nothing_else(
    twice: list[dict[str, bytes]], tmp_path: Path
) -> None:
    name, body = next((name, body) for name, body in twice[0].items() if name.startswith("railrules-") and name.endswith(".whl"))
    (tmp_path / name).write_bytes(body)
    with zipfile.ZipFile(tmp_path / name) as wheel:
        names = wheel.namelist()
    tops = {entry.partition("/")[0] for entry in names}
    assert {top for top in tops if not top.endswith(".dist-info")} == {"railrules_api"}
    kept = {str(file.relative_to(ROOT)) for file in (ROOT / "railrules_api/data").rglob("*") if file.is_file()}
    assert kept
    assert kept <= {*names}
    assert any(entry.endswith(".dist-info/licenses/LICENSE") for entry in names)


def test_the_source_distribution_holds_the_tests(twice: list[dict[str, bytes]], tmp_path: Path) -> None:
    name, body = next((name, body) for name, body in twice[0].items() if name.startswith("railrules-") and name.endswith(".gz"))
    (tmp_path / name).write_bytes(body)
    with tarfile.open(tmp_path / name) as source:
        names = {entry.partition("/")[2] for entry in source.getnames()}
    assert {"requirements.lock", "pyproject.toml", "openapi/openapi.json", "tests/supply/test_built.py"} <= names
