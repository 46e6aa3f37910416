"""How a rule describes its inputs and outputs: annotations on the fields of frozen dataclasses.

A rule's input is a frozen dataclass of SI floats, counts, words and further dataclasses. Every field carries one `Field`
in `Annotated[...]`. From this single description come the registry record, the wire schema, the conversion of units, the
check of limits, the echo of defaults, the OpenAPI document and the client.

    area: Annotated[float, Field("Cross-section of one rail.", kind=Kind.AREA, symbol="A", above=0, at_most=0.05)]
"""

from __future__ import annotations

import dataclasses
import types
import typing
from dataclasses import dataclass
from decimal import Decimal
from functools import cache
from typing import TYPE_CHECKING, Annotated, Literal, get_args, get_origin, get_type_hints

from railrules_api.domain.amounts import Amount

if TYPE_CHECKING:
    from railrules_api.domain.kinds import Kind


@dataclass(frozen=True, slots=True)
class Taken:
    """A value that a catalogue row can supply in place of the caller.

    Attributes:
        by: name of the wire field that names the row, e.g. `section`.
        table: the catalogue table, e.g. `rail-sections`.
        column: the property of the row; empty for the row itself.
    """

    by: str
    table: str
    column: str = ""


@dataclass(frozen=True, slots=True)
class Field:
    """What a field means and what it may be.

    Attributes:
        about: meaning, one sentence for people.
        kind: kind of quantity; None for a pure number, a count, a word or a nested record.
        symbol: the letter that stands for it in the rule's formula.
        above: exclusive lower limit, SI.
        at_least: inclusive lower limit, SI.
        at_most: inclusive upper limit, SI.
        default: id of the rulebook entry used when the caller leaves it out.
        taken: the catalogue row that can supply it.
        answer: preferred units of an answer (us, si), where the kind's usual ones do not suit.
        most_items: longest list accepted.
        one_unit: quantities of all records of a list must come in one unit: points of a drawing in two are a slip of the pen.
    """

    about: str
    kind: Kind | None = None
    symbol: str = ""
    above: float | None = None
    at_least: float | None = None
    at_most: float | None = None
    default: str = ""
    taken: Taken | None = None
    answer: tuple[str, str] | None = None
    most_items: int = 1000
    one_unit: bool = False

    def refuses(self, value: float) -> bool:
        """Tell whether a number lies outside the limits."""
        return (
            (self.above is not None and value <= self.above)
            or (self.at_least is not None and value < self.at_least)
            or (self.at_most is not None and value > self.at_most)
        )


Shape = Literal[
    "amount", "decimal", "quantity", "number", "count", "flag", "word", "text", "record", "records", "numbers", "texts"
]


@dataclass(frozen=True, slots=True)
class Slot:
    """A field of a described dataclass, taken apart.

    Attributes:
        name: the dataclass field's name.
        field: its description.
        shape: what the edge has to do with it.
        optional: whether None is a proper value, meaning "not there".
        record: the nested dataclass of a record or of each of several records.
        words: the accepted words of a word field.
    """

    name: str
    field: Field
    shape: Shape
    optional: bool
    record: type | None = None
    words: tuple[str, ...] = ()


def _shape(base: object, field: Field) -> tuple[Shape, type | None, tuple[str, ...]]:
    if get_origin(base) is Literal:
        return "word", None, tuple(get_args(base))
    if get_origin(base) is tuple:
        inner = get_args(base)[0]
        if inner is str:
            return "texts", None, ()
        if inner is float:
            return "numbers", None, ()
        return "records", inner, ()
    if isinstance(base, type):
        simple: dict[type, Shape] = {bool: "flag", int: "count", str: "text", Amount: "amount", Decimal: "decimal"}
        if base in simple:
            return simple[base], None, ()
        if base is float:
            return ("quantity" if field.kind is not None else "number"), None, ()
        if dataclasses.is_dataclass(base):
            return "record", base, ()
    msg = f"no wire shape for {base!r}"
    raise TypeError(msg)


def slots_of(record: type) -> tuple[Slot, ...]:
    """Take a described dataclass apart, field by field, in order; a record is taken apart once.

    Raises:
        TypeError: a field has no `Field`, or a type the edge has no shape for.
    """
    return _slots(record)


@cache
def _slots(record: type) -> tuple[Slot, ...]:
    hints = get_type_hints(record, include_extras=True)
    slots: list[Slot] = []
    for item in dataclasses.fields(record):
        hint = hints[item.name]
        if get_origin(hint) is not Annotated:
            msg = f"{record.__name__}.{item.name} is not described"
            raise TypeError(msg)
        base, *extras = get_args(hint)
        field = next(extra for extra in extras if isinstance(extra, Field))
        optional = False
        if get_origin(base) in (typing.Union, types.UnionType):
            base, optional = next(arm for arm in get_args(base) if arm is not type(None)), True
        shape, nested, words = _shape(base, field)
        slots.append(Slot(item.name, field, shape, optional, nested, words))
    return tuple(slots)
