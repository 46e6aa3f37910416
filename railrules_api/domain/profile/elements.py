"""The two things an outline is made of: straight lines and circular arcs.

Coordinates: x to the right and y up from the middle of the base, metres, the rail seen along the track. An outline runs
counter-clockwise, so the steel lies on the left of every element.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

_QUARTER = math.pi / 2

Point = tuple[float, float]
"""Position in the section plane, x and y [m]."""


class Part(StrEnum):
    """The part of the rail that an element bounds; fillets belong to the web, as in the mills' tables."""

    HEAD = "head"
    WEB = "web"
    BASE = "base"


@dataclass(frozen=True, slots=True)
class Line:
    """A straight line.

    Attributes:
        start: where it begins [m].
        end: where it ends [m].
    """

    start: Point
    end: Point

    @property
    def length(self) -> float:
        """Length [m]."""
        return math.dist(self.start, self.end)

    def heading(self, fraction: float = 0.0) -> float:
        """Return the direction of travel [rad], the same at every fraction."""
        del fraction
        return math.atan2(self.end[1] - self.start[1], self.end[0] - self.start[0])

    def ways(self) -> tuple[Point, Point]:
        """Return the direction of travel at the start and at the end, each of any length."""
        way = self.end[0] - self.start[0], self.end[1] - self.start[1]
        return way, way

    def at(self, fraction: float) -> Point:
        """Return the point that lies this fraction of the way along."""
        return (
            self.start[0] + fraction * (self.end[0] - self.start[0]),
            self.start[1] + fraction * (self.end[1] - self.start[1]),
        )

    def piece(self, first: float, last: float) -> Line:
        """Return the piece between two fractions; the outer ends keep their exact coordinates."""
        return Line(
            self.start if first == 0.0 else self.at(first),
            self.end if last == 1.0 else self.at(last),
        )

    def mirrored(self) -> Line:
        """Return its image in the vertical axis, turned round so that the steel stays on the left."""
        return Line(_image(self.end), _image(self.start))

    def moved(self, right: float, up: float) -> Line:
        """Return it shifted [m]."""
        return Line(_shift(self.start, right, up), _shift(self.end, right, up))

    def bounds(self) -> tuple[float, float, float, float]:
        """Return the smallest x, smallest y, largest x, largest y [m]."""
        (ax, ay), (bx, by) = self.start, self.end
        return min(ax, bx), min(ay, by), max(ax, bx), max(ay, by)

    def crossings(self, point: Point, normal: Point) -> list[float]:
        """Return the fractions, in order, at which it crosses the straight line through `point` square to `normal`."""
        before = _side(self.start, point, normal)
        after = _side(self.end, point, normal)
        if before == after:
            return []
        fraction = before / (before - after)
        return [fraction] if 0.0 < fraction < 1.0 else []


