"""What an operation is, and what a call of it can be told: the words between the generated half and the hand-written one."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Generic, Protocol, TypedDict, TypeVar

from msgspec import UNSET

if TYPE_CHECKING:
    from collections.abc import AsyncIterator, Callable, Iterator, Mapping

    import httpx

Answer = TypeVar("Answer")


class CallOptions(TypedDict, total=False):
    """Settings of one call; what is left out is as the client was made.

    Attributes:
        timeout: seconds to wait for the connection and for each part of the answer; None waits for ever.
        retries: how often a call that failed in passing is repeated.
        headers: further request headers.
        request_id: name of the call in the logs of both sides, instead of a random one.
        idempotency_key: name of a calculation for whoever stands between, the same in every attempt; left out, the SHA-256 of
            the body, which the service holds against the body that arrives.
        on_response: is handed the raw response before it is read: status, headers, bytes, problems too.
    """

    timeout: float | None
    retries: int
    headers: Mapping[str, str]
    request_id: str
    idempotency_key: str
    on_response: Callable[[httpx.Response], None]


@dataclass(frozen=True, slots=True)
class Operation(Generic[Answer]):
    """An operation of the service, in one of the forms it answers in.

    Attributes:
        id: operationId of the OpenAPI document.
        method: HTTP method.
        path: template below the base address.
        accept: media type asked for.
        answer: what the answer is read as: a struct, or `str` or `bytes` as it stands.
        content_type: media type of the request body; empty for none.
    """

    id: str
    method: str
    path: str
    accept: str
    answer: type[Answer]
    content_type: str = ""


class Caller(Protocol):
    """Something that calls operations and waits."""

    @property
    def retries(self) -> int:
        """How often a call that failed in passing is repeated."""
        ...

    def call(
        self,
        operation: Operation[Answer],
        options: CallOptions,
        *,
        path: Mapping[str, str] | None = None,
        query: Mapping[str, object] | None = None,
        body: object = UNSET,
    ) -> Answer:
        """Call an operation."""
        ...

    def lines(
        self, operation: Operation[Answer], options: CallOptions, *, query: Mapping[str, object] | None, body: bytes
    ) -> Iterator[bytes]:
        """Call an operation that answers line by line, once, and yield the lines as they come."""
        ...


class AsyncCaller(Protocol):
    """Something that calls operations asynchronously."""

    @property
    def retries(self) -> int:
        """How often a call that failed in passing is repeated."""
        ...

    async def call(
        self,
        operation: Operation[Answer],
        options: CallOptions,
        *,
        path: Mapping[str, str] | None = None,
        query: Mapping[str, object] | None = None,
        body: object = UNSET,
    ) -> Answer:
        """Call an operation."""
        ...

    def lines(
        self, operation: Operation[Answer], options: CallOptions, *, query: Mapping[str, object] | None, body: bytes
    ) -> AsyncIterator[bytes]:
        """Call an operation that answers line by line, once, and yield the lines as they come."""
        ...
