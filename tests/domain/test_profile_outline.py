"""The integrals on shapes with known answers, the outline's refusals, flattening."""

from __future__ import annotations

import dataclasses
import math
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from railrules_api.catalogue.profiles import read_profiles
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.profile.builder import build_outline
from railrules_api.domain.profile.elements import Arc, Element, Line, Part, Point, arc_between
from railrules_api.domain.profile.flatten import flatten
from railrules_api.domain.profile.integrals import moments_of
from railrules_api.domain.profile.outline import Outline, check_outline, first_crossing, outline_from_points
from railrules_api.domain.profile.parameters import CrownArc, WebArc
from railrules_api.domain.profile.properties import mass_per_length, section_properties

ROWS = read_profiles()
OUTLINES = {name: build_outline(row.parameters) for name, row in ROWS.items()}
RAIL = ROWS["60E1"].parameters


def polygon(*points: Point) -> tuple[Line, ...]:
    return tuple(Line(points[k], points[(k + 1) % len(points)]) for k in range(len(points)))


def circle(x: float, y: float, radius: float) -> tuple[Arc, ...]:
    east, west = (x + radius, y), (x - radius, y)
    return arc_between((x, y), east, west, left=True), arc_between((x, y), west, east, left=True)


def test_a_rectangle() -> None:
    properties = section_properties(Outline(polygon((1, 2), (4, 2), (4, 7), (1, 7))))
    assert properties.area == 15
    assert (properties.centroid_offset, properties.centroid_height) == pytest.approx((2.5, 2.5))
    assert properties.second_moment_horizontal == pytest.approx(3 * 5**3 / 12)
    assert properties.second_moment_vertical == pytest.approx(5 * 3**3 / 12)
    assert properties.section_modulus_head == pytest.approx(3 * 5**2 / 6)
    assert properties.product_of_inertia == pytest.approx(0, abs=1e-12)
    assert properties.perimeter == 16
    assert properties.parts is None
    assert properties.lateral_modulus_head is None


def test_a_right_triangle() -> None:
    properties = section_properties(Outline(polygon((0, 0), (3, 0), (0, 2))))
    assert properties.second_moment_horizontal == pytest.approx(3 * 2**3 / 36)
    assert properties.product_of_inertia == pytest.approx(-(3**2) * 2**2 / 72)


@given(x=st.floats(-10, 10), y=st.floats(-10, 10), radius=st.floats(0.1, 5))
def test_a_circle_anywhere(x: float, y: float, radius: float) -> None:
    moments = moments_of(circle(x, y, radius))
    area = math.pi * radius**2
    assert moments.area == pytest.approx(area, rel=1e-12)
    assert moments.first_x == pytest.approx(area * x, rel=1e-11, abs=1e-11)
    assert moments.first_y == pytest.approx(area * y, rel=1e-11, abs=1e-11)
    assert moments.second_xx == pytest.approx(area * (radius**2 / 4 + x * x), rel=1e-10)
    assert moments.second_yy == pytest.approx(area * (radius**2 / 4 + y * y), rel=1e-10)
    assert moments.second_xy == pytest.approx(area * x * y, rel=1e-10, abs=1e-10)


def test_a_half_disc() -> None:
    half: tuple[Element, ...] = (Line((-2, 0), (2, 0)), arc_between((0, 0), (2, 0), (-2, 0), left=True))
    properties = section_properties(Outline(half))
    assert properties.area == pytest.approx(2 * math.pi)
    assert properties.centroid_height == pytest.approx(8 / (3 * math.pi))
    assert properties.second_moment_horizontal == pytest.approx((math.pi / 8 - 8 / (9 * math.pi)) * 16)
    assert properties.second_moment_vertical == pytest.approx(math.pi / 8 * 16)
    assert properties.height == pytest.approx(2)


def test_a_concave_quarter_takes_away() -> None:
    # A unit square less a quarter disc about one corner.
    bite: tuple[Element, ...] = (
        Line((1, 0), (1, 1)),
        Line((1, 1), (0, 1)),
        arc_between((0, 0), (0, 1), (1, 0), left=False),
    )
    moments = moments_of(bite)
    assert moments.area == pytest.approx(1 - math.pi / 4)
    assert moments.first_x == pytest.approx(1 / 2 - 1 / 3)
    assert moments.second_xx == pytest.approx(1 / 3 - math.pi / 16)
    assert moments.second_xy == pytest.approx(1 / 4 - 1 / 8)


