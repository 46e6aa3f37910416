"""The long contract run: a server, Schemathesis over HTTP with every check and every phase, a new seed each time.

    python -m tests.contract.full_run [SEED]

It fails when a check fails, and when fewer cases than `LEAST_CASES` were made.
"""

# ruff: noqa: T201  a command tells what it found
from __future__ import annotations

import re
import secrets
import subprocess
import sys
from pathlib import Path

from tests.contract.serving import running_service

LEAST_CASES = 10_000
EXAMPLES = "20"
_CASES = re.compile(r"^\s*(\d+) generated", re.MULTILINE)
ROOT = Path(__file__).parents[2]


def main(arguments: list[str]) -> int:
    """Run; return 0 when nothing was found."""
    seed = arguments[0] if arguments else str(secrets.randbelow(2**32))
    print(f"seed {seed}", flush=True)
    with running_service() as address:
        command = [
            str(Path(sys.executable).with_name("schemathesis")), "--config-file", "tests/contract/schemathesis.toml",
            "run", f"{address}/openapi.json", "--max-examples", EXAMPLES, "--seed", seed, "--workers", "2",
            "--generation-database", "none", "--continue-on-failure", "--warnings", "off", "--no-color",
        ]  # fmt: skip
        done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    print(done.stdout[-6000:], done.stderr[-2000:])
    found = _CASES.search(done.stdout)
    cases = int(found.group(1)) if found else 0
    print(f"seed {seed}: {cases} cases, exit status {done.returncode}")
    if cases < LEAST_CASES:
        print(f"fewer than {LEAST_CASES} cases were made", file=sys.stderr)
        return 1
    return done.returncode


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
