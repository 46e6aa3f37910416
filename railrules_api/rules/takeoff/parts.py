"""The parts of a job: each segment with what its rules all want to know of it, worked out once."""

from __future__ import annotations

from bisect import bisect_left
from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.counting import SLACK
from railrules_api.domain.errors import below
from railrules_api.domain.features import Feature, zones_for_features
from railrules_api.domain.intervals import Interval, union
from railrules_api.domain.track import Span, Stretch

if TYPE_CHECKING:
    from collections.abc import Iterable

    from railrules_api.domain.anchoring import AnchorZone
    from railrules_api.domain.strings import Rail
    from railrules_api.rules.takeoff.job import Job, Segment
    from railrules_api.rules.takeoff.supply import Supply


def rails_of(segment: Segment) -> tuple[Rail, ...]:
    """Return the rails that a segment renews, by hand along rising stations."""
    if segment.rails == "both":
        return ("left", "right")
    if segment.rails in ("left", "right"):
        return (segment.rails,)
    # in a curve to the right the left rail is the high one; `check` has made sure that all curves have one hand
    outer: Rail = "left" if segment.curves[0].hand == "right" else "right"
    inner: Rail = "right" if outer == "left" else "left"
    return (outer,) if segment.rails == "high" else (inner,)


def rail_of(segment: Segment) -> tuple[str, float, float]:
    """Return what tells the new rail of a segment from another: id, mass per length and area of its section."""
    new = segment.new
    return new.section_id or "", new.mass_per_length, new.area


def stretch_of(segment: Segment) -> Stretch:
    """Return a segment as the counting rules see it: without the features whose ties do not belong to the relay."""
    skipped: list[Interval] = [
        Interval(feature.begin, feature.end)
        for feature in segment.features
        if feature.end is not None and not feature.rule.ties_through
    ]
    skipped += [Interval(span.begin, span.end) for span in segment.left_out]
    return Stretch(
        begin=segment.begin,
        end=segment.end,
        rails=segment.rails,
        ties=segment.ties,
        curves=segment.curves,
        left_out=tuple(Span(begin=part.begin, end=part.end) for part in union(skipped)),
    )


class Part(NamedTuple):
    """A segment and what its rules all want to know of it, worked out once.

    Attributes:
        segment: the segment.
        stretch: the segment as the counting rules see it.
        zones: anchor zones that reach into it, those of neighbours with them.
        compromise_joints: compromise joints of its rails laid singly, counted on each rail; 0 where it is laid of strings.
    """

    segment: Segment
    stretch: Stretch
    zones: tuple[AnchorZone, ...]
    compromise_joints: int = 0


def parts_of(job: Job) -> list[Part]:
    """Return the parts of a job, in its order."""
    tracks = {track: _Zones(zones) for track, zones in zones_of(enumerate(job.segments)).items()}
    nothing = _Zones([])
    changes = compromise_joints(job)
    return [
        Part(
            segment,
            stretch_of(segment),
            tracks.get(segment.track or "", nothing).reaching(segment),
            changes.get(position, 0),
        )
        for position, segment in enumerate(job.segments)
    ]


def _closed_inside(segment: Segment, supply: Supply) -> int:
    """Return the ends of what a segment keeps within it that its rails are closed to by a compromise joint, on one rail."""
    held: list[tuple[float, float]] = []
    if supply.fixed_tie_in == "compromise-joint":
        held += [
            (feature.begin, feature.end)
            for feature in segment.features
            if feature.end is not None and not feature.rule.rail_through
        ]
    if supply.tie_in == "compromise-joint":
        held += [(span.begin, span.end) for span in segment.left_out]
    return sum(segment.begin < station < segment.end for limits in held for station in limits)


def compromise_joints(job: Job) -> dict[int, int]:
    """Count the compromise joints of rails laid singly, by the segment's position and on each rail.

    Where two such segments of different sections touch, the joint is counted with the one before. Where one touches strings, it
    is counted with the strings, by how their run is closed.
    """
    found: dict[int, int] = {}
    if all(segment.new.joints is None for segment in job.segments):
        return found
    lines: dict[tuple[str, Rail], list[int]] = {}
    for position in sorted(range(len(job.segments)), key=lambda position: job.segments[position].begin):
        segment = job.segments[position]
        for rail in rails_of(segment):
            lines.setdefault((segment.track or "", rail), []).append(position)
    for line in lines.values():
        for number, position in enumerate(line):
            segment = job.segments[position]
            if segment.new.joints is None or segment.new.joints.section_changes is not None:
                continue
            before = job.segments[line[number - 1]] if number else None
            after = job.segments[line[number + 1]] if number + 1 < len(line) else None
            count = _closed_inside(segment, job.supply)
            if before is None or before.end < segment.begin - SLACK:
                count += (segment.begin_closing or job.supply.tie_in) == "compromise-joint"
            if after is None or after.begin > segment.end + SLACK:
                count += (segment.end_closing or job.supply.tie_in) == "compromise-joint"
            elif after.new.joints is not None:
                count += rail_of(after) != rail_of(segment)
            if count:
                found[position] = found.get(position, 0) + count
    return found


class _Zones:
    """The anchor zones of a track, quick to look up by station."""

    def __init__(self, zones: list[AnchorZone]) -> None:
        self.zones = zones
        self.order = sorted(range(len(zones)), key=lambda position: zones[position].begin)
        self.begins = [zones[position].begin for position in self.order]
        self.longest = max((zone.end - zone.begin for zone in zones), default=0.0)

    def reaching(self, segment: Segment) -> tuple[AnchorZone, ...]:
        """Return the zones that reach into a segment, in the order of the job."""
        # a metre more than the longest, so that no rounding leaves one out
        first = bisect_left(self.begins, segment.begin - self.longest - 1.0)
        beyond = bisect_left(self.begins, segment.end)
        near = sorted([position for position in self.order[first:beyond] if self.zones[position].end > segment.begin])
        return tuple([self.zones[position] for position in near])


def zones_of(segments: Iterable[tuple[int, Segment]]) -> dict[str, list[AnchorZone]]:
    """Return the anchor zones that the features of all segments ask for, by track: a zone may reach into a neighbour."""
    zones: dict[str, list[AnchorZone]] = {}
    for position, segment in segments:
        for number, feature in enumerate(segment.features):
            plain = Feature(kind=feature.kind, begin=feature.begin, end=feature.end, name=feature.name)
            with below("segments", position, "features", number):
                found = zones_for_features((plain,), {feature.kind: feature.rule})
            zones.setdefault(segment.track or "", []).extend(found)
    return zones
