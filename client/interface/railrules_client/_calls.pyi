import httpx
from collections.abc import AsyncIterator, Callable as Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Generic, Protocol, TypeVar, TypedDict

Answer = TypeVar('Answer')

class CallOptions(TypedDict, total=False):
    timeout: float | None
    retries: int
    headers: Mapping[str, str]
    request_id: str
    idempotency_key: str
    on_response: Callable[[httpx.Response], None]

@dataclass(frozen=True, slots=True)
class Operation(Generic[Answer]):
    id: str
    method: str
    path: str
    accept: str
    answer: type[Answer]
    content_type: str = ...

class Caller(Protocol):
    @property
    def retries(self) -> int: ...
    def call(self, operation: Operation[Answer], options: CallOptions, *, path: Mapping[str, str] | None = None, query: Mapping[str, object] | None = None, body: object = ...) -> Answer: ...
    def lines(self, operation: Operation[Answer], options: CallOptions, *, query: Mapping[str, object] | None, body: bytes) -> Iterator[bytes]: ...

class AsyncCaller(Protocol):
    @property
    def retries(self) -> int: ...
    async def call(self, operation: Operation[Answer], options: CallOptions, *, path: Mapping[str, str] | None = None, query: Mapping[str, object] | None = None, body: object = ...) -> Answer: ...
    def lines(self, operation: Operation[Answer], options: CallOptions, *, query: Mapping[str, object] | None, body: bytes) -> AsyncIterator[bytes]: ...
