"""From the measures of a drawing to the closed outline.

Only the right half is built, upwards from the base, and mirrored. Where a drawing over-determines a curve (a radius,
both its ends and its tangents) the measures named in `ProfileParameters` decide and the others follow.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from railrules_api.domain.errors import refuse
from railrules_api.domain.profile.elements import Arc, Element, Line, Part, Point, arc_between, mirrored_chain
from railrules_api.domain.profile.outline import Outline, check_outline

if TYPE_CHECKING:
    from railrules_api.domain.profile.parameters import ProfileParameters, WebArc

Straight = tuple[Point, Point]
"""A point and a unit direction."""


def build_outline(parameters: ProfileParameters) -> Outline:
    """Build the outline of a rail section.

    Args:
        parameters: the measures of the drawing [m, rad].

    Returns:
        A closed, smooth, counter-clockwise outline that begins with the bottom of the base.

    Raises:
        RefusedError: measures that contradict each other; the path names the group or the point at fault.
    """
    _check_measures(parameters)
    base, base_plane = _base(parameters)
    head, head_plane = _head(parameters)
    lower = _web_face(parameters.web_thickness / 2, parameters.lower_web, base_plane, "lower_web")
    # The upper web face is the lower one of the rail stood on its head.
    height = parameters.height
    flipped_plane = (_flip(head_plane[0], height), (head_plane[1][0], -head_plane[1][1]))
    flipped_steps = tuple(
        type(step)(step.radius, None if step.centre_height is None else height - step.centre_height)
        for step in parameters.upper_web
    )
    upper = [
        _flipped(arc, height)
        for arc in reversed(_web_face(parameters.web_thickness / 2, flipped_steps, flipped_plane, "upper_web"))
    ]
    web: list[Element] = [*lower]
    rise = upper[0].start[1] - lower[-1].end[1]
    if rise < 0.0 and not math.isclose(rise, 0.0, abs_tol=1e-12):
        raise refuse("web", reason="the upper and lower web arcs overlap", value=rise, minimum=0.0)
    if rise > 1e-12:  # noqa: PLR2004  (a picometre: the two faces meet in the web's thinnest point)
        web.append(Line(lower[-1].end, upper[0].start))
    web.extend(upper)
    underside = _between("head underside", web[-1].end, head[0].start, head_plane[1])
    top_of_base = _between("base", base[-1].end, web[0].start, base_plane[1])
    right: list[tuple[Element, Part]] = [(element, Part.BASE) for element in (*base, top_of_base)]
    right += [(element, Part.WEB) for element in web]
    right += [(element, Part.HEAD) for element in (underside, *head)]
    return _whole(right, parameters)


def _whole(right: list[tuple[Element, Part]], parameters: ProfileParameters) -> Outline:
    """Close the right half with its image, joining the bottom and the crown into single elements."""
    first, crown = right[0][0], right[-1][0]
    inner = [element for element, _ in right[1:-1]]
    bottom = Line((-first.end[0], first.end[1]), first.end)
    assert isinstance(crown, Arc)  # the head ends in the first crown arc by construction
    top = Arc(crown.start, (-crown.start[0], crown.start[1]), crown.centre, crown.radius, 2 * crown.sweep)
    parts = [part for _, part in right[1:-1]]
    elements: tuple[Element, ...] = (bottom, *inner, top, *mirrored_chain(inner))
    check_outline(elements, smooth=True)
    return Outline(
        elements,
        (Part.BASE, *parts, Part.HEAD, *reversed(parts)),
        (0.0, parameters.height - parameters.head_depth),
        (0.0, parameters.base_depth),
    )


def _check_measures(parameters: ProfileParameters) -> None:
    for name in (
        "height",
        "base_width",
        "head_width",
        "web_thickness",
        "head_depth",
        "base_depth",
        "lower_corner_radius",
        "base_upper_edge_radius",
        "base_lower_edge_radius",
    ):
        value: float = getattr(parameters, name)
        if not (math.isfinite(value) and value > 0.0):
            raise refuse(name, reason="must be a positive length", value=value, minimum=0.0)
    for name in ("head_side_angle", "head_fishing_angle", "base_fishing_angle"):
        value = getattr(parameters, name)
        if not 0.0 <= value < math.pi / 4:
            raise refuse(name, reason="must be an angle below 45 degrees", value=value, minimum=0.0, maximum=math.pi / 4)
    if parameters.fishing_height <= 0.0:
        raise refuse("height", reason="head and base leave no room for a web", value=parameters.fishing_height, minimum=0.0)
    if len(parameters.crown) < 2:  # noqa: PLR2004
        raise refuse("crown", reason="a crown needs a running surface and a gage corner", value=len(parameters.crown))
    for group in ("crown", "upper_web", "lower_web"):
        for index, step in enumerate(getattr(parameters, group)):
            if not (math.isfinite(step.radius) and step.radius > 0.0):
                raise refuse(group, index, "radius", reason="must be a positive length", value=step.radius, minimum=0.0)


def _base(parameters: ProfileParameters) -> tuple[list[Element], Straight]:
    """Return the base from the bottom's middle to the inner slope, and that slope as seen going inwards."""
    half = parameters.base_width / 2
    inner_angle = parameters.base_fishing_angle
    inner: Straight = ((0.0, parameters.base_depth), (-math.cos(inner_angle), math.sin(inner_angle)))
    outer_angle = parameters.base_outer_angle
    thickness, rounding = parameters.base_edge_thickness, parameters.base_slope_radius
    if outer_angle is None or thickness is None or rounding is None:
        if not outer_angle is thickness is rounding is None:
            raise refuse("base_outer_angle", reason="a second slope needs its angle, its edge thickness and its rounding")
        outer = inner
    else:
        outer = ((half, thickness), (-math.cos(outer_angle), math.sin(outer_angle)))
    bottom: Straight = ((0.0, 0.0), (1.0, 0.0))
    edge: Straight = ((half, 0.0), (0.0, 1.0))
    lower = _fillet(bottom, edge, parameters.base_lower_edge_radius)
    upper = _fillet(edge, outer, parameters.base_upper_edge_radius)
    chain: list[Element] = [
        Line((0.0, 0.0), lower.start),
        lower,
        _between("base edge", lower.end, upper.start, edge[1]),
        upper,
    ]
    if rounding is not None:
        bend = _fillet(outer, inner, rounding)
        chain += [_between("base slopes", upper.end, bend.start, outer[1]), bend]
    return chain, inner


