"""The new rail of a job: its runs, keep-outs and curves, section by section, put to the rules of supply, layout and haulage."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.errors import below, refuse
from railrules_api.domain.strings import KeepOut, string_length
from railrules_api.rules.quantities import closing_joints, rail_supply, string_layout, train_loads
from railrules_api.rules.strength.hauling_curve import HaulingCurveInput
from railrules_api.rules.takeoff.parts import along_the_line, rail_of
from railrules_api.rules.takeoff.rail_lines import runs_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from railrules_api.domain.strings import RailRun
    from railrules_api.domain.track import Curve
    from railrules_api.rules.takeoff.job import Job, Segment
    from railrules_api.rules.takeoff.string_way import StringWay
    from railrules_api.rules.takeoff.supply import Supply
    from railrules_api.rules.takeoff.tracks import NewTrack


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


def section_of(segment: Segment) -> Section:
    """Return the section that a segment is relaid with."""
    return Section(segment.track or "", *rail_of(segment))


def groups_of(job: Job) -> list[Group]:
    """Return the runs of welded rail by track and section, in order of first appearance along the line."""
    groups: dict[Section, Group] = {}
    for position in along_the_line(job):
        segment = job.segments[position]
        if segment.new.joints is not None:
            continue
        section = section_of(segment)
        group = groups.get(section)
        if group is None:
            group = groups[section] = Group(section, segment.new, [], [])
        group.segments.append(segment)
    for line_run in runs_of(job):
        segment = job.segments[line_run.first]
        if segment.new.joints is None:
            groups[section_of(segment)].runs.append(line_run.run)
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
    with below("string"):
        made = string_length(supply.string).made
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
        leftover_reach=supply.leftover_reach,
        train_strings=train_loads.capacity(trains_input(group, supply, 1, made)).strings,
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
        leftover_reach=asked.leftover_reach,
        train_strings=asked.train_strings,
        block_length=supply.work_block,
    )


def trains_input(group: Group, supply: Supply, strings: int, length: float) -> train_loads.TrainLoadsInput:
    """Return the question to `quantities.train-loads` for strings of a group, of a length as made [m]."""
    return train_loads.TrainLoadsInput(
        strings=strings,
        string_length=length,
        mass_per_length=group.new.mass_per_length,
        rack_strings=supply.rack_strings,
        train_mass_limit=supply.train_mass_limit,
        car_mass_limit=supply.car_mass_limit,
        car_spacing=supply.car_spacing,
        extra_cars=supply.extra_cars,
        unloaded_at_once=supply.unloaded_at_once,
        expansion=supply.string.expansion,
    )


def way_input(group: Group, job: Job, way: StringWay, string_length: float) -> HaulingCurveInput:
    """Return the question to `strength.hauling-curve` for the strings of a group.

    Args:
        group: runs of one section.
        job: the job.
        way: of its rail trains.
        string_length: of a string as made [m].

    Raises:
        RefusedError: nothing is known of the width of the rail's base, which is stressed most.
    """
    new = group.new
    if new.base_width is None:
        position = next(place for place, segment in enumerate(job.segments) if segment is group.segments[0])
        reason = "needed for the bending of strings on their way"
        raise refuse("segments", position, "new", "base_width", reason=reason, value=None)
    return HaulingCurveInput(
        radius=way.radius,
        degree=way.degree,
        turnout_number=way.turnout_number,
        gauge=way.gauge,
        heel_spread=way.heel_spread,
        frog_toe_spread=way.frog_toe_spread,
        turn_angle=way.turn_angle,
        elastic_modulus=job.temperatures.elastic_modulus,
        base_width=new.base_width,
        second_moment_lateral=new.second_moment_lateral,
        yield_strength=way.yield_strength,
        yield_share=way.yield_share,
        string_length=string_length,
        clamped_at=way.clamped_at,
        rack_spacing=way.rack_spacing,
        rack_offset=way.rack_offset,
        facing_ends=way.facing_ends,
        end_clearance=way.end_clearance,
    )
