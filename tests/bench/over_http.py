"""Server CPU time of requests, start, idle memory, and what a busy neighbour costs."""

from __future__ import annotations

import http.client
import importlib.util
import json
import socket
import subprocess
import sys
import threading
import time
from typing import TYPE_CHECKING, NamedTuple

from railrules_api.app import sample
from tests.bench.measure import cpu_of, memory_of, peak_of, python

if TYPE_CHECKING:
    from collections.abc import Callable

ROUNDS = 4


class Asked(NamedTuple):
    """A request, asked over one connection that is kept."""

    method: str
    path: str
    body: bytes = b""


def free_port() -> int:
    """Return a port that nobody listens on."""
    with socket.create_server(("127.0.0.1", 0)) as listener:
        port: int = listener.getsockname()[1]
        return port


def until_up(port: int, path: str, seconds: float = 60.0) -> None:
    """Wait for the first answer."""
    deadline = time.monotonic() + seconds
    while True:
        connection = http.client.HTTPConnection("127.0.0.1", port, timeout=5)
        try:
            connection.request("GET", path)
            connection.getresponse().read()
        except OSError:
            assert time.monotonic() < deadline
            time.sleep(0.005)
        else:
            return
        finally:
            connection.close()


class Caller:
    """One kept connection."""

    def __init__(self, port: int) -> None:
        self.connection = http.client.HTTPConnection("127.0.0.1", port, timeout=120)

    def ask(self, asked: Asked) -> int:
        """Ask and read the whole answer; return its length."""
        headers = {"Content-Type": "application/json"} if asked.body else {}
        self.connection.request(asked.method, asked.path, asked.body or None, headers)
        response = self.connection.getresponse()
        body = response.read()
        assert response.status == 200, (asked.path, response.status, body[:300])
        return len(body)


def server_costs(process: int, port: int, works: dict[str, list[Asked]], seconds: float = 0.25) -> dict[str, float]:
    """Return the least server CPU time of each request, all asked in turns [s]."""
    caller = Caller(port)
    counts: dict[str, int] = {}
    for name, several in works.items():
        for asked in several:
            caller.ask(asked)
        began = cpu_of(process)
        for asked in several:
            caller.ask(asked)
        counts[name] = max(1, int(seconds * len(several) / max(cpu_of(process) - began, 1e-5)))
    least = dict.fromkeys(works, float("inf"))
    for _ in range(ROUNDS):
        for name, several in works.items():
            began = cpu_of(process)
            for number in range(counts[name]):
                caller.ask(several[number % len(several)])
            least[name] = min(least[name], (cpu_of(process) - began) / counts[name])
    return least


def takeoffs(segments: int, several: int = 6) -> list[Asked]:
    """Return different takeoffs of so many segments."""
    return [Asked("POST", "/v1/takeoffs", json.dumps(sample.job(segments, seed)).encode()) for seed in range(several)]


def against_static() -> tuple[dict[str, float], dict[str, float]]:
    """Return ratios to static bytes of the same server, and to another stack that serves the same."""
    ratios: dict[str, float] = {}
    others: dict[str, float] = {}
    port = free_port()
    sizes = (1, 10, 100)
    with python("tests.bench.serving", "service", str(port)) as child:
        until_up(port, "/static")
        found = server_costs(
            child.pid,
            port,
            {
                "static": [Asked("GET", "/static")],
                "GET one rail section, with ETag": [Asked("GET", "/v1/rail-sections/136RE")],
                "GET all rail sections, with ETag": [Asked("GET", "/v1/rail-sections")],
                "POST one thermal force": [
                    Asked(
                        "POST",
                        "/v1/thermal/force",
                        b'{"section":"136RE","rail_temperature":{"value":110,"unit":"degF"},'
                        b'"neutral_temperature":{"value":90,"unit":"degF"}}',
                    )
                ],
                **{f"POST takeoff of {size}": takeoffs(size) for size in sizes},
            },
        )
        ratios = {name: cost / found["static"] for name, cost in found.items()}
        ratios["static, CPU µs"] = found["static"] * 1e6
    if importlib.util.find_spec("fastapi") is None:
        return ratios, others
    port = free_port()
    with python("tests.bench.serving", "other", str(port)) as child:
        until_up(port, "/openapi.json", 120)
        other = server_costs(child.pid, port, {f"POST takeoff of {size}": takeoffs(size) for size in sizes})
    others = {name: cost / found[name] for name, cost in other.items()}
    return ratios, others


