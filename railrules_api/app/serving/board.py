"""Numbers that the workers and their supervisor share: one anonymous memory map made before the workers are.

Each worker writes in its own part only, so nothing is locked; who reads adds the parts up. A worker that is replaced hands its
part on, so counters never fall.
"""

from __future__ import annotations

import mmap
import time
from typing import Final

EVENTS: Final = (
    "shed_queue_full_or_late",  # 503: no turn
    "shed_connections",  # 503: too many connections
    "shed_work_too_long",  # 503: work_seconds are over
    "cut_header",  # 408: header_seconds are over
    "cut_body",  # 408: body_seconds are over
    "cut_send",  # closed: send_seconds are over
    "refused_malformed",  # 400 of the HTTP parser
    "refused_too_large",  # 413, 414, 431
    "refused_key",  # 401, 403
    "refused_quota",  # 429
    "gone",  # the caller went away before its body was complete
)
BUCKETS: Final = (0.005, 0.01, 0.025, 0.05, 0.075, 0.1, 0.25, 0.5, 0.75, 1.0, 2.5, 5.0, 7.5, 10.0)
"""Upper bounds [s] of the duration histogram: those that the OpenTelemetry conventions advise for HTTP servers."""
METHODS: Final = ("GET", "HEAD", "POST", "QUERY", "OPTIONS", "_OTHER")
STATUSES: Final = (200, 204, 304, 400, 401, 403, 404, 405, 406, 408, 413, 414, 415, 422, 429, 431, 500, 503, 0)
"""Statuses that are counted one by one; 0 stands for any other."""

_HEARTBEAT, _READY, _IN_PROGRESS, _WAITING, _CONNECTIONS = range(5)
_STATE = 5
_SERIES = len(BUCKETS) + 2  # and: more than the last bound, and the sum
_METHOD_AT = {method: position for position, method in enumerate(METHODS)}
_STATUS_AT = {status: position for position, status in enumerate(STATUSES)}
_EVENT_AT = {event: _STATE + position for position, event in enumerate(EVENTS)}


class Board:
    """The shared numbers."""

    def __init__(self, workers: int, routes: tuple[str, ...], keys: int = 0) -> None:
        """Make a board for a number of workers, the route templates that are told apart, and a number of keys."""
        self.workers = workers
        self.routes = (*routes, "unmatched")
        self.keys = keys
        self._quotas_at = _STATE + len(EVENTS)
        self._series_at = self._quotas_at + 2 * keys
        self._stride = self._series_at + len(self.routes) * len(METHODS) * len(STATUSES) * _SERIES
        self._numbers = memoryview(mmap.mmap(-1, 8 * self._stride * workers)).cast("d")
        self.restarts = 0

    def part(self, worker: int) -> Part:
        """Return a worker's own part."""
        return Part(self, worker)

    def _sum(self, at: int) -> float:
        return sum(self._numbers[worker * self._stride + at] for worker in range(self.workers))

    def event(self, name: str) -> float:
        """Return how often something happened."""
        return self._sum(_EVENT_AT[name])

    def gauges(self) -> dict[str, float]:
        """Return what goes on now."""
        return {
            "in_progress": self._sum(_IN_PROGRESS),
            "waiting": self._sum(_WAITING),
            "connections": self._sum(_CONNECTIONS),
            "workers_ready": self.ready(),
        }

    def silent_for(self, worker: int) -> float:
        """Return for how long a worker has not been heard [s]."""
        return time.monotonic() - self._numbers[worker * self._stride + _HEARTBEAT]

    def ready(self) -> int:
        """Return how many workers take requests."""
        return sum(self._numbers[worker * self._stride + _READY] == 1.0 for worker in range(self.workers))

    def clear(self, worker: int) -> None:
        """Forget the state of a worker that is gone; its counters stay."""
        start = worker * self._stride
        for at in (_READY, _IN_PROGRESS, _WAITING, _CONNECTIONS):
            self._numbers[start + at] = 0.0
        self._numbers[start + _HEARTBEAT] = time.monotonic()

    def series(self) -> list[tuple[str, str, int, list[float]]]:
        """Return (route, method, status, counts by bucket and sum) of every series that was seen."""
        found = []
        at = self._series_at
        for route in self.routes:
            for method in METHODS:
                for status in STATUSES:
                    counts = [self._sum(at + offset) for offset in range(_SERIES)]
                    if any(counts[:-1]):
                        found.append((route, method, status, counts))
                    at += _SERIES
        return found

    def used(self, key: int, window: float) -> float:
        """Return how many requests a key has made in a window, in all workers."""
        at, total = self._quotas_at + 2 * key, 0.0
        for worker in range(self.workers):
            start = worker * self._stride + at
            if self._numbers[start] == window:
                total += self._numbers[start + 1]
        return total


class Part:
    """A worker's part of the board."""

    def __init__(self, board: Board, worker: int) -> None:
        """Take the part of a worker."""
        self.board = board
        self._start = worker * board._stride  # noqa: SLF001  one mechanism in two classes
        self._numbers = board._numbers  # noqa: SLF001
        self._route_at = {route: position for position, route in enumerate(board.routes)}

    def beat(self, *, ready: bool, in_progress: int, waiting: int, connections: int) -> None:
        """Say that the worker's event loop turns, and how much it has to do."""
        start = self._start
        self._numbers[start + _HEARTBEAT] = time.monotonic()
        self._numbers[start + _READY] = float(ready)
        self._numbers[start + _IN_PROGRESS] = float(in_progress)
        self._numbers[start + _WAITING] = float(waiting)
        self._numbers[start + _CONNECTIONS] = float(connections)

    def count(self, event: str) -> None:
        """Count an event."""
        self._numbers[self._start + _EVENT_AT[event]] += 1.0

    def observe(self, route: str, method: str, status: int, seconds: float) -> None:
        """Count an answer."""
        position = self._route_at[route] * len(METHODS) + _METHOD_AT.get(method, len(METHODS) - 1)
        position = position * len(STATUSES) + _STATUS_AT.get(status, len(STATUSES) - 1)
        at = self._start + self.board._series_at + position * _SERIES  # noqa: SLF001
        bucket = 0
        while bucket < len(BUCKETS) and seconds > BUCKETS[bucket]:
            bucket += 1
        self._numbers[at + bucket] += 1.0
        self._numbers[at + _SERIES - 1] += seconds

    def use(self, key: int, window: float) -> float:
        """Count a request of a key in a window and return how many that makes in all workers."""
        at = self._start + self.board._quotas_at + 2 * key  # noqa: SLF001
        if self._numbers[at] != window:
            self._numbers[at], self._numbers[at + 1] = window, 0.0
        self._numbers[at + 1] += 1.0
        return self.board.used(key, window)
