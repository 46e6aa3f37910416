"""The new rail of a job: its runs, keep-outs and curves, section by section, put to the rules of supply, layout and haulage."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.counting import SLACK
from railrules_api.domain.intervals import Interval, subtract
from railrules_api.domain.strings import KeepOut, RailRun
from railrules_api.rules.quantities import closing_joints, rail_supply, string_layout, train_loads
from railrules_api.rules.takeoff.parts import rail_of, rails_of
from railrules_api.rules.takeoff.segments import INSULATED

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from railrules_api.domain.strings import Closing, Rail
    from railrules_api.domain.track import Curve
    from railrules_api.rules.takeoff.job import Job, JobFeature, NewTrack, Segment
    from railrules_api.rules.takeoff.supply import Supply


class Section(NamedTuple):
    """What tells one new rail from another: rails of different sections do not share strings."""

    track: str
    name: str
    mass_per_length: float
    area: float


@dataclass(slots=True)
class Group:
    """The runs of one section on one track."""

    section: Section
    new: NewTrack
    segments: list[Segment]
    runs: list[RailRun]


@dataclass(slots=True)
class _Open:
    """A run under way along one rail."""

    section: Section
    begin: float
    end: float
    closing: Closing
    end_closing: Closing | None


def section_of(segment: Segment) -> Section:
    """Return the section that a segment is relaid with."""
    return Section(segment.track or "", *rail_of(segment))


def _hole(feature: JobFeature, supply: Supply) -> tuple[Interval, Closing] | None:
    """Return where a feature breaks the rail, and how the rail is closed there; None where it goes through unbroken."""
    if feature.end is None:
        if not feature.rule.breaks_string:
            return None
        closing: Closing = "insulated-joint" if feature.kind == INSULATED else "joint"
        return Interval(feature.begin, feature.begin), closing
    if not feature.rule.rail_through:
        return Interval(feature.begin, feature.end), supply.fixed_tie_in
    if feature.rule.breaks_string:
        return Interval(feature.begin, feature.end), "weld"  # a plug of its own, of the new section, welded in
    return None


def _pieces(segment: Segment, supply: Supply) -> Iterator[tuple[float, float, Closing | None, Closing | None]]:
    """Yield the parts of a segment that new rail runs through; a closing is None at the segment's own limits."""
    closings: dict[float, Closing] = {}
    holes = [Interval(span.begin, span.end) for span in segment.left_out]
    for hole in holes:
        closings[hole.begin] = closings[hole.end] = supply.tie_in
    for feature in segment.features:
        found = _hole(feature, supply)
        if found is not None:
            holes.append(found[0])
            closings[found[0].begin] = closings[found[0].end] = found[1]
    parts = subtract(Interval(segment.begin, segment.end), [hole for hole in holes if hole.end > hole.begin])
    points = sorted({hole.begin for hole in holes if hole.end == hole.begin})
    for part in parts:
        cuts = [part.begin, *(point for point in points if part.begin < point < part.end), part.end]
        for begin, end in pairwise(cuts):
            yield (
                begin,
                end,
                closings.get(begin),
                closings.get(end),
            )


class _Line:
    """Runs along one rail of one track, joined where neighbours touch."""

    def __init__(self, rail: Rail, supply: Supply) -> None:
        self.rail = rail
        self.supply = supply
        self.done: list[tuple[Section, RailRun]] = []
        self.open: _Open | None = None

    def add(
        self, segment: Segment, section: Section, begin: float, end: float, closings: tuple[Closing | None, Closing | None]
    ) -> None:
        """Add a part; it continues the open run where it touches it with the same section and no closing between."""
        run = self.open
        if run is not None and begin <= run.end + SLACK and closings[0] is None:
            if run.section == section:
                run.end, run.end_closing = end, segment.end_closing
                self._close_if(closings[1])
                return
            # another section of new rail follows: one compromise weld, counted with the run before it
            self._close("compromise-weld")
            self.open = _Open(section, begin, end, "counted-elsewhere", segment.end_closing)
        else:
            self._close(None)
            closing = closings[0] or segment.begin_closing or self.supply.tie_in
            self.open = _Open(section, begin, end, closing, segment.end_closing)
        self._close_if(closings[1])

    def _close_if(self, closing: Closing | None) -> None:
        if closing is not None:
            self._close(closing)

    def _close(self, closing: Closing | None) -> None:
        """Close the open run, by its segment's own closing or the supply's where none is given."""
        run = self.open
        if run is not None:
            closing = closing or run.end_closing or self.supply.tie_in
            self.done.append(
                (
                    run.section,
                    RailRun(rail=self.rail, begin=run.begin, end=run.end, begin_closing=run.closing, end_closing=closing),
                )
            )
        self.open = None

    def finish(self) -> list[tuple[Section, RailRun]]:
        """Close the last run and return all of them."""
        self._close(None)
        return self.done


