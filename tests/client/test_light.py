"""The client stays light: what it loads, what it needs, and that the README is true."""

from __future__ import annotations

import doctest
import re
import subprocess
import sys
import tomllib
import zipfile
from importlib import metadata
from pathlib import Path

import railrules_client
from packaging.requirements import Requirement
from railrules_client import _helpers, _units, comparing, jobs, tables
from railrules_client.command_line import report

from tests.client.conftest import ROOT

HEAVY = {"pint", "numpy", "asyncio.windows_events", "railrules_api", "litestar", "pandas", "inspect_ast"}


def loaded(statement: str) -> set[str]:
    code = f"import sys\n{statement}\nprint(*sys.modules)"
    command = [sys.executable, "-I", "-c", f"import sys; sys.path.insert(0, {str(ROOT / 'client')!r})\n{code}"]
    return set(subprocess.run(command, capture_output=True, text=True, check=True).stdout.split())


def test_importing_the_client_loads_little_more_than_its_http_library() -> None:
    alone, with_client = loaded("import httpx"), loaded("import railrules_client")
    assert len(with_client) <= 1.2 * len(alone)
    more = {name.partition(".")[0] for name in with_client - alone}
    # of the standard library, msgspec and our own modules take these; platform on Python 3.13 only
    standard = {"difflib", "heapq", "_heapq", "platform"}
    assert more <= {"railrules_client", "msgspec", "typing_extensions"} | standard
    assert not with_client & HEAVY


def test_it_needs_two_libraries() -> None:
    project = tomllib.loads((ROOT / "client" / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert sorted(re.split(r"[<>=]", name)[0] for name in project["dependencies"]) == ["httpx", "msgspec"]


def needed_by(name: str, found: set[str]) -> set[str]:
    """Return what a distribution asks for without extras here, and what that asks for in turn."""
    for line in metadata.requires(name) or ():
        wanted = Requirement(line)
        if (wanted.marker is None or wanted.marker.evaluate({"extra": ""})) and wanted.name.lower() not in found:
            found.add(wanted.name.lower())
            needed_by(wanted.name, found)
    return found


def test_it_brings_at_most_eight_distributions() -> None:
    found = needed_by("railrules-client", set())
    assert {"httpx", "msgspec", "h11"} <= found
    assert len(found) <= 8, found


def test_the_wheel_is_pure_python_and_holds_the_client_alone(tmp_path: Path) -> None:
    command = [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(tmp_path)]
    subprocess.run(command, cwd=ROOT / "client", check=True, capture_output=True)
    (wheel,) = tmp_path.iterdir()
    assert wheel.name.endswith("-py3-none-any.whl")
    assert wheel.stat().st_size < 500_000
    with zipfile.ZipFile(wheel) as archive:
        names = archive.namelist()
        told = archive.read(next(name for name in names if name.endswith(".dist-info/WHEEL"))).decode()
        entries = archive.read(next(name for name in names if name.endswith("entry_points.txt"))).decode()
    assert "Root-Is-Purelib: true" in told
    assert "railrules = railrules_client.command_line.running:main" in entries
    inside = {name for name in names if ".dist-info/" not in name}
    assert all(name.startswith("railrules_client/") and name.endswith((".py", "py.typed")) for name in inside)
    assert "railrules_client/py.typed" in inside


def test_what_most_scripts_do_not_use_is_loaded_when_it_is_used() -> None:
    lazy = {
        f"railrules_client.{name}"
        for name in ("tables", "comparing", "jobs", "telemetry", "command_line", "_bulk", "_bulk_requests", "_progress")
    }
    assert not loaded("import railrules_client") & lazy


def test_the_version_is_said_once() -> None:
    project = tomllib.loads((ROOT / "client" / "pyproject.toml").read_text(encoding="utf-8"))
    assert project["tool"]["hatch"]["version"]["path"] == "railrules_client/_version.py"
    assert railrules_client.__version__ == "0.1.0"


def test_docstrings_and_readme_run() -> None:
    for module in (railrules_client, _helpers, _units, tables, comparing, jobs, jobs.spreadsheets, jobs.cells, report):
        assert doctest.testmod(module).failed == 0
    found = doctest.testfile(str(ROOT / "client" / "README.md"), module_relative=False)
    assert found.attempted > 10
    assert found.failed == 0


def test_everything_public_is_listed_and_there() -> None:
    assert railrules_client.__all__ == sorted(railrules_client.__all__)
    for name in [*railrules_client.__all__, *vars(railrules_client.models)["__all__"]]:
        holder = railrules_client if name in railrules_client.__all__ else railrules_client.models
        assert hasattr(holder, name)
