"""The client stays light: what it loads, what it needs, and that the README is true."""

from __future__ import annotations

import doctest
import re
import subprocess
import sys
import tomllib

import railrules_client
from railrules_client import _helpers, _units

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


def test_the_version_is_said_once() -> None:
    project = tomllib.loads((ROOT / "client" / "pyproject.toml").read_text(encoding="utf-8"))
    assert project["tool"]["hatch"]["version"]["path"] == "railrules_client/_version.py"
    assert railrules_client.__version__ == "0.1.0"


def test_docstrings_and_readme_run() -> None:
    for module in (railrules_client, _helpers, _units):
        assert doctest.testmod(module).failed == 0
    found = doctest.testfile(str(ROOT / "client" / "README.md"), module_relative=False)
    assert found.attempted > 10
    assert found.failed == 0


def test_everything_public_is_listed_and_there() -> None:
    assert railrules_client.__all__ == sorted(railrules_client.__all__)
    for name in [*railrules_client.__all__, *vars(railrules_client.models)["__all__"]]:
        holder = railrules_client if name in railrules_client.__all__ else railrules_client.models
        assert hasattr(holder, name)
