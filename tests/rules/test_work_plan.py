from __future__ import annotations

from typing import Any

import pytest

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.rules.quantities import work_plan as rule
from railrules_api.rules.quantities.work_plan import OperationAmount, ProductionRate, Task, WorkPlanInput, WorkPlanResult
from tests.rules.stretches import MILE, refused_at

HOUR = 3600.0


def of(operation: Task, value: float, kind: Kind | None = None) -> OperationAmount:
    return OperationAmount(operation=operation, amount=Amount(value, kind))


def rate(operation: Task, done: float, crews: int = 1, kind: Kind | None = None) -> ProductionRate:
    return ProductionRate(operation=operation, done=Amount(done, kind), time=HOUR, crews=crews)


def plan(**rest: Any) -> WorkPlanResult:
    amounts = (of("drive-spikes", 800.0), of("pull-spikes", 400.0), of("set-rail", 100.0, Kind.LENGTH))
    return rule.evaluate(WorkPlanInput(**{"ties": 100, "length": MILE, "amounts": amounts, "working_day": 8 * HOUR, **rest}))


def test_operations_come_in_trade_order_whatever_order_they_are_given_in() -> None:
    assert [operation.operation for operation in plan().operations] == ["pull-spikes", "set-rail", "drive-spikes"]


def test_crews_share_the_time_and_not_the_work() -> None:
    one, two = (plan(rates=(rate("drive-spikes", 100.0, crews),)).operations[2] for crews in (1, 2))
    assert (one.crew_time, two.crew_time) == (8 * HOUR, 8 * HOUR)
    assert (one.time, two.time) == (8 * HOUR, 4 * HOUR)
    assert (one.days, two.crews) == (1.0, 2)


def test_of_two_that_take_equally_long_the_earlier_governs() -> None:
    assert plan(rates=(rate("drive-spikes", 200.0), rate("pull-spikes", 100.0))).governing == "pull-spikes"


def test_occupancies_are_rounded_once_and_float_noise_costs_none() -> None:
    result = plan(rates=(rate("drive-spikes", 80.0),), occupancy=6 * HOUR, occupancy_lost=1 * HOUR)
    assert result.occupancies == 2.0
    assert plan(rates=(rate("drive-spikes", 79.9),), occupancy=6 * HOUR, occupancy_lost=1 * HOUR).occupancies == 3.0


def test_no_ties_and_no_length_give_averages_of_nothing() -> None:
    result = plan(ties=0, length=0.0)
    assert all(operation.per_tie.value == operation.per_mile.value == 0.0 for operation in result.operations)


@pytest.mark.parametrize(
    ("rest", "path"),
    [
        ({"amounts": (of("set-plates", 1.0), of("set-plates", 1.0))}, ("amounts", 1, "operation")),
        ({"amounts": (of("set-rail", 1.0),)}, ("amounts", 0, "amount")),
        ({"rates": (rate("set-plates", 1.0),)}, ("rates", 0, "operation")),
        ({"rates": (rate("pull-spikes", 1.0, kind=Kind.LENGTH),)}, ("rates", 0, "done")),
        ({"rates": (rate("pull-spikes", 0.0),)}, ("rates", 0, "done", "value")),
        ({"occupancy": HOUR, "occupancy_lost": HOUR}, ("occupancy_lost",)),
    ],
)
def test_refusals_name_their_field(rest: dict[str, Any], path: tuple[str | int, ...]) -> None:
    assert refused_at(lambda: plan(**rest)) == path
