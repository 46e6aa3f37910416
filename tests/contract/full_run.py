"""The long contract run: Schemathesis with every check and every phase, in process and over HTTP, a new seed each time.

    python -m tests.contract.full_run [SEED]

It fails when a check fails, and when fewer cases than `LEAST_CASES` were made on either way.
"""

# ruff: noqa: T201  a command tells what it found
from __future__ import annotations

import re
import secrets
import subprocess
import sys
import time
import warnings
from collections import Counter
from pathlib import Path
from typing import Any

import schemathesis
from schemathesis.config import SchemathesisConfig
from schemathesis.engine import from_schema

from railrules_api.api.app import create_app
from railrules_api.api.service import start
from tests.contract.serving import running_service

LEAST_CASES = 10_000
EXAMPLES = 20
SHOWN = 5
_CASES = re.compile(r"^\s*(\d+) generated", re.MULTILINE)
ROOT = Path(__file__).parents[2]
CONFIGURATION = Path(__file__).with_name("schemathesis.toml")


def _events(seed: int) -> Any:
    config = SchemathesisConfig.from_path(CONFIGURATION)
    config.update(seed=seed, max_failures=None)
    schema = schemathesis.openapi.from_asgi("/openapi.json", create_app(start()), config=config)
    schema.config.update(continue_on_failure=True)
    schema.config.generation.update(max_examples=EXAMPLES, database="none")
    return from_schema(schema).execute()


def in_process(seed: int) -> tuple[int, int]:
    """Run without a socket; return how many cases were made and how many checks failed."""
    cases: Counter[str] = Counter()
    checks, failed = 0, []
    for event in _events(seed):
        kind = type(event).__name__
        if kind == "ScenarioFinished":
            cases[event.phase.value] += len(event.recorder.cases)
            for case, found in event.recorder.checks.items():
                checks += len(found)
                label = event.recorder.cases[case].value.operation.label
                failed += [f"{label}: {check.name}: {check.failure_info}" for check in found if check.failure_info]
        elif kind in ("NonFatalError", "FatalError"):
            failed.append(f"{kind}: {event}")
    for told in failed[:SHOWN]:
        print(told[:1500])
    phases = ", ".join(f"{name} {count}" for name, count in cases.items())
    print(f"in process, seed {seed}: {cases.total()} cases ({phases}), {checks} checks, {len(failed)} failed", flush=True)
    return cases.total(), len(failed)


def over_http(seed: int) -> tuple[int, int]:
    """Run against a server; return how many cases were made and the command's exit status."""
    with running_service() as address:
        command = [
            str(Path(sys.executable).with_name("schemathesis")), "--config-file", str(CONFIGURATION.relative_to(ROOT)),
            "run", f"{address}/openapi.json", "--max-examples", str(EXAMPLES), "--seed", str(seed), "--workers", "2",
            "--generation-database", "none", "--continue-on-failure", "--warnings", "off", "--no-color",
        ]  # fmt: skip
        done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    print(done.stdout[-6000:], done.stderr[-2000:])
    found = _CASES.search(done.stdout)
    cases = int(found.group(1)) if found else 0
    print(f"over HTTP, seed {seed}: {cases} cases, exit status {done.returncode}", flush=True)
    return cases, done.returncode


def main(arguments: list[str]) -> int:
    """Run both ways; return 0 when nothing was found."""
    # the client that Schemathesis brings for ASGI leaves its streams to the garbage collector
    warnings.simplefilter("ignore", ResourceWarning)
    seed = int(arguments[0]) if arguments else secrets.randbelow(2**32)
    print(f"seed {seed}", flush=True)
    good = True
    for way in (in_process, over_http):
        begun = time.monotonic()
        cases, failed = way(seed)
        print(f"{time.monotonic() - begun:.0f} s")
        good = good and not failed
        if cases < LEAST_CASES:
            print(f"fewer than {LEAST_CASES} cases were made", file=sys.stderr)
            good = False
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
