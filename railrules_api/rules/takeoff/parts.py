"""The parts of a job: each segment with what its rules all want to know of it, worked out once."""

from __future__ import annotations

import math
from bisect import bisect_left
from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.counting import SLACK
from railrules_api.domain.errors import below
from railrules_api.domain.features import Feature, zones_for_features
from railrules_api.domain.intervals import Interval, union
from railrules_api.domain.track import Span, Stretch

if TYPE_CHECKING:
    from railrules_api.domain.anchoring import AnchorZone
    from railrules_api.domain.patterns import FeatureRule
    from railrules_api.domain.strings import Rail
    from railrules_api.rules.takeoff.job import Job, Segment

INSULATED = "insulated-joint"
"""Kind of feature that breaks the rail at one station by an insulated joint."""


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


def along_the_line(job: Job) -> list[int]:
    """Return the positions of a job's segments, track by track and along rising stations."""
    segments = job.segments
    return sorted(range(len(segments)), key=lambda at: (segments[at].track or "", segments[at].begin, segments[at].end))


class Part(NamedTuple):
    """A segment and what its rules all want to know of it, worked out once.

    Attributes:
        segment: the segment.
        stretch: the segment as the counting rules see it.
        zones: anchor zones that reach into it, those of neighbours with them.
    """

    segment: Segment
    stretch: Stretch
    zones: tuple[AnchorZone, ...]


def parts_of(job: Job) -> list[Part]:
    """Return the parts of a job, in its order."""
    tracks = {track: _Zones(zones) for track, zones in zones_of(job).items()}
    nothing = _Zones([])
    return [
        Part(segment, stretch_of(segment), tracks.get(segment.track or "", nothing).reaching(segment)) for segment in job.segments
    ]


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


def zones_of(job: Job) -> dict[str, list[AnchorZone]]:
    """Return the anchor zones that the features of all segments ask for, by track: a zone may reach into a neighbour."""
    zones: dict[str, list[AnchorZone]] = {}
    whole = _joined_features(job)
    for position, segment in enumerate(job.segments):
        for number, feature in enumerate(segment.features):
            end = whole.get((position, number), feature.end)
            if end == feature.begin:
                continue  # it is part of one told before
            plain = Feature(kind=feature.kind, begin=feature.begin, end=end, name=feature.name)
            with below("segments", position, "features", number):
                found = zones_for_features((plain,), {feature.kind: feature.rule})
            zones.setdefault(segment.track or "", []).extend(found)
    return zones


def _joined_features(job: Job) -> dict[tuple[int, int], float]:
    """Return where features truly end that a limit of segments cuts, by segment and number; a part told later ends as it begins.

    What goes on from one segment into the next is one object: there is no approach to it at the cut.
    """
    ends: dict[tuple[int, int], float] = {}
    reaching: dict[tuple[str, tuple[Rail, ...], str, str | None, FeatureRule], tuple[tuple[int, int], float]] = {}
    for position in along_the_line(job):
        segment = job.segments[position]
        for number, feature in enumerate(segment.features):
            if feature.end is None:
                continue
            alike = (segment.track or "", rails_of(segment), feature.kind, feature.name, feature.rule)
            told = position, number
            first, reached = reaching.get(alike, (told, math.inf))
            if feature.begin <= segment.begin + SLACK and abs(feature.begin - reached) <= SLACK:
                ends[first], ends[told], told = feature.end, feature.begin, first
            if feature.end >= segment.end - SLACK:
                reaching[alike] = told, feature.end
    return ends
