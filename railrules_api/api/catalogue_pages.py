"""Catalogue resources: tables and rows as they are printed, each value with its source."""

from __future__ import annotations

import hashlib
from types import MappingProxyType
from typing import TYPE_CHECKING, Annotated, Any

import msgspec
from msgspec import UNSET, Meta, UnsetType

from railrules_api.api.answering import amount_answer, writer_of
from railrules_api.api.envelope import Citation
from railrules_api.api.operations import Asked, Reply
from railrules_api.api.problems import ProblemError
from railrules_api.api.wire import LINES, amount_type, answer_type
from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import AnchorPattern, FeatureRule, SpikePattern
from railrules_api.units import UNITS, System

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_api.api.service import Service
    from railrules_api.catalogue.model import Provenance, Row, Table, Value

Word = Annotated[str, Meta(max_length=200)]
Sentence = Annotated[str, Meta(max_length=10_000)]
CACHE = "public, max-age=3600, stale-while-revalidate=86400"
_DRAWN = ("in", "mm")
FOR_EVER = "public, max-age=31536000, immutable"
_NO_HEADERS: Mapping[str, str] = MappingProxyType({})


class PrintedValue(msgspec.Struct, frozen=True):
    """A value of a catalogue row: as its source prints it, in the units asked for, and where it comes from."""

    printed: Annotated[str, Meta(max_length=200, description="The value with its unit, as printed.")]
    value: Annotated[amount_type(), Meta(description="The same in the units asked for.")]  # type: ignore[valid-type]
    cite: Annotated[Citation, Meta(description="Where it comes from.")]


class CatalogueRow(msgspec.Struct, frozen=True, omit_defaults=True):
    """A row of a catalogue table. A value that is not known is left out, never zero."""

    id: Annotated[str, Meta(max_length=80, description="The name used in requests.")]
    title: Annotated[str, Meta(max_length=400, description="The name for people.")]
    values: Annotated[dict[str, PrintedValue], Meta(max_length=100, description="Numbers by property.")]
    texts: Annotated[
        dict[str, Annotated[list[Word], Meta(max_length=100)]], Meta(max_length=100, description="Words by property.")
    ]
    also: Annotated[list[Word], Meta(max_length=50, description="Further names by which it goes.")]
    notes: Annotated[str, Meta(max_length=4000, pattern=LINES, description="What a user of the row should know.")]
    cite: Annotated[Citation, Meta(description="Where the row as a whole comes from.")]
    spike_pattern: Annotated[answer_type(SpikePattern), Meta(description="The pattern.")] | UnsetType = UNSET  # type: ignore[valid-type]
    anchor_pattern: Annotated[answer_type(AnchorPattern), Meta(description="The pattern.")] | UnsetType = UNSET  # type: ignore[valid-type]
    feature_rule: Annotated[answer_type(FeatureRule), Meta(description="What the feature asks for.")] | UnsetType = UNSET  # type: ignore[valid-type]


class CatalogueTable(msgspec.Struct, frozen=True):
    """The rows of a catalogue table that were asked for."""

    table: Annotated[str, Meta(max_length=80, description="Id of the table.")]
    title: Annotated[str, Meta(max_length=200, description="Its title.")]
    about: Annotated[str, Meta(max_length=4000, pattern=LINES, description="What its rows are.")]
    version: Annotated[str, Meta(max_length=80, description="Version of the catalogue.")]
    rows: Annotated[list[CatalogueRow], Meta(max_length=10_000, description="Rows, in the table's order.")]


# ---------------------------------------------------------------- building


def _place(provenance: Provenance, service: Service) -> Citation:
    return service.citation(provenance.source, provenance.where, provenance.status)


def _answered_in(value: Value, system: System | None) -> tuple[str, str] | None:
    """Return the units (US, SI) in which a value is told; None for the usual ones of its kind."""
    if system is None:
        return value.unit, value.unit
    # what is drawn in inches or millimetres is read in them too, not in feet and metres
    return _DRAWN if value.unit in (*_DRAWN, "cm") else None


def _printed(value: Value, service: Service, system: System | None) -> PrintedValue:
    number: Any
    if value.kind is None:
        number, printed = amount_answer(Amount(value.si), "si"), value.printed
    else:
        label = UNITS[value.kind][value.unit].label
        printed = f"{value.printed} {label}"
        number = amount_answer(Amount(value.si, value.kind), system or "us", _answered_in(value, system))
        # as it would be printed: 6 in or 152.4 mm, and not the 5.999999999999999 of the way through metres
        number = type(number)(float(f"{number.value:.15g}"), number.unit)
    return PrintedValue(printed, number, _place(value.provenance, service))


