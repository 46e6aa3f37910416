"""What importing the client costs against importing its HTTP library alone: CPU time of fresh processes, in turns, in one run."""

from __future__ import annotations

import resource
import statistics
import subprocess
import sys
from typing import NamedTuple

_ROUNDS = 9


class ImportCost(NamedTuple):
    """CPU seconds of an import beyond those of an empty process, and modules loaded."""

    http_alone: float
    client: float
    modules: int


def _seconds(statement: str) -> float:
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run([sys.executable, "-I", "-c", statement], check=True)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def import_cost() -> ImportCost:
    """Measure it."""
    statements = ("pass", "import httpx", "import railrules_client")
    for statement in statements:  # byte code is written the first time
        _seconds(statement)
    found = [[_seconds(statement) for statement in statements] for _ in range(_ROUNDS)]
    empty, http, client = (statistics.median(column) for column in zip(*found, strict=True))
    code = "import sys, railrules_client; print(len(sys.modules))"
    modules = subprocess.run([sys.executable, "-I", "-c", code], capture_output=True, text=True, check=True)
    return ImportCost(http - empty, client - empty, int(modules.stdout))
