"""Exact integrals over the area inside an outline of lines and arcs, by Green's theorem.

With the boundary run counter-clockwise (any text on vector calculus):
A = 1/2 ∮(x dy - y dx), ∫y dA = -1/2 ∮y² dx, ∫x dA = 1/2 ∮x² dy, ∫y² dA = -1/3 ∮y³ dx, ∫x² dA = 1/3 ∮x³ dy,
∫xy dA = 1/2 ∮x² y dy. Along a line the integrands are polynomials, along an arc powers of sine and cosine; both have
closed forms, so nothing is approximated.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from railrules_api.domain.profile.elements import Arc

if TYPE_CHECKING:
    from collections.abc import Iterable

    from railrules_api.domain.profile.elements import Element


@dataclass(frozen=True, slots=True)
class Moments:
    """Integrals over an area about the coordinate axes.

    Attributes:
        area: ∫dA [m2].
        first_x: ∫x dA [m3].
        first_y: ∫y dA [m3].
        second_xx: ∫x² dA [m4].
        second_yy: ∫y² dA [m4].
        second_xy: ∫xy dA [m4].
    """

    area: float
    first_x: float
    first_y: float
    second_xx: float
    second_yy: float
    second_xy: float


def moments_of(elements: Iterable[Element]) -> Moments:
    """Integrate over the area inside a closed chain; clockwise chains give negative areas.

    Args:
        elements: lines and arcs, each beginning where the one before ends.

    Returns:
        The area and its moments about the coordinate axes.

    >>> from railrules_api.domain.profile.elements import Line
    >>> moments_of((Line((0, 0), (2, 0)), Line((2, 0), (2, 1)), Line((2, 1), (0, 1)), Line((0, 1), (0, 0)))).second_xx
    2.6666666666666665
    """
    area = first_x = first_y = second_xx = second_yy = second_xy = 0.0
    for element in elements:
        ax, ay = element.start
        bx, by = element.end
        if isinstance(element, Arc):
            a, sx, sy, xx, yy, xy = _arc_terms(element)
            area += a
            first_x += sx
            first_y += sy
            second_xx += xx
            second_yy += yy
            second_xy += xy
            continue
        cross = ax * by - bx * ay
        area += cross / 2
        first_x += cross * (ax + bx) / 6
        first_y += cross * (ay + by) / 6
        second_xx += cross * (ax * ax + ax * bx + bx * bx) / 12
        second_yy += cross * (ay * ay + ay * by + by * by) / 12
        second_xy += cross * (2 * (ax * ay + bx * by) + ax * by + bx * ay) / 24
    return Moments(area, first_x, first_y, second_xx, second_yy, second_xy)


def area_of(elements: Iterable[Element]) -> float:
    """Return the area inside a closed chain alone; clockwise chains give a negative one.

    >>> from railrules_api.domain.profile.elements import Line
    >>> area_of((Line((0, 0), (2, 0)), Line((2, 0), (2, 1)), Line((2, 1), (0, 1)), Line((0, 1), (0, 0))))
    2.0
    """
    twice = 0.0
    for element in elements:
        (ax, ay), (bx, by) = element.start, element.end
        twice += ax * by - bx * ay
        if isinstance(element, Arc):
            # the circular segment beyond the chord: sector less triangle
            (u, v), r = element.centre, element.radius
            twice += r * r * element.sweep - ((ax - u) * (by - v) - (bx - u) * (ay - v))
    return twice / 2


def _arc_terms(arc: Arc) -> tuple[float, float, float, float, float, float]:
    """Return what an arc adds to the six integrals: its chord as a line, plus the circular segment beyond the chord.

    The segment is integrated about the centre of its own circle and then shifted, which keeps the digits that are lost
    when a crown of 10 in radius is integrated about the base.
    """
    (ax, ay), (bx, by) = arc.start, arc.end
    u, v = arc.centre
    r = arc.radius
    theta = arc.sweep
    dx0, dy0, dx1, dy1 = ax - u, ay - v, bx - u, by - v
    # The sector about its centre, in polar coordinates; sines and cosines of both ends come from the points themselves. The
    # two radii that close it add nothing there. From it goes the triangle under the chord.
    r2 = r * r
    swept = r2 * theta
    t = dx0 * dy1 - dx1 * dy0
    left = r2 * (swept + dx1 * dy1 - dx0 * dy0) / 8
    a = (swept - t) / 2
    sx = r2 * (dy1 - dy0) / 3 - t * (dx0 + dx1) / 6
    sy = r2 * (dx0 - dx1) / 3 - t * (dy0 + dy1) / 6
    xx = left - t * (dx0 * dx0 + dx0 * dx1 + dx1 * dx1) / 12
    yy = r2 * swept / 4 - left - t * (dy0 * dy0 + dy0 * dy1 + dy1 * dy1) / 12
    xy = r2 * (dx0 * dx0 - dx1 * dx1) / 8 - t * (2 * (dx0 * dy0 + dx1 * dy1) + dx0 * dy1 + dx1 * dy0) / 24
    # Shift the segment from the centre of its circle to the origin, then add the chord.
    cross = ax * by - bx * ay
    return (
        a + cross / 2,
        sx + a * u + cross * (ax + bx) / 6,
        sy + a * v + cross * (ay + by) / 6,
        xx + 2 * u * sx + u * u * a + cross * (ax * ax + ax * bx + bx * bx) / 12,
        yy + 2 * v * sy + v * v * a + cross * (ay * ay + ay * by + by * by) / 12,
        xy + u * sy + v * sx + u * v * a + cross * (2 * (ax * ay + bx * by) + ax * by + bx * ay) / 24,
    )