def start_and_memory() -> dict[str, float]:
    """Return the CPU time to the first answer as a ratio to a bare application, and idle memory [MB]."""
    cpu: dict[str, float] = {"service": float("inf"), "bare": float("inf")}
    memory: dict[str, float] = {}
    for _ in range(3):
        for name in ("service", "bare"):
            port = free_port()
            with python("tests.bench.serving", name, str(port)) as child:
                until_up(port, "/static")
                cpu[name] = min(cpu[name], cpu_of(child.pid))
                time.sleep(0.3)
                memory[name] = memory_of(child.pid)
    return {
        "start to first answer, x bare application": cpu["service"] / cpu["bare"],
        "idle memory MB": memory["service"],
        "idle memory MB, bare application": memory["bare"],
    }


def _probe(port: int, seconds: float, ready: Callable[[], bool]) -> list[float]:
    caller, times = Caller(port), []
    asked = Asked("GET", "/v1/rail-sections/136RE")
    deadline = time.monotonic() + seconds
    while time.monotonic() < deadline or not ready():
        began = time.perf_counter()
        caller.ask(asked)
        times.append(time.perf_counter() - began)
        time.sleep(0.01)
    return sorted(times)


def busy_neighbour(segments: int = 1000, seconds: float = 12.0) -> dict[str, float]:
    """Return how much later a catalogue answer comes while takeoffs of many segments are worked, at the median and at p99."""
    port = free_port()
    heavy = Asked("POST", "/v1/takeoffs", json.dumps(sample.job(segments, 1)).encode())
    with python("tests.bench.serving", "service", str(port)) as child:
        until_up(port, "/static")
        quiet = _probe(port, seconds / 2, lambda: True)
        stop = threading.Event()
        done = [0]

        def neighbour() -> None:
            caller = Caller(port)
            while not stop.is_set():
                caller.ask(heavy)
                done[0] += 1

        thread = threading.Thread(target=neighbour)
        thread.start()
        loud = _probe(port, seconds, lambda: done[0] > 0 or child.poll() is not None)
        stop.set()
        thread.join(120)

    def at(times: list[float], share: float) -> float:
        return times[min(len(times) - 1, int(len(times) * share))]

    return {
        "quiet p99 ms": at(quiet, 0.99) * 1e3,
        "p50 beside takeoffs, x quiet p50": at(loud, 0.5) / at(quiet, 0.5),
        "p99 beside takeoffs, x quiet p99": at(loud, 0.99) / at(quiet, 0.99),
        "p99 beside takeoffs ms": at(loud, 0.99) * 1e3,
        "slowest ms": loud[-1] * 1e3,
        "takeoffs meanwhile": float(done[0]),
    }


def bulk_memory(segments: int, *, totals_only: bool) -> dict[str, float]:
    """Return how much the memory of the server and of a client grows over a stream of jobs, and what the stream takes.

    The client is a process of its own that reads while it writes and keeps nothing; both have answered a stream before.
    """
    port = free_port()
    with python("tests.bench.serving", "service", str(port)) as child:
        until_up(port, "/static")
        command = [sys.executable, "-m", "tests.bench.streaming", str(port), str(segments), "totals" if totals_only else "full"]
        before: dict[str, float] = {}
        told: dict[str, float] = {}
        with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as caller:
            assert caller.stdout is not None
            for text in caller.stdout:
                told = json.loads(text)
                told |= {"server MB": peak_of(child.pid), "server s": cpu_of(child.pid)}
                if not before:
                    before = told
        assert caller.returncode == 0
    return {
        "segments": told["segments"] - before["segments"],
        "server growth MB": told["server MB"] - before["server MB"],
        "client growth MB": told["client MB"] - before["client MB"],
        "server s": told["server s"] - before["server s"],
        "bytes in": told["sent"] - before["sent"],
        "bytes out": told["received"] - before["received"],
    }