@dataclass(frozen=True, slots=True)
class Arc:
    """A circular arc.

    Attributes:
        start: where it begins [m].
        end: where it ends [m].
        centre: centre of the circle [m].
        radius: radius of the circle [m].
        sweep: angle travelled, positive counter-clockwise [rad]; convex steel is positive.
    """

    start: Point
    end: Point
    centre: Point
    radius: float
    sweep: float

    @property
    def length(self) -> float:
        """Length [m]."""
        return abs(self.sweep) * self.radius

    @property
    def first_angle(self) -> float:
        """Angle of the starting point seen from the centre [rad]."""
        return math.atan2(self.start[1] - self.centre[1], self.start[0] - self.centre[0])

    def ways(self) -> tuple[Point, Point]:
        """Return the direction of travel at the start and at the end, each of any length: square to the radius there."""
        (ax, ay), (bx, by), (u, v) = self.start, self.end, self.centre
        if self.sweep > 0.0:
            return (v - ay, ax - u), (v - by, bx - u)
        return (ay - v, u - ax), (by - v, u - bx)

    def heading(self, fraction: float = 0.0) -> float:
        """Return the direction of travel at a fraction of the way along [rad]."""
        angle = self.first_angle + fraction * self.sweep + math.copysign(math.pi / 2, self.sweep)
        return math.atan2(math.sin(angle), math.cos(angle))

    def at(self, fraction: float) -> Point:
        """Return the point that lies this fraction of the way along."""
        angle = self.first_angle + fraction * self.sweep
        return self.centre[0] + self.radius * math.cos(angle), self.centre[1] + self.radius * math.sin(angle)

    def piece(self, first: float, last: float) -> Arc:
        """Return the piece between two fractions; the outer ends keep their exact coordinates."""
        return Arc(
            self.start if first == 0.0 else self.at(first),
            self.end if last == 1.0 else self.at(last),
            self.centre,
            self.radius,
            self.sweep * (last - first),
        )

    def mirrored(self) -> Arc:
        """Return its image in the vertical axis, turned round so that the steel stays on the left."""
        return Arc(_image(self.end), _image(self.start), _image(self.centre), self.radius, self.sweep)

    def moved(self, right: float, up: float) -> Arc:
        """Return it shifted [m]."""
        return Arc(
            _shift(self.start, right, up),
            _shift(self.end, right, up),
            _shift(self.centre, right, up),
            self.radius,
            self.sweep,
        )

    def holds(self, angle: float) -> float | None:
        """Return the fraction at which a direction from the centre [rad] is met, None when it is not."""
        turn = (angle - self.first_angle) * math.copysign(1.0, self.sweep) % (2 * math.pi)
        span = abs(self.sweep)
        return turn / span if turn < span else None

    def bounds(self) -> tuple[float, float, float, float]:
        """Return the smallest x, smallest y, largest x, largest y [m]."""
        (ax, ay), (bx, by) = self.start, self.end
        u, v = self.centre
        left, right = (ax, bx) if ax < bx else (bx, ax)
        low, high = (ay, by) if ay < by else (by, ay)
        if -_QUARTER < self.sweep < _QUARTER and (left >= u or right <= u) and (low >= v or high <= v):
            return left, low, right, high  # within one quarter of the circle, as most are
        # Quarter points are passed between the two end angles; counted in quarter turns from the +x axis.
        first = self.first_angle / _QUARTER
        last = first + self.sweep / _QUARTER
        if first > last:
            first, last = last, first
        for quarter in range(math.ceil(first), math.floor(last) + 1):
            match quarter % 4:
                case 0:
                    right = self.centre[0] + self.radius
                case 1:
                    high = self.centre[1] + self.radius
                case 2:
                    left = self.centre[0] - self.radius
                case _:
                    low = self.centre[1] - self.radius
        return left, low, right, high

    def crossings(self, point: Point, normal: Point) -> list[float]:
        """Return the fractions, in order, at which it crosses the straight line through `point` square to `normal`."""
        away = _side(self.centre, point, normal)
        if abs(away) >= self.radius:
            return []
        towards = math.atan2(-normal[1], -normal[0])
        half = math.acos(away / self.radius)
        found = (self.holds(towards - half), self.holds(towards + half))
        return sorted(fraction for fraction in found if fraction is not None and 0.0 < fraction < 1.0)


Element = Line | Arc
"""One piece of an outline."""


def arc_between(centre: Point, start: Point, end: Point, *, left: bool) -> Arc:
    """Return the arc from start to end about a centre, turning left (counter-clockwise) or right, under a full turn.

    Args:
        centre: centre of the circle [m].
        start: first point [m]; its distance from the centre is the radius.
        end: last point [m].
        left: turn left; otherwise right.
    """
    first = math.atan2(start[1] - centre[1], start[0] - centre[0])
    last = math.atan2(end[1] - centre[1], end[0] - centre[0])
    turn = (last - first) % (2 * math.pi)
    return Arc(start, end, centre, math.dist(centre, start), turn if left else turn - 2 * math.pi)


def turn_between(before: Point, after: Point) -> float:
    """Return the change of direction from one way of travel to another, between -pi and pi [rad]."""
    return math.atan2(before[0] * after[1] - before[1] * after[0], before[0] * after[0] + before[1] * after[1])


def mirrored_chain(chain: Iterable[Element]) -> tuple[Element, ...]:
    """Return the image of a chain in the vertical axis, in its own counter-clockwise order."""
    return tuple(element.mirrored() for element in reversed(tuple(chain)))


def _image(point: Point) -> Point:
    return -point[0], point[1]


def _shift(point: Point, right: float, up: float) -> Point:
    return point[0] + right, point[1] + up


def _side(place: Point, point: Point, normal: Point) -> float:
    return (place[0] - point[0]) * normal[0] + (place[1] - point[1]) * normal[1]
