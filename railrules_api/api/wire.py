"""Wire schemas derived from the rules' described dataclasses: a physical quantity becomes `{value, unit}`.

One struct per kind of quantity, one struct per record. What a record says of itself (`domain.fields`) is all there is:
a request leaves out what is optional, defaulted or taken from a catalogue row; an answer leaves out what is not there.
"""

from __future__ import annotations

import re
from functools import cache
from typing import Annotated, Any, Literal, TypeAlias

import msgspec
from msgspec import UNSET, Meta, UnsetType

from railrules_api.domain.fields import Slot, slots_of
from railrules_api.domain.kinds import Kind
from railrules_api.rules.registry import RESOURCES
from railrules_api.units import UNITS

LARGEST = 1e15
"""No number on the wire is larger: beyond any quantity of the trade in any unit, and safe from overflow in a formula."""
LONGEST_TEXT = 200
EACH = "each"
"""Unit code of a count where an amount may be either a count or a measured quantity."""
# C0 controls and DEL would break CSV rows, logs and terminals; nothing in a name needs them
# (the look-ahead: Python's `$` also matches before a last line end, that of JSON Schema does not)
PLAIN_TEXT = r"^[^\x00-\x1f\x7f]*$(?!\n)"
LINES = r"^[^\x00-\x09\x0b-\x1f\x7f]*$"
"""Plain text in several lines."""
DECIMAL_TEXT = r"^[0-9]{1,12}(\.[0-9]{1,6})?$(?!\n)"

StructType: TypeAlias = type[msgspec.Struct]


def camel(words: str) -> str:
    """Return `ForcePerLength` for `force_per_length`, `force-per-length` or `force.per length`."""
    return "".join(word[:1].upper() + word[1:] for word in re.split(r"[_\-. ]", words))


def _literal(words: tuple[str, ...]) -> Any:  # noqa: ANN401  a typing form made at run time
    return Literal[words]


def _described(form: Any, text: str, **limits: Any) -> Any:  # noqa: ANN401  a typing form made at run time
    return Annotated[form, Meta(description=text, **limits)]


@cache
def quantity_type(kind: Kind) -> StructType:
    """Return the struct of a kind: a finite number and one of the kind's unit codes."""
    units = UNITS[kind]
    spoken = kind.value.replace("_", " ")
    return msgspec.defstruct(
        camel(kind.value),
        [
            ("value", Annotated[float, Meta(ge=-LARGEST, le=LARGEST, description="The number.")]),
            ("unit", _described(_literal(tuple(units)), f"Unit of the {spoken}.")),
        ],
        namespace={"__doc__": f"A {spoken} with its unit."},
        module=__name__,
        frozen=True,
        forbid_unknown_fields=True,
        gc=False,
    )


@cache
def amount_type() -> StructType:
    """Return the struct of an amount: a count (`each`) or a measured quantity of any kind."""
    codes = dict.fromkeys([EACH, *(code for kind in UNITS.values() for code in kind)])
    return msgspec.defstruct(
        "Amount",
        [
            ("value", Annotated[float, Meta(ge=-LARGEST, le=LARGEST, description="The number.")]),
            ("unit", _described(_literal(tuple(codes)), "Unit; `each` for a count of pieces.")),
        ],
        namespace={"__doc__": "A count of pieces or a measured quantity, with its unit."},
        module=__name__,
        frozen=True,
        forbid_unknown_fields=True,
        gc=False,
    )


GOODS = (Kind.LENGTH, Kind.AREA, Kind.VOLUME, Kind.MASS)
"""Kinds in which goods are measured; their unit codes are all different, so a code alone tells the kind."""


@cache
def goods_type() -> StructType:
    """Return the struct of an amount of goods as a caller sends it: a count, length, area, volume or mass."""
    codes = dict.fromkeys([EACH, *(code for kind in GOODS for code in UNITS[kind])])
    return msgspec.defstruct(
        "GoodsAmount",
        [
            ("value", Annotated[float, Meta(ge=0.0, le=LARGEST, description="The number.")]),
            ("unit", _described(_literal(tuple(codes)), "Unit; `each` for a count of pieces.")),
        ],
        namespace={"__doc__": "A count of pieces, or a length, area, volume or mass of goods."},
        module=__name__,
        frozen=True,
        forbid_unknown_fields=True,
        gc=False,
    )


def _limits(slot: Slot) -> dict[str, float | int]:
    field, whole = slot.field, slot.shape == "count"
    limits: dict[str, float | int] = {}
    if field.above is not None:
        limits["gt"] = int(field.above) if whole else field.above
    elif field.at_least is not None:
        limits["ge"] = int(field.at_least) if whole else field.at_least
    else:
        limits["ge"] = -(2**53) if whole else -LARGEST
    if field.at_most is not None:
        limits["le"] = int(field.at_most) if whole else field.at_most
    else:
        limits["le"] = 2**53 if whole else LARGEST
    return limits