def _head(parameters: ProfileParameters) -> tuple[list[Element], Straight]:
    """Return the head from the lower corner to the top, and its underside as seen going outwards."""
    angle, lean = parameters.head_fishing_angle, parameters.head_side_angle
    plane: Straight = ((0.0, parameters.height - parameters.head_depth), (math.cos(angle), math.sin(angle)))
    upwards = (-math.sin(lean), math.cos(lean))
    inwards = (-upwards[1], upwards[0])
    steps = parameters.crown
    for index, step in enumerate(steps[:-2]):
        if step.width is None:
            raise refuse("crown", index, "width", reason="only the last two crown arcs may go without a width")
    if steps[-1].width is not None:
        raise refuse("crown", len(steps) - 1, "width", reason="the gage corner ends where it touches the head side")
    # Circles from the top outwards; each new centre lies on the radius through the end of the arc before.
    centres: list[Point] = [(0.0, parameters.height - steps[0].radius)]
    ends: list[Point] = [(0.0, parameters.height)]
    for index, step in enumerate(steps[:-1]):
        centre = centres[-1]
        if step.width is None:
            break
        reach = (step.width / 2 - centre[0]) / step.radius
        if not -1.0 < reach < 1.0:
            raise refuse("crown", index, "width", reason="the arc cannot be that wide", value=step.width)
        end = (step.width / 2, centre[1] + step.radius * math.sqrt(1.0 - reach * reach))
        ratio = steps[index + 1].radius / step.radius
        ends.append(end)
        centres.append((end[0] + (centre[0] - end[0]) * ratio, end[1] + (centre[1] - end[1]) * ratio))
    corner = steps[-1].radius
    if len(centres) == len(steps):
        side: Straight = (
            (centres[-1][0] - inwards[0] * corner, centres[-1][1] - inwards[1] * corner),
            upwards,
        )
    else:
        side = (_side_point(parameters, plane), upwards)
        larger = steps[-2].radius
        offset = (side[0][0] + inwards[0] * corner, side[0][1] + inwards[1] * corner)
        solved = max(_on_circle(centres[-1], larger - corner, (offset, upwards), "crown"), key=lambda place: place[1])
        ends.append(_touch(centres[-1], larger, solved, corner))
        centres.append(solved)
    touch = (centres[-1][0] - inwards[0] * corner, centres[-1][1] - inwards[1] * corner)
    lower = _fillet(plane, side, parameters.lower_corner_radius)
    chain: list[Element] = [lower, _between("head side", lower.end, touch, upwards)]
    starts = [touch, *reversed(ends[1:])]
    for centre, start, end in zip(reversed(centres), starts, [*starts[1:], ends[0]], strict=True):
        chain.append(arc_between(centre, start, end, left=True))
    return chain, plane


def _side_point(parameters: ProfileParameters, plane: Straight) -> Point:
    half = parameters.head_width / 2
    if parameters.head_width_depth is not None:
        return half, parameters.height - parameters.head_width_depth
    return half, plane[0][1] + half * plane[1][1] / plane[1][0]


