"""The examples of the handbook, run as they stand against a service: by a shell with curl, by a TypeScript compiler and Node."""

from __future__ import annotations

import json
import re
import subprocess
from html import unescape
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from railrules_api.pages.assets import read

if TYPE_CHECKING:
    from collections.abc import Sequence

pytestmark = pytest.mark.e2e
COMPILER = Path(__file__).parent / "node_modules/typescript/bin/tsc"
HOST = "http://127.0.0.1:8000"


def examples(begin: str, address: str) -> list[str]:
    """Return the examples that begin so, as a reader would copy them, for a service at an address."""
    blocks = re.findall(r"<pre[^>]*><code>(.*?)</code></pre>", read("text/calling.html").decode(), re.DOTALL)
    return [text.replace(HOST, address) for block in blocks if (text := unescape(block)).startswith(begin)]


def run(command: Sequence[str], folder: Path) -> str:
    done = subprocess.run(command, check=False, capture_output=True, text=True, timeout=120, cwd=folder)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def test_curl(address: str, tmp_path: Path) -> None:
    first, job = examples("curl", address)
    assert json.loads(run(("bash", "-ec", first), tmp_path))["result"]["force"]["unit"] == "lbf"
    run(("bash", "-ec", job), tmp_path)
    assert (tmp_path / "chart-1.svg").read_text(encoding="utf-8").startswith("<svg")
    assert (tmp_path / "sheet.html").read_text(encoding="utf-8").startswith("<!doctype html>")


def test_typescript(address: str, tmp_path: Path) -> None:
    (script,) = examples("type", address)
    (tmp_path / "package.json").write_text('{"type": "module"}', encoding="utf-8")
    (tmp_path / "example.ts").write_text(f"{script}\nexport {{}};\n", encoding="utf-8")
    strict = ("--strict", "--noUncheckedIndexedAccess", "--target", "es2022", "--module", "nodenext", "--lib", "es2022,dom")
    run(("node", str(COMPILER), *strict, "example.ts"), tmp_path)
    assert re.match(r"\d[\d.]* lbf \S", run(("node", "example.js"), tmp_path))
