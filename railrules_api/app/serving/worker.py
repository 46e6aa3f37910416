"""A worker: one process with one event loop that serves the sockets its supervisor has opened."""

from __future__ import annotations

import asyncio
import contextlib
import os
import signal
from functools import lru_cache
from typing import TYPE_CHECKING, Any

import uvicorn

from railrules_api.api import bulk, discovery
from railrules_api.api.headers import accepted
from railrules_api.api.resources import operations
from railrules_api.app.serving import logs
from railrules_api.app.serving.drain import Drain
from railrules_api.app.serving.gate import Gate
from railrules_api.app.serving.protocol import GuardedConfig, GuardedProtocol

if TYPE_CHECKING:
    import socket
    from collections.abc import Callable, Mapping
    from types import FrameType

    from litestar.types import ASGIApp

    from railrules_api.app.serving.board import Part
    from railrules_api.app.serving.keys import Key
    from railrules_api.app.serving.settings import ServerSettings

BEAT_SECONDS = 0.1


def templates() -> tuple[str, ...]:
    """Return the route templates of every operation."""
    return tuple(dict.fromkeys(operation.path for operation in (*operations(), *discovery.operations())))


def route_finder(routes: tuple[str, ...]) -> Callable[[str], str]:
    """Return the function from a path to its route template, `unmatched` where there is none."""
    known = frozenset(routes)

    def find(path: str) -> str:
        path = path.rstrip("/") or "/"
        if path in known:
            return path
        template = path.rpartition("/")[0] + "/{id}"
        return template if template in known else "unmatched"

    return find


def slow_finder() -> Callable[[str, str], bool]:
    """Return the function from a route template and an Accept header to whether the answer is worked in a thread."""
    table = (*operations(), *discovery.operations())
    always = frozenset(operation.path for operation in table if operation.slow)
    forms = {operation.path: operation for operation in table if operation.slow_forms}

    @lru_cache(maxsize=256)
    def is_slow(route: str, accept: str) -> bool:
        if route in always:
            return True
        operation = forms.get(route)
        return operation is not None and accepted(accept or "*/*", operation.media_types) in operation.slow_forms

    return is_slow


def guarded(app: ASGIApp, settings: ServerSettings, part: Part, drain: Drain, keys: Mapping[str, Key]) -> Gate:
    """Return the application behind its gate, as a worker serves it."""
    return Gate(app, settings, part, drain, keys, route_finder(templates()), slow_finder(), frozenset({bulk.PATH}))


class _Server(uvicorn.Server):
    """The ASGI server with a drain before its end and a heartbeat."""

    def __init__(self, config: GuardedConfig, gate: Gate, parent: int, sockets: list[socket.socket]) -> None:
        super().__init__(config)
        self.gate, self.parent = gate, parent
        self._spare = [listener.dup() for listener in sockets]

    def handle_exit(self, sig: int, frame: FrameType | None) -> None:  # noqa: ARG002  a signal handler's signature
        """Begin the drain; the process then ends by itself, so the signal is not raised again."""
        self.gate.drain.begin()

    async def on_tick(self, counter: int) -> bool:
        """Beat, and end when the drain is over or the supervisor is gone."""
        drain = self.gate.drain
        if os.getppid() != self.parent and not drain.begun:
            drain.begin()
        self.beat()
        if drain.over:
            self.should_exit = True
        return await super().on_tick(counter)

    def beat(self) -> None:
        """Say that the event loop turns."""
        self.gate.part.beat(
            ready=self.started and not self.gate.drain.begun,
            in_progress=self.gate.in_progress,
            waiting=self.gate.waiting,
            connections=len(self.server_state.connections),
        )

    async def shutdown(self, sockets: list[socket.socket] | None = None) -> None:
        """Go down, still beating: connections may take their time to close."""
        beating = asyncio.create_task(self._beat_on())
        await self._take_the_last()
        await super().shutdown(sockets)
        beating.cancel()

    async def _take_the_last(self) -> None:
        """Take the connections that the kernel has taken for us: closing the listener would reset them."""
        for server in self.servers:
            server.close()
        taken = []
        for listener in self._spare:
            listener.setblocking(False)
            with contextlib.suppress(OSError):
                while True:
                    taken.append(listener.accept()[0])
            listener.close()
        loop = asyncio.get_running_loop()
        for connection in taken:
            connection.setblocking(False)
            await loop.connect_accepted_socket(
                lambda: GuardedProtocol(config=self.config, server_state=self.server_state, app_state={}, _loop=loop), connection
            )

    async def _beat_on(self) -> None:
        while True:
            self.beat()
            await asyncio.sleep(BEAT_SECONDS)


def run(  # noqa: PLR0913, PLR0917  made in one place, from what a supervisor has
    app: ASGIApp,
    settings: ServerSettings,
    part: Part,
    keys: Mapping[str, Key],
    sockets: list[socket.socket],
    parent: int,
) -> None:
    """Serve until told to stop."""
    logs.install()
    gate = guarded(app, settings, part, Drain(settings.drain_seconds), keys)
    flags: dict[str, Any] = {
        "loop": "uvloop",
        "ws": "none",
        "lifespan": "off",
        "interface": "asgi3",
        "log_config": None,
        "access_log": False,
        "server_header": False,
        # who a request comes from decides nothing here, so no header is believed
        "proxy_headers": False,
        "backlog": settings.backlog,
        "timeout_keep_alive": settings.idle_seconds,
        "timeout_graceful_shutdown": max(1, round(settings.grace_seconds)),
    }
    server = _Server(GuardedConfig(gate, settings, part, **flags), gate, parent, sockets)
    server.run(sockets)
    logs.line("worker stopped")


def end(code: int) -> None:
    """Leave a forked process at once: threads that are still at work, and the supervisor's own clean-up, are not waited for."""
    signal.set_wakeup_fd(-1)
    os._exit(code)
