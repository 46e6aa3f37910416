"""The users' stories of `openapi/workflows`, run by `redocly respect` against a service of our own.

python -m tests.contract.workflows
"""

from __future__ import annotations

import subprocess
import sys

from tests.contract.breaking import REDOCLY, ROOT, environment
from tests.contract.serving import running_service


def main() -> int:
    """Run them all; return 0 when every step did what it should."""
    files = sorted((ROOT / "openapi/workflows").glob("*.arazzo.yaml"))
    with running_service() as address:
        command = [str(REDOCLY), "respect", *map(str, files), "--server", f"railrules={address}"]
        done = subprocess.run(command, cwd=ROOT / "openapi/lint", env=environment(), check=False)
    return done.returncode


if __name__ == "__main__":
    sys.exit(main())
