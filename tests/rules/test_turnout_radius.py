"""Radius of turnouts: which of its radii is on the safe side, and what does not make a turnout."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from railrules_api.api.service import Service
from railrules_api.domain.errors import RefusedError
from railrules_api.rules.radius import radius_from
from railrules_api.rules.strength import hauling_curve, turnout_radius
from railrules_api.rules.strength.turnout_radius import TurnoutRadiusInput

INCH = 0.0254
BASE = TurnoutRadiusInput(
    turnout_number=10.0,
    gauge=56.5 * INCH,
    heel_spread=6.25 * INCH,
    frog_toe_spread=8.5 * INCH,
    point_thickness=0.25 * INCH,
)
STRING = hauling_curve.HaulingCurveInput(
    turnout_number=10.0,
    gauge=BASE.gauge,
    heel_spread=BASE.heel_spread,
    frog_toe_spread=BASE.frog_toe_spread,
    elastic_modulus=2.068e11,
    base_width=6 * INCH,
    yield_strength=5.1e8,
    yield_share=0.5,
    string_length=440.0,
    clamped_at="middle",
    rack_spacing=9.0,
    rack_offset=1.0,
    facing_ends=2,
)


def test_without_a_switch_it_is_sharper_than_every_listed_turnout_and_2_g_n_squared_is_wider(service: Service) -> None:
    for row in service.catalogue.tables["turnouts"].rows.values():
        values = row.values
        degree, radius = values.get("degree"), values.get("radius")
        listed = radius_from(None if radius is None else radius.si, None if degree is None else degree.si)
        found = turnout_radius.evaluate(replace(BASE, turnout_number=values["turnout_number"].si))
        assert 0.84 * listed < found.radius < listed < found.lead_radius


@given(number=st.floats(3.0, 60.0), length=st.floats(4.0, 15.0))
def test_a_switch_that_turns_widens_the_closure(number: float, length: float) -> None:
    still = turnout_radius.evaluate(replace(BASE, turnout_number=number))
    sine = (BASE.heel_spread - BASE.point_thickness) / length
    if sine >= 0.99 * still.frog_angle:
        return
    turned = turnout_radius.evaluate(replace(BASE, turnout_number=number, switch_point_length=length))
    assert turned.switch_sine == pytest.approx(sine)
    assert turned.radius > still.radius
    assert turned.frog_angle == still.frog_angle


@pytest.mark.parametrize(
    ("changed", "path"),
    [
        ({"frog_toe_spread": 1.0, "heel_spread": 0.5}, "frog_toe_spread"),
        ({"switch_point_length": 0.5, "heel_spread": 0.4}, "switch_point_length"),
        ({"switch_point_length": 1.0}, "switch_point_length"),
        ({"switch_point_length": 5.0, "point_thickness": 0.1, "heel_spread": 0.05}, "point_thickness"),
        ({"turnout_number": 2.0, "frog_toe_spread": 1.2}, "turnout_number"),
    ],
)
def test_refusals(changed: dict[str, Any], path: str) -> None:
    with pytest.raises(RefusedError) as caught:
        turnout_radius.evaluate(replace(BASE, **changed))
    assert caught.value.refusals[0].path == (path,)


def test_strings_are_hauled_round_the_turnout_of_a_number() -> None:
    found = hauling_curve.evaluate(STRING)
    assert found.radius == turnout_radius.evaluate(BASE).radius
    assert found.checks[0].governing == "turnout_number"
    by_degree = hauling_curve.evaluate(replace(STRING, turnout_number=None, degree=0.1))
    assert by_degree.checks[0].governing == "degree"
    by_radius = hauling_curve.evaluate(replace(STRING, turnout_number=None, radius=300.0))
    assert by_radius.checks[0].governing == "radius"
    for other in (replace(STRING, radius=300.0), replace(STRING, degree=0.1)):
        with pytest.raises(RefusedError) as caught:
            hauling_curve.evaluate(other)
        assert caught.value.refusals[0].path == ("turnout_number",)
