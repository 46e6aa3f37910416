"""Fuzz one of the readers of what callers send with atheris: `make fuzz` does all of them.

    python -m tests.fuzz TARGET ARGUMENTS... FOLDER

Arguments are libFuzzer's; the folder holds the corpus. What a target finds goes into `found.txt`, in base64 behind its name.
"""

from __future__ import annotations

import hashlib
import sys
from pathlib import Path

import atheris  # type: ignore[import-untyped, import-not-found, unused-ignore]

with atheris.instrument_imports(include=["railrules_api.api", "railrules_api.app.serving"]):
    from tests.fuzz import corpus
    from tests.fuzz.target import service
    from tests.fuzz.targets import TARGETS


def main() -> None:
    """Write the seeds and what was kept into the corpus folder and search."""
    name = sys.argv.pop(1)
    one_input, seeds = TARGETS[name]
    folder = Path(sys.argv[-1])
    folder.mkdir(parents=True, exist_ok=True)
    for seed in (*seeds(), *corpus.kept(name)):
        (folder / hashlib.sha256(seed).hexdigest()[:16]).write_bytes(seed)
    service()
    atheris.Setup(sys.argv, one_input)
    atheris.Fuzz()


main()
