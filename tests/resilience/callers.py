"""Callers for load: keep-alive connections that ask one question over and over, and check every answer."""

from __future__ import annotations

import asyncio
import contextlib
import sys
import time
from dataclasses import dataclass, field

BODY = b'{"section":"136RE","rail_temperature":{"value":120,"unit":"degF"},"neutral_temperature":{"value":95,"unit":"degF"}}'


def tell(text: str) -> None:
    """Print a figure; `make resilience` runs pytest with -s."""
    (sys.__stderr__ or sys.stderr).write(f"\n{text}\n")


def request(path: str, body: bytes) -> bytes:
    """Return a question as bytes."""
    head = f"POST {path} HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: {len(body)}\r\n\r\n"
    return head.encode() + body


GOOD = request("/v1/thermal/force", BODY)


@dataclass
class Tally:
    """What the callers saw.

    Attributes:
        good: answers that were right.
        wrong: answers of 200 with another body than the first.
        shed: answers 503 or 429, with how long each took [s].
        other: answers of any other status.
        lost: requests that were sent and got no answer.
        refused: connections that were not taken.
        without_retry: refusals for overload without Retry-After.
        taken: how long good answers took [s].
        at: when good answers came.
    """

    good: int = 0
    wrong: int = 0
    shed: list[float] = field(default_factory=list)
    other: list[int] = field(default_factory=list)
    lost: int = 0
    refused: int = 0
    without_retry: int = 0
    taken: list[float] = field(default_factory=list)
    at: list[float] = field(default_factory=list)
    body: bytes = b""


class Line:
    """One keep-alive connection, opened again when it has been closed."""

    def __init__(self, port: int) -> None:
        """Start without a connection."""
        self.port = port
        self.reader: asyncio.StreamReader | None = None
        self.writer: asyncio.StreamWriter | None = None

    def close(self) -> None:
        """Close."""
        if self.writer is not None:
            self.writer.close()
        self.reader = self.writer = None

    async def ask(self, sent: bytes) -> tuple[int, dict[bytes, bytes], bytes]:
        """Send a request and return the answer.

        Raises:
            ConnectionRefusedError: nobody listens.
            ConnectionError: the connection went away with the request.
        """
        if self.writer is None or self.reader is None:
            self.reader, self.writer = await asyncio.open_connection("127.0.0.1", self.port)
        try:
            self.writer.write(sent)
            head = await self.reader.readuntil(b"\r\n\r\n")
            first, *lines = head[:-4].split(b"\r\n")
            headers = {name.lower(): value.strip() for name, _, value in (line.partition(b":") for line in lines)}
            body = await self.reader.readexactly(int(headers[b"content-length"]))
        except (asyncio.IncompleteReadError, OSError) as error:
            self.close()
            raise ConnectionResetError from error
        if headers.get(b"connection") == b"close":
            self.close()
        return int(first.split()[1]), headers, body


async def ask_once(line: Line, sent: bytes, tally: Tally) -> None:
    """Ask and take note of what comes."""
    begun = time.perf_counter()
    try:
        status, headers, body = await line.ask(sent)
    except ConnectionRefusedError:
        tally.refused += 1
        return
    except ConnectionError:
        tally.lost += 1
        return
    took = time.perf_counter() - begun
    if status == 200:
        tally.body = tally.body or body
        tally.good += 1
        tally.wrong += body != tally.body
        tally.taken.append(took)
        tally.at.append(time.perf_counter())
    elif status in (429, 503):
        tally.shed.append(took)
        tally.without_retry += b"retry-after" not in headers
    else:
        tally.other.append(status)


async def hammer(port: int, callers: int, seconds: float, tally: Tally, sent: bytes = GOOD) -> None:
    """Ask without a pause on a number of connections; stop when nobody listens any more."""
    end = time.perf_counter() + seconds

    async def one() -> None:
        line = Line(port)
        while time.perf_counter() < end and not tally.refused:
            await ask_once(line, sent, tally)
        line.close()

    await asyncio.gather(*(one() for _ in range(callers)))


async def offer(  # noqa: PLR0913, PLR0917
    port: int, rate: float, seconds: float, tally: Tally, sent: bytes = GOOD, most: int = 600
) -> int:
    """Offer requests at a steady rate, whatever becomes of them; return how many could not even be sent.

    A caller that is told to come again does not here: the offer stays the same, which is the hardest case.
    """
    idle = [Line(port) for _ in range(most)]
    running: set[asyncio.Task[None]] = set()
    missed = 0
    start = time.perf_counter()
    offered = 0

    async def one(line: Line) -> None:
        await ask_once(line, sent, tally)
        idle.append(line)

    while (now := time.perf_counter()) < start + seconds:
        while offered < (now - start) * rate:
            offered += 1
            if not idle:
                missed += 1
                continue
            task = asyncio.create_task(one(idle.pop()))
            running.add(task)
            task.add_done_callback(running.discard)
        await asyncio.sleep(0.001)
    with contextlib.suppress(TimeoutError):
        async with asyncio.timeout(20):
            await asyncio.gather(*running)
    for line in idle:
        line.close()
    return missed


def percentile(values: list[float], share: float) -> float:
    """Return a percentile, 0 for none."""
    return sorted(values)[min(len(values) - 1, int(share * len(values)))] if values else 0.0
