"""The fuzz targets over their seeds and over what fuzzing has found, so that a fault that was found once stays away."""

from __future__ import annotations

import base64
from pathlib import Path

import pytest

from tests.fuzz import corpus
from tests.fuzz.targets import TARGETS

LEAST = {"body": 200, "header": 10, "stream": 4, "arrow": 8, "connection": 30}


@pytest.mark.parametrize("name", TARGETS)
def test_seeds(name: str) -> None:
    one_input, seeds = TARGETS[name]
    count = 0
    for seed in seeds():
        one_input(seed)
        count += 1
    assert count >= LEAST[name]


@pytest.mark.parametrize("name", TARGETS)
def test_corpus(name: str) -> None:
    """What a million runs left, put to the target again."""
    inputs = list(corpus.kept(name))
    for found in inputs:
        TARGETS[name][0](found)
    assert len(inputs) >= LEAST[name]


def test_a_corpus_is_kept_as_it_is(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(corpus, "FOLDER", tmp_path / "kept")
    (tmp_path / "inputs").mkdir()
    for name, found in (("b", b"\x00"), ("a", b"")):
        (tmp_path / "inputs" / name).write_bytes(found)
    assert corpus.keep("body", tmp_path / "inputs") == 2
    once = (tmp_path / "kept/body.zip").read_bytes()
    assert list(corpus.kept("body")) == [b"", b"\x00"]
    corpus.keep("body", tmp_path / "inputs")
    assert (tmp_path / "kept/body.zip").read_bytes() == once


def test_found() -> None:
    for line in (Path(__file__).parent / "found.txt").read_text().splitlines():
        if line and not line.startswith("#"):
            name, _, found = line.partition(" ")
            TARGETS[name][0](base64.b64decode(found))
