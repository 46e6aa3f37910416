from _typeshed import Incomplete
from collections.abc import Mapping
from msgspec import Raw, Struct, UnsetType
from railrules_client._calls import Answer as Answer, AsyncCaller as AsyncCaller, CallOptions as CallOptions, Caller as Caller, Operation as Operation
from railrules_client._errors import ConnectionFailedError as ConnectionFailedError, ProblemError as ProblemError, RailrulesError as RailrulesError, UnreadableAnswerError as UnreadableAnswerError, problem_of as problem_of
from railrules_client._generated.models import Progress as Progress, TakeoffLine as TakeoffLine
from railrules_client._progress import Stages as Stages
from railrules_client._retrying import wait_after as wait_after
from railrules_client._sending import encoded as encoded
from typing import Generic

class _Line(Struct):
    progress: Progress | UnsetType = ...
    answer: Raw | UnsetType = ...
    problem: Raw | UnsetType = ...

class _Status(Struct):
    status: int

class Watching(Generic[Answer]):
    operation: Incomplete
    request_id: Incomplete
    options: CallOptions
    def __init__(self, operation: Operation[Answer], options: CallOptions, stages: Stages, retries: int) -> None: ...
    def take(self, raw: bytes) -> None: ...
    def finish(self) -> Answer: ...
    def wait_after(self, error: RailrulesError) -> float | None: ...

def watched(caller: Caller, operation: Operation[Answer], form: Operation[TakeoffLine], options: CallOptions, query: Mapping[str, object], body: object, stages: Stages) -> Answer: ...
async def watched_async(caller: AsyncCaller, operation: Operation[Answer], form: Operation[TakeoffLine], options: CallOptions, query: Mapping[str, object], body: object, stages: Stages) -> Answer: ...
