"""A stream of jobs: cut into requests of bounded size, several of them on the way at once, answers in the order of the jobs.

The service answers while it reads. An HTTP client that writes its whole request before it reads would stop for ever once both
sides wait for the other to read; so a request holds no more than the service takes in while it waits (`LARGEST_REQUEST`), or a
single job. That bounds the memory of both sides, lets several workers of the service share a stream, passes through proxies that
keep whole requests, and leaves little to send again after a broken connection: the lines of one request that had no answer yet.
"""

from __future__ import annotations

import asyncio
import hashlib
import importlib
import time
from collections import deque
from collections.abc import AsyncIterable
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass, field
from fractions import Fraction
from typing import TYPE_CHECKING, Protocol, Self, cast

import msgspec
from msgspec import UNSET, UnsetType

from railrules_client._errors import ConnectionFailedError, ProblemError, RailrulesError, UnreadableAnswerError
from railrules_client._generated.models import Amount, BulkLine, BulkTotal, BulkTrailer
from railrules_client._retrying import wait_after
from railrules_client._sending import encoded

if TYPE_CHECKING:
    from collections.abc import AsyncGenerator, AsyncIterator, Callable, Coroutine, Generator, Iterable, Iterator

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


class _Bar(Protocol):
    def update(self, n: int) -> object: ...
    def close(self) -> object: ...


class Progress:
    """A bar, a function that is told how many jobs are done more, or nothing."""

    def __init__(self, wanted: bool | Callable[[int], object], jobs: object) -> None:  # noqa: FBT001  a choice of three
        """Begin.

        Raises:
            ImportError: a bar is wanted and the extra `progress` (tqdm) is not installed.
        """
        self._bar: _Bar | None = None
        self._told = None if isinstance(wanted, bool) else wanted
        if wanted is True:
            bar = cast("Callable[..., _Bar]", importlib.import_module("tqdm.auto").tqdm)
            total = len(cast("list[object]", jobs)) if hasattr(jobs, "__len__") else None
            self._bar = bar(total=total, unit="job", dynamic_ncols=True)

    def done(self, jobs: int) -> None:
        """Tell that some jobs more are done."""
        if self._bar is not None:
            self._bar.update(jobs)
        if self._told is not None:
            self._told(jobs)

    def close(self) -> None:
        """End."""
        if self._bar is not None:
            self._bar.close()


@dataclass(slots=True)
class _Sum:
    total: BulkTotal
    jobs: int = 0
    net: Fraction = Fraction(0)
    order: Fraction = Fraction(0)
    mass: Fraction | None = Fraction(0)

    def add(self, more: BulkTotal) -> None:
        self.jobs += more.jobs
        self.net += Fraction(more.net.value)
        self.order += Fraction(more.order.value)
        if self.mass is not None:
            self.mass = None if isinstance(more.mass, UnsetType) else self.mass + Fraction(more.mass.value)

    def told(self) -> BulkTotal:
        total = self.total
        mass: Amount | UnsetType = UNSET
        if self.mass is not None and not isinstance(total.mass, UnsetType):
            mass = Amount(float(self.mass), total.mass.unit)
        return BulkTotal(
            item=total.item,
            product=total.product,
            direction=total.direction,
            jobs=self.jobs,
            net=Amount(float(self.net), total.net.unit),
            order=Amount(float(self.order), total.order.unit),
            mass=mass,
        )


class Tally:
    """Counts and totals of a stream so far.

    Attributes:
        done: jobs that came back, answered or refused.
        refused: jobs that were refused.
        resumed: how often jobs without an answer were sent again.
    """

    def __init__(self) -> None:
        """Begin with nothing."""
        self.done: int = 0
        self.refused: int = 0
        self.resumed: int = 0
        self._sums: dict[tuple[str, ...], _Sum] = {}

    def _count(self, outcome: Outcome) -> None:
        self.done += outcome.jobs
        self.refused += outcome.refused
        self.resumed += outcome.resumed
        for total in outcome.totals:
            key = (total.item, total.product, total.direction, total.net.unit)
            self._sums.setdefault(key, _Sum(total)).add(total)

    @property
    def totals(self) -> list[BulkTotal]:
        """Totals by item and product of the jobs done so far, where only totals were asked for: sums rounded once a request."""
        return [self._sums[key].told() for key in sorted(self._sums)]


