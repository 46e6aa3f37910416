"""What a job may not say: statements of it that contradict themselves or each other, refused by name."""

from __future__ import annotations

from typing import TYPE_CHECKING

from railrules_api.domain.errors import below, refuse
from railrules_api.domain.track import Stretch, check
from railrules_api.rules.takeoff.parts import rails_of

if TYPE_CHECKING:
    from railrules_api.rules.takeoff.job import Job, JobFeature, Segment


def check_segment(segment: Segment) -> None:
    """Refuse a segment that contradicts itself.

    Raises:
        RefusedError: see `domain.track.check`; a feature outside its segment or turned round; an end of a feature missing where
            the relay stops at its limits.
    """
    check(
        Stretch(
            begin=segment.begin, end=segment.end, rails=segment.rails, ties=segment.ties,
            curves=segment.curves, left_out=segment.left_out,
        )
    )  # fmt: skip
    for position, feature in enumerate(segment.features):
        with below("features", position):
            _check_feature(feature, segment)


def _check_feature(feature: JobFeature, segment: Segment) -> None:
    low, high = segment.begin, segment.end
    if not segment.begin <= feature.begin <= segment.end:
        raise refuse("begin", reason="the feature lies outside its segment", value=feature.begin, minimum=low, maximum=high)
    if feature.end is not None:
        if feature.end <= feature.begin:
            raise refuse("end", reason="end must lie beyond begin", value=feature.end, minimum=feature.begin)
        if feature.end > segment.end:
            raise refuse("end", reason="the feature lies outside its segment", value=feature.end, minimum=low, maximum=high)


def check_job(job: Job) -> None:
    """Refuse a job whose parts contradict themselves or each other, naming the part.

    Raises:
        RefusedError: two segments of one name; two segments of one track that overlap on a rail; and as `check_segment`.
    """
    names: dict[str, int] = {}
    for position, segment in enumerate(job.segments):
        if segment.name in names:
            raise refuse(
                "segments", position, "name", reason=f"segment {names[segment.name]} has the same name", value=segment.name
            )
        names[segment.name] = position
        with below("segments", position):
            check_segment(segment)
    by_track: dict[str, list[int]] = {}
    for position, segment in enumerate(job.segments):
        by_track.setdefault(segment.track or "", []).append(position)
    for positions in by_track.values():
        _check_overlaps(job, positions)


def _check_overlaps(job: Job, positions: list[int]) -> None:
    """Refuse two segments of one track that renew the same rail at the same station."""
    ordered = sorted(positions, key=lambda position: job.segments[position].begin)
    reached: dict[str, tuple[float, int]] = {}
    for position in ordered:
        segment = job.segments[position]
        for rail in rails_of(segment):
            end, other = reached.get(rail, (segment.begin, position))
            if segment.begin < end:
                reason = f"segment {job.segments[other].name!r} renews the {rail} rail up to a station beyond this begin"
                raise refuse("segments", position, "begin", reason=reason, value=segment.begin, minimum=end)
            reached[rail] = (segment.end, position)
