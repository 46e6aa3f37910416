"""What the service answers from: the registry of rules, the sources, the rulebooks."""

from __future__ import annotations

import hashlib
from typing import TYPE_CHECKING, Annotated, Any

import msgspec
from msgspec import UNSET, Meta, UnsetType

from railrules_api.api.catalogue_pages import CACHE
from railrules_api.api.envelope import CautionNote, Citation
from railrules_api.api.operations import Asked, Reply
from railrules_api.api.problems import ProblemError
from railrules_api.domain.fields import Slot, slots_of
from railrules_api.rules.registry import ALL, BY_ID
from railrules_api.units import si_unit

if TYPE_CHECKING:
    from railrules_api.api.service import Service
    from railrules_api.catalogue.rulebook import Rulebook
    from railrules_api.rules.model import Rule


class RuleField(msgspec.Struct, frozen=True, omit_defaults=True):
    """An input or output of a rule."""

    name: Annotated[str, Meta(max_length=80, description="Its name.")]
    about: Annotated[str, Meta(max_length=1000, description="What it means.")]
    shape: Annotated[
        str, Meta(max_length=20, description="quantity, number, count, flag, word, text, record or a list of these.")
    ]
    kind: Annotated[str, Meta(max_length=40, description="Kind of quantity.")] | UnsetType = UNSET
    symbol: Annotated[str, Meta(max_length=40, description="Its letter in the formulas.")] | UnsetType = UNSET
    si_unit: Annotated[str, Meta(max_length=40, description="Coherent SI unit of the limits.")] | UnsetType = UNSET
    above: Annotated[float, Meta(description="Exclusive lower limit.")] | UnsetType = UNSET
    at_least: Annotated[float, Meta(description="Lower limit.")] | UnsetType = UNSET
    at_most: Annotated[float, Meta(description="Upper limit.")] | UnsetType = UNSET
    default: Annotated[str, Meta(max_length=80, description="Rulebook entry that stands in for it.")] | UnsetType = UNSET
    taken_from: (
        Annotated[str, Meta(max_length=200, description="Catalogue table and property that can supply it.")] | UnsetType
    ) = UNSET
    record: Annotated[str, Meta(max_length=80, description="Schema of a nested record.")] | UnsetType = UNSET


class RuleFormula(msgspec.Struct, frozen=True):
    """An equation of a rule."""

    gives: Annotated[str, Meta(max_length=80, description="Output that it gives.")]
    text: Annotated[str, Meta(max_length=2000, description="Right-hand side in the fields' symbols.")]
    exact: Annotated[bool, Meta(description="It can be evaluated as it stands; otherwise it is told in words.")]
    when: Annotated[str, Meta(max_length=160, description="Input and word that it holds for; empty where it always holds.")]


class RuleRecord(msgspec.Struct, frozen=True):
    """A rule as the registry has it."""

    id: Annotated[str, Meta(max_length=80, description="Stable id.")]
    title: Annotated[str, Meta(max_length=200, description="What it answers.")]
    summary: Annotated[str, Meta(max_length=4000, description="What is computed, and on which assumptions.")]
    resource: Annotated[str, Meta(max_length=200, description="Path that answers it.")]
    formulas: Annotated[list[RuleFormula], Meta(max_length=100, description="Equations, in order.")]
    inputs: Annotated[list[RuleField], Meta(max_length=200, description="What it needs.")]
    outputs: Annotated[list[RuleField], Meta(max_length=200, description="What it answers.")]
    cautions: Annotated[list[CautionNote], Meta(max_length=100, description="What a user must know.")]
    cites: Annotated[list[Citation], Meta(max_length=100, description="Where it comes from.")]
    since: Annotated[str, Meta(max_length=20, description="Service version that introduced it.")]


class RuleList(msgspec.Struct, frozen=True):
    """The registry of rules."""

    version: Annotated[str, Meta(max_length=80, description="Version of the catalogue that the sources stand in.")]
    rules: Annotated[list[RuleRecord], Meta(max_length=1000, description="Every rule.")]


class SourceRecord(msgspec.Struct, frozen=True, omit_defaults=True):
    """A cited document."""

    id: Annotated[str, Meta(max_length=80, description="Id.")]
    title: Annotated[str, Meta(max_length=400, description="Title.")]
    publisher: Annotated[str, Meta(max_length=400, description="Publisher.")]
    kind: Annotated[str, Meta(max_length=40, description="regulation, government, standard, handbook, ...")]
    year: Annotated[int, Meta(ge=1700, le=2200, description="Year.")] | UnsetType = UNSET
    address: Annotated[str, Meta(max_length=400, description="Where a copy was read.")] | UnsetType = UNSET
    note: Annotated[str, Meta(max_length=4000, description="What to mind about it.")] | UnsetType = UNSET


