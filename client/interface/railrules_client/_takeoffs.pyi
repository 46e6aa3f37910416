from collections.abc import AsyncIterable, Callable as Callable, Iterable, Mapping
from railrules_client._bulk import AsyncJobAnswers as AsyncJobAnswers, JobAnswers as JobAnswers
from railrules_client._bulk_requests import Batch as Batch, Outcome as Outcome
from railrules_client._calls import Answer as Answer, AsyncCaller as AsyncCaller, CallOptions as CallOptions, Caller as Caller, Operation as Operation
from railrules_client._generated.models import BulkLine as BulkLine, Progress as Progress, TakeoffAnswer as TakeoffAnswer, TakeoffLine as TakeoffLine, TakeoffRequest as TakeoffRequest
from railrules_client.comparing import Comparison as Comparison
from typing import Literal, Unpack

CONNECTIONS: int

class Takeoffs:
    def stream(self, jobs: Iterable[TakeoffRequest | Mapping[str, object] | str | bytes], /, *, totals_only: bool = False, units: Literal['si', 'us'] | None = None, connections: int = ..., progress: bool | Callable[[int], object] = False, **options: Unpack[CallOptions]) -> JobAnswers: ...
    def compare(self, first: TakeoffRequest | Mapping[str, object], second: TakeoffRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> Comparison: ...

class AsyncTakeoffs:
    def stream(self, jobs: Iterable[TakeoffRequest | Mapping[str, object] | str | bytes] | AsyncIterable[TakeoffRequest | Mapping[str, object] | str | bytes], /, *, totals_only: bool = False, units: Literal['si', 'us'] | None = None, connections: int = ..., progress: bool | Callable[[int], object] = False, **options: Unpack[CallOptions]) -> AsyncJobAnswers: ...
    async def compare(self, first: TakeoffRequest | Mapping[str, object], second: TakeoffRequest | Mapping[str, object], /, **options: Unpack[CallOptions]) -> Comparison: ...
