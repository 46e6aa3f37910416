"""Many takeoffs over one connection: a line of JSON for each job and for each answer, and a trailer that proves them complete.

A two-way stream: lines are answered in order while more of them come in, so neither side ever holds more than a few. It is raw
ASGI, as the framework's own streams lose chunks of a body that is still coming in. A caller who reads slowly is answered slowly:
nothing is read while what was answered waits to be sent. One who goes away leaves nothing behind.
"""

from __future__ import annotations

import asyncio
from typing import TYPE_CHECKING, Annotated, Any, Final, cast
from urllib.parse import parse_qsl

import msgspec
from litestar.handlers import ASGIRouteHandler
from msgspec import UNSET, Meta, UnsetType

from railrules_api.api import arrow_stream
from railrules_api.api.bulk_run import BulkTrailer, Lines, Run
from railrules_api.api.calculations import Calculation
from railrules_api.api.envelope import Problem
from railrules_api.api.headers import accepted, media_type_of
from railrules_api.api.operations import Asked, Operation, Parameter, Reply
from railrules_api.api.problems import MEDIA_TYPE as PROBLEM_TYPE
from railrules_api.api.problems import ProblemError

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from litestar.types import HTTPScope, Receive, Scope, Send

    from railrules_api.api.service import Service
    from railrules_api.units import System

PATH: Final = "/v1/takeoffs/bulk"
MEDIA_TYPE: Final = "application/x-ndjson"
_ALLOW: Final = "OPTIONS, POST"
_READ: Final = (MEDIA_TYPE, "application/ndjson", "application/jsonl")
_LINES_AT_ONCE: Final = 16
"""Lines worked in one go at most: more would only keep the first of them waiting."""


# ---------------------------------------------------------------- HTTP


def _parameters(scope: HTTPScope) -> tuple[bool, System]:
    """Return whether only totals are wanted, and the units of the totals.

    Raises:
        ProblemError: 400 on anything else in the query.
    """
    known = {parameter.name: parameter.schema["enum"] for parameter in PARAMETERS}
    found: dict[str, str] = {}
    for name, value in parse_qsl(scope["query_string"].decode("latin-1"), keep_blank_values=True):
        if name not in known:
            raise ProblemError(400, f"unknown query parameter {name!r}; known: {', '.join(known)}"[:500])
        if name in found:
            raise ProblemError(400, f"the query parameter {name!r} stands twice")
        if value not in known[name]:
            raise ProblemError(400, f"{name}={value!r}: one of {', '.join(known[name])} is wanted"[:300])
        found[name] = value
    return found.get("answer") == "totals", cast("System", found.get("units", "us"))


def _sent(scope: HTTPScope) -> str:
    return media_type_of(dict(scope["headers"]).get(b"content-type", b"").decode("latin-1"))


def _check(scope: HTTPScope) -> tuple[bool, System]:
    """Return what is asked, or refuse it before the answer has begun.

    Raises:
        ProblemError: the method, the type of the body or of the answer, or the query is not one of ours.
    """
    if scope["method"] != "POST":
        detail = "this resource does not know the method; the Allow header lists those it does"
        raise ProblemError(405, detail, (), {"Allow": _ALLOW})
    sent = _sent(scope)
    columns = sent == arrow_stream.MEDIA_TYPE and arrow_stream.available()
    answered = arrow_stream.MEDIA_TYPE if columns else MEDIA_TYPE
    if accepted(dict(scope["headers"]).get(b"accept", b"*/*").decode("latin-1"), (answered,)) is None:
        raise ProblemError(406, f"answers come as {answered}")
    if sent not in _READ and not columns:
        raise ProblemError(415, f"send {MEDIA_TYPE}, not {sent or 'a body without a type'}"[:300], (), {"Accept": MEDIA_TYPE})
    return _parameters(scope)


