"""The way from bytes to bytes: a request bound to its rule, put to it, and what it found written in the form asked for."""

from __future__ import annotations

import math
from functools import lru_cache
from typing import TYPE_CHECKING, Any, NamedTuple

import msgspec
from msgspec import UNSET, UnsetType

from railrules_api.api import csv_form, sheet_form
from railrules_api.api.answering import writer_of
from railrules_api.api.binding import Binding, Bound, binder_of
from railrules_api.api.decoding import decode, refuse_duplicates
from railrules_api.api.envelope import Assumption, CautionNote, Citation
from railrules_api.api.explaining import steps_of
from railrules_api.api.problems import refused
from railrules_api.catalogue.model import Row, Value
from railrules_api.domain.errors import Refusal, RefusedError
from railrules_api.domain.progress import told
from railrules_api.rules.model import Working
from railrules_api.rules.ordering import AllowanceTerms, ItemTerms, Order, order_lines
from railrules_api.rules.takeoff import takeoff

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from railrules_api.api.calculations import Calculation, RulebookChoice
    from railrules_api.api.service import Service
    from railrules_api.catalogue.rulebook import Default, Rulebook
    from railrules_api.domain.progress import Tell
    from railrules_api.rules.model import Cite, Rule
    from railrules_api.units import System

# ---------------------------------------------------------------- from bytes to a bound input


def _chosen_rulebook(choice: RulebookChoice | UnsetType, service: Service, binding: Binding) -> tuple[Rulebook, int]:
    """Return the rulebook a request asks for and the number of keys that asking took."""
    if choice is UNSET:
        return service.house, 0
    keys = 1
    book = service.house
    if choice.id is not UNSET:
        keys += 1
        found = service.rulebooks.get(choice.id)
        if found is None:
            binding.refuse(("rulebook", "id"), "no such rulebook", value=choice.id, allowed=tuple(service.rulebooks))
        else:
            book = found
    if choice.entries is not UNSET:
        keys += 1
        for position, entry in enumerate(choice.entries):
            keys += 1 + (entry.value is not UNSET) + (entry.unit is not UNSET) + (entry.word is not UNSET)
            value = None if entry.value is UNSET else entry.value
            unit = "" if entry.unit is UNSET else entry.unit
            word = None if entry.word is UNSET else entry.word
            try:
                book = book.replacing(entry.id, number=value, unit=unit, word=word)
            except RefusedError as error:
                binding.refusals.extend(error.below("rulebook", "entries", position).refusals)
    return book, keys


def bind(resource: Calculation, body: bytes, service: Service) -> Bound:
    """Decode a body and bind it to the rule's input.

    Raises:
        ProblemError: the body is not JSON (400), not of the schema, or refused (422).
    """
    struct: Any = decode(body, resource.request)
    binding = Binding(service.catalogue, service.house)
    binding.rulebook, keys = _chosen_rulebook(struct.rulebook, service, binding)
    given = binder_of(resource.rule.input)(struct, binding, ())
    binding.keys += keys + (struct.units is not UNSET) + (struct.explain is not UNSET) + sheet_form.keys_of(struct.document)
    refuse_duplicates(body, binding.keys)
    if binding.refusals:
        raise refused(binding.refusals, struct)
    system: System = "us" if struct.units is UNSET else struct.units
    return Bound(struct, given, system, struct.explain is True, binding.rulebook, binding)


# ---------------------------------------------------------------- from a result to an answer


def _printed(value: Default | Value | Row) -> str:
    if isinstance(value, Row):
        return value.title
    unit = f" {value.unit}" if value.unit else ""
    return f"{value.printed}{unit}"


def assumptions(bound: Bound, service: Service) -> list[Assumption]:
    """Tell the defaults and catalogue values that an answer rests on."""
    return [
        Assumption(
            origin=origin,
            name=name,
            about=entry.about,
            value=_printed(entry.value),
            cite=service.citation_of(entry.value.provenance),
            # steps are names of fields and positions, in which nothing is to be escaped
            used_at=["".join([f"/{step}" for step in path])[:500] for path in entry.used_at],
            uses=entry.uses,
            note=getattr(entry.value, "notes", "") or UNSET,
        )
        for (origin, name), entry in bound.binding.noted.items()
    ]


def cautions(rules: Iterable[Rule[Any, Any]], service: Service) -> list[CautionNote]:
    """Tell the cautions of the rules used, each once."""
    found = {caution.code: caution for rule in rules for caution in rule.cautions}
    return [CautionNote(caution.code, caution.text, _citation(caution.cite, service)) for caution in found.values()]


def sources(rules: Iterable[Rule[Any, Any]], service: Service) -> list[Citation]:
    """Tell the sources of the rules used, each place once."""
    found = dict.fromkeys(cite for rule in rules for cite in rule.cites)
    return [_citation(cite, service) for cite in found]


def _citation(cite: Cite, service: Service) -> Citation:
    return service.citation(cite.source, cite.where, cite.status)


def refuse_infinite(value: object) -> None:
    """Refuse a result that is not a number: the encoder would write it as null.

    Raises:
        RefusedError: something in it is infinite or not a number.
    """
    if isinstance(value, float):
        if not math.isfinite(value):
            raise RefusedError(Refusal((), "these values together give no finite result"))
    elif isinstance(value, tuple):
        for item in value:
            refuse_infinite(item)
    elif hasattr(value, "__dataclass_fields__"):
        for name in value.__dataclass_fields__:
            refuse_infinite(getattr(value, name))


