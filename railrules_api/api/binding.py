"""From a decoded request to a rule's input: units to SI, defaults and catalogue rows filled in and noted, limits checked.

All refusals of a request are collected, so that one answer names everything that is wrong with it.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from functools import cache
from typing import TYPE_CHECKING, Any, NamedTuple

from msgspec import UNSET

from railrules_api.api.wire import GOODS
from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import Path, Refusal
from railrules_api.domain.fields import Slot, Taken, slots_of
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Callable

    import msgspec

    from railrules_api.catalogue.catalogue import Catalogue
    from railrules_api.catalogue.model import Row, Value
    from railrules_api.catalogue.rulebook import Default, Rulebook
    from railrules_api.units import System


FIRST_USES = 10
"""Of how many places that a value of ours was used at the answer tells; the rest are counted."""


@dataclass(slots=True)
class Noted:
    """A value the caller did not send: where it came from, the first places where it was used, and how many there are."""

    about: str
    value: Default | Value | Row
    origin: str
    used_at: list[Path] = field(default_factory=list)
    uses: int = 0


class _Bound(NamedTuple):
    """A nested record as bound once, with what that left in the binding besides: the same for an equal one elsewhere."""

    value: Any
    keys: int
    uses: list[tuple[Noted, Path]]


@dataclass(slots=True)
class Binding:
    """What one request is bound with, and what came of it.

    Attributes:
        catalogue: supplies rows.
        rulebook: supplies defaults.
        refusals: everything wrong with the request so far.
        noted: defaults and catalogue values used, each once.
        keys: number of object members that the decoded request has, to tell duplicate keys.
        known: nested records bound so far: the segments of a job mostly have their old and new track in common.
        uses: while a nested record is bound, the uses noted in it.
    """

    catalogue: Catalogue
    rulebook: Rulebook
    refusals: list[Refusal] = field(default_factory=list)
    noted: dict[tuple[str, str], Noted] = field(default_factory=dict)
    keys: int = 0
    known: dict[msgspec.Struct, _Bound] = field(default_factory=dict)
    uses: list[tuple[Noted, Path]] | None = None

    def refuse(self, path: Path, reason: str, **details: Any) -> None:  # noqa: ANN401  passed to the record as they are
        """Note a refusal and go on."""
        self.refusals.append(Refusal(path, reason, **details))

    def note(self, key: tuple[str, str], value: Default | Value | Row, path: Path, about: str) -> None:
        """Note that a value of ours was used at a place."""
        entry = self.noted.get(key)
        if entry is None:
            entry = self.noted[key] = Noted(about, value, key[0])
        self.use(entry, path)

    def use(self, entry: Noted, path: Path) -> None:
        """Note one more use of a value of ours."""
        entry.uses += 1
        if entry.uses <= FIRST_USES:
            entry.used_at.append(path)
        if self.uses is not None:
            self.uses.append((entry, path))


_MISSING = object()


def _default(slot: Slot, binding: Binding, path: Path) -> Any:  # noqa: ANN401  a value of any shape
    default = binding.rulebook.defaults[slot.field.default]
    binding.note((f"rulebook {binding.rulebook.id}", slot.field.default), default, path, default.about)
    if not isinstance(default.si, str) and slot.field.refuses(default.si):
        lowest = slot.field.above if slot.field.above is not None else slot.field.at_least
        reason = f"the rulebook entry {default.id} is outside the allowed range"
        binding.refuse(path, reason, value=default.si, minimum=lowest, maximum=slot.field.at_most)
    return default.si


def _row(taken: Taken, struct: Any, slot: Slot, binding: Binding, path: Path) -> Row | None:  # noqa: ANN401
    """Find the catalogue row a field is taken from: the one the caller names, else the rulebook's."""
    name = getattr(struct, taken.by)
    at = (*path, taken.by)
    if name is UNSET:
        if not slot.field.default:
            return None
        name = _default(slot, binding, at)
    row = binding.catalogue.row(taken.table, name, binding.rulebook)
    if row is None and not any(refusal.path == at for refusal in binding.refusals):
        near = binding.catalogue.near(taken.table, name)
        binding.refuse(at, f"no such row in {taken.table}", value=name, allowed=near)
    return row


