"""The buckling rule on top of the stability functions: what it passes on, refuses, and will not say."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Literal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.domain import stability
from railrules_api.domain.errors import RefusedError
from railrules_api.rules.thermal import buckling
from railrules_api.rules.thermal.buckling_fields import BucklingInput

BASE = BucklingInput(
    area=0.008613,
    elastic_modulus=2.068e11,
    expansion=1.17e-5,
    second_moment_lateral=6.035e-6,
    rail_temperature=330.0,
    neutral_temperature=308.0,
    lateral_resistance=10_500.0,
    resistance=5250.0,
    shape="one-lobe",
    held="outside",
    margin_rule="lower-rise",
    margin=11.0,
)
CROOKED: dict[str, Any] = {"stiffness": 6.9e5, "defect_amplitude": 0.0381, "defect_half_length": 4.572}


@settings(deadline=None, max_examples=25)
@given(lateral=st.floats(1e3, 5e4), factor=st.floats(1.0, 3.0))
def test_more_resistance_never_lowers_the_allowed_rise(lateral: float, factor: float) -> None:
    weak = buckling.evaluate(replace(BASE, lateral_resistance=lateral))
    strong = buckling.evaluate(replace(BASE, lateral_resistance=lateral * factor))
    firm = buckling.evaluate(replace(BASE, lateral_resistance=lateral, resistance=BASE.resistance * factor))
    assert weak.lowest_rise is not None
    assert strong.lowest_rise is not None
    assert firm.lowest_rise is not None
    assert strong.lowest_rise >= weak.lowest_rise * (1 - 1e-9)
    assert firm.lowest_rise >= weak.lowest_rise * (1 - 1e-9)


def test_with_a_defect_the_path_is_data_and_energy_lies_between() -> None:
    result = buckling.evaluate(replace(BASE, **CROOKED))
    assert result.path_kind == "snap-through"
    assert result.lower_rise is not None
    assert result.upper_rise is not None
    assert result.lower_rise < result.upper_rise
    assert result.buckling_energy is None
    deflections = [point.deflection for point in result.path]
    assert deflections == sorted(deflections)
    middle = BASE.neutral_temperature + (result.lower_rise + result.upper_rise) / 2
    between = buckling.evaluate(replace(BASE, **CROOKED, rail_temperature=middle))
    assert between.buckling_energy is not None
    assert between.buckling_energy > 0.0
    assert between.checks[0].verdict == "fails"
    assert result.allowed_rise == pytest.approx(result.lower_rise - 11.0)


def test_the_difference_rule() -> None:
    result = buckling.evaluate(replace(BASE, **CROOKED, margin_rule="difference"))
    assert result.lower_rise is not None
    assert result.allowed_rise == pytest.approx(result.lower_rise)
    assert result.allowed_by.startswith("medium")


WITNESSED: dict[str, Any] = {**CROOKED, "shape": "three-lobes", "held": "throughout"}


@pytest.mark.parametrize("changed", [{**CROOKED, "radius": 400.0}, {**WITNESSED, "radius": 300.0}, {"radius": 400.0}])
def test_curves_beyond_the_witness_are_not_guessed(changed: dict[str, Any]) -> None:
    result = buckling.evaluate(replace(BASE, **changed))
    assert result.available == "not-available-for-curves"
    assert result.lowest_rise is None
    assert result.checks[0].verdict == "not-checked"


def test_sharper_curves_buckle_earlier_and_flat_ones_like_straight_track() -> None:
    straight = buckling.evaluate(replace(BASE, **WITNESSED))
    rises: list[float] = []
    for radius in (350.0, 600.0, 1750.0, 1e6):
        curved = buckling.evaluate(replace(BASE, **WITNESSED, radius=radius))
        assert curved.available == "yes"
        assert curved.lowest_rise is None
        assert curved.modes == ()
        assert curved.lower_rise is not None
        rises.append(curved.lower_rise)
    assert rises == sorted(rises)
    assert straight.lower_rise is not None
    assert rises[-1] == pytest.approx(straight.lower_rise, rel=1e-3)
    assert straight.lowest_rise is not None


def test_a_margin_that_eats_everything_fails_hot_track_only() -> None:
    hot = buckling.evaluate(replace(BASE, margin=60.0))
    cold = buckling.evaluate(replace(BASE, margin=60.0, rail_temperature=300.0))
    assert hot.allowed_rise is None
    assert [hot.checks[0].verdict, cold.checks[0].verdict] == ["fails", "passes"]


def test_upwards_needs_weight_and_second_moment() -> None:
    lifted = buckling.evaluate(replace(BASE, track_weight=4000.0, second_moment=3.95e-5))
    assert lifted.vertical_rise is not None
    heavier = buckling.evaluate(replace(BASE, track_weight=6000.0, second_moment=3.95e-5))
    assert heavier.vertical_rise is not None
    assert heavier.vertical_rise > lifted.vertical_rise
    assert buckling.evaluate(BASE).vertical_rise is None


@pytest.mark.parametrize(
    ("changed", "path"),
    [
        ({"defect_amplitude": 0.03}, ("defect_half_length",)),
        ({"defect_half_length": 4.0}, ("defect_amplitude",)),
        ({"defect_amplitude": 0.03, "defect_half_length": 4.0}, ("stiffness",)),
        ({"margin_rule": "difference"}, ("margin_rule",)),
        ({"track_weight": 4000.0}, ("second_moment",)),
        ({**CROOKED, "defect_amplitude": 1e-9}, ("defect_amplitude",)),
    ],
)
def test_refusals(changed: dict[str, Any], path: tuple[str, ...]) -> None:
    with pytest.raises(RefusedError) as caught:
        buckling.evaluate(replace(BASE, **changed))
    assert caught.value.refusals[0].path == path


BIG: dict[str, Any] = {**CROOKED, "defect_amplitude": 4.0 * 0.0254, "defect_half_length": 150 * 0.0254}
"""So crooked over so short a length that the track moves with every degree, as `domain/test_stability_defect` has it."""


@pytest.mark.parametrize("rule", ["lower-rise", "difference"])
def test_no_margin_rule_allows_a_rise_to_track_that_moves_with_every_degree(rule: Literal["lower-rise", "difference"]) -> None:
    result = buckling.evaluate(replace(BASE, **BIG, margin_rule=rule))
    assert result.path_kind == "progressive"
    assert result.lower_rise is None
    assert result.allowed_rise is None
    assert result.allowed_by.startswith("progressive")
    assert result.checks[0].verdict == "fails"


def test_without_an_upper_rise_the_difference_rule_says_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    whole = stability.defect_path

    def beyond(**asked: Any) -> stability.BucklingPath:
        return replace(whole(**asked), kind=stability.PathKind.UPPER_BEYOND_PATH, upper=None)

    monkeypatch.setattr(stability, "defect_path", beyond)
    result = buckling.evaluate(replace(BASE, **CROOKED, margin_rule="difference"))
    assert result.path_kind == "upper-beyond-path"
    assert result.lower_rise is not None
    assert result.allowed_rise is None
    assert "difference rule says nothing" in result.allowed_by
    # the other rule needs the lower rise alone
    assert buckling.evaluate(replace(BASE, **CROOKED)).allowed_rise == pytest.approx(result.lower_rise - BASE.margin)


def test_a_solver_that_fails_is_a_refusal_of_the_defect(monkeypatch: pytest.MonkeyPatch) -> None:
    def fails(**_: object) -> stability.BucklingPath:
        raise ZeroDivisionError

    monkeypatch.setattr(stability, "defect_path", fails)
    with pytest.raises(RefusedError) as caught:
        buckling.evaluate(replace(BASE, **CROOKED))
    assert caught.value.refusals[0].path == ("defect_amplitude",)
    assert "no path of equilibria" in caught.value.refusals[0].reason
