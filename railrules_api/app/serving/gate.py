"""What stands before the application in a worker: keys, quotas, limits of the body, whose turn it is, metrics, the access log.

It reads the whole body before it asks the application, so a slow caller costs a connection and never a turn.
"""

from __future__ import annotations

import asyncio
import contextlib
import time
from http import HTTPStatus
from typing import TYPE_CHECKING, Any, Protocol, cast

from railrules_api.api.edge import SETTLED, request_id_of, told, traceparent_of
from railrules_api.app.serving import logs
from railrules_api.app.serving.admission import Lane, OverloadedError
from railrules_api.app.serving.entrance import check_header, check_key, whole_body
from railrules_api.app.serving.exchange import Exchange, GoneError, RefusedError
from railrules_api.app.serving.refusals import refusal

if TYPE_CHECKING:
    from collections.abc import Mapping

    from litestar.types import ASGIApp, Message, Receive, Scope, Send
    from opentelemetry.trace import Span

    from railrules_api.app.serving.board import Part
    from railrules_api.app.serving.drain import Drain
    from railrules_api.app.serving.keys import Key
    from railrules_api.app.serving.refusals import Headers
    from railrules_api.app.serving.settings import ServerSettings
    from railrules_api.app.serving.tracing import Tracing

READY = "/health/ready"
_CLOSE = (b"connection", b"close")


class Table(Protocol):
    """What the gate asks of the table of operations."""

    def template(self, path: str) -> str:
        """Return the route template of a path."""
        ...

    def is_slow(self, template: str, accept: str) -> bool:
        """Tell whether an answer is worked in a thread whatever the body."""
        ...

    def is_probe(self, template: str) -> bool:
        """Tell whether a template is answered without a key, whatever the load."""
        ...


