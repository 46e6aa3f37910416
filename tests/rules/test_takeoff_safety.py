"""What the takeoff asks of the thermal rules: the harsher of hot and cold, and what follows from it."""

from __future__ import annotations

import json
from typing import Any

import pytest

from railrules_api.api.replying import bind
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service
from railrules_api.rules.takeoff import takeoff
from railrules_api.rules.takeoff.result import TakeoffResult
from tests.support.demo import demo_job


def done(service: Service, **temperatures: float) -> TakeoffResult:
    body: dict[str, Any] = demo_job()
    body["temperatures"] |= {name: {"value": value, "unit": "degF"} for name, value in temperatures.items()}
    given = bind(calculation_of("takeoffs"), json.dumps(body).encode(), service).given
    return takeoff.take_off(given, service.terms(service.house)).result


def test_approaches_must_hold_the_greater_of_the_hot_and_the_cold_force(service: Service) -> None:
    """The neutral temperature drifts down by 30 degF: 140 - (105 - 30) = 65 against 105 - 60 = 45, and 105 + 20 the other way."""
    hot = done(service, hottest_rail=140.0, coldest_rail=60.0, target=105.0)
    cold = done(service, hottest_rail=110.0, coldest_rail=-20.0, target=105.0)
    for found, change in ((hot, 65.0), (cold, -125.0)):
        (plan,) = found.safety
        assert plan.restraint is not None
        assert plan.restraint.temperature_change == pytest.approx(change / 1.8, abs=1e-9)
        assert abs(plan.restraint.force) == pytest.approx(max(abs(plan.hot.force), abs(plan.cold.force)), rel=1e-12)


def test_195_ft_of_anchors_are_short_on_a_cold_night_and_the_answer_says_by_how_much(service: Service) -> None:
    (plan,) = done(service, hottest_rail=110.0, coldest_rail=-20.0, target=105.0).safety
    assert plan.restraint is not None
    turnout = next(zone for zone in plan.restraint.zones if zone.name == "turnout")
    check = next(check for check in plan.restraint.checks if check.title.endswith("turnout"))
    assert check.verdict == "fails"
    # 195 ft x 12 x 30 lb/in
    assert turnout.held == pytest.approx(70_200 * 4.4482216152605, rel=1e-9)
    assert turnout.short == pytest.approx(abs(plan.restraint.force) - turnout.held, rel=1e-12)
    assert turnout.length_needed * turnout.resistance == pytest.approx(abs(plan.restraint.force), rel=1e-12)
