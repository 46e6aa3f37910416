"""The corpus behind the gate against breaking changes; `make contract`, which needs Node, proves that the gate finds it all."""

from __future__ import annotations

import json
import re
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from openapi_spec_validator import OpenAPIV31SpecValidator

from tests.contract import breaking, changes

CASES = {**changes.BREAKS, **changes.HARMLESS}


@pytest.fixture(scope="module")
def reduced(document: dict[str, Any]) -> dict[str, Any]:
    made = changes.small(document)
    assert not list(OpenAPIV31SpecValidator(made).iter_errors())
    return made


def test_the_corpus_is_large_enough() -> None:
    assert len(changes.BREAKS) >= 30
    assert len(changes.HARMLESS) >= 10
    assert len(CASES) == len(changes.BREAKS) + len(changes.HARMLESS)


@pytest.mark.parametrize("name", CASES)
def test_every_case_is_a_change_that_leaves_a_document(name: str, reduced: dict[str, Any]) -> None:
    made = changes.changed(reduced, CASES[name])
    assert made != reduced
    assert not list(OpenAPIV31SpecValidator(made).iter_errors())


def test_versions_changelog_and_released_documents_agree(document: dict[str, Any]) -> None:
    told = breaking.heads(breaking.CHANGELOG.read_text(encoding="utf-8"))
    assert told
    assert breaking.at_odds(document["info"]["version"], told, breaking.kept(breaking.RELEASED)) == []


@pytest.mark.parametrize(
    ("version", "told", "files", "fault"),
    [
        ("0.1.0", {}, [], "no head for 0.1.0"),
        ("0.1.0", {"0.1.0": "unreleased"}, ["0.1.0"], "document of 0.1.0, which is not released"),
        ("0.1.0", {"0.1.0": "2026-11-25"}, [], "has no document of it"),
        ("0.2.0", {"0.2.0": "unreleased", "0.1.0": "unreleased"}, [], "0.1.0 is unreleased beside 0.2.0"),
        ("0.1.0", {"0.1.0": "unreleased"}, [], None),
        ("0.1.0", {"0.1.0": "2026-11-25"}, ["0.1.0"], None),
        ("0.2.0", {"0.2.0": "unreleased", "0.1.0": "2026-11-25"}, ["0.1.0"], None),
    ],
)
def test_what_does_not_agree_is_told(version: str, told: dict[str, str], files: list[str], fault: str | None) -> None:
    found = breaking.at_odds(version, told, files)
    assert (fault is None and found == []) or (fault is not None and len(found) == 1 and fault in found[0])


def test_the_last_release_is_that_of_the_highest_version(tmp_path: Path) -> None:
    assert breaking.last_released(breaking.kept(tmp_path)) is None
    for version in ("0.9.0", "0.10.0", "0.2.11"):
        (tmp_path / f"openapi-{version}.json").touch()
    assert breaking.last_released(breaking.kept(tmp_path)) == tmp_path / "openapi-0.10.0.json"


def test_a_release_dates_its_head_and_keeps_its_document_once(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    log, version = tmp_path / "CHANGELOG.md", json.loads(breaking.CURRENT.read_text(encoding="utf-8"))["info"]["version"]
    log.write_text(f"## [{version}] - unreleased\n", encoding="utf-8")
    monkeypatch.setattr(breaking, "CHANGELOG", log)
    monkeypatch.setattr(breaking, "RELEASED", tmp_path / "released")
    assert breaking.release(date(2027, 1, 2)) == 0
    assert log.read_text(encoding="utf-8") == f"## [{version}] - 2027-01-02\n"
    assert (tmp_path / f"released/openapi-{version}.json").read_bytes() == breaking.CURRENT.read_bytes()
    assert breaking.release(date(2027, 1, 3)) == 1
    assert "2027-01-03" not in log.read_text(encoding="utf-8")


def test_a_change_of_an_answer_names_its_rule_both_values_and_the_reason() -> None:
    """`### Changed answers` holds lines of the form: rule `id`, case "title": old -> new; why."""
    told = False
    for line in breaking.CHANGELOG.read_text(encoding="utf-8").splitlines():
        if line.startswith("#"):
            told = line.strip() == "### Changed answers"
        elif told and line.startswith("- "):
            assert re.match(r'- rule `[a-z0-9.-]+`, case "[^"]+": .+ -> .+; .+', line), line
