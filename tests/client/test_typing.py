"""Type checkers on users' scripts: a good one passes, every mistake of a wrong one is found, and nothing is left untyped."""

from __future__ import annotations

import asyncio
import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from railrules_client import Client

from tests.client import sample_script
from tests.client.conftest import ROOT
from tests.support.demo import DEMO, demo_job

HERE = Path(__file__).parent
WRONG = {
    number
    for number, line in enumerate((HERE / "wrong_script.py").read_text(encoding="utf-8").splitlines(), 1)
    if "# wrong:" in line
}
BIN = Path(sys.executable).parent


def mypy(tmp_path: Path, *arguments: str) -> str:
    (tmp_path / "mypy.ini").write_text("[mypy]\nstrict = true\npython_version = 3.11\n")
    command = [sys.executable, "-m", "mypy", "--config-file", str(tmp_path / "mypy.ini"), "--no-incremental", *arguments]
    environment = {**os.environ, "MYPYPATH": str(ROOT / "client")}
    return subprocess.run(command, capture_output=True, text=True, check=False, env=environment, cwd=tmp_path).stdout


@pytest.fixture(scope="module")
def pyright() -> list[str]:
    """Return the command of pyright.

    It is a Node program behind a Python package. Where there is Node it has to run; mypy's tests of the same files always do.
    """
    if shutil.which("node") is None:
        # the suite must pass with Python alone; `make check` fails without Node, so what CI checks never comes this way
        pytest.skip("pyright is a Node program, and there is no Node")
    found = BIN / "pyright"
    subprocess.run([found, "--version"], capture_output=True, check=True)
    return [str(found)]


def checked(command: list[str], tmp_path: Path, *names: str) -> list[dict[str, object]]:
    """Return pyright's complaints about files of this folder, in its strict mode."""
    for name in names:
        shutil.copy(HERE / name, tmp_path / name)
    settings = {
        "include": list(names),
        "typeCheckingMode": "strict",
        "pythonVersion": "3.11",
        "extraPaths": [str(ROOT / "client")],
    }
    (tmp_path / "pyrightconfig.json").write_text(json.dumps(settings))
    run = subprocess.run(
        [*command, "-p", str(tmp_path), "--pythonpath", sys.executable, "--outputjson"],
        capture_output=True,
        text=True,
        check=False,
    )
    found: list[dict[str, object]] = json.loads(run.stdout)["generalDiagnostics"]
    return found


def test_mypy_strict_passes_the_client_and_a_users_script(tmp_path: Path) -> None:
    found = mypy(tmp_path, str(ROOT / "client" / "railrules_client"), str(HERE / "sample_script.py"))
    assert found.startswith("Success"), found


def test_mypy_finds_every_mistake(tmp_path: Path) -> None:
    found = mypy(tmp_path, str(HERE / "wrong_script.py"))
    assert {int(number) for number in re.findall(r"wrong_script\.py:(\d+): error", found)} == WRONG, found


def test_pyright_strict_passes_a_users_script(pyright: list[str], tmp_path: Path) -> None:
    assert checked(pyright, tmp_path, "sample_script.py") == []


def test_pyright_strict_passes_the_client(pyright: list[str], tmp_path: Path) -> None:
    (tmp_path / "client").symlink_to(ROOT / "client")
    settings = {
        "include": ["client/railrules_client", "client/generator"],
        "typeCheckingMode": "strict",
        "pythonVersion": "3.11",
        "extraPaths": ["client"],  # the same files by the same path, or each module is read twice and no circle is seen
        "reportImportCycles": "error",
    }
    (tmp_path / "pyrightconfig.json").write_text(json.dumps(settings))
    command = [*pyright, "-p", str(tmp_path), "--pythonpath", sys.executable]
    run = subprocess.run(command, capture_output=True, text=True, check=False)
    assert run.returncode == 0, run.stdout
    assert "0 errors" in run.stdout


def test_pyright_finds_every_mistake(pyright: list[str], tmp_path: Path) -> None:
    found = checked(pyright, tmp_path, "wrong_script.py")
    lines = {item["range"]["start"]["line"] + 1 for item in found if item["severity"] == "error"}  # type: ignore[index]
    assert lines == WRONG, found


def test_nothing_public_is_untyped_or_undocumented(pyright: list[str], tmp_path: Path) -> None:
    environment = {
        **os.environ,
        "PYTHONPATH": str(ROOT / "client"),
        "VIRTUAL_ENV": str(BIN.parent),
        "PATH": f"{BIN}{os.pathsep}{os.environ['PATH']}",
    }
    command = [*pyright, "--verifytypes", "railrules_client", "--ignoreexternal", "--outputjson"]
    run = subprocess.run(command, capture_output=True, text=True, check=False, env=environment, cwd=tmp_path)
    found = json.loads(run.stdout)["typeCompleteness"]
    assert found["completenessScore"] == 1
    assert found["missingFunctionDocStringCount"] == 0
    assert found["missingClassDocStringCount"] == 0


def test_the_users_script_runs() -> None:
    with Client.in_process() as client:
        assert sample_script.hot_force(client) == pytest.approx(90.9, abs=0.1)
        assert sample_script.ties_in_a_mile(client) == 3250
        assert sample_script.why(client) == ["/neutral_temperature"] or sample_script.why(client)[0].startswith("/")
        job = demo_job()
        assert len(set(sample_script.as_frames(client, job))) == 1
        assert sample_script.what_changes(client, DEMO)
        assert sample_script.many(client, [job, {}]) == (1, 1)
    assert asyncio.run(sample_script.many_awaited([job])) == 1
    assert asyncio.run(sample_script.heaviest())
    assert str(sample_script.own_words()) == "2.25 in"
