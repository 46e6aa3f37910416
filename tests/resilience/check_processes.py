"""Workers die and the service lives; it is told to stop and nobody is hurt. Run by `make resilience`."""

from __future__ import annotations

import asyncio
import os
import signal
import time
from typing import TYPE_CHECKING

from tests.hostile.serving import GUARD, serving
from tests.resilience.callers import GOOD, Line, Tally, ask_once, hammer, tell

if TYPE_CHECKING:
    from pathlib import Path

CALLERS = 8
KILLS = 10


def test_kill_9_under_load_loses_only_what_was_in_flight(tmp_path: Path) -> None:
    with serving(tmp_path, workers=2, access_log=0, drain_seconds=0) as server:
        tally = Tally()
        back: list[float] = []

        async def kill() -> None:
            for _ in range(KILLS):
                await asyncio.sleep(0.5)
                before = server.workers()
                os.kill(before[0], signal.SIGKILL)
                begun = time.perf_counter()
                while time.perf_counter() - begun < GUARD:
                    now = server.workers()
                    if len(now) == 2 and before[0] not in now and server.metric("railrules_workers_ready") == 2:
                        break
                    await asyncio.sleep(0.01)
                back.append(time.perf_counter() - begun)

        async def run() -> None:
            await asyncio.gather(hammer(server.port, CALLERS, 0.5 * KILLS + 3.0, tally), kill())

        asyncio.run(run())
        gaps = [later - earlier for earlier, later in zip(tally.at, tally.at[1:], strict=False)]
        tell(
            f"{KILLS} kills: {tally.good} good, {tally.lost} lost, {tally.wrong} wrong, "
            f"back after {max(back):.2f} s at most, longest gap {max(gaps):.2f} s"
        )
        assert tally.wrong == 0
        assert tally.other == []
        assert tally.refused == 0
        assert tally.lost <= CALLERS * KILLS
        assert server.metric("railrules_worker_restarts_total") == KILLS
        assert server.metric("railrules_workers_ready") == 2


def test_a_worker_that_stands_still_is_replaced(tmp_path: Path) -> None:
    with serving(tmp_path, workers=2, silence_seconds=1, drain_seconds=0) as server:
        stopped = server.workers()[0]
        os.kill(stopped, signal.SIGSTOP)
        end = time.monotonic() + GUARD
        while (stopped in server.workers() or len(server.workers()) < 2) and time.monotonic() < end:
            time.sleep(0.05)
        server.wait_until("/health/ready")
        assert stopped not in server.workers()
        assert server.ask(GOOD).status == 200


def test_sigterm_drains_without_a_reset(tmp_path: Path) -> None:
    with serving(tmp_path, workers=2, access_log=0, drain_seconds=1, grace_seconds=10) as server:
        tally, seen = Tally(), []

        async def stop() -> None:
            await asyncio.sleep(0.7)
            server.process.send_signal(signal.SIGTERM)
            server.wait_until("/health/ready", fails=True)
            line = Line(server.port)
            seen.append((await line.ask(b"GET /health/ready HTTP/1.1\r\nHost: a\r\n\r\n"))[0])
            seen.append((await line.ask(b"GET /health/live HTTP/1.1\r\nHost: a\r\n\r\n"))[0])
            await ask_once(Line(server.port), GOOD, tally)
            line.close()

        async def run() -> None:
            await asyncio.gather(hammer(server.port, CALLERS, GUARD, tally), stop())

        asyncio.run(run())
        code = server.process.wait(GUARD)
        tell(f"SIGTERM under load: {tally.good} good, {tally.lost} reset, {tally.wrong} wrong, exit {code}")
        assert seen == [503, 200]  # readiness falls while requests are served on
        assert (tally.lost, tally.wrong, tally.other, code) == (0, 0, [], 0)


def test_sigterm_lets_a_slow_body_end(tmp_path: Path) -> None:
    with serving(tmp_path, workers=1, drain_seconds=0, grace_seconds=20) as server, server.connect() as connection:
        head, body = GOOD[:-20], GOOD[-20:]
        connection.sendall(head)
        time.sleep(0.3)
        server.process.send_signal(signal.SIGTERM)
        time.sleep(0.5)
        connection.sendall(body)
        received = b""
        while data := connection.recv(65_536):
            received += data
        assert received.startswith(b"HTTP/1.1 200 ")
        assert b"connection: close" in received
        assert server.process.wait(GUARD) == 0


def test_workers_do_not_outlive_their_supervisor(tmp_path: Path) -> None:
    with serving(tmp_path, workers=2, drain_seconds=0) as server:
        workers = server.workers()
        server.process.kill()
        server.process.wait(GUARD)
        end = time.monotonic() + GUARD
        while any(os.path.exists(f"/proc/{worker}") for worker in workers) and time.monotonic() < end:  # noqa: PTH110
            time.sleep(0.05)
        assert not any(os.path.exists(f"/proc/{worker}") for worker in workers)  # noqa: PTH110
