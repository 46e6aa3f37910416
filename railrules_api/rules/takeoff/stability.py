"""What a job asks of the rule of buckling: each segment's straight track and each of its curves, hot."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from math import fsum
from typing import TYPE_CHECKING, Annotated, Final, NamedTuple

from railrules_api.domain.counting import SLACK
from railrules_api.domain.errors import below, refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.track import radius_of
from railrules_api.rules.checks import Verdict
from railrules_api.rules.thermal import buckling
from railrules_api.rules.thermal.buckling import SHARPEST_WITNESSED
from railrules_api.rules.thermal.buckling_fields import (
    BucklingInput,
    BucklingResult,
)

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from railrules_api.rules.takeoff.job import Job, Segment
    from railrules_api.rules.takeoff.stability_terms import Stability
    from railrules_api.rules.takeoff.supply import Temperatures

MOST_RADII: Final = 12
"""So many curves of one track are traced, each of which takes as long as the rest of a segment's takeoff many times over."""
MOST_TRACKS: Final = 8
"""So many different tracks, by section and lateral resistance, may stand in one job."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TrackStability:
    """The straight track, or the curves of one radius, of a segment when the rail is at its hottest."""

    of: Annotated[str, Field("Segment.")]
    radius: Annotated[float | None, Field("Radius of the curves; left out: straight track.", kind=Kind.LENGTH)] = None
    radius_used: Annotated[
        float | None,
        Field("Radius answered for, where a job has so many that a curve is given the next sharper one.", kind=Kind.LENGTH),
    ] = None
    length: Annotated[float, Field("Length of such track in the segment.", kind=Kind.LENGTH)]
    lower_rise: Annotated[
        float | None, Field("Lowest rise above neutral at which it can stand buckled.", kind=Kind.TEMPERATURE_CHANGE)
    ] = None
    upper_rise: Annotated[
        float | None, Field("Rise at which it snaps by itself, with the line defect.", kind=Kind.TEMPERATURE_CHANGE)
    ] = None
    allowed_rise: Annotated[float | None, Field("Rise that the margin rule allows.", kind=Kind.TEMPERATURE_CHANGE)] = None
    allowed_temperature: Annotated[float | None, Field("Rail temperature at that rise.", kind=Kind.TEMPERATURE)] = None
    allowed_by: Annotated[str, Field("Branch of the margin rule, or why there is no allowed rise.")]
    verdict: Annotated[Verdict, Field("Hottest rail, neutral temperature drifted, against the allowed rise.")]


class Asked(NamedTuple):
    """A question to the rule, and the track it is about."""

    position: int
    segment: Segment
    radius: float | None
    length: float
    given: BucklingInput


def _parts(segment: Segment) -> Iterator[tuple[float | None, float]]:
    """Yield the radii of a segment's curves with their lengths, and before them straight track as None."""
    curves: dict[float, list[float]] = {}
    for curve in segment.curves:
        curves.setdefault(radius_of(curve), []).append(curve.end - curve.begin)
    straight = (segment.end - segment.begin) - fsum(length for found in curves.values() for length in found)
    if straight > SLACK:
        yield None, straight
    for radius, lengths in sorted(curves.items()):
        yield radius, fsum(lengths)


def _track(segment: Segment, job: Stability) -> tuple[float, float, float]:
    """Return what tells one track from another: area and lateral second moment of its rail, its lateral resistance."""
    new = segment.new
    if new.second_moment_lateral is None:
        raise refuse("new", "second_moment_lateral", reason="missing; stability asks for it: give it, or a section that has it")
    resistance = job.lateral_resistance if segment.lateral_resistance is None else segment.lateral_resistance
    return new.area, new.second_moment_lateral, resistance