class SourceList(msgspec.Struct, frozen=True):
    """Every cited document."""

    version: Annotated[str, Meta(max_length=80, description="Version of the catalogue.")]
    sources: Annotated[list[SourceRecord], Meta(max_length=1000, description="Documents.")]


class RulebookDefault(msgspec.Struct, frozen=True):
    """A default of a rulebook."""

    id: Annotated[str, Meta(max_length=80, description="Id.")]
    about: Annotated[str, Meta(max_length=1000, description="What it stands in for.")]
    value: Annotated[str, Meta(max_length=400, description="The value with its unit, as printed.")]
    rulebook: Annotated[str, Meta(max_length=80, description="Rulebook that set it.")]
    cite: Annotated[Citation, Meta(description="Where it comes from.")]


class RulebookRecord(msgspec.Struct, frozen=True):
    """A rulebook: defaults under one name."""

    id: Annotated[str, Meta(max_length=80, description="Id.")]
    edition: Annotated[str, Meta(max_length=80, description="Edition.")]
    title: Annotated[str, Meta(max_length=200, description="Title.")]
    defaults: Annotated[list[RulebookDefault], Meta(max_length=1000, description="Its entries, its own and inherited ones.")]


class RulebookList(msgspec.Struct, frozen=True):
    """The rulebooks of this service."""

    house: Annotated[str, Meta(max_length=80, description="Rulebook in force when a request names none.")]
    rulebooks: Annotated[list[RulebookRecord], Meta(max_length=100, description="Rulebooks.")]


# ---------------------------------------------------------------- building


def _field(slot: Slot) -> RuleField:
    field = slot.field

    def given(value: Any) -> Any:  # noqa: ANN401  any field's value
        return UNSET if value in (None, "") else value

    taken = field.taken
    return RuleField(
        name=slot.name,
        about=field.about,
        shape=slot.shape,
        kind=given(field.kind and field.kind.value),
        symbol=given(field.symbol),
        si_unit=given(field.kind and si_unit(field.kind).label),
        above=given(field.above),
        at_least=given(field.at_least),
        at_most=given(field.at_most),
        default=given(field.default),
        taken_from=given(taken and f"{taken.table} {taken.column}".strip()),
        record=given(slot.record and slot.record.__name__),
    )


def rule_record(rule: Rule[Any, Any], service: Service) -> RuleRecord:
    """Return a rule for the wire."""
    return RuleRecord(
        id=rule.id,
        title=rule.title,
        summary=rule.summary,
        resource=f"/v1/{rule.path}",
        formulas=[
            RuleFormula(formula.gives, formula.text, formula.exact, " ".join(formula.when or ())) for formula in rule.formulas
        ],
        inputs=[_field(slot) for slot in slots_of(rule.input)],
        outputs=[_field(slot) for slot in slots_of(rule.output)],
        cautions=[
            CautionNote(item.code, item.text, service.citation(item.cite.source, item.cite.where, item.cite.status))
            for item in rule.cautions
        ],
        cites=[service.citation(cite.source, cite.where, cite.status) for cite in rule.cites],
        since=rule.since,
    )


def _rulebook(book: Rulebook, service: Service) -> RulebookRecord:
    return RulebookRecord(
        book.id,
        book.edition,
        book.title,
        [
            RulebookDefault(
                item.id,
                item.about,
                f"{item.printed} {item.unit}".strip(),
                item.rulebook,
                service.citation_of(item.provenance),
            )
            for item in book.defaults.values()
        ],
    )


# ---------------------------------------------------------------- replies


def _reply(answer: msgspec.Struct) -> Reply:
    body = msgspec.json.encode(answer)
    return Reply(body, etag=f'"{hashlib.sha256(body).hexdigest()[:24]}"', cache=CACHE)


def rules_reply(service: Service, _asked: Asked) -> Reply:
    """Answer the registry."""
    return _reply(RuleList(service.catalogue.version, [rule_record(rule, service) for rule in ALL]))


def rule_reply(service: Service, asked: Asked) -> Reply:
    """Answer one rule."""
    rule = BY_ID.get(asked.path["id"])
    if rule is None:
        raise ProblemError(404, f"there is no rule {asked.path['id'][:80]!r}; GET /v1/rules lists them")
    return _reply(rule_record(rule, service))


def sources_reply(service: Service, _asked: Asked) -> Reply:
    """Answer the sources."""
    return _reply(
        SourceList(
            service.catalogue.version,
            [
                SourceRecord(
                    item.id, item.title, item.publisher, item.kind, item.year or UNSET, item.address or UNSET, item.note or UNSET
                )
                for item in service.catalogue.sources.values()
            ],
        )
    )


def rulebooks_reply(service: Service, _asked: Asked) -> Reply:
    """Answer the rulebooks."""
    return _reply(RulebookList(service.house.id, [_rulebook(book, service) for book in service.rulebooks.values()]))
