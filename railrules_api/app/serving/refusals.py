"""Refusals that are answered before the application is asked, as the same problems."""

from __future__ import annotations

from typing import TYPE_CHECKING

from railrules_api.api.app import SECURITY
from railrules_api.api.problems import MEDIA_TYPE, problem_body

if TYPE_CHECKING:
    from collections.abc import Iterable

Headers = list[tuple[bytes, bytes]]
_FIXED: Headers = [
    (b"content-type", MEDIA_TYPE.encode()),
    (b"cache-control", b"no-store"),
    *((name.lower().encode(), value.encode()) for name, value in SECURITY.items()),
]
_PHRASES = {400: b"Bad Request", 408: b"Request Timeout", 414: b"URI Too Long", 431: b"Request Header Fields Too Large"}


def refusal(status: int, detail: str, extra: Iterable[tuple[bytes, bytes]] = ()) -> tuple[Headers, bytes]:
    """Return the header fields and the body of a refusal."""
    body = problem_body(status, detail)
    return [*_FIXED, (b"content-length", str(len(body)).encode()), *extra], body


def raw_refusal(status: int, detail: str, extra: Iterable[tuple[bytes, bytes]] = ()) -> bytes:
    """Return a whole HTTP/1.1 answer that closes the connection, for requests that never became one."""
    headers, body = refusal(status, detail, [*extra, (b"connection", b"close")])
    phrase = _PHRASES.get(status, b"Service Unavailable")
    lines = [b"HTTP/1.1 " + str(status).encode() + b" " + phrase, *(name + b": " + value for name, value in headers)]
    return b"\r\n".join([*lines, b"", body])
