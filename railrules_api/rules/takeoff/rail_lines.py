"""Runs of new rail along every line of rail of a job: where they begin and end, and how they are closed there.

A line of rail is one rail of one track, through all the segments that renew it. Runs belong to the line and not to the segments,
so they are the same however the job is cut into segments: what breaks the rail is sought over the whole line, and one that stands
where two segments touch may be told with either.
"""

from __future__ import annotations

from bisect import bisect_left
from itertools import pairwise
from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.counting import SLACK
from railrules_api.domain.intervals import Interval, subtract
from railrules_api.domain.strings import RailRun
from railrules_api.rules.takeoff.parts import INSULATED, along_the_line, rail_of, rails_of

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from railrules_api.domain.strings import Closing, Rail
    from railrules_api.rules.takeoff.job import Job, JobFeature, Segment
    from railrules_api.rules.takeoff.supply import Supply


class LineRun(NamedTuple):
    """A run of one section, of strings or of single rails.

    Attributes:
        first: the segment that it begins in, by its position in the job.
        last: the segment that it ends in.
        run: the run.
    """

    first: int
    last: int
    run: RailRun


class _Break(NamedTuple):
    """What breaks a line of rail, and how the rail is closed at it."""

    place: Interval
    closing: Closing


class _Piece(NamedTuple):
    """New rail within one segment, unbroken."""

    position: int
    begin: float
    end: float


def _break(feature: JobFeature, supply: Supply, *, strings: bool) -> _Break | None:
    """Return what a feature does to the rail; None where it goes through unbroken. Single rails have joints everywhere."""
    if feature.end is None:
        if not strings or not feature.rule.breaks_string:
            return None
        return _Break(Interval(feature.begin, feature.begin), "insulated-joint" if feature.kind == INSULATED else "joint")
    if not feature.rule.rail_through:
        return _Break(Interval(feature.begin, feature.end), supply.fixed_tie_in)
    if strings and feature.rule.breaks_string:
        return _Break(Interval(feature.begin, feature.end), "weld")  # a plug of its own, of the new section, welded in
    return None


def _breaks(segment: Segment, supply: Supply) -> list[_Break]:
    found = [_Break(Interval(span.begin, span.end), supply.tie_in) for span in segment.left_out]
    strings = segment.new.joints is None
    told = (_break(feature, supply, strings=strings) for feature in segment.features)
    return found + [one for one in told if one is not None]


def _at(station: float, stations: Sequence[float], kinds: Sequence[Closing]) -> Closing | None:
    """Return the kind that stands at a station, of those at stations in order."""
    nearest = bisect_left(stations, station - SLACK)
    return kinds[nearest] if nearest < len(stations) and stations[nearest] <= station + SLACK else None


class _Closings:
    """How a line is closed where something breaks it, whichever of two touching segments that was told with."""

    def __init__(self, job: Job, breaks: Sequence[_Break]) -> None:
        self.job = job
        points: dict[float, Closing] = {}
        limits: dict[float, Closing] = {}
        for place, kind in breaks:
            found = limits if place.length > 0.0 else points
            found[place.begin] = found[place.end] = kind
        self.points, self.point_kinds = sorted(points), [points[station] for station in sorted(points)]
        self.limits, self.limit_kinds = sorted(limits), [limits[station] for station in sorted(limits)]

    def of_point(self, station: float) -> Closing | None:
        """Return the joint that stands at a station by itself."""
        return _at(station, self.points, self.point_kinds)

    def of_end(self, piece: _Piece, *, begin: bool) -> Closing:
        """Return how an end is closed: by what stands there; else as its segment says; else as an object beyond it is, or all."""
        segment = self.job.segments[piece.position]
        station = piece.begin if begin else piece.end
        own = None
        if begin and station <= segment.begin + SLACK:
            own = segment.begin_closing
        elif not begin and station >= segment.end - SLACK:
            own = segment.end_closing
        return self.of_point(station) or own or _at(station, self.limits, self.limit_kinds) or self.job.supply.tie_in

    def between(self, one: _Piece, other: _Piece) -> tuple[Closing, Closing] | None:
        """Return how two touching pieces are closed to each other, counted once; None where one run goes on through both."""
        before, after = self.job.segments[one.position], self.job.segments[other.position]
        strings = before.new.joints is None
        if strings is not (after.new.joints is None):
            # strings meet single rails: the joint is counted with the strings, by how their run is closed
            if strings:
                return self.of_end(one, begin=False), "counted-elsewhere"
            return "counted-elsewhere", self.of_end(other, begin=True)
        standing = self.of_point(one.end)
        if rail_of(before) == rail_of(after):
            return None if standing is None else (standing, standing)
        return standing or ("compromise-weld" if strings else "compromise-joint"), "counted-elsewhere"


def _pieces(position: int, segment: Segment, breaks: Sequence[_Break]) -> Iterator[_Piece]:
    """Yield the parts of a segment that new rail runs through; what is narrower than any tape can measure is none."""
    holes = [one.place for one in breaks if one.place.length > 0.0]
    points = sorted({one.place.begin for one in breaks if one.place.length == 0.0})
    for part in subtract(Interval(segment.begin, segment.end), holes):
        if part.length <= SLACK:
            continue
        inside = (point for point in points if part.begin + SLACK < point < part.end - SLACK)
        for begin, end in pairwise((part.begin, *inside, part.end)):
            yield _Piece(position, begin, end)


def _runs(job: Job, rail: Rail, line: Sequence[int]) -> Iterator[LineRun]:
    """Yield the runs of one rail of one track, of segments in order."""
    breaks = {position: _breaks(job.segments[position], job.supply) for position in line}
    closings = _Closings(job, [one for found in breaks.values() for one in found])
    pieces = [piece for position in line for piece in _pieces(position, job.segments[position], breaks[position])]
    begun: tuple[_Piece, Closing] | None = None
    for number, piece in enumerate(pieces):
        first, closing = begun or (piece, closings.of_end(piece, begin=True))
        following = pieces[number + 1] if number + 1 < len(pieces) else None
        ended, begun = None, None
        if following is not None and following.begin <= piece.end + SLACK:
            met = closings.between(piece, following)
            if met is None:
                begun = first, closing
                continue
            ended, begun = met[0], (following, met[1])
        run = RailRun(
            rail=rail,
            begin=first.begin,
            end=piece.end,
            begin_closing=closing,
            end_closing=ended or closings.of_end(piece, begin=False),
        )
        yield LineRun(first.position, piece.position, run)


def runs_of(job: Job) -> list[LineRun]:
    """Return the runs of all lines of rail, line by line.

    A weld or joint between two runs is counted once: with the one before where the section changes, with the strings where
    strings meet single rails; the other is `counted-elsewhere`.
    """
    lines: dict[tuple[str, Rail], list[int]] = {}
    for position in along_the_line(job):
        segment = job.segments[position]
        for rail in rails_of(segment):
            lines.setdefault((segment.track or "", rail), []).append(position)
    return [run for (_, rail), line in lines.items() for run in _runs(job, rail, line)]
