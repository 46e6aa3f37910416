"""Work of a rail gang: operations counted per stretch, tie and mile; with production rates also time and track occupancy."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated, Final, Literal

from railrules_api.domain.amounts import Amount
from railrules_api.domain.anchoring import AnchorZone, anchored_runs
from railrules_api.domain.counting import round_up
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import AnchorPattern
from railrules_api.domain.track import Stretch, rail_count
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.given import (
    METRES_PER_MILE,
    JointRailLength,
    NewAnchors,
    NewSpikes,
    OldSpikesPerPlate,
    RenewedShare,
    TieKind,
    joint_count,
    kept_ties,
    ranges_of,
    worked_length,
)
from railrules_api.rules.quantities.lines import Line
from railrules_api.rules.quantities.spikes import in_bands

if TYPE_CHECKING:
    from collections.abc import Mapping

Task = Literal[
    "remove-anchors",
    "unbolt-joints",
    "pull-spikes",
    "roll-out-rail",
    "remove-plates",
    "level-cribs",
    "plug-holes",
    "drive-stubs",
    "adze-seats",
    "treat-seats",
    "set-plates",
    "set-rail",
    "bore-holes",
    "drive-spikes",
    "apply-anchors",
]
TITLES: Final[Mapping[Task, str]] = {
    "remove-anchors": "Old anchors to remove",
    "unbolt-joints": "Old joints to take apart",
    "pull-spikes": "Old spikes to pull",
    "roll-out-rail": "Old rail to roll clear",
    "remove-plates": "Old plates to remove",
    "level-cribs": "Ties to sweep, with the crib beside them to level",
    "plug-holes": "Spike holes to plug",
    "drive-stubs": "Broken spike stubs to drive down",
    "adze-seats": "Tie seats to adze",
    "treat-seats": "Tie seats to treat",
    "set-plates": "New plates to set",
    "set-rail": "New rail to set",
    "bore-holes": "Spike holes to bore",
    "drive-spikes": "New spikes to drive",
    "apply-anchors": "New anchors to apply",
}
"""The operations in trade order: TR0671, 1.15, with boring put before spiking."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ProductionRate:
    """What one crew or machine does of one operation in a time."""

    operation: Annotated[Task, Field("The operation.")]
    done: Annotated[Amount, Field("What is done: pieces, or a length of rail for operations on rail.")]
    time: Annotated[float, Field("Time it takes.", kind=Kind.DURATION, above=0.0, at_most=1e7)]
    crews: Annotated[int, Field("Crews or machines at work on it side by side.", at_least=1, at_most=100)]


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkInput:
    """A stretch, what holds its rail now and what is to hold it, and production rates."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    tie_kind: TieKind
    renewed_share: RenewedShare
    old_spikes_per_plate: OldSpikesPerPlate
    broken_share: Annotated[
        float,
        Field(
            "Share of the old spikes that break and leave a stub.",
            at_least=0.0,
            at_most=1.0,
            default="spikes-broken-share",
        ),
    ]
    old_anchors: Annotated[
        AnchorPattern | None,
        Field("Anchors of the old track; left out: none.", taken=Taken("old_anchor_pattern", "anchor-patterns")),
    ] = None
    old_rail_length: JointRailLength = None
    pattern: NewSpikes
    joint_rail_length: JointRailLength = None
    bored_share: Annotated[
        float,
        Field(
            "Share of the spikes in ties that stay for which a hole is bored.",
            at_least=0.0,
            at_most=1.0,
            default="holes-bored-share",
        ),
    ]
    anchors: NewAnchors
    zones: Annotated[tuple[AnchorZone, ...], Field("Where anchoring is otherwise.")] = ()
    elastic_fasteners: Annotated[bool | None, Field("The fastenings hold the rail lengthwise; left out: they do not.")] = None
    rates: Annotated[tuple[ProductionRate, ...], Field("Production rates, at most one an operation.", most_items=15)] = ()
    working_day: Annotated[
        float, Field("Time worked in a day.", kind=Kind.DURATION, above=0.0, at_most=86_400.0, default="working-day")
    ]
    occupancy: Annotated[float | None, Field("Length of one track occupancy.", kind=Kind.DURATION, above=0.0, at_most=1e6)] = None
    occupancy_lost: Annotated[
        float | None,
        Field("Of it, lost to setting up and clearing; left out: nothing.", kind=Kind.DURATION, at_least=0.0, at_most=1e6),
    ] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Operation:
    """One operation of the gang."""

    operation: Annotated[Task, Field("The operation.")]
    title: Annotated[str, Field("What is done.")]
    amount: Annotated[Amount, Field("How much of it, unrounded.")]
    per_tie: Annotated[Amount, Field("Average for each tie that stands in the stretch.")]
    per_mile: Annotated[Amount, Field("Average for each mile of the stretch.")]
    time: Annotated[float | None, Field("Time it takes at the given rate.", kind=Kind.DURATION)] = None
    days: Annotated[float | None, Field("Working days, unrounded.")] = None
    occupancies: Annotated[float | None, Field("Track occupancies, rounded up.")] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkResult:
    """Operations in trade order, and which of them sets the pace."""

    ties: Annotated[int, Field("Ties that stand in the stretch.")]
    operations: Annotated[tuple[Operation, ...], Field("Operations in trade order.")]
    governing: Annotated[str | None, Field("Operation that takes longest and sets the gang's pace, of those with a rate.")] = None
    time: Annotated[float | None, Field("Time of the gang at that pace.", kind=Kind.DURATION)] = None
    days: Annotated[float | None, Field("Working days at that pace, unrounded.")] = None
    occupancies: Annotated[float | None, Field("Track occupancies at that pace, rounded up.")] = None
    without_rate: Annotated[tuple[str, ...], Field("Operations that have work and no rate: any of them may be slower.")]
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
    bands = in_bands(given.pattern, ranges if on_wood else (), rails)
    joint_spikes = joint_count(given.stretch, given.joint_rail_length) * given.pattern.extra_at_joint_ties if on_wood else 0.0
    spikes = sum(band.rail_spikes + band.plate_spikes for band in bands) + joint_spikes
    rail = Amount(rails * worked_length(given.stretch), Kind.LENGTH)
    return {
        "remove-anchors": Amount(float(old_anchors)),
        "unbolt-joints": Amount(joint_count(given.stretch, given.old_rail_length)),
        "pull-spikes": Amount(seats * given.old_spikes_per_plate),
        "roll-out-rail": rail,
        "remove-plates": Amount(seats),
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


def _times(given: WorkInput, amounts: Mapping[Task, Amount]) -> dict[Task, float]:
    """Return the time of every operation that has a rate [s]."""
    times: dict[Task, float] = {}
    for position, rate in enumerate(given.rates):
        amount = amounts[rate.operation]
        if rate.operation in times:
            raise refuse("rates", position, "operation", reason="has a rate already", value=rate.operation)
        if rate.done.kind != amount.kind:
            spoken = "pieces" if amount.kind is None else f"a {amount.kind.value}"
            raise refuse("rates", position, "done", reason=f"this operation is measured in {spoken}", value=rate.done.value)
        if rate.done.value <= 0.0:
            reason = "outside the allowed range; the minimum itself is not allowed"
            raise refuse("rates", position, "done", "value", reason=reason, value=rate.done.value, minimum=0.0)
        times[rate.operation] = amount.value * rate.time / (rate.done.value * rate.crews)
    return times


def evaluate(given: WorkInput) -> WorkResult:
    """Count the operations of a rail gang and, where rates are given, find which of them sets the pace.

    Raises:
        RefusedError: the stretch, a pattern or a zone contradicts itself; an operation has two rates, or one of the wrong kind;
            an occupancy leaves no time to work.
    """
    lost = given.occupancy_lost or 0.0
    if given.occupancy is not None and lost >= given.occupancy:
        raise refuse("occupancy_lost", reason="leaves no time to work", value=lost, maximum=given.occupancy)
    amounts = counts(given)
    times = _times(given, amounts)
    ties, length = amounts["level-cribs"].value, worked_length(given.stretch)

    def occupancies(time: float | None) -> float | None:
        return None if time is None or given.occupancy is None else round_up(time / (given.occupancy - lost))

    def days(time: float | None) -> float | None:
        return None if time is None else time / given.working_day

    operations = tuple(
        Operation(
            operation=task,
            title=TITLES[task],
            amount=amount,
            per_tie=Amount(amount.value / ties if ties else 0.0, amount.kind),
            per_mile=Amount(amount.value * METRES_PER_MILE / length if length else 0.0, amount.kind),
            time=times.get(task),
            days=days(times.get(task)),
            occupancies=occupancies(times.get(task)),
        )
        for task, amount in amounts.items()
    )
    governing = max(times, key=lambda task: times[task], default=None)
    longest = None if governing is None else times[governing]
    return WorkResult(
        ties=int(ties),
        operations=operations,
        governing=governing,
        time=longest,
        days=days(longest),
        occupancies=occupancies(longest),
        without_rate=tuple(task for task, amount in amounts.items() if amount.value and task not in times),
    )


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
            "ties, seats, spikes and anchors by the rules that count them; time = amount * time / (done * crews)",
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
