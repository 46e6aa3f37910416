"""Worn heads: the outline cut exactly by straight lines, or its head replaced by measured points.

Vertical wear of depth v leaves what lies below the level H - v. Gage-face wear leaves what lies behind a straight face
that crosses the gage line, `gage_depth` below the top of the new rail, at a horizontal distance `amount` inside the new
head, and leans inwards going up by `angle` from the vertical. Both are measured on the new section, so they can be given
together. An amount of 0 means no worn face at all; a face that only cuts the gage corner has its amount at a gage line
high enough to cross it. The cut points on lines and arcs are found in closed form; what stays of every line and arc
stays exact.

More wear of either kind leaves a subset of what less wear leaves. Area can only fall; and since a second moment is least
about the centroid, Ix and Iy of a subset about its own centroid can only fall too.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise
from typing import TYPE_CHECKING

from railrules_api.domain.errors import refuse
from railrules_api.domain.profile.elements import Element, Line, Part, Point
from railrules_api.domain.profile.outline import CLOSE, Outline, check_outline

if TYPE_CHECKING:
    from collections.abc import Sequence

STEEPEST_FACE = math.pi / 3
"""Greatest lean of a worn face accepted [rad]; flatter cuts are wear of the top, not of the face."""


class Side(StrEnum):
    """Which side of the head faces the gage, as drawn."""

    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True, slots=True, kw_only=True)
class FaceWear:
    """Wear of one face of the head.

    Attributes:
        side: the worn side.
        amount: horizontal loss at the gage line [m].
        angle: lean of the worn face from the vertical, towards the middle of the head going up [rad].
        gage_depth: depth of the gage line below the top of the new rail [m].
    """

    side: Side
    amount: float
    angle: float
    gage_depth: float


def wear_head(outline: Outline, vertical: float, faces: Sequence[FaceWear] = ()) -> Outline:
    """Cut a new outline by vertical wear and by wear of one or both faces.

    Args:
        outline: the new outline, with its parts known.
        vertical: depth of vertical wear [m]; 0 for none.
        faces: wear of the faces, at most one a side.

    Returns:
        The worn outline.

    Raises:
        RefusedError: negative or overly deep wear, two entries for a side, or an outline without parts.
    """
    head = _head_of(outline)
    _, _, _, top = outline.bounds()
    lowest = max(head[0].start[1], head[-1].end[1])
    if not 0.0 <= vertical < math.inf:
        raise refuse("vertical", reason="wear is not negative", value=vertical, minimum=0.0)
    if vertical >= top - lowest:
        raise refuse("vertical", reason="the wear is deeper than the head", value=vertical, minimum=0.0, maximum=top - lowest)
    if len({face.side for face in faces}) < len(faces):
        raise refuse("faces", reason="each side can be given once")
    chain = head
    if vertical > 0.0:
        chain = _cut(chain, (0.0, top - vertical), (0.0, 1.0), ("vertical",))
    for index, face in enumerate(faces):
        point, normal = _face_line(head, face, top, index)
        if face.amount > 0.0:
            chain = _cut(chain, point, normal, ("faces", index, "amount"))
    return _with_head(outline, chain)


def replace_head(outline: Outline, points: Sequence[Point], tolerance: float) -> Outline:
    """Replace the worn part of the head by measured points.

    The points run from right to left over the head, as the outline does. The first and the last must lie on the new
    head within the tolerance; the head below them is taken as new. A point outside the new section by more than the
    tolerance means another section, a wrong placing or a lip of flowed metal, and is refused.

    Args:
        outline: the new outline, with its parts known.
        points: measured points in the axes of the outline [m], at least two.
        tolerance: accuracy of the measurement [m].

    Returns:
        The worn outline.

    Raises:
        RefusedError: with path `points/<number>`.
    """
    head = _head_of(outline)
    fewest = 2
    if len(points) < fewest:
        raise refuse("points", reason="a measured head needs two points", value=len(points), minimum=float(fewest))
    if not 0.0 <= tolerance < math.inf:
        raise refuse("tolerance", reason="must not be negative", value=tolerance, minimum=0.0)
    nearest = []
    for number, point in enumerate(points, 1):
        if not (math.isfinite(point[0]) and math.isfinite(point[1])):
            raise refuse("points", number, reason="coordinates must be finite numbers", value=point)
        found = _nearest(head, point)
        nearest.append(found)
        if found.outside and found.distance > tolerance:
            raise refuse("points", number, reason="lies outside the new section", value=found.distance, maximum=tolerance)
    for number, found in ((1, nearest[0]), (len(points), nearest[-1])):
        if found.distance > max(tolerance, CLOSE):
            raise refuse(
                "points",
                number,
                reason="the measured line must begin and end on the new head",
                value=found.distance,
                maximum=tolerance,
            )
    begin, finish = nearest[0], nearest[-1]
    if (begin.index, begin.fraction) >= (finish.index, finish.fraction):
        raise refuse("points", reason="the points must run over the head from right to left")
    chain: list[Element] = [*head[: begin.index], *_pieces(head[begin.index], 0.0, begin.fraction)]
    corners = [begin.point, *points, finish.point]
    chain += [Line(a, b) for a, b in pairwise(corners) if math.dist(a, b) > CLOSE]
    chain += [*_pieces(head[finish.index], finish.fraction, 1.0), *head[finish.index + 1 :]]
    worn = _with_head(outline, _joined(chain))
    check_outline(worn.elements, smooth=False)
    return worn


@dataclass(frozen=True, slots=True)
class _Near:
    """The nearest point of a chain."""

    index: int
    fraction: float
    point: Point
    distance: float
    outside: bool


def _nearest(chain: Sequence[Element], point: Point) -> _Near:
    best: _Near | None = None
    for index, element in enumerate(chain):
        if isinstance(element, Line):
            (ax, ay), (bx, by) = element.start, element.end
            share = ((point[0] - ax) * (bx - ax) + (point[1] - ay) * (by - ay)) / element.length**2
            fraction = min(max(share, 0.0), 1.0)
        else:
            held = element.holds(math.atan2(point[1] - element.centre[1], point[0] - element.centre[0]))
            fraction = held if held is not None else float(math.dist(point, element.end) < math.dist(point, element.start))
        place = element.piece(0.0, fraction).end if fraction > 0.0 else element.start
        distance = math.dist(point, place)
        if best is None or distance < best.distance:
            heading = element.heading(fraction)
            # Steel lies on the left of the direction of travel.
            left = math.cos(heading) * (point[1] - place[1]) - math.sin(heading) * (point[0] - place[0])
            best = _Near(index, fraction, place, distance, left < 0.0)
    assert best is not None  # a head is never empty
    return best


def _head_of(outline: Outline) -> tuple[Element, ...]:
    head = outline.chain(Part.HEAD)
    if not head:
        raise refuse("outline", reason="the parts of the outline are not known, so no head can be worn")
    return head


def _face_line(head: Sequence[Element], face: FaceWear, top: float, index: int) -> tuple[Point, Point]:
    """Return a point of the worn face and the direction of the steel it takes away."""
    sign = 1.0 if face.side is Side.RIGHT else -1.0
    deepest = top - max(head[0].start[1], head[-1].end[1])
    if not 0.0 < face.gage_depth < deepest:
        raise refuse(
            "faces",
            index,
            "gage_depth",
            reason="must lie within the head",
            value=face.gage_depth,
            minimum=0.0,
            maximum=deepest,
        )
    if not 0.0 <= face.angle <= STEEPEST_FACE:
        raise refuse("faces", index, "angle", reason="outside its limits", value=face.angle, minimum=0.0, maximum=STEEPEST_FACE)
    level = top - face.gage_depth
    reach = max(sign * x for x in _at_level(head, level))
    if not 0.0 <= face.amount < reach:
        raise refuse(
            "faces",
            index,
            "amount",
            reason="must not be negative nor reach the middle of the head",
            value=face.amount,
            minimum=0.0,
            maximum=reach,
        )
    return (sign * (reach - face.amount), level), (sign * math.cos(face.angle), math.sin(face.angle))


def _at_level(chain: Sequence[Element], level: float) -> list[float]:
    """Return where a chain crosses a level, junctions between two elements included."""
    found = [element.at(f)[0] for element in chain for f in element.crossings((0.0, level), (0.0, 1.0))]
    found += [element.start[0] for element in chain if abs(element.start[1] - level) <= CLOSE]
    return found


def _cut(chain: Sequence[Element], point: Point, normal: Point, path: tuple[str | int, ...]) -> tuple[Element, ...]:
    """Take away the part of a head that lies beyond a straight line, which closes the gap."""

    def beyond(place: Point) -> float:
        return (place[0] - point[0]) * normal[0] + (place[1] - point[1]) * normal[1]

    if beyond(chain[0].start) >= 0.0 or beyond(chain[-1].end) >= 0.0:
        raise refuse(*path, reason="the worn face would leave the head through the fillet below it")
    kept: list[Element] = []
    gaps: list[int] = []
    for element in chain:
        crossings = element.crossings(point, normal)
        if not crossings and beyond(element.start) < 0.0 and beyond(element.end) < 0.0:
            kept.append(element)  # whole, as most are
            continue
        for first, last in pairwise((0.0, *crossings, 1.0)):
            if beyond(element.at((first + last) / 2)) <= 0.0:
                kept.append(element.piece(first, last))
            elif not gaps or gaps[-1] != len(kept):
                gaps.append(len(kept))
    if len(gaps) > 1:
        raise refuse(*path, reason="the worn face would cut the head into pieces")
    for gap in gaps:
        kept.insert(gap, Line(kept[gap - 1].end, kept[gap].start))
    return _joined(kept)


def _pieces(element: Element, first: float, last: float) -> list[Element]:
    return [element.piece(first, last)] if last > first else []


def _joined(chain: Sequence[Element]) -> tuple[Element, ...]:
    """Drop pieces too short to have a direction, closing over them."""
    kept: list[Element] = [element for element in chain if element.length > CLOSE]
    return tuple(kept)


def _with_head(outline: Outline, head: Sequence[Element]) -> Outline:
    """Return the outline with another head chain in the place of its own."""
    first = outline.parts.index(Part.HEAD)
    after = len(outline.parts) - outline.parts[::-1].index(Part.HEAD)
    return Outline(
        (*outline.elements[:first], *head, *outline.elements[after:]),
        (*outline.parts[:first], *(Part.HEAD for _ in head), *outline.parts[after:]),
        outline.head_root,
        outline.base_root,
    )
