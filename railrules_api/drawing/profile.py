"""A dimensioned drawing of a rail section as one self-contained SVG, to scale on A4 and on Letter.

The section is drawn from its true arcs. A worn outline may be laid over the new one. Dark screens get light lines;
paper always gets dark ones.
"""

from __future__ import annotations

from dataclasses import dataclass
from html import escape
from typing import TYPE_CHECKING

from railrules_api.domain.kinds import Kind
from railrules_api.domain.profile.elements import Part
from railrules_api.domain.profile.properties import mass_per_length, section_properties
from railrules_api.drawing.marks import (
    STYLE,
    LengthUnit,
    both,
    horizontal_dimension,
    length_text,
    line,
    outline_path,
    text,
    thickness_dimension,
    vertical_dimension,
)
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Callable

    from railrules_api.domain.profile.compatibility import Drilling
    from railrules_api.domain.profile.elements import Point
    from railrules_api.domain.profile.outline import Outline
    from railrules_api.domain.profile.properties import SectionProperties

WIDTH, HEIGHT = 190.0, 250.0
"""The sheet [mm]: what A4 and Letter both can print."""

TOP, BOTTOM = 43.0, 189.0
"""Where the section may stand on the sheet [mm]."""

WIDEST = 118.0
CLEARANCE = 6.0
"""Least distance between the neutral axis and the web's dimension [mm of the sheet]."""

SCALES = ((1.0, "1:1"), (0.75, "3:4"), (0.5, "1:2"), (0.25, "1:4"))

Row = tuple[str, ...]

_OPENING = (
    f'<svg xmlns="http://www.w3.org/2000/svg" width="{WIDTH:g}mm" height="{HEIGHT:g}mm" '
    f'viewBox="0 0 {WIDTH:g} {HEIGHT:g}" role="img" aria-labelledby="t d">'
)


@dataclass(frozen=True, slots=True, kw_only=True)
class ProfileSheet:
    """What is drawn.

    Attributes:
        name: the section, e.g. `136RE`.
        title: its full name.
        outline: the new outline, with parts and fishing planes known.
        head_width: nominal width of the head [m].
        web_thickness: at the web's thinnest place [m].
        web_height: height of that place [m].
        density: for the mass per length [kg/m3].
        unit: the unit that stands first.
        drilling: bolt holes; None when not known.
        worn: a worn outline to lay over the new one.
        torsion_constant: J [m4]; None when not wanted.
        footnote: sources and cautions, one line.
    """

    name: str
    title: str
    outline: Outline
    head_width: float
    web_thickness: float
    web_height: float
    density: float
    unit: LengthUnit = "in"
    drilling: Drilling | None = None
    worn: Outline | None = None
    torsion_constant: float | None = None
    footnote: str = ""


def draw_profile(sheet: ProfileSheet) -> str:
    """Draw the sheet.

    Args:
        sheet: what is drawn.

    Returns:
        An SVG document.
    """
    properties = section_properties(sheet.outline)
    scale, scale_name = next(
        (
            step
            for step in SCALES
            if properties.height * 1000 * step[0] <= BOTTOM - TOP and properties.width * 1000 * step[0] <= WIDEST
        ),
        SCALES[-1],
    )
    factor = 1000 * scale
    left, low, right, high = sheet.outline.bounds()
    floor = (TOP + BOTTOM + (high - low) * factor) / 2
    middle = WIDTH / 2 - (left + right) / 2 * factor

    def place(point: Point) -> Point:
        return middle + point[0] * factor, floor - (point[1] - low) * factor

    drawing: list[str] = []
    if sheet.worn is not None:
        drawing.append(outline_path(sheet.outline.elements, place, factor, "lost"))
        drawing.append(outline_path(sheet.worn.elements, place, factor, "steel"))
    else:
        drawing.append(outline_path(sheet.outline.elements, place, factor, "steel"))
    drawing += _dimensions(sheet, properties, _Frame(place, left, low, right, high))
    rows = _table(sheet, properties)
    return "\n".join(
        [
            _OPENING,
            f'<title id="t">{escape(sheet.name)}: rail section</title>',
            f'<desc id="d">{escape(_description(sheet, properties))}</desc>',
            f"<style>{STYLE}</style>",
            f'<rect class="paper" width="{WIDTH:g}" height="{HEIGHT:g}"/>',
            text(8, 16, sheet.name, "name"),
            text(8, 22.5, sheet.title, "title"),
            text(182, 16, f"Scale {scale_name} printed at 100 %", "cell", "end"),
            text(182, 22.5, "worn section over the new one" if sheet.worn else "section of the new rail", "cell", "end"),
            line(8, 26, 182, 26, "rule"),
            *drawing,
            *rows,
            text(8, 247, sheet.footnote, "foot"),
            "</svg>",
            "",
        ]
    )


