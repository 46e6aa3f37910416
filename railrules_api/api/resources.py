"""Every operation of the API, in the order of the document."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Annotated, Any, Literal

import msgspec
from msgspec import Meta

from railrules_api.api import bulk, csv_form, drawn, idempotency, profile_pages, progress, sheet_form
from railrules_api.api import catalogue_pages as pages
from railrules_api.api import registry_pages as registry
from railrules_api.api.calculations import calculation
from railrules_api.api.envelope import Versions
from railrules_api.api.operations import Asked, Lines, Operation, Parameter, Reply
from railrules_api.api.replying import answer, answer_csv, answer_on_paper
from railrules_api.api.wire import PLAIN_TEXT
from railrules_api.rules.registry import RESOURCES
from railrules_api.rules.sections import properties
from railrules_api.rules.takeoff import takeoff

if TYPE_CHECKING:
    from collections.abc import Callable

    from railrules_api.api.calculations import Calculation
    from railrules_api.api.service import Service
    from railrules_api.domain.progress import Tell

TAGS = {
    "catalogue": "Rail sections, track materials, patterns, rules and sources: what is known, each value with its place.",
    "quantities": "What a relay takes, leaves and hauls: one resource a rule.",
    "thermal": "Force, laying, breaks, restraint and stability of welded rail.",
    "strength": "Bending under wheels and in haulage.",
    "regulation": "Track held against the sections of the federal track safety standards.",
    "sections": "Properties of whole and worn rails from their true geometry.",
    "takeoffs": "A whole relay job: every quantity, order, check and price in one answer.",
    "service": "The service itself.",
}
TABLES = {  # path -> (table, singular, plural) for the summaries
    "rail-sections": ("rail section", "rail sections"),
    "joint-bars": ("joint bar", "joint bars"),
    "tie-plates": ("tie plate", "tie plates"),
    "spikes": ("spike", "spikes"),
    "tie-plugs": ("tie plug", "tie plugs"),
    "rail-anchors": ("rail anchor", "rail anchors"),
    "plate-pins": ("plate pin", "plate pins"),
    "track-bolts": ("track bolt", "track bolts"),
    "turnouts": ("turnout", "turnouts"),
    "preservatives": ("preservative", "preservatives"),
    "spike-patterns": ("spike pattern", "spike patterns"),
    "anchor-patterns": ("anchor pattern", "anchor patterns"),
    "feature-kinds": ("kind of feature", "kinds of feature"),
    "joint-gap-tables": ("joint gap table", "joint gap tables"),
}
_UNITS = Parameter(
    "units", "query", "Units of the numbers; the source's own when left out.", {"type": "string", "enum": ["us", "si"]}
)
_ID = Parameter(
    "id",
    "path",
    "Id of the row.",
    {"type": "string", "minLength": 1, "maxLength": 80, "pattern": r"^[A-Za-z0-9][A-Za-z0-9._-]*$"},
)


def _range(name: str, about: str) -> Parameter:
    return Parameter(name, "query", about, {"type": "number", "minimum": 0, "maximum": 1_000_000})


_SECTION_FILTERS = (
    Parameter(
        "standard", "query", "Part of the name of the standard, in any case.",
        {"type": "string", "minLength": 1, "maxLength": 80, "pattern": PLAIN_TEXT}, "AREMA",
    ),
    _range("mass_from", "Smallest mass per length: lb/yd, or kg/m with units=si."),
    _range("mass_to", "Largest mass per length: lb/yd, or kg/m with units=si."),
    _range("base_from", "Smallest base width: in, or mm with units=si."),
    _range("base_to", "Largest base width: in, or mm with units=si."),
)  # fmt: skip
_VERSION = Parameter(
    "version",
    "query",
    "Version of the catalogue, as its lists and every answer name it. The answer under such an address never changes and may be "
    "kept for ever; another version than the one in force is not found.",
    {"type": "string", "minLength": 1, "maxLength": 80, "pattern": r"^[A-Za-z0-9.+ _-]+$"},
)
_FIRST_ROWS = {"rail-sections": "136RE", "spike-patterns": "", "anchor-patterns": ""}


def _camel(words: str) -> str:
    first, *rest = words.replace("-", " ").split()
    return first + "".join(word.title() for word in rest)


def _leads_to(operation: str, pointer: str, about: str) -> dict[str, Any]:
    """Return the link from a list to its first item."""
    name = operation[:1].upper() + operation[1:]
    return {name: {"operationId": operation, "parameters": {"id": f"$response.body#{pointer}"}, "description": about}}


def _table_operations(table: str, single: str, several: str) -> tuple[Operation, Operation]:
    def list_rows(service: Service, asked: Asked) -> Reply:
        return pages.table_reply(service, service.catalogue.tables[table], asked)

    def one_row(service: Service, asked: Asked) -> Reply:
        return pages.row_reply(service, service.catalogue.tables[table], asked)

    filters = _SECTION_FILTERS if table == "rail-sections" else ()
    return (
        Operation(
            method="GET", path=f"/v1/{table}", id=_camel(f"list {table}"), tag="catalogue",
            summary=f"List {several}",
            description=f"Every row of the table of {several}, each value as its source prints it and with its place.",
            answer=pages.CatalogueTable, handler=list_rows, parameters=(*filters, _UNITS, _VERSION),
            statuses=(404, 422) if filters else (404,),
            links=_leads_to(_camel(f"get {single}"), "/rows/0/id", f"The first {single} of the list."),
        ),
        Operation(
            method="GET", path=f"/v1/{table}/{{id}}", id=_camel(f"get {single}"), tag="catalogue",
            summary=f"Get one {single}",
            description=f"One {single} with each value's own provenance. An unknown id is answered with near matches.",
            answer=pages.CatalogueRow, handler=one_row, parameters=(_ID, _UNITS, _VERSION), statuses=(404,),
        ),
    )  # fmt: skip


def _profile_operation() -> Operation:
    return Operation(
        method="GET", path="/v1/rail-sections/{id}/profile", id="getRailSectionProfile", tag="sections",
        summary="Draw a rail section",
        description=(
            "The section from its true geometry: as a dimensioned drawing (SVG, to scale on A4 and Letter, light and dark), as "
            "points with their chord error (JSON), or as lines and arcs for drawing programs (DXF R12, millimetres; only where "
            "the service has the library for it). Wear is laid over the new section. Lengths in the query are in, or mm with "
            "units=si; when `units` is left out, what the section's own drawing is in."
        ),
        answer=profile_pages.SectionProfile, handler=profile_pages.profile_reply, media_types=profile_pages.MEDIA_TYPES,
        parameters=(_ID, _UNITS, *profile_pages.PARAMETERS, _VERSION), statuses=(404,),
    )  # fmt: skip


def _calculation_operation(resource: Calculation) -> Operation:
    rule = resource.rule

    def handle(service: Service, asked: Asked) -> Reply:
        drawn.sheet_of(asked)  # refused whatever form is asked for
        if asked.accept == csv_form.MEDIA_TYPE:
            return Reply(answer_csv(resource, asked.body, service), media_type=csv_form.MEDIA_TYPE)
        if asked.accept == drawn.MEDIA_TYPE:
            return drawn.draw(resource, asked, service)
        if asked.accept in sheet_form.HEADERS:
            body = answer_on_paper(resource, asked.body, service, asked.accept)
            return Reply(body, media_type=asked.accept, headers=sheet_form.HEADERS[asked.accept])
        return Reply(answer(resource, asked.body, service))

    def begin(service: Service, asked: Asked) -> Callable[[Tell], bytes]:
        drawn.sheet_of(asked)
        return progress.work_of(resource, asked.body, service)

    if rule is takeoff.RULE:
        return Operation(
            method="POST",
            path=resource.path,
            id="createTakeoff",
            tag="takeoffs",
            summary=rule.title,
            description=rule.summary,
            request=resource.request,
            answer=resource.answer,
            handler=handle,
            media_types=(
                "application/json",
                csv_form.MEDIA_TYPE,
                drawn.MEDIA_TYPE,
                *sheet_form.SHEETS,
                sheet_form.XLSX,
                progress.MEDIA_TYPE,
            ),
            slow_forms=(*sheet_form.SHEETS, sheet_form.XLSX, progress.MEDIA_TYPE),
            lines=Lines(progress.MEDIA_TYPE, progress.line_type(resource), progress.EXAMPLE, begin),
            parameters=(*drawn.PARAMETERS, idempotency.PARAMETER),
            statuses=(404,),
        )
    return Operation(
        method="POST", path=resource.path, id=_camel("calculate " + rule.path.rpartition("/")[2]),
        tag=rule.id.partition(".")[0],
        summary=rule.title, description=rule.summary, request=resource.request, answer=resource.answer, handler=handle,
        media_types=("application/json", *((drawn.MEDIA_TYPE,) if drawn.is_drawn(resource) else ()), *sheet_form.SHEETS),
        slow_forms=sheet_form.SHEETS, parameters=(idempotency.PARAMETER,),
        slow=rule is properties.RULE,  # torsion takes tenths of a second
    )  # fmt: skip


class Health(msgspec.Struct, frozen=True):
    """The service is up, and what it answers with."""

    status: Annotated[Literal["up"], Meta(description="State of the service.")]
    versions: Annotated[Versions, Meta(description="What answers.")]


def _health(service: Service, _asked: Asked) -> Reply:
    return Reply(msgspec.json.encode(Health("up", service.versions(service.house))))


@cache
def calculations() -> tuple[Calculation, ...]:
    """Return every rule as a resource."""
    return tuple(calculation(rule) for rule in RESOURCES)


def calculation_of(rule_id: str) -> Calculation:
    """Return the resource of a rule.

    Raises:
        KeyError: there is no such rule.
    """
    return {resource.rule.id: resource for resource in calculations()}[rule_id]


@cache
def operations() -> tuple[Operation, ...]:
    """Return every operation, in the order of the document."""
    table: list[Operation] = []
    for name, (single, several) in TABLES.items():
        table += _table_operations(name, single, several)
        if name == "rail-sections":
            table.append(_profile_operation())
    rule_id = Parameter(
        "id", "path", "Id of the rule.", {"type": "string", "minLength": 1, "maxLength": 80, "pattern": r"^[a-z][a-z0-9.-]*$"}
    )
    table += [
        Operation(
            method="GET", path="/v1/rules", id="listRules", tag="catalogue", summary="List the rules",
            description="The registry: formulas, inputs with units and limits, cautions and sources of every rule.",
            answer=registry.RuleList, handler=registry.rules_reply,
            links=_leads_to("getRule", "/rules/0/id", "The first rule of the list."),
        ),
        Operation(
            method="GET", path="/v1/rules/{id}", id="getRule", tag="catalogue", summary="Get one rule",
            description="One record of the registry.", answer=registry.RuleRecord, handler=registry.rule_reply,
            parameters=(rule_id,), statuses=(404,),
        ),
        Operation(
            method="GET", path="/v1/sources", id="listSources", tag="catalogue", summary="List the sources",
            description="Every document that a value or a rule cites.", answer=registry.SourceList,
            handler=registry.sources_reply,
        ),
        Operation(
            method="GET", path="/v1/rulebooks", id="listRulebooks", tag="catalogue", summary="List the rulebooks",
            description="The defaults that stand in where a request leaves something out, with their sources.",
            answer=registry.RulebookList, handler=registry.rulebooks_reply,
        ),
    ]  # fmt: skip
    table += [_calculation_operation(resource) for resource in calculations()]
    table.append(bulk.operation(calculation_of(takeoff.RULE.id)))
    table += [
        Operation(
            method="GET", path=f"/health/{name}", id=f"health{name.title()}", tag="service", summary=about,
            description="Answers 200 while it is so.", answer=Health, handler=_health, probe=True,
        )
        for name, about in (("live", "The process runs"), ("ready", "Requests can be answered"))
    ]  # fmt: skip
    return tuple(table)
