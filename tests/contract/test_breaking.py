"""The corpus behind the gate against breaking changes; `make contract`, which needs Node, proves that the gate finds it all."""

from __future__ import annotations

import re
from typing import Any

import pytest
from openapi_spec_validator import OpenAPIV31SpecValidator

from tests.contract import breaking

CASES = {**breaking.BREAKS, **breaking.HARMLESS}


@pytest.fixture(scope="module")
def reduced(document: dict[str, Any]) -> dict[str, Any]:
    made = breaking.small(document)
    assert not list(OpenAPIV31SpecValidator(made).iter_errors())
    return made


def test_the_corpus_is_large_enough() -> None:
    assert len(breaking.BREAKS) >= 30
    assert len(breaking.HARMLESS) >= 10
    assert len(CASES) == len(breaking.BREAKS) + len(breaking.HARMLESS)


@pytest.mark.parametrize("name", CASES)
def test_every_case_is_a_change_that_leaves_a_document(name: str, reduced: dict[str, Any]) -> None:
    made = breaking.changed(reduced, CASES[name])
    assert made != reduced
    assert not list(OpenAPIV31SpecValidator(made).iter_errors())


def test_the_committed_version_has_its_head_in_the_changelog(document: dict[str, Any]) -> None:
    text = breaking.CHANGELOG.read_text(encoding="utf-8")
    assert re.search(rf"^## \[?{re.escape(document['info']['version'])}\b", text, re.MULTILINE)


def test_a_change_of_an_answer_names_its_rule_both_values_and_the_reason() -> None:
    """`### Changed answers` holds lines of the form: rule `id`, case "title": old -> new; why."""
    told = False
    for line in breaking.CHANGELOG.read_text(encoding="utf-8").splitlines():
        if line.startswith("#"):
            told = line.strip() == "### Changed answers"
        elif told and line.startswith("- "):
            assert re.match(r'- rule `[a-z0-9.-]+`, case "[^"]+": .+ -> .+; .+', line), line
