from __future__ import annotations

from typing import Any

import pytest

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.rules.quantities import anchors, preservative, spikes, tie_plates, tie_plugs
from railrules_api.rules.quantities import work as rule
from railrules_api.rules.quantities.work import WorkInput, WorkResult
from railrules_api.rules.quantities.work_plan import TITLES, ProductionRate, Task
from tests.rules.stretches import FOOT, MILE, boxed, per_rail, refused_at, stretch
from tests.rules.stretches import spikes as pattern

HOUR = 3600.0


def work(**rest: Any) -> WorkResult:
    return rule.evaluate(
        WorkInput(
            **{
                "stretch": stretch(),
                "tie_kind": "wood",
                "renewed_share": 0.2,
                "old_spikes_per_plate": 2.0,
                "plated_share": 1.0,
                "broken_share": 0.05,
                "old_anchors": per_rail(8, 0, 33 * FOOT),
                "old_rail_length": 33 * FOOT,
                "pattern": pattern(2, 2),
                "bored_share": 1.0,
                "anchors": boxed(2),
                "working_day": 8 * HOUR,
                **rest,
            }
        )
    )


def rate(operation: Task, done: float, crews: int = 1, kind: Kind | None = None) -> ProductionRate:
    return ProductionRate(operation=operation, done=Amount(done, kind), time=HOUR, crews=crews)


def test_operations_equal_the_rules_that_count_them() -> None:
    amounts = {operation.operation: operation.amount.value for operation in work().operations}
    where = stretch()
    plugs = tie_plugs.evaluate(
        tie_plugs.TiePlugsInput(
            stretch=where, tie_kind="wood", renewed_share=0.2, old_spikes_per_plate=2.0, filling="plugs", hole_shape="square",
            hole_side=0.01, hole_depth=0.1, compound_waste=0.0,
        )
    )  # fmt: skip
    seats = preservative.evaluate(
        preservative.PreservativeInput(
            stretch=where,
            tie_kind="wood",
            renewed_share=0.2,
            plate_length=0.3,
            plate_width=0.2,
            adze_margin=0.0,
            coats=1,
            coverage=1.0,
        )
    )
    driven = spikes.evaluate(spikes.SpikesInput(stretch=where, tie_kind="wood", pattern=pattern(2, 2), sharp_curve_radius=1.0))
    held = anchors.evaluate(anchors.AnchorsInput(stretch=where, pattern=boxed(2), reapplied_share=0.0))
    plates = tie_plates.evaluate(tie_plates.TiePlatesInput(stretch=where, tie_kind="wood", plated_share=1.0, recovered_share=1.0))
    assert amounts["plug-holes"] == plugs.plugs
    assert amounts["adze-seats"] == amounts["treat-seats"] == seats.seats
    assert amounts["drive-spikes"] == driven.spikes
    assert amounts["apply-anchors"] == held.anchors
    assert amounts["set-plates"] == amounts["remove-plates"] == plates.plates
    assert amounts["pull-spikes"] == 13_000
    assert amounts["unbolt-joints"] == pytest.approx(320)
    assert amounts["drive-stubs"] == pytest.approx(0.05 * plugs.plugs)
    assert amounts["bore-holes"] == pytest.approx(0.8 * driven.spikes)
    assert amounts["set-rail"] == pytest.approx(2 * MILE)
    assert amounts["remove-anchors"] == 2 * 8 * 160


def test_trade_order_starts_with_anchors_off_and_ends_with_anchors_on() -> None:
    tasks = [operation.operation for operation in work().operations]
    wanted: list[Task] = [
        "remove-anchors",
        "pull-spikes",
        "remove-plates",
        "plug-holes",
        "adze-seats",
        "set-plates",
        "apply-anchors",
    ]
    assert [task for task in tasks if task in wanted] == wanted
    assert tasks == list(TITLES)


def test_averages_per_tie_and_per_mile() -> None:
    result = work(stretch=stretch(end=MILE / 2))
    pull = next(operation for operation in result.operations if operation.operation == "pull-spikes")
    assert pull.per_tie.value == 4.0
    assert pull.per_mile.value == pytest.approx(2 * pull.amount.value)


def test_slowest_operation_sets_the_pace() -> None:
    rates = (
        rate("pull-spikes", 1300.0, crews=2),
        rate("drive-spikes", 1000.0, crews=2),
        rate("set-rail", 500 * FOOT, kind=Kind.LENGTH),
    )
    result = work(rates=rates, occupancy=6 * HOUR, occupancy_lost=1 * HOUR)
    times = {operation.operation: operation.time for operation in result.operations if operation.time is not None}
    assert times["pull-spikes"] == pytest.approx(5 * HOUR)
    assert times["drive-spikes"] == pytest.approx(13 * HOUR)
    assert times["set-rail"] == pytest.approx(2 * 5280 / 500 * HOUR)
    assert result.governing == "set-rail"
    assert result.days == pytest.approx(21.12 / 8)
    assert result.occupancies == 5
    assert "plug-holes" in result.without_rate


def test_no_rate_no_time() -> None:
    result = work()
    assert (result.governing, result.time, result.days, result.occupancies) == (None, None, None, None)


def test_concrete_ties_leave_rail_anchors_and_cribs() -> None:
    amounts = {
        operation.operation: operation.amount.value for operation in work(tie_kind="concrete", elastic_fasteners=True).operations
    }
    assert {task for task, amount in amounts.items() if amount} == {
        "remove-anchors", "unbolt-joints", "roll-out-rail", "set-rail", "level-cribs",
    }  # fmt: skip


def test_refusals_name_their_field() -> None:
    twice = (rate("set-plates", 1.0), rate("set-plates", 1.0))
    assert refused_at(lambda: work(rates=twice)) == ("rates", 1, "operation")
    assert refused_at(lambda: work(rates=(rate("set-rail", 1.0),))) == ("rates", 0, "done")
    assert refused_at(lambda: work(rates=(rate("set-plates", 0.0),))) == ("rates", 0, "done", "value")
    assert refused_at(lambda: work(occupancy=HOUR, occupancy_lost=HOUR)) == ("occupancy_lost",)
    assert refused_at(lambda: work(anchors=per_rail(30, 0)))[0] == "anchors"
