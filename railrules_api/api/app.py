"""The Litestar application: routes from the table of operations, problems for everything else."""

from __future__ import annotations

import asyncio
import logging
import re
from typing import TYPE_CHECKING, Any

from litestar import Litestar, Request, Response
from litestar.exceptions import HTTPException
from litestar.handlers import HTTPRouteHandler

from railrules_api.api.headers import accepted, etag_matches, media_type_of
from railrules_api.api.operations import Asked, Operation, Reply
from railrules_api.api.problems import MEDIA_TYPE, ProblemError, problem_body
from railrules_api.api.resources import operations

if TYPE_CHECKING:
    from collections.abc import Callable

    from railrules_api.api.service import Service

_LOG = logging.getLogger("railrules")
HEAVY_BODY = 20_000
"""Bodies of more bytes than this are worked in a thread, so that a long takeoff does not hold up its neighbours."""
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


def _reply(reply: Reply, status: int = 200) -> Response[bytes]:
    headers = {"Cache-Control": reply.cache, "Vary": "Accept", **SECURITY}
    if reply.etag:
        headers["ETag"] = reply.etag
    return Response(reply.body, status_code=status, media_type=reply.media_type, headers=headers)


def _query(request: Request[Any, Any, Any], operation: Operation) -> dict[str, str]:
    known = [parameter.name for parameter in operation.parameters if parameter.place == "query"]
    found: dict[str, str] = {}
    for name, value in request.query_params.multi_items():
        if name not in known:
            raise ProblemError(400, f"unknown query parameter {name!r}; known: {', '.join(known) or 'none'}"[:500])
        if name in found:
            raise ProblemError(400, f"the query parameter {name!r} stands twice")
        found[name] = value
    return found


def _endpoint(operation: Operation, service: Service) -> Callable[..., Any]:
    wants_body = operation.request is not None

    async def endpoint(request: Request[Any, Any, Any]) -> Response[bytes]:
        accept = accepted(request.headers.get("accept", "*/*"), operation.media_types)
        if accept is None:
            detail = f"answers come as {', '.join(operation.media_types)}"
            raise ProblemError(406, detail)
        body = b""
        if wants_body:
            sent = media_type_of(request.headers.get("content-type", ""))
            if sent != "application/json":
                headers = {"Accept": "application/json"}
                raise ProblemError(415, f"send application/json, not {sent or 'a body without a type'}"[:300], headers=headers)
            body = await request.body()
        asked = Asked(dict(request.path_params), _query(request, operation), body, accept)
        if len(body) > HEAVY_BODY:
            reply = await asyncio.to_thread(operation.handler, service, asked)
        else:
            reply = operation.handler(service, asked)
        if reply.etag and etag_matches(request.headers.get("if-none-match", ""), reply.etag):
            return Response(
                b"", status_code=304, media_type=reply.media_type,
                headers={"ETag": reply.etag, "Cache-Control": reply.cache, "Vary": "Accept"},
            )  # fmt: skip
        return _reply(reply)

    return endpoint


def _route(operation: Operation, service: Service) -> HTTPRouteHandler:
    template = re.sub(r"\{(\w+)\}", r"{\1:str}", operation.path)
    methods = ["GET", "HEAD"] if operation.method == "GET" else ["POST"]
    return HTTPRouteHandler(template, http_method=methods, status_code=200, name=operation.id)(_endpoint(operation, service))  # type: ignore[arg-type]


def create_app(service: Service) -> Litestar:
    """Build the application around a service."""
    return Litestar(
        route_handlers=[_route(operation, service) for operation in operations()],
        exception_handlers={ProblemError: _on_problem, HTTPException: _on_http, Exception: _on_anything},
        request_max_body_size=service.settings.max_body_bytes,
        openapi_config=None,
        logging_config=None,
    )
