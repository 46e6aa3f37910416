"""Stretches and patterns for the tests of the quantity rules, in inches and miles as the trade thinks of them."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.domain.errors import RefusedError
from railrules_api.domain.fields import slots_of
from railrules_api.domain.patterns import AnchorPattern, AnchorsPerRailLength, SpikeBand, SpikePattern
from railrules_api.domain.track import Stretch, TieSetting

if TYPE_CHECKING:
    from collections.abc import Callable

    from railrules_api.rules.model import Rule

INCH = 0.0254
FOOT = 0.3048
MILE = 1609.344
POUND = 0.45359237
SHORT_TON = 2000 * POUND
GALLON = 231 * INCH**3


def stretch(begin: float = 0.0, end: float = MILE, spacing: float = 19.5 * INCH, **rest: Any) -> Stretch:
    """Return a stretch of both rails and no curves unless told otherwise; tie 0 stands at station 0."""
    given = {"rails": "both", "ties": TieSetting(spacing=spacing, origin=0.0), **rest}
    return Stretch(begin=begin, end=end, **given)


def boxed(every: int) -> AnchorPattern:
    return AnchorPattern(boxed_every=every)


def per_rail(forward: int, back_up: int, rail_length: float = 39 * FOOT) -> AnchorPattern:
    return AnchorPattern(per_rail=AnchorsPerRailLength(rail_length=rail_length, forward=forward, back_up=back_up))


def spikes(rail: int, plate: int = 0, at_joints: int = 0) -> SpikePattern:
    return SpikePattern(bands=(SpikeBand(rail_spikes=rail, plate_spikes=plate),), extra_at_joint_ties=at_joints)


def refused_at(action: Callable[[], object]) -> tuple[str | int, ...]:
    """Return the path of the one refusal that an action ends in."""
    with pytest.raises(RefusedError) as caught:
        action()
    (refusal,) = caught.value.refusals
    assert refusal.reason
    return refusal.path


def formulas_hold(rule: Rule[Any, Any], given: Any, result: Any) -> None:
    """Evaluate every exact formula of a rule on the symbols of its fields and hold it against the result."""
    symbols: dict[str, Any] = {"ceil": math.ceil, "floor": math.floor, "sqrt": math.sqrt, "min": min, "max": max}
    for record in (given, result):
        described: type = type(record)
        for slot in slots_of(described):
            if slot.field.symbol:
                assert slot.field.symbol not in symbols, slot.field.symbol
                symbols[slot.field.symbol] = getattr(record, slot.name)
    for formula in rule.formulas:
        if formula.exact:
            value = eval(formula.text, {"__builtins__": {}}, symbols)
            assert value == pytest.approx(getattr(result, formula.gives), rel=1e-12), formula.gives