@pytest.mark.parametrize("name", OUTLINES)
def test_a_rail_is_its_own_image(name: str) -> None:
    outline = OUTLINES[name]
    one, other = section_properties(outline), section_properties(outline.mirrored())
    for field in ("area", "centroid_height", "second_moment_horizontal", "second_moment_vertical", "perimeter"):
        assert getattr(one, field) == pytest.approx(getattr(other, field), rel=1e-12)
    check_outline(outline.mirrored().elements, smooth=True)


@given(
    name=st.sampled_from(sorted(OUTLINES)),
    right=st.floats(-1, 1),
    up=st.floats(-1, 1),
)
def test_moving_a_rail_changes_nothing_about_its_centroid(name: str, right: float, up: float) -> None:
    here = section_properties(OUTLINES[name])
    there = section_properties(OUTLINES[name].moved(right, up))
    assert there.area == pytest.approx(here.area, rel=1e-10)
    assert there.centroid_height == pytest.approx(here.centroid_height, rel=1e-9)
    assert there.centroid_offset == pytest.approx(here.centroid_offset + right, abs=1e-11)
    assert there.second_moment_horizontal == pytest.approx(here.second_moment_horizontal, rel=1e-6)
    assert there.parts is not None
    assert here.parts is not None
    assert there.parts.head == pytest.approx(here.parts.head, rel=1e-9)


@pytest.mark.parametrize("chord_error", [1e-4, 1e-5, 1e-6])
def test_flattening_keeps_its_chord_error(chord_error: float) -> None:
    outline = OUTLINES["136RE"]
    points = flatten(outline, chord_error)
    flat = section_properties(outline_from_points(points))
    exact = section_properties(outline)
    assert abs(flat.area - exact.area) <= chord_error * exact.perimeter
    assert len(points) == len(set(points))


def test_no_chord_stands_farther_off_its_arc_than_stated() -> None:
    arc = arc_between((0, 0), (0.3, 0), (0, 0.3), left=True)
    points = flatten(Outline((arc, Line((0, 0.3), (0, 0)), Line((0, 0), (0.3, 0)))), 1e-5)
    on_arc = [*points[: points.index((0, 0.3))], (0, 0.3)]
    for one, two in pairwise(on_arc):
        middle = ((one[0] + two[0]) / 2, (one[1] + two[1]) / 2)
        assert 0 <= 0.3 - math.hypot(*middle) <= 1e-5
    assert len(on_arc) - 1 == math.ceil((math.pi / 2) / (2 * math.acos(1 - 1e-5 / 0.3)))


@given(
    first=st.floats(-math.pi, math.pi),
    sweep=st.floats(-6.2, 6.2).filter(lambda sweep: abs(sweep) > 1e-3),
    radius=st.floats(0.01, 10),
)
def test_the_box_of_an_arc(first: float, sweep: float, radius: float) -> None:
    def at(angle: float) -> Point:
        return 2 + radius * math.cos(angle), 1 + radius * math.sin(angle)

    arc = Arc(at(first), at(first + sweep), (2, 1), radius, sweep)
    points = [at(first + sweep * k / 2000) for k in range(2001)]
    box = arc.bounds()
    seen = (min(x for x, _ in points), min(y for _, y in points), max(x for x, _ in points), max(y for _, y in points))
    assert box == pytest.approx(seen, abs=radius * 2e-6)
    assert box[0] <= seen[0] + 1e-12
    assert box[3] >= seen[3] - 1e-12


@pytest.mark.parametrize("chord_error", [0.0, -1.0, 1e-12, math.inf, math.nan])
def test_a_useless_chord_error_is_refused(chord_error: float) -> None:
    with pytest.raises(RefusedError) as caught:
        flatten(OUTLINES["136RE"], chord_error)
    assert caught.value.refusals[0].path == ("chord_error",)


TEE = ((-3, 0), (3, 0), (3, 1), (1, 1), (1, 5), (-1, 5), (-1, 1), (-3, 1))


def test_a_given_outline_of_eight_points_is_enough() -> None:
    assert section_properties(outline_from_points(TEE)).area == 14


