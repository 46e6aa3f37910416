"""The fuzz target over its seeds and over what fuzzing has found, so that a fault that was found once stays away."""

from __future__ import annotations

import base64
from pathlib import Path

from tests.fuzz.target import one_input, seeds


def test_seeds() -> None:
    count = 0
    for seed in seeds():
        one_input(seed)
        count += 1
    assert count > 200


def test_found() -> None:
    for line in (Path(__file__).parent / "found.txt").read_text().splitlines():
        if line and not line.startswith("#"):
            one_input(base64.b64decode(line))
