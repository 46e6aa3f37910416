"""The outermost layer: request id, trace context, and the method QUERY, which the framework's router does not know."""

from __future__ import annotations

import re
import secrets
from typing import TYPE_CHECKING, Any

from litestar.enums import ScopeType

if TYPE_CHECKING:
    from collections.abc import Iterable

    from litestar.types import ASGIApp, Message, Receive, Scope, Send

QUERY = "QUERY"
"""RFC 10008: a safe request with a body, which is what a calculation is."""
ASKED_BY_QUERY = "railrules.asked_by_query"
SETTLED = "railrules.settled"
"""Where a layer before this one has left the request id and the trace context that the answer is to carry."""
_REQUEST_ID = re.compile(rb"[A-Za-z0-9._-]{1,64}")
_TRACE = re.compile(rb"(?!ff)[0-9a-f]{2}-(?!0{32})([0-9a-f]{32})-(?!0{16})[0-9a-f]{16}-[0-9a-f]([0-9a-f])(?:-.*)?")


def request_id_of(sent: bytes) -> bytes:
    """Return the caller's request id when it is short and plain, else a new one.

    >>> request_id_of(b"job-17.a"), len(request_id_of(b"two words"))
    (b'job-17.a', 32)
    """
    return sent if _REQUEST_ID.fullmatch(sent) else secrets.token_hex(16).encode()


def traceparent_of(sent: bytes) -> bytes:
    """Return the trace context of the answer: the caller's trace and a new span, or a new trace (W3C Trace Context).

    >>> traceparent_of(b"00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01")[:36]
    b'00-4bf92f3577b34da6a3ce929d0e0e4736-'
    """
    found = _TRACE.fullmatch(sent)
    trace = found.group(1) if found else secrets.token_hex(16).encode()
    # the only flag that is passed on is "sampled"; an own trace is not sampled, as nothing here records it
    flags = b"01" if found and int(found.group(2), 16) & 1 else b"00"
    return b"00-" + trace + b"-" + secrets.token_hex(8).encode() + b"-" + flags


def told(headers: Iterable[tuple[bytes, bytes]]) -> tuple[bytes, bytes]:
    """Return the request id and the trace context that a request came with; empty where it came with none, or with two."""
    ids, traces = [], []
    for name, value in headers:
        if name == b"x-request-id":
            ids.append(value)
        elif name == b"traceparent":
            traces.append(value)
    return ids[0] if len(ids) == 1 else b"", traces[0] if len(traces) == 1 else b""


def settled(headers: Iterable[tuple[bytes, bytes]]) -> tuple[bytes, bytes]:
    """Return the request id and the trace context of the answer to a request with these header fields."""
    sent_id, sent_trace = told(headers)
    return request_id_of(sent_id), traceparent_of(sent_trace)


class Edge:
    """An ASGI application around the framework's own."""

    def __init__(self, app: ASGIApp, queried: frozenset[str]) -> None:
        """Wrap an application.

        Args:
            app: what answers.
            queried: paths that answer QUERY as they answer POST.
        """
        self.app = app
        self.queried = queried

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        if scope["type"] == ScopeType.WEBSOCKET:
            await self.app(scope, receive, send)
            return
        inner: Any = scope
        request_id, traceparent = inner.get(SETTLED) or settled(scope["headers"])
        added = [(b"x-request-id", request_id), (b"traceparent", traceparent)]
        queryable = (scope["path"].rstrip("/") or "/") in self.queried
        # the framework's list of methods is shorter than the protocol's
        if queryable and str(scope["method"]) == QUERY:
            inner = {**scope, "method": "POST", ASKED_BY_QUERY: True}

        async def tell(message: Message) -> None:
            if message["type"] == "http.response.start":
                headers = [(name, _allow(value, queryable) if name == b"allow" else value) for name, value in message["headers"]]
                headers += added
                if queryable:
                    headers.append((b"accept-query", b"application/json"))
                message["headers"] = headers
            await send(message)

        await self.app(inner, receive, tell)


def _allow(sent: bytes, queryable: bool) -> bytes:  # noqa: FBT001  private, one caller
    """Return the methods in order, which the framework's set is not, with QUERY where it is answered."""
    methods = {method.strip() for method in sent.split(b",")}
    if queryable:
        methods.add(QUERY.encode())
    return b", ".join(sorted(methods))
