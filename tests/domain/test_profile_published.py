"""Properties computed from the outlines against printed ones, and the form of the profile file."""

from __future__ import annotations

import math
import tomllib
from dataclasses import replace
from importlib.resources import files

import pytest

from railrules_api.catalogue.profiles import ProfileDataError, parse_profiles, read_profiles
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.kinds import Kind
from railrules_api.domain.profile.builder import build_outline
from railrules_api.domain.profile.comparison import compare
from railrules_api.domain.profile.parameters import WebArc
from railrules_api.domain.profile.properties import SectionProperties, mass_per_length, section_properties
from railrules_api.units import UNITS

ROWS = read_profiles()

KINDS = {"area": Kind.AREA, "neutral_axis": Kind.LENGTH, "ix": Kind.SECOND_MOMENT, "iy": Kind.SECOND_MOMENT}

# Printed values in the printed units. 60E1 to 54E1 read in `en-profile-data`, the RE sections in `arema-ch4-figures`, the AS
# ones in `as-1085-1` and `as-stockist-catalogue`; those of 49E1, 50E6, 54E2, 54E3, 56E1, ASCE and GOST are from memory, which
# is why their outlines, built from other recollections or documents, are a check at all.
METRIC = {"area": "cm2", "neutral_axis": "mm", "ix": "cm4", "iy": "cm4"}
IMPERIAL = {"area": "in2", "neutral_axis": "in", "ix": "in4", "iy": "in4"}
PRINTED: list[tuple[str, dict[str, str], dict[str, float], dict[str, float]]] = [
    # id, units, printed values, tolerance of each in per cent
    (
        "60E1",
        METRIC,
        {"area": 76.70, "neutral_axis": 80.92, "ix": 3038.3, "iy": 512.3},
        {"area": 0.02, "neutral_axis": 0.02, "ix": 0.02, "iy": 0.02},
    ),
    (
        "60E2",
        METRIC,
        {"area": 76.48, "neutral_axis": 80.7, "ix": 3022.0, "iy": 510.5},
        {"area": 0.02, "neutral_axis": 0.06, "ix": 0.03, "iy": 0.02},
    ),
    (
        "54E1",
        METRIC,
        {"area": 69.77, "neutral_axis": 75.1, "ix": 2337.9, "iy": 419.2},
        {"area": 0.02, "neutral_axis": 0.06, "ix": 0.02, "iy": 0.05},
    ),
    ("54E2", METRIC, {"area": 68.56, "ix": 2307.3, "iy": 341.5}, {"area": 0.02, "ix": 0.02, "iy": 0.02}),
    ("54E3", METRIC, {"area": 69.52, "ix": 2074.0, "iy": 354.8}, {"area": 0.02, "ix": 0.02, "iy": 0.02}),
    ("49E1", METRIC, {"area": 62.92, "ix": 1816.0, "iy": 319.1}, {"area": 0.02, "ix": 0.04, "iy": 0.02}),
    ("50E6", METRIC, {"area": 64.84, "ix": 2017.8, "iy": 396.8}, {"area": 0.02, "ix": 0.02, "iy": 0.02}),
    ("56E1", METRIC, {"area": 71.69, "ix": 2321.0, "iy": 421.6}, {"area": 0.02, "ix": 0.02, "iy": 0.02}),
    (
        "115RE",
        IMPERIAL,
        {"area": 11.2171, "neutral_axis": 2.99, "ix": 65.5, "iy": 10.7},
        {"area": 0.35, "neutral_axis": 0.5, "ix": 0.35, "iy": 0.5},
    ),
    (
        "119RE",
        IMPERIAL,
        {"area": 11.6378, "neutral_axis": 3.13, "ix": 71.4, "iy": 10.8},
        {"area": 0.35, "neutral_axis": 0.5, "ix": 0.35, "iy": 0.5},
    ),
    (
        "132RE",
        IMPERIAL,
        {"area": 12.9124, "neutral_axis": 3.20, "ix": 87.9, "iy": 14.4},
        {"area": 0.35, "neutral_axis": 0.5, "ix": 0.35, "iy": 0.5},
    ),
    ("136RE", IMPERIAL, {"area": 13.32, "neutral_axis": 3.35, "ix": 94.9}, {"area": 0.1, "neutral_axis": 0.2, "ix": 0.5}),
    ("141RE", IMPERIAL, {"area": 13.799, "ix": 100.4}, {"area": 0.1, "ix": 0.6}),
    ("AS41", METRIC, {"area": 51.92, "neutral_axis": 64.7, "ix": 1327.0}, {"area": 0.3, "neutral_axis": 0.3, "ix": 0.3}),
    ("AS50", METRIC, {"area": 64.51, "neutral_axis": 74.7, "ix": 2010.0}, {"area": 0.3, "neutral_axis": 0.3, "ix": 0.3}),
    (
        "AS60",
        METRIC,
        {"area": 77.25, "neutral_axis": 79.23, "ix": 2930.0, "iy": 490.0},
        {"area": 0.3, "neutral_axis": 0.3, "ix": 0.3, "iy": 0.3},
    ),
    # printed for 136RE, which this section is; in the catalogue they are converted
    ("AS68", METRIC, {"area": 86.10, "neutral_axis": 85.1, "ix": 3950.0}, {"area": 0.3, "neutral_axis": 0.3, "ix": 0.3}),
    ("R50", METRIC, {"area": 65.99, "ix": 2011.0}, {"area": 0.2, "ix": 0.5}),
    ("R65", METRIC, {"area": 82.65, "neutral_axis": 81.3, "ix": 3540.0}, {"area": 0.2, "neutral_axis": 0.2, "ix": 0.3}),
    ("R75", METRIC, {"area": 95.04, "neutral_axis": 88.2, "ix": 4489.0}, {"area": 0.2, "neutral_axis": 0.2, "ix": 0.3}),
    *(
        (
            f"ASCE{pounds}",
            IMPERIAL,
            {"area": area, "neutral_axis": axis, "ix": ix},
            {"area": 0.21, "neutral_axis": 0.41, "ix": 0.72},
        )
        for pounds, area, axis, ix in (
            (60, 5.93, 2.05, 14.6),
            (65, 6.33, 2.14, 16.94),
            (70, 6.81, 2.22, 19.7),
            (75, 7.33, 2.30, 22.86),
            (80, 7.86, 2.38, 26.38),
            (85, 8.33, 2.47, 30.07),
            (90, 8.83, 2.55, 34.39),
            (95, 9.28, 2.64, 38.8),
            (100, 9.84, 2.73, 43.97),
        )
    ),
]


