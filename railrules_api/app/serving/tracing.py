"""Spans of OpenTelemetry, one for each request, named after the conventions for HTTP servers; off unless the setting says so.

This knows the interface of OpenTelemetry only. Which SDK makes spans of it, and where they go, is the deployment's choice;
without an SDK nothing is made and nothing leaves the process.
"""

from __future__ import annotations

from http import HTTPStatus
from typing import TYPE_CHECKING

from opentelemetry import trace
from opentelemetry.trace import SpanKind, Status, StatusCode
from opentelemetry.trace.propagation.tracecontext import TraceContextTextMapPropagator

from railrules_api import __version__
from railrules_api.app.serving.board import METHODS

if TYPE_CHECKING:
    from contextlib import AbstractContextManager

    from opentelemetry.trace import Span, TracerProvider

SCHEMA = "https://opentelemetry.io/schemas/1.37.0"
_OTHER = METHODS[-1]


class Tracing:
    """Makes the spans of a worker."""

    def __init__(self, provider: TracerProvider | None = None) -> None:
        """Take a provider of spans; left out, the one that the process has been given."""
        self._tracer = trace.get_tracer("railrules", __version__, provider, schema_url=SCHEMA)
        self._propagator = TraceContextTextMapPropagator()

    def begin(self, method: str, template: str, path: str, scheme: str, carried: dict[str, str]) -> Span:
        """Return the span of a request that has come.

        Args:
            method: of the request.
            template: of its route.
            path: as it was sent.
            scheme: http or https.
            carried: its `traceparent` and `tracestate`, those of them that it has.
        """
        known = method if method in METHODS else _OTHER
        attributes = {"http.request.method": known, "http.route": template, "url.path": path, "url.scheme": scheme}
        if known == _OTHER:
            attributes["http.request.method_original"] = method
        name = f"{'HTTP' if known == _OTHER else known} {template}"
        return self._tracer.start_span(name, self._propagator.extract(carried), SpanKind.SERVER, attributes)

    @staticmethod
    def current(span: Span) -> AbstractContextManager[Span]:
        """Return the context in which a span is the current one, so that others stand below it."""
        return trace.use_span(span, end_on_exit=False, record_exception=False, set_status_on_exception=False)

    def traceparent(self, span: Span) -> bytes:
        """Return the trace context of a span as a header; empty where there is no SDK and the request had none."""
        carrier: dict[str, str] = {}
        self._propagator.inject(carrier, trace.set_span_in_context(span))
        return carrier.get("traceparent", "").encode()

    @staticmethod
    def end(span: Span, status: int) -> None:
        """End a span with the status of the answer; 0 for a caller who went away before there was one."""
        if status:
            span.set_attribute("http.response.status_code", status)
        if status >= HTTPStatus.INTERNAL_SERVER_ERROR:
            span.set_attribute("error.type", str(status))
            span.set_status(Status(StatusCode.ERROR))
        span.end()
