"""One request and what is known of its answer, and the ways in which it ends before the application is asked."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from litestar.types import Receive, Send
    from opentelemetry.trace import Span

    from railrules_api.app.serving.keys import Key
    from railrules_api.app.serving.refusals import Headers


class RefusedError(Exception):
    """A request that is answered here."""

    def __init__(self, status: int, detail: str, event: str = "", extra: Headers | None = None) -> None:
        """Say how it is answered; `event` is what the metrics count it as, `extra` are further header fields."""
        super().__init__(detail)
        self.status, self.detail, self.event, self.extra = status, detail, event, extra or []


class GoneError(Exception):
    """The caller went away."""


@dataclass(slots=True)
class Exchange:
    """One request and what is known of its answer.

    Attributes:
        scope: of ASGI.
        route: its route template.
        receive: of ASGI.
        send: of ASGI.
        request_id: the caller's or a new one.
        trace: trace context of the answer.
        accept: its Accept header; empty for none.
        started: when its header was there, on the performance counter.
        key: whose key it came with.
        span: of OpenTelemetry; None while none are made.
        added: header fields of the answer besides those of the application.
        status: of the answer, 0 while there is none.
        sent: bytes of the answer.
        body: bytes of the body.
        has_body: whether its header announces one.
        done: the answer is complete; what still comes is thrown away.
    """

    scope: Any
    route: str
    receive: Receive
    send: Send
    request_id: bytes
    trace: bytes
    accept: str
    started: float
    key: Key | None = None
    span: Span | None = None
    added: Headers = field(default_factory=list)
    status: int = 0
    sent: int = 0
    body: int = 0
    has_body: bool = False
    done: bool = False