class Bulk:
    """The stream as an ASGI application."""

    def __init__(self, resource: Calculation, service: Service, security: Mapping[str, str]) -> None:
        """Answer for a service.

        Args:
            resource: the takeoff as a resource.
            service: what answers.
            security: header fields that every answer carries.
        """
        self.resource, self.service = resource, service
        lasting = {"Cache-Control": "no-store", **security}
        self.headers = [(name.lower().encode(), value.encode()) for name, value in lasting.items()]

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one stream."""
        if str(cast("HTTPScope", scope)["method"]) == "OPTIONS":
            await self._begin(send, 204, "", [(b"allow", _ALLOW.encode())])
            await send({"type": "http.response.body", "body": b"", "more_body": False})
            return
        try:
            totals_only, system = _check(cast("HTTPScope", scope))
        except ProblemError as problem:
            extra = [(name.lower().encode(), value.encode()) for name, value in problem.headers.items()]
            await self._begin(send, problem.status, PROBLEM_TYPE, extra)
            await send({"type": "http.response.body", "body": problem.body(), "more_body": False})
            return
        if _sent(cast("HTTPScope", scope)) == arrow_stream.MEDIA_TYPE:
            await self._arrow(receive, send)
            return
        await self._begin(send, 200, MEDIA_TYPE, [(b"vary", b"Accept")])
        run = Run(self.resource, self.service, system=system, totals_only=totals_only)
        lines = Lines()
        more = True
        while more:
            message: Any = await receive()
            if message["type"] == "http.disconnect":
                return
            more = message.get("more_body", False)
            ready = list(lines.feed(message.get("body", b"")))
            if not more:
                ready += lines.end()
            for first in range(0, len(ready), _LINES_AT_ONCE):
                await self._answer(run, ready[first : first + _LINES_AT_ONCE], send)
        await send({"type": "http.response.body", "body": run.trailer(), "more_body": False})

    async def _arrow(self, receive: Receive, send: Send) -> None:
        """Answer a stream of record batches; a thread reads, works and writes, and waits for either side as it has to."""
        loop = asyncio.get_running_loop()

        def begun() -> Iterator[bytes]:
            return arrow_stream.Stream(arrow_stream.incoming_from(receive, loop), self.resource, self.service).run()

        try:
            answers = await asyncio.to_thread(begun)
            await self._begin(send, 200, arrow_stream.MEDIA_TYPE, [(b"vary", b"Accept")])
            while (told := await asyncio.to_thread(next, answers, None)) is not None:
                # waits while the caller does not read what he was sent before
                await send({"type": "http.response.body", "body": told, "more_body": True})
        except ConnectionError:
            return
        except ProblemError as problem:
            await self._begin(send, problem.status, PROBLEM_TYPE, [])
            await send({"type": "http.response.body", "body": problem.body(), "more_body": False})
            return
        await send({"type": "http.response.body", "body": b"", "more_body": False})

    async def _begin(self, send: Send, status: int, media_type: str, extra: list[tuple[bytes, bytes]]) -> None:
        typed = [(b"content-type", media_type.encode())] if media_type else []
        headers = [*typed, *self.headers, *extra]
        await send({"type": "http.response.start", "status": status, "headers": headers})

    @staticmethod
    async def _answer(run: Run, lines: Sequence[tuple[int, bytes | None]], send: Send) -> None:
        # in a thread: a job takes long enough for others to notice
        told = await asyncio.to_thread(run.work, lines)
        if told:
            # waits while the caller does not read what he was sent before
            await send({"type": "http.response.body", "body": told, "more_body": True})


# ---------------------------------------------------------------- the table of operations

PARAMETERS = (
    Parameter(
        "answer",
        "query",
        "What is sent of each job: its whole answer, or nothing but its part in the totals of the trailer.",
        {"type": "string", "enum": ["full", "totals"]},
    ),
    Parameter("units", "query", "Units of the totals; `us` when left out.", {"type": "string", "enum": ["us", "si"]}),
)


def line_type(resource: Calculation) -> type[msgspec.Struct]:
    """Return the schema of a line of the answer: that of a job, of a problem, or the trailer."""
    return msgspec.defstruct(
        "BulkLine",
        [
            ("line", Annotated[int, Meta(ge=1, le=2**53, description="Line of the request, from 1.")] | UnsetType, UNSET),
            ("answer", Annotated[resource.answer, Meta(description="Answer to the job.")] | UnsetType, UNSET),
            ("problem", Annotated[Problem, Meta(description="Why there is none.")] | UnsetType, UNSET),
            ("trailer", Annotated[BulkTrailer, Meta(description="In the last line, alone.")] | UnsetType, UNSET),
        ],
        namespace={"__doc__": "A line of the answer: `line` with `answer` or `problem`, or `trailer` alone in the last one."},
        module=__name__,
        frozen=True,
        kw_only=True,
    )


def operation(resource: Calculation) -> Operation:
    """Return the stream as the document tells it."""

    def whole(service: Service, asked: Asked) -> Reply:
        lines, run = Lines(), Run(resource, service, totals_only=asked.query.get("answer") == "totals")
        told = run.work([*lines.feed(asked.body), *lines.end()])
        return Reply(told + run.trailer(), media_type=MEDIA_TYPE)

    return Operation(
        method="POST",
        path=PATH,
        id="createTakeoffs",
        tag="takeoffs",
        summary="Takeoffs of many jobs",
        description=(
            "A stream both ways: each line of the request is a job as `POST /v1/takeoffs` takes it, each line of the answer what "
            "that answers, in the same order, while more lines come in: read while you write. A job that is refused does not end "
            "the stream; its line holds the problem. The last line is a trailer with counts, the SHA-256 of all before it and, "
            "with `answer=totals`, the totals of all jobs; an answer without it was cut. Totals are exact sums rounded once, so "
            "they repeat bit for bit whatever the order and the network. Lines are of at most 1 MiB; their number is not limited."
            " Where the service has the `arrow` extra, a body of `application/vnd.apache.arrow.stream` with one column `job`, "
            "each the JSON of a request, is answered by a stream of the same type: totals by job and item, in SI, a job's "
            "problem in its row."
        ),
        answer=line_type(resource),
        request=resource.request,
        handler=whole,
        parameters=PARAMETERS,
        media_types=(MEDIA_TYPE,),
        request_media_type=MEDIA_TYPE,
    )


def route(resource: Calculation, service: Service, security: Mapping[str, str]) -> ASGIRouteHandler:
    """Return the stream as a route of the framework."""
    bulk = Bulk(resource, service, security)

    async def endpoint(scope: Scope, receive: Receive, send: Send) -> None:
        await bulk(scope, receive, send)

    return ASGIRouteHandler(PATH, name="createTakeoffs", copy_scope=False)(endpoint)
