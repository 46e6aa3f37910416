"""The command of the service as an operator types it."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from railrules_api.app.command_line import BAD_INPUT, GOOD, main

ROOT = Path(__file__).resolve().parents[2]


def test_the_document_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["spec"]) == GOOD
    assert capsys.readouterr().out == (ROOT / "openapi" / "openapi.json").read_text(encoding="utf-8")


def test_a_network_address_must_be_meant(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["serve", "--host", "0.0.0.0"]) == BAD_INPUT
    assert "--open-to-network" in capsys.readouterr().err


def test_settings_are_listed(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["serve", "--settings"]) == GOOD
    assert "RAILRULES_MAX_BODY_BYTES" in capsys.readouterr().out


def test_a_bad_rulebook_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    book = tmp_path / "house.toml"
    book.write_text(
        '[rulebook]\nid = "harrow-vale"\nedition = "3"\ntitle = "x"\n[[default]]\nid = "no-such"\nvalue = 3\nwhere = "x"\n'
    )
    assert main(["spec", "--rulebook", str(book)]) == BAD_INPUT
    assert "house.toml" in capsys.readouterr().err


def test_a_sample_is_a_job(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sample", "--segments", "3", "--seed", "4"]) == GOOD
    assert len(json.loads(capsys.readouterr().out)["segments"]) == 3
