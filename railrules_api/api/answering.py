"""From a rule's result to the wire: SI to the units asked for. The inverse of `binding`, for answers only."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Any

from msgspec import UNSET

from railrules_api.api.wire import EACH, amount_type, answer_type, quantity_type
from railrules_api.domain.fields import Slot, slots_of
from railrules_api.units import UNITS, System, answer_unit

if TYPE_CHECKING:
    from collections.abc import Callable

    import msgspec

    from railrules_api.domain.amounts import Amount


def _positive_zero(value: float) -> float:
    """Return 0.0 for -0.0: a minus sign on nothing reads as a mistake."""
    return value + 0.0


def amount_answer(amount: Amount, system: System, preferred: tuple[str, str] | None = None) -> msgspec.Struct:
    """Return an amount in the units of a system; a count stays a count."""
    if amount.kind is None:
        return amount_type()(amount.value, EACH)
    if preferred is not None and preferred[0] not in UNITS[amount.kind]:
        preferred = None  # a field may hold amounts of several kinds, and prefer units for one of them
    unit = answer_unit(amount.kind, system, preferred or amount.answer)
    return amount_type()(_positive_zero(unit.from_si(amount.value)), unit.code)


def _quantity(slot: Slot, system: System) -> Callable[[Any], Any]:
    kind = slot.field.kind
    assert kind is not None
    unit = answer_unit(kind, system, slot.field.answer)
    struct, factor, offset, code = quantity_type(kind), unit.factor, unit.offset, unit.code
    return lambda value: struct((value - offset) / factor + 0.0, code)


def _writer(slot: Slot, system: System) -> Callable[[Any], Any]:
    if slot.shape == "quantity":
        return _quantity(slot, system)
    if slot.shape == "amount":
        preferred = slot.field.answer
        return lambda value: amount_answer(value, system, preferred)
    if slot.shape == "record":
        assert slot.record is not None
        return writer_of(slot.record, system)
    if slot.shape == "records":
        assert slot.record is not None
        one = writer_of(slot.record, system)
        return lambda values: [one(value) for value in values]
    if slot.shape in ("numbers", "texts"):
        return list
    if slot.shape == "decimal":
        return str
    return lambda value: value


def writer_of(record: type, system: System) -> Callable[[Any], msgspec.Struct]:
    """Return the function that turns a result record into its answer struct in a unit system."""
    return _writer_of(record, system)


@cache
def _writer_of(record: type, system: System) -> Callable[[Any], msgspec.Struct]:
    struct = answer_type(record)
    plan = [(slot.name, _writer(slot, system)) for slot in slots_of(record)]

    def write(result: Any) -> msgspec.Struct:  # noqa: ANN401
        values = {}
        for name, writer in plan:
            value = getattr(result, name)
            values[name] = UNSET if value is None else writer(value)
        return struct(**values)

    return write
