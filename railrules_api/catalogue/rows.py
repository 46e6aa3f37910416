"""From the entries of a file to the rows of a table."""

from __future__ import annotations

import dataclasses
from types import MappingProxyType
from typing import TYPE_CHECKING

from railrules_api.catalogue.model import Column, Provenance, Row, Value
from railrules_api.catalogue.reading import (
    BadEntryError,
    cell_of,
    id_of,
    number_of,
    provenance_of,
    refuse_unknown,
    text_of,
    texts_of,
    to_si,
)
from railrules_api.catalogue.records import quantity_of, record_of, table_of

if TYPE_CHECKING:
    from collections.abc import Callable, Container, Mapping

    from railrules_api.catalogue.tables import Plan

_OF_EVERY_ROW = ("id", "title", "also", "notes")
_OF_PROVENANCE = ("source", "where", "status", "also_in")


def _value(column: Column, number: float, printed: str, unit: str, provenance: Provenance) -> Value:
    """Return a value in SI; every number of a table lies above zero, and a count is whole.

    Raises:
        BadEntryError: it does not, is not, or its unit measures something else.
    """
    if number <= 0.0:
        msg = f"{column.name} is {printed}, must lie above zero"
        raise BadEntryError(msg)
    if column.shape == "count" and number != int(number):
        msg = f"{column.name} is {printed}, must be a whole number"
        raise BadEntryError(msg)
    if column.kind is None:
        if unit:
            msg = f"{column.name} has no unit, {unit!r} is given"
            raise BadEntryError(msg)
        return Value(si=number, printed=printed, unit="", kind=None, provenance=provenance)
    try:
        si = to_si(number, unit, column.kind)
    except BadEntryError as error:
        msg = f"{column.name}: {error}"
        raise BadEntryError(msg) from error
    return Value(si=si, printed=printed, unit=unit, kind=column.kind, provenance=provenance)


def _texts(entry: Mapping[str, object], columns: Mapping[str, Column]) -> dict[str, tuple[str, ...]]:
    """Return the words of a row by column, those that are there."""
    found: dict[str, tuple[str, ...]] = {}
    for name, column in columns.items():
        if column.shape == "texts":
            found[name] = texts_of(entry, name)
        elif column.shape == "text":
            text = text_of(entry, name, required=False)
            found[name] = (text,) if text else ()
    return {name: words for name, words in found.items() if words}


def _refuse_missing(columns: Mapping[str, Column], found: Container[str]) -> None:
    missing = [name for name, column in columns.items() if column.required and name not in found]
    if missing:
        msg = f"{', '.join(missing)} is missing"
        raise BadEntryError(msg)


def _quotients(columns: Mapping[str, Column], values: Mapping[str, Value]) -> dict[str, Value]:
    """Return the values that a row lacks and two others give."""
    found: dict[str, Value] = {}
    for column in columns.values():
        if column.name in values or column.quotient is None or not all(name in values for name in column.quotient):
            continue
        upper, lower = (values[name] for name in column.quotient)
        where = f"{' over '.join(column.quotient)}, both from: {upper.where}"
        found[column.name] = Value(
            si=upper.si / lower.si,
            printed=f"{number_of(upper.printed)[0] / lower.si:.4g}",
            unit=upper.unit,
            kind=column.kind,
            provenance=Provenance(
                source=upper.source,
                where=where,
                status="from-memory" if "from-memory" in (upper.status, lower.status) else "derived",
            ),
        )
    return found


def _row(entry: Mapping[str, object], columns: Mapping[str, Column], values: dict[str, Value], provenance: Provenance) -> Row:
    texts = _texts(entry, columns)
    values |= _quotients(columns, values)
    _refuse_missing(columns, values.keys() | texts.keys())
    return Row(
        id=id_of(entry),
        title=text_of(entry, "title"),
        provenance=provenance,
        values=MappingProxyType(values),
        texts=MappingProxyType(texts),
        also=texts_of(entry, "also"),
        notes=text_of(entry, "notes", required=False),
    )


