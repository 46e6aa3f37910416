"""The first process: opens the sockets, makes the workers, replaces those that die or stand still, and brings all down.

The application is loaded once, before the workers are forked from it, so a worker is there within milliseconds and shares
the memory of the catalogue. Nothing here runs threads or an event loop, which would not survive a fork.
"""

from __future__ import annotations

import contextlib
import gc
import os
import selectors
import signal
import socket
import time
from dataclasses import dataclass
from typing import TYPE_CHECKING

from railrules_api.app.serving import logs, worker
from railrules_api.app.serving.management import Management

if TYPE_CHECKING:
    from collections.abc import Mapping

    from litestar.types import ASGIApp

    from railrules_api.app.serving.board import Board
    from railrules_api.app.serving.keys import Key
    from railrules_api.app.serving.routes import Routes
    from railrules_api.app.serving.settings import ServerSettings

_TICK = 0.1
_YOUNG = 1.0
"""A worker that lives for less than this [s] is taken to have failed at its start."""
_MOST_FAILURES = 5
_EXIT_FAILED = 3
_HANDLED = (signal.SIGTERM, signal.SIGINT, signal.SIGCHLD)


@dataclass(slots=True)
class _Child:
    """A worker process."""

    process: int
    since: float


class Supervisor:
    """The parent of the workers."""

    def __init__(  # noqa: PLR0913, PLR0917  made in one place, from what a server has
        self,
        app: ASGIApp,
        settings: ServerSettings,
        board: Board,
        keys: Mapping[str, Key],
        routes: Routes,
        listener: socket.socket,
        management: socket.socket,
    ) -> None:
        """Prepare; nothing runs yet."""
        self.app, self.settings, self.board, self.keys, self.routes = app, settings, board, keys, routes
        self.listener = listener
        self.stopping = 0.0
        self.failures = 0
        self.management = Management(management, board, lambda: self.stopping > 0.0)
        self.children: dict[int, _Child] = {}
        self._due: dict[int, float] = {}

    def run(self) -> int:
        """Run until told to stop; return the exit code."""
        woken, waker = socket.socketpair()
        woken.setblocking(False)
        waker.setblocking(False)
        signal.set_wakeup_fd(waker.fileno(), warn_on_full_buffer=False)
        for number in (signal.SIGTERM, signal.SIGINT):
            signal.signal(number, lambda _number, _frame: self.stop())
        signal.signal(signal.SIGCHLD, lambda _number, _frame: None)
        self.management.selector.register(woken, selectors.EVENT_READ, lambda: woken.recv(4096))
        # what is loaded now stays; a collection in a worker must not touch it and copy its pages
        gc.freeze()
        for place in range(self.settings.workers):
            self._start(place)
        while self.children or not self.stopping:
            self.management.wait(_TICK)
            self._reap()
            if self.stopping:
                self._hurry()
            else:
                self._replace()
                self._watch()
        self.management.close()
        logs.line("stopped")
        return _EXIT_FAILED if self.failures >= _MOST_FAILURES else 0

    def stop(self) -> None:
        """Bring the workers down: readiness first, then the rest; a second time at once."""
        if not self.stopping:
            self.stopping = time.monotonic()
            # the workers hold the socket now; with the last of them it closes
            self.listener.close()
        self._signal_all(signal.SIGTERM)

    # ---------------------------------------------------------------- workers

    def _start(self, place: int) -> None:
        self.board.clear(place)
        parent = os.getpid()
        # a signal between the fork and the worker's own handlers must not be taken for one to the supervisor
        signal.pthread_sigmask(signal.SIG_BLOCK, _HANDLED)
        process = os.fork()
        if process == 0:
            code = 1
            with contextlib.suppress(BaseException):
                self._become_worker(place, parent)
                code = 0
            worker.end(code)
        signal.pthread_sigmask(signal.SIG_UNBLOCK, _HANDLED)
        self.children[place] = _Child(process, time.monotonic())
        logs.line("worker started", worker=place, worker_process=process)

    def _become_worker(self, place: int, parent: int) -> None:
        signal.set_wakeup_fd(-1)
        for number in _HANDLED:
            signal.signal(number, signal.SIG_DFL)
        signal.pthread_sigmask(signal.SIG_UNBLOCK, _HANDLED)
        self.management.forget()
        worker.run(self.app, self.settings, self.board.part(place), self.keys, self.routes, [self.listener], parent)

    def _reap(self) -> None:
        for place, child in list(self.children.items()):
            process, status = os.waitpid(child.process, os.WNOHANG)
            if process == 0:
                continue
            del self.children[place]
            self.board.clear(place)
            if self.stopping:
                continue
            young = time.monotonic() - child.since < _YOUNG
            self.failures = self.failures + 1 if young else 0
            self.board.restarts += 1
            self._due[place] = time.monotonic() + (0.2 * 2**self.failures if young else 0.0)
            logs.line("worker lost", level="error", worker=place, worker_process=child.process, status=status)
            if self.failures >= _MOST_FAILURES:
                logs.line("workers do not start", level="fatal")
                self.stop()

    def _replace(self) -> None:
        now = time.monotonic()
        for place, due in list(self._due.items()):
            if due <= now:
                del self._due[place]
                self._start(place)

    def _watch(self) -> None:
        for place, child in self.children.items():
            if self.board.silent_for(place) > self.settings.silence_seconds:
                logs.line("worker stands still", level="error", worker=place, worker_process=child.process)
                self._signal(child, signal.SIGKILL)

    def _hurry(self) -> None:
        """Kill what has not ended in its time."""
        limit = self.settings.drain_seconds + self.settings.grace_seconds + 2.0
        if time.monotonic() - self.stopping > limit:
            self._signal_all(signal.SIGKILL)

    def _signal_all(self, number: int) -> None:
        for child in self.children.values():
            self._signal(child, number)

    @staticmethod
    def _signal(child: _Child, number: int) -> None:
        with contextlib.suppress(ProcessLookupError):
            os.kill(child.process, number)
