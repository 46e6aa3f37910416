"""Quantities in and out: text, plain numbers with a unit, the units library."""

from __future__ import annotations

import json
import pickle
from decimal import Decimal
from fractions import Fraction
from typing import TYPE_CHECKING, cast

import msgspec
import numpy as np
import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from railrules_client import Quantity, UnknownUnitError, fahrenheit, feet, models, quantity
from railrules_client._sending import _ENCODER
from railrules_client._units import convert, parse, unit_of

from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Sequence

KINDS = cast("Sequence[type[Quantity[str]]]", models.QUANTITIES)
CODES = [(kind, code) for kind in KINDS for code in kind.codes]
REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry()
# down to a billionth: beside the smallest floats a conversion has no bits left to keep
finite = st.floats(-1e12, 1e12).map(lambda value: round(value, 9))


def alike(one: str, other: str) -> bool:
    """Return whether two codes of an amount, which takes every unit, measure the same thing."""
    return (unit_of(one).dimension, unit_of(one).absolute) == (unit_of(other).dimension, unit_of(other).absolute)


@pytest.mark.parametrize(("kind", "code"), CODES, ids=lambda item: item if isinstance(item, str) else item.__name__)
def test_every_code_of_the_document_means_what_the_units_library_says(kind: type[Quantity[str]], code: str) -> None:
    unit = unit_of(code)
    one = REGISTRY.Quantity(1.0, unit.definition).to_base_units()
    assert one.magnitude == pytest.approx(float(unit.factor + unit.zero), rel=1e-14)
    given = kind(12.5, code)
    there = given.to_pint(REGISTRY)
    assert there.magnitude == 12.5
    if not (code == "delta_K" and "K" in kind.codes):  # a kelvin alone does not say whether it is a change
        assert kind.of(there).to(code).value == pytest.approx(12.5, rel=1e-15)


def test_every_code_of_the_service_is_known_with_the_same_factor() -> None:
    for units in UNITS.values():
        for code, unit in units.items():
            assert float(unit_of(code).factor) == unit.factor
            assert float(unit_of(code).zero) == unit.offset


@given(finite, st.sampled_from([(kind, one, other) for kind, one in CODES for other in kind.codes if alike(one, other)]))
def test_there_and_back(value: float, step: tuple[type[Quantity[str]], str, str]) -> None:
    kind, one, other = step
    back = kind(value, one).to(other).to(one).value
    span = abs(float(unit_of(one).zero / unit_of(one).factor)) + abs(float(unit_of(other).zero / unit_of(one).factor))
    assert back == pytest.approx(value, rel=4e-16, abs=4e-16 * span)


def test_exact_conversions_are_exact() -> None:
    assert feet(39).to("in").magnitude == 468.0
    assert models.Length(1, "mi").to("ft") == models.Length(5280.0, "ft")
    assert models.Length(1440, "ft").to("mm").value == 438912.0
    assert fahrenheit(95).to("degC") == models.Temperature(35.0, "degC")
    assert fahrenheit(-40).to("degC").value == -40.0
    assert models.TemperatureChange(9, "delta_degF").to("delta_degC").value == 5.0
    assert models.Mass(1, "short_ton").to("lb").value == 2000.0
    assert float(Fraction(1, 3)) == convert(1, "ft", "yd")


@pytest.mark.parametrize(
    ("one", "other"), [("ft", "kg"), ("degF", "delta_degF"), ("K", "delta_K"), ("each", "ft"), ("lb", "lbf"), ("ft2", "ft")]
)
def test_different_things_do_not_convert(one: str, other: str) -> None:
    with pytest.raises(ValueError, match="do not measure the same thing"):
        convert(1.0, one, other)


@pytest.mark.parametrize("code", ["", "furlong", "_ft", "ft_", "ftin", "ft__in", "per_", "ft2x", "2ft", "m1"])
def test_unknown_codes_are_told(code: str) -> None:
    with pytest.raises(UnknownUnitError, match="not known"):
        unit_of(code)


