"""One resource a rule: the request and answer schemas around a rule's records, and the way from bytes to bytes."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated, Any, Literal

import msgspec
from msgspec import UNSET, Meta, UnsetType

from railrules_api.api import csv_form
from railrules_api.api.answering import writer_of
from railrules_api.api.binding import Binding, binder_of
from railrules_api.api.decoding import decode, refuse_duplicates
from railrules_api.api.envelope import Assumption, CautionNote, Citation, Step, Versions
from railrules_api.api.explaining import steps_of
from railrules_api.api.problems import pointer, refused
from railrules_api.api.wire import PLAIN_TEXT, StructType, answer_type, request_fields
from railrules_api.catalogue.model import Row, Value
from railrules_api.domain.errors import Refusal, RefusedError
from railrules_api.rules.model import Working
from railrules_api.rules.ordering import AllowanceTerms, Order, order_lines
from railrules_api.rules.takeoff import takeoff

if TYPE_CHECKING:
    from collections.abc import Iterable

    from railrules_api.api.service import Service
    from railrules_api.catalogue.rulebook import Default, Rulebook
    from railrules_api.rules.model import Cite, Rule
    from railrules_api.units import System

_FIRST_USES = 10
_PRINTED = Meta(max_length=80, min_length=1, pattern=PLAIN_TEXT)


class RulebookEntry(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """One default replaced for this request: a number with its unit, or a word."""

    id: Annotated[str, _PRINTED, Meta(description="Id of the default, as `GET /v1/rulebooks` lists them.")]
    value: Annotated[float, Meta(ge=-1e15, le=1e15, description="The number; left out for a word.")] | UnsetType = UNSET
    unit: (
        Annotated[str, Meta(max_length=40, pattern=PLAIN_TEXT, description="Its unit; left out for a pure number or a word.")]
        | UnsetType
    ) = UNSET
    word: Annotated[str, _PRINTED, Meta(description="The word or catalogue id.")] | UnsetType = UNSET


class RulebookChoice(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """The rulebook a request is answered with."""

    id: Annotated[str, _PRINTED, Meta(description="A rulebook of the service; left out: the house's own.")] | UnsetType = UNSET
    entries: (
        Annotated[list[RulebookEntry], Meta(max_length=200, description="Defaults replaced for this request.")] | UnsetType
    ) = UNSET


_EXTRAS: list[tuple[str, Any, Any]] = [
    (
        "units",
        Annotated[Literal["us", "si"], Meta(description="Units of the answer; `us` when left out.")] | UnsetType,
        UNSET,
    ),
    ("explain", Annotated[bool, Meta(description="Add each formula with its numbers.")] | UnsetType, UNSET),
    ("rulebook", Annotated[RulebookChoice, Meta(description="Rulebook to answer with.")] | UnsetType, UNSET),
]


@dataclass(frozen=True, slots=True)
class Calculation:
    """A rule as a resource."""

    rule: Rule[Any, Any]
    request: StructType
    answer: StructType
    orders: bool

    @property
    def path(self) -> str:
        """Path below `/v1`."""
        return f"/v1/{self.rule.path}"


def _has_lines(rule: Rule[Any, Any]) -> bool:
    # the takeoff orders its lines itself, on the job's terms
    return "lines" in rule.output.__dataclass_fields__ and rule is not takeoff.RULE


def calculation(rule: Rule[Any, Any]) -> Calculation:
    """Derive a rule's request and answer schemas."""
    name = "Takeoff" if rule is takeoff.RULE else rule.input.__name__.removesuffix("Input")
    orders = _has_lines(rule)
    request = msgspec.defstruct(
        f"{name}Request",
        [*request_fields(rule.input), *_EXTRAS],
        namespace={"__doc__": f"Question to the rule `{rule.id}`: {rule.title}."},
        module=__name__,
        frozen=True,
        kw_only=True,
        forbid_unknown_fields=True,
    )
    fields: list[tuple[str, Any] | tuple[str, Any, Any]] = [
        ("rule", Annotated[str, Meta(max_length=80, description="Id of the rule that answered.")]),
        ("title", Annotated[str, Meta(max_length=200, description="What it answers.")]),
        ("result", Annotated[answer_type(rule.output), Meta(description="The answer.")]),
    ]
    if orders:
        order = answer_type(Order)
        about = "The lines with allowance, rounded up to what can be ordered."
        fields.append(("orders", Annotated[list[order], Meta(max_length=1000, description=about)]))  # type: ignore[valid-type]
    fields += [
        (
            "assumptions",
            Annotated[list[Assumption], Meta(max_length=10_000, description="Defaults and catalogue values used.")],
        ),
        (
            "cautions",
            Annotated[list[CautionNote], Meta(max_length=100, description="What a user of the answer must know.")],
        ),
        ("sources", Annotated[list[Citation], Meta(max_length=1000, description="Where the rule comes from.")]),
        ("versions", Annotated[Versions, Meta(description="What answered.")]),
        (
            "explanation",
            Annotated[list[Step], Meta(max_length=1_000_000, description="Formulas with their numbers.")] | UnsetType,
            UNSET,
        ),
    ]
    answer = msgspec.defstruct(
        f"{name}Answer",
        fields,
        namespace={"__doc__": f"Answer of the rule `{rule.id}`: {rule.title}."},
        module=__name__,
        frozen=True,
        kw_only=True,
    )
    return Calculation(rule, request, answer, orders)