def computed(name: str) -> SectionProperties:
    return section_properties(build_outline(ROWS[name].parameters))


@pytest.mark.parametrize(("name", "units", "printed", "tolerance"), PRINTED, ids=[row[0] for row in PRINTED])
def test_printed_properties_are_met(
    name: str, units: dict[str, str], printed: dict[str, float], tolerance: dict[str, float]
) -> None:
    properties = computed(name)
    values = {
        "area": properties.area,
        "neutral_axis": properties.centroid_height,
        "ix": properties.second_moment_horizontal,
        "iy": properties.second_moment_vertical,
    }
    published = {key: UNITS[KINDS[key]][units[key]].to_si(value) for key, value in printed.items()}
    for difference in compare(published, values):
        assert difference.within(tolerance[difference.name] / 100), difference


@pytest.mark.parametrize(
    ("name", "unit", "areas", "tolerance"),
    [
        ("115RE", "in2", (3.8861, 3.0362, 4.2947), 0.001),
        ("119RE", "in2", (4.3068, 3.0363, 4.2946), 0.0015),
        ("132RE", "in2", (4.4274, 3.6149, 4.8701), 0.0015),
        ("AS50", "cm2", (27.10, 15.78, 21.63), 0.001),
        ("AS60", "cm2", (29.99, 19.74, 27.52), 0.001),
    ],
)
def test_head_web_and_base_areas_are_met(name: str, unit: str, areas: tuple[float, ...], tolerance: float) -> None:
    properties = computed(name)
    factor = UNITS[Kind.AREA][unit].factor
    parts = properties.parts
    assert parts is not None
    assert (parts.head / factor, parts.web / factor, parts.base / factor) == pytest.approx(areas, rel=tolerance)
    assert parts.head + parts.web + parts.base == pytest.approx(properties.area, rel=1e-14)