def classes_of(radii: Sequence[float], most: int = MOST_RADII) -> tuple[float, ...]:
    """Return the radii to answer for, sharpest first: all, or the sharpest of as many classes of equal number.

    A curve is answered for the largest of them that is no larger than its own: sharper curves buckle earlier, so a class's
    answer is never too high for any curve in it.

    >>> classes_of([400.0, 500.0, 500.0, 600.0]), classes_of([1.0, 2.0, 3.0, 4.0, 5.0], most=2)
    ((400.0, 500.0, 600.0), (1.0, 3.0))
    """
    ordered = sorted(set(radii))
    if len(ordered) <= most:
        return tuple(ordered)
    return tuple(ordered[number * len(ordered) // most] for number in range(most))


def asked(job: Job, hold: Stability, temperatures: Temperatures, neutral: float) -> tuple[Asked, ...]:
    """Return every question of a job's stability; none where it lays single rails.

    Args:
        job: the job.
        hold: what holds its track.
        temperatures: its temperatures.
        neutral: neutral temperature after the drift [K].

    Raises:
        RefusedError: a section without its lateral second moment; more different tracks than are traced for one job.
    """
    tracks: dict[tuple[float, float, float], list[float]] = {}
    parts: list[tuple[int, Segment, tuple[float, float, float], float | None, float]] = []
    for position, segment in enumerate(job.segments):
        if segment.new.joints is not None:
            continue
        with below("segments", position):
            track = _track(segment, hold)
            for radius, length in _parts(segment):
                parts.append((position, segment, track, radius, length))
                # curves too sharp for the witness have no path to be traced
                traced = tracks.setdefault(track, [])
                if radius is not None and radius >= SHARPEST_WITNESSED:
                    traced.append(radius)
    if len(tracks) > MOST_TRACKS:
        reason = "too many different tracks, by section and lateral resistance, to trace in one job: round them, or split the job"
        raise refuse("stability", reason=reason, value=len(tracks), maximum=float(MOST_TRACKS))
    classes = {track: classes_of(radii) for track, radii in tracks.items()}
    return tuple(
        Asked(
            position,
            segment,
            radius,
            length,
            _question(track, _used(radius, classes[track]), hold, temperatures, neutral),
        )
        for position, segment, track, radius, length in parts
    )


def _used(radius: float | None, classes: tuple[float, ...]) -> float | None:
    if radius is None or radius < SHARPEST_WITNESSED:
        return radius
    return classes[bisect_right(classes, radius) - 1]


def _question(
    track: tuple[float, float, float], radius: float | None, hold: Stability, temperatures: Temperatures, neutral: float
) -> BucklingInput:
    area, second_moment_lateral, lateral_resistance = track
    return BucklingInput(
        area=area,
        elastic_modulus=temperatures.elastic_modulus,
        expansion=temperatures.expansion,
        second_moment_lateral=second_moment_lateral,
        rail_temperature=temperatures.hottest_rail,
        neutral_temperature=neutral,
        lateral_resistance=lateral_resistance,
        resistance=temperatures.resistance,
        stiffness=hold.stiffness,
        defect_amplitude=hold.defect_amplitude,
        defect_half_length=hold.defect_half_length,
        shape=hold.shape,
        held=hold.held,
        radius=radius,
        margin_rule=hold.margin_rule,
        margin=hold.margin,
    )


def row(question: Asked, found: BucklingResult) -> TrackStability:
    """Return the row of an answer."""
    used = question.given.radius
    return TrackStability(
        of=question.segment.name,
        radius=question.radius,
        radius_used=used if used != question.radius else None,
        length=question.length,
        lower_rise=found.lower_rise,
        upper_rise=found.upper_rise,
        allowed_rise=found.allowed_rise,
        allowed_temperature=found.allowed_temperature,
        allowed_by=found.allowed_by,
        verdict=found.checks[0].verdict,
    )


def least_allowed(rows: Sequence[TrackStability]) -> float | None:
    """Return the smallest rise allowed anywhere in the job; None where some track has none, or nothing was asked."""
    rises = [item.allowed_rise for item in rows]
    known = [rise for rise in rises if rise is not None]
    return min(known) if known and len(known) == len(rises) else None


RULE: Final = buckling.RULE
