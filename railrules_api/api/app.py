"""The Litestar application: routes from the table of operations, problems for everything else."""

from __future__ import annotations

import asyncio
import hashlib
import logging
import math
import re
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from litestar import HttpMethod, Litestar, Request, Response
from litestar.exceptions import HTTPException
from litestar.handlers import HTTPRouteHandler

from railrules_api.api import bulk, discovery, idempotency, progress
from railrules_api.api.coding import KEPT_FROM, ONCE_FROM, THREAD_FROM, Squeezer, coded_etag, takes_gzip
from railrules_api.api.edge import ASKED_BY_QUERY, Edge
from railrules_api.api.headers import accepted, etag_matches, media_type_of
from railrules_api.api.kept import kept
from railrules_api.api.operations import Asked, Lines, Operation, Parameter, Reply
from railrules_api.api.problems import MEDIA_TYPE, ProblemError, problem_body
from railrules_api.api.resources import calculation_of, operations

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Mapping

    from railrules_api.api.service import Service

_JSON_NUMBER = re.compile(r"-?[0-9]+(\.[0-9]+)?([eE][-+]?[0-9]+)?")
_LOG = logging.getLogger("railrules")
SECURITY = {
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Content-Security-Policy": "default-src 'none'; frame-ancestors 'none'",
}


def _problem(status: int, body: bytes, headers: dict[str, str] | None = None) -> Response[bytes]:
    return Response(
        body,
        status_code=status,
        media_type=MEDIA_TYPE,
        headers={"Cache-Control": "no-store", **SECURITY, **(headers or {})},
    )


def _on_problem(_request: Request[Any, Any, Any], error: ProblemError) -> Response[bytes]:
    return _problem(error.status, error.body(), error.headers)


_HTTP_DETAILS = {
    404: "no resource at this path; GET /openapi.json lists them all",
    405: "this resource does not know the method; the Allow header lists those it does",
    413: "the request body is larger than the service reads",
}


def _on_http(_request: Request[Any, Any, Any], error: HTTPException) -> Response[bytes]:
    status = error.status_code
    detail = _HTTP_DETAILS.get(status, "the request could not be served")
    headers = {name: value for name, value in (error.headers or {}).items() if name.lower() == "allow"}
    return _problem(status, problem_body(status, detail), headers)


def _on_anything(request: Request[Any, Any, Any], error: Exception) -> Response[bytes]:
    _LOG.error("unhandled error at %s", request.url.path, exc_info=error)
    return _problem(500, problem_body(500, "the service failed on this request; the fault is ours"))


async def _response(reply: Reply, request: Request[Any, Any, Any], squeezer: Squeezer) -> Response[bytes]:
    """Put a reply into the form the caller takes best, or tell that he has it already."""
    body, etag = reply.body, reply.etag
    headers = {"Cache-Control": reply.cache, "Vary": "Accept, Accept-Encoding", **reply.headers}
    coded = len(body) >= (KEPT_FROM if etag else ONCE_FROM) and takes_gzip(request.headers.get("accept-encoding", ""))
    if coded:
        etag = coded_etag(etag)
        headers["Content-Encoding"] = "gzip"
    if etag:
        headers["ETag"] = etag
        if etag_matches(request.headers.get("if-none-match", ""), etag):
            headers.pop("Content-Encoding", None)
            return Response(b"", status_code=304, media_type=reply.media_type, headers=headers)
    if coded:
        if len(body) > THREAD_FROM:
            body = await asyncio.to_thread(squeezer.squeezed, body, reply.etag)
        else:
            body = squeezer.squeezed(body, reply.etag)
    return Response(body, status_code=200, media_type=reply.media_type, headers={**SECURITY, **headers})


async def _told_by_lines(
    form: Lines, service: Service, asked: Asked, request: Request[Any, Any, Any], further: Mapping[str, str]
) -> progress.LinesResponse:
    """Answer with lines that tell how far the work has come."""
    work = await asyncio.to_thread(form.begin, service, asked)
    return progress.LinesResponse(
        work,
        media_type=form.media_type,
        headers={"Cache-Control": "no-store", "Vary": "Accept, Accept-Encoding", **SECURITY, **further},
        coded=takes_gzip(request.headers.get("accept-encoding", "")),
    )


def _refuse_number(name: str, value: str) -> None:
    """Refuse what Python reads as a number and JSON does not: 1_0, blanks around it, digits of other scripts.

    The bounds are the handlers' to keep, who know the unit.
    """
    try:
        number = float(value)
    except ValueError:
        return
    if math.isfinite(number) and not _JSON_NUMBER.fullmatch(value):
        raise ProblemError(400, f"{name}={value!r}: a number as JSON writes it is wanted"[:300])


