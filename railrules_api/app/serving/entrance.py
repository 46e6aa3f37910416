"""What is asked of a request before the application sees it: its key, what its header announces, its whole body in time."""

from __future__ import annotations

import asyncio
from typing import TYPE_CHECKING, Any

from railrules_api.app.serving import keys
from railrules_api.app.serving.exchange import GoneError, RefusedError

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_api.app.serving.board import Part
    from railrules_api.app.serving.exchange import Exchange
    from railrules_api.app.serving.keys import Key
    from railrules_api.app.serving.settings import ServerSettings


def check_key(exchange: Exchange, known: Mapping[str, Key], part: Part) -> None:
    """Recognise the caller by his key and count the request against its quota; `ratelimit` fields go into the answer.

    Raises:
        RefusedError: no known key (401), a closed one (403), or its requests are used up (429).
    """
    sent = [value for name, value in exchange.scope["headers"] if name == b"authorization"]
    key = keys.recognised(sent[0] if len(sent) == 1 else b"", known)
    if key is None:
        asks = [(b"www-authenticate", b'Bearer realm="railrules"')]
        raise RefusedError(401, "send a key of this service as Authorization: Bearer KEY", "refused_key", asks)
    exchange.key = key
    if not key.open:
        raise RefusedError(403, "this key has been closed", "refused_key")
    quota = keys.spend(key, part)
    exchange.added += [
        (b"ratelimit-policy", f'"default";q={quota.limit};w={keys.WINDOW}'.encode()),
        (b"ratelimit", f'"default";r={max(0, quota.left)};t={quota.seconds}'.encode()),
    ]
    if quota.left < 0:
        detail = "the requests of this key are used up for now; Retry-After says when to come again"
        raise RefusedError(429, detail, "refused_quota", [(b"retry-after", str(quota.seconds).encode())])


def check_header(exchange: Exchange, most: int | None = None) -> None:
    """Refuse what the header already shows to be wrong.

    Args:
        exchange: the request.
        most: bytes that its body may have; None where its length is free.

    Raises:
        RefusedError: a content coding (415), or a body announced as longer than is read (413).
    """
    for name, value in exchange.scope["headers"]:
        if name == b"content-encoding" and value.strip().lower() not in (b"", b"identity"):
            reads = [(b"accept-encoding", b"identity")]
            raise RefusedError(415, "send the body as it is, without a content coding", extra=reads)
        if name == b"content-length" and most is not None and int(value) > most:
            raise _too_large(most)


def _too_large(most: int) -> RefusedError:
    detail = f"the request body is larger than the {most} bytes that the service reads"
    return RefusedError(413, detail, "refused_too_large")


async def whole_body(exchange: Exchange, settings: ServerSettings) -> bytes:
    """Read the body to its end.

    Raises:
        GoneError: the caller went away.
        RefusedError: it is longer than is read (413) or does not arrive in time (408).
    """
    chunks: list[bytes] = []
    try:
        async with asyncio.timeout(settings.body_seconds):
            while True:
                message: Any = await exchange.receive()
                if message["type"] == "http.disconnect":
                    raise GoneError
                chunks.append(message["body"])
                exchange.body += len(message["body"])
                if exchange.body > settings.max_body_bytes:
                    raise _too_large(settings.max_body_bytes)
                if not message["more_body"]:
                    exchange.has_body = False
                    return b"".join(chunks)
    except TimeoutError:
        detail = f"the request body did not arrive within {settings.body_seconds:g} s"
        raise RefusedError(408, detail, "cut_body") from None
