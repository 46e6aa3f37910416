"""A worker dies and another takes its place; the service stops when told and ends what was begun. More: `make resilience`."""

from __future__ import annotations

import os
import signal
import time
from typing import TYPE_CHECKING

from tests.hostile.serving import GUARD, read_answer, serving
from tests.resilience.callers import GOOD

if TYPE_CHECKING:
    from pathlib import Path


def test_a_life(tmp_path: Path) -> None:
    with serving(tmp_path, workers=2, drain_seconds=0.5, grace_seconds=20, silence_seconds=1) as server:
        killed, stopped = server.workers()
        os.kill(killed, signal.SIGKILL)
        os.kill(stopped, signal.SIGSTOP)  # it stands still, and is killed for it
        end = time.monotonic() + GUARD
        while server.metric("railrules_worker_restarts_total") < 2 and time.monotonic() < end:
            time.sleep(0.02)
        server.wait_until("/health/ready")
        assert not {killed, stopped} & set(server.workers())
        assert server.ask(GOOD).status == 200

        with server.connect() as idle, server.connect() as slow, server.connect() as late:
            idle.sendall(GOOD)
            assert read_answer(idle).status == 200
            slow.sendall(GOOD[:-20])
            time.sleep(0.2)
            server.process.send_signal(signal.SIGTERM)
            server.wait_until("/health/ready", fails=True)
            assert server.get("/health/ready").status == 503
            late.sendall(GOOD)
            told = read_answer(late)
            assert (told.status, told.headers["connection"]) == (200, "close")
            assert idle.recv(1) == b""
            slow.sendall(GOOD[-20:])
            told = read_answer(slow)
            assert (told.status, told.headers["connection"]) == (200, "close")
        assert server.process.wait(GUARD) == 0
        events = [line["event"] for line in server.lines()]
        assert events[-1] == "stopped"
        assert "worker stands still" in events
        assert events.count("worker lost") == 2
        assert events.count("worker started") == 4


def test_a_worker_that_does_not_end_in_time_is_killed(tmp_path: Path) -> None:
    with serving(tmp_path, workers=1, drain_seconds=0, grace_seconds=0.1) as server:
        os.kill(server.workers()[0], signal.SIGSTOP)
        server.process.send_signal(signal.SIGTERM)
        assert server.process.wait(GUARD) == 0


def test_a_second_request_that_is_rubbish_does_not_cost_the_first_its_answer(tmp_path: Path) -> None:
    with serving(tmp_path, workers=1, drain_seconds=0) as server, server.connect() as connection:
        connection.sendall(GOOD + b"RUBBISH\r\n\r\n")
        assert read_answer(connection).status == 200
        assert connection.recv(1) == b""
