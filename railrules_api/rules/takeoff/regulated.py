"""What a job asks of 49 CFR Part 213: the bolted joints that it leaves in its new welded rail, and how they are anchored."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections import Counter
from typing import TYPE_CHECKING, Final, NamedTuple

from railrules_api.domain.anchoring import anchored_runs
from railrules_api.domain.counting import SLACK
from railrules_api.domain.intervals import Interval, union
from railrules_api.domain.runs import WELDED, Closed
from railrules_api.domain.track import worked_spans
from railrules_api.rules.strength import regulation
from railrules_api.rules.strength.joint_rules import ANCHORED, Joint
from railrules_api.rules.takeoff.needs import PLAIN
from railrules_api.rules.takeoff.parts import Part, rails_of
from railrules_api.rules.takeoff.provisions import NONE
from railrules_api.rules.words import long_length

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from railrules_api.domain.strings import Rail, RailRun
    from railrules_api.rules.takeoff.job import Job
    from railrules_api.rules.takeoff.rail import Group

_NAMES: Final = {"joint": PLAIN, "insulated-joint": "insulated joint", "compromise-joint": "compromise joint"}


class _Held(NamedTuple):
    """One rail of one track: where the job knows how it is held, and where every tie of it is anchored."""

    known: tuple[Interval, ...]
    boxed: tuple[Interval, ...]


def _at(station: float, intervals: Sequence[Interval]) -> Interval | None:
    """Return the interval that a station lies in or at the edge of; the intervals are in order and apart."""
    position = bisect_right(intervals, station + SLACK, key=lambda interval: interval.begin) - 1
    return intervals[position] if position >= 0 and intervals[position].end >= station - SLACK else None


class Anchoring:
    """Where every tie of a job is anchored, by track and rail."""

    def __init__(self, parts: Iterable[Part]) -> None:
        """Collect it from the parts of a job, as the rule of anchors counts them."""
        known: dict[tuple[str, Rail], list[Interval]] = {}
        boxed: dict[tuple[str, Rail], list[Interval]] = {}
        for part in parts:
            segment, new = part.segment, part.segment.new
            if new.elastic_fasteners:
                continue  # such ties carry no anchors, and whether what they carry stands for them is not for a count to say
            runs = anchored_runs(part.stretch, new.anchors, part.zones, forbidden=False)
            every = [Interval(run.begin, run.end) for run in runs if run.boxed_every == 1]
            for rail in rails_of(segment):
                known.setdefault((segment.track or "", rail), []).extend(worked_spans(part.stretch))
                boxed.setdefault((segment.track or "", rail), []).extend(every)
        self._held = {line: _Held(tuple(union(spans)), tuple(union(boxed[line]))) for line, spans in known.items()}

    def each_way(self, track: str, joint: Closed) -> float | None:
        """Return the length on the shorter side of a joint with every tie anchored, up to what the regulation asks for.

        None is returned where it may go on beyond what the job knows, such as in the track that stays.
        """
        held = self._held.get((track, joint.rail))
        known = None if held is None else _at(joint.station, held.known)
        if held is None or known is None:
            return None
        boxed = _at(joint.station, held.boxed) or Interval(joint.station, joint.station)
        sides = (
            (joint.station - boxed.begin, boxed.begin <= known.begin + SLACK),
            (boxed.end - joint.station, boxed.end >= known.end - SLACK),
        )
        # a hair short of 195 ft is rounding; more than 195 ft makes no difference, so that equal joints are asked about once
        lengths = [ANCHORED if length >= ANCHORED - SLACK else length for length, _ in sides]
        if any(length < ANCHORED and goes_on for length, (_, goes_on) in zip(lengths, sides, strict=True)):
            return None
        return min(lengths)


def _joints(runs: Iterable[RailRun]) -> list[Closed]:
    """Return the joints that close runs, a place that two runs share once."""
    found: dict[tuple[str, float], Closed] = {}
    for run in runs:
        for station, kind in ((run.begin, run.begin_closing), (run.end, run.end_closing)):
            if kind in _NAMES:
                found.setdefault((run.rail, station), Closed(station, run.rail, kind))
    return sorted(found.values(), key=lambda joint: (joint.station, joint.rail))


def _longest_weld(runs: Iterable[RailRun]) -> float:
    """Return the longest rail that the job welds together: runs closed to each other by welds are one."""
    longest = length = 0.0
    before: RailRun | None = None
    for run in sorted(runs, key=lambda run: (run.rail, run.begin)):
        joined = before is not None and before.rail == run.rail and before.end_closing in WELDED and run.begin_closing in WELDED
        length = (length if joined else 0.0) + run.end - run.begin
        longest, before = max(longest, length), run
    return longest


def _classes(group: Group, joints: Sequence[Closed]) -> list[int | None]:
    """Return the highest class of track at each joint, in order of stations; None where none is given."""
    found: list[int | None] = [None] * len(joints)
    stations = [joint.station for joint in joints]
    for segment in group.segments:
        if segment.track_class is not None:
            for position in range(bisect_left(stations, segment.begin - SLACK), bisect_right(stations, segment.end + SLACK)):
                found[position] = max(found[position] or 0, segment.track_class)
    return found


def questions(group: Group, job: Job, range_lower: float, anchoring: Anchoring) -> tuple[regulation.TrackJointsInput, ...]:
    """Return the questions to `regulation.track-joints` for the joints of a group, one for each class of track; none without any.

    Joints of one kind that are anchored alike are asked about once. What the job does not say is left out, and not checked.
    """
    provided = job.provisions or NONE
    plain = None if job.supply.joints is None else job.supply.joints.bolts_per_joint // 2
    by_class: dict[int | None, dict[tuple[str, float | None], list[Closed]]] = {}
    joints = _joints(group.runs)
    for joint, track_class in zip(joints, _classes(group, joints), strict=True):
        alike = by_class.setdefault(track_class, {})
        alike.setdefault((joint.kind, anchoring.each_way(group.section.track, joint)), []).append(joint)
    rail_length = _longest_weld(group.runs) if by_class else 0.0
    return tuple(
        regulation.TrackJointsInput(
            track_class=track_class,
            rail_length=rail_length,
            joints=tuple(
                Joint(
                    name=_named(kind, found),
                    origin="installation",
                    bolts_in_rail=plain if kind == "joint" else provided.special_bolts_in_rail,
                    welded_after=provided.joints_welded_after,
                    torch_cut=provided.torch_cut,
                    anchored_each_way=anchored,
                )
                for (kind, anchored), found in alike.items()
            ),
            anchored_at_turnouts=provided.anchored_at_turnouts,
            laid_at=job.temperatures.laying_rail,
            range_lower=range_lower,
            later_adjustment=provided.later_adjustment,
            plan_in_force=provided.plan_in_force,
            record_kept=provided.record_kept,
        )
        for track_class, alike in by_class.items()
    )


def _named(kind: str, joints: Sequence[Closed]) -> str:
    """Name joints by the first of them, and say how many more there are."""
    first = joints[0]
    by_rail = Counter(joint.rail for joint in joints)
    more = f" and {len(joints) - 1} more alike" if len(joints) > 1 else ""
    rail = f"{first.rail} rail, " if len(by_rail) == 1 else ""
    return f"{_NAMES[kind]}, {rail}{long_length(first.station)}{more}"
