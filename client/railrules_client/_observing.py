"""What others may see of a call: hooks, and a log without secrets."""

from __future__ import annotations

import logging
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import httpx

LOGGER = logging.getLogger("railrules_client")
_SHOWN = frozenset({
    "accept", "cache-control", "content-length", "content-type", "date", "etag", "if-none-match", "retry-after",
    "user-agent", "vary", "x-request-id",
})  # fmt: skip
"""Headers whose values may stand in a log; every other value is hidden, so that no key of any kind gets there."""


@dataclass(slots=True)
class Exchange:
    """One attempt at a call.

    Attributes:
        operation: operationId of the OpenAPI document.
        request: the request; a hook may add headers before it is sent.
        attempt: 0 for the first, then one more each repetition.
        request_id: name of the call, the same in every attempt.
        response: the response, once there is one.
        error: what came instead of a response.
        seconds: how long it took.
        notes: whatever a hook wants to keep from before to after.
    """

    operation: str
    request: httpx.Request
    attempt: int
    request_id: str
    response: httpx.Response | None = None
    error: Exception | None = None
    seconds: float = 0.0
    notes: dict[str, object] = field(default_factory=dict[str, object])


class Hook:
    """Something that is told of every attempt. Override what you need."""

    def before(self, exchange: Exchange) -> None:
        """Act before a request is sent."""

    def after(self, exchange: Exchange) -> None:
        """Act once there is a response or an error."""


def hidden(headers: httpx.Headers) -> dict[str, str]:
    """Return headers as they may stand in a log."""
    return {name: value if name in _SHOWN else "hidden" for name, value in headers.items()}


class LogHook(Hook):
    """Writes a line an attempt to the logger `railrules_client`: INFO what happened, DEBUG headers without secrets."""

    def before(self, exchange: Exchange) -> None:
        """Tell the request's headers."""
        if LOGGER.isEnabledFor(logging.DEBUG):
            LOGGER.debug("%s sends %s", exchange.request_id, hidden(exchange.request.headers))

    def after(self, exchange: Exchange) -> None:
        """Tell what happened."""
        request = exchange.request
        outcome = type(exchange.error).__name__ if exchange.response is None else str(exchange.response.status_code)
        LOGGER.info(
            "%s %s %s: %s in %.3f s, attempt %d",
            exchange.request_id, request.method, request.url.path, outcome, exchange.seconds, exchange.attempt + 1,
        )  # fmt: skip
        if exchange.response is not None and LOGGER.isEnabledFor(logging.DEBUG):
            LOGGER.debug("%s gets %s", exchange.request_id, hidden(exchange.response.headers))
