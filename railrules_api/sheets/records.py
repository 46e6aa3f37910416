"""Described records as rows: what went in, and what came out."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from railrules_api.domain.amounts import SMALL
from railrules_api.domain.fields import slots_of
from railrules_api.domain.kinds import Kind
from railrules_api.sheets.model import InputGroup, InputRow, Table
from railrules_api.sheets.working import number_of, shown, usual_unit

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from railrules_api.domain.fields import Slot
    from railrules_api.sheets.model import Path, StoodIn
    from railrules_api.units import System

_DIGITS = 8
_GIVEN = "given"
_LONGEST_LIST = 500
_SHORT = 1.0
"""Inputs shorter than this [m] are read in inches or millimetres, where their field names no unit."""
_FLAT = 9
_LONG = 40
"""Characters beyond which a text does not stand among values, but below them."""


def words(name: str) -> str:
    """Return a field's name as words.

    >>> words("begin_closing")
    'Begin closing'
    """
    text = name.replace("_", " ").strip()
    return text[:1].upper() + text[1:]


def meaning(slot: Slot, record: type | None = None) -> str:
    """Return what a field means, without the full stop; with its name where another field of the record means the same."""
    about = slot.field.about.rstrip(".").replace("`", "")
    if record is not None and sum(other.field.about == slot.field.about for other in slots_of(record)) > 1:
        return f"{words(slot.name)}: {about[:1].lower()}{about[1:]}"
    return about


def cell(slot: Slot, value: Any, system: System) -> str | None:  # noqa: ANN401  a field of any record
    """Return a field that is one value as text; None for what is not there and for what has parts of its own."""
    if value is None or slot.shape in ("record", "records"):
        return None
    number = number_of(slot, value)
    if number is not None:
        if number.kind is Kind.LENGTH and number.answer is None and 0.0 < abs(number.value) < _SHORT:
            number = number._replace(answer=SMALL)
        return shown(number, system, significant=_DIGITS).text
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, tuple):
        return ", ".join(f"{item:g}" if isinstance(item, float) else str(item) for item in value) or None
    return str(value) or None


# ---------------------------------------------------------------- what went in


class _Reader:
    """Reads an input record into groups of rows."""

    def __init__(self, stood_in: Sequence[StoodIn], system: System) -> None:
        self.system = system
        self.at = {path: value for value in stood_in for path in value.used_at}

    def origin(self, path: Path, slot: Slot) -> str:
        """Return where a value comes from; a default may name the row that a value is taken from."""
        named: list[str] = []
        taken = slot.field.taken
        if taken is not None and (row := self.at.get((*path, taken.by))) is not None and taken.by != slot.name:
            named.append(f"default {row.number}")
        value = self.at.get((*path, slot.name))
        if value is not None:
            named.append(("default " if value.number.startswith("D") else "catalogue ") + value.number)
        return ", ".join(named) or _GIVEN

    def rows(self, record: Any, path: Path) -> Iterator[InputRow]:  # noqa: ANN401  any described record
        for slot in slots_of(type(record)):
            value = getattr(record, slot.name)
            if slot.shape == "record" and value is not None:
                stood = self.at.get((*path, slot.name))
                if stood is not None:
                    yield InputRow(meaning(slot, type(record)), slot.field.symbol, stood.value, self.origin(path, slot))
                else:
                    yield from self.rows(value, (*path, slot.name))
                continue
            text = cell(slot, value, self.system)
            if text is not None:
                yield InputRow(meaning(slot, type(record)), slot.field.symbol, text, self.origin(path, slot))

    def list_table(self, title: str, items: Sequence[Any], path: Path) -> InputGroup:
        """Return a list of alike parts as one table; what stood in is marked with its number."""
        slots = slots_of(type(items[0]))
        columns: list[tuple[str, list[str], bool]] = []
        for slot in slots:
            texts = []
            for place, item in enumerate(items):
                own, value = (*path, place), getattr(item, slot.name)
                stood = self.at.get((*own, slot.name))
                text = stood.value if slot.shape == "record" and stood else cell(slot, value, self.system) or ""
                origin = self.origin(own, slot)
                texts.append(text if origin == _GIVEN or not text else f"{text} [{origin}]")
            if any(texts):
                numeric = any(number_of(slot, getattr(item, slot.name)) is not None for item in items)
                columns.append((words(slot.name), texts, numeric))
        right = frozenset(place for place, column in enumerate(columns) if column[2])
        rows = tuple(zip(*(column[1] for column in columns), strict=True))
        return InputGroup(title, (), table=Table("", tuple(column[0] for column in columns), rows, right))

    def lists(self, record: Any, path: Path, title: str) -> Iterator[InputGroup]:  # noqa: ANN401  any described record
        """Yield a group for every item of every list in a record and in the records in it."""
        for slot in slots_of(type(record)):
            value = getattr(record, slot.name)
            if slot.shape == "records" and value and _is_flat(slot.record):
                yield self.list_table(f"{title}{words(slot.name)}", value, (*path, slot.name))
            elif slot.shape == "records":
                for place, item in enumerate(value):
                    own = (*path, slot.name, place)
                    heading = f"{title}{words(slot.name)} {place + 1}"
                    yield InputGroup(heading, tuple(self.rows(item, own)))
                    yield from self.lists(item, own, f"{heading}, ")
            elif slot.shape == "record" and value is not None and (*path, slot.name) not in self.at:
                yield from self.lists(value, (*path, slot.name), f"{title}{words(slot.name)}, ")


def _is_flat(record: type | None) -> bool:
    """Tell whether a record is a handful of single values, or of catalogue rows."""
    assert record is not None
    slots = slots_of(record)

    def single(slot: Slot) -> bool:
        taken = slot.field.taken
        return slot.shape not in ("record", "records") or (taken is not None and not taken.column)

    return len(slots) <= _FLAT and all(single(slot) for slot in slots)


def _differing(groups: Sequence[InputGroup]) -> tuple[InputGroup, ...]:
    """Leave out of a group what stands alike in the first of its kind, where that leaves less to read."""
    first: dict[str, InputGroup] = {}
    result: list[InputGroup] = []
    for group in groups:
        kind = group.title.rstrip("0123456789")
        if group.table is not None:
            result.append(group)
            continue
        model = first.setdefault(kind, group)
        rows = tuple(row for row in group.rows if row not in model.rows)
        here = {row.meaning for row in group.rows}
        rows += tuple(InputRow(row.meaning, row.symbol, "none", "") for row in model.rows if row.meaning not in here)
        if group is model or len(rows) > len(group.rows) // 2:
            result.append(group)
        else:
            result.append(InputGroup(group.title, rows, f"All else as {model.title}."))
    return tuple(result)


def inputs(record: Any, stood_in: Sequence[StoodIn], system: System) -> tuple[InputGroup, ...]:  # noqa: ANN401
    """Return everything that went into a rule, with where each value comes from."""
    reader = _Reader(stood_in, system)
    own = InputGroup("", tuple(reader.rows(record, ())))
    return _differing([group for group in (own, *reader.lists(record, (), "")) if group.rows or group.table])


# ---------------------------------------------------------------- what came out


def _heading(slot: Slot, values: Sequence[Any], system: System) -> tuple[str, bool]:
    """Return the heading of a column, with its unit, and whether it holds numbers."""
    numbers = [number for value in values if (number := number_of(slot, value)) is not None]
    units = {None if (unit := usual_unit(number, system)) is None else unit.label for number in numbers}
    label = next(iter(units)) if len(units) == 1 else None
    return words(slot.name) + (f", {label}" if label else ""), bool(numbers)


def _bare(slot: Slot, value: Any, system: System, *, unit_above: bool) -> str:  # noqa: ANN401
    number = number_of(slot, value)
    if number is not None:
        printed = shown(number, system)
        return printed.digits if unit_above else printed.text
    return cell(slot, value, system) or ""


def table(title: str, records: Sequence[Any], system: System, columns: Sequence[str] = ()) -> Table:
    """Return records of one type as a table; columns that are empty throughout are left out."""
    if not records:
        return Table(title, (), ())
    slots = [slot for slot in slots_of(type(records[0])) if slot.shape not in ("record", "records")]
    if columns:
        by_name = {slot.name: slot for slot in slots}
        slots = [by_name[name] for name in columns]
    headings: list[str] = []
    kept: list[list[str]] = []
    right: set[int] = set()
    for slot in slots:
        values = [getattr(record, slot.name) for record in records[:_LONGEST_LIST]]
        heading, numeric = _heading(slot, values, system)
        texts = [_bare(slot, value, system, unit_above=", " in heading) for value in values]
        if any(texts):
            if numeric:
                right.add(len(headings))
            headings.append(heading)
            kept.append(texts)
    left = len(records) - _LONGEST_LIST
    note = f"{left} more rows stand in the JSON answer." if left > 0 else ""
    return Table(title, tuple(headings), tuple(zip(*kept, strict=True)), frozenset(right), note)


def results(record: Any, system: System, skipped: Mapping[str, object] | frozenset[str] = frozenset()) -> Iterator[Table]:  # noqa: ANN401
    """Yield the single values of a result as one table, then each of its lists as a table."""
    rows: list[tuple[str, ...]] = []
    told: list[tuple[str, tuple[str, ...]]] = []
    later: list[tuple[str, Any]] = []
    for slot in slots_of(type(record)):
        value = getattr(record, slot.name)
        if slot.name in skipped or value is None:
            continue
        if slot.shape in ("record", "records"):
            later.append((slot.name, value))
            continue
        number = number_of(slot, value)
        text = shown(number, system).text if number is not None else cell(slot, value, system)
        if text and number is None and (slot.shape == "texts" or len(text) > _LONG):
            told.append((meaning(slot, type(record)), value if isinstance(value, tuple) else (text,)))
        elif text:
            rows.append((meaning(slot, type(record)), slot.field.symbol, text))
    if rows:
        yield Table("", ("Result", "Symbol", "Value"), tuple(rows), frozenset({2}))
    for title, texts in told:
        yield Table(title, ("In words",), tuple((text,) for text in texts))
    for name, value in later:
        if isinstance(value, tuple):
            if value:
                yield table(words(name), value, system)
        else:
            for found in results(value, system, skipped):
                title = f"{words(name)}: {found.title}" if found.title else words(name)
                yield Table(title, found.headings, found.rows, found.right, found.note)
