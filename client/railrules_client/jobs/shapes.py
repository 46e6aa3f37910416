"""What a request's structs say of their fields, as far as a file has to know it: the one description that the client has."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from typing import Literal, TypeAlias, cast, get_args, get_origin

from msgspec import Struct, UnsetType
from msgspec.structs import fields

from railrules_client._quantities import Quantity

Shape: TypeAlias = Literal["quantity", "number", "count", "flag", "word", "text", "texts", "record", "records"]
_SIMPLE: dict[object, Shape] = {float: "number", int: "count", bool: "flag", str: "text"}


@dataclass(frozen=True, slots=True)
class Slot:
    """A field of a request.

    Attributes:
        name: as it stands in JSON.
        shape: how its value is written.
        record: struct of a nested record, or of each of several.
        words: the words it takes.
        codes: codes of the units that measure it.
        kind: the kind of quantity, in words.
    """

    name: str
    shape: Shape
    record: type[Struct] | None = None
    words: tuple[str, ...] = ()
    codes: tuple[str, ...] = ()
    kind: str = ""


def _slot(name: str, kind: object) -> Slot:
    arms = [arm for arm in get_args(kind) if arm is not UnsetType]
    if len(arms) == 1 and UnsetType in get_args(kind):
        return _slot(name, arms[0])
    if get_origin(kind) is Literal:
        return Slot(name, "word", words=cast("tuple[str, ...]", get_args(kind)))
    if get_origin(kind) is Sequence:
        inner = get_args(kind)[0]
        return Slot(name, "texts") if inner is str else Slot(name, "records", cast("type[Struct]", inner))
    if isinstance(kind, type) and issubclass(kind, Quantity):
        measure = cast("type[Quantity[str]]", kind)
        words = re.sub(r"(?<=[a-z])(?=[A-Z])", " ", measure.__name__).lower()
        return Slot(name, "quantity", codes=measure.codes, kind=words)
    if isinstance(kind, type) and issubclass(kind, Struct):
        return Slot(name, "record", kind)
    return Slot(name, _SIMPLE[kind])


@cache
def slots_of(record: type[Struct]) -> tuple[Slot, ...]:
    """Return the fields of a request's struct, in order.

    Raises:
        KeyError: a field has a form that no job has.
    """
    return tuple(_slot(item.encode_name, item.type) for item in fields(record))
