"""Whether the furniture of an old section serves a new one."""

from __future__ import annotations

import dataclasses
import math
from typing import Any

import pytest

from railrules_api.catalogue.profiles import read_profiles
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.profile.compatibility import (
    Compatibility,
    Drilling,
    FittingDimensions,
    FittingLimits,
    compare_sections,
)

INCH = 0.0254
LIMITS = FittingLimits(ramp_gradient=1 / 480, plate_play=0.001, length_tolerance=1e-4, angle_tolerance=math.radians(0.1))
# Heights and spacing remembered; the tests need only that they are equal or not.
LIGHT = Drilling(distances=(3.5 * INCH, 6 * INCH, 6 * INCH), height=2.875 * INCH, diameter=1.125 * INCH)
HEAVY = Drilling(distances=(3.5 * INCH, 6 * INCH, 6 * INCH), height=3.09375 * INCH, diameter=1.1875 * INCH)
ROWS = read_profiles()


def dimensions(name: str, drilling: Drilling | None = None) -> FittingDimensions:
    row = ROWS[name].parameters
    return FittingDimensions(
        height=row.height,
        base_width=row.base_width,
        head_width=row.head_width,
        fishing_height=row.fishing_height,
        head_fishing_angle=row.head_fishing_angle,
        base_fishing_angle=row.base_fishing_angle,
        drilling=drilling,
    )


def between(old: FittingDimensions, new: FittingDimensions) -> Compatibility:
    return compare_sections(old, new, LIMITS)


@pytest.mark.parametrize(
    ("old", "new", "drilling"),
    [("115RE", "119RE", LIGHT), ("132RE", "136RE", HEAVY), ("136RE", "141RE", HEAVY), ("132RE", "141RE", HEAVY)],
)
def test_sections_that_share_their_joint_bars(old: str, new: str, drilling: Drilling) -> None:
    # AREMA figures 4-3-6 to 4-3-9 give 115/119 one bar and 132/136/141 another.
    found = between(dimensions(old, drilling), dimensions(new, drilling))
    assert found.same_joint_bars is True
    assert found.old_plates_serve
    assert found.same_drilling is True
    # The running surfaces still stand at different heights.
    assert found.compromise_joint_needed is True
    assert found.height_difference > 0


def test_a_heavier_rail_on_old_plates() -> None:
    found = between(dimensions("115RE", LIGHT), dimensions("136RE", HEAVY))
    assert found.base_width_difference == pytest.approx(0.5 * INCH)
    assert not found.old_plates_serve
    assert found.height_difference == pytest.approx(0.6875 * INCH)
    assert found.run_off_length == pytest.approx(0.6875 * INCH * 480)
    assert found.same_joint_bars is False
    assert found.same_drilling is False
    assert found.compromise_joint_needed is True
    assert found.fishing_height_difference == pytest.approx(0.375 * INCH)


def test_the_same_section() -> None:
    found = between(dimensions("136RE", HEAVY), dimensions("136RE", HEAVY))
    assert found.compromise_joint_needed is False
    assert found.run_off_length == 0
    assert found.unknown == ()


def test_the_other_crown_of_the_same_section_needs_no_compromise_joint() -> None:
    assert between(dimensions("136RE", HEAVY), dimensions("136RE-10", HEAVY)).compromise_joint_needed is False


def test_what_is_not_known_is_said() -> None:
    found = between(dimensions("136RE"), dimensions("136RE"))
    assert found.same_joint_bars is None
    assert found.compromise_joint_needed is None
    assert found.unknown == ("drilling",)
    bare = FittingDimensions(height=0.17, base_width=0.15, head_width=0.07)
    assert between(bare, bare).unknown == ("fishing_height", "head_fishing_angle", "base_fishing_angle", "drilling")
    half = dataclasses.replace(HEAVY, diameter=None)
    assert between(dimensions("136RE", half), dimensions("136RE", HEAVY)).same_drilling is None


def test_a_known_difference_settles_it_whatever_else_is_unknown() -> None:
    found = between(dimensions("115RE"), dimensions("136RE"))
    assert found.same_joint_bars is False
    assert found.unknown == ()


@pytest.mark.parametrize(
    "change",
    [
        {"distances": (2.5 * INCH, 6 * INCH, 6 * INCH)},
        {"distances": (3.5 * INCH, 6 * INCH)},
        {"height": 0.08},
        {"diameter": 0.026},
    ],
)
def test_different_drilling(change: dict[str, Any]) -> None:
    found = between(dimensions("136RE", HEAVY), dimensions("136RE", dataclasses.replace(HEAVY, **change)))
    assert found.same_drilling is False
    assert found.same_joint_bars is False


def test_differences_change_sign_with_the_order() -> None:
    there = between(dimensions("100RE"), dimensions("132RE"))
    back = between(dimensions("132RE"), dimensions("100RE"))
    assert there.height_difference == -back.height_difference
    assert there.run_off_length == back.run_off_length


@pytest.mark.parametrize(
    ("name", "value"),
    [("ramp_gradient", 0.0), ("ramp_gradient", 1.0), ("plate_play", -1.0), ("length_tolerance", math.nan)],
)
def test_limits_out_of_range_are_refused(name: str, value: float) -> None:
    with pytest.raises(RefusedError) as caught:
        compare_sections(dimensions("115RE"), dimensions("136RE"), dataclasses.replace(LIMITS, **{name: value}))
    assert caught.value.refusals[0].path == (name,)


def test_a_dimension_that_is_not_positive_is_refused() -> None:
    with pytest.raises(RefusedError) as caught:
        between(dimensions("115RE"), dataclasses.replace(dimensions("136RE"), height=0.0))
    assert caught.value.refusals[0].path == ("new", "height")
