"""The diagrams agree with the numbers of the rules they belong to."""

from __future__ import annotations

import math
import re
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.domain.slip import LAWS, Law, Restraint
from railrules_api.drawing import buckling_path, end_diagram, laying_chart
from railrules_api.drawing.plot import Plot
from tests.drawing.drawn import SVG, answered, tree, words
from tests.test_check_cases import cases

if TYPE_CHECKING:
    from railrules_api.api.service import Service

AXIAL = 1.8e9


@pytest.mark.parametrize("law", LAWS)
@pytest.mark.parametrize("force", [0.0, 2e4, 6e5])
def test_movement_is_the_integral_of_what_is_missing_of_the_force(law: Law, force: float) -> None:
    end = end_diagram.End.of(force, AXIAL, Restraint(law, 6000.0, 4e6))
    far = end.slip.slip_length + 40 * end.slip.decay_length + 1.0
    steps = 20_000
    width = far / steps
    missing = math.fsum((1.0 - end.share((index + 0.5) * width)) * force / AXIAL * width for index in range(steps))
    assert end.movement(0.0) == pytest.approx(end.slip.movement, rel=1e-9, abs=1e-15)
    assert missing == pytest.approx(end.slip.movement, rel=1e-4, abs=1e-12)
    half = end.slip.slip_length / 2
    assert end.movement(half) <= end.movement(0.0)
    assert end.movement(far) == pytest.approx(0.0, abs=1e-9)


def drawn_case(service: Service, rule: str, part: str) -> tuple[Any, Any, Any]:
    case = next(case for case in cases() if case["rule"] == rule and part in case["title"])
    return answered(service, rule, case["inputs"])


def test_the_gap_is_written_on_the_diagram(service: Service) -> None:
    case = next(case for case in cases() if case["rule"] == "thermal.break-gap")
    given, found, system = answered(service, "thermal.break-gap", case["inputs"])
    said = words(tree(end_diagram.draw_break(given, found, system)))
    assert f"gap {found.gap / 0.0254:,.2f} in" in said


@pytest.mark.parametrize(
    "case",
    [case for case in cases() if case["rule"] == "thermal.buckling" and "defect_amplitude" in case["inputs"]],
    ids=lambda case: case["title"],
)
def test_upper_and_lower_rise_stand_on_the_path(case: dict[str, Any], service: Service) -> None:
    given, found, system = answered(service, "thermal.buckling", case["inputs"])
    root = tree(buckling_path.draw(given, found, system))
    dots = {dot.get("data-mark"): dot for dot in root.iter(f"{SVG}circle") if dot.get("data-mark")}
    assert ("upper rise" in dots) == (found.upper_rise is not None and bool(found.path))
    assert ("lower rise" in dots) == (found.lower_rise is not None and bool(found.path))
    if "upper rise" in dots and "lower rise" in dots:
        # the lower rise lies further out and further down
        assert float(dots["lower rise"].get("cx", "")) > float(dots["upper rise"].get("cx", ""))
        assert float(dots["lower rise"].get("cy", "")) > float(dots["upper rise"].get("cy", ""))


@pytest.mark.parametrize("hot", [145.0, 147.4, 147.6, 150.0])
def test_the_words_of_two_levels_never_meet(hot: float, service: Service) -> None:
    """The rise allowed is 52.5 degF above 95: the words of the lower level stand below it, those of the upper one above."""
    body = {
        "section": "136RE",
        "rail_temperature": {"value": hot, "unit": "degF"},
        "neutral_temperature": {"value": 95, "unit": "degF"},
        "lateral_resistance": {"value": 80, "unit": "lbf_per_in"},
        "stiffness": {"value": 100, "unit": "lbf_per_in2"},
        "defect_amplitude": {"value": 1.5, "unit": "in"},
        "defect_half_length": {"value": 15, "unit": "ft"},
        "degree": {"value": 3, "unit": "deg"},
        "shape": "three-lobes",
        "held": "throughout",
        "margin_rule": "lower-rise",
    }
    given, found, system = answered(service, "thermal.buckling", body)
    root = tree(buckling_path.draw(given, found, system))
    heights = {(item.text or "").partition(":")[0]: float(item.get("y", "")) for item in root.iter(f"{SVG}text")}
    assert abs(heights["rail now"] - heights["allowed"]) > 4.0
    assert (heights["rail now"] > heights["allowed"]) is (hot < 147.5)
    assert any("curve of 1,910 ft radius" in (item.text or "") for item in root.iter(f"{SVG}text"))


def test_the_gap_in_eighths_is_a_plain_fraction(service: Service) -> None:
    case = next(case for case in cases() if case["rule"] == "thermal.laying-adjustment")
    given, found, system = answered(service, "thermal.laying-adjustment", case["inputs"])
    said = words(tree(laying_chart.draw(given, found, system)))
    value = said[said.index("to the nearest eighth") + 1]
    whole, *rest = value.removesuffix(" in").split()
    parts = [whole, *rest]
    total = sum(float(part) if "/" not in part else int(part.split("/")[0]) / int(part.split("/")[1]) for part in parts)
    assert abs(total) * 8 == abs(found.gap_eighths)


@pytest.mark.parametrize(("low", "high"), [(-210.0, 57.0), (-2.18, 0.16), (0.0, 97.0), (-1.0, 1.0), (-249.0, 101.0), (3.0, 3.0)])
def test_grid_and_numbers_of_an_axis_stay_within_its_box(low: float, high: float) -> None:
    left, top, right, bottom = box = (28.0, 26.0, 250.0, 82.0)
    plot = Plot.over([low, high], [low, high], box, 6)
    root = tree(f'<svg xmlns="{SVG[1:-1]}">{"".join(plot.axes("a", "b"))}</svg>')
    grid = [re.findall(r"[-\d.]+", line.get("d", "")) for line in root if line.get("class") == "grid"]
    assert len(grid) == len(plot.across_steps) + len(plot.up_steps)
    for x_from, y_from, x_to, y_to in grid:
        assert all(left - 0.01 <= float(x) <= right + 0.01 for x in (x_from, x_to))
        assert all(top - 0.01 <= float(y) <= bottom + 0.01 for y in (y_from, y_to))
