"""Work of a rail gang: operations counted per stretch, tie and mile; with production rates also time and track occupancy."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.anchoring import AnchorZone, anchored_runs
from railrules_api.domain.fields import Field, Taken, slots_of
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import AnchorPattern
from railrules_api.domain.records import lean
from railrules_api.domain.track import Stretch, rail_count
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities import work_plan
from railrules_api.rules.quantities.given import (
    JointRailLength,
    NewAnchors,
    NewSpikes,
    OldSpikesPerPlate,
    PlatedShare,
    RenewedShare,
    TieKind,
    joint_count,
    kept_ties,
    ranges_of,
    worked_length,
)
from railrules_api.rules.quantities.lines import Line
from railrules_api.rules.quantities.spikes import SpikingClass, in_bands
from railrules_api.rules.quantities.work_plan import (
    OperationAmount,
    Production,
    Task,
    WorkPlanInput,
    WorkPlanResult,
)

BrokenShare = Annotated[
    float,
    Field(
        "Share of the old spikes that break and leave a stub.",
        at_least=0.0,
        at_most=1.0,
        default="spikes-broken-share",
    ),
]
BoredShare = Annotated[
    float,
    Field(
        "Share of the spikes in ties that stay for which a hole is bored.",
        at_least=0.0,
        at_most=1.0,
        default="holes-bored-share",
    ),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class WorkInput(Production):
    """A stretch, what holds its rail now and what is to hold it, and production rates."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    tie_kind: TieKind
    renewed_share: RenewedShare
    old_spikes_per_plate: OldSpikesPerPlate
    plated_share: PlatedShare
    broken_share: BrokenShare
    old_anchors: Annotated[
        AnchorPattern | None,
        Field("Anchors of the old track; left out: none.", taken=Taken("old_anchor_pattern", "anchor-patterns")),
    ] = None
    old_rail_length: JointRailLength = None
    pattern: NewSpikes
    track_class: SpikingClass = None
    joint_rail_length: JointRailLength = None
    bored_share: BoredShare
    anchors: NewAnchors
    zones: Annotated[tuple[AnchorZone, ...], Field("Where anchoring is otherwise.")] = ()
    elastic_fasteners: Annotated[bool | None, Field("The fastenings hold the rail lengthwise; left out: they do not.")] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class WorkResult(WorkPlanResult):
    """Operations on a stretch in trade order, and which of them sets the pace."""

    lines: Annotated[tuple[Line, ...], Field("Nothing to order; empty.")] = ()


def counts(given: WorkInput) -> dict[Task, Amount]:
    """Return how much of every operation the stretch asks for, in trade order.

    Raises:
        RefusedError: the stretch, a pattern or a zone contradicts itself.
    """
    ranges, rails = ranges_of(given.stretch), rail_count(given.stretch.rails)
    ties = sum(part.count for part in ranges)
    on_wood = given.tie_kind == "wood"
    seats = float(ties * rails) if on_wood else 0.0
    seats_kept = kept_ties(ties, given.renewed_share) * rails if on_wood else 0.0
    old_anchors = new_anchors = 0
    if given.old_anchors is not None:
        runs = anchored_runs(given.stretch, given.old_anchors, pattern_field="old_anchors")
        old_anchors = sum(run.held.anchors for run in runs) * rails
    runs = anchored_runs(
        given.stretch, given.anchors, given.zones, forbidden=bool(given.elastic_fasteners), pattern_field="anchors"
    )
    new_anchors = sum(run.held.anchors for run in runs) * rails
    bands = in_bands(given.pattern, ranges if on_wood else (), rails, given.track_class)
    joint_spikes = joint_count(given.stretch, given.joint_rail_length) * given.pattern.extra_at_joint_ties if on_wood else 0.0
    spikes = sum(band.rail_spikes + band.plate_spikes for band in bands) + joint_spikes
    rail = Amount(rails * worked_length(given.stretch), Kind.LENGTH)
    return {
        "remove-anchors": Amount(float(old_anchors)),
        "unbolt-joints": Amount(joint_count(given.stretch, given.old_rail_length)),
        "pull-spikes": Amount(seats * given.old_spikes_per_plate),
        "roll-out-rail": rail,
        "remove-plates": Amount(seats * given.plated_share),
        "level-cribs": Amount(float(ties)),
        "plug-holes": Amount(seats_kept * given.old_spikes_per_plate),
        "drive-stubs": Amount(seats_kept * given.old_spikes_per_plate * given.broken_share),
        "adze-seats": Amount(seats_kept),
        "treat-seats": Amount(seats_kept),
        "set-plates": Amount(seats),
        "set-rail": rail,
        "bore-holes": Amount(spikes * (1.0 - given.renewed_share) * given.bored_share),
        "drive-spikes": Amount(spikes),
        "apply-anchors": Amount(float(new_anchors)),
    }


def evaluate(given: WorkInput) -> WorkResult:
    """Count the operations of a rail gang and, where rates are given, find which of them sets the pace.

    Raises:
        RefusedError: the stretch, a pattern or a zone contradicts itself; an operation has two rates, or one of the wrong kind;
            an occupancy leaves no time to work.
    """
    amounts = counts(given)
    plan = work_plan.evaluate(
        WorkPlanInput(
            ties=int(amounts["level-cribs"].value),
            length=worked_length(given.stretch),
            amounts=tuple(OperationAmount(operation=task, amount=amount) for task, amount in amounts.items()),
            rates=given.rates,
            working_day=given.working_day,
            occupancy=given.occupancy,
            occupancy_lost=given.occupancy_lost,
        )
    )
    return WorkResult(**{slot.name: getattr(plan, slot.name) for slot in slots_of(WorkPlanResult)})


RULE = Rule(
    id="quantities.work-per-tie",
    title="Work per tie and per mile",
    summary=(
        "Operations of an out-of-face rail gang in trade order, for the rails renewed. With the user's production rates: the "
        "time of each, and the operation that sets the pace, since all work one behind the other. No rate is given by default: "
        "none was found published."
    ),
    formulas=(
        Formula(
            "operations",
            "ties, seats, spikes and anchors by the rules that count them; times as in quantities.work-plan",
            exact=False,
        ),
        Formula("time", "the longest time of an operation", exact=False),
        Formula("days", "time / working day", exact=False),
        Formula("occupancies", "ceil(time / (occupancy - lost time))", exact=False),
    ),
    cites=(
        Cite("tr0671", "1.15: order of work of an out-of-face rail gang", "published"),
        Cite("common-practice", "a gang in line moves at the pace of its slowest operation", "common-practice"),
    ),
    input=WorkInput,
    output=WorkResult,
    evaluate=evaluate,
)
