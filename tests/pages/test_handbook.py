"""The handbook says what the registry says, and its examples run."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.api.replying import bind
from railrules_api.api.resources import calculation_of
from railrules_api.catalogue import load_rulebook
from railrules_api.domain.fields import slots_of
from railrules_api.rules.registry import RESOURCES
from railrules_api.sheets.mathml import in_words
from tests.pages import generated
from tests.pages.test_pages import BROWSER

if TYPE_CHECKING:
    from pathlib import Path

    from litestar import Litestar
    from litestar.testing import TestClient

    from railrules_api.api.service import Service
    from railrules_api.rules.model import Rule

MAKE = "stale: run python -m tests.pages.generated"


def blocks(site: TestClient[Litestar], name: str) -> list[str]:
    text = site.get(f"/handbook/{name}", headers=BROWSER).text
    return [unescape(block) for block in re.findall(r"<pre[^>]*><code>(.*?)</code></pre>", text, re.DOTALL)]


@pytest.mark.parametrize("rule", RESOURCES, ids=lambda rule: rule.id)
def test_a_rule_is_told_whole(rule: Rule[Any, Any], site: TestClient[Litestar], service: Service) -> None:
    markup = site.get(f"/handbook/rules/{rule.id}", headers=BROWSER).text
    text = unescape(markup)
    assert rule.title in text
    assert rule.summary in text
    assert text.count('class="formula"') == len(rule.formulas)
    assert all(formula.exact or in_words(formula.text) in markup for formula in rule.formulas)
    assert all(caution.text in text for caution in rule.cautions)
    assert all(cite.where in text and service.catalogue.sources[cite.source].title in text for cite in rule.cites)
    for slot in (*slots_of(rule.input), *slots_of(rule.output)):
        assert f"<code>{slot.name}</code>" in text
        assert slot.field.about in text
    for case in generated.worked_cases(service).get(rule.id, []) if rule.id == "thermal.force" else []:
        assert case["title"] in text


def test_the_check_cases_are_current(service: Service) -> None:
    kept = json.loads(generated.CASES.read_text(encoding="utf-8"))
    made = generated.worked_cases(service)
    bare = [{rule: [{**case, "lines": [(line["field"], line["expected"]) for line in case["lines"]]} for case in cases]
             for rule, cases in tree.items()} for tree in (kept, made)]  # fmt: skip
    assert bare[0] == bare[1], MAKE
    for rule, cases in made.items():
        for one, other in zip(cases, kept[rule], strict=True):
            for line, shown in zip(one["lines"], other["lines"], strict=True):
                # another processor may print another last digit
                assert numbers(shown["found"]) == pytest.approx(numbers(line["found"]), rel=1e-5, abs=1e-9), MAKE


def numbers(text: str) -> list[float]:
    return [float(found.replace(",", "")) for found in re.findall(r"-?[\d,]*\.?\d+(?:e[-+]?\d+)?", text) if found.strip(",")]


def test_the_demo_job_is_current() -> None:
    assert generated.JOB.read_text(encoding="utf-8") == generated.job_text(), MAKE


def test_the_bodies_for_curl_are_answered(site: TestClient[Litestar]) -> None:
    calls = [block for block in blocks(site, "calling") if block.startswith("curl")]
    bodies = [body for call in calls for body in re.findall(r"-d '(\{.*?\})'", call, re.DOTALL)]
    assert bodies
    for body in bodies:
        assert site.post("/v1/thermal/force", json=json.loads(body)).status_code == 200


def test_the_python_example_runs(site: TestClient[Litestar], capsys: pytest.CaptureFixture[str]) -> None:
    script = next(block for block in blocks(site, "calling") if block.startswith("from railrules_client"))
    assert 'Client("http://127.0.0.1:8000")' in script
    exec(script.replace('Client("http://127.0.0.1:8000")', "Client.in_process()"), {})  # the page's own words
    assert "lbf" in capsys.readouterr().out


def test_the_rulebook_example_is_a_rulebook(site: TestClient[Litestar], service: Service, tmp_path: Path) -> None:
    text, _, entries = blocks(site, "rulebooks")
    file = tmp_path / "harrow-vale.toml"
    file.write_text(text, encoding="utf-8")
    book = load_rulebook(file, service.catalogue)
    assert book.defaults["plate-pin-every"].si == 4
    assert book.defaults["spike-pattern"].si == "harrow-three"
    choice = json.loads(f"{{{entries}}}")["rulebook"]
    del choice["id"]  # this service has no such house
    job = json.loads(generated.job_text()) | {"rulebook": choice}
    bound = bind(calculation_of("takeoffs"), json.dumps(job).encode(), service)
    assert bound.rulebook.defaults["break-gap-limit"].printed == "2.5"


def test_the_worked_relay_tells_todays_numbers(site: TestClient[Litestar]) -> None:
    text = re.sub(r"\s+", " ", site.get("/handbook/worked-relay", headers=BROWSER).text)
    job = site.get("/static/demo-job.json").json()
    result = site.post("/v1/takeoffs", json=job).json()["result"]
    plan = result["rail"][0]
    assert f"{plan['layout']['field_welds']} field welds join them" in text
    assert f"takes {plan['supply']['strings']} strings" in text
    assert text.count("✗ FAILS") == sum(item["check"]["verdict"] == "fails" for item in result["checks"])
    assert "$" not in text