def _refuse_parameter(parameter: Parameter, value: str) -> None:
    """Refuse the value of a parameter that its schema does not allow, whatever form of the answer it is meant for.

    Raises:
        ProblemError: 400 telling what would do.
    """
    schema, name = parameter.schema, parameter.name
    if schema["type"] != "string":
        _refuse_number(name, value)
        return
    allowed = schema.get("enum")
    if allowed is not None:
        if value not in allowed:
            raise ProblemError(400, f"{name}={value!r}: one of {', '.join(allowed)} is wanted"[:300])
        return
    shortest, longest = schema.get("minLength", 0), schema["maxLength"]
    if not shortest <= len(value) <= longest:
        raise ProblemError(400, f"{name}: {shortest} to {longest} characters are wanted, not {len(value)}")
    if not re.search(schema["pattern"], value):
        raise ProblemError(400, f"{name}={value!r}: text of the pattern {schema['pattern']} is wanted"[:500])


def _query(request: Request[Any, Any, Any], operation: Operation) -> dict[str, str]:
    known = {parameter.name: parameter for parameter in operation.parameters if parameter.place == "query"}
    found: dict[str, str] = {}
    for name, value in request.query_params.multi_items():
        if name not in known:
            raise ProblemError(400, f"unknown query parameter {name!r}; known: {', '.join(known) or 'none'}"[:500])
        if name in found:
            raise ProblemError(400, f"the query parameter {name!r} stands twice")
        _refuse_parameter(known[name], value)
        found[name] = value
    return found


def _endpoint(operation: Operation, service: Service, squeezer: Squeezer) -> Callable[..., Any]:
    wants_body = operation.request is not None
    handler = operation.handler if wants_body else kept(operation.handler)
    lasting = {} if operation.lifecycle is None else operation.lifecycle.headers()

    async def endpoint(request: Request[Any, Any, Any]) -> Response[bytes]:
        accept = accepted(request.headers.get("accept", "*/*"), operation.media_types)
        if accept is None:
            detail = f"answers come as {', '.join(operation.media_types)}"
            raise ProblemError(406, detail)
        body, answered_with = b"", lasting
        if wants_body:
            sent = media_type_of(request.headers.get("content-type", ""))
            if sent != "application/json":
                headers = {"Accept": "application/json"}
                raise ProblemError(415, f"send application/json, not {sent or 'a body without a type'}"[:300], headers=headers)
            body = await request.body()
            answered_with = {**lasting, **idempotency.told(request.headers.getall(idempotency.HEADER, []), body)}
        asked = Asked(dict(request.path_params), _query(request, operation), body, accept)
        if operation.lines is not None and accept == operation.lines.media_type:
            return await _told_by_lines(operation.lines, service, asked, request, answered_with)
        if operation.slow or accept in operation.slow_forms or len(body) > service.settings.thread_above_bytes:
            reply = await asyncio.to_thread(handler, service, asked)
        else:
            reply = handler(service, asked)
        if request.scope.get(ASKED_BY_QUERY):
            # unlike the answer to a POST, that to a QUERY may be kept, and a validator saves sending it again
            etag = f'"{hashlib.sha256(reply.body).hexdigest()[:24]}"'
            reply = replace(reply, etag=etag, cache="private, no-cache")
        if answered_with:
            reply = replace(reply, headers={**reply.headers, **answered_with})
        return await _response(reply, request, squeezer)

    return endpoint


def _route(operation: Operation, service: Service, squeezer: Squeezer) -> HTTPRouteHandler:
    template = re.sub(r"\{(\w+)\}", r"{\1:str}", operation.path)
    methods: list[HttpMethod] = [HttpMethod.GET, HttpMethod.HEAD] if operation.method == "GET" else [HttpMethod.POST]
    return HTTPRouteHandler(template, http_method=methods, status_code=200, name=operation.id)(
        _endpoint(operation, service, squeezer)
    )


def create_app(service: Service, further: Iterable[Operation] = ()) -> Litestar:
    """Build the application around a service.

    Args:
        service: what answers.
        further: operations besides those of the API, such as the pages for people.
    """
    squeezer = Squeezer()
    table = (*operations(), *discovery.operations(), *further)
    plain = [operation for operation in table if operation.request_media_type == "application/json"]
    app = Litestar(
        route_handlers=[
            *(_route(operation, service, squeezer) for operation in plain),
            bulk.route(calculation_of("takeoffs"), service, SECURITY),
        ],
        exception_handlers={ProblemError: _on_problem, HTTPException: _on_http, Exception: _on_anything},
        request_max_body_size=service.settings.max_body_bytes,
        openapi_config=None,
        logging_config=None,
    )
    queried = frozenset(operation.path for operation in plain if operation.request is not None)
    app.asgi_handler = Edge(app.asgi_handler, queried)
    return app
