"""What a takeoff answers: orders, lines, rail, safety, checks, work and money of a whole job."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, NamedTuple

from railrules_api.domain.amounts import SMALL
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.domain.track import Station
from railrules_api.rules.model import Working
from railrules_api.rules.ordering import Order
from railrules_api.rules.quantities import (
    closing_joints,
    loads,
    rail_supply,
    string_layout,
    train_loads,
)
from railrules_api.rules.quantities import work_plan as plan_rule
from railrules_api.rules.quantities.anchors import ZoneUsed
from railrules_api.rules.strength import hauling_curve
from railrules_api.rules.takeoff import (
    money,
    stability,
)
from railrules_api.rules.takeoff.book import JobCheck, JobLine
from railrules_api.rules.thermal import break_gap, end_movement, force, laying_adjustment, restraint, temperature_range


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SegmentSummary:
    """A segment at a glance."""

    name: Annotated[str, Field("Name.")]
    track: Annotated[str | None, Field("Track.")] = None
    begin: Station
    end: Station
    length: Annotated[float, Field("Length.", kind=Kind.LENGTH)]
    ties: Annotated[int, Field("Ties in the work.")]
    spacing: Annotated[float, Field("Tie spacing as used.", kind=Kind.LENGTH, answer=SMALL)]
    anchors: Annotated[int, Field("Anchors applied.")]
    zones: Annotated[tuple[ZoneUsed, ...], Field("Anchor zones as used, overlapping ones merged.")]
    notes: Annotated[tuple[str, ...], Field("What the rules have to say about it.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class RailPlan:
    """The new rail of one section on one track: made, laid, hauled."""

    of: Annotated[str, Field("Section, and track where the job has several.")]
    supply: Annotated[rail_supply.RailSupplyResult, Field("What is made, laid and left over.")]
    joints: Annotated[closing_joints.ClosingJointsResult | None, Field("Joints left in it, where there are any.")] = None
    layout: Annotated[string_layout.StringLayoutResult, Field("Every piece and field weld by station.")]
    trains: Annotated[train_loads.TrainLoadsResult, Field("Train loads.")]
    way: Annotated[
        hauling_curve.HaulingCurveResult | None, Field("Strings at the sharpest place of their way, where the job tells of it.")
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SafetyPlan:
    """Thermal answers for one section of new rail."""

    of: Annotated[str, Field("Section, and track where the job has several.")]
    target: Annotated[float, Field("Neutral temperature wanted, as used.", kind=Kind.TEMPERATURE)]
    hot: Annotated[force.ThermalForceResult, Field("Hottest rail, neutral temperature drifted.")]
    cold: Annotated[force.ThermalForceResult, Field("Coldest rail, neutral temperature as wanted.")]
    break_gap: Annotated[break_gap.BreakGapResult, Field("If the rail breaks at its coldest.")]
    laying: Annotated[laying_adjustment.LayingAdjustmentResult | None, Field("Adjustment of a whole string while laying.")] = None
    restraint: Annotated[
        restraint.RestraintResult | None,
        Field("What the anchored approaches hold, at the coldest or hottest rail, whichever asks more."),
    ] = None
    end: Annotated[
        end_movement.EndMovementResult | None,
        Field("Movement and breathing length where its welded rail ends, neutral temperature as wanted."),
    ] = None
    end_drifted: Annotated[
        end_movement.EndMovementResult | None, Field("The same with the neutral temperature drifted, for the hottest rail.")
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class TakeoffResult:
    """The whole job, answered."""

    name: Annotated[str, Field("Name of the job.")]
    orders: Annotated[tuple[Order, ...], Field("Totals by item and product, with allowance, rounded once.")]
    lines: Annotated[tuple[JobLine, ...], Field("The bill, line by line.")]
    segments: Annotated[tuple[SegmentSummary, ...], Field("Segments in the order given.")]
    rail: Annotated[tuple[RailPlan, ...], Field("New rail by section and track.")]
    range: Annotated[temperature_range.TemperatureRangeResult, Field("Desired laying temperature range.")]
    safety: Annotated[tuple[SafetyPlan, ...], Field("Thermal answers by section.")]
    stability: Annotated[
        tuple[stability.TrackStability, ...], Field("Buckling of hot track by segment and curve, where the job asks for it.")
    ]
    checks: Annotated[tuple[JobCheck, ...], Field("Every check, failed ones first, then those that lack an input.")]
    work: Annotated[plan_rule.WorkPlanResult, Field("Work of the whole job in trade order, timed where rates are given.")]
    hauled_in: Annotated[loads.LoadsResult, Field("What is ordered, by item: tons, and loads where vehicles are given.")]
    hauled_out: Annotated[loads.LoadsResult, Field("What is recovered, by item: tons, and loads where vehicles are given.")]
    mass_in: Annotated[float, Field("Mass of what is ordered, as far as it is known.", kind=Kind.MASS, answer=("short_ton", "t"))]
    mass_out: Annotated[
        float, Field("Mass of what is recovered, as far as it is known.", kind=Kind.MASS, answer=("short_ton", "t"))
    ]
    without_mass: Annotated[tuple[str, ...], Field("Items ordered or recovered whose mass is not known.")]
    money: Annotated[money.Money | None, Field("Costs and credits, where prices are given.")] = None


class Done(NamedTuple):
    """A takeoff and everything that went into it."""

    result: TakeoffResult
    workings: tuple[Working, ...]
