"""Which ties carry rail anchors: patterns, zones, and their counts in closed form.

Everything is decided by a tie's own number, so counts add up however a line is cut. A zone owns the ties with
`begin <= x < end`. Where zones overlap, a zone that forbids anchors beats all others, and of the rest the densest pattern wins;
the pattern of the plain track takes part in the contest.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Annotated, Literal, NamedTuple, TypeAlias

from railrules_api.domain.counting import SLACK, first_tie_from, multiples_between
from railrules_api.domain.errors import below, refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.records import lean
from railrules_api.domain.track import Station, Stretch, check, spacing_of, worked_spans

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from railrules_api.domain.patterns import AnchorPattern, AnchorsPerRailLength


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class AnchorZone:
    """Part of a line that is anchored otherwise than the plain track."""

    begin: Station
    end: Station
    anchoring: Annotated[Literal["boxed", "none"], Field("Ties are boxed, or no tie may carry an anchor.")]
    boxed_every: Annotated[
        int | None, Field("Every n-th tie, by its own number, is boxed; left out: every tie.", at_least=1, at_most=24)
    ] = None
    reason: Annotated[str, Field("What asks for it, such as a joint or a turnout.")]


class Held(NamedTuple):
    """Anchors at one rail: ties that carry any, anchors in the main direction, anchors the other way."""

    ties: int
    forward: int
    back_up: int

    @property
    def anchors(self) -> int:
        """Anchors at one rail, both ways."""
        return self.forward + self.back_up


class Run(NamedTuple):
    """Ties in a row that are treated alike; `boxed_every` and `per_rail` are both None where none is anchored."""

    begin: float
    end: float
    ties: int
    held: Held
    boxed_every: int | None
    per_rail: AnchorsPerRailLength | None
    in_zone: bool
    reasons: tuple[str, ...]


class _Treatment(NamedTuple):
    boxed_every: int | None
    per_rail: AnchorsPerRailLength | None
    in_zone: bool


class _Part(NamedTuple):
    begin: float
    end: float
    first: int
    beyond: int
    treatment: _Treatment
    reasons: tuple[str, ...]


def _spread_below(count: int, places: int, limit: int) -> int:
    """Return how many of `count` things spread evenly over `places` stand at a place below `limit`.

    Thing j stands at place floor((2 j + 1) places / (2 count)), the middle of its share; so the number of those with
    (2 j + 1) places < 2 count limit is a ceiling.

    >>> [_spread_below(2, 8, limit) for limit in range(9)]
    [0, 0, 0, 1, 1, 1, 1, 2, 2]
    """
    return min(count, max(0, -((places - 2 * count * limit) // (2 * places))))


def _held_before(tie: int, pattern: AnchorsPerRailLength, spacing: float) -> Held:
    """Return the anchors of one rail at ties 0 to `tie` - 1 (negative for a tie before 0), by rail lengths laid from tie 0.

    Those of the more numerous direction stand evenly over the ties of each rail length; the others stand at ties which they
    share with them, evenly again, so that those ties are boxed.
    """

    def first_of(panel: int) -> int:
        return first_tie_from(panel * pattern.rail_length, origin=0.0, spacing=spacing)

    many, few = max(pattern.forward, pattern.back_up), min(pattern.forward, pattern.back_up)
    if not many:
        return Held(0, 0, 0)
    panel = math.floor(tie * spacing / pattern.rail_length)
    # a rail length that ends within the slack of a tie leaves that tie to the next one
    while first_of(panel + 1) <= tie:
        panel += 1
    first = first_of(panel)
    many_in = _spread_below(many, first_of(panel + 1) - first, tie - first)
    few_in = _spread_below(few, many, many_in) if few else 0
    held_many, held_few = panel * many + many_in, panel * few + few_in
    if pattern.forward >= pattern.back_up:
        return Held(held_many, held_many, held_few)
    return Held(held_many, held_few, held_many)


def _held(first: int, beyond: int, treatment: _Treatment, spacing: float) -> Held:
    if treatment.boxed_every is not None:
        ties = multiples_between(first, beyond, treatment.boxed_every)
        return Held(ties, ties, ties)
    if treatment.per_rail is not None:
        upper, lower = (
            _held_before(beyond, treatment.per_rail, spacing),
            _held_before(first, treatment.per_rail, spacing),
        )
        return Held(*(above - under for above, under in zip(upper, lower, strict=True)))
    return Held(0, 0, 0)


def check_pattern(pattern: AnchorPattern, spacing: float) -> None:
    """Refuse a pattern that says two things at once, or asks more anchors of a rail length than it has ties.

    Raises:
        RefusedError: see above.
    """
    per_rail = pattern.per_rail
    if per_rail is None:
        return
    if pattern.boxed_every is not None:
        raise refuse("boxed_every", reason="give either boxed_every or per_rail", value=pattern.boxed_every)
    ties = math.floor(per_rail.rail_length / spacing + SLACK)
    for name, count in (("forward", per_rail.forward), ("back_up", per_rail.back_up)):
        if count > ties:
            reason = "more anchors one way than the rail length has ties"
            raise refuse("per_rail", name, reason=reason, value=count, maximum=ties)


def anchors_per_metre(pattern: AnchorPattern, spacing: float) -> float:
    """Return the average number of anchors to a metre of one rail, both ways together [1/m]."""
    if pattern.boxed_every is not None:
        return 2.0 / (pattern.boxed_every * spacing)
    if pattern.per_rail is not None:
        return (pattern.per_rail.forward + pattern.per_rail.back_up) / pattern.per_rail.rail_length
    return 0.0


def _chosen(active: Sequence[AnchorZone], pattern: AnchorPattern, spacing: float) -> tuple[_Treatment, tuple[str, ...]]:
    """Return what holds where these zones overlap, and the reasons of the zones."""
    if not active:
        return _Treatment(pattern.boxed_every, pattern.per_rail, in_zone=False), ()
    reasons = tuple(dict.fromkeys(zone.reason for zone in active))
    if any(zone.anchoring == "none" for zone in active):
        forbidding = tuple(dict.fromkeys(zone.reason for zone in active if zone.anchoring == "none"))
        return _Treatment(None, None, in_zone=True), forbidding
    every = min(zone.boxed_every or 1 for zone in active)
    # a shade in favour of the zone, so that equal densities never hang on the last bit
    if anchors_per_metre(pattern, spacing) > 2.0 / (every * spacing) * (1.0 + SLACK):
        return _Treatment(pattern.boxed_every, pattern.per_rail, in_zone=True), reasons
    return _Treatment(every, None, in_zone=True), reasons


def _parts(stretch: Stretch, pattern: AnchorPattern, zones: Sequence[AnchorZone], spacing: float) -> Iterator[_Part]:
    cuts = sorted({station for zone in zones for station in (zone.begin, zone.end)})
    by_begin = sorted(range(len(zones)), key=lambda position: zones[position].begin)
    origin = stretch.ties.origin
    for span in worked_spans(stretch):
        stations = [span.begin, *(cut for cut in cuts if span.begin < cut < span.end), span.end]
        waiting = iter(by_begin)
        following = next(waiting, None)
        active: list[int] = []
        for begin, end in pairwise(stations):
            active = [position for position in active if zones[position].end > begin]
            while following is not None and zones[following].begin <= begin:
                if zones[following].end > begin:
                    active.append(following)
                following = next(waiting, None)
            first = first_tie_from(begin, origin=origin, spacing=spacing)
            beyond = first_tie_from(end, origin=origin, spacing=spacing)
            # what is narrower than any tape can measure and holds no tie is float noise between two zone limits
            if beyond > first or end - begin > SLACK * spacing:
                treatment, reasons = _chosen([zones[position] for position in sorted(active)], pattern, spacing)
                yield _Part(begin, end, first, beyond, treatment, reasons)


def anchored_runs(
    stretch: Stretch,
    pattern: AnchorPattern,
    zones: Sequence[AnchorZone] = (),
    *,
    forbidden: bool = False,
    pattern_field: str = "pattern",
) -> tuple[Run, ...]:
    """Cut a stretch into runs of ties that are anchored alike, zones merged, and count their anchors.

    Args:
        stretch: the stretch; parts left out belong to no run.
        pattern: what plain track carries.
        zones: where it is otherwise; what lies outside the stretch has no effect on it.
        forbidden: the fastenings hold the rail themselves, so no tie carries anchors.
        pattern_field: name of the caller's field that holds the pattern, for refusals.

    Raises:
        RefusedError: the stretch, the pattern or a zone contradicts itself; paths begin with `stretch`, `zones` or the
            pattern's field.
    """
    kept = _kept_runs(stretch)
    for known_pattern, known_zones, known_forbidden, runs in kept:
        if known_pattern is pattern and known_zones is zones and known_forbidden is forbidden:
            return runs
    runs = _anchored_runs(stretch, pattern, zones, forbidden=forbidden, pattern_field=pattern_field)
    if isinstance(zones, tuple):  # what could change is not the same when it is asked again
        kept.append((pattern, zones, forbidden, runs))
    return runs


_Kept: TypeAlias = "list[tuple[AnchorPattern, Sequence[AnchorZone], bool, tuple[Run, ...]]]"


def _kept_runs(stretch: Stretch) -> _Kept:
    """Return the runs of a stretch found so far: by what they were asked with, compared by identity."""
    known: _Kept | None = getattr(stretch, "anchored", None)
    if known is None:
        known = []
        object.__setattr__(stretch, "anchored", known)
    return known


def _anchored_runs(
    stretch: Stretch, pattern: AnchorPattern, zones: Sequence[AnchorZone], *, forbidden: bool, pattern_field: str
) -> tuple[Run, ...]:
    with below("stretch"):
        check(stretch)
        with below("ties"):
            spacing = spacing_of(stretch.ties)
    with below(pattern_field):
        check_pattern(pattern, spacing)
    for position, zone in enumerate(zones):
        if zone.end <= zone.begin:
            reason = "end must lie beyond begin"
            raise refuse("zones", position, "end", reason=reason, value=zone.end, minimum=zone.begin)
        if zone.anchoring == "none" and zone.boxed_every is not None:
            reason = "a zone without anchors boxes no tie"
            raise refuse("zones", position, "boxed_every", reason=reason, value=zone.boxed_every)
    merged: list[_Part] = []
    for part in _parts(stretch, pattern, zones, spacing):
        if merged and merged[-1].end >= part.begin - SLACK * spacing and merged[-1].treatment == part.treatment:
            reasons = tuple(dict.fromkeys((*merged[-1].reasons, *part.reasons)))
            merged[-1] = merged[-1]._replace(end=part.end, beyond=part.beyond, reasons=reasons)
        else:
            merged.append(part)
    bare = _Treatment(None, None, in_zone=False)
    return tuple(
        Run(
            begin=part.begin,
            end=part.end,
            ties=part.beyond - part.first,
            held=_held(part.first, part.beyond, bare if forbidden else part.treatment, spacing),
            boxed_every=None if forbidden else part.treatment.boxed_every,
            per_rail=None if forbidden else part.treatment.per_rail,
            in_zone=part.treatment.in_zone,
            reasons=part.reasons,
        )
        for part in merged
    )