@pytest.mark.parametrize(
    ("points", "path", "reason"),
    [
        (TEE[:7], ("outline",), "at least 8"),
        (tuple(reversed(TEE)), ("outline",), "clockwise"),
        ((*TEE[:4], TEE[3], *TEE[4:]), ("outline", 4), "coincide"),
        ((*TEE[:5], (1, 3), *TEE[5:]), ("outline", 5), "straight back"),
        ((*TEE[:4], (-4, 5), (4, 5), *TEE[6:]), ("outline", 4), "crosses itself"),
        ((*TEE[:4], (math.nan, 5), *TEE[5:]), ("outline", 5), "finite"),
        (((0, 0), (3, 0), (3, 1), (1, 1), (1, 4), (2, 4), (2, 5), (1, 5.1), (0, 5.1)), ("outline", 9), "open"),
    ],
)
def test_a_bad_given_outline_is_refused(points: tuple[Point, ...], path: tuple[str | int, ...], reason: str) -> None:
    with pytest.raises(RefusedError) as caught:
        outline_from_points(points)
    assert caught.value.refusals[0].path == path
    assert reason in caught.value.refusals[0].reason


def test_an_open_outline_is_refused() -> None:
    elements = OUTLINES["60E1"].elements
    with pytest.raises(RefusedError) as caught:
        check_outline((*elements[:5], *elements[6:]), smooth=False)
    assert caught.value.refusals[0].path == ("outline", 6)
    assert "does not close" in caught.value.refusals[0].reason


def test_two_arcs_that_cross_each_other_alone_are_found() -> None:
    # one bows up to y = 0.5, the other down to y = -0.3
    up = arc_between((0.0, -0.75), (-1.0, 0.0), (1.0, 0.0), left=False)
    down = arc_between((0.0, 0.76), (0.9, 0.2), (-0.9, 0.2), left=False)
    ring: tuple[Element, ...] = (
        up, Line((1.0, 0.0), (1.0, 0.2)), Line((1.0, 0.2), (0.9, 0.2)),
        down, Line((-0.9, 0.2), (-1.0, 0.2)), Line((-1.0, 0.2), (-1.0, 0.0)),
    )  # fmt: skip
    assert first_crossing(ring) == (0, 3)
    far = tuple(element.moved(0.0, 2.0) if index == 3 else element for index, element in enumerate(ring))
    assert first_crossing(far) is None


def test_lines_on_one_straight_line_meet_where_they_overlap() -> None:
    apart = (Line((5.0, 5.0), (6.0, 6.0)), Line((8.0, 8.0), (9.0, 9.0)))
    assert first_crossing((Line((0.0, 0.0), (2.0, 0.0)), apart[0], Line((1.0, 0.0), (3.0, 0.0)), apart[1])) == (0, 2)
    assert first_crossing((Line((0.0, 0.0), (2.0, 0.0)), apart[0], Line((2.5, 0.0), (3.0, 0.0)), apart[1])) is None


def test_a_corner_is_refused_where_the_drawing_has_none() -> None:
    with pytest.raises(RefusedError) as caught:
        check_outline(polygon(*TEE), smooth=True)
    assert "corner" in caught.value.refusals[0].reason


def test_arcs_that_cross_are_found() -> None:
    shape: tuple[Element, ...] = (
        arc_between((0, 0), (-1, 0), (1, 0), left=True),
        Line((1, 0), (1, 1)),
        Line((1, 1), (0.5, 1)),
        arc_between((0, 1), (0.5, 1), (-0.5, 1), left=False),
        Line((-0.5, 1), (-1, 1)),
        Line((-1, 1), (-1, 0)),
    )
    check_outline(shape, smooth=False)
    deep = (
        *shape[:3],
        Arc((0.5, 1), (-0.5, 1), (0, -0.3), math.hypot(0.5, 1.3), -(2 * math.pi - 2 * math.atan2(0.5, 1.3))),
        *shape[4:],
    )
    with pytest.raises(RefusedError):
        check_outline(deep, smooth=False)