def test_printed_moduli_of_60e1_are_met() -> None:
    properties = computed("60E1")
    assert properties.section_modulus_head * 1e6 == pytest.approx(333.6, abs=0.05)
    assert properties.section_modulus_base * 1e6 == pytest.approx(375.5, abs=0.05)
    assert properties.lateral_modulus_base * 1e6 == pytest.approx(68.3, abs=0.05)
    assert mass_per_length(properties.area, 7850.0) == pytest.approx(60.21, abs=0.005)


def test_moduli_add_up_to_the_height() -> None:
    # Ix / Zh + Ix / Zb = H, whatever the section.
    for name in ROWS:
        properties = computed(name)
        inertia = properties.second_moment_horizontal
        total = inertia / properties.section_modulus_head + inertia / properties.section_modulus_base
        assert total == pytest.approx(properties.height, rel=1e-12), name
        assert properties.height == pytest.approx(ROWS[name].parameters.height, rel=1e-12)
        assert properties.width == pytest.approx(ROWS[name].parameters.base_width, rel=1e-12)
        assert abs(properties.centroid_offset) < 1e-15
        assert abs(properties.product_of_inertia) < 1e-18


def test_the_crown_printed_for_60e1_follows_from_its_head_width() -> None:
    # EN 13674-1 gives both the end of the R80 arc (52.053 mm) and the 72 mm head 14.3 mm down; one follows from the other.
    outline = build_outline(ROWS["60E1"].parameters)
    side = next(element for element in outline.elements if abs(element.end[1] - 0.1577) < 1e-4 and element.end[0] > 0)
    assert side.end[0] == pytest.approx(0.036, abs=2e-6)


def test_at_least_24_sections_and_the_whole_asce_family() -> None:
    assert len(ROWS) >= 24
    assert [name for name in ROWS if name.startswith("ASCE")] == [f"ASCE{n}" for n in range(60, 101, 5)]
    assert all(" " not in name for name in ROWS)


def test_every_outline_has_steel_on_its_left_and_no_corner() -> None:
    for name, row in ROWS.items():
        outline = build_outline(row.parameters)
        assert len(outline.elements) == len(outline.parts)
        assert section_properties(outline).area > 0.003, name


def test_sources_are_those_of_the_house() -> None:
    known = {
        source["id"] for source in tomllib.loads((files("railrules_api") / "data" / "sources.toml").read_text("utf-8"))["source"]
    }
    used = {origin.source for row in ROWS.values() for origin in row.origins.values()}
    assert used <= known


GOOD = (files("railrules_api") / "data" / "rail_profiles.toml").read_text(encoding="utf-8")
START = GOOD.index("[[profile]]")
FIRST = GOOD[START : GOOD.index("[[profile]]", START + 1)]


@pytest.mark.parametrize(
    ("before", "after", "reason"),
    [
        ("height = 6.625\n", "", "height is missing"),
        ("height = 6.625\n", 'height = "6 5/8"\n', "is not a length"),
        ("height = 6.625\n", "height = true\n", "is not a length"),
        ("height = 6.625\n", "height = 6.625\nheigth = 6.625\n", "unknown keys"),
        ('unit = "in"', 'unit = "ft"', "unit must be"),
        ('"one_in"', '"percent"', "a slope is given"),
        ('source = "memory"', 'source = ""', "needs a source"),
        ('status = "published"', 'status = "certain"', "needs a source"),
    ],
)
def test_a_bad_row_is_refused(before: str, after: str, reason: str) -> None:
    with pytest.raises(ProfileDataError, match=reason) as caught:
        parse_profiles(FIRST.replace(before, after, 1))
    assert caught.value.row == "115RE"


