"""The listener for the operator: health and metrics, on a port of its own, answered by the supervisor.

It works while the workers are at their limit, so a probe does not take an overloaded service for a dead one. It reads
no more than a request line's worth, keeps few connections, and gives each a few seconds.
"""

from __future__ import annotations

import contextlib
import selectors
import time
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from railrules_api.app.serving import metrics

if TYPE_CHECKING:
    import socket
    from collections.abc import Callable

    from railrules_api.app.serving.board import Board

_MOST_BYTES = 8192
_MOST_CONNECTIONS = 64
_SECONDS = 5.0
_PLAIN = "text/plain; charset=utf-8"


@dataclass(slots=True)
class _Caller:
    """A connection of the operator's."""

    until: float
    received: bytes = b""
    answer: bytes = field(default=b"")


class Management:
    """The listener."""

    def __init__(self, listener: socket.socket, board: Board, stopping: Callable[[], bool]) -> None:
        """Listen.

        Args:
            listener: a socket that listens.
            board: the workers' numbers.
            stopping: tells whether the service is about to stop.
        """
        self.board, self.stopping = board, stopping
        self.listener = listener
        listener.setblocking(False)
        self.selector = selectors.DefaultSelector()
        self.selector.register(listener, selectors.EVENT_READ)
        self._callers: dict[socket.socket, _Caller] = {}

    def wait(self, seconds: float) -> None:
        """Serve what comes within some seconds."""
        for chosen, _ in self.selector.select(seconds):
            if chosen.fileobj is self.listener:
                self._accept()
            elif chosen.fileobj in self._callers:
                self._serve(chosen.fileobj)
            elif chosen.data is not None:
                chosen.data()
        now = time.monotonic()
        for connection in [connection for connection, caller in self._callers.items() if caller.until < now]:
            self._drop(connection)

    def close(self) -> None:
        """Close everything."""
        for connection in list(self._callers):
            self._drop(connection)
        self.selector.close()
        self.listener.close()

    def forget(self) -> None:
        """Let go in a forked process. Nothing is unregistered: the selector's inside is still the parent's too."""
        self.selector.close()
        self.listener.close()
        for connection in self._callers:
            connection.close()

    def _accept(self) -> None:
        try:
            connection, _ = self.listener.accept()
        except OSError:
            return
        if len(self._callers) >= _MOST_CONNECTIONS:
            connection.close()
            return
        connection.setblocking(False)
        self._callers[connection] = _Caller(time.monotonic() + _SECONDS)
        self.selector.register(connection, selectors.EVENT_READ)

    def _drop(self, connection: socket.socket) -> None:
        del self._callers[connection]
        with contextlib.suppress(KeyError, ValueError):
            self.selector.unregister(connection)
        connection.close()

    def _serve(self, connection: socket.socket) -> None:
        caller = self._callers[connection]
        try:
            if caller.answer:
                caller.answer = caller.answer[connection.send(caller.answer) :]
                if not caller.answer:
                    self._drop(connection)
                return
            data = connection.recv(_MOST_BYTES)
        except BlockingIOError:
            return
        except OSError:
            self._drop(connection)
            return
        caller.received += data
        if not data or len(caller.received) > _MOST_BYTES:
            self._drop(connection)
        elif b"\r\n\r\n" in caller.received:
            caller.answer = self.answer(caller.received.partition(b"\r\n")[0])
            self.selector.modify(connection, selectors.EVENT_WRITE)

    def answer(self, request_line: bytes) -> bytes:
        """Return the whole answer to a request line."""
        method, _, rest = request_line.partition(b" ")
        path = rest.partition(b" ")[0].partition(b"?")[0]
        if method not in (b"GET", b"HEAD"):
            status, kind, text = "405 Method Not Allowed", _PLAIN, "GET and HEAD only\n"
        elif path == b"/metrics":
            status, kind, text = "200 OK", metrics.MEDIA_TYPE, metrics.render(self.board)
        elif path == b"/health/live":
            status, kind, text = "200 OK", _PLAIN, "live\n"
        elif path == b"/health/ready":
            ready = self.board.ready() > 0 and not self.stopping()
            status, text = ("200 OK", "ready\n") if ready else ("503 Service Unavailable", "not ready\n")
            kind = _PLAIN
        else:
            status, kind, text = "404 Not Found", _PLAIN, "/metrics, /health/live, /health/ready\n"
        body = text.encode()
        head = f"HTTP/1.1 {status}\r\ncontent-type: {kind}\r\ncontent-length: {len(body)}\r\ncache-control: no-store\r\n"
        allow = "allow: GET, HEAD\r\n" if status.startswith("405") else ""
        return (head + allow + "connection: close\r\n\r\n").encode() + (b"" if method == b"HEAD" else body)
