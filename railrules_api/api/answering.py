"""From a rule's result to the wire: SI to the units asked for. The inverse of `binding`, for answers only."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Any

from msgspec import UNSET

from railrules_api.api.wire import EACH, LARGEST, amount_type, answer_type, quantity_type
from railrules_api.domain.errors import Refusal, RefusedError
from railrules_api.domain.fields import Slot, slots_of
from railrules_api.units import UNITS, System, Unit, answer_unit

if TYPE_CHECKING:
    from collections.abc import Callable

    import msgspec

    from railrules_api.domain.amounts import Amount
    from railrules_api.domain.kinds import Kind


def _told(value: float) -> float:
    """Return a number as it is told: 0.0 for -0.0, as a minus sign on nothing reads as a mistake.

    Raises:
        RefusedError: it is beyond what the document promises of every number, or none.
    """
    if not -LARGEST <= value <= LARGEST:
        raise RefusedError(Refusal((), "these values together give a figure too large to be told"))
    return value + 0.0


def _told_all(values: tuple[float, ...]) -> list[float]:
    return [_told(value) for value in values]


@cache
def _unit_of(kind: Kind, system: System, preferred: tuple[str, str] | None) -> Unit:
    return answer_unit(kind, system, preferred)


def amount_answer(amount: Amount, system: System, preferred: tuple[str, str] | None = None) -> msgspec.Struct:
    """Return an amount in the units of a system; a count stays a count."""
    if amount.kind is None:
        return amount_type()(_told(amount.value), EACH)
    if preferred is not None and preferred[0] not in UNITS[amount.kind]:
        preferred = None  # a field may hold amounts of several kinds, and prefer units for one of them
    unit = _unit_of(amount.kind, system, preferred or amount.answer)
    return amount_type()(_told(unit.from_si(amount.value)), unit.code)


def _amounts(system: System, preferred: tuple[str, str] | None) -> Callable[[Amount], msgspec.Struct]:
    """Return `amount_answer` for one system and one field, which looks a unit up once."""
    struct = amount_type()
    units: dict[tuple[Kind | None, tuple[str, str] | None], tuple[float, float, str]] = {}

    def write(amount: Amount) -> msgspec.Struct:
        known = units.get((amount.kind, amount.answer))
        if known is None:
            if amount.kind is None:
                known = (0.0, 1.0, EACH)
            else:
                suits = None if preferred is not None and preferred[0] not in UNITS[amount.kind] else preferred
                unit = _unit_of(amount.kind, system, suits or amount.answer)
                known = (unit.offset, unit.factor, unit.code)
            units[amount.kind, amount.answer] = known
        offset, factor, code = known
        value = (amount.value - offset) / factor
        return struct(value + 0.0 if -LARGEST <= value <= LARGEST else _told(value), code)

    return write


class _Source:
    """The text of a record's writer, and the objects that its names stand for.

    A result has thousands of records, so what is the same for every one of a type is worked out once and written down: field
    after field, units as numbers. Every name in the text is made here; nothing of a request ever gets into it.
    """

    def __init__(self, system: System) -> None:
        """Begin with what every writer needs."""
        self.system = system
        self.names: dict[str, Any] = {"UNSET": UNSET, "told": _told}

    def named(self, value: object) -> str:
        """Return a name for an object."""
        name = f"k{len(self.names)}"
        self.names[name] = value
        return name

    def told(self, number: str) -> str:
        """Write a number: in place where it is in range, which all but the odd one are."""
        return f"(told(n) if not -{LARGEST!r} <= (n := {number}) <= {LARGEST!r} else n + 0.0)"

    def quantity(self, slot: Slot, value: str) -> str:
        """Write a quantity in the unit of the answer."""
        assert slot.field.kind is not None
        unit = answer_unit(slot.field.kind, self.system, slot.field.answer)
        number = f"({value} - {unit.offset!r}) / {unit.factor!r}"
        return f"{self.named(quantity_type(slot.field.kind))}({self.told(number)}, {unit.code!r})"

    def written(self, slot: Slot, value: str) -> str:
        """Write a value that is there, by its shape."""
        if slot.shape == "quantity":
            return self.quantity(slot, value)
        if slot.shape == "number":
            return self.told(value)
        if slot.shape == "amount":
            return f"{self.named(_amounts(self.system, slot.field.answer))}({value})"
        if slot.shape in ("record", "records"):
            assert slot.record is not None
            one = self.named(writer_of(slot.record, self.system))
            return f"{one}({value})" if slot.shape == "record" else f"[{one}(item) for item in {value}]"
        simple = {"numbers": f"{self.named(_told_all)}({value})", "texts": f"list({value})", "decimal": f"str({value})"}
        return simple.get(slot.shape, value)


def writer_of(record: type, system: System) -> Callable[[Any], msgspec.Struct]:
    """Return the function that turns a result record into its answer struct in a unit system."""
    return _writer_of(record, system)


@cache
def _writer_of(record: type, system: System) -> Callable[[Any], msgspec.Struct]:
    source = _Source(system)
    struct = source.named(answer_type(record))
    lines: list[str] = []
    fields: list[str] = []
    for number, slot in enumerate(slots_of(record)):
        value = f"v{number}"
        lines.append(f"    {value} = result.{slot.name}")
        fields.append(f"{slot.name}=UNSET if {value} is None else {source.written(slot, value)}")
    text = "\n".join(["def write(result):", *lines, f"    return {struct}({', '.join(fields)})"])
    exec(text, source.names)  # noqa: S102  see `_Source`
    write: Callable[[Any], msgspec.Struct] = source.names["write"]
    return write
