"""A stretch of track as the counting rules see it: limits, rails, ties, curves, and what is left out.

Stations are metres along the line from the line's own zero; a mile post is a length in miles like any other. Ties stand
at `origin + k * spacing` (see `counting`), so tie numbers belong to the line and not to the stretch.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Annotated, Literal

from railrules_api.domain.counting import first_tie_from
from railrules_api.domain.errors import below, refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.intervals import Interval, subtract
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean

Station = Annotated[float, Field("Station along the line.", kind=Kind.LENGTH, at_least=-1e8, at_most=1e8)]
Rails = Literal["both", "left", "right", "high", "low"]
CLOSEST, WIDEST = 0.1, 5.0
"""Limits of what can be a spacing of ties [m]: ties are wider than the first, and no rail bridges the second."""
CHORD = 100 * 0.3048
"""The chord of the US degree of curve: 100 ft [m]."""


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """Part of a line, begin included, end not."""

    begin: Station
    end: Station


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Curve:
    """A curve by its limits and one of radius or degree (100-ft chord)."""

    begin: Station
    end: Station
    radius: Annotated[float | None, Field("Radius.", kind=Kind.LENGTH, at_least=10.0, at_most=1e6)] = None
    degree: Annotated[float | None, Field("Degree of curve, by 100-ft chord.", kind=Kind.ANGLE, above=0.0, at_most=math.pi)] = (
        None
    )
    hand: Annotated[Literal["left", "right"], Field("Way it turns, looking along rising stations.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class TieSetting:
    """Where ties stand: one of a spacing, or a count per length (24 per 39 ft, 3,250 per mile)."""

    spacing: Annotated[
        float | None, Field("Distance of ties, centre to centre.", kind=Kind.LENGTH, above=CLOSEST, at_most=WIDEST)
    ] = None
    count: Annotated[float | None, Field("Ties in `per_length`.", above=0.0, at_most=1e6)] = None
    per_length: Annotated[float | None, Field("Length that holds `count` ties.", kind=Kind.LENGTH, above=0.0, at_most=1e6)] = None
    origin: Annotated[
        float, Field("Station of tie number 0.", kind=Kind.LENGTH, at_least=-1e8, at_most=1e8, default="tie-origin")
    ]


class _Worked:
    """What has been worked out from a stretch, kept with it: it cannot change, and every rule of a takeoff asks again."""

    __slots__ = ("anchored", "checked", "ranges", "spans")

    checked: bool
    ranges: tuple[TieRange, ...]
    spans: tuple[Interval, ...]
    anchored: list[tuple[object, object, object, object]]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Stretch(_Worked):
    """A stretch of track that is relaid."""

    begin: Station
    end: Station
    rails: Annotated[Rails, Field("Rails renewed; high or low only where all of the stretch lies in curves of one hand.")]
    ties: Annotated[TieSetting, Field("Where the ties stand.")]
    curves: Annotated[tuple[Curve, ...], Field("Curves, in order, not overlapping; the rest is tangent.")] = ()
    left_out: Annotated[tuple[Span, ...], Field("Parts that the work skips, such as a turnout kept in place.")] = ()


@lean
@dataclass(frozen=True, slots=True)
class TieRange:
    """Consecutive ties of one curvature: `first <= number < beyond`; radius None on tangent [m]."""

    first: int
    beyond: int
    radius: float | None

    @property
    def count(self) -> int:
        """Number of ties."""
        return self.beyond - self.first


def radius_of(curve: Curve) -> float:
    """Return a curve's radius [m]; R = 50 ft / sin(D / 2) from the degree by 100-ft chord.

    Raises:
        RefusedError: neither or both of radius and degree are given.
    """
    if (curve.radius is None) == (curve.degree is None):
        raise refuse("radius", reason="give one of radius and degree", value=curve.radius)
    if curve.radius is not None:
        return curve.radius
    assert curve.degree is not None
    return CHORD / 2 / math.sin(curve.degree / 2)


def spacing_of(ties: TieSetting) -> float:
    """Return the distance of ties, centre to centre [m].

    Raises:
        RefusedError: neither or both ways of giving it are used, or the result is not a tie spacing.
    """
    if ties.spacing is not None:
        if ties.count is not None or ties.per_length is not None:
            raise refuse("spacing", reason="give either spacing, or count and per_length", value=ties.spacing)
        return ties.spacing
    if ties.count is None or ties.per_length is None:
        raise refuse("spacing", reason="give either spacing, or count and per_length")
    spacing = ties.per_length / ties.count
    if not CLOSEST < spacing <= WIDEST:
        raise refuse("count", reason="count and per_length give a spacing outside the limits", value=ties.count)
    return spacing


def rail_count(rails: Rails) -> int:
    """Return how many rails are renewed."""
    return 2 if rails == "both" else 1


def check(stretch: Stretch) -> None:
    """Refuse a stretch that contradicts itself, naming the field.

    Raises:
        RefusedError: end not beyond begin; a curve or a left-out part turned round, outside, or overlapping; high or low
            rail asked for where the stretch is not all in curves of one hand.
    """
    if not hasattr(stretch, "checked"):
        _check(stretch)
        object.__setattr__(stretch, "checked", True)


def _check(stretch: Stretch) -> None:
    if stretch.end <= stretch.begin:
        raise refuse("end", reason="end must lie beyond begin", value=stretch.end, minimum=stretch.begin)
    reached = stretch.begin
    for position, curve in enumerate(stretch.curves):
        if curve.end <= curve.begin:
            raise refuse("curves", position, "end", reason="end must lie beyond begin", value=curve.end, minimum=curve.begin)
        if curve.begin < reached:
            reason = "curve begins before the stretch" if position == 0 else "curve overlaps the one before it"
            raise refuse("curves", position, "begin", reason=reason, value=curve.begin, minimum=reached)
        if curve.end > stretch.end:
            raise refuse("curves", position, "end", reason="curve ends beyond the stretch", value=curve.end, maximum=stretch.end)
        reached = curve.end
    for position, span in enumerate(stretch.left_out):
        if span.end <= span.begin:
            raise refuse("left_out", position, "end", reason="end must lie beyond begin", value=span.end, minimum=span.begin)
        if span.begin < stretch.begin:
            raise refuse("left_out", position, "begin", reason="lies before the stretch", value=span.begin, minimum=stretch.begin)
        if span.end > stretch.end:
            raise refuse("left_out", position, "end", reason="lies beyond the stretch", value=span.end, maximum=stretch.end)
    if stretch.rails in ("high", "low"):
        tangent = subtract(Interval(stretch.begin, stretch.end), [Interval(c.begin, c.end) for c in stretch.curves])
        hands = {curve.hand for curve in stretch.curves}
        if tangent or len(hands) != 1:
            reason = "high and low rail exist only where all of the stretch lies in curves of one hand"
            raise refuse("rails", reason=reason, value=stretch.rails, allowed=("both", "left", "right"))


def tie_ranges(stretch: Stretch) -> tuple[TieRange, ...]:
    """Return the ties that belong to the work, split where the curvature changes.

    Every boundary is a station; the ties between two boundaries are those with `begin <= x < end`, so ranges never share
    a tie and leave none out.

    Raises:
        RefusedError: the stretch contradicts itself (see `check`).
    """
    known: tuple[TieRange, ...] | None = getattr(stretch, "ranges", None)
    if known is not None:
        return known
    check(stretch)
    with below("ties"):
        spacing = spacing_of(stretch.ties)
    pieces: list[tuple[Interval, float | None]] = []
    reached = stretch.begin
    for position, curve in enumerate(stretch.curves):
        with below("curves", position):
            sharp = radius_of(curve)
        if curve.begin > reached:
            pieces.append((Interval(reached, curve.begin), None))
        pieces.append((Interval(curve.begin, curve.end), sharp))
        reached = curve.end
    if reached < stretch.end:
        pieces.append((Interval(reached, stretch.end), None))
    holes = [Interval(span.begin, span.end) for span in stretch.left_out]
    origin = stretch.ties.origin
    ranges: list[TieRange] = []
    reached, tie = math.nan, 0
    for piece, radius in pieces:
        for begin, end in subtract(piece, holes) if holes else (piece,):
            first = tie if begin == reached else first_tie_from(begin, origin=origin, spacing=spacing)
            beyond = first_tie_from(end, origin=origin, spacing=spacing)
            reached, tie = end, beyond
            if beyond > first:
                ranges.append(TieRange(first, beyond, radius))
    found = tuple(ranges)
    object.__setattr__(stretch, "ranges", found)
    return found


def worked_spans(stretch: Stretch) -> tuple[Interval, ...]:
    """Return the parts of a stretch that are not left out, in order."""
    known: tuple[Interval, ...] | None = getattr(stretch, "spans", None)
    if known is None:
        known = subtract(Interval(stretch.begin, stretch.end), [Interval(s.begin, s.end) for s in stretch.left_out])
        object.__setattr__(stretch, "spans", known)
    return known
