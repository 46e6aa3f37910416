"""What the takeoffs can do beyond single calls: many jobs as a stream, and two of them side by side."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar, Literal, Unpack

from railrules_client._calls import Answer, CallOptions

if TYPE_CHECKING:
    from collections.abc import AsyncIterable, Callable, Iterable, Mapping

    from railrules_client._bulk import AsyncJobAnswers, JobAnswers
    from railrules_client._bulk_requests import Batch, Outcome
    from railrules_client._calls import AsyncCaller, Caller, Operation
    from railrules_client._generated.models import BulkLine, Progress, TakeoffAnswer, TakeoffLine, TakeoffRequest
    from railrules_client.comparing import Comparison

CONNECTIONS = 2
"""Requests of a stream on the way at once: while one is answered the next is read."""


def _query(*, totals_only: bool, units: str | None) -> dict[str, object]:
    return {"answer": "totals" if totals_only else None, "units": units}


def _connections(wanted: int) -> int:
    if wanted < 1:
        raise ValueError(f"connections={wanted}: at least 1 is wanted")
    return wanted


class Takeoffs:
    """The hand-written half of `client.takeoffs`."""

    _caller: Caller
    _bulk: ClassVar[Operation[BulkLine]]
    _create: ClassVar[Operation[TakeoffAnswer]]

    def _watched(  # noqa: PLR0913  what a call is made of
        self,
        operation: Operation[Answer],
        form: Operation[TakeoffLine],
        options: CallOptions,
        *,
        query: Mapping[str, object],
        body: object,
        progress: bool | Callable[[Progress], object],
    ) -> Answer:
        """Call an operation, in the form that tells how far it is where somebody wants to know."""
        if progress is False:
            return self._caller.call(operation, options, query=query, body=body)
        from railrules_client._progress import Stages  # noqa: PLC0415  most scripts have short jobs
        from railrules_client._watching import watched  # noqa: PLC0415

        return watched(self._caller, operation, form, options, query, body, Stages(progress))

    def stream(
        self,
        jobs: Iterable[TakeoffRequest | Mapping[str, object] | str | bytes],
        /,
        *,
        totals_only: bool = False,
        units: Literal["si", "us"] | None = None,
        connections: int = CONNECTIONS,
        progress: bool | Callable[[int], object] = False,
        **options: Unpack[CallOptions],
    ) -> JobAnswers:
        """Takeoffs of many jobs, a million if need be: answers in the order of the jobs, as they come.

        Jobs are read as answers are taken, so that memory stays bounded. A job that is refused does not end the stream. When a
        connection breaks, the jobs that had no answer are sent again, and those alone. The digest of each answer is checked.

        Args:
            jobs: requests, mappings, or JSON of one line each; a generator will do.
            totals_only: have only the totals by item and product, in `totals`, and the jobs that were refused.
            units: of the totals; `us` when left out.
            connections: requests on the way at once; as many as the service has workers is quickest.
            progress: True for a bar (the extra `progress`), or a function that is told of each few jobs done.
            **options: settings of each request: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            An iterator of `JobAnswer`, with counts and totals.

        Raises:
            ValueError: no connections, or a job given as text is not one line.
            ImportError: a bar is wanted and tqdm is not installed.
            RailrulesError: while iterating: some jobs have no answer, and asking again is of no use.
        """
        from railrules_client._bulk import JobAnswers  # noqa: PLC0415  most scripts have one job
        from railrules_client._bulk_requests import answered  # noqa: PLC0415
        from railrules_client._progress import Progress  # noqa: PLC0415

        query, caller, operation = _query(totals_only=totals_only, units=units), self._caller, self._bulk

        def send(batch: Batch) -> Outcome:
            return answered(caller, operation, options, query, batch)

        return JobAnswers(jobs, send, connections=_connections(connections), progress=Progress(progress, jobs))

    def compare(
        self,
        first: TakeoffRequest | Mapping[str, object],
        second: TakeoffRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> Comparison:
        """Two jobs side by side, line by line: what changes if we take the other rail, or box every tie.

        Args:
            first: a job.
            second: the same job, changed.
            **options: settings of each call: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Totals, orders, bill, checks and money of both, with their differences, as tables.

        Raises:
            RailrulesError: one of the jobs has no answer.
        """
        from railrules_client.comparing import compare  # noqa: PLC0415  most scripts have one job

        one = self._caller.call(self._create, options, body=first)
        other = self._caller.call(self._create, options, body=second)
        return compare(one, other, jobs=(first, second))


class AsyncTakeoffs:
    """The hand-written half of the awaited `client.takeoffs`."""

    _caller: AsyncCaller
    _bulk: ClassVar[Operation[BulkLine]]
    _create: ClassVar[Operation[TakeoffAnswer]]

    async def _watched(  # noqa: PLR0913  what a call is made of
        self,
        operation: Operation[Answer],
        form: Operation[TakeoffLine],
        options: CallOptions,
        *,
        query: Mapping[str, object],
        body: object,
        progress: bool | Callable[[Progress], object],
    ) -> Answer:
        """Call an operation, in the form that tells how far it is where somebody wants to know."""
        if progress is False:
            return await self._caller.call(operation, options, query=query, body=body)
        from railrules_client._progress import Stages  # noqa: PLC0415  most scripts have short jobs
        from railrules_client._watching import watched_async  # noqa: PLC0415

        return await watched_async(self._caller, operation, form, options, query, body, Stages(progress))

    def stream(
        self,
        jobs: Iterable[TakeoffRequest | Mapping[str, object] | str | bytes]
        | AsyncIterable[TakeoffRequest | Mapping[str, object] | str | bytes],
        /,
        *,
        totals_only: bool = False,
        units: Literal["si", "us"] | None = None,
        connections: int = CONNECTIONS,
        progress: bool | Callable[[int], object] = False,
        **options: Unpack[CallOptions],
    ) -> AsyncJobAnswers:
        """Takeoffs of many jobs, a million if need be: answers in the order of the jobs, as they come.

        Jobs are read as answers are taken, so that memory stays bounded. A job that is refused does not end the stream. When a
        connection breaks, the jobs that had no answer are sent again, and those alone. The digest of each answer is checked.

        Args:
            jobs: requests, mappings, or JSON of one line each; a generator will do, an asynchronous one too.
            totals_only: have only the totals by item and product, in `totals`, and the jobs that were refused.
            units: of the totals; `us` when left out.
            connections: requests on the way at once; as many as the service has workers is quickest.
            progress: True for a bar (the extra `progress`), or a function that is told of each few jobs done.
            **options: settings of each request: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            An asynchronous iterator of `JobAnswer`, with counts and totals.

        Raises:
            ValueError: no connections, or a job given as text is not one line.
            ImportError: a bar is wanted and tqdm is not installed.
            RailrulesError: while iterating: some jobs have no answer, and asking again is of no use.
        """
        from railrules_client._bulk import AsyncJobAnswers  # noqa: PLC0415  most scripts have one job
        from railrules_client._bulk_requests import answered_async  # noqa: PLC0415
        from railrules_client._progress import Progress  # noqa: PLC0415

        query, caller, operation = _query(totals_only=totals_only, units=units), self._caller, self._bulk

        async def send(batch: Batch) -> Outcome:
            return await answered_async(caller, operation, options, query, batch)

        return AsyncJobAnswers(jobs, send, connections=_connections(connections), progress=Progress(progress, jobs))

    async def compare(
        self,
        first: TakeoffRequest | Mapping[str, object],
        second: TakeoffRequest | Mapping[str, object],
        /,
        **options: Unpack[CallOptions],
    ) -> Comparison:
        """Two jobs side by side, line by line: what changes if we take the other rail, or box every tie.

        Args:
            first: a job.
            second: the same job, changed.
            **options: settings of each call: timeout, retries, headers, request_id, idempotency_key, on_response.

        Returns:
            Totals, orders, bill, checks and money of both, with their differences, as tables.

        Raises:
            RailrulesError: one of the jobs has no answer.
        """
        from railrules_client.comparing import compare  # noqa: PLC0415  most scripts have one job

        one = await self._caller.call(self._create, options, body=first)
        other = await self._caller.call(self._create, options, body=second)
        return compare(one, other, jobs=(first, second))