def toml_row(entry: Mapping[str, object], plan: Plan, sources: Container[str]) -> Row:
    """Read one `[[row]]` block: a row of values, or one with a record under `record`.

    A value may carry source, where and status of its own; else those of the row hold.

    Raises:
        BadEntryError: whatever is wrong with it.
    """
    own = provenance_of(entry, sources)
    columns = {column.name: column for column in plan.columns}
    refuse_unknown(entry, {*_OF_EVERY_ROW, *_OF_PROVENANCE, *columns, *(("record",) if plan.record else ())})
    if plan.record is not None:
        return Row(
            id=id_of(entry),
            title=text_of(entry, "title"),
            provenance=own,
            record=record_of(table_of(entry.get("record"), "record"), plan.record),
            also=texts_of(entry, "also"),
            notes=text_of(entry, "notes", required=False),
        )
    values: dict[str, Value] = {}
    for name, column in columns.items():
        raw = entry.get(name)
        if raw is None or column.shape in ("text", "texts"):
            continue
        provenance = own
        if isinstance(raw, dict):
            refuse_unknown(raw, {"value", "unit", *_OF_PROVENANCE})
            if raw.keys() & set(_OF_PROVENANCE):
                provenance = provenance_of(raw, sources)
        if column.kind is not None:
            quantity_of(raw, name, column.kind)  # refuses what is not value and unit
        number, printed = number_of(raw["value"] if isinstance(raw, dict) else raw)
        unit = text_of(raw, "unit", required=False) if isinstance(raw, dict) else ""
        values[name] = _value(column, number, printed, unit, provenance)
    return _row(entry, columns, values, own)


class CsvReader:
    """Reads the rows of a CSV file with the help of the TOML file beside it.

    The TOML file gives the units of the columns, one set or several (a row's `units` cell names its own), and either the
    rows have source, where and status cells, or a `provenance` cell `column=code; ...` whose codes it explains.
    """

    def __init__(self, beside: Mapping[str, object], plan: Plan, sources: Container[str]) -> None:
        """Read what stands beside the rows.

        Raises:
            BadEntryError: it is wrong.
        """
        refuse_unknown(beside, {"title", "about", "units", "codes", "coherence", "exception"})
        self._columns = {column.name: column for column in plan.columns}
        self._sources = sources
        self._units = {
            name: dict(table_of(units, f"units.{name}")) for name, units in table_of(beside.get("units", {}), "units").items()
        }
        self._codes: dict[str, Provenance] = {}
        for code, entry in table_of(beside.get("codes", {}), "codes").items():
            self._codes[code] = provenance_of(table_of(entry, f"codes.{code}"), sources)
        self._known = {*_OF_EVERY_ROW, *self._columns, "units", *(("provenance",) if self._codes else _OF_PROVENANCE)}

    def _provenance(self, entry: Mapping[str, str], present: list[str]) -> Callable[[str], Provenance]:
        if not self._codes:
            own = provenance_of(entry, self._sources)
            return lambda _: own
        found: dict[str, Provenance] = {}
        for part in texts_of(entry, "provenance"):
            name, _, codes = part.partition("=")
            if name not in present:
                msg = f"provenance of {name!r}, which has no value"
                raise BadEntryError(msg)
            parts = codes.split("+")
            unknown = [code for code in parts if code not in self._codes]
            if unknown:
                msg = f"provenance code {unknown[0]!r} of {name} is not explained"
                raise BadEntryError(msg)
            first = self._codes[parts[0]]
            also = tuple(self._codes[code].source for code in parts[1:])
            found[name] = dataclasses.replace(first, also=also) if also else first
        without = [name for name in present if name not in found]
        if without:
            msg = f"{', '.join(without)} has no provenance"
            raise BadEntryError(msg)
        return found.__getitem__

    def row(self, entry: Mapping[str, str]) -> Row:
        """Read one row.

        Raises:
            BadEntryError: whatever is wrong with it.
        """
        refuse_unknown(entry, self._known)
        name = entry.get("units", "") or "printed"
        units = self._units.get(name)
        if units is None:
            msg = f"unit set {name!r} is not explained"
            raise BadEntryError(msg)
        numbers = [n for n, column in self._columns.items() if column.shape not in ("text", "texts") and entry.get(n)]
        provenance = self._provenance(entry, numbers)
        values: dict[str, Value] = {}
        for column in map(self._columns.__getitem__, numbers):
            digits, unit = cell_of(entry[column.name], str(units.get(column.name, "")))
            number, printed = number_of(digits)
            values[column.name] = _value(column, number, printed, unit, provenance(column.name))
        if not numbers:
            msg = "has no value at all"
            raise BadEntryError(msg)
        return _row(entry, self._columns, values, provenance(numbers[0]))
