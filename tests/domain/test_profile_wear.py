"""Worn heads: monotone, symmetrical, exact, refused where they must be."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.catalogue.profiles import read_profiles
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.profile.builder import build_outline
from railrules_api.domain.profile.elements import Arc, Line, Part, Point
from railrules_api.domain.profile.outline import Outline, check_outline, outline_from_points
from railrules_api.domain.profile.properties import SectionProperties, section_properties
from railrules_api.domain.profile.wear import STEEPEST_FACE, FaceWear, Side, replace_head, wear_head

OUTLINES = {name: build_outline(row.parameters) for name, row in read_profiles().items()}
RAIL = OUTLINES["136RE"]
GAGE = 0.015875
"""Gage line 5/8 in below the top, where North American gage is measured."""

# the fillets of the thick web reach nearly to the head's corners, so that little steel stands before them: see below
names = st.sampled_from(sorted(set(OUTLINES) - {"136TW"}))
depths = st.floats(0.0, 0.018)
# at 9 mm a vertical face of 119RE, whose fillet stands furthest out, would run through it: refused, see below
amounts = st.floats(0.0, 0.0085)
angles = st.floats(0.0, math.radians(32))


def face(side: Side, amount: float, angle: float = math.radians(20), gage_depth: float = GAGE) -> FaceWear:
    return FaceWear(side=side, amount=amount, angle=angle, gage_depth=gage_depth)


def no_greater(less: SectionProperties, more: SectionProperties) -> None:
    """More wear on the right."""
    for field in ("area", "height", "second_moment_horizontal", "second_moment_vertical"):
        before, after = getattr(less, field), getattr(more, field)
        assert after <= before * (1 + 1e-12), field
    assert less.parts is not None
    assert more.parts is not None
    assert more.parts.head <= less.parts.head * (1 + 1e-12)
    assert more.parts.base == pytest.approx(less.parts.base, rel=1e-12)


@settings(deadline=None)
@given(name=names, one=depths, two=depths, amount=amounts, angle=angles)
def test_more_vertical_wear_never_adds(name: str, one: float, two: float, amount: float, angle: float) -> None:
    faces = (face(Side.RIGHT, amount, angle),)
    less, more = sorted((one, two))
    no_greater(
        section_properties(wear_head(OUTLINES[name], less, faces)),
        section_properties(wear_head(OUTLINES[name], more, faces)),
    )


@settings(deadline=None)
@given(name=names, depth=depths, one=amounts, two=amounts, angle=angles)
def test_more_face_wear_never_adds(name: str, depth: float, one: float, two: float, angle: float) -> None:
    less, more = sorted((one, two))
    no_greater(
        section_properties(wear_head(OUTLINES[name], depth, (face(Side.LEFT, less, angle),))),
        section_properties(wear_head(OUTLINES[name], depth, (face(Side.LEFT, more, angle),))),
    )


@settings(deadline=None)
@given(name=names, depth=depths, amount=amounts, angle=angles)
def test_left_and_right_are_images(name: str, depth: float, amount: float, angle: float) -> None:
    outline = OUTLINES[name]
    left = section_properties(wear_head(outline, depth, (face(Side.LEFT, amount, angle),)))
    right = section_properties(wear_head(outline, depth, (face(Side.RIGHT, amount, angle),)))
    assert left.area == pytest.approx(right.area, rel=1e-12)
    assert left.centroid_offset == pytest.approx(-right.centroid_offset, abs=1e-13)
    assert left.product_of_inertia == pytest.approx(-right.product_of_inertia, abs=1e-17)
    assert left.second_moment_vertical == pytest.approx(right.second_moment_vertical, rel=1e-12)


@settings(deadline=None, max_examples=60)
@given(name=names, depth=depths, left=amounts, right=amounts, angle=angles)
def test_a_worn_outline_is_whole(name: str, depth: float, left: float, right: float, angle: float) -> None:
    worn = wear_head(OUTLINES[name], depth, (face(Side.LEFT, left, angle), face(Side.RIGHT, right, angle)))
    check_outline(worn.elements, smooth=False)
    assert len(worn.elements) == len(worn.parts)


@settings(deadline=None, max_examples=40)
@given(depth=depths, amount=amounts, right=st.floats(-0.5, 0.5), up=st.floats(-0.5, 0.5))
def test_vertical_wear_moves_with_the_rail(depth: float, amount: float, right: float, up: float) -> None:
    del amount
    here = section_properties(wear_head(RAIL, depth))
    there = section_properties(wear_head(RAIL.moved(right, up), depth))
    assert there.area == pytest.approx(here.area, rel=1e-9)
    assert there.centroid_height == pytest.approx(here.centroid_height, rel=1e-8)


def test_no_wear_is_the_new_rail() -> None:
    assert wear_head(RAIL, 0.0) == RAIL
    assert wear_head(RAIL, 0.0, (face(Side.LEFT, 0.0),)) == RAIL


def test_a_cap_cut_from_the_crown_is_a_circular_segment() -> None:
    # Within the 8-in crown the lost area is the segment of a circle of 8 in: r² (a - sin 2a / 2), cos a = 1 - depth / r.
    depth, radius = 0.0004, 8 * 0.0254
    half = math.acos(1 - depth / radius)
    lost = radius**2 * (half - math.sin(2 * half) / 2)
    new, worn = section_properties(RAIL), section_properties(wear_head(RAIL, depth))
    assert new.area - worn.area == pytest.approx(lost, rel=1e-9)
    assert new.height - worn.height == pytest.approx(depth, rel=1e-9)
    assert new.parts is not None
    assert worn.parts is not None
    assert new.parts.head - worn.parts.head == pytest.approx(lost, rel=1e-9)
    assert worn.parts.web == pytest.approx(new.parts.web, rel=1e-12)
    assert worn.parts.base == pytest.approx(new.parts.base, rel=1e-12)


def test_the_worn_face_passes_through_the_gage_point_at_its_angle() -> None:
    angle = math.radians(25)
    worn = wear_head(RAIL, 0.0, (face(Side.RIGHT, 0.006, angle),))
    cut = next(
        element
        for element, part in zip(worn.elements, worn.parts, strict=True)
        if part is Part.HEAD and isinstance(element, Line) and element.heading() == pytest.approx(math.pi / 2 + angle, abs=1e-9)
    )
    level = RAIL.height - GAGE
    share = (level - cut.start[1]) / (cut.end[1] - cut.start[1])
    new = max(element.at(f)[0] for element in RAIL.chain(Part.HEAD) for f in element.crossings((0, level), (0, 1)))
    assert cut.at(share)[0] == pytest.approx(new - 0.006, abs=1e-12)


def test_arcs_stay_true_arcs() -> None:
    worn = wear_head(RAIL, 0.003, (face(Side.LEFT, 0.004),))
    radii = {round(element.radius, 9) for element in RAIL.elements if isinstance(element, Arc)}
    assert {round(element.radius, 9) for element in worn.elements if isinstance(element, Arc)} <= radii


@pytest.mark.parametrize(
    ("vertical", "faces", "path"),
    [
        (-0.001, (), ("vertical",)),
        (math.nan, (), ("vertical",)),
        (0.05, (), ("vertical",)),
        (0.0, (face(Side.LEFT, 0.001), face(Side.LEFT, 0.002)), ("faces",)),
        (0.0, (face(Side.LEFT, -0.001),), ("faces", 0, "amount")),
        (0.0, (face(Side.LEFT, 0.1),), ("faces", 0, "amount")),
        (0.0, (face(Side.LEFT, 0.034, 0.0),), ("faces", 0, "amount")),
        (0.0, (face(Side.LEFT, 0.016, 0.0),), ("faces", 0, "amount")),
        (0.0, (face(Side.LEFT, 0.001, -0.1),), ("faces", 0, "angle")),
        (0.0, (face(Side.LEFT, 0.001, STEEPEST_FACE + 0.01),), ("faces", 0, "angle")),
        (0.0, (face(Side.RIGHT, 0.001), face(Side.LEFT, 0.001, gage_depth=0.06)), ("faces", 1, "gage_depth")),
        (0.0, (face(Side.RIGHT, 0.001, gage_depth=0.0),), ("faces", 0, "gage_depth")),
    ],
)
def test_impossible_wear_is_refused(vertical: float, faces: tuple[FaceWear, ...], path: tuple[str | int, ...]) -> None:
    with pytest.raises(RefusedError) as caught:
        wear_head(RAIL, vertical, faces)
    assert caught.value.refusals[0].path == path


def test_wear_deeper_than_the_head_names_the_greatest_depth() -> None:
    with pytest.raises(RefusedError) as caught:
        wear_head(RAIL, 0.05)
    greatest = caught.value.refusals[0].maximum
    assert greatest is not None
    assert 0.04 < greatest < 1.9375 * 0.0254
    wear_head(RAIL, greatest * 0.999)


def test_an_outline_without_parts_has_no_head_to_wear() -> None:
    plain = outline_from_points(((-3, 0), (3, 0), (3, 1), (1, 1), (1, 5), (-1, 5), (-1, 1), (-3, 1)))
    with pytest.raises(RefusedError) as caught:
        wear_head(plain, 0.1)
    assert caught.value.refusals[0].path == ("outline",)


def measured(worn: Outline) -> list[Point]:
    """Points over a worn head from corner to corner, as a laser would give them, but exact."""
    chain = worn.chain(Part.HEAD)
    return [element.at(k / 40) for element in chain[1:-1] for k in range(40)]


def test_measured_points_give_the_section_they_were_measured_on() -> None:
    worn = wear_head(RAIL, 0.006, (face(Side.LEFT, 0.005),))
    again = replace_head(RAIL, measured(worn), 1e-5)
    assert section_properties(again).area == pytest.approx(section_properties(worn).area, rel=1e-5)
    assert section_properties(again).second_moment_vertical == pytest.approx(
        section_properties(worn).second_moment_vertical, rel=1e-5
    )


def test_measured_points_of_the_new_rail_lose_nothing() -> None:
    again = section_properties(replace_head(RAIL, measured(RAIL), 1e-5))
    assert abs(section_properties(RAIL).area - again.area) < 1e-7


@pytest.mark.parametrize(
    ("change", "path", "reason"),
    [
        (lambda p: p[:1], ("points",), "two points"),
        (lambda p: list(reversed(p)), ("points",), "right to left"),
        (lambda p: [p[0], (p[1][0] + 0.01, p[1][1]), *p[2:]], ("points", 2), "outside"),
        (lambda p: [p[0], (math.nan, 0.1), *p[2:]], ("points", 2), "finite"),
        (lambda p: [(p[0][0] - 0.02, p[0][1] + 0.01), *p[1:]], ("points", 1), "begin and end"),
    ],
)
def test_bad_measurements_are_refused(change: object, path: tuple[str | int, ...], reason: str) -> None:
    assert callable(change)
    with pytest.raises(RefusedError) as caught:
        replace_head(RAIL, change(measured(wear_head(RAIL, 0.004))), 1e-4)
    assert caught.value.refusals[0].path == path
    assert reason in caught.value.refusals[0].reason


def test_a_negative_tolerance_is_refused() -> None:
    with pytest.raises(RefusedError) as caught:
        replace_head(RAIL, measured(RAIL), -1.0)
    assert caught.value.refusals[0].path == ("tolerance",)


def test_a_measured_line_that_crosses_itself_is_refused() -> None:
    points = measured(wear_head(RAIL, 0.004))
    points[60], points[90] = points[90], points[60]
    with pytest.raises(RefusedError) as caught:
        replace_head(RAIL, points, 1e-3)
    assert caught.value.refusals[0].path[0] == "outline"


def test_a_face_that_would_run_through_the_fillet_is_refused() -> None:
    with pytest.raises(RefusedError) as refusal:
        wear_head(OUTLINES["119RE"], 0.0, (face(Side.RIGHT, 0.009, 0.0),))
    assert refusal.value.refusals[0].path == ("faces", 0, "amount")
    assert "fillet" in refusal.value.refusals[0].reason
    wear_head(OUTLINES["119RE"], 0.0, (face(Side.RIGHT, 0.0085, 0.0),))


def test_a_cut_that_would_leave_two_humps_is_refused() -> None:
    # a head hollowed to a V between the ends of its crown arc; a cut between the bottom of the V and its rims takes both rims
    (crown,) = [one for one in RAIL.chain(Part.HEAD) if isinstance(one, Arc) and one.start[0] > 0.0 > one.end[0]]
    rim = crown.start[1]
    hollow = replace_head(RAIL, [crown.start, (0.0, rim - 0.004), crown.end], 1e-6)
    assert hollow.height == pytest.approx(rim)
    with pytest.raises(RefusedError) as caught:
        wear_head(hollow, 0.002)
    assert caught.value.refusals[0].path == ("vertical",)
    assert "pieces" in caught.value.refusals[0].reason
    # below the V nothing is left of it: the level cut of the new rail
    deep = wear_head(hollow, 0.006)
    level = wear_head(RAIL, RAIL.height - rim + 0.006)
    assert section_properties(deep).area == pytest.approx(section_properties(level).area, rel=1e-12)


def test_a_worn_face_of_the_thick_web_stops_before_its_fillet() -> None:
    outline = OUTLINES["136TW"]
    assert wear_head(outline, 0.0, (face(Side.LEFT, 0.00635, math.radians(20)),)) != outline  # 1/4 in, as most is
    with pytest.raises(RefusedError, match="fillet"):
        wear_head(outline, 0.0, (face(Side.LEFT, 0.00635, 0.0),))
