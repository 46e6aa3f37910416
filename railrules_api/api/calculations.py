"""One resource a rule: the request and answer schemas around a rule's records, derived from the registry."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated, Any, Literal

import msgspec
from msgspec import UNSET, Meta, UnsetType

from railrules_api.api import sheet_form
from railrules_api.api.envelope import Assumption, CautionNote, Citation, Step, Versions
from railrules_api.api.wire import PLAIN_TEXT, StructType, answer_type, request_fields
from railrules_api.rules.ordering import Order
from railrules_api.rules.takeoff import takeoff

if TYPE_CHECKING:
    from railrules_api.rules.model import Rule

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
    ("document", Annotated[sheet_form.Document, Meta(description="Title block of a sheet.")] | UnsetType, UNSET),
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
