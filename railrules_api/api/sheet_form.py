"""Answers on paper: from a bound request to the calculation sheet, as HTML or PDF, and to the workbook."""

from __future__ import annotations

import hashlib
from typing import TYPE_CHECKING, Annotated, Any, Literal, NamedTuple

import msgspec
from msgspec import UNSET, Meta, UnsetType

from railrules_api.api.problems import ProblemError, refused
from railrules_api.api.wire import PLAIN_TEXT
from railrules_api.catalogue.model import Row
from railrules_api.domain.errors import Refusal
from railrules_api.sheets import html, pdf, workbook
from railrules_api.sheets.model import Block, Material, Place, StoodIn
from railrules_api.sheets.sheet import build
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from railrules_api.api.binding import Bound
    from railrules_api.api.service import Service
    from railrules_api.catalogue.model import Provenance, Value
    from railrules_api.catalogue.rulebook import Default
    from railrules_api.rules.model import Rule, Working
    from railrules_api.rules.ordering import Order

HTML = "text/html"
PDF = "application/pdf"
XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
SHEETS = (HTML, PDF)
HEADERS = {
    HTML: {"Content-Security-Policy": html.policy()},
    PDF: {"Content-Disposition": 'inline; filename="railrules.pdf"'},
    XLSX: {"Content-Disposition": 'attachment; filename="railrules.xlsx"'},
}
MOST_SEGMENTS = {HTML: 200, XLSX: 200, PDF: 8}
"""A sheet or a workbook is for people: a job of more segments is answered as JSON or CSV, or split. Setting pages takes a
quarter to a third of a second each, and an answer has twenty seconds: the demo's segments, with all that a job can ask for, fill
48 pages in 12 to 16 s and 530 MB, sixteen such 96 pages in 31 s and 720 MB. HTML has all of it. The summary of two hundred
fills nine pages in 6 s."""
MOST_SUMMARISED = 200

# as long as the widest letters still leave the title block on its page
_LONG, _NAME, _DATE = (Meta(max_length=most, pattern=PLAIN_TEXT) for most in (80, 60, 24))


