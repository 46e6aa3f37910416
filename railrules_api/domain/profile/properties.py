"""Section properties of an outline, exact for its lines and arcs."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from railrules_api.domain.errors import refuse
from railrules_api.domain.profile.elements import Element, Line, Part, Point
from railrules_api.domain.profile.integrals import Moments, area_of, moments_of

if TYPE_CHECKING:
    from railrules_api.domain.profile.outline import Outline


@dataclass(frozen=True, slots=True)
class PartAreas:
    """The area of a section divided along the head and base fishing planes; fillets count as web.

    Attributes:
        head: area above the head fishing planes [m2].
        web: area between the planes [m2].
        base: area below the base fishing planes [m2].
    """

    head: float
    web: float
    base: float


@dataclass(frozen=True, slots=True)
class SectionProperties:
    """Properties of a section about its own centroid.

    Attributes:
        area: cross-section [m2].
        parts: area of head, web and base; None when the outline does not know them.
        height: lowest to highest point [m].
        width: leftmost to rightmost point [m].
        centroid_height: neutral axis above the bottom of the base [m].
        centroid_offset: centroid to the right of the drawing's vertical axis [m]; 0 for an unworn rail.
        second_moment_horizontal: Ix, for bending in the vertical plane [m4].
        second_moment_vertical: Iy, for lateral bending [m4].
        product_of_inertia: Ixy [m4]; 0 for an unworn rail.
        section_modulus_head: Ix over the distance to the highest point [m3].
        section_modulus_base: Ix over the distance to the lowest point [m3].
        lateral_modulus_head: Iy over the distance to the outermost point of the head [m3]; None without parts.
        lateral_modulus_base: Iy over the distance to the outermost point of the whole section, the base's edge [m3].
        perimeter: length of the outline [m].
    """

    area: float
    parts: PartAreas | None
    height: float
    width: float
    centroid_height: float
    centroid_offset: float
    second_moment_horizontal: float
    second_moment_vertical: float
    product_of_inertia: float
    section_modulus_head: float
    section_modulus_base: float
    lateral_modulus_head: float | None
    lateral_modulus_base: float
    perimeter: float


def section_properties(outline: Outline) -> SectionProperties:
    """Compute every property of an outline in closed form.

    I about the centroid = I about the axes - A c² (parallel axes); Z = I / c.

    Args:
        outline: a checked outline.

    Returns:
        The properties, SI.

    Raises:
        RefusedError: the outline holds no area.

    >>> from railrules_api.domain.profile.outline import Outline
    >>> square = Outline((Line((0, 0), (2, 0)), Line((2, 0), (2, 2)), Line((2, 2), (0, 2)), Line((0, 2), (0, 0))))
    >>> round(section_properties(square).second_moment_horizontal, 12)
    1.333333333333
    """
    moments = moments_of(outline.elements)
    if moments.area <= 0.0:
        raise refuse("outline", reason="the outline holds no area", value=moments.area, minimum=0.0)
    x, y = moments.first_x / moments.area, moments.first_y / moments.area
    horizontal = moments.second_yy - moments.area * y * y
    vertical = moments.second_xx - moments.area * x * x
    boxes = [element.bounds() for element in outline.elements]
    lefts, lows, rights, highs = zip(*boxes, strict=True)
    left, low, right, high = min(lefts), min(lows), max(rights), max(highs)
    # an outline given by points has boxes and no parts
    head = [box for box, part in zip(boxes, outline.parts, strict=False) if part is Part.HEAD]
    lateral_head = None
    if head:
        lateral_head = vertical / max(max([box[2] for box in head]) - x, x - min([box[0] for box in head]))
    return SectionProperties(
        area=moments.area,
        parts=part_areas(outline, moments),
        height=high - low,
        width=right - left,
        centroid_height=y - low,
        centroid_offset=x,
        second_moment_horizontal=horizontal,
        second_moment_vertical=vertical,
        product_of_inertia=moments.second_xy - moments.area * x * y,
        section_modulus_head=horizontal / (high - y),
        section_modulus_base=horizontal / (y - low),
        lateral_modulus_head=lateral_head,
        lateral_modulus_base=vertical / max(right - x, x - left),
        perimeter=sum([element.length for element in outline.elements]),
    )


def part_areas(outline: Outline, moments: Moments) -> PartAreas | None:
    """Divide the area along the fishing planes, None when the outline does not know them.

    The head is bounded by its own chain and by the planes from their tangent points to where they meet on the axis.
    """
    if outline.head_root is None or outline.base_root is None or not outline.parts:
        return None
    head = _closed_area(outline.chain(Part.HEAD), outline.head_root)
    base = _closed_area(outline.chain(Part.BASE), outline.base_root)
    return PartAreas(head, moments.area - head - base, base)


def mass_per_length(area: float, density: float) -> float:
    """Return the mass of a metre of rail [kg/m]: area [m2] times density [kg/m3].

    Raises:
        RefusedError: a density that is not positive.

    >>> mass_per_length(0.00767, 7850.0)
    60.2095
    """
    if not density > 0.0:
        raise refuse("density", reason="must be positive", value=density, minimum=0.0)
    return area * density


def _closed_area(chain: tuple[Element, ...], root: Point) -> float:
    return area_of((*chain, Line(chain[-1].end, root), Line(root, chain[0].start)))
