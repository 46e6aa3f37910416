"""From a TOML table to a described dataclass: the patterns of the catalogue and of a house rulebook."""

from __future__ import annotations

import dataclasses
from typing import TYPE_CHECKING

from railrules_api.catalogue.reading import BadEntryError, number_of, refuse_unknown, text_of, to_si, word_of
from railrules_api.domain.fields import slots_of

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from railrules_api.domain.fields import Field, Slot
    from railrules_api.domain.kinds import Kind


def table_of(raw: object, name: str) -> Mapping[str, object]:
    """Return a TOML table.

    Raises:
        BadEntryError: it is something else.
    """
    if not isinstance(raw, dict):
        msg = f"{name} must be a table"
        raise BadEntryError(msg)
    return raw


def quantity_of(raw: object, name: str, kind: Kind) -> tuple[float, str, str]:
    """Return SI value, digits and unit of `{ value = 1500, unit = "ft" }`.

    Raises:
        BadEntryError: it is not of that form, or the unit does not measure the kind.
    """
    entry = table_of(raw, f"{name} needs value and unit, and")
    number, digits = number_of(entry.get("value"))
    unit = text_of(entry, "unit", required=False)
    return to_si(number, unit, kind), digits, unit


def _checked(number: float, field: Field, name: str) -> float:
    if field.refuses(number):
        limits = [
            f"{word} {limit:g}"
            for word, limit in (("above", field.above), ("at least", field.at_least), ("at most", field.at_most))
            if limit is not None
        ]
        msg = f"{name} is outside its limits ({', '.join(limits)}; SI)"
        raise BadEntryError(msg)
    return number


def _many(raw: object, slot: Slot) -> list[object]:
    if not isinstance(raw, list):
        msg = f"{slot.name} must be a list"
        raise BadEntryError(msg)
    if not (slot.field.at_least or 0) <= len(raw) <= slot.field.most_items:
        msg = f"{slot.name} has {len(raw)} entries, outside its limits"
        raise BadEntryError(msg)
    return raw


def _quantity(raw: object, slot: Slot) -> float:
    assert slot.field.kind is not None
    return _checked(quantity_of(raw, slot.name, slot.field.kind)[0], slot.field, slot.name)


def _number(raw: object, slot: Slot) -> float:
    return _checked(number_of(raw)[0], slot.field, slot.name)


def _count(raw: object, slot: Slot) -> int:
    if isinstance(raw, bool) or not isinstance(raw, int):
        msg = f"{slot.name} must be a whole number"
        raise BadEntryError(msg)
    return int(_checked(raw, slot.field, slot.name))


def _flag(raw: object, slot: Slot) -> bool:
    if not isinstance(raw, bool):
        msg = f"{slot.name} must be true or false"
        raise BadEntryError(msg)
    return raw


def _record(raw: object, slot: Slot) -> object:
    assert slot.record is not None
    return record_of(table_of(raw, slot.name), slot.record)


_READERS: Mapping[str, Callable[[object, Slot], object]] = {
    "quantity": _quantity,
    "number": _number,
    "count": _count,
    "flag": _flag,
    "word": lambda raw, slot: word_of({slot.name: raw}, slot.name, slot.words),
    "text": lambda raw, slot: text_of({slot.name: raw}, slot.name),
    "texts": lambda raw, slot: tuple(text_of({slot.name: part}, slot.name) for part in _many(raw, slot)),
    "numbers": lambda raw, slot: tuple(number_of(part)[0] for part in _many(raw, slot)),
    "record": _record,
    "records": lambda raw, slot: tuple(_record(part, slot) for part in _many(raw, slot)),
}
"""How each shape of a field is read; amounts and money are answers and do not stand in data."""


def record_of(raw: Mapping[str, object], record: type) -> object:
    """Build a described dataclass from a TOML table, in SI, within the limits of its fields.

    Raises:
        BadEntryError: a key is unknown, a field missing, of the wrong form, or outside its limits.
    """
    slots = {slot.name: slot for slot in slots_of(record)}
    refuse_unknown(raw, slots)
    needed = {
        item.name
        for item in dataclasses.fields(record)
        if item.default is dataclasses.MISSING and item.default_factory is dataclasses.MISSING
    }
    missing = sorted(needed - raw.keys())
    if missing:
        msg = f"{', '.join(missing)} is missing"
        raise BadEntryError(msg)
    built: object = record(**{name: _READERS[slots[name].shape](value, slots[name]) for name, value in raw.items()})
    return built