@dataclass(frozen=True, slots=True)
class _Frame:
    """The section on the sheet: the way from metres to the sheet, and the section's extremes [m]."""

    place: Callable[[Point], Point]
    left: float
    low: float
    right: float
    high: float

    def at(self, x: float, y: float) -> Point:
        """Return a place on the sheet."""
        return self.place((x, y))


def _dimensions(sheet: ProfileSheet, properties: SectionProperties, frame: _Frame) -> list[str]:
    unit = sheet.unit
    x_left, y_floor = frame.at(frame.left, frame.low)
    x_right, y_top = frame.at(frame.right, frame.high)
    x_axis, _ = frame.at(0.0, 0.0)
    outer, inner, chain = x_left - 20, x_left - 5, x_right + 13
    parts = [line(x_axis, y_top - 4, x_axis, y_floor + 4, "axis")]
    # Overall height on the left, the neutral axis beside it.
    parts += [line(x_left - 1, y_floor, outer - 2, y_floor), line(x_axis - 2, y_top, outer - 2, y_top)]
    parts += vertical_dimension(outer, y_top, y_floor, both(frame.high - frame.low, unit))
    axis = frame.at(0.0, frame.low + properties.centroid_height)[1]
    # It stops beside the web, clear of the words of the web thickness.
    parts.append(line(inner - 2, axis, frame.at(sheet.web_thickness, 0.0)[0], axis, "axis"))
    parts += vertical_dimension(inner, axis, y_floor, both(properties.centroid_height, unit))
    parts.append(text(inner + 2, axis - 1.2, "neutral axis" if sheet.worn is None else "neutral axis, new", "second axis-text"))
    # Head, fishing height and base on the right, measured where the fishing planes meet on the axis.
    head_root, base_root = sheet.outline.head_root, sheet.outline.base_root
    if head_root is not None and base_root is not None:
        levels = (y_top, frame.at(*head_root)[1], frame.at(*base_root)[1], y_floor)
        parts += [line(x_axis + 2, levels[0], chain + 2, levels[0]), line(x_right + 1, levels[3], chain + 2, levels[3])]
        parts += [line(x_axis, y, chain + 2, y, "hidden") for y in levels[1:3]]
        for root, part in ((head_root, Part.HEAD), (base_root, Part.BASE)):
            ends = sheet.outline.chain(part)
            parts += [line(*frame.at(*root), *frame.at(*end), "hidden") for end in (ends[0].start, ends[-1].end)]
        sizes = (frame.high - head_root[1], head_root[1] - base_root[1], base_root[1] - frame.low)
        for upper, lower, size in zip(levels, levels[1:], sizes, strict=False):
            parts += vertical_dimension(chain, upper, lower, both(size, unit))
    # Widths above and below.
    half = sheet.head_width / 2
    above, below = y_top - 8, y_floor + 8
    for x in (-half, half):
        side = frame.at(x, frame.high)[0]
        parts.append(line(side, y_top + 3, side, above - 1.5))
    parts += horizontal_dimension(above, frame.at(-half, 0)[0], frame.at(half, 0)[0], both(sheet.head_width, unit))
    parts += [line(x, y_floor + 1, x, below + 1.5) for x in (x_left, x_right)]
    parts += horizontal_dimension(below, x_left, x_right, both(properties.width, unit))
    thin = sheet.web_thickness / 2
    web_level = frame.at(0.0, frame.low + sheet.web_height)[1]
    if abs(web_level - axis) < CLEARANCE:
        # The two would run into each other; a few millimetres away the web is thicker by less than the line's width.
        web_level = axis - CLEARANCE
    parts += thickness_dimension(web_level, frame.at(-thin, 0)[0], frame.at(thin, 0)[0], both(sheet.web_thickness, unit))
    if sheet.drilling is not None:
        parts += _holes(sheet.drilling, sheet, frame)
    return parts


def _holes(drilling: Drilling, sheet: ProfileSheet, frame: _Frame) -> list[str]:
    half = sheet.web_thickness / 2
    x_left = frame.at(-half, 0.0)[0]
    level = frame.at(0.0, frame.low + drilling.height)[1]
    parts = [line(x_left - 24, level, frame.at(half, 0.0)[0] + 3, level, "axis")]
    if drilling.diameter is not None:
        for side in (-0.5, 0.5):
            y = frame.at(0.0, frame.low + drilling.height + side * drilling.diameter)[1]
            parts.append(line(x_left, y, frame.at(half, 0.0)[0], y, "hidden"))
    first, second = both(drilling.height, sheet.unit)
    size = "" if drilling.diameter is None else f" ø {length_text(drilling.diameter, sheet.unit)}"
    lead = f"holes{size} at" if not drilling.distances else f"holes{size} above base"
    words = [lead, first, f"({second})"] if size else [lead, f"{first} ({second})"]
    if drilling.distances:
        words.append("and from rail end")
        words += [_row_of_holes(drilling.distances, unit) for unit in (sheet.unit, "mm" if sheet.unit == "in" else "in")]
    return parts + [text(x_left - 3, level + 3.6 + 3.3 * k, word, "second axis-text", "end") for k, word in enumerate(words)]


