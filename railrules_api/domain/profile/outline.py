"""A closed outline and what makes one acceptable.

An outline is refused, with the number of the point at fault, when it does not close, has a corner where the drawing has
none, crosses itself, or runs clockwise. Points are numbered from 1 in the order given; element n begins at point n.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from railrules_api.domain.errors import refuse
from railrules_api.domain.profile.elements import Arc, Element, Line, Part, Point, turn_between
from railrules_api.domain.profile.integrals import area_of

if TYPE_CHECKING:
    from collections.abc import Sequence

CLOSE = 1e-9
"""Gap between two elements that is still a common point [m]: far above rounding, far below any rail tolerance."""

SMOOTH = 1e-6
"""Change of direction that still counts as tangent [rad]."""

OPEN = 0.9
"""Share of the height above which the line that closes a given outline is no side of a rail: half a rail was measured."""

FEWEST_POINTS = 8
"""A given outline with fewer points cannot show head, web and base: an I-shape has twelve, a T on a slab eight."""


@dataclass(frozen=True, slots=True)
class Outline:
    """A closed outline of a section, counter-clockwise.

    Attributes:
        elements: lines and arcs, each beginning where the one before ends.
        parts: the part of the rail each element bounds; empty when the outline was given without that knowledge.
        head_root: where the head fishing planes meet on the vertical axis [m]; None when not known.
        base_root: where the base fishing planes meet on the vertical axis [m]; None when not known.
    """

    elements: tuple[Element, ...]
    parts: tuple[Part, ...] = ()
    head_root: Point | None = None
    base_root: Point | None = None

    def chain(self, part: Part) -> tuple[Element, ...]:
        """Return the elements of head or base in running order from right to left, or those of the web, both sides.

        The base chain passes the point at which the element list begins, so it is rotated to stay in one piece.
        """
        chosen = [index for index, name in enumerate(self.parts) if name is part]
        breaks = [k for k in range(1, len(chosen)) if chosen[k] != chosen[k - 1] + 1]
        if part is not Part.WEB and breaks:
            chosen = chosen[breaks[-1] :] + chosen[: breaks[-1]]
        return tuple(self.elements[index] for index in chosen)

    def bounds(self) -> tuple[float, float, float, float]:
        """Return the smallest x, smallest y, largest x, largest y [m]."""
        boxes = [element.bounds() for element in self.elements]
        return (
            min(box[0] for box in boxes),
            min(box[1] for box in boxes),
            max(box[2] for box in boxes),
            max(box[3] for box in boxes),
        )

    @property
    def height(self) -> float:
        """Height from lowest to highest point [m]."""
        _, low, _, high = self.bounds()
        return high - low

    def moved(self, right: float, up: float) -> Outline:
        """Return the outline shifted [m]."""

        def shift(point: Point | None) -> Point | None:
            return None if point is None else (point[0] + right, point[1] + up)

        return Outline(
            tuple(element.moved(right, up) for element in self.elements),
            self.parts,
            shift(self.head_root),
            shift(self.base_root),
        )

    def mirrored(self) -> Outline:
        """Return the image in the vertical axis, again counter-clockwise."""

        def image(point: Point | None) -> Point | None:
            return None if point is None else (-point[0], point[1])

        return Outline(
            tuple(element.mirrored() for element in reversed(self.elements)),
            tuple(reversed(self.parts)),
            image(self.head_root),
            image(self.base_root),
        )


def check_outline(elements: Sequence[Element], *, smooth: bool) -> None:
    """Refuse a chain of elements that does not bound a section.

    Args:
        elements: the chain; its last element must end where the first begins.
        smooth: refuse corners, as a drawing with a radius at every junction demands.

    Raises:
        RefusedError: with path `outline/<point number>` and the reason.
    """
    count = len(elements)
    for index, element in enumerate(elements):
        if element.length <= CLOSE:
            raise refuse("outline", index + 1, reason="two neighbouring points coincide", value=element.length)
    ways = [element.ways() for element in elements]
    for index, element in enumerate(elements):
        following = index + 1 if index + 1 < count else 0
        gap = math.dist(element.end, elements[following].start)
        if gap > CLOSE:
            raise refuse("outline", following + 1, reason="the outline does not close here", value=gap, maximum=CLOSE)
        turn = abs(turn_between(ways[index][1], ways[following][0]))
        if smooth and turn > SMOOTH:
            raise refuse("outline", following + 1, reason="the outline has a corner here", value=turn, maximum=SMOOTH)
        if turn > math.pi - SMOOTH:
            raise refuse("outline", following + 1, reason="the outline turns straight back here", value=turn)
    crossing = first_crossing(elements)
    if crossing is not None:
        raise refuse(
            "outline",
            crossing[0] + 1,
            reason=f"the outline crosses itself: the element that begins at this point meets the one from point "
            f"{crossing[1] + 1}",
        )
    area = area_of(elements)
    if area <= 0.0:
        raise refuse("outline", reason="the outline runs clockwise; the steel must lie on its left", value=area, minimum=0.0)


def outline_from_points(points: Sequence[Point]) -> Outline:
    """Build an outline of straight lines from the corner points of a given section.

    Args:
        points: x and y [m], counter-clockwise, without repeating the first; at least `FEWEST_POINTS`.

    Returns:
        The checked outline, without knowledge of head, web and base.

    Raises:
        RefusedError: too few points, a number that is not finite, a half section left open, or a fault named by `check_outline`.
    """
    if len(points) < FEWEST_POINTS:
        raise refuse(
            "outline",
            reason=f"an outline needs at least {FEWEST_POINTS} points",
            value=len(points),
            minimum=float(FEWEST_POINTS),
        )
    for number, (x, y) in enumerate(points, 1):
        if not (math.isfinite(x) and math.isfinite(y)):
            raise refuse("outline", number, reason="coordinates must be finite numbers", value=(x, y))
    height = max(y for _, y in points) - min(y for _, y in points)
    span = abs(points[-1][1] - points[0][1])
    if span > OPEN * height:
        raise refuse(
            "outline",
            len(points),
            reason="the outline is open: a line back to its first point would run the whole height, as no side of a rail does",
            value=span,
            maximum=OPEN * height,
        )
    elements = tuple(Line(points[k], points[(k + 1) % len(points)]) for k in range(len(points)))
    check_outline(elements, smooth=False)
    return Outline(elements)


def first_crossing(elements: Sequence[Element]) -> tuple[int, int] | None:
    """Return the indices of two elements that are not neighbours and meet, None when there are none.

    Sweeps over the boxes of the elements sorted by their left ends, so that only overlapping boxes are compared.
    """
    count = len(elements)
    boxes = [element.bounds() for element in elements]
    active: list[int] = []
    for index in sorted(range(count), key=[box[0] for box in boxes].__getitem__):
        left, low, _, high = boxes[index]
        still = []
        for other in active:
            _, bottom, right, top = boxes[other]
            if right < left:
                continue
            still.append(other)
            if bottom > high or top < low or (index - other) % count in (1, count - 1):
                continue
            if _meet(elements[index], elements[other]):
                return min(index, other), max(index, other)
        active = still
        active.append(index)
    return None


def _meet(first: Element, second: Element) -> bool:
    if isinstance(first, Line) and isinstance(second, Line):
        return _lines_meet(first, second)
    if isinstance(first, Arc) and isinstance(second, Arc):
        return _arcs_meet(first, second)
    line, arc = (first, second) if isinstance(first, Line) else (second, first)
    assert isinstance(line, Line)  # the two cases above leave one of each
    normal = (line.start[1] - line.end[1], line.end[0] - line.start[0])
    return any(_within(line, arc.at(fraction)) for fraction in arc.crossings(line.start, normal))


def _within(line: Line, point: Point) -> bool:
    (ax, ay), (bx, by) = line.start, line.end
    along = (point[0] - ax) * (bx - ax) + (point[1] - ay) * (by - ay)
    return 0.0 <= along <= line.length**2


def _lines_meet(first: Line, second: Line) -> bool:
    def turn(a: Point, b: Point, c: Point) -> float:
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

    one, two = turn(first.start, first.end, second.start), turn(first.start, first.end, second.end)
    three, four = turn(second.start, second.end, first.start), turn(second.start, second.end, first.end)
    if one == two == 0.0:  # on one straight line: they meet when either end of one lies within the other
        return _within(first, second.start) or _within(first, second.end) or _within(second, first.start)
    return one * two <= 0.0 and three * four <= 0.0


def _arcs_meet(first: Arc, second: Arc) -> bool:
    gap = math.dist(first.centre, second.centre)
    if gap == 0.0 or not abs(first.radius - second.radius) < gap < first.radius + second.radius:
        return False
    reach = (gap**2 + first.radius**2 - second.radius**2) / (2 * gap)
    half = math.acos(reach / first.radius)
    base = math.atan2(second.centre[1] - first.centre[1], second.centre[0] - first.centre[0])
    for angle in (base - half, base + half):
        x = first.centre[0] + first.radius * math.cos(angle)
        y = first.centre[1] + first.radius * math.sin(angle)
        if first.holds(angle) is not None and second.holds(math.atan2(y - second.centre[1], x - second.centre[0])) is not None:
            return True
    return False
