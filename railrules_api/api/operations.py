"""The table of operations: what the API offers, said once. Routes, document and client follow from it."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, Literal

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from railrules_api.api.lifecycle import Lifecycle
    from railrules_api.api.service import Service
    from railrules_api.api.wire import StructType
    from railrules_api.domain.progress import Tell

Method = Literal["GET", "POST"]


@dataclass(frozen=True, slots=True)
class Reply:
    """An answer on its way out.

    Attributes:
        body: encoded bytes.
        media_type: of the body.
        etag: strong validator; empty for none.
        cache: Cache-Control; empty for none.
        headers: further header fields.
    """

    body: bytes
    media_type: str = "application/json"
    etag: str = ""
    cache: str = "no-store"
    headers: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Asked:
    """What a handler gets: path and query parameters, the body, the accepted media type."""

    path: Mapping[str, str]
    query: Mapping[str, str]
    body: bytes
    accept: str


@dataclass(frozen=True, slots=True)
class Parameter:
    """A parameter of an operation, described by its JSON schema; header fields stand in the document once, for all."""

    name: str
    place: Literal["path", "query", "header"]
    about: str
    schema: dict[str, Any]
    example: str | float | None = None


@dataclass(frozen=True, slots=True)
class Lines:
    """The form of an answer that tells how far it is, line by line.

    Attributes:
        media_type: of the form.
        line: schema of a line.
        example: some lines.
        begin: binds what was asked; returns the work, which is told whom to tell and returns the last line.
    """

    media_type: str
    line: StructType
    example: str
    begin: Callable[[Service, Asked], Callable[[Tell], bytes]]


@dataclass(frozen=True, slots=True, kw_only=True)
class Operation:
    """One method of one resource.

    Attributes:
        method: HTTP method; a GET also answers HEAD.
        path: template below the root, e.g. `/v1/rail-sections/{id}`.
        id: operationId.
        tag: group in the document.
        summary: one line.
        description: for the document.
        answer: schema of the JSON answer; None where the answer is not JSON of ours.
        request: schema of the JSON body; None for no body.
        parameters: of path, query and header.
        media_types: every form the answer can have, the usual one first.
        statuses: problem statuses it can end in, besides those that all operations like it share.
        probe: an orchestrator asks it: it is answered without a key, whatever the load, and is different every time.
        schemas: further schemas that the document should hold.
        links: operations that an answer leads to, as OpenAPI link objects by name.
        lifecycle: when it is deprecated and gone; None while it is neither.
        slow: it is worked in a thread, so that others are served meanwhile.
        slow_forms: media types of the answer that are, where the others are quick.
        handler: from the service and what was asked to the reply.
        lines: the form that tells how far it is, where there is one: media type, schema of a line, and from what was asked to the
            work that ends with the last line.
        request_media_type: of the body; another than JSON's is a stream of lines, which has a route of its own.
    """

    method: Method
    path: str
    id: str
    tag: str
    summary: str
    description: str
    answer: StructType | None
    handler: Callable[[Service, Asked], Reply]
    request: StructType | None = None
    parameters: tuple[Parameter, ...] = ()
    media_types: tuple[str, ...] = ("application/json",)
    statuses: tuple[int, ...] = ()
    probe: bool = False
    schemas: tuple[StructType, ...] = field(default=())
    links: Mapping[str, Any] = field(default_factory=dict)
    lifecycle: Lifecycle | None = None
    slow: bool = False
    slow_forms: tuple[str, ...] = ()
    lines: Lines | None = None
    request_media_type: str = "application/json"