class JobAnswers(Tally):
    """The answers to a stream of jobs, one after another in the order of the jobs. Iterate over it once.

    With only totals asked for, the jobs that were refused come, and `totals` holds the rest. Close it when you stop early, or
    use it in a `with` statement.
    """

    def __init__(self, jobs: Iterable[object], send: Callable[[Batch], Outcome], *, connections: int, progress: Progress) -> None:
        """Prepare to stream; nothing is read or sent before the first answer is asked for."""
        super().__init__()
        self._answers = self._stream(jobs, send, connections, progress)

    def __iter__(self) -> Iterator[JobAnswer]:
        """Return the answers."""
        return self._answers

    def __next__(self) -> JobAnswer:
        """Return the next answer."""
        return next(self._answers)

    def __enter__(self) -> Self:
        """Return itself."""
        return self

    def __exit__(self, *_error: object) -> None:
        """Stop."""
        self.close()

    def close(self) -> None:
        """Stop: what is on the way is waited for, and nothing more is sent."""
        self._answers.close()

    def _stream(
        self, jobs: Iterable[object], send: Callable[[Batch], Outcome], connections: int, progress: Progress
    ) -> Generator[JobAnswer, None, None]:
        ahead: deque[Future[Outcome]] = deque()
        pool = ThreadPoolExecutor(connections, thread_name_prefix="railrules-bulk")
        try:
            for batch in _batches(jobs):
                ahead.append(pool.submit(send, batch))
                while len(ahead) > connections:  # nothing more is read from the jobs while answers wait to be taken
                    yield from self._taken(ahead.popleft().result(), progress)
            while ahead:
                yield from self._taken(ahead.popleft().result(), progress)
        finally:
            pool.shutdown(wait=True, cancel_futures=True)
            progress.close()

    def _taken(self, outcome: Outcome, progress: Progress) -> Iterator[JobAnswer]:
        self._count(outcome)
        progress.done(outcome.jobs)
        # dropped one by one as they are taken, so that what was taken is not kept
        answers = deque(outcome.answers)
        outcome.answers.clear()
        while answers:
            yield answers.popleft()


def _batches(jobs: Iterable[object]) -> Iterator[Batch]:
    batches = Batches()
    for job in jobs:
        full = batches.add(job)
        if full is not None:
            yield full
    last = batches.end()
    if last is not None:
        yield last


async def _batches_async(jobs: Iterable[object] | AsyncIterable[object]) -> AsyncIterator[Batch]:
    batches = Batches()
    if isinstance(jobs, AsyncIterable):
        async for job in jobs:
            full = batches.add(job)
            if full is not None:
                yield full
    else:
        for batch in _batches(jobs):
            yield batch
        return
    last = batches.end()
    if last is not None:
        yield last


class AsyncJobAnswers(Tally):
    """The answers to a stream of jobs, one after another in the order of the jobs. Iterate over it once.

    With only totals asked for, the jobs that were refused come, and `totals` holds the rest. Close it when you stop early, or
    use it in an `async with` statement. Needs asyncio.
    """

    def __init__(
        self,
        jobs: Iterable[object] | AsyncIterable[object],
        send: Callable[[Batch], Coroutine[object, object, Outcome]],
        *,
        connections: int,
        progress: Progress,
    ) -> None:
        """Prepare to stream; nothing is read or sent before the first answer is asked for."""
        super().__init__()
        self._answers = self._stream(jobs, send, connections, progress)

    def __aiter__(self) -> AsyncIterator[JobAnswer]:
        """Return the answers."""
        return self._answers

    async def __anext__(self) -> JobAnswer:
        """Return the next answer."""
        return await anext(self._answers)

    async def __aenter__(self) -> Self:
        """Return itself."""
        return self

    async def __aexit__(self, *_error: object) -> None:
        """Stop."""
        await self.aclose()

    async def aclose(self) -> None:
        """Stop: what is on the way is given up, and nothing more is sent."""
        await self._answers.aclose()

    async def _stream(
        self,
        jobs: Iterable[object] | AsyncIterable[object],
        send: Callable[[Batch], Coroutine[object, object, Outcome]],
        connections: int,
        progress: Progress,
    ) -> AsyncGenerator[JobAnswer, None]:
        ahead: deque[asyncio.Task[Outcome]] = deque()
        try:
            async for batch in _batches_async(jobs):
                ahead.append(asyncio.create_task(send(batch)))
                if len(ahead) > connections - 1:
                    for answer in await self._taken(ahead.popleft(), progress):
                        yield answer
            while ahead:
                for answer in await self._taken(ahead.popleft(), progress):
                    yield answer
        finally:
            for task in ahead:
                task.cancel()
            await asyncio.gather(*ahead, return_exceptions=True)
            progress.close()

    async def _taken(self, task: asyncio.Task[Outcome], progress: Progress) -> list[JobAnswer]:
        outcome = await task
        self._count(outcome)
        progress.done(outcome.jobs)
        return outcome.answers