def row_record(row: Row, service: Service, system: System | None) -> CatalogueRow:
    """Return a row for the wire; numbers in the source's own units when no system is asked for."""
    patterns: dict[str, Any] = {}
    for record, name in ((SpikePattern, "spike_pattern"), (AnchorPattern, "anchor_pattern"), (FeatureRule, "feature_rule")):
        if isinstance(row.record, record):
            patterns[name] = writer_of(record, system or "us")(row.record)
    return CatalogueRow(
        id=row.id,
        title=row.title,
        values={name: _printed(value, service, system) for name, value in row.values.items()},
        texts={name: list(words) for name, words in row.texts.items()},
        also=list(row.also),
        notes=row.notes,
        cite=_place(row.provenance, service),
        **patterns,
    )


# ---------------------------------------------------------------- replies


def catalogue_reply(
    service: Service, asked: Asked, body: bytes, media_type: str = "application/json", headers: Mapping[str, str] = _NO_HEADERS
) -> Reply:
    """Answer with what the catalogue holds: for ever under an address that names the catalogue's version.

    Raises:
        ProblemError: the version asked for is not the one in force (404).
    """
    current, version = service.catalogue.version, asked.query.get("version")
    # the version has a plus sign, which unescaped in a query means a space
    if version is not None and version.replace(" ", "+") != current:
        raise ProblemError(404, f"version {version[:80]!r} of the catalogue is not here; the one in force is {current}")
    etag = f'"{hashlib.sha256(body).hexdigest()[:24]}"'
    return Reply(body, media_type, etag=etag, cache=CACHE if version is None else FOR_EVER, headers=dict(headers))


def system_asked(asked: Asked) -> System | None:
    """Return the system of units that the query names; None where it names none.

    Raises:
        ProblemError: it names another word (400).
    """
    units = asked.query.get("units")
    if units is None:
        return None
    if units == "us":
        return "us"
    if units == "si":
        return "si"
    raise ProblemError(400, f"units={units!r}: the units are us or si"[:300])


def number_asked(asked: Asked, name: str, unit: str) -> float | None:
    """Return a number of the query; None where it has none of that name.

    Raises:
        ProblemError: it is no number from 0 to a million (400).
    """
    text = asked.query.get(name)
    if text is None:
        return None
    try:
        value = float(text)
    except ValueError:
        value = -1.0
    if not 0.0 <= value <= 1e6:  # noqa: PLR2004  refuses NaN and infinities too
        raise ProblemError(400, f"{name}={text!r}: a number of {unit} from 0 to 1000000 is wanted"[:300])
    return value


def _bound(asked: Asked, name: str, kind: Kind) -> float | None:
    """Return a query bound in SI, in the units that `units` names (US when it is left out)."""
    codes = {Kind.MASS_PER_LENGTH: ("lb_per_yd", "kg_per_m"), Kind.LENGTH: _DRAWN}[kind]
    code = codes[1] if system_asked(asked) == "si" else codes[0]
    value = number_asked(asked, name, code)
    return None if value is None else UNITS[kind][code].to_si(value)


def _range(asked: Asked, name: str, kind: Kind) -> tuple[float | None, float | None]:
    """Return a range of the query in SI.

    Raises:
        ProblemError: it ends below its beginning (422).
    """
    lowest, highest = _bound(asked, f"{name}_from", kind), _bound(asked, f"{name}_to", kind)
    if lowest is not None and highest is not None and lowest > highest:
        raise ProblemError(
            422, f"{name}_from={asked.query[f'{name}_from']!r} lies above {name}_to={asked.query[f'{name}_to']!r}"[:300]
        )
    return lowest, highest


def _within(row: Row, column: str, lowest: float | None, highest: float | None) -> bool:
    value = row.values.get(column)
    if lowest is None and highest is None:
        return True
    return value is not None and (lowest is None or value.si >= lowest) and (highest is None or value.si <= highest)


def table_reply(service: Service, table: Table, asked: Asked) -> Reply:
    """Answer a table, filtered where the query says so."""
    system = system_asked(asked)
    rows = list(table.rows.values())
    if table.id == "rail-sections":
        standard = asked.query.get("standard", "").casefold()
        mass, base = _range(asked, "mass", Kind.MASS_PER_LENGTH), _range(asked, "base", Kind.LENGTH)
        rows = [
            row
            for row in rows
            if (not standard or any(standard in word.casefold() for word in row.texts.get("standard", ())))
            and _within(row, "mass_per_length", *mass)
            and _within(row, "base_width", *base)
        ]
    answer = CatalogueTable(
        table.id, table.title, table.about, service.catalogue.version, [row_record(row, service, system) for row in rows]
    )
    return catalogue_reply(service, asked, msgspec.json.encode(answer))


def row_reply(service: Service, table: Table, asked: Asked) -> Reply:
    """Answer one row, or say which ids are near."""
    name = asked.path["id"]
    row = table.rows.get(name)
    if row is None:
        near = service.catalogue.near(table.id, name[:200])
        hint = f"; near: {', '.join(near)}" if near else ""
        raise ProblemError(404, f"{table.title} has no row {name[:80]!r}{hint}")
    return catalogue_reply(service, asked, msgspec.json.encode(row_record(row, service, system_asked(asked))))
