"""Calls as spans of OpenTelemetry (the extra `telemetry`).

    from railrules_client import Client
    from railrules_client.telemetry import OpenTelemetryHook

    client = Client("http://127.0.0.1:8000", hooks=[OpenTelemetryHook()])

Each attempt at a call is a client span, a child of the span it is made in; `traceparent` tells the service of it, so that its
own spans follow. Names are those of the semantic conventions for HTTP. No body, no header value and no key goes into a span.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, cast

from opentelemetry import propagate, trace
from opentelemetry.trace import SpanKind, Status, StatusCode

from railrules_client._observing import Exchange, Hook
from railrules_client._version import __version__

if TYPE_CHECKING:
    from opentelemetry.trace import Span, TracerProvider

_SPAN = "opentelemetry.span"
_FAILS = 400


class OpenTelemetryHook(Hook):
    """Makes a span of every attempt at a call. One will do for several clients."""

    def __init__(self, provider: TracerProvider | None = None) -> None:
        """Take a tracer.

        Args:
            provider: where spans go; the process's own when left out.
        """
        self._tracer = trace.get_tracer("railrules_client", __version__, provider)

    def before(self, exchange: Exchange) -> None:
        """Begin a span and send its name along."""
        request = exchange.request
        span = self._tracer.start_span(
            f"{request.method} {exchange.operation}",
            kind=SpanKind.CLIENT,
            attributes={
                "http.request.method": request.method,
                "url.full": str(request.url.copy_with(username=None, password=None)),
                "server.address": request.url.host,
                "server.port": request.url.port or (443 if request.url.scheme == "https" else 80),
                "railrules.request_id": exchange.request_id,
            },
        )
        if exchange.attempt:
            span.set_attribute("http.request.resend_count", exchange.attempt)
        propagate.inject(request.headers, trace.set_span_in_context(span))
        exchange.notes[_SPAN] = span

    def after(self, exchange: Exchange) -> None:
        """End the span with what came of the attempt."""
        span = cast("Span", exchange.notes.pop(_SPAN))
        if exchange.response is not None:
            status = exchange.response.status_code
            span.set_attribute("http.response.status_code", status)
            if status >= _FAILS:
                span.set_attribute("error.type", str(status))
                span.set_status(Status(StatusCode.ERROR))
        elif exchange.error is not None:
            kind = type(exchange.error)
            span.set_attribute("error.type", f"{kind.__module__}.{kind.__qualname__}")
            span.set_status(Status(StatusCode.ERROR))
        span.end()