class _Same(NamedTuple):
    """Objects by identity: those of a running service last as long as it does, and to compare their contents would be slow."""

    objects: tuple[Any, ...]

    def __hash__(self) -> int:
        return hash(tuple([id(thing) for thing in self.objects]))

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, _Same) or len(self.objects) != len(other.objects):
            return False
        return all(thing is known for thing, known in zip(self.objects, other.objects, strict=True))


@lru_cache(maxsize=256)
def _said_of(asked: _Same) -> tuple[list[CautionNote], list[Citation]]:
    """Return the cautions and sources of a service's rules."""
    service, *rules = asked.objects
    return cautions(rules, service), sources(rules, service)


@lru_cache(maxsize=64)
def _kept_terms(asked: _Same) -> Mapping[str, ItemTerms]:
    """Return the terms of a service's rulebook."""
    service, rulebook = asked.objects
    found: Mapping[str, ItemTerms] = service.terms(rulebook)
    return found


def _terms(service: Service, rulebook: Rulebook) -> Mapping[str, ItemTerms]:
    """Return how each item is ordered; a rulebook that a request has changed is not worth keeping."""
    if service.rulebooks.get(rulebook.id) is rulebook:
        return _kept_terms(_Same((service, rulebook)))
    return service.terms(rulebook)


def worked(
    resource: Calculation, bound: Bound, service: Service, *, finite: bool = True, tell: Tell | None = None
) -> tuple[Any, tuple[Working, ...]]:
    """Put a bound request to its rule; return what it found and every use of a rule on the way.

    Args:
        resource: the rule as a resource.
        bound: the request.
        service: what the service knows.
        finite: look through everything found for what is not a number; False where the caller does so himself.
        tell: is told how far a takeoff has come.

    Raises:
        ProblemError: the rule refuses the input.
    """
    rule = resource.rule
    try:
        if rule is takeoff.RULE:
            found, workings = takeoff.take_off(bound.given, _terms(service, bound.rulebook), tell)
        else:
            found = rule.evaluate(bound.given)
            workings = (Working(rule, "", bound.given, found),)
        if finite:
            refuse_infinite(found)
    except RefusedError as error:
        raise refused(error.refusals, bound.struct) from error
    except (OverflowError, ZeroDivisionError) as error:
        raise refused((Refusal((), "these values together give no finite result"),), bound.struct) from error
    return found, workings


def answer_struct(resource: Calculation, bound: Bound, service: Service, tell: Tell | None = None) -> msgspec.Struct:
    """Answer a bound request.

    Args:
        resource: the rule as a resource.
        bound: the request.
        service: what the service knows.
        tell: is told how far a takeoff has come; its last stages are `answer` and, with `explain`, `explanation`.

    Raises:
        ProblemError: the rule refuses the input.
    """
    # every number of a takeoff is looked at while it is written, so that its thousands of records are gone through once
    late = resource.rule is takeoff.RULE
    found, workings = worked(resource, bound, service, finite=not late, tell=tell)
    try:
        try:
            return _answer_struct(resource, bound, service, found, workings, tell)
        except RefusedError:
            refuse_infinite(found)  # says it more exactly, where it applies
            raise
    except RefusedError as error:
        raise refused(error.refusals, bound.struct) from error


def _answer_struct(  # noqa: PLR0913, PLR0917  one caller, which has just made them all
    resource: Calculation,
    bound: Bound,
    service: Service,
    found: Any,  # noqa: ANN401  a result
    workings: tuple[Working, ...],
    tell: Tell | None,
) -> msgspec.Struct:
    if tell is not None:
        tell("answer", 0, 1)
    rule = resource.rule
    used = tuple({working.rule.id: working.rule for working in workings}.values())
    said = _said_of(_Same((service, *used)))
    values: dict[str, Any] = {
        "rule": rule.id,
        "title": rule.title,
        "result": writer_of(rule.output, bound.system)(found),
        "assumptions": assumptions(bound, service),
        "cautions": said[0],
        "sources": said[1],
        "versions": service.versions(bound.rulebook),
    }
    if resource.orders:
        write = writer_of(Order, bound.system)
        ordered = order_lines(found.lines, _terms(service, bound.rulebook), AllowanceTerms())
        values["orders"] = [write(order) for order in ordered]
    if bound.explain:
        values["explanation"] = [step for working in told(workings, "explanation", tell) for step in steps_of(working)]
    return resource.answer(**values)


def answer(resource: Calculation, body: bytes, service: Service) -> bytes:
    """Answer a request in JSON: bytes in, bytes out.

    Raises:
        ProblemError: the request is malformed or refused.
    """
    return msgspec.json.encode(answer_struct(resource, bind(resource, body, service), service))


def answer_on_paper(resource: Calculation, body: bytes, service: Service, media_type: str) -> bytes:
    """Answer with a calculation sheet or a workbook.

    Raises:
        ProblemError: the request is malformed or refused, or the form cannot be made here (406).
    """
    bound = bind(resource, body, service)
    sheet_form.refuse_long(bound, media_type)
    found, workings = worked(resource, bound, service)
    if resource.orders:
        orders = order_lines(found.lines, _terms(service, bound.rulebook), AllowanceTerms())
    else:
        orders = getattr(found, "orders", ())
    answered = sheet_form.Answered(found, workings, orders)
    return sheet_form.encode(sheet_form.material(resource.rule, bound, answered, service), media_type)


def answer_csv(resource: Calculation, body: bytes, service: Service) -> bytes:
    """Answer a takeoff in CSV.

    Raises:
        ProblemError: the request is malformed or refused.
    """
    bound = bind(resource, body, service)
    found, _ = worked(resource, bound, service)
    try:
        return csv_form.encode(found, bound.system)
    except RefusedError as error:
        raise refused(error.refusals, bound.struct) from error