# ---------------------------------------------------------------- from bytes to a bound input


@dataclass(slots=True)
class Bound:
    """A request bound to its rule's input."""

    struct: msgspec.Struct
    given: Any
    system: System
    explain: bool
    rulebook: Rulebook
    binding: Binding


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
    binding.keys += keys + (struct.units is not UNSET) + (struct.explain is not UNSET)
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
            used_at=[pointer(path) for path in entry.used_at[:_FIRST_USES]],
            uses=len(entry.used_at),
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


def worked(resource: Calculation, bound: Bound, service: Service) -> tuple[Any, tuple[Working, ...]]:
    """Put a bound request to its rule; return what it found and every use of a rule on the way.

    Raises:
        ProblemError: the rule refuses the input.
    """
    rule = resource.rule
    try:
        if rule is takeoff.RULE:
            found, workings = takeoff.take_off(bound.given, service.terms(bound.rulebook))
        else:
            found = rule.evaluate(bound.given)
            workings = (Working(rule, "", bound.given, found),)
        refuse_infinite(found)
    except RefusedError as error:
        raise refused(error.refusals, bound.struct) from error
    except (OverflowError, ZeroDivisionError) as error:
        raise refused((Refusal((), "these values together give no finite result"),), bound.struct) from error
    return found, workings


def answer_struct(resource: Calculation, bound: Bound, service: Service) -> msgspec.Struct:
    """Answer a bound request.

    Raises:
        ProblemError: the rule refuses the input.
    """
    found, workings = worked(resource, bound, service)
    rule = resource.rule
    used = tuple({working.rule.id: working.rule for working in workings}.values())
    values: dict[str, Any] = {
        "rule": rule.id,
        "title": rule.title,
        "result": writer_of(rule.output, bound.system)(found),
        "assumptions": assumptions(bound, service),
        "cautions": cautions(used, service),
        "sources": sources(used, service),
        "versions": service.versions(bound.rulebook),
    }
    if resource.orders:
        write = writer_of(Order, bound.system)
        ordered = order_lines(found.lines, service.terms(bound.rulebook), AllowanceTerms())
        values["orders"] = [write(order) for order in ordered]
    if bound.explain:
        values["explanation"] = [step for working in workings for step in steps_of(working)]
    return resource.answer(**values)


def answer(resource: Calculation, body: bytes, service: Service) -> bytes:
    """Answer a request in JSON: bytes in, bytes out.

    Raises:
        ProblemError: the request is malformed or refused.
    """
    return msgspec.json.encode(answer_struct(resource, bind(resource, body, service), service))


def answer_csv(resource: Calculation, body: bytes, service: Service) -> bytes:
    """Answer a takeoff in CSV.

    Raises:
        ProblemError: the request is malformed or refused.
    """
    bound = bind(resource, body, service)
    found, _ = worked(resource, bound, service)
    return csv_form.encode(found, bound.system)