def _web_face(half: float, steps: tuple[WebArc, ...], plane: Straight, group: str) -> list[Arc]:
    """Return the arcs of the lower web face from the fishing plane up to the thinnest place.

    Args:
        half: half the web thickness [m].
        steps: arcs from the web down to the plane.
        plane: the upper face of the base, direction inwards.
        group: name for refusals.
    """
    if not steps:
        raise refuse(group, reason="a web needs at least a fillet")
    direction = plane[1] if plane[1][0] < 0.0 else (-plane[1][0], -plane[1][1])
    normal = (direction[1], -direction[0])
    fillet = steps[-1].radius
    if steps[-1].centre_height is not None:
        raise refuse(group, len(steps) - 1, "centre_height", reason="the fillet's height follows from tangency")
    offset: Straight = ((plane[0][0] + normal[0] * fillet, plane[0][1] + normal[1] * fillet), direction)
    centres: list[Point] = []
    for index, step in enumerate(steps[:-1]):
        if step.centre_height is None:
            raise refuse(group, index, "centre_height", reason="only the fillet may go without a centre height")
        if not centres:
            centres.append((half + step.radius, step.centre_height))
            continue
        away, drop = steps[index - 1].radius - step.radius, centres[-1][1] - step.centre_height
        if abs(drop) >= abs(away):
            raise refuse(group, index, "centre_height", reason="the arcs cannot touch", value=step.centre_height)
        centres.append((centres[-1][0] - math.sqrt(away * away - drop * drop), step.centre_height))
    if centres:
        previous = steps[len(centres) - 1].radius
        centres.append(min(_on_circle(centres[-1], previous - fillet, offset, group)))
        touches = [(half, centres[0][1])]
    else:
        along = (half + fillet - offset[0][0]) / direction[0]
        centres.append((half + fillet, offset[0][1] + along * direction[1]))
        touches = [(half, centres[0][1])]
    for index in range(1, len(centres)):
        touches.append(_touch(centres[index - 1], steps[index - 1].radius, centres[index], steps[index].radius))
    touches.append((centres[-1][0] - normal[0] * fillet, centres[-1][1] - normal[1] * fillet))
    return [
        arc_between(centres[index], touches[index + 1], touches[index], left=False) for index in reversed(range(len(centres)))
    ]


def _touch(centre: Point, radius: float, other: Point, other_radius: float) -> Point:
    """Return where two circles, one inside the other, touch; their radii differ."""
    ratio = radius / (radius - other_radius)
    return centre[0] + (other[0] - centre[0]) * ratio, centre[1] + (other[1] - centre[1]) * ratio


def _on_circle(centre: Point, radius: float, line: Straight, group: str) -> tuple[Point, Point]:
    """Return the two places where a straight line meets a circle; the radius is the difference of those of two arcs."""
    (px, py), (dx, dy) = line
    ox, oy = px - centre[0], py - centre[1]
    middle = ox * dx + oy * dy
    rest = middle * middle - (ox * ox + oy * oy - radius * radius)
    if radius == 0.0 or rest <= 0.0:  # without a radius, rounding alone could leave a rest
        raise refuse(group, reason="the radii leave no arc that touches both its neighbours", value=rest)
    near, far = -middle - math.sqrt(rest), -middle + math.sqrt(rest)
    return (px + near * dx, py + near * dy), (px + far * dx, py + far * dy)


def _fillet(first: Straight, second: Straight, radius: float) -> Arc:
    """Return the arc that rounds the corner between two straight lines, travelled in the order given."""
    (ax, ay), (ux, uy) = first
    (bx, by), (vx, vy) = second
    cross = ux * vy - uy * vx
    along = ((bx - ax) * vy - (by - ay) * vx) / cross
    corner = (ax + along * ux, ay + along * uy)
    turn = math.atan2(cross, ux * vx + uy * vy)
    back = radius * math.tan(abs(turn) / 2)
    start = (corner[0] - back * ux, corner[1] - back * uy)
    end = (corner[0] + back * vx, corner[1] + back * vy)
    hand = math.copysign(radius, turn)
    return Arc(start, end, (start[0] - hand * uy, start[1] + hand * ux), radius, turn)


def _between(group: str, start: Point, end: Point, direction: Point) -> Line:
    """Return the straight piece between two roundings, refused when they overlap."""
    room = (end[0] - start[0]) * direction[0] + (end[1] - start[1]) * direction[1]
    if room <= 0.0:
        raise refuse(group, reason="the roundings at both ends leave no straight piece between them", value=room, minimum=0.0)
    return Line(start, end)


def _flip(point: Point, height: float) -> Point:
    return point[0], height - point[1]


def _flipped(arc: Arc, height: float) -> Arc:
    """Return the image in a horizontal axis at half height, turned round so that the steel stays on the left."""
    return Arc(_flip(arc.end, height), _flip(arc.start, height), _flip(arc.centre, height), arc.radius, arc.sweep)