class Document(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """What stands in the title block of a sheet; what is left out is left blank there, to be filled in by hand."""

    project: Annotated[str, _LONG, Meta(description="Project.")] | UnsetType = UNSET
    location: Annotated[str, _LONG, Meta(description="Place, line, mile posts.")] | UnsetType = UNSET
    prepared: Annotated[str, _NAME, Meta(description="Who prepared it.")] | UnsetType = UNSET
    checked: Annotated[str, _NAME, Meta(description="Who checked it.")] | UnsetType = UNSET
    date: Annotated[str, _DATE, Meta(description="Date, as it is to be printed.")] | UnsetType = UNSET
    paper: (
        Annotated[Literal["letter", "A4"], Meta(description="Paper of a PDF; left out: Letter with US units, A4 with SI.")]
        | UnsetType
    ) = UNSET
    extent: (
        Annotated[
            Literal["whole", "summary"],
            Meta(
                description="How much of the sheet: all of it; or the checks, what is ordered and recovered, money and cautions, "
                "without layout, inputs and working. Left out: whole."
            ),
        ]
        | UnsetType
    ) = UNSET


def _block(bound: Bound) -> Block:
    given: Any = bound.struct
    document: Document | UnsetType = given.document
    usual: Literal["letter", "A4"] = "letter" if bound.system == "us" else "A4"
    if document is UNSET:
        return Block(paper=usual)
    written = {
        name: "" if (value := getattr(document, name)) is UNSET else value
        for name in ("project", "location", "prepared", "checked", "date")
    }
    return Block(
        paper=usual if document.paper is UNSET else document.paper,
        extent="whole" if document.extent is UNSET else document.extent,
        **written,
    )


def keys_of(document: Document | UnsetType) -> int:
    """Return how many object members a document took in the request, itself included."""
    if document is UNSET:
        return 0
    return 1 + sum(getattr(document, name) is not UNSET for name in document.__struct_fields__)


def digest(struct: msgspec.Struct) -> str:
    """Return the SHA-256 of a request without its title block and without `explain`: what decides the numbers."""
    plain = msgspec.structs.replace(struct, document=UNSET, explain=UNSET)
    return hashlib.sha256(msgspec.json.encode(plain, order="sorted")).hexdigest()


def _printed(value: Default | Value | Row) -> str:
    """Return a value as its source prints it, with the label of its unit."""
    if isinstance(value, Row):
        return value.title
    unit = UNITS[value.kind][value.unit].label if value.kind is not None and value.unit else value.unit
    return f"{value.printed} {unit}".strip()


def _place(provenance: Provenance, service: Service) -> Place:
    return Place(service.catalogue.sources[provenance.source].title, provenance.where, provenance.status)


def _stood_in(bound: Bound, service: Service) -> Iterator[StoodIn]:
    counts = {"D": 0, "C": 0}
    for (origin, name), entry in bound.binding.noted.items():
        letter = "D" if origin.startswith("rulebook ") else "C"
        counts[letter] += 1
        yield StoodIn(
            number=f"{letter}{counts[letter]}",
            origin=origin,
            name=name,
            about=entry.about,
            value=_printed(entry.value),
            place=_place(entry.value.provenance, service),
            used_at=tuple(entry.used_at),
            note=getattr(entry.value, "notes", ""),
        )


class Answered(NamedTuple):
    """What a rule found, every use of a rule on the way, and the totals ordered."""

    found: Any
    workings: tuple[Working, ...]
    orders: Iterable[Order]


def material(rule: Rule[Any, Any], bound: Bound, answered: Answered, service: Service) -> Material:
    """Gather what a sheet or a workbook is made from."""
    found, workings, orders = answered
    used = {working.rule.id: working.rule for working in workings}.values()
    cautions = {caution.code: caution for one in (*used, rule) for caution in one.cautions}
    versions = service.versions(bound.rulebook)
    return Material(
        rule=rule,
        given=bound.given,
        found=found,
        workings=workings,
        orders=tuple(orders),
        terms=service.terms(bound.rulebook),
        system=bound.system,
        block=_block(bound),
        versions=(versions.service, versions.catalogue, versions.rulebook),
        digest=digest(bound.struct),
        stood_in=tuple(_stood_in(bound, service)),
        cautions=tuple(
            (caution.text, Place(service.catalogue.sources[caution.cite.source].title, caution.cite.where, caution.cite.status))
            for caution in cautions.values()
        ),
        title_of=lambda source: service.catalogue.sources[source].title,
    )


def refuse_long(bound: Bound, media_type: str) -> None:
    """Refuse a job too long for paper.

    Raises:
        ProblemError: 422 naming the segments.
    """
    segments = getattr(bound.given, "segments", ())
    brief = media_type == PDF and _block(bound).extent == "summary"
    most = MOST_SUMMARISED if brief else MOST_SEGMENTS[media_type]
    if len(segments) > most:
        shorter = "its summary (`document.extent`), all of it as text/html, " if media_type == PDF and not brief else ""
        reason = f"too many segments for {media_type}, which takes {most}; ask for {shorter}JSON or CSV, or split the job"
        raise refused((Refusal(("segments",), reason),), bound.struct)


def encode(gathered: Material, media_type: str) -> bytes:
    """Return the sheet or the workbook in a form.

    Raises:
        ProblemError: 406, PDF cannot be made here.
    """
    if media_type == XLSX:
        return workbook.encode(gathered)
    sheet = build(gathered)
    if media_type == HTML:
        return html.page(sheet).encode()
    try:
        return pdf.encode(sheet)
    except pdf.NoPdfError as error:
        detail = (
            "this server makes no PDF: install `railrules[pdf]` and the system's Pango; text/html is the same sheet, and a "
            "browser prints it"
        )
        raise ProblemError(406, detail) from error
