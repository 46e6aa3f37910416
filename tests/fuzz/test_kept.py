"""The fuzz targets over their seeds and over what fuzzing has found, so that a fault that was found once stays away."""

from __future__ import annotations

import base64
from pathlib import Path

import pytest

from tests.fuzz.targets import TARGETS

LEAST = {"body": 200, "header": 10, "stream": 4, "connection": 30}


@pytest.mark.parametrize("name", TARGETS)
def test_seeds(name: str) -> None:
    one_input, seeds = TARGETS[name]
    count = 0
    for seed in seeds():
        one_input(seed)
        count += 1
    assert count >= LEAST[name]


def test_found() -> None:
    for line in (Path(__file__).parent / "found.txt").read_text().splitlines():
        if line and not line.startswith("#"):
            name, _, found = line.partition(" ")
            TARGETS[name][0](base64.b64decode(found))
