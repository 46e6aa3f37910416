"""The factors of the unit table, against the units library pint, which knows the definitions independently."""

from __future__ import annotations

import math

import pint
import pytest

from railrules_api.domain.kinds import Kind
from railrules_api.rules.takeoff.money import PER
from railrules_api.units import UNITS, Unit, answer_unit, kinds_of, si_unit

REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry()
ALL_UNITS = [unit for units in UNITS.values() for unit in units.values()]


@pytest.mark.parametrize("unit", ALL_UNITS, ids=lambda unit: f"{unit.kind}-{unit.code}")
def test_factor_is_that_of_the_units_library(unit: Unit) -> None:
    for value in (1.0, 50.0, 1234.5):
        theirs = REGISTRY.Quantity(value, unit.definition)
        absolute = unit.kind is Kind.TEMPERATURE
        expected = theirs.to("kelvin").magnitude if absolute else theirs.to_base_units().magnitude
        assert math.isclose(unit.to_si(value), expected, rel_tol=1e-14)
        assert math.isclose(unit.from_si(unit.to_si(value)), value, rel_tol=1e-12)


@pytest.mark.parametrize("kind", Kind)
def test_every_kind_has_a_coherent_unit_and_answer_units(kind: Kind) -> None:
    assert si_unit(kind).to_si(3.0) == 3.0
    for system in ("us", "si"):
        assert answer_unit(kind, system).kind is kind


def test_mass_and_force_temperature_and_change_share_no_code() -> None:
    for one, other in ((Kind.MASS, Kind.FORCE), (Kind.TEMPERATURE, Kind.TEMPERATURE_CHANGE)):
        assert not UNITS[one].keys() & UNITS[other].keys()
    assert kinds_of("lbf") == (Kind.FORCE,)
    assert kinds_of("furlong") == ()


def test_codes_are_plain_identifiers() -> None:
    assert all(unit.code.isidentifier() for unit in ALL_UNITS)


def test_prices_measure_by_the_same_units() -> None:
    for code, (kind, factor) in PER.items():
        assert float(factor) == UNITS[kind][code].factor, code