def _taken(slot: Slot, struct: Any, binding: Binding, path: Path) -> Any:  # noqa: ANN401
    taken = slot.field.taken
    assert taken is not None
    row = _row(taken, struct, slot, binding, path)
    at = (*path, slot.name)
    if row is None:
        if slot.optional:
            return None
        if not any(refusal.path == (*path, taken.by) for refusal in binding.refusals):
            binding.refuse(at, f"missing; give it, or a row of {taken.table} as `{taken.by}`")
        return _MISSING
    key = (f"catalogue {taken.table}/{row.id}", taken.column or taken.by)
    if not taken.column:
        binding.note(key, row, at, slot.field.about)
        return row.record
    if taken.column == "id":
        return row.id
    value = row.values.get(taken.column)
    if value is None:
        if slot.optional:
            return None
        binding.refuse(at, f"missing; {taken.table} row {row.id} has no {taken.column}, so give it")
        return _MISSING
    binding.note(key, value, at, slot.field.about)
    return value.si


def _refuse_outside(slot: Slot, value: float, binding: Binding, path: Path) -> None:
    described = slot.field
    lowest = described.above if described.above is not None else described.at_least
    reason = _limit_reason(described.above is not None)
    binding.refuse((*path, slot.name), reason, value=value, minimum=lowest, maximum=described.at_most)


def _limit_reason(exclusive: bool) -> str:  # noqa: FBT001  private, one caller
    return "outside the allowed range" + ("; the minimum itself is not allowed" if exclusive else "")


def _amount(given: Any, binding: Binding, path: Path) -> Amount:  # noqa: ANN401, ARG001  a binder's signature
    binding.keys += 2
    for kind in GOODS:
        if given.unit in UNITS[kind]:
            return Amount(UNITS[kind][given.unit].to_si(given.value), kind)
    return Amount(given.value)


def _decimal(given: Any, binding: Binding, path: Path) -> Decimal:  # noqa: ANN401, ARG001  a binder's signature
    return Decimal(given)


def _tuple(given: Any, binding: Binding, path: Path) -> tuple[Any, ...]:  # noqa: ANN401, ARG001  a binder's signature
    return tuple(given)


def _refuse_mixed(given: Any, record: type, binding: Binding, path: Path) -> None:  # noqa: ANN401
    """Refuse the first record of a list that has a quantity in another unit than those before it."""
    names = [slot.name for slot in slots_of(record) if slot.shape == "quantity"]
    first: str | None = None
    for position, item in enumerate(given):
        for name in names:
            unit = getattr(getattr(item, name), "unit", None)
            first = first or unit
            if unit not in (None, first):
                reason = f"the units are mixed: point {position + 1} is given in `{unit}`, those before it in `{first}`"
                binding.refuse((*path, position, name), reason)
                return


def _many(record: type, *, one_unit: bool) -> Callable[[Any, Binding, Path], Any]:
    def bind(given: Any, binding: Binding, path: Path) -> tuple[Any, ...]:  # noqa: ANN401
        one = binder_of(record)
        if one_unit:
            _refuse_mixed(given, record, binding, path)
        return tuple(one(item, binding, (*path, position)) for position, item in enumerate(given))

    return bind


def _nested(record: type) -> Callable[[Any, Binding, Path], Any]:
    """Return the binder of a nested record, which binds equal ones once: their values are the same, and immutable."""
    one = binder_of(record)
    if len(slots_of(record)) < _WORTH_KEEPING:
        return one

    def bind(given: Any, binding: Binding, path: Path) -> Any:  # noqa: ANN401
        try:
            found = binding.known.get(given)
        except TypeError:  # it has a list in it
            return one(given, binding, path)
        if found is not None:
            binding.keys += found.keys
            for entry, below in found.uses:
                binding.use(entry, (*path, *below))
            return found.value
        outer, refused, keys = binding.uses, len(binding.refusals), binding.keys
        binding.uses = []
        value = one(given, binding, path)
        uses, binding.uses = binding.uses, outer
        if outer is not None:
            outer.extend(uses)
        if len(binding.refusals) == refused and len(binding.known) < _MOST_KEPT:
            depth = len(path)
            binding.known[given] = _Bound(value, binding.keys - keys, [(entry, at[depth:]) for entry, at in uses])
        return value

    return bind


_WORTH_KEEPING = 4
"""Records of fewer fields are bound as quickly as they are found."""
_MOST_KEPT = 64
"""So many different ones are kept: a job that has more of them has little in common, and no crafted one can fill the table."""


