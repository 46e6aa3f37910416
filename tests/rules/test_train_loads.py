"""Train loads: capacity, cars, pairs, sequence."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from railrules_api.domain.errors import RefusedError
from railrules_api.rules.quantities.train_loads import TrainLoadsInput, TrainLoadsResult, evaluate

FT = 0.3048
LB = 0.45359237
VALUES: dict[str, Any] = {
    "strings": 53,
    "string_length": 1600 * FT,
    "mass_per_length": 115 * LB / 0.9144,
    "rack_strings": 40,
    "car_spacing": 60 * FT,
    "extra_cars": 3,
    "unloaded_at_once": 2,
    "expansion": 6.5e-6 * 1.8,
}


def loads(**changes: Any) -> TrainLoadsResult:
    return evaluate(TrainLoadsInput(**(VALUES | changes)))


def test_the_racks_govern() -> None:
    found = loads()
    assert (found.governing, found.strings_per_train, found.trains, found.partial_trains) == ("rack", 40, 2, 1)
    assert (found.rail_cars, found.cars_per_train) == (27, 30)
    assert found.string_mass / LB == pytest.approx(115 * 1600 / 3)
    assert [(one.first_string, one.last_string, one.unloadings) for one in found.loads] == [(1, 40, 20), (41, 53, 7)]
    assert found.end_movement is None
    assert [(line.item, line.net.value) for line in found.lines] == [("rail-trains", 2), ("string-cars", 60)]


def test_mass_governs_and_pairs_stay_together() -> None:
    # a string weighs 61,333 lb: 1,000 short tons hold 32.6, so 32; 35,000 lb a car on 27 cars hold 15.4, so 14
    found = loads(train_mass_limit=2_000_000 * LB)
    assert (found.governing, found.strings_by_train_mass, found.strings_per_train, found.trains) == ("train-mass", 32, 32, 2)
    found = loads(train_mass_limit=2_000_000 * LB, car_mass_limit=35_000 * LB)
    assert (found.governing, found.strings_by_car_mass, found.strings_per_train, found.trains) == ("car-mass", 15, 14, 4)
    assert loads(car_mass_limit=35_000 * LB, unloaded_at_once=1).strings_per_train == 15


def test_a_limit_of_whole_strings_holds_them_all() -> None:
    each = 115 * LB / 0.9144 * 1600 * FT
    for count in range(1, 400):
        assert loads(rack_strings=1000, unloaded_at_once=1, train_mass_limit=count * each).strings_per_train == count


def test_strings_over_whole_cars() -> None:
    assert loads(string_length=1440 * FT).rail_cars == 24
    assert loads(string_length=1440.1 * FT).rail_cars == 25


def test_ends_move_from_the_middle() -> None:
    found = loads(temperature_change=-40.0)
    assert found.anchored_at == pytest.approx(800 * FT)
    assert found.end_movement == pytest.approx(-40 * 6.5e-6 * 1.8 * 800 * FT)


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"rack_strings": 1}, "rack_strings"),
        ({"train_mass_limit": 1000.0}, "train_mass_limit"),
        ({"car_mass_limit": 1.0}, "car_mass_limit"),
        ({"strings": 100_000, "rack_strings": 2}, "strings"),
    ],
)
def test_a_train_that_takes_too_little_is_refused(changes: dict[str, Any], field: str) -> None:
    with pytest.raises(RefusedError) as refused:
        loads(**changes)
    assert refused.value.refusals[0].path == (field,)


@given(strings=st.integers(1, 5000), rack=st.integers(2, 60), at_once=st.integers(1, 2))
def test_every_string_comes_once_and_in_order(strings: int, rack: int, at_once: int) -> None:
    if strings > 1000 * (rack - rack % at_once):
        return
    found = loads(strings=strings, rack_strings=rack, unloaded_at_once=at_once)
    brought = [number for one in found.loads for number in range(one.first_string, one.last_string + 1)]
    assert brought == list(range(1, strings + 1))
    assert len(found.loads) == found.trains
    assert all(one.strings <= rack for one in found.loads)
    assert sum(one.mass for one in found.loads) == pytest.approx(found.mass)
    assert all(one.first_string % at_once == 1 % at_once for one in found.loads)