class Gate:
    """An ASGI application around the service's own."""

    def __init__(  # noqa: PLR0913, PLR0917  made in one place, from what a worker has
        self,
        app: ASGIApp,
        settings: ServerSettings,
        part: Part,
        drain: Drain,
        known_keys: Mapping[str, Key],
        routes: Table,
        streams: frozenset[str] = frozenset(),
        tracing: Tracing | None = None,
    ) -> None:
        """Stand before an application.

        Args:
            app: the application.
            settings: limits.
            part: where this worker counts.
            drain: whether the worker is about to stop.
            known_keys: API keys by name; empty for an open service.
            routes: the table of operations.
            streams: paths whose bodies are read while they are answered, and have no end that is known.
            tracing: makes a span of each request; None for none.
        """
        self.app, self.settings, self.part, self.drain = app, settings, part, drain
        self.keys, self.routes, self.streams, self.tracing = known_keys, routes, streams, tracing
        self.stream_lane = Lane(settings.streams_at_once, 0, settings.waiting_seconds)
        self.light = Lane(1, settings.light_waiting, settings.waiting_seconds)
        self.heavy = Lane(settings.heavy_at_once, settings.heavy_waiting, settings.waiting_seconds)
        self.in_progress = 0
        self.overdue = 0
        self._late: set[asyncio.Task[None]] = set()

    @property
    def waiting(self) -> int:
        """How many requests wait for their turn."""
        return self.light.waiting + self.heavy.waiting

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        kind: str = scope["type"]
        if kind != "http":
            return
        exchange = self._exchange(scope, receive, send)
        self.in_progress += 1
        try:
            with self._current(exchange):
                await self._answer(exchange)
        except RefusedError as refused:
            await self._refuse(exchange, refused)
        except GoneError:
            self.part.count("gone")
        except asyncio.CancelledError:
            raise
        except Exception as error:  # noqa: BLE001  whatever it is, the caller gets an answer and the worker goes on
            logs.line("failed", level="error", request_id=exchange.request_id.decode(), error=type(error).__name__)
            if not exchange.status:
                await self._refuse(exchange, RefusedError(500, "the service failed on this request; the fault is ours"))
        finally:
            self.in_progress -= 1
            self._tell(exchange)

    def _exchange(self, scope: Any, receive: Receive, send: Send) -> Exchange:  # noqa: ANN401  an HTTP scope, which a union of types hides
        accept, has_body = b"", False
        for name, value in scope["headers"]:
            if name == b"accept":
                accept = value
            elif name == b"transfer-encoding" or (name == b"content-length" and value != b"0"):
                has_body = True
        sent_id, sent_trace = told(scope["headers"])
        template = self.routes.template(scope["path"])
        span = self._span(scope, template, sent_trace)
        trace = (self.tracing.traceparent(span) if self.tracing and span else b"") or traceparent_of(sent_trace)
        return Exchange(
            scope, template, receive, send, request_id_of(sent_id), trace, accept.decode("latin-1"), time.perf_counter(),
            has_body=has_body, span=span,
        )  # fmt: skip

    def _span(self, scope: Any, template: str, sent_trace: bytes) -> Span | None:  # noqa: ANN401  an HTTP scope
        if self.tracing is None:
            return None
        carried = {"traceparent": sent_trace.decode("latin-1")} if sent_trace else {}
        states = [value.decode("latin-1") for name, value in scope["headers"] if name == b"tracestate"]
        if carried and states:
            carried["tracestate"] = ",".join(states)
        return self.tracing.begin(scope["method"], template, scope["path"], scope.get("scheme", "http"), carried)

    def _current(self, exchange: Exchange) -> contextlib.AbstractContextManager[object]:
        if self.tracing is None or exchange.span is None:
            return contextlib.nullcontext()
        return self.tracing.current(exchange.span)

    def _tell(self, exchange: Exchange) -> None:
        seconds = time.perf_counter() - exchange.started
        self.part.observe(exchange.route, exchange.scope["method"], exchange.status, seconds)
        if self.tracing is not None and exchange.span is not None:
            self.tracing.end(exchange.span, exchange.status)
        if self.settings.access_log:
            logs.line(
                "answered" if exchange.status else "gone",
                request_id=exchange.request_id.decode(),
                trace_id=exchange.trace[3:35].decode(),
                method=exchange.scope["method"],
                route=exchange.route,
                status=exchange.status,
                seconds=round(seconds, 6),
                bytes_in=exchange.body,
                bytes_out=exchange.sent,
                key=exchange.key.name if exchange.key else "",
            )

    # ---------------------------------------------------------------- the answer

    async def _answer(self, exchange: Exchange) -> None:
        path = exchange.scope["path"]
        if self.routes.is_probe(exchange.route):
            if self.drain.begun and exchange.route == READY:
                raise RefusedError(503, "the service is about to stop", extra=self._retry())
            await self._work(exchange, b"")
            return
        if self.keys:
            check_key(exchange, self.keys, self.part)
        if path in self.streams:
            await self._stream(exchange)
            return
        body = b""
        if exchange.has_body:
            check_header(exchange, self.settings.max_body_bytes)
            body = await whole_body(exchange, self.settings)
            if body.count(b",") >= self.settings.max_items:
                detail = f"the request body holds more than the {self.settings.max_items} values that the service reads"
                raise RefusedError(413, detail, "refused_too_large")
        heavy = len(body) > self.settings.thread_above_bytes or self.routes.is_slow(exchange.route, exchange.accept)
        lane = self.heavy if heavy else self.light
        await self._enter(lane)
        if heavy:
            await self._work_apart(exchange, body)
        else:
            try:
                await self._work(exchange, body)
            finally:
                lane.leave()

    async def _enter(self, lane: Lane) -> None:
        try:
            await lane.enter()
        except OverloadedError:
            detail = "the service has more work than it can do; Retry-After says when to come again"
            raise RefusedError(503, detail, "shed_queue_full_or_late", self._retry()) from None

    async def _stream(self, exchange: Exchange) -> None:
        """Let a body through piece by piece. Its length is free, so it is the pace that is held to a limit."""
        check_header(exchange)
        await self._enter(self.stream_lane)
        settings, waited, loop = self.settings, 0.0, asyncio.get_running_loop()

        async def receive() -> Any:  # noqa: ANN401  a message of ASGI
            nonlocal waited
            begun = loop.time()
            allowed = settings.body_seconds + exchange.body / settings.stream_bytes_per_second - waited
            try:
                async with asyncio.timeout(min(allowed, settings.body_seconds)):
                    message: Any = await exchange.receive()
            except TimeoutError:
                self.part.count("cut_body")
                # the answer has begun, so it can only be left without its end
                return {"type": "http.disconnect"}
            waited += loop.time() - begun
            exchange.body += len(message.get("body", b""))
            exchange.has_body = message.get("more_body", False)
            return message

        try:
            await self._pass_on(exchange, receive)
        finally:
            self.stream_lane.leave()

    def _retry(self) -> Headers:
        return [(b"retry-after", str(self.settings.retry_seconds).encode())]

    async def _work_apart(self, exchange: Exchange, body: bytes) -> None:
        """Work an answer that runs in a thread and stop waiting when its time is over; it keeps its turn until it ends."""
        task = asyncio.create_task(self._work(exchange, body))

        def ended(_task: asyncio.Task[None]) -> None:
            self.heavy.leave()
            self._late.discard(task)

        task.add_done_callback(ended)
        done, _ = await asyncio.wait((task,), timeout=self.settings.work_seconds)
        if done:
            await task
            return
        self._late.add(task)
        asyncio.get_running_loop().call_later(self.settings.silence_seconds, self._still_late, task)
        if not exchange.status:
            detail = f"the answer was not ready within {self.settings.work_seconds:g} s"
            await self._refuse(exchange, RefusedError(503, detail, "shed_work_too_long", self._retry()))
            return
        # an answer of lines has begun: it ends with a line that says so
        self.part.count("shed_work_too_long")
        task.cancel()
        await asyncio.wait((task,), timeout=self.settings.silence_seconds)

    def _still_late(self, task: asyncio.Task[None]) -> None:
        if not task.done():
            # a thread cannot be stopped; a worker can
            logs.line("stuck", level="error")
            self.drain.begin()

    async def _work(self, exchange: Exchange, body: bytes) -> None:
        asked = False

        async def receive() -> Any:  # noqa: ANN401  a message of ASGI
            nonlocal asked
            if asked:
                while (message := await exchange.receive())["type"] != "http.disconnect":
                    pass  # the body has been read, or there is none
                return message
            asked = True
            return {"type": "http.request", "body": body, "more_body": False}

        await self._pass_on(exchange, receive)

    async def _pass_on(self, exchange: Exchange, receive: Receive) -> None:
        """Ask the application. It answers with the request id and the trace that the log has, and sees no key."""
        kept = [item for item in exchange.scope["headers"] if item[0] != b"authorization"]
        scope = {**exchange.scope, "headers": kept, SETTLED: (exchange.request_id, exchange.trace)}

        async def send(message: Message) -> None:
            if exchange.done:
                return
            last = message["type"] == "http.response.body" and not message.get("more_body", False)
            if last and exchange.has_body and exchange.status >= HTTPStatus.BAD_REQUEST:
                # the application has refused a stream that is still coming
                await self._send(exchange, {**message, "more_body": True})
                await self._linger(exchange)
                await self._send(exchange, {"type": "http.response.body", "body": b"", "more_body": False})
                return
            await self._send(exchange, message)

        await self.app(cast("Scope", scope), receive, send)

    async def _send(self, exchange: Exchange, message: Any) -> None:  # noqa: ANN401  a message of ASGI
        if message["type"] == "http.response.start":
            exchange.status = message["status"]
            headers = [*message["headers"], *exchange.added]
            if self.drain.begun or exchange.has_body:
                headers.append(_CLOSE)
            message["headers"] = headers
        else:
            exchange.sent += len(message.get("body", b""))
        await exchange.send(message)

    async def _refuse(self, exchange: Exchange, refused: RefusedError) -> None:
        if refused.event:
            self.part.count(refused.event)
        carried = [(b"x-request-id", exchange.request_id), (b"traceparent", exchange.trace)]
        headers, body = refusal(refused.status, refused.detail, [*carried, *refused.extra])
        await self._send(exchange, {"type": "http.response.start", "status": refused.status, "headers": headers})
        exchange.done = True
        if exchange.scope["method"] == "HEAD":
            body = b""
        await self._send(exchange, {"type": "http.response.body", "body": body, "more_body": exchange.has_body})
        if exchange.has_body:
            await self._linger(exchange)
            await self._send(exchange, {"type": "http.response.body", "body": b"", "more_body": False})

    async def _linger(self, exchange: Exchange) -> None:
        """Read on for a moment: closing on unread bytes would reset the connection and take the answer with it."""
        if any(name == b"expect" for name, _ in exchange.scope["headers"]):
            return  # it waits to be told to go on, and it is not
        left = self.settings.max_body_bytes
        try:
            async with asyncio.timeout(self.settings.linger_seconds):
                while left > 0:
                    message: Any = await exchange.receive()
                    if message["type"] == "http.disconnect" or not message["more_body"]:
                        return
                    left -= len(message["body"])
        except TimeoutError:
            return
