from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from railrules_api.rules.quantities import loads as rule
from railrules_api.rules.quantities.loads import Goods, LoadsInput, Vehicle
from tests.rules.stretches import refused_at

TRUCK = Vehicle(name="truck", capacity=20_000.0)


# a few millionths of a gram are no load, and some of them together may be one: nobody weighs that
@given(st.lists(st.just(0.0) | st.floats(0.001, 1e7), min_size=1, max_size=8))
def test_loaded_together_never_takes_more_than_loaded_apart(masses: list[float]) -> None:
    goods = tuple(Goods(item=f"item {number}", mass=mass) for number, mass in enumerate(masses))
    result = rule.evaluate(LoadsInput(goods=goods, vehicles=(TRUCK,)))
    (mixed,) = result.mixed
    apart = [item.loads[0] for item in result.goods]
    assert mixed.loads <= sum(load.loads for load in apart)
    assert mixed.loads >= max(load.loads for load in apart)
    assert 0.0 <= mixed.loads - mixed.exact < 1.0 or abs(mixed.loads - mixed.exact) < 1e-6


def test_a_vehicle_carries_what_it_is_said_to_carry() -> None:
    car = Vehicle(name="gondola", capacity=90_000.0, items=("rail",))
    goods = (Goods(item="rail", mass=180_000.0), Goods(item="plates", mass=20_000.0), Goods(item="ties"))
    result = rule.evaluate(LoadsInput(goods=goods, vehicles=(TRUCK, car)))
    assert [[(load.vehicle, load.loads) for load in item.loads] for item in result.goods] == [
        [("truck", 9), ("gondola", 2)],
        [("truck", 1)],
        [],
    ]
    assert [(load.vehicle, load.loads) for load in result.mixed] == [("truck", 10), ("gondola", 2)]
    assert result.without_mass == ("ties",)


def test_two_vehicles_of_one_name_are_refused() -> None:
    assert refused_at(lambda: rule.evaluate(LoadsInput(goods=(), vehicles=(TRUCK, TRUCK)))) == ("vehicles", 1, "name")
