"""Jobs of a stream cut into requests of bounded size, and each request sent until every job of it has its answer.

The service answers while it reads. An HTTP client that writes its whole request before it reads would stop for ever once both
sides wait for the other to read; so a request holds no more than the service takes in while it waits (`LARGEST_REQUEST`), or a
single job. That bounds the memory of both sides, lets several workers of the service share a stream, passes through proxies that
keep whole requests, and leaves little to send again after a broken connection: the lines of one request that had no answer yet.
"""

from __future__ import annotations

import asyncio
import hashlib
import time
from collections.abc import AsyncIterable
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, cast

import msgspec
from msgspec import UnsetType

from railrules_client._errors import ConnectionFailedError, ProblemError, RailrulesError, UnreadableAnswerError
from railrules_client._generated.models import BulkLine, BulkTotal, BulkTrailer
from railrules_client._retrying import wait_after
from railrules_client._sending import encoded

if TYPE_CHECKING:
    from collections.abc import AsyncIterator, Iterable, Iterator

    import httpx

    from railrules_client._calls import AsyncCaller, Caller, CallOptions, Operation
    from railrules_client._generated.models import Problem, TakeoffAnswer

LARGEST_REQUEST = 48 * 1024
"""Bytes of jobs in one request, unless a single job is longer."""
MOST_JOBS = 64
_DECODER = msgspec.json.Decoder(BulkLine)


@dataclass(frozen=True, slots=True)
class JobAnswer:
    """What came of one job of a stream.

    Attributes:
        number: its place among the jobs, from 0.
        answer: the answer; None where the job was refused, or where only totals were asked for.
        problem: why it was refused; None where it was not.
    """

    number: int
    answer: TakeoffAnswer | None
    problem: Problem | None


@dataclass(slots=True)
class Batch:
    """Jobs of one request: the number of the first, and their lines."""

    first: int
    lines: list[bytes] = field(default_factory=list[bytes])
    size: int = 0


@dataclass(slots=True)
class Outcome:
    """What came of the jobs of one request."""

    answers: list[JobAnswer] = field(default_factory=list[JobAnswer])
    jobs: int = 0
    refused: int = 0
    resumed: int = 0
    totals: list[BulkTotal] = field(default_factory=list[BulkTotal])


class Batches:
    """Gathers jobs into requests."""

    def __init__(self) -> None:
        """Begin with the first job."""
        self._batch = Batch(0)

    def add(self, job: object) -> Batch | None:
        """Take a job; return a request that is full.

        Raises:
            ValueError: a job given as bytes or text is not a single line.
        """
        line = _line(job)
        batch, full = self._batch, None
        if batch.lines and (batch.size + len(line) > LARGEST_REQUEST or len(batch.lines) >= MOST_JOBS):
            full, batch = batch, Batch(batch.first + len(batch.lines))
            self._batch = batch
        batch.lines.append(line)
        batch.size += len(line)
        return full

    def end(self) -> Batch | None:
        """Return the last request, if it holds anything."""
        return self._batch if self._batch.lines else None


def _line(job: object) -> bytes:
    if isinstance(job, (str, bytes)):
        line = (job.encode() if isinstance(job, str) else job).strip()
        if not line or b"\n" in line:
            raise ValueError("a job given as text must be one line of JSON")
    else:
        line = encoded(job)
    return line + b"\n"


