"""A worker: one process with one event loop that serves the sockets its supervisor has opened."""

from __future__ import annotations

import asyncio
import contextlib
import os
import signal
from typing import TYPE_CHECKING, Any

import uvicorn

from railrules_api.api import bulk
from railrules_api.app.serving import logs
from railrules_api.app.serving.drain import Drain
from railrules_api.app.serving.gate import Gate
from railrules_api.app.serving.protocol import GuardedConfig, GuardedProtocol
from railrules_api.app.serving.settings import SettingsError

if TYPE_CHECKING:
    import socket
    from collections.abc import Mapping
    from types import FrameType

    from litestar.types import ASGIApp

    from railrules_api.app.serving.board import Part
    from railrules_api.app.serving.keys import Key
    from railrules_api.app.serving.routes import Routes
    from railrules_api.app.serving.settings import ServerSettings
    from railrules_api.app.serving.tracing import Tracing

BEAT_SECONDS = 0.1


def guarded(  # noqa: PLR0913, PLR0917  made in one place, from what a worker has
    app: ASGIApp,
    settings: ServerSettings,
    part: Part,
    drain: Drain,
    keys: Mapping[str, Key],
    routes: Routes,
) -> Gate:
    """Return the application behind its gate, as a worker serves it.

    Raises:
        SettingsError: spans are asked for and the library that makes them is not there.
    """
    return Gate(app, settings, part, drain, keys, routes, frozenset({bulk.PATH}), tracing_of(settings))


def tracing_of(settings: ServerSettings) -> Tracing | None:
    """Return what makes spans, None when none are asked for.

    Raises:
        SettingsError: they are asked for and the library is not there.
    """
    if not settings.trace:
        return None
    try:
        from railrules_api.app.serving.tracing import Tracing  # noqa: PLC0415  an extra
    except ImportError as error:
        raise SettingsError(f"RAILRULES_TRACE=1 needs railrules[tracing]: {error}") from error
    return Tracing()


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
    routes: Routes,
    sockets: list[socket.socket],
    parent: int,
) -> None:
    """Serve until told to stop."""
    logs.install()
    gate = guarded(app, settings, part, Drain(settings.drain_seconds), keys, routes)
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