def _row_of_holes(distances: tuple[float, ...], unit: LengthUnit) -> str:
    """Return the distances from the end of the rail to the first hole and from hole to hole: `3 1/2, 6, 6 in`."""
    told = [length_text(distance, unit).removesuffix(f" {unit}") for distance in distances]
    return f"{', '.join(told)} {unit}"


def _table(sheet: ProfileSheet, properties: SectionProperties) -> list[str]:
    rows = _worn_rows(sheet, properties) if sheet.worn is not None else _new_rows(sheet, properties)
    heads = ("worn", "new", "left") if sheet.worn is not None else ("US", "SI", "")
    parts = [line(8, 203.5, 182, 203.5, "rule")]
    half = (len(rows) + 1) // 2
    for column, x in ((rows[:half], 8.0), (rows[half:], 98.0)):
        stops = (x + 52, x + 69, x + 84) if sheet.worn is not None else (x + 58, x + 84, x + 84)
        parts += [text(stop, 207.6, word, "head", "end") for stop, word in zip(stops, heads, strict=True) if word]
        for index, row in enumerate(column):
            y = 212.4 + 5 * index
            parts.append(text(x, y, row[0], "cell"))
            parts += [text(stop, y, word, "cell", "end") for stop, word in zip(stops, row[1:], strict=False)]
    return parts


def _measure(kind: Kind, code: str, value: float, places: int) -> str:
    unit = UNITS[kind][code]
    return f"{unit.from_si(value):.{places}f} {unit.label}"


def _quantities(sheet: ProfileSheet, properties: SectionProperties) -> list[tuple[str, Kind, float]]:
    found: list[tuple[str, Kind, float]] = [("Area", Kind.AREA, properties.area)]
    if properties.parts is not None:
        found += [
            ("\u2002head", Kind.AREA, properties.parts.head),
            ("\u2002web and fillets", Kind.AREA, properties.parts.web),
            ("\u2002base", Kind.AREA, properties.parts.base),
        ]
    found += [
        ("Mass per length", Kind.MASS_PER_LENGTH, mass_per_length(properties.area, sheet.density)),
        ("Perimeter", Kind.LENGTH, properties.perimeter),
        ("Inertia Ix", Kind.SECOND_MOMENT, properties.second_moment_horizontal),
        ("Modulus, head", Kind.SECTION_MODULUS, properties.section_modulus_head),
        ("Modulus, base", Kind.SECTION_MODULUS, properties.section_modulus_base),
        ("Inertia Iy", Kind.SECOND_MOMENT, properties.second_moment_vertical),
        ("Lateral modulus, base", Kind.SECTION_MODULUS, properties.lateral_modulus_base),
    ]
    if sheet.torsion_constant is not None and sheet.worn is None:
        found.append(("Torsion constant", Kind.SECOND_MOMENT, sheet.torsion_constant))
    return found


_UNITS: dict[Kind, tuple[tuple[str, int], tuple[str, int]]] = {
    Kind.AREA: (("in2", 3), ("cm2", 2)),
    Kind.LENGTH: (("in", 2), ("mm", 0)),
    Kind.MASS_PER_LENGTH: (("lb_per_yd", 2), ("kg_per_m", 2)),
    Kind.SECOND_MOMENT: (("in4", 2), ("cm4", 1)),
    Kind.SECTION_MODULUS: (("in3", 2), ("cm3", 1)),
}


def _new_rows(sheet: ProfileSheet, properties: SectionProperties) -> list[Row]:
    rows: list[Row] = []
    for label, kind, value in _quantities(sheet, properties):
        us, si = (_measure(kind, code, value, places) for code, places in _UNITS[kind])
        rows.append((label, us, si))
    return rows


def _worn_rows(sheet: ProfileSheet, properties: SectionProperties) -> list[Row]:
    if sheet.worn is None:
        return []
    index = 0 if sheet.unit == "in" else 1
    rows: list[Row] = []
    worn = _quantities(sheet, section_properties(sheet.worn))
    for (label, kind, after), (_, _, before) in zip(worn, _quantities(sheet, properties), strict=True):
        code, places = _UNITS[kind][index]
        label_unit = UNITS[kind][code].label
        rows.append(
            (
                f"{label} ({label_unit})",
                f"{UNITS[kind][code].from_si(after):.{places}f}",
                f"{UNITS[kind][code].from_si(before):.{places}f}",
                f"{100 * after / before:.1f} %",
            )
        )
    return rows


def _description(sheet: ProfileSheet, properties: SectionProperties) -> str:
    height, width = both(properties.height, sheet.unit), both(properties.width, sheet.unit)
    words = f"{sheet.title}. Height {height[0]} ({height[1]}), base {width[0]} ({width[1]})."
    return f"{words} Neutral axis {both(properties.centroid_height, sheet.unit)[0]} above the base."