class _Source:
    """The text of a record's binder, and the objects that its names stand for.

    A request has thousands of records, so field after field is written down once. Every name in the text is made here; nothing of
    a request ever gets into it.
    """

    def __init__(self) -> None:
        """Begin with what every binder needs."""
        self.names: dict[str, Any] = {"UNSET": UNSET, "default": _default, "taken": _taken, "outside": _refuse_outside}

    def named(self, value: object) -> str:
        """Return a name for an object."""
        name = f"k{len(self.names)}"
        self.names[name] = value
        return name

    def given(self, slot: Slot, value: str) -> list[str]:
        """Write how a value that is there is bound, by its shape; the name of the value becomes that of what it is bound to."""
        if slot.shape == "quantity":
            return self._quantity(slot, value)
        if slot.shape == "number":  # 0.0 for -0.0: the two are equal, so nothing may hang on which of them was sent
            return [f"{value} = {value} + 0.0"]
        binder = _slot_binder(slot)
        return [] if binder is None else [f"{value} = {self.named(binder)}({value}, binding, (*path, {slot.name!r}))"]

    def _quantity(self, slot: Slot, value: str) -> list[str]:
        described = slot.field
        assert described.kind is not None
        factors = self.named({code: (unit.factor, unit.offset) for code, unit in UNITS[described.kind].items()})
        text = [f"factor, offset = {factors}[{value}.unit]", f"{value} = {value}.value * factor + offset", "keys += 2"]
        within = [
            *([] if described.above is None else [f"{value} > {described.above!r}"]),
            *([] if described.at_least is None else [f"{value} >= {described.at_least!r}"]),
            *([] if described.at_most is None else [f"{value} <= {described.at_most!r}"]),
        ]
        if within:
            text.append(f"if not ({' and '.join(within)}): outside({self.named(slot)}, {value}, binding, path)")
        return text

    def left_out(self, slot: Slot) -> str:
        """Write what stands in for a value that is not there."""
        if slot.field.taken is not None:
            return f"taken({self.named(slot)}, struct, binding, path)"
        if slot.field.default:
            return f"default({self.named(slot)}, binding, (*path, {slot.name!r}))"
        return "None" if slot.optional else "()"


def _slot_binder(slot: Slot) -> Callable[[Any, Binding, Path], Any] | None:
    """Return what binds a value of a shape; None where the value stays as it is."""
    if slot.shape == "record":
        assert slot.record is not None
        return _nested(slot.record)
    if slot.shape == "records":
        assert slot.record is not None
        return _many(slot.record, one_unit=slot.field.one_unit)
    simple = {"amount": _amount, "decimal": _decimal, "numbers": _tuple, "texts": _tuple}
    return simple.get(slot.shape)


def binder_of(record: type) -> Callable[[Any, Binding, Path], Any]:
    """Return the function that binds a record's request struct; it gives None where a refusal left it without a value."""
    return _binder_of(record)


@cache
def _binder_of(record: type) -> Callable[[Any, Binding, Path], Any]:
    source, slots = _Source(), slots_of(record)
    rows = dict.fromkeys(slot.field.taken.by for slot in slots if slot.field.taken is not None)
    lines = ["refused = len(binding.refusals)", "keys = 0", *(f"keys += struct.{by} is not UNSET" for by in rows)]
    for number, slot in enumerate(slots):
        value = f"v{number}"
        if slot.field.taken is not None and slot.field.taken.by == slot.name:
            lines.append(f"{value} = {source.left_out(slot)}")
            continue
        lines += [f"{value} = struct.{slot.name}", f"if {value} is UNSET:", f"    {value} = {source.left_out(slot)}", "else:"]
        lines += ["    keys += 1", *(f"    {line}" for line in source.given(slot, value))]
    values = ", ".join(f"{slot.name}=v{number}" for number, slot in enumerate(slots))
    lines += ["binding.keys += keys", f"return {source.named(record)}({values}) if len(binding.refusals) == refused else None"]
    text = "\n".join(["def bind(struct, binding, path):", *(f"    {line}" for line in lines)])
    exec(text, source.names)  # noqa: S102  see `_Source`
    bind: Callable[[Any, Binding, Path], Any] = source.names["bind"]
    return bind


@dataclass(slots=True)
class Bound:
    """A request bound to its rule's input."""

    struct: msgspec.Struct
    given: Any
    system: System
    explain: bool
    rulebook: Rulebook
    binding: Binding
