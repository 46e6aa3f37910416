"""Spans of calls, and what may not stand in them."""

from __future__ import annotations

from typing import TYPE_CHECKING

import httpx
import pytest
from opentelemetry.sdk.trace import TracerProvider
from opentelemetry.sdk.trace.export import SimpleSpanProcessor
from opentelemetry.sdk.trace.export.in_memory_span_exporter import InMemorySpanExporter
from opentelemetry.trace import SpanKind, StatusCode
from railrules_client.telemetry import OpenTelemetryHook

from tests.client.answers import ROW, problem, told

if TYPE_CHECKING:
    from tests.client.conftest import Ask


@pytest.fixture
def spans() -> tuple[TracerProvider, InMemorySpanExporter]:
    exporter, provider = InMemorySpanExporter(), TracerProvider()
    provider.add_span_processor(SimpleSpanProcessor(exporter))
    return provider, exporter


def test_each_attempt_is_a_span_that_the_service_is_told_of(
    ask: Ask, spans: tuple[TracerProvider, InMemorySpanExporter], waits: list[float]
) -> None:
    provider, exporter = spans
    seen: list[httpx.Request] = []

    def handler(request: httpx.Request) -> httpx.Response:
        seen.append(request)
        return told(200, ROW) if len(seen) > 1 else problem(503)

    with provider.get_tracer("the caller's own").start_as_current_span("estimate"):
        ask(handler, lambda client: client.rail_sections.get("136RE"), hooks=[OpenTelemetryHook(provider)], api_key="s3cret-key")
    first, second, outer = exporter.get_finished_spans()
    assert len(waits) == 1
    for span, request, status in ((first, seen[0], 503), (second, seen[1], 200)):
        assert span.kind is SpanKind.CLIENT
        assert span.parent is not None
        assert outer.context is not None
        assert span.parent.span_id == outer.context.span_id
        assert span.attributes is not None
        assert span.attributes["http.response.status_code"] == status
        assert span.attributes["http.request.method"] == "GET"
        assert span.context is not None
        assert request.headers["traceparent"].split("-")[1:3] == [f"{span.context.trace_id:032x}", f"{span.context.span_id:016x}"]
        assert "s3cret-key" not in span.to_json()
    assert first.status.status_code is StatusCode.ERROR
    assert second.status.status_code is StatusCode.UNSET
    assert second.attributes is not None
    assert second.attributes["http.request.resend_count"] == 1


def test_a_broken_connection_ends_its_span(ask: Ask, spans: tuple[TracerProvider, InMemorySpanExporter]) -> None:
    provider, exporter = spans

    def handler(request: httpx.Request) -> httpx.Response:
        raise httpx.ConnectError("no route", request=request)

    with pytest.raises(Exception, match="was not reached"):
        ask(handler, lambda client: client.rules.list(), hooks=[OpenTelemetryHook(provider)], retries=0)
    (span,) = exporter.get_finished_spans()
    assert span.attributes is not None
    assert span.attributes["error.type"] == "httpx.ConnectError"
    assert span.status.status_code is StatusCode.ERROR
