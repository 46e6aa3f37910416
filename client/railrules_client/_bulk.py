"""A stream of jobs: several requests of it on the way at once, the answers in the order of the jobs, and their totals."""

from __future__ import annotations

import asyncio
from collections import deque
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING, Self

from msgspec import UNSET, UnsetType

from railrules_client._bulk_requests import batches_of, batches_of_async
from railrules_client._generated.models import Amount, BulkTotal

if TYPE_CHECKING:
    from collections.abc import AsyncGenerator, AsyncIterable, AsyncIterator, Callable, Coroutine, Generator, Iterable, Iterator

    from railrules_client._bulk_requests import Batch, JobAnswer, Outcome
    from railrules_client._progress import Progress


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
            for batch in batches_of(jobs):
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
            async for batch in batches_of_async(jobs):
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
