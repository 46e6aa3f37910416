"""New track laid of single rails: its joints, asked for over as many segments as its rails run on through.

Insulated and compromise joints stand in place of plain ones. So a segment may hold more of them than it has joints, where those
that they replace lie in the segment beside it: what can be answered is the whole of the track that is made alike.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import chain
from typing import TYPE_CHECKING, Any, NamedTuple

from railrules_api.domain.counting import SLACK
from railrules_api.domain.errors import RefusedError
from railrules_api.domain.fields import slots_of
from railrules_api.domain.intervals import Interval, union
from railrules_api.domain.track import Span, Stretch
from railrules_api.rules.quantities import joints
from railrules_api.rules.takeoff.parts import INSULATED, along_the_line, rail_of, rails_of
from railrules_api.rules.takeoff.places import in_segment
from railrules_api.rules.takeoff.rail_lines import runs_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from railrules_api.rules.takeoff.job import Job, Segment
    from railrules_api.rules.takeoff.parts import Part


class Jointed(NamedTuple):
    """Track made alike of single rails, and the question about its joints.

    Attributes:
        of: its segment, or the first one and how many more, for the answer.
        positions: its segments in order, by their positions in the job.
        given: the question to `quantities.joints`.
    """

    of: str
    positions: tuple[int, ...]
    given: joints.JointsInput


def _alike(segment: Segment) -> tuple[Any, ...]:
    """Return what touching segments have in common that one question asks about."""
    assert segment.new.joints is not None
    made_of = replace(segment.new.joints, section_changes=None)
    return segment.track or "", rails_of(segment), rail_of(segment), made_of, segment.track_class


def _chains(job: Job) -> list[list[int]]:
    """Return the segments of single rails, those together that touch and are made alike; in the order of the job."""
    found: list[list[int]] = []
    last: dict[tuple[Any, ...], list[int]] = {}
    for position in along_the_line(job):
        segment = job.segments[position]
        if segment.new.joints is None:
            continue
        alike = _alike(segment)
        before = last.get(alike)
        if before is not None and segment.begin <= job.segments[before[-1]].end + SLACK:
            before.append(position)
        else:
            last[alike] = [position]
            found.append(last[alike])
    return sorted(found, key=min)


def _stretch(parts: Sequence[Part]) -> Stretch:
    """Return the stretch of touching segments: where its ties stand does not matter to its joints."""
    first, last = parts[0], parts[-1]
    if len(parts) == 1:
        return first.stretch
    rails = rails_of(first.segment)
    skipped = union(Interval(span.begin, span.end) for part in parts for span in part.stretch.left_out)
    return Stretch(
        begin=first.stretch.begin,
        end=last.stretch.end,
        rails="both" if len(rails) > 1 else rails[0],
        ties=first.stretch.ties,
        curves=tuple(chain.from_iterable(part.stretch.curves for part in parts)),
        left_out=tuple(Span(begin=part.begin, end=part.end) for part in skipped),
    )


def _insulated(segments: Sequence[Segment]) -> int:
    """Count the insulated joints of one rail; a piece with one, cut by a limit of segments, is one."""
    told = [feature for segment in segments for feature in segment.features if feature.kind == INSULATED]
    pieces = union(Interval(feature.begin, feature.end) for feature in told if feature.end is not None)
    return sum(feature.end is None for feature in told) + len(pieces)


def compromise_joints(job: Job) -> dict[int, int]:
    """Count the compromise joints at the ends of runs of single rails, by the segment's position and on each rail."""
    found: dict[int, int] = {}
    for line_run in runs_of(job):
        if job.segments[line_run.first].new.joints is None:
            continue
        ends = (line_run.first, line_run.run.begin_closing), (line_run.last, line_run.run.end_closing)
        for position, closing in ends:
            if closing == "compromise-joint":
                found[position] = found.get(position, 0) + 1
    return found


def jointed(job: Job, parts: Sequence[Part]) -> list[Jointed]:
    """Return the questions about the joints of a job's single rails."""
    asked: list[Jointed] = []
    chains = _chains(job)
    at_ends = compromise_joints(job) if chains else {}
    for positions in chains:
        segments = [job.segments[position] for position in positions]
        made_of = segments[0].new.joints
        assert made_of is not None
        changes = {
            position: one.new.joints.section_changes for position, one in zip(positions, segments, strict=True) if one.new.joints
        }
        told = [count for count in changes.values() if count is not None]
        given = joints.JointsInput(
            **{slot.name: getattr(made_of, slot.name) for slot in slots_of(joints.JointSet)},
            stretch=_stretch([parts[position] for position in positions]),
            rail_length=made_of.rail_length,
            insulated_joints=_insulated(segments) * len(rails_of(segments[0])) or None,
            section_changes=sum(told) if told else None,
            # where a segment says how often its section changes, its ends are among that
            compromise_joints=sum(at_ends.get(position, 0) for position in positions if changes[position] is None) or None,
            track_class=segments[0].track_class,
        )
        of = segments[0].name if len(segments) == 1 else f"{segments[0].name} and {len(segments) - 1} more"
        asked.append(Jointed(of, tuple(positions), given))
    return asked


def in_job(error: RefusedError, one: Jointed, job: Job) -> RefusedError:
    """Return a refusal of a question about joints, which has too many of one kind, with the place where the first is told."""
    field = error.refusals[0].path[0]

    def told(segment: Segment) -> bool:
        if field == "section_changes":
            return bool(segment.new.joints and segment.new.joints.section_changes)
        return any(feature.kind == INSULATED for feature in segment.features)

    position = next(position for position in one.positions if told(job.segments[position]))
    return in_segment(error, joints.RULE, one.given, job.segments[position]).below("segments", position)