def groups_of(job: Job) -> list[Group]:
    """Return the runs of welded rail by track and section, in order of first appearance along the line."""
    welded = [segment for segment in job.segments if segment.new.joints is None]
    ordered = sorted(welded, key=lambda segment: (segment.track or "", segment.begin, segment.end))
    groups: dict[Section, Group] = {}
    lines: dict[tuple[str, str], _Line] = {}
    for segment in ordered:
        section = section_of(segment)
        group = groups.get(section)
        if group is None:
            group = groups[section] = Group(section, segment.new, [], [])
        group.segments.append(segment)
        pieces = list(_pieces(segment, job.supply))
        for rail in rails_of(segment):
            line = lines.get((section.track, rail))
            if line is None:
                line = lines[section.track, rail] = _Line(rail, job.supply)
            for begin, end, before, after in pieces:
                line.add(segment, section, begin, end, (before, after))
    for line in lines.values():
        for section, run in line.finish():
            groups[section].runs.append(run)
    return [group for group in groups.values() if group.runs]


def _keep_outs(segments: Sequence[Segment], supply: Supply) -> tuple[KeepOut, ...]:
    return tuple(
        KeepOut(begin=feature.begin, end=feature.end, distance=supply.keep_out_distance, reason=feature.name or feature.kind)
        for segment in segments
        for feature in segment.features
        if feature.end is not None and feature.rule.rail_through and not feature.rule.breaks_string
    )


def _curves(segments: Sequence[Segment]) -> tuple[Curve, ...]:
    """Return the curves of a group, those cut at a segment limit as they are; both rails of a track may name the same one."""
    found: dict[tuple[float, float], Curve] = {}
    for segment in segments:
        for curve in segment.curves:
            found.setdefault((curve.begin, curve.end), curve)
    return tuple(found[limits] for limits in sorted(found))


def supply_input(group: Group, supply: Supply) -> rail_supply.RailSupplyInput:
    """Return the question to `quantities.rail-supply` for a group."""
    old = {segment.old.rail_length for segment in group.segments}
    return rail_supply.RailSupplyInput(
        runs=tuple(group.runs),
        string=supply.string,
        curves=_curves(group.segments),
        rail_centres=supply.rail_centres,
        keep_outs=_keep_outs(group.segments, supply),
        field_weld=supply.field_weld,
        thermite_gap=supply.thermite_gap,
        field_consumption=supply.field_consumption,
        minimum_piece=supply.minimum_piece,
        stagger=supply.stagger,
        saw_cut=supply.saw_cut,
        mass_per_length=group.new.mass_per_length,
        spare_share=supply.spare_share,
        rail_reject_share=supply.rail_reject_share,
        weld_reject_share=supply.weld_reject_share,
        weld_reject_cut=supply.weld_reject_cut,
        test_weld_share=supply.test_weld_share,
        test_weld_rail=supply.test_weld_rail,
        old_rail_length=old.pop() if len(old) == 1 else None,
    )


def joints_input(group: Group, supply: Supply, found: rail_supply.RailSupplyResult) -> closing_joints.ClosingJointsInput:
    """Return the question to `quantities.closing-joints`: what joints the layout of a group leaves."""
    classes = {segment.track_class for segment in group.segments if segment.track_class is not None}
    return closing_joints.ClosingJointsInput(
        plain=found.closing_joints,
        insulated=found.closing_insulated_joints,
        compromise=found.closing_compromise_joints,
        made_of=supply.joints,
        track_class=max(classes, default=None),  # the highest class asks for the most bolts
    )


def layout_input(asked: rail_supply.RailSupplyInput, supply: Supply) -> string_layout.StringLayoutInput:
    """Return the question to `quantities.string-layout` for a group: the same laying as was asked for its supply."""
    return string_layout.StringLayoutInput(
        runs=asked.runs,
        string=supply.string,
        curves=asked.curves,
        rail_centres=supply.rail_centres,
        keep_outs=asked.keep_outs,
        field_weld=supply.field_weld,
        thermite_gap=supply.thermite_gap,
        field_consumption=supply.field_consumption,
        minimum_piece=supply.minimum_piece,
        stagger=supply.stagger,
        saw_cut=supply.saw_cut,
        block_length=supply.work_block,
    )


def trains_input(group: Group, supply: Supply, found: rail_supply.RailSupplyResult) -> train_loads.TrainLoadsInput:
    """Return the question to `quantities.train-loads` for the strings of a group."""
    return train_loads.TrainLoadsInput(
        strings=found.strings,
        string_length=found.string_length,
        mass_per_length=group.new.mass_per_length,
        rack_strings=supply.rack_strings,
        train_mass_limit=supply.train_mass_limit,
        car_mass_limit=supply.car_mass_limit,
        car_spacing=supply.car_spacing,
        extra_cars=supply.extra_cars,
        unloaded_at_once=supply.unloaded_at_once,
        expansion=supply.string.expansion,
    )
