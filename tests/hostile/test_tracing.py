"""Spans: one a request, named by its route, under the caller's trace; and nothing at all while they are off."""

from __future__ import annotations

import asyncio
import json
import sys
from typing import TYPE_CHECKING, Any

import pytest
from opentelemetry import trace
from opentelemetry.sdk.trace import TracerProvider
from opentelemetry.sdk.trace.export import SimpleSpanProcessor
from opentelemetry.sdk.trace.export.in_memory_span_exporter import InMemorySpanExporter
from opentelemetry.trace import SpanKind, StatusCode

from railrules_api.app.serving.settings import ServerSettings, SettingsError
from railrules_api.app.serving.tracing import Tracing
from railrules_api.app.serving.worker import tracing_of
from tests.hostile.asgi import Told, ask, gate_of

if TYPE_CHECKING:
    from opentelemetry.sdk.trace import ReadableSpan

    from railrules_api.app.serving.gate import Gate

SENT = "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01"


@pytest.fixture
def spans() -> InMemorySpanExporter:
    return InMemorySpanExporter()


@pytest.fixture
def tracing(spans: InMemorySpanExporter) -> Tracing:
    provider = TracerProvider(shutdown_on_exit=False)
    provider.add_span_processor(SimpleSpanProcessor(spans))
    return Tracing(provider)


def one(gate: Gate, spans: InMemorySpanExporter, *arguments: Any, **named: Any) -> tuple[Told, ReadableSpan]:
    told = asyncio.run(ask(gate, *arguments, **named))
    [span] = spans.get_finished_spans()
    return told, span


def test_a_span_is_named_by_its_route_and_stands_under_the_trace_of_the_caller(
    tracing: Tracing, spans: InMemorySpanExporter, capfd: pytest.CaptureFixture[str]
) -> None:
    gate, _ = gate_of(tracing=tracing, access_log=True)
    told, span = one(gate, spans, "/ok", headers={"traceparent": SENT, "tracestate": "a=b"})
    assert (span.name, span.kind) == ("POST /ok", SpanKind.SERVER)
    assert span.attributes == {
        "http.request.method": "POST",
        "http.route": "/ok",
        "url.path": "/ok",
        "url.scheme": "http",
        "http.response.status_code": 200,
    }
    assert span.parent is not None
    assert span.parent.trace_state.get("a") == "b"
    assert f"{span.parent.trace_id:032x}-{span.parent.span_id:016x}" == SENT[3:52]
    # the answer and the log name the span itself
    assert told.headers["traceparent"] == f"00-{span.context.trace_id:032x}-{span.context.span_id:016x}-01"
    assert json.loads(capfd.readouterr().out)["trace_id"] == SENT[3:35]
    assert span.status.status_code is StatusCode.UNSET


def test_what_is_within_a_request_stands_under_its_span(tracing: Tracing, spans: InMemorySpanExporter) -> None:
    gate, _ = gate_of(tracing=tracing, thread_above_bytes=0)
    seen: list[int] = []
    inner = gate.app

    async def app(scope: Any, receive: Any, send: Any) -> None:
        seen.append(trace.get_current_span().get_span_context().span_id)
        await asyncio.to_thread(lambda: seen.append(trace.get_current_span().get_span_context().span_id))
        await inner(scope, receive, send)

    gate.app = app
    _, span = one(gate, spans, "/ok", chunks=(b"large",))
    assert seen == [span.context.span_id] * 2


@pytest.mark.parametrize(
    ("path", "method", "name", "status", "fails"),
    [
        ("/elsewhere", "POST", "POST unmatched", 200, False),
        ("/ok", "FROB", "HTTP /ok", 200, False),
        ("/fail", "POST", "POST /fail", 500, True),
    ],
)
def test_names_and_failures(  # noqa: PLR0913
    path: str, method: str, name: str, status: int, *, fails: bool, tracing: Tracing, spans: InMemorySpanExporter
) -> None:
    gate, _ = gate_of(tracing=tracing)
    told, span = one(gate, spans, path, method=method)
    assert (told.status, span.name) == (status, name)
    assert span.attributes is not None
    assert span.attributes.get("http.request.method_original") == ("FROB" if method == "FROB" else None)
    assert span.attributes.get("error.type") == ("500" if fails else None)
    assert (span.status.status_code is StatusCode.ERROR) is fails
    # what went wrong may hold what a caller sent
    assert not span.events


def test_a_caller_who_goes_away_ends_the_span_too(tracing: Tracing, spans: InMemorySpanExporter) -> None:
    gate, _ = gate_of(tracing=tracing)
    told, span = one(gate, spans, "/ok", chunks=(b"a",), ends=False, leaves=True)
    assert told.status == 0
    assert span.attributes is not None
    assert "http.response.status_code" not in span.attributes


def test_without_an_sdk_the_trace_of_the_caller_goes_on() -> None:
    gate, _ = gate_of(tracing=Tracing(trace.NoOpTracerProvider()))
    [with_one, without] = [asyncio.run(ask(gate, headers=headers)) for headers in ({"traceparent": SENT}, {})]
    assert with_one.headers["traceparent"].split("-")[1] == SENT.split("-")[1]
    assert without.headers["traceparent"].endswith("-00")


def test_spans_are_made_only_when_asked_for_and_a_library_that_lacks_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    assert tracing_of(ServerSettings()) is None
    assert isinstance(tracing_of(ServerSettings(trace=True)), Tracing)
    monkeypatch.delitem(sys.modules, "railrules_api.app.serving.tracing")
    monkeypatch.setitem(sys.modules, "opentelemetry", None)
    with pytest.raises(SettingsError, match=r"railrules\[tracing\]"):
        tracing_of(ServerSettings(trace=True))
