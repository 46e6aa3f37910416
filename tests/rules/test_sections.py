"""Refusals of the rules of sections, asked without the edge: they name the fields of the question."""

from __future__ import annotations

from typing import Any

import pytest

from railrules_api.catalogue.profiles import read_profiles
from railrules_api.domain.errors import RefusedError
from railrules_api.rules.sections import compatibility
from railrules_api.rules.sections.compatibility import SectionCompatibilityInput
from railrules_api.rules.sections.properties import shapes_of
from railrules_api.rules.sections.section_records import SectionPoint, SectionShape

INCH = 0.0254
HEIGHTS: dict[str, Any] = {
    "old_height": 5.625 * INCH, "old_base_width": 5.125 * INCH, "new_height": 6.625 * INCH, "new_base_width": 5.5 * INCH,
    "plate_play": 0.001, "run_off_run": 480.0,
}  # fmt: skip


@pytest.mark.parametrize(
    ("name", "value"), [("old_height", -0.1), ("new_base_width", 0.0), ("new_head_width", -0.07), ("plate_play", -0.001)]
)
def test_a_measure_that_cannot_be_is_refused_by_its_own_name(name: str, value: float) -> None:
    with pytest.raises(RefusedError) as caught:
        compatibility.evaluate(SectionCompatibilityInput(**{**HEIGHTS, name: value}))
    (refusal,) = caught.value.refusals
    assert (refusal.path, refusal.value) == ((name,), value)


def test_a_measured_head_that_crosses_itself_is_refused_as_a_whole() -> None:
    # over the head of 136RE, 7 5/16 in high: the line goes left, back to the right below, and crosses its own way down
    line = [(1.0, 7.0), (-0.5, 7.0), (-0.5, 6.5), (0.5, 6.5), (0.5, 7.2), (-1.0, 7.0)]
    head = tuple(SectionPoint(x=x * INCH, y=y * INCH) for x, y in line)
    profile = read_profiles()["136RE"].parameters
    with pytest.raises(RefusedError) as caught:
        shapes_of(SectionShape(profile=profile, measured_head=head, measuring_tolerance=0.01))
    (refusal,) = caught.value.refusals
    assert refusal.path == ("measured_head",)
    assert "crosses itself" in refusal.reason
