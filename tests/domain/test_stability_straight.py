"""Straight track: constants of the modes, lowest rise, limits, uplift."""

from __future__ import annotations

import math
from typing import TypedDict

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from railrules_api.domain.errors import RefusedError
from railrules_api.domain.stability import (
    MODES,
    BuckledState,
    buckled_state,
    lowest_rise,
    lowest_vertical_rise,
    mode_constants,
    modes,
)
from railrules_api.domain.stability.modes import half_shape

INCH = 0.0254
PSI = 6894.757293168
POUND_PER_INCH = 4.4482216152605 / INCH
FAHRENHEIT = 1.8  # degrees F in a kelvin of difference


class Track(TypedDict):
    elastic_modulus: float
    second_moment: float
    area: float
    expansion_coefficient: float
    lateral_resistance: float
    longitudinal_resistance: float


def track(*, lateral: float = 60.0, longitudinal: float = 40.0) -> Track:
    """A 136 lb section in the units of the note: resistances in lb/in of track."""
    return Track(
        elastic_modulus=30e6 * PSI,
        second_moment=14.5 * INCH**4,
        area=13.35 * INCH**2,
        expansion_coefficient=6.5e-6 * FAHRENHEIT,
        lateral_resistance=lateral * POUND_PER_INCH,
        longitudinal_resistance=longitudinal * POUND_PER_INCH,
    )


def test_the_one_lobe_angle_solves_its_equation() -> None:
    angle = half_shape(1).middle
    assert math.tan(angle) == pytest.approx(angle, rel=1e-11)
    assert half_shape(2).middle == pytest.approx(2.0 * math.pi, rel=1e-12)


@pytest.mark.parametrize(
    ("mode", "force", "feed_in", "length_factor", "deflection", "moment"),
    [
        # Derived by other people with another program; the reference note's figures.
        (1, 80.7629, 6.3880e-5, 0.5, 2.4068e-3, 0.06938),
        (2, 39.4784, 1.7430e-4, 1.0, 5.5315e-3, 0.10884),
        (4, 28.1611, 2.1418e-4, 1.6090, 1.0510e-2, 0.14935),
    ],
)
def test_constants_of_the_modes(  # noqa: PLR0913, PLR0917
    mode: int, force: float, feed_in: float, length_factor: float, deflection: float, moment: float
) -> None:
    found = mode_constants(mode)
    assert found.force == pytest.approx(force, rel=1e-5)
    assert found.feed_in == pytest.approx(feed_in, rel=5e-5)
    assert found.length_factor == pytest.approx(length_factor, rel=5e-5)
    assert found.deflection == pytest.approx(deflection, rel=5e-5)
    assert found.moment == pytest.approx(moment, rel=1e-4)


@pytest.mark.parametrize("mode", MODES)
def test_a_shape_meets_the_energy_theorem(mode: int) -> None:
    """With P = EI = rho = 1: twice the bending energy less P times twice the shortening is minus the work of the resistance."""
    shape = half_shape(mode)
    count = 20_000
    step = shape.middle / count
    balance = 0.0
    for index in range(count):
        angle = (index + 0.5) * step
        balance += step * (shape.derivative(2, angle) ** 2 - shape.derivative(1, angle) ** 2 + abs(shape.derivative(0, angle)))
    assert balance == pytest.approx(0.0, abs=1e-6)


@pytest.mark.parametrize(
    ("lateral", "longitudinal", "rise"), [(20, 20, 43.95), (40, 40, 63.73), (60, 40, 74.67), (60, 60, 79.18)]
)
def test_lowest_rise_of_the_note(lateral: float, longitudinal: float, rise: float) -> None:
    found = lowest_rise(**track(lateral=lateral, longitudinal=longitudinal))
    assert found.temperature_rise * FAHRENHEIT == pytest.approx(rise, abs=0.005)
    assert found.governing.mode == 4
    assert [state.mode for state in found.by_mode] == [1, 2, 3, 4]


@pytest.mark.parametrize(
    ("mode", "force", "far", "rise"),
    [(1, 439_148, 494_798, 95.03), (2, 214_664, 407_889, 78.34), (3, 185_232, 429_561, 82.50), (4, 153_126, 500_362, 96.10)],
)
def test_state_at_a_given_length(mode: int, force: float, far: float, rise: float) -> None:
    found = buckled_state(mode=mode, length=400.0 * INCH, **track())
    pound = POUND_PER_INCH * INCH
    assert found.buckled_force / pound == pytest.approx(force, rel=1e-5)
    assert found.far_force / pound == pytest.approx(far, rel=1e-5)
    assert found.temperature_rise * FAHRENHEIT == pytest.approx(rise, abs=0.006)
    assert found.slip_length * 40.0 / INCH == pytest.approx(far - force, rel=1e-4)


def test_mode_one_at_the_length_of_the_note() -> None:
    """A Fourier series of other people gave 136.250 F for a half-length of 160 in."""
    found = buckled_state(mode=1, length=320.0 * INCH, **track())
    assert found.temperature_rise * FAHRENHEIT == pytest.approx(136.250, rel=1e-5)