@pytest.mark.parametrize(
    ("changes", "path"),
    [
        ({"height": -0.172}, ("height",)),
        ({"height": math.nan}, ("height",)),
        ({"height": 0.08}, ("height",)),
        ({"base_upper_edge_radius": 0.02}, ("base edge",)),
        ({"base_slope_radius": 0.5}, ("base slopes",)),
        ({"base_slope_radius": None}, ("base_outer_angle",)),
        ({"head_fishing_angle": 1.2}, ("head_fishing_angle",)),
        ({"crown": (CrownArc(0.3),)}, ("crown",)),
        ({"crown": (CrownArc(0.3), CrownArc(0.08), CrownArc(0.013))}, ("crown", 0, "width")),
        ({"crown": (CrownArc(0.3, 0.7), CrownArc(0.013))}, ("crown", 0, "width")),
        ({"crown": (CrownArc(0.3, 0.02), CrownArc(0.013, 0.07))}, ("crown", 1, "width")),
        ({"crown": (CrownArc(0.3, 0.02), CrownArc(-0.013))}, ("crown", 1, "radius")),
        ({"upper_web": ()}, ("upper_web",)),
        ({"upper_web": (WebArc(0.12), WebArc(0.007))}, ("upper_web", 0, "centre_height")),
        ({"lower_web": (WebArc(0.12, 0.06), WebArc(0.007, 0.03))}, ("lower_web", 1, "centre_height")),
        ({"lower_web": (WebArc(0.12, 0.06025), WebArc(0.035, 0.15), WebArc(0.007))}, ("lower_web", 1, "centre_height")),
        ({"lower_web": (WebArc(0.12, 0.1), WebArc(0.007))}, ("web",)),
        ({"lower_web": (WebArc(0.007, 0.06025), WebArc(0.007))}, ("lower_web",)),
    ],
)
def test_measures_that_contradict_each_other_are_refused(changes: dict[str, Any], path: tuple[str | int, ...]) -> None:
    with pytest.raises(RefusedError) as caught:
        build_outline(dataclasses.replace(RAIL, **changes))
    assert caught.value.refusals[0].path == path


def test_density_must_be_positive() -> None:
    with pytest.raises(RefusedError) as caught:
        mass_per_length(0.0077, 0.0)
    assert caught.value.refusals[0].path == ("density",)


def test_parts_follow_each_other_round_the_section() -> None:
    outline = OUTLINES["60E1"]
    for part in (Part.HEAD, Part.BASE):
        chain = outline.chain(part)
        assert all(math.dist(a.end, b.start) < 1e-12 for a, b in pairwise(chain))
        assert chain[0].start[0] == pytest.approx(-chain[-1].end[0], abs=1e-12)
    assert outline.chain(Part.HEAD)[0].start[0] > 0 > outline.chain(Part.BASE)[0].start[0]


def test_arcs_whose_circles_cross_elsewhere_do_not_meet() -> None:
    # circles of radius 1 about (0, 0) and (1, 0) cross at 60 degrees up and down from the first; the second arc keeps to
    # 30 degrees about its leftmost point, all of it within 0.52 of the first centre
    upper = arc_between((0.0, 0.0), (1.0, 0.0), (-1.0, 0.0), left=True)
    inside = arc_between((1.0, 0.0), (1.0 - math.sqrt(0.75), 0.5), (1.0 - math.sqrt(0.75), -0.5), left=True)
    apart = (Line((5.0, 5.0), (6.0, 6.0)), Line((8.0, 8.0), (9.0, 9.0)))
    assert first_crossing((upper, apart[0], inside, apart[1])) is None
    # drawn on to 70 degrees about that point it passes the upper crossing
    reach = math.radians(110)
    longer = arc_between((1.0, 0.0), (1 + math.cos(reach), math.sin(reach)), (1 - math.sqrt(0.75), -0.5), left=True)
    assert first_crossing((upper, apart[0], longer, apart[1])) == (0, 2)


def test_an_outline_that_holds_no_area_has_no_properties() -> None:
    there_and_back = Outline((Line((0.0, 0.0), (1.0, 0.0)), Line((1.0, 0.0), (0.0, 0.0))))
    with pytest.raises(RefusedError) as caught:
        section_properties(there_and_back)
    assert caught.value.refusals[0].path == ("outline",)
    assert caught.value.refusals[0].value == 0.0


def test_lines_are_divided_where_a_longest_piece_is_given() -> None:
    square = Outline(polygon((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)))
    assert len(flatten(square, 1e-3, 0.3)) == 4 * 4
    for longest in (0.0, -1.0, math.nan):
        with pytest.raises(RefusedError) as caught:
            flatten(square, 1e-3, longest)
        assert caught.value.refusals[0].path == ("longest",)
