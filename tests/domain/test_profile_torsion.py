"""Torsion and shear centre against known shapes and against an independent finite-element solution."""

from __future__ import annotations

import math
import warnings

import pytest

from railrules_api.catalogue.profiles import read_profiles
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.profile.builder import build_outline
from railrules_api.domain.profile.elements import Line, Point, arc_between
from railrules_api.domain.profile.flatten import flatten
from railrules_api.domain.profile.outline import Outline
from railrules_api.domain.profile.properties import section_properties
from railrules_api.domain.profile.torsion import torsion_properties
from railrules_api.domain.profile.wear import FaceWear, Side, wear_head

OUTLINES = {name: build_outline(row.parameters) for name, row in read_profiles().items()}


def polygon(*points: Point) -> Outline:
    return Outline(tuple(Line(points[k], points[(k + 1) % len(points)]) for k in range(len(points))))


def test_a_round_bar() -> None:
    circle = Outline((arc_between((5, 3), (7, 3), (3, 3), left=True), arc_between((5, 3), (3, 3), (7, 3), left=True)))
    torsion = torsion_properties(circle)
    assert torsion.torsion_constant == pytest.approx(math.pi / 2 * 16, rel=1e-6)
    assert torsion.shear_centre_offset == pytest.approx(5, abs=1e-9)
    assert torsion.shear_centre_height == pytest.approx(2, abs=1e-9)


@pytest.mark.parametrize(("wide", "beta", "tolerance"), [(1, 0.140577, 5e-4), (2, 0.228682, 5e-4), (10, 0.312330, 0.01)])
def test_rectangles(wide: float, beta: float, tolerance: float) -> None:
    # J = beta a b³; beta from Saint-Venant's series, tabled in any text on strength of materials.
    bar = polygon((0, 0), (wide, 0), (wide, 1), (0, 1))
    torsion = torsion_properties(bar)
    assert torsion.torsion_constant == pytest.approx(beta * wide, rel=tolerance)
    assert torsion.torsion_constant == pytest.approx(beta * wide, rel=max(torsion.relative_error, 1e-5))


def test_an_equilateral_triangle() -> None:
    # J = sqrt(3) a⁴ / 80.
    bar = polygon((0, 0), (1, 0), (0.5, math.sqrt(3) / 2))
    torsion = torsion_properties(bar)
    assert torsion.torsion_constant == pytest.approx(math.sqrt(3) / 80, rel=5e-4)
    assert torsion.shear_centre_height == pytest.approx(math.sqrt(3) / 6, rel=1e-3)


def test_printed_torsion_constant_of_119re() -> None:
    # K = 5.11 in4, figure of the section in the AREMA Manual, chapter 4.
    torsion = torsion_properties(OUTLINES["119RE"])
    assert torsion.torsion_constant / 0.0254**4 == pytest.approx(5.11, rel=0.015)


@pytest.mark.parametrize("name", ["60E1", "ASCE60", "R75"])
def test_a_finer_division_stays_within_the_stated_error(name: str) -> None:
    usual = torsion_properties(OUTLINES[name])
    fine = torsion_properties(OUTLINES[name], 400)
    assert usual.torsion_constant == pytest.approx(fine.torsion_constant, rel=usual.relative_error)
    assert usual.relative_error < 0.02
    assert usual.torsion_constant == pytest.approx(fine.torsion_constant, rel=0.003)
    assert abs(usual.shear_centre_offset) < 1e-9


@pytest.mark.parametrize("pieces", [39, 1001])
def test_the_number_of_pieces_has_limits(pieces: int) -> None:
    with pytest.raises(RefusedError) as caught:
        torsion_properties(OUTLINES["60E1"], pieces)
    assert caught.value.refusals[0].path == ("pieces",)


WORN = "136RE worn"
CHECKED = ["115RE", "119RE", "132RE", "136RE", "ASCE85", "100RE", "54E1", "60E1", "AS60", "R65", WORN]


@pytest.mark.parametrize("name", CHECKED)
def test_against_finite_elements(name: str) -> None:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        shapely = pytest.importorskip("shapely")
        library = pytest.importorskip("sectionproperties.pre.geometry")
        analysis = pytest.importorskip("sectionproperties.analysis.section")
        outline = (
            wear_head(
                OUTLINES["136RE"],
                0.006,
                (FaceWear(side=Side.RIGHT, amount=0.006, angle=math.radians(20), gage_depth=0.0159),),
            )
            if name == WORN
            else OUTLINES[name]
        )
        # In millimetres: the mesher rounds to a fixed number of places.
        points = [(1000 * x, 1000 * y) for x, y in flatten(outline, 5e-6)]
        geometry = library.Geometry(shapely.Polygon(points)).create_mesh(mesh_sizes=[20.0])
        section = analysis.Section(geometry)
        section.calculate_geometric_properties()
        section.calculate_warping_properties()
        horizontal, vertical, _ = section.get_ic()
        shear = section.get_sc()
    ours, torsion = section_properties(outline), torsion_properties(outline)
    assert ours.area * 1e6 == pytest.approx(section.get_area(), rel=5e-4)
    assert ours.second_moment_horizontal * 1e12 == pytest.approx(horizontal, rel=5e-4)
    assert ours.second_moment_vertical * 1e12 == pytest.approx(vertical, rel=5e-4)
    assert ours.centroid_height * 1e3 == pytest.approx(section.get_c()[1], rel=5e-4)
    assert torsion.torsion_constant * 1e12 == pytest.approx(section.get_j(), rel=0.02)
    assert torsion.shear_centre_height * 1e3 == pytest.approx(shear[1], abs=0.3)
    assert torsion.shear_centre_offset * 1e3 == pytest.approx(shear[0], abs=0.3)
