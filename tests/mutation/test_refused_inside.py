"""What mutation testing found untested where a rule is asked directly: refusals with value and range, edges, masses of lines."""

from __future__ import annotations

import json
import math
from dataclasses import replace
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.api.replying import bind
from railrules_api.api.resources import calculation_of
from railrules_api.domain import bending
from railrules_api.domain.anchoring import check_pattern
from railrules_api.domain.counting import RELATIVE_SLACK, round_down
from railrules_api.domain.errors import Refusal, RefusedError
from railrules_api.domain.patterns import AnchorPattern, AnchorsPerRailLength
from railrules_api.rules import words
from railrules_api.rules.quantities import plate_pins, rail_supply
from railrules_api.rules.takeoff import takeoff
from railrules_api.rules.takeoff.job import ItemMass
from railrules_api.rules.takeoff.masses import _of_one
from railrules_api.rules.thermal.laying_adjustment import TableWanted, _table
from railrules_api.rules.thermal.temperature_range import _rule
from tests.hostile.extremes import examples

if TYPE_CHECKING:
    from collections.abc import Callable

    from railrules_api.api.service import Service


def refusal_of(function: Callable[..., Any], *arguments: Any, **named: Any) -> Refusal:
    with pytest.raises(RefusedError) as caught:
        function(*arguments, **named)
    [refusal] = caught.value.refusals
    return refusal


def given(service: Service, of: str, **changed: Any) -> Any:
    """Return the input of a rule's first good request, with fields changed."""
    body = next(body for name, body in examples() if name == of)
    return replace(bind(calculation_of(of), json.dumps(body).encode(), service).given, **changed)


# ---------------------------------------------------------------- refusals


@pytest.mark.parametrize("value", [0.0, -1.0, math.inf, math.nan])
def test_a_seat_load_needs_pressure_and_spacing(value: float) -> None:
    for name in ("pressure", "tie_spacing"):
        refusal = refusal_of(bending.rail_seat_load, **{"pressure": 1.0, "tie_spacing": 1.0, name: value})
        assert (refusal.path, refusal.reason, refusal.minimum) == ((name,), "must be a finite number above zero", 0.0)
        assert refusal.value == pytest.approx(value, nan_ok=True)


def test_a_moment_is_a_number() -> None:
    refusal = refusal_of(bending.bending_stress, moment=math.inf, section_modulus=1.0)
    assert refusal == Refusal(("moment",), "must be a finite number", math.inf)


def test_a_wheel_has_a_load() -> None:
    wheels = (bending.Wheel(place=0.0, load=1.0), bending.Wheel(place=1.0, load=0.0))
    refusal = refusal_of(bending._require_wheels, wheels)  # noqa: SLF001
    assert refusal == Refusal(("wheels", 1, "load"), "must be a finite number above zero", 0.0, minimum=0.0)


def test_a_rail_length_has_no_more_anchors_one_way_than_ties() -> None:
    pattern = AnchorPattern(per_rail=AnchorsPerRailLength(rail_length=10.0, forward=20, back_up=21))
    refusal = refusal_of(check_pattern, pattern, 0.5)
    assert refusal.path == ("per_rail", "back_up")
    assert (refusal.reason, refusal.value, refusal.maximum) == ("more anchors one way than the rail length has ties", 21, 20)


def test_a_table_runs_upwards(service: Service) -> None:
    wanted = TableWanted(coldest=300.0, hottest=290.0, step=1.0, lengths=())
    refusal = refusal_of(_table, given(service, "thermal.laying-adjustment"), wanted)
    assert refusal == Refusal(("table", "hottest"), "hottest below coldest", 290.0, minimum=300.0)


def test_a_house_range_has_its_offsets_in_order(service: Service) -> None:
    house = given(service, "thermal.temperature-range", rule="house", house_weight=0.5, house_lower=2.0, house_upper=1.0)
    assert refusal_of(_rule, house) == Refusal(("house_upper",), "upper offset below the lower", 1.0, minimum=2.0)


# ---------------------------------------------------------------- edges and numbers


def test_less_than_a_billionth_under_a_whole_number_is_the_whole_number() -> None:
    assert round_down(1.0 - 1.5 * RELATIVE_SLACK) == 0.0
    assert round_down(1.0 - 0.5 * RELATIVE_SLACK) == 1.0
    assert round_down(10.0 - 5 * RELATIVE_SLACK) == 10.0


def test_figures_change_their_form_at_a_hundred_and_at_a_thousand() -> None:
    assert [words.figure(value) for value in (99.994, 100.0, 999.94, 1000.0, 1.0, 0.0)] == [
        "99.99", "100.0", "999.9", "1,000", "1.00", "0.00",
    ]  # fmt: skip


# ---------------------------------------------------------------- masses of lines


def test_the_line_of_the_pins_has_their_mass(service: Service) -> None:
    found = plate_pins.evaluate(given(service, "quantities.plate-pins", pin_mass=0.5))
    assert found.pins
    [line] = found.lines
    assert line.mass == found.mass == found.pins * 0.5


def test_rail_bought_weighs_what_its_length_weighs(service: Service) -> None:
    supply = given(service, "quantities.rail-supply")
    rails = {line.item: line for line in rail_supply.evaluate(supply).lines if line.mass is not None}
    assert "new-rail" in rails
    for line in rails.values():
        # rail is a little longer along itself than along the stretch
        assert line.mass == pytest.approx(line.net.value * supply.mass_per_length, rel=0.01)


def test_a_piece_or_a_cubic_metre_has_a_mass() -> None:
    assert _of_one(ItemMass(item="a", mass_each=2.0), []) == 2.0
    assert _of_one(ItemMass(item="a", density=3.0), []) == 3.0
    for sent in (ItemMass(item="a"), ItemMass(item="a", mass_each=2.0, density=3.0)):
        refusal = refusal_of(_of_one, sent, [])
        assert refusal == Refusal(("mass_each",), "give one of mass_each and density", sent.mass_each)


# ---------------------------------------------------------------- what a segment says reaches a rule


def test_what_a_segment_says_of_its_new_track_is_asked_with(service: Service) -> None:
    job = given(service, "takeoffs")
    done = takeoff.take_off(job, service.terms(service.house))
    asked = [working.given for working in done.workings]
    reached: dict[str, list[Any]] = {}
    for question in asked:
        for name in question.__dataclass_fields__:
            reached.setdefault(name, []).append(getattr(question, name))
    told = 0
    for segment in job.segments:
        for name in segment.new.__dataclass_fields__:
            value = getattr(segment.new, name)
            if value is not None and name in reached:
                assert value in reached[name], name
                told += 1
    assert told > 20