class _Reading:
    """Reads the lines that answer one batch, as often as it takes to have them all."""

    def __init__(self, batch: Batch, *, totals_only: bool) -> None:
        self.batch = batch
        self.totals_only = totals_only
        self.outcome = Outcome(jobs=len(batch.lines))
        self._trailer: BulkTrailer | None = None
        self._digest = hashlib.sha256()
        self._done = 0
        self._at_begin = 0
        self._attempt = 0

    def body(self) -> bytes:
        """Return the jobs that have no answer yet."""
        self._at_begin = self._done
        self._digest = hashlib.sha256()
        return b"".join(self.batch.lines[self._done :])

    def take(self, raw: bytes) -> None:
        """Take a line of the answer.

        Raises:
            UnreadableAnswerError: it is none.
        """
        try:
            line = _DECODER.decode(raw)
        except (msgspec.DecodeError, UnicodeDecodeError) as error:
            raise UnreadableAnswerError(f"a line of a bulk answer is something else: {error}") from error
        if not isinstance(line.trailer, UnsetType):
            if line.trailer.digest != f"sha-256:{self._digest.hexdigest()}":
                raise UnreadableAnswerError("the lines of a bulk answer are not those that its trailer vouches for")
            self._trailer = line.trailer
            return
        self._digest.update(raw + b"\n")
        if isinstance(line.line, UnsetType):
            raise UnreadableAnswerError("a line of a bulk answer says not which job it answers")
        position = self._at_begin + line.line - 1
        if not self.totals_only and position != self._done:
            raise UnreadableAnswerError("the lines of a bulk answer are not in the order of the jobs")
        problem = None if isinstance(line.problem, UnsetType) else line.problem
        answer = None if isinstance(line.answer, UnsetType) else line.answer
        self.outcome.answers.append(JobAnswer(self.batch.first + position, answer, problem))
        if not self.totals_only:
            self._done += 1

    def finish(self) -> None:
        """Check that the answer was whole.

        Raises:
            ConnectionFailedError: it ended before its trailer.
        """
        if self._trailer is None or (not self.totals_only and self._done < len(self.batch.lines)):
            raise ConnectionFailedError("the bulk answer ended before its trailer")
        self.outcome.totals = self._trailer.totals if self.totals_only else []
        self.outcome.refused = sum(item.problem is not None for item in self.outcome.answers)

    def wait_after(self, error: RailrulesError, retries: int) -> float | None:
        """Return the seconds to wait before what has no answer is sent again; None where the error stands."""
        progress = self._done > self._at_begin
        if progress:
            self._attempt = 0
        outcome: object = error.response if isinstance(error, ProblemError) else error.__cause__
        if isinstance(error, ConnectionFailedError) and outcome is None:
            outcome = _cut()
        wait = wait_after(cast("httpx.Response | httpx.RequestError", outcome), self._attempt, retries)
        self._attempt += 1
        if wait is not None:
            self.outcome.resumed += 1
            if self.totals_only:  # which jobs are in the totals is told at the end alone, so that all are sent again
                self.outcome.answers.clear()
        return wait


def _cut() -> httpx.RequestError:
    import httpx  # noqa: PLC0415  loaded already, by whoever sends

    return httpx.RemoteProtocolError("cut before the trailer")


def answered(
    caller: Caller, operation: Operation[BulkLine], options: CallOptions, query: dict[str, object], batch: Batch
) -> Outcome:
    """Send a request, and again what of it had no answer when the connection broke.

    Raises:
        RailrulesError: some jobs have no answer, and asking again is of no use.
    """
    reading = _Reading(batch, totals_only=query.get("answer") == "totals")
    while True:
        try:
            for raw in caller.lines(operation, options, query=query, body=reading.body()):
                reading.take(raw)
            reading.finish()
        except RailrulesError as error:
            wait = reading.wait_after(error, options.get("retries", caller.retries))
            if wait is None:
                raise
            time.sleep(wait)
        else:
            return reading.outcome


async def answered_async(
    caller: AsyncCaller, operation: Operation[BulkLine], options: CallOptions, query: dict[str, object], batch: Batch
) -> Outcome:
    """Like `answered`, awaited.

    Raises:
        RailrulesError: some jobs have no answer, and asking again is of no use.
    """
    reading = _Reading(batch, totals_only=query.get("answer") == "totals")
    while True:
        try:
            async for raw in caller.lines(operation, options, query=query, body=reading.body()):
                reading.take(raw)
            reading.finish()
        except RailrulesError as error:
            wait = reading.wait_after(error, options.get("retries", caller.retries))
            if wait is None:
                raise
            await asyncio.sleep(wait)
        else:
            return reading.outcome


def batches_of(jobs: Iterable[object]) -> Iterator[Batch]:
    """Yield requests, reading no more jobs than the one at hand needs."""
    gathered = Batches()
    for job in jobs:
        full = gathered.add(job)
        if full is not None:
            yield full
    last = gathered.end()
    if last is not None:
        yield last


async def batches_of_async(jobs: Iterable[object] | AsyncIterable[object]) -> AsyncIterator[Batch]:
    """Like `batches_of`, of jobs that may be awaited."""
    gathered = Batches()
    if isinstance(jobs, AsyncIterable):
        async for job in jobs:
            full = gathered.add(job)
            if full is not None:
                yield full
    else:
        for batch in batches_of(jobs):
            yield batch
        return
    last = gathered.end()
    if last is not None:
        yield last