def test_an_id_used_twice_is_refused() -> None:
    with pytest.raises(ProfileDataError, match="used twice"):
        parse_profiles(FIRST + FIRST)


def test_comparison_against_nothing_is_refused() -> None:
    with pytest.raises(RefusedError) as caught:
        compare({"area": 0.0}, {"area": 1.0})
    assert caught.value.refusals[0].path == ("published", "area")
    assert compare({"area": 1.0}, {"other": 1.0}) == ()
    assert math.isclose(compare({"area": 2.0}, {"area": 2.1})[0].relative, 0.05)


# ---------------------------------------------------------------- the thick web, whose figure was not read

INCH, SPECIFIC_GRAVITY = 0.0254, 7840.0


def thick_web(*upper: WebArc, lower: tuple[WebArc, ...] = ()) -> float:
    """Return the mass of the thick web section with other web arcs, in lb/yd."""
    drawn = replace(ROWS["136TW"].parameters, upper_web=upper, lower_web=lower or upper)
    return mass_per_length(section_properties(build_outline(drawn)).area, SPECIFIC_GRAVITY) / 0.45359237 * 0.9144


def test_the_thick_web_has_the_printed_measures_and_what_its_note_says_of_the_fit() -> None:
    row, note = ROWS["136TW"], ROWS["136TW"].note
    measures = row.parameters
    # mill-catalogue-properties, row 136TW: 7 5/16, 6, 2 15/16, 1 11/16 in
    printed = (7.3125, 6.0, 2.9375, 1.6875)
    assert (measures.height, measures.base_width, measures.head_width, measures.web_thickness) == pytest.approx(
        [value * INCH for value in printed], rel=1e-12
    )
    mass = thick_web(*measures.upper_web, lower=measures.lower_web)
    assert f"{mass:.2f} lb/yd, {100 * (1 - mass / 177.05):.3f} % less" in note
    arcs = {name: tuple(getattr(ROWS["136RE"].parameters, name)[:1]) for name in ("upper_web", "lower_web")}
    small = WebArc(0.375 * INCH)
    heavier = thick_web(*arcs["upper_web"], small, lower=(*arcs["lower_web"], small))
    assert f"weigh {100 * (heavier / 177.05 - 1):.1f} % more" in note
    assert f"{100 * (1 - thick_web(small) / 177.05):.1f} % less" in note.rpartition("straight")[2]
    with pytest.raises(RefusedError, match="no straight piece"):
        thick_web(WebArc(0.75 * INCH))
    assert {group: origin.status for group, origin in row.origins.items()} == {
        "overall": "derived", "head": "fitted", "web": "fitted", "base": "from-memory",
    }  # fmt: skip


def test_what_a_note_says_was_fitted_by_us_bears_the_status() -> None:
    for name, row in ROWS.items():
        for group, origin in row.origins.items():
            if origin.status == "fitted":
                assert "fitted" in origin.note, (name, group)


FAMILIES = {
    "AREMA": (
        "90RA-A", "100RA-A", "100RA-B", "100RE", "110RE", "112RE", "115RE", "115RE-10", "119RE", "130RE", "131RE", "132RE",
        "132RE-1947", "133RE", "136RE", "136RE-10", "136RE-1962", "136TW", "140RE", "141RE",
    ),
    "ASCE": tuple(f"ASCE{number}" for number in range(60, 101, 5)),
    "EN": ("49E1", "50E6", "54E1", "54E2", "54E3", "56E1", "60E1", "60E2"),
    "AS": ("AS41", "AS50", "AS60", "AS68"),
    "GOST": ("R50", "R65", "R75"),
}  # fmt: skip


@pytest.mark.parametrize("family", list(FAMILIES))
def test_each_section_of_a_family_has_a_profile(family: str) -> None:
    assert set(FAMILIES[family]) <= set(ROWS)
