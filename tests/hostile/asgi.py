"""The gate around an application of the test's own, and a caller without a network."""

from __future__ import annotations

import asyncio
import time
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any

from railrules_api.api.edge import SETTLED
from railrules_api.app.serving.board import Board
from railrules_api.app.serving.drain import Drain
from railrules_api.app.serving.gate import Gate
from railrules_api.app.serving.settings import ServerSettings

if TYPE_CHECKING:
    from collections.abc import Awaitable, Callable, Mapping

    from railrules_api.app.serving.keys import Key
    from railrules_api.app.serving.tracing import Tracing


@dataclass
class Told:
    """What the gate answered."""

    status: int = 0
    headers: dict[str, str] = field(default_factory=dict)
    body: bytes = b""
    ended: bool = False


class Inner:
    """An application that answers 200, blocks the event loop for a while, waits, works in a thread, or fails."""

    def __init__(self) -> None:
        self.seen: list[dict[str, Any]] = []

    async def __call__(self, scope: Any, receive: Any, send: Any) -> None:
        if scope["path"] == "/stream":
            await self._stream(receive, send)
            return
        message = await receive()
        self.seen.append({"headers": dict(scope["headers"]), "body": message["body"], "path": scope["path"]})
        path: str = scope["path"]
        if path == "/block":
            time.sleep(0.005)  # noqa: ASYNC251  that it blocks the loop is the point
        elif path == "/thread":
            await asyncio.to_thread(time.sleep, 0.4)
        elif path == "/wait":
            await asyncio.sleep(0.2)
        elif path == "/fail":
            raise RuntimeError("secret of a caller")
        elif path == "/lines":
            await send({"type": "http.response.start", "status": 200, "headers": []})
            gone = asyncio.create_task(receive())
            try:
                await asyncio.wait((gone,), timeout=0.4)
                self.seen.append({"gone": gone.result() if gone.done() else None})
            except asyncio.CancelledError:
                await send({"type": "http.response.body", "body": b"given up"})
                raise
            finally:
                gone.cancel()
            return
        elif path == "/half":
            await send({"type": "http.response.start", "status": 200, "headers": []})
            raise RuntimeError
        request_id, trace = scope[SETTLED]
        named = [(b"content-length", b"2"), (b"x-request-id", request_id), (b"traceparent", trace)]
        await send({"type": "http.response.start", "status": 200, "headers": named})
        await send({"type": "http.response.body", "body": b"ok"})

    async def _stream(self, receive: Any, send: Any) -> None:
        await send({"type": "http.response.start", "status": 200, "headers": []})
        more = True
        while more:
            message = await receive()
            if message["type"] == "http.disconnect":
                return
            more = message["more_body"]
            await send({"type": "http.response.body", "body": message["body"].upper(), "more_body": more})


class Table:
    """A table of operations of the test's own."""

    def __init__(self, known: tuple[str, ...]) -> None:
        self.known = known

    def template(self, path: str) -> str:
        return path if path in self.known else "unmatched"

    def is_slow(self, template: str, accept: str) -> bool:
        return template in {"/thread", "/wait", "/lines"} or accept == "slow"

    def is_probe(self, template: str) -> bool:
        return template in {"/health/live", "/health/ready"}


def gate_of(keys: Mapping[str, Key] | None = None, tracing: Tracing | None = None, **limits: Any) -> tuple[Gate, Inner]:
    """Return a gate with its limits around an application, which it returns too."""
    inner = Inner()
    settings = ServerSettings(**{"access_log": False, **limits})
    board = Board(1, ("/block", "/thread", "/wait", "/lines", "/fail", "/ok", "/health/live", "/health/ready"), len(keys or {}))
    gate = Gate(
        inner,
        settings,
        board.part(0),
        Drain(0.2),
        keys or {},
        Table(board.routes),
        frozenset({"/stream"}),
        tracing,
    )
    return gate, inner


async def ask(  # noqa: PLR0913
    gate: Callable[..., Awaitable[None]],
    path: str = "/ok",
    *,
    method: str = "POST",
    headers: Mapping[str, str] | None = None,
    chunks: tuple[bytes, ...] = (),
    ends: bool = True,
    leaves: bool = False,
) -> Told:
    """Put a request to the gate. Without `ends` the body never does; with `leaves` the caller goes away after its chunks."""
    told = Told()
    waiting = list(chunks)
    named = {"host": "a", **(headers or {})}
    if chunks and "content-length" not in named:
        named["transfer-encoding"] = "chunked"

    async def receive() -> dict[str, Any]:
        if waiting:
            chunk = waiting.pop(0)
            return {"type": "http.request", "body": chunk, "more_body": bool(waiting) or not ends}
        if leaves or ends:
            return {"type": "http.disconnect"}
        await asyncio.sleep(3600)
        raise AssertionError

    async def send(message: dict[str, Any]) -> None:
        if message["type"] == "http.response.start":
            assert not told.status
            told.status = message["status"]
            told.headers = {name.decode(): value.decode() for name, value in message["headers"]}
            assert len(told.headers) == len(message["headers"]), "a header field twice"
        else:
            told.body += message.get("body", b"")
            told.ended = not message.get("more_body", False)

    scope = {
        "type": "http",
        "method": method,
        "path": path,
        "query_string": b"",
        "headers": [(name.encode(), value.encode()) for name, value in named.items()],
    }
    await gate(scope, receive, send)
    return told
