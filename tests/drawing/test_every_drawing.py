"""What holds for every drawing, whatever it shows: the check cases of all rules that are drawn, and the demo job."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.drawing.registry import DRAWINGS, JOB_DRAWINGS
from railrules_api.drawing.sheet import HEIGHT, STYLE, STYLE_HASH, WIDTH, round_steps
from railrules_api.rules.registry import BY_ID
from tests.drawing.drawn import SVG, answered, job_body, tree, words
from tests.test_check_cases import cases, label

if TYPE_CHECKING:
    from xml.etree.ElementTree import Element

    from railrules_api.api.service import Service

CASES = [case for case in cases() if case["rule"] in DRAWINGS]
NUMBER = re.compile(r"-?\d+(?:\.\d+)?")


def looks_right(text: str) -> Element:
    root = tree(text)
    assert root.tag == f"{SVG}svg"
    assert root.get("viewBox") == f"0 0 {WIDTH:g} {HEIGHT:g}"
    assert root.find(f"{SVG}title") is not None
    assert root.find(f"{SVG}desc") is not None
    assert root.findtext(f"{SVG}style") == STYLE
    assert "nan" not in text.lower().replace("name", "")
    assert not re.search(r"\binf\b", text)
    for item in root.iter(f"{SVG}text"):
        assert 0.0 <= float(item.get("x", "")) <= WIDTH, "".join(item.itertext())
        assert 0.0 <= float(item.get("y", "")) <= HEIGHT, "".join(item.itertext())
    for item in root.iter(f"{SVG}path"):
        for number in NUMBER.findall(item.get("d", "")):
            assert -WIDTH <= float(number) <= 2 * WIDTH
    assert not any(item.get("style") for item in root.iter()), "a strict policy would not let it show"
    return root


@pytest.mark.parametrize("case", CASES, ids=label)
def test_a_drawing_of_every_check_case(case: dict[str, Any], service: Service) -> None:
    for units in ("us", "si"):
        given, found, system = answered(service, case["rule"], {**case["inputs"], "units": units})
        text = DRAWINGS[case["rule"]](given, found, system)
        looks_right(text)
        assert text == DRAWINGS[case["rule"]](given, found, system)


@pytest.mark.parametrize("drawing", list(JOB_DRAWINGS))
@pytest.mark.parametrize("units", ["us", "si"])
def test_the_demo(drawing: str, units: str, service: Service) -> None:
    given, found, system = answered(service, "takeoffs", job_body(units=units))
    for sheet in (1, 2, 3):
        text = JOB_DRAWINGS[drawing](given, found, system, sheet)
        root = looks_right(text)
        assert given.name in " ".join(words(root))
        assert text == JOB_DRAWINGS[drawing](given, found, system, sheet)


def test_names_from_outside_stay_words(service: Service) -> None:
    name = '<script>alert("1")</script> & ]]>'
    body = job_body(name=name)
    body["segments"][0]["features"][0]["name"] = name
    given, found, system = answered(service, "takeoffs", body)
    for draw in JOB_DRAWINGS.values():
        text = draw(given, found, system, 1)
        root = looks_right(text)
        assert "<script" not in text
        assert not list(root.iter(f"{SVG}script"))


def test_every_rule_in_the_registry_of_drawings_is_a_rule() -> None:
    assert set(DRAWINGS) <= set(BY_ID)


def test_the_policy_names_the_style() -> None:
    assert STYLE_HASH.startswith("sha256-")
    assert "prefers-color-scheme:dark" in STYLE
    assert len(STYLE_HASH) == len("sha256-") + 44


@pytest.mark.parametrize(("low", "high"), [(0.0, 1e-9), (-3.2, 7.9), (1e6, 1.0001e6), (5.0, 5.0), (-1e-3, 0.0)])
def test_round_steps_cover_the_range(low: float, high: float) -> None:
    steps = round_steps(low, high, 6)
    assert steps[0] <= low + 1e-9 * max(1.0, abs(low))
    assert steps[-1] >= high - 1e-9 * max(1.0, abs(high))
    assert 2 <= len(steps) <= 10