@pytest.mark.parametrize(
    ("text", "value", "code"),
    [
        ("39 ft", 39.0, "ft"), ("39ft", 39.0, "ft"), ("39'", 39.0, "ft"), ('19.5"', 19.5, "in"), ("19.5 inches", 19.5, "in"),
        ("3/8 in", 0.375, "in"), ("2-1/4 in", 2.25, "in"), ("2 1/4 in", 2.25, "in"), ("-3/8 in", -0.375, "in"),
        ("1,440 ft", 1440.0, "ft"), ("1e3 psi", 1000.0, "psi"), (".5 mi", 0.5, "mi"), ("95 °F", 95.0, "degF"),
        ("95F", 95.0, "degF"), ("\u22125 °C", -5.0, "degC"), ("115 lb/yd", 115.0, "lb_per_yd"),
        ("115 lb per yd", 115.0, "lb_per_yd"),
        ("6.5e-6 1/degF", 6.5e-6, "per_degF"), ("66 in⁴", 66.0, "in4"),
        ("10 kip·in", 10.0, "kip_in"), ("50 mph", 50.0, "mi_per_h"),
        ("3 short tons", 3.0, "short_ton"), ("7 furlongs", 7.0, "furlongs"), ("20 delta_degF", 20.0, "delta_degF"),
    ],
)  # fmt: skip
def test_text_is_read_as_people_write_it(text: str, value: float, code: str) -> None:
    assert parse(text) == (value, code)


@pytest.mark.parametrize("text", ["", "39", "ft", "ft 39", "1/0 in", "- ft", ". ft", "1,44 ft", "thirty ft"])
def test_text_that_is_no_quantity_is_told(text: str) -> None:
    with pytest.raises(ValueError, match=r"write a number and a unit|fraction over zero"):
        models.Length.of(text)


def test_requests_take_quantities_in_every_form() -> None:
    forms = [feet(39), "39 ft", quantity("39 ft"), 39 * REGISTRY.foot]
    made = [models.TieSetting(count=24, per_length=form) for form in forms]
    assert {struct.per_length for struct in made} == {models.Length(39.0, "ft")}
    assert msgspec.json.encode(made[1]) == b'{"count":24,"per_length":{"value":39.0,"unit":"ft"}}'
    assert models.TieSetting() == models.TieSetting(spacing=msgspec.UNSET)


def test_a_wrong_unit_is_left_to_the_service_to_refuse() -> None:
    assert models.TieSetting(spacing="39 lb").spacing == models.Length(39.0, "lb")  # type: ignore[arg-type]


def test_kinds_of_temperature_are_kept_apart() -> None:
    with pytest.raises(TypeError, match="delta_degree_Fahrenheit"):
        models.Temperature.of(REGISTRY.Quantity(9, "delta_degF"))
    with pytest.raises(TypeError, match="degree_Fahrenheit"):
        models.TemperatureChange.of(REGISTRY.Quantity(9, "degF"))
    with pytest.raises(TypeError, match="pound was given"):
        models.Length.of(1 * REGISTRY.pound)
    with pytest.raises(TypeError, match="int"):
        models.Length.of(39)  # type: ignore[arg-type]


def test_a_foreign_unit_comes_over_in_an_si_one() -> None:
    assert models.Length.of(REGISTRY.Quantity(2, "rod")).unit == "m"
    assert models.Length.of(REGISTRY.Quantity(1, "nautical_mile")) == models.Length(1852.0, "m")
    assert models.Temperature.of(REGISTRY.Quantity(518.67, "degR")).to("degF").value == pytest.approx(59.0)


def test_the_application_registry_is_used_when_none_is_given() -> None:
    there = feet(39).to_pint()
    assert (there + 1 * pint.application_registry.foot).magnitude == 40.0


def test_quantity_finds_the_kind_by_the_unit() -> None:
    assert type(quantity("39 ft")) is models.Length
    assert type(quantity("95 degF")) is models.Temperature
    assert str(quantity("12 each")) == "12 each"
    assert quantity(str(feet(1))) == feet(1)
    assert quantity(39 * REGISTRY.foot) == feet(39)
    assert type(quantity(REGISTRY.Quantity(30, "psi"))) is models.Stress
    with pytest.raises(ValueError, match=r"no unit 'lbx'; near: .*lb"):
        quantity("3 lbx")


def test_quantities_are_values() -> None:
    one = feet(39)
    assert one == models.Length(39.0, "ft")
    assert hash(one) == hash(models.Length(39, "ft"))
    assert pickle.loads(pickle.dumps(one)) == one
    assert str(one) == "39 ft"
    assert (one.value, one.magnitude, one.unit) == (39, 39, "ft")
    with pytest.raises(AttributeError):
        one.value = 40.0  # type: ignore[misc]


def test_numbers_of_other_libraries_are_sent_as_numbers() -> None:
    tree = {"a": np.float64(1.5), "b": np.float32(0.25), "c": np.int64(7), "d": models.Length(np.float64(2), "ft")}
    assert json.loads(_ENCODER.encode(tree)) == {"a": 1.5, "b": 0.25, "c": 7, "d": {"value": 2.0, "unit": "ft"}}
    assert _ENCODER.encode(Decimal("1.10")) == b'"1.10"'
    with pytest.raises(TypeError, match="a module cannot be sent"):
        _ENCODER.encode({"a": json})