@pytest.mark.parametrize("mode", MODES)
def test_lowest_length_is_a_minimum(mode: int) -> None:
    low = lowest_rise(**track(), modes=(mode,)).governing
    for factor in (0.5, 0.97, 1.03, 2.0):
        assert buckled_state(mode=mode, length=factor * low.length, **track()).temperature_rise > low.temperature_rise


@pytest.mark.parametrize("mode", MODES)
def test_limit_of_infinite_longitudinal_resistance(mode: int) -> None:
    """Rails that cannot slip: `P0 = k1 EI / L^2 + k2 k3 EA rho^2 L^6 / (2 EI^2)`, lowest at a closed-form length."""
    data = track(longitudinal=1e14)
    low = lowest_rise(**data, modes=(mode,)).governing
    constants = mode_constants(mode)
    bending = 2.0 * data["elastic_modulus"] * data["second_moment"]
    axial = 2.0 * data["elastic_modulus"] * data["area"]
    growth = constants.feed_in * constants.length_factor * axial * (data["lateral_resistance"] / bending) ** 2 / 2.0
    length = (constants.force * bending / (3.0 * growth)) ** 0.125
    assert low.length == pytest.approx(length, rel=1e-6)
    assert low.far_force == pytest.approx(4.0 / 3.0 * constants.force * bending / length**2, rel=1e-6)


def test_limit_of_no_longitudinal_resistance() -> None:
    """The rise goes to zero as the resistance to the power 2/11: without friction along the track there is no safe rise."""
    one = lowest_rise(**track(longitudinal=1e-9)).temperature_rise
    two = lowest_rise(**track(longitudinal=1e-12)).temperature_rise
    assert two < one < 1.0
    assert math.log10(one / two) / 3.0 == pytest.approx(2.0 / 11.0, rel=1e-4)


@pytest.mark.parametrize("field", list(track()))
@pytest.mark.parametrize("value", [0.0, -1.0, math.nan, math.inf])
def test_refuses_what_is_not_a_positive_number(field: str, value: float) -> None:
    data = {**track(), field: value}
    with pytest.raises(RefusedError) as caught:
        lowest_rise(**data)  # type: ignore[arg-type]
    assert [refusal.path for refusal in caught.value.refusals] == [(field,)]


def test_conditions_without_a_root_are_an_error() -> None:
    with pytest.raises(ArithmeticError):
        modes._first_root(lambda _: 1.0, 1.0)  # noqa: SLF001


def test_refuses_unknown_modes() -> None:
    for wanted in ((), (5,)):
        with pytest.raises(RefusedError) as caught:
            lowest_rise(**track(), modes=wanted)
        assert caught.value.refusals[0].allowed == ("1", "2", "3", "4")


@settings(max_examples=50, deadline=None)
@given(lateral=st.floats(5.0, 300.0), longitudinal=st.floats(1.0, 300.0), more=st.floats(1.0, 5.0), along=st.booleans())
def test_more_resistance_never_lowers_the_lowest_rise(lateral: float, longitudinal: float, more: float, along: bool) -> None:  # noqa: FBT001
    less = lowest_rise(**track(lateral=lateral, longitudinal=longitudinal)).temperature_rise
    grown = (
        track(lateral=lateral, longitudinal=longitudinal * more)
        if along
        else track(lateral=lateral * more, longitudinal=longitudinal)
    )
    assert lowest_rise(**grown).temperature_rise >= less * (1.0 - 1e-12)


@settings(max_examples=25, deadline=None)
@given(length=st.floats(1e-3, 1e3), force=st.floats(1e-3, 1e3))
def test_units_of_length_and_force_do_not_matter(length: float, force: float) -> None:
    data = track()
    scaled = Track(
        elastic_modulus=data["elastic_modulus"] * force / length**2,
        second_moment=data["second_moment"] * length**4,
        area=data["area"] * length**2,
        expansion_coefficient=data["expansion_coefficient"],
        lateral_resistance=data["lateral_resistance"] * force / length,
        longitudinal_resistance=data["longitudinal_resistance"] * force / length,
    )
    one, two = lowest_rise(**data), lowest_rise(**scaled)
    assert two.temperature_rise == pytest.approx(one.temperature_rise, rel=1e-10)
    assert two.governing.length == pytest.approx(one.governing.length * length, rel=1e-6)


def uplift(weight: float) -> BuckledState:
    data = track()
    return lowest_vertical_rise(
        elastic_modulus=data["elastic_modulus"],
        second_moment=data["second_moment"],
        area=data["area"],
        expansion_coefficient=data["expansion_coefficient"],
        track_weight=weight,
        longitudinal_resistance=data["longitudinal_resistance"],
    )


def test_uplift_is_the_one_lobe_mode_with_the_weight() -> None:
    up = uplift(60.0 * POUND_PER_INCH)
    side = lowest_rise(**track(), modes=(1,)).governing
    assert up == side


def test_uplift_refuses_a_weightless_track() -> None:
    with pytest.raises(RefusedError) as caught:
        uplift(0.0)
    assert caught.value.refusals[0].path == ("track_weight",)