def _form(slot: Slot, *, answer: bool) -> Any:  # noqa: ANN401, PLR0911  a typing form made at run time, one return a shape
    field = slot.field
    if slot.shape == "quantity":
        assert field.kind is not None
        return _described(quantity_type(field.kind), field.about)
    if slot.shape == "amount":
        return _described(amount_type() if answer else goods_type(), field.about)
    if slot.shape == "number":
        return _described(float, field.about, **_limits(slot))
    if slot.shape == "count":
        return _described(int, field.about, **_limits(slot))
    if slot.shape == "flag":
        return _described(bool, field.about)
    if slot.shape == "word":
        return _described(_literal(slot.words), field.about)
    if slot.shape == "decimal":
        return _described(str, field.about, pattern=DECIMAL_TEXT, max_length=20)
    if slot.shape == "text":
        return _described(str, field.about, max_length=10_000 if answer else LONGEST_TEXT, pattern=None if answer else PLAIN_TEXT)
    fewest = 0 if answer else int(field.at_least or 0)
    most = 1_000_000 if answer else field.most_items
    if slot.shape == "numbers":
        return _described(list[Annotated[float, Meta(ge=-LARGEST, le=LARGEST)]], field.about, min_length=fewest, max_length=most)
    if slot.shape == "texts":
        longest = 10_000 if answer else LONGEST_TEXT
        item = Annotated[str, Meta(max_length=longest, pattern=None if answer else PLAIN_TEXT)]
        return _described(list[item], field.about, min_length=fewest, max_length=most)
    assert slot.record is not None
    nested = answer_type(slot.record) if answer else request_type(slot.record)
    if slot.shape == "record":
        return _described(nested, field.about)
    return _described(list[nested], field.about, min_length=fewest, max_length=most)  # type: ignore[valid-type]


def _optional(form: Any) -> Any:  # noqa: ANN401  a typing form made at run time
    return form | UnsetType


def _doc(record: type) -> str:
    return (record.__doc__ or record.__name__).split("\n\n")[0].replace("\n", " ").strip()


def request_fields(record: type) -> list[tuple[str, Any] | tuple[str, Any, Any]]:
    """Return the fields of a record's request struct, required ones first as structs want them."""
    required: list[tuple[str, Any] | tuple[str, Any, Any]] = []
    optional: list[tuple[str, Any] | tuple[str, Any, Any]] = []
    named: set[str] = set()
    for slot in slots_of(record):
        taken, field = slot.field.taken, slot.field
        if taken is not None and taken.by not in named:
            named.add(taken.by)
            about = f"Row of the catalogue table `{taken.table}` that supplies what is not given here."
            form = _described(str, about, min_length=1, max_length=80, pattern=PLAIN_TEXT)
            if slot.name == taken.by and not slot.optional and not field.default:
                required.append((taken.by, form))
            else:
                optional.append((taken.by, _optional(form), UNSET))
        if taken is not None and slot.name == taken.by:
            continue
        form = _form(slot, answer=False)
        empty_allowed = slot.shape in ("records", "numbers", "texts") and not field.at_least
        if slot.optional or field.default or taken is not None or empty_allowed:
            optional.append((slot.name, _optional(form), UNSET))
        else:
            required.append((slot.name, form))
    return required + optional


def request_type(record: type) -> StructType:
    """Return the struct in which a caller sends a record."""
    return _request_type(record)


@cache
def _request_type(record: type) -> StructType:
    return msgspec.defstruct(
        record.__name__,
        request_fields(record),
        namespace={"__doc__": _doc(record)},
        module=__name__,
        frozen=True,
        kw_only=True,
        forbid_unknown_fields=True,
        gc=False,  # a tree of plain values: nothing in it can point back
    )


def _records_in(record: type, found: set[type]) -> set[type]:
    if record not in found:
        found.add(record)
        for slot in slots_of(record):
            if slot.record is not None:
                _records_in(slot.record, found)
    return found


@cache
def _records_sent() -> frozenset[type]:
    found: set[type] = set()
    for rule in RESOURCES:
        _records_in(rule.input, found)
    return frozenset(found)


def answer_type(record: type) -> StructType:
    """Return the struct in which a record is answered; `...Used` where the same record can also be sent."""
    return _answer_type(record)


@cache
def _answer_type(record: type) -> StructType:
    fields: list[tuple[str, Any] | tuple[str, Any, Any]] = []
    for slot in slots_of(record):
        form = _form(slot, answer=True)
        fields.append((slot.name, _optional(form), UNSET) if slot.optional else (slot.name, form))
    return msgspec.defstruct(
        f"{record.__name__}Used" if record in _records_sent() else record.__name__,
        fields,
        namespace={"__doc__": _doc(record)},
        module=__name__,
        frozen=True,
        kw_only=True,
        gc=False,
    )
