"""Rail on an elastic foundation: against a boundary-value solver, printed values, and simple truths."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, TypedDict

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_bvp

from railrules_api.domain import bending
from railrules_api.domain.errors import RefusedError

if TYPE_CHECKING:
    import numpy.typing as npt

    Array = npt.NDArray[np.float64]

INCH = 0.0254
POUND = 4.4482216152605
PSI = POUND / INCH**2
MILE_PER_HOUR = 0.44704


class Rail(TypedDict):
    elastic_modulus: float
    second_moment: float
    foundation_modulus: float


RAIL = Rail(elastic_modulus=30e6 * PSI, second_moment=94.9 * INCH**4, foundation_modulus=3000.0 * PSI)


def wheel(place: float = 0.0, load: float = 36_000.0) -> bending.Wheel:
    """Place in inches, load in pounds."""
    return bending.Wheel(place=place * INCH, load=load * POUND)


def test_single_wheel_of_the_note() -> None:
    """136 lb section, 3,000 psi, 36,000 lb: worked by other people with the same formulas."""
    assert bending.wave_number(**RAIL) * INCH == pytest.approx(0.022655, rel=3e-5)
    found = bending.rail_state(**RAIL, wheels=(wheel(),), place=0.0)
    assert found.deflection / INCH == pytest.approx(0.1359, abs=0.00005)
    assert found.moment / (POUND * INCH) == pytest.approx(397_259, rel=3e-5)
    stress = bending.bending_stress(moment=found.moment, section_modulus=28.3 * INCH**3)
    assert stress / PSI == pytest.approx(14_037, rel=1e-4)
    seat = bending.rail_seat_load(pressure=found.pressure, tie_spacing=19.5 * INCH)
    assert seat / POUND == pytest.approx(7_952, abs=0.6)
    there = bending.rail_state(
        **RAIL, wheels=(wheel(),), place=bending.zero_moment_distance(wave_number=bending.wave_number(**RAIL))
    )
    assert there.moment == pytest.approx(0.0, abs=1e-9 * found.moment)


def test_truck_against_a_boundary_value_solver() -> None:
    """Two equal wheels 70 in apart: half of the rail in two pieces, each stretched to run from zero to one."""
    stiffness = RAIL["elastic_modulus"] * RAIL["second_moment"]
    modulus = RAIL["foundation_modulus"]
    load, near = 36_000.0 * POUND, 35.0 * INCH
    unit = 1.0 / bending.wave_number(**RAIL)
    far = near + 20.0 * unit
    spans = np.array([near, far - near]) / unit
    # In lengths of 1/beta and deflections of P/(EI beta^3): y'''' + 4 y = 0 between the wheels, a step of one in y'''.
    scale = load * unit**3 / stiffness
    assert modulus * unit**4 / stiffness == pytest.approx(4.0)

    def slope(_: Array, state: Array) -> Array:
        rows = []
        for piece in range(2):
            y = state[4 * piece : 4 * piece + 4]
            rows += [spans[piece] * y[1], spans[piece] * y[2], spans[piece] * y[3], -4.0 * spans[piece] * y[0]]
        return np.array(rows)

    def ends(start: Array, end: Array) -> Array:
        return np.array(
            [
                start[1],
                start[3],
                *(end[:3] - start[4:7]),
                start[7] - end[3] - 1.0,
                end[4],
                end[5],
            ]
        )

    grid = np.linspace(0.0, 1.0, 41)
    solved = solve_bvp(slope, ends, grid, np.zeros((8, len(grid))), tol=1e-10, max_nodes=20_000)
    assert solved.success
    for share in (0.0, 0.3, 0.7, 1.0):
        values = solved.sol(share)
        for piece, place in ((0, share * near), (1, near + share * (far - near))):
            found = bending.rail_state(**RAIL, wheels=(wheel(-35.0), wheel(35.0)), place=place)
            assert found.deflection == pytest.approx(values[4 * piece] * scale, abs=1e-7 * scale)
            moment = -values[4 * piece + 2] * scale * stiffness / unit**2
            assert found.moment == pytest.approx(moment, abs=1e-7 * load * unit)


def test_the_foundation_carries_all_wheels() -> None:
    wheels = (wheel(0.0), wheel(70.0, 30_000.0), wheel(300.0, 20_000.0))
    step = 0.5 * INCH
    places = np.arange(-1500.0 * INCH, 1800.0 * INCH, step)
    carried = sum(bending.rail_state(**RAIL, wheels=wheels, place=float(place)).pressure for place in places) * step
    assert carried == pytest.approx(sum(one.load for one in wheels), rel=1e-6)


def test_extremes_of_a_single_wheel() -> None:
    found = bending.rail_extremes(**RAIL, wheels=(wheel(),))
    beta = bending.wave_number(**RAIL)
    assert found.lowest.place == 0.0
    assert found.sagging.place == 0.0
    # Uplift is largest at pi/beta, hogging at pi/(2 beta): both shares of the values under the wheel are textbook figures.
    assert abs(found.highest.place) == pytest.approx(math.pi / beta, rel=1e-5)
    assert found.highest.deflection / found.lowest.deflection == pytest.approx(-math.exp(-math.pi), rel=1e-9)
    assert abs(found.hogging.place) == pytest.approx(math.pi / (2.0 * beta), rel=1e-5)
    assert found.hogging.moment / found.sagging.moment == pytest.approx(-math.exp(-math.pi / 2.0), rel=1e-9)


def test_extremes_of_a_truck() -> None:
    wheels = (wheel(70.0), wheel(0.0))
    found = bending.rail_extremes(**RAIL, wheels=wheels)
    single = bending.rail_state(**RAIL, wheels=(wheel(),), place=0.0)
    assert found.lowest.deflection > single.deflection
    assert found.sagging.moment < single.moment
    assert 0.0 <= found.lowest.place <= 70.0 * INCH
    for place in np.linspace(-200.0, 270.0, 200):
        state = bending.rail_state(**RAIL, wheels=wheels, place=float(place) * INCH)
        assert found.highest.deflection <= state.deflection <= found.lowest.deflection
        assert found.hogging.moment <= state.moment <= found.sagging.moment


@given(place=st.floats(-20.0, 20.0), shift=st.floats(-100.0, 100.0), share=st.floats(0.1, 10.0))
def test_shift_and_scale(place: float, shift: float, share: float) -> None:
    wheels = (wheel(), wheel(70.0))
    moved = tuple(bending.Wheel(place=one.place + shift, load=one.load * share) for one in wheels)
    one = bending.rail_state(**RAIL, wheels=wheels, place=place)
    two = bending.rail_state(**RAIL, wheels=moved, place=place + shift)
    assert two.deflection == pytest.approx(share * one.deflection, rel=1e-6, abs=1e-12)
    assert two.moment == pytest.approx(share * one.moment, rel=1e-6, abs=1e-6)


@pytest.mark.parametrize(("speed", "diameter", "factor"), [(60, 36, 1.55), (40, 36, 1.367), (79, 36, 1.724), (0, 36, 1.0)])
def test_speed_factor(speed: float, diameter: float, factor: float) -> None:
    found = bending.speed_factor(speed=speed * MILE_PER_HOUR, wheel_diameter=diameter * INCH)
    assert found == pytest.approx(factor, abs=0.0005)


@pytest.mark.parametrize(("tie", "load", "bends"), [(bending.TIE_6_BY_8, 17_550.0, 605.2), (bending.TIE_7_BY_9, 20_280.0, 390.0)])
def test_the_load_that_the_ballast_allows(tie: bending.TieSize, load: float, bends: float) -> None:
    found = bending.tie_check(rail_seat_load=load * POUND, tie=tie)
    assert found.ballast_pressure / PSI == pytest.approx(65.0)
    assert found.bending_stress / PSI == pytest.approx(bends, abs=0.05)


def test_refusals() -> None:
    with pytest.raises(RefusedError) as caught:
        bending.wave_number(elastic_modulus=0.0, second_moment=math.nan, foundation_modulus=math.inf)
    assert [refusal.path for refusal in caught.value.refusals] == [
        ("elastic_modulus",),
        ("second_moment",),
        ("foundation_modulus",),
    ]
    with pytest.raises(RefusedError) as caught:
        bending.rail_extremes(**RAIL, wheels=())
    assert caught.value.refusals[0].path == ("wheels",)
    with pytest.raises(RefusedError) as caught:
        bending.rail_extremes(**RAIL, wheels=(wheel(), bending.Wheel(place=math.inf, load=0.0)))
    assert [refusal.path for refusal in caught.value.refusals] == [("wheels", 1, "place"), ("wheels", 1, "load")]
    with pytest.raises(RefusedError) as caught:
        bending.rail_state(**RAIL, wheels=(wheel(),), place=math.nan)
    assert caught.value.refusals[0].path == ("place",)
    with pytest.raises(RefusedError) as caught:
        bending.speed_factor(speed=-1.0, wheel_diameter=0.9)
    assert caught.value.refusals[0].path == ("speed",)
    with pytest.raises(RefusedError) as caught:
        bending.bending_stress(moment=math.inf, section_modulus=1e-4)
    assert caught.value.refusals[0].path == ("moment",)
