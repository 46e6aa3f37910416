"""What stands around every answer: assumptions, cautions, sources, explanation, versions. And the problem."""

from __future__ import annotations

from typing import Annotated, Literal

import msgspec
from msgspec import UNSET, Meta, UnsetType

SourceStatus = Literal["published", "computed", "derived", "fitted", "from-memory", "common-practice"]
# every key can stand in a pointer, control characters and all, so the pattern says no more than RFC 6901
POINTER = r"^(/[^/]*)*$"
Pointer = Annotated[str, Meta(description="JSON pointer into the request.", max_length=500, pattern=POINTER)]
Text = Annotated[str, Meta(max_length=10_000)]


class Versions(msgspec.Struct, frozen=True):
    """What answered: the same request with the same versions gives the same bytes."""

    service: Annotated[str, Meta(description="Version of the service.", max_length=40)]
    catalogue: Annotated[str, Meta(description="Version and digest of the catalogue.", max_length=80)]
    rulebook: Annotated[str, Meta(description="Rulebook in force, with its edition.", max_length=200)]


class Citation(msgspec.Struct, frozen=True):
    """A place in a source and how the statement was obtained there."""

    source: Annotated[str, Meta(description="Id of the source.", max_length=80)]
    title: Annotated[str, Meta(description="Title of the document.", max_length=400)]
    where: Annotated[str, Meta(description="Section, table, page or equation.", max_length=1000)]
    status: Annotated[SourceStatus, Meta(description="Read in the document, worked out, fitted by us, remembered, or practice.")]


class Assumption(msgspec.Struct, frozen=True):
    """A value the request did not give: a default of the rulebook or a value of the catalogue."""

    origin: Annotated[str, Meta(description="`rulebook ID` or `catalogue TABLE/ROW`.", max_length=200)]
    name: Annotated[str, Meta(description="Id of the default, or column of the row.", max_length=80)]
    about: Annotated[str, Meta(description="What it means.", max_length=1000)]
    value: Annotated[str, Meta(description="The value as its source prints it, with its unit.", max_length=1000)]
    cite: Annotated[Citation, Meta(description="Where it comes from.")]
    used_at: Annotated[list[Pointer], Meta(description="Where it stood in for a value; the first ten places.", max_length=10)]
    uses: Annotated[int, Meta(description="In how many places it stood in.", ge=1, le=2**53)]
    note: Annotated[str, Meta(description="What to know of it: what was fitted, and how far.", max_length=4000)] | UnsetType = (
        UNSET
    )


class CautionNote(msgspec.Struct, frozen=True):
    """Something a user of the answer must know."""

    code: Annotated[str, Meta(description="Stable identifier.", max_length=80)]
    text: Annotated[str, Meta(description="The caution.", max_length=2000)]
    cite: Annotated[Citation, Meta(description="Where it stands.")]


class Step(msgspec.Struct, frozen=True):
    """One formula of one rule, with its numbers in coherent SI."""

    rule: Annotated[str, Meta(description="Id of the rule.", max_length=80)]
    of: Annotated[str, Meta(description="Part of the job it was worked for; empty for a single question.", max_length=200)]
    field: Annotated[str, Meta(description="Field of the result it gives.", max_length=80)]
    formula: Annotated[str, Meta(description="The formula in symbols.", max_length=2000)]
    substituted: Annotated[str, Meta(description="The formula with its numbers in coherent SI.", max_length=4000)]
    result: Annotated[str, Meta(description="What it gives, in coherent SI.", max_length=200)]


class Fault(msgspec.Struct, frozen=True, omit_defaults=True):
    """One thing wrong with a request."""

    pointer: Annotated[
        str, Meta(description="JSON pointer to the value; empty for the whole body.", max_length=500, pattern=POINTER)
    ]
    detail: Annotated[str, Meta(description="What is wrong.", max_length=1000)]
    value: (
        Annotated[str, Meta(description="The value that was sent, as JSON, cut to 200 characters.", max_length=200)] | UnsetType
    ) = UNSET
    minimum: Annotated[float, Meta(description="Smallest allowed value, in `unit`.")] | UnsetType = UNSET
    maximum: Annotated[float, Meta(description="Largest allowed value, in `unit`.")] | UnsetType = UNSET
    unit: Annotated[str, Meta(description="Unit of minimum and maximum.", max_length=40)] | UnsetType = UNSET
    allowed: (
        Annotated[
            list[Annotated[str, Meta(max_length=200)]],
            Meta(description="What would do, or the nearest to it.", max_length=200),
        ]
        | UnsetType
    ) = UNSET


class Problem(msgspec.Struct, frozen=True, omit_defaults=True):
    """A problem as RFC 9457 describes it."""

    type: Annotated[
        str,
        Meta(description="Kind of problem, a URI reference.", max_length=200, extra_json_schema={"format": "uri-reference"}),
    ]
    title: Annotated[str, Meta(description="Kind of problem in words.", max_length=200)]
    status: Annotated[int, Meta(description="HTTP status code.", ge=400, le=599)]
    detail: Annotated[str, Meta(description="What happened this time.", max_length=2000)]
    errors: Annotated[list[Fault], Meta(description="Everything found wrong with the request.", max_length=1000)] | UnsetType = (
        UNSET
    )
