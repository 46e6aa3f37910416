"""The board as Prometheus reads it (text format 0.0.4), names after the OpenTelemetry conventions for HTTP servers."""

from __future__ import annotations

from itertools import accumulate
from typing import TYPE_CHECKING

from railrules_api import __version__
from railrules_api.app.serving.board import BUCKETS, EVENTS

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.app.serving.board import Board

MEDIA_TYPE = "text/plain; version=0.0.4; charset=utf-8"
_DURATION = "http_server_request_duration_seconds"
_GAUGES = {
    "in_progress": ("http_server_active_requests", "Requests that are being answered."),
    "waiting": ("railrules_waiting_requests", "Requests that wait for their turn."),
    "connections": ("railrules_open_connections", "Open connections."),
    "workers_ready": ("railrules_workers_ready", "Workers that take requests."),
}


def _durations(board: Board) -> Iterator[str]:
    yield f"# HELP {_DURATION} Time from a request's header to the end of its answer."
    yield f"# TYPE {_DURATION} histogram"
    for route, method, status, counts in board.series():
        code = str(status) if status else "_OTHER"
        labels = f'http_request_method="{method}",http_response_status_code="{code}",http_route="{route}"'
        running = list(accumulate(counts[:-1]))
        for bound, count in zip((*(f"{bound:g}" for bound in BUCKETS), "+Inf"), running, strict=True):
            yield f'{_DURATION}_bucket{{{labels},le="{bound}"}} {count:.0f}'
        yield f"{_DURATION}_sum{{{labels}}} {counts[-1]!r}"
        yield f"{_DURATION}_count{{{labels}}} {running[-1]:.0f}"


def render(board: Board) -> str:
    """Return the metrics as text."""
    lines = [
        "# HELP railrules_build_info Version of the service.",
        "# TYPE railrules_build_info gauge",
        f'railrules_build_info{{version="{__version__}"}} 1',
    ]
    for gauge, value in board.gauges().items():
        name, about = _GAUGES[gauge]
        lines += [f"# HELP {name} {about}", f"# TYPE {name} gauge", f"{name} {value:.0f}"]
    lines += [
        "# HELP railrules_worker_restarts_total Workers that were replaced.",
        "# TYPE railrules_worker_restarts_total counter",
        f"railrules_worker_restarts_total {board.restarts}",
        "# HELP railrules_events_total Requests and connections that were refused, cut or lost, by what happened.",
        "# TYPE railrules_events_total counter",
        *(f'railrules_events_total{{event="{event}"}} {board.event(event):.0f}' for event in EVENTS),
        *_durations(board),
    ]
    return "\n".join(lines) + "\n"
