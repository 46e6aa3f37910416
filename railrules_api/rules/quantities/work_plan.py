"""Work plan: how long each operation of a rail gang takes, and which of them sets the pace."""

from __future__ import annotations

from dataclasses import dataclass
from math import fsum
from typing import TYPE_CHECKING, Annotated, Final, Literal

from railrules_api.domain.amounts import Amount
from railrules_api.domain.counting import round_up
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.given import METRES_PER_MILE

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
ON_RAIL: Final[frozenset[Task]] = frozenset({"roll-out-rail", "set-rail"})
"""Operations measured in length of rail; all others go by the piece."""


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class ProductionRate:
    """What one crew or machine does of one operation in a time."""

    operation: Annotated[Task, Field("The operation.")]
    done: Annotated[Amount, Field("What is done: pieces, or a length of rail for operations on rail.")]
    time: Annotated[float, Field("Time it takes.", kind=Kind.DURATION, above=0.0, at_most=1e7)]
    crews: Annotated[int, Field("Crews or machines at work on it side by side.", at_least=1, at_most=100)]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Production:
    """The user's own production: rates by operation, the working day, track occupancies."""

    rates: Annotated[tuple[ProductionRate, ...], Field("Production rates, at most one an operation.", most_items=15)] = ()
    working_day: Annotated[
        float, Field("Time worked in a day.", kind=Kind.DURATION, above=0.0, at_most=86_400.0, default="working-day")
    ]
    occupancy: Annotated[float | None, Field("Length of one track occupancy.", kind=Kind.DURATION, above=0.0, at_most=1e6)] = None
    occupancy_lost: Annotated[
        float | None,
        Field("Of it, lost to setting up and clearing; left out: nothing.", kind=Kind.DURATION, at_least=0.0, at_most=1e6),
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class OperationAmount:
    """How much there is of one operation."""

    operation: Annotated[Task, Field("The operation.")]
    amount: Annotated[Amount, Field("How much of it: pieces, or a length of rail for operations on rail.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class WorkPlanInput(Production):
    """Amounts of operations on some track, and the user's own production."""

    ties: Annotated[int, Field("Ties that stand in it.", symbol="n", at_least=0, at_most=1_000_000_000)]
    length: Annotated[float, Field("Length of track worked on.", kind=Kind.LENGTH, symbol="L", at_least=0.0, at_most=1e8)]
    amounts: Annotated[
        tuple[OperationAmount, ...], Field("Operations and how much there is of each; each at most once.", most_items=15)
    ]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Operation:
    """One operation of the gang."""

    operation: Annotated[Task, Field("The operation.")]
    title: Annotated[str, Field("What is done.")]
    amount: Annotated[Amount, Field("How much of it, unrounded.")]
    per_tie: Annotated[Amount, Field("Average for each tie that stands in the track.")]
    per_mile: Annotated[Amount, Field("Average for each mile of the track.")]
    crews: Annotated[int | None, Field("Crews or machines at work on it side by side.")] = None
    crew_time: Annotated[float | None, Field("Time of all its crews together, at the given rate.", kind=Kind.DURATION)] = None
    time: Annotated[float | None, Field("Time it takes, its crews side by side.", kind=Kind.DURATION)] = None
    days: Annotated[float | None, Field("Working days, unrounded.")] = None
    occupancies: Annotated[float | None, Field("Track occupancies, rounded up.")] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class WorkPlanResult:
    """Operations in trade order, and which of them sets the pace."""

    ties: Annotated[int, Field("Ties that stand in the track.")]
    operations: Annotated[tuple[Operation, ...], Field("Operations in trade order.")]
    crew_time: Annotated[float | None, Field("Time of all crews of operations with a rate together.", kind=Kind.DURATION)] = None
    governing: Annotated[str | None, Field("Operation that takes longest and sets the gang's pace, of those with a rate.")] = None
    time: Annotated[float | None, Field("Time of the gang at that pace.", kind=Kind.DURATION)] = None
    days: Annotated[float | None, Field("Working days at that pace, unrounded.")] = None
    occupancies: Annotated[float | None, Field("Track occupancies at that pace, rounded up.")] = None
    without_rate: Annotated[tuple[str, ...], Field("Operations that have work and no rate: any of them may be slower.")]


def rates_of(given: Production, amounts: Mapping[Task, Amount]) -> dict[Task, ProductionRate]:
    """Return the rate of every operation that has one.

    Raises:
        RefusedError: an operation has two, or one of the wrong kind, or one and no amount.
    """
    rates: dict[Task, ProductionRate] = {}
    for position, rate in enumerate(given.rates):
        amount = amounts.get(rate.operation)
        if rate.operation in rates:
            raise refuse("rates", position, "operation", reason="has a rate already", value=rate.operation)
        if amount is None:
            raise refuse("rates", position, "operation", reason="no amount of it is given", value=rate.operation)
        _refuse_other_kind(rate.operation, rate.done, "rates", position, "done")
        if rate.done.value <= 0.0:
            reason = "outside the allowed range; the minimum itself is not allowed"
            raise refuse("rates", position, "done", "value", reason=reason, value=rate.done.value, minimum=0.0)
        rates[rate.operation] = rate
    return rates


def _refuse_other_kind(task: Task, amount: Amount, *path: str | int) -> None:
    kind = Kind.LENGTH if task in ON_RAIL else None
    if amount.kind != kind:
        spoken = "pieces" if kind is None else f"a {kind.value}"
        raise refuse(*path, reason=f"this operation is measured in {spoken}", value=amount.value)


def _amounts(given: WorkPlanInput) -> dict[Task, Amount]:
    found: dict[Task, Amount] = {}
    for position, entry in enumerate(given.amounts):
        if entry.operation in found:
            raise refuse("amounts", position, "operation", reason="stands here twice", value=entry.operation)
        _refuse_other_kind(entry.operation, entry.amount, "amounts", position, "amount")
        found[entry.operation] = entry.amount
    return {task: found[task] for task in TITLES if task in found}


def evaluate(given: WorkPlanInput) -> WorkPlanResult:
    """Time operations at the given rates and find which of them sets the pace.

    Raises:
        RefusedError: an operation stands twice, has two rates, or an amount or rate of the wrong kind; an occupancy leaves no
            time to work.
    """
    lost = given.occupancy_lost or 0.0
    if given.occupancy is not None and lost >= given.occupancy:
        raise refuse("occupancy_lost", reason="leaves no time to work", value=lost, maximum=given.occupancy)
    amounts = _amounts(given)
    rates = rates_of(given, amounts)
    crew_times = {task: amounts[task].value * rate.time / rate.done.value for task, rate in rates.items()}
    times = {task: crew_times[task] / rate.crews for task, rate in rates.items()}

    def occupancies(time: float | None) -> float | None:
        return None if time is None or given.occupancy is None else round_up(time / (given.occupancy - lost))

    def days(time: float | None) -> float | None:
        return None if time is None else time / given.working_day

    operations = tuple(
        Operation(
            operation=task,
            title=TITLES[task],
            amount=amount,
            per_tie=Amount(amount.value / given.ties if given.ties else 0.0, amount.kind),
            per_mile=Amount(amount.value * METRES_PER_MILE / given.length if given.length else 0.0, amount.kind),
            crews=rates[task].crews if task in rates else None,
            crew_time=crew_times.get(task),
            time=times.get(task),
            days=days(times.get(task)),
            occupancies=occupancies(times.get(task)),
        )
        for task, amount in amounts.items()
    )
    # of two that take equally long the earlier in trade order is named
    governing = max((task for task in amounts if task in times), key=lambda task: times[task], default=None)
    longest = None if governing is None else times[governing]
    return WorkPlanResult(
        ties=given.ties,
        operations=operations,
        crew_time=fsum(crew_times.values()) if crew_times else None,
        governing=governing,
        time=longest,
        days=days(longest),
        occupancies=occupancies(longest),
        without_rate=tuple(task for task, amount in amounts.items() if amount.value and task not in times),
    )


RULE = Rule(
    id="quantities.work-plan",
    title="Work plan of a rail gang",
    summary=(
        "Given how much there is of each operation and the user's own production rates: crew time, time, days and track "
        "occupancies of each in trade order, and the operation that sets the pace, since all work one behind the other. No rate "
        "is given by default: none was found published."
    ),
    formulas=(
        Formula("operations", "crew time = amount * time / done; time = crew time / crews", exact=False),
        Formula("time", "the longest time of an operation", exact=False),
        Formula("days", "time / working day", exact=False),
        Formula("occupancies", "ceil(time / (occupancy - lost time))", exact=False),
    ),
    cites=(
        Cite("tr0671", "1.15: order of work of an out-of-face rail gang", "published"),
        Cite("common-practice", "a gang in line moves at the pace of its slowest operation", "common-practice"),
    ),
    input=WorkPlanInput,
    output=WorkPlanResult,
    evaluate=evaluate,
)
