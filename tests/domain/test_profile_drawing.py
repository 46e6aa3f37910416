"""The drawings: well-formed, to scale, nothing outside the sheet."""

from __future__ import annotations

import io
import math
import re
from xml.etree import ElementTree as ET

import pytest

from railrules_api.catalogue.profiles import ProfileRow, read_profiles
from railrules_api.domain.profile.builder import build_outline
from railrules_api.domain.profile.compatibility import Drilling
from railrules_api.domain.profile.elements import Arc
from railrules_api.domain.profile.wear import FaceWear, Side, wear_head
from railrules_api.drawing.dxf import profile_dxf
from railrules_api.drawing.marks import both, length_text, number
from railrules_api.drawing.profile import HEIGHT, WIDTH, ProfileSheet, draw_profile

ROWS = read_profiles()
SVG = "{http://www.w3.org/2000/svg}"


def sheet(row: ProfileRow, **more: object) -> ProfileSheet:
    parameters = row.parameters
    fields = {
        "name": row.id,
        "title": row.title,
        "outline": build_outline(parameters),
        "head_width": parameters.head_width,
        "web_thickness": parameters.web_thickness,
        "web_height": parameters.base_depth + parameters.fishing_height / 2,
        "density": 7850.0,
        "unit": row.unit,
    }
    return ProfileSheet(**(fields | more))  # type: ignore[arg-type]


def worn(row: ProfileRow) -> object:
    faces = (FaceWear(side=Side.LEFT, amount=0.005, angle=math.radians(20), gage_depth=0.0159),)
    return wear_head(build_outline(row.parameters), 0.004, faces)


@pytest.mark.parametrize("name", ROWS)
def test_a_sheet_is_well_formed_and_keeps_within_its_borders(name: str) -> None:
    row = ROWS[name]
    drilling = Drilling(distances=(), height=row.parameters.height / 2.4, diameter=0.03)
    for more in ({"drilling": drilling, "torsion_constant": 2e-6}, {"worn": worn(row)}):
        root = ET.fromstring(draw_profile(sheet(row, **more)))
        assert root.get("width") == f"{WIDTH:g}mm"
        assert root.find(f"{SVG}title") is not None
        for words in root.iter(f"{SVG}text"):
            x, y = float(words.get("x", "0")), float(words.get("y", "0"))
            assert 0 < x < WIDTH
            assert 0 < y < HEIGHT
        for path in root.iter(f"{SVG}path"):
            for x, y in re.findall(r"[ML]([-\d.]+) ([-\d.]+)", path.get("d", "")):
                assert 4 < float(x) < WIDTH - 4
                assert 4 < float(y) < HEIGHT - 4


def test_the_outline_is_drawn_to_the_scale_it_names() -> None:
    drawing = draw_profile(sheet(ROWS["60E1"]))
    assert "Scale 3:4" in drawing
    path = next(p for p in ET.fromstring(drawing).iter(f"{SVG}path") if p.get("class") == "steel")
    heights = [float(y) for _, y in re.findall(r"(?:[ML]| )([-\d.]+) ([-\d.]+)(?=[MLAZ])", path.get("d", ""))]
    # The highest drawn point is the end of the crown arc, 0.174 mm below the top.
    assert max(heights) - min(heights) == pytest.approx(0.75 * (172 - 0.174), abs=0.01)
    arcs = [e for e in build_outline(ROWS["60E1"].parameters).elements if isinstance(e, Arc)]
    assert path.get("d", "").count("A") == len(arcs)


def test_holes_are_told_by_height_and_by_distance_from_the_rail_end() -> None:
    spaced = Drilling(distances=(0.0889, 0.1524, 0.1524), height=0.07858125, diameter=None)
    drawing = draw_profile(sheet(ROWS["136RE"], drilling=spaced, unit="in"))
    words = [element.text for element in ET.fromstring(drawing).iter(f"{SVG}text")]
    begin = words.index("holes above base")
    assert words[begin : begin + 5] == [
        "holes above base", "3 3/32 in (78.58 mm)", "and from rail end", "3 1/2, 6, 6 in", "88.9, 152.4, 152.4 mm",
    ]  # fmt: skip
    bare = draw_profile(sheet(ROWS["136RE"], drilling=Drilling(distances=(), height=0.07858125, diameter=None), unit="in"))
    assert "holes at" in bare
    assert "rail end" not in bare


def test_names_are_escaped() -> None:
    drawing = draw_profile(sheet(ROWS["60E1"], name="<script>", title='a & "b"', footnote="</svg>"))
    assert "<script>" not in drawing
    ET.fromstring(drawing)


def test_dark_screens_and_paper() -> None:
    drawing = draw_profile(sheet(ROWS["60E1"]))
    assert "@media screen and (prefers-color-scheme:dark)" in drawing
    assert "http" not in drawing.replace("http://www.w3.org/2000/svg", "")


@pytest.mark.parametrize(
    ("inches", "words"),
    [(7.3125, "7 5/16 in"), (6.0, "6 in"), (0.6875, "11/16 in"), (0.484375, "31/64 in"), (2.995, "2.995 in")],
)
def test_inches_are_written_as_fractions_where_one_fits(inches: float, words: str) -> None:
    assert length_text(inches * 0.0254, "in") == words


def test_numbers() -> None:
    assert number(-0.0001, 2) == "0"
    assert number(1.5) == "1.5"
    assert both(0.0165, "mm") == ("16.5 mm", "0.650 in")


def test_dxf_holds_true_arcs() -> None:
    ezdxf = pytest.importorskip("ezdxf")
    outline = build_outline(ROWS["136RE"].parameters)
    document = ezdxf.read(io.StringIO(profile_dxf(outline, "136RE", wear_head(outline, 0.004))))
    assert document.dxfversion == "AC1009"
    new = document.modelspace().query('*[layer=="136RE"]')
    assert len(new) == len(outline.elements)
    assert sum(entity.dxftype() == "ARC" for entity in new) == sum(isinstance(e, Arc) for e in outline.elements)
    ends: list[tuple[float, float]] = []
    for entity in new:
        points = (entity.start_point, entity.end_point) if entity.dxftype() == "ARC" else (entity.dxf.start, entity.dxf.end)
        ends.extend((point[0], point[1]) for point in points)
    assert max(p[1] for p in ends) == pytest.approx(185.7, abs=2)
    # Every end is met by exactly one other.
    for point in ends:
        assert sum(abs(point[0] - o[0]) + abs(point[1] - o[1]) < 1e-6 for o in ends) == 2
    assert len(document.modelspace().query('*[layer=="136RE-WORN"]')) > 10
