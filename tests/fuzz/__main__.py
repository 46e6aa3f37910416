"""Fuzz the decoder with atheris: `make fuzz`. Arguments are libFuzzer's; what it finds goes into `found.txt`, in base64."""

from __future__ import annotations

import hashlib
import sys
from pathlib import Path

import atheris  # type: ignore[import-untyped, import-not-found, unused-ignore]

with atheris.instrument_imports(include=["railrules_api.api"]):
    from tests.fuzz.target import one_input, seeds, service


def main() -> None:
    """Write the seeds into the corpus folder, which is the last argument, and search."""
    folder = Path(sys.argv[-1])
    folder.mkdir(parents=True, exist_ok=True)
    for seed in seeds():
        (folder / hashlib.sha256(seed).hexdigest()[:16]).write_bytes(seed)
    service()
    atheris.Setup(sys.argv, one_input)
    atheris.Fuzz()


main()
