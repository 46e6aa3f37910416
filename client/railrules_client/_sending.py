"""From an operation to its answer: requests made, sent, repeated and read; once for waiting and once for awaiting."""

from __future__ import annotations

import hashlib
import re
import time
import uuid
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Generic, cast
from urllib.parse import quote

import httpx
import msgspec
from msgspec import UNSET

from railrules_client._calls import Answer
from railrules_client._errors import ConnectionFailedError, RailrulesError, TimedOutError, UnreadableAnswerError, problem_of
from railrules_client._observing import Exchange, Hook, LogHook
from railrules_client._retrying import wait_after

if TYPE_CHECKING:
    from collections.abc import AsyncIterator, Iterator, Mapping, Sequence

    from railrules_client._caching import AnswerCache
    from railrules_client._calls import CallOptions, Operation

CONNECT_TIMEOUT = 5.0


class LineCutter:
    """Cuts chunks of bytes into lines, wherever the chunks begin and end."""

    def __init__(self) -> None:
        """Begin with nothing."""
        self._parts: list[bytes] = []

    def feed(self, chunk: bytes) -> Iterator[bytes]:
        """Yield the lines that a chunk completes, without their ends."""
        *complete, rest = chunk.split(b"\n")
        for piece in complete:
            self._parts.append(piece)
            yield b"".join(self._parts)
            self._parts.clear()
        if rest:
            self._parts.append(rest)


def _simple(value: object) -> object:
    """Return numbers of other libraries as plain ones, for the encoder."""
    if isinstance(value, float):
        return float(value)
    if hasattr(value, "__index__"):
        return int(cast("int", value))
    if hasattr(value, "__float__"):
        return float(cast("float", value))
    raise TypeError(f"a {type(value).__name__} cannot be sent")


_JSON = "application/json"


def _key(options: CallOptions, body: bytes) -> str:
    """Return the idempotency key of a calculation: the caller's, or one that holds for this body alone."""
    key = options.get("idempotency_key")
    return f'"{key}"' if key is not None else f'"sha-256:{hashlib.sha256(body).hexdigest()}"'


_ENCODER = msgspec.json.Encoder(enc_hook=_simple)


def encoded(body: object) -> bytes:
    """Return a request body as JSON."""
    return _ENCODER.encode(body)


_DECODERS: dict[object, msgspec.json.Decoder[object]] = {}


def _decoded(content: bytes, answer: type[Answer]) -> Answer:
    decoder = _DECODERS.get(answer)
    if decoder is None:  # made with the first answer of a kind, which keeps imports quick
        decoder = _DECODERS[answer] = msgspec.json.Decoder(cast("type[object]", answer))
    return cast("Answer", decoder.decode(content))


def _query_value(value: object) -> str:
    return str(value).lower() if isinstance(value, bool) else str(value)


def _check_headers(headers: Mapping[str, str]) -> None:
    for name, value in headers.items():
        if re.search(r"[\r\n\x00]", name + value):
            raise ValueError(f"the header {name!r} holds a line break")


def timeout_of(seconds: float | None) -> httpx.Timeout:
    """Return the time limits for a number of seconds; a connection is given up sooner."""
    return httpx.Timeout(seconds, connect=CONNECT_TIMEOUT if seconds is None else min(CONNECT_TIMEOUT, seconds))


@dataclass(frozen=True, slots=True)
class Call(Generic[Answer]):
    """A call as it was asked for.

    Attributes:
        operation: what is called.
        options: settings of this call.
        path: path parameters.
        query: query parameters; None stands for left out.
        body: request body: a struct, a mapping, bytes as they are, or UNSET for none.
        request_id: name of the call in the logs of both sides.
    """

    operation: Operation[Answer]
    options: CallOptions
    path: Mapping[str, str] | None
    query: Mapping[str, object] | None
    body: object
    request_id: str = field(init=False)

    def __post_init__(self) -> None:
        """Name the call, unless the caller has."""
        object.__setattr__(self, "request_id", self.options.get("request_id") or uuid.uuid4().hex)


class Sender:
    """What both kinds of sending share: requests, hooks, reading."""

    def __init__(self, *, retries: int, cache: AnswerCache | None, hooks: Sequence[Hook]) -> None:
        """Keep the settings that calls fall back on."""
        self.retries = retries
        self.cache = cache
        self.hooks = (LogHook(), *hooks)

    def prepare(self, http: httpx.Client | httpx.AsyncClient, call: Call[Answer]) -> httpx.Request:
        """Make a request.

        Raises:
            ValueError: a path parameter names nothing, or a header holds a line break.
        """
        operation, options = call.operation, call.options
        address = operation.path
        for name, value in (call.path or {}).items():
            if value in ("", ".", ".."):  # these would name another resource
                raise ValueError(f"{name}={value!r} names nothing")
            address = address.replace(f"{{{name}}}", quote(value, safe=""))
        headers = {"Accept": operation.accept, "X-Request-Id": call.request_id, **options.get("headers", {})}
        content: bytes | None = None
        if call.body is not UNSET:
            headers["Content-Type"] = operation.content_type
            content = call.body if isinstance(call.body, bytes) else encoded(call.body)
            if operation.content_type == _JSON and "idempotency-key" not in {name.lower() for name in headers}:
                headers["Idempotency-Key"] = _key(options, content)
        _check_headers(headers)
        query = {name: _query_value(value) for name, value in (call.query or {}).items() if value is not None}
        request = http.build_request(
            operation.method,
            address,
            params=query or None,
            content=content,
            headers=headers,
            timeout=timeout_of(options["timeout"]) if "timeout" in options else httpx.USE_CLIENT_DEFAULT,
        )
        if self.cache is not None:
            self.cache.prepare(request)
        return request

    def begin(self, call: Call[Answer], request: httpx.Request, attempt: int) -> Exchange:
        """Tell the hooks that a request goes out."""
        exchange = Exchange(call.operation.id, request, attempt, call.request_id)
        for hook in self.hooks:
            hook.before(exchange)
        return exchange

    def end(self, exchange: Exchange, outcome: httpx.Response | httpx.RequestError, started: float) -> None:
        """Tell the hooks what came of it."""
        exchange.seconds = time.perf_counter() - started
        if isinstance(outcome, httpx.Response):
            exchange.response = outcome
        else:
            exchange.error = outcome
        for hook in reversed(self.hooks):
            hook.after(exchange)

    @staticmethod
    def show(options: CallOptions, response: httpx.Response) -> None:
        """Hand a response to the caller who has asked for it."""
        if "on_response" in options:
            options["on_response"](response)

    def read(self, call: Call[Answer], exchange: Exchange, outcome: httpx.Response | httpx.RequestError) -> Answer:
        """Return the answer in the last outcome of a call.

        Raises:
            RailrulesError: it is not an answer.
        """
        operation, options = call.operation, call.options
        if not isinstance(outcome, httpx.Response):
            raise broken(outcome, exchange) from outcome
        response = outcome if self.cache is None else self.cache.settle(exchange.request, outcome)
        self.show(options, response)
        if not response.is_success:
            raise problem_of(response, exchange.request_id)
        if operation.answer is str:
            return cast("Answer", response.text)
        if operation.answer is bytes:
            return cast("Answer", response.content)
        try:
            return _decoded(response.content, operation.answer)
        except (msgspec.DecodeError, UnicodeDecodeError) as error:
            place = f"{operation.method} {exchange.request.url.path}"
            told = f"{place} answered with something else than a {operation.answer.__name__}: {error}"
            raise UnreadableAnswerError(told, exchange.request_id) from error


def broken(error: httpx.RequestError, exchange: Exchange) -> RailrulesError:
    """Return the error that tells of a call which got no answer, or only a part of one."""
    host = f"{exchange.request.url.scheme}://{exchange.request.url.netloc.decode()}"
    told = f"{str(error) or type(error).__name__} at {host}, after attempt {exchange.attempt + 1}"
    if isinstance(error, httpx.TimeoutException) and not isinstance(error, httpx.ConnectTimeout):
        return TimedOutError(f"no answer in time: {told}", exchange.request_id)
    if isinstance(error, httpx.DecodingError):
        return UnreadableAnswerError(f"the answer's bytes could not be read: {told}", exchange.request_id)
    return ConnectionFailedError(f"the service was not reached: {told}", exchange.request_id)


class SyncSender(Sender):
    """Calls operations and waits."""

    def __init__(self, http: httpx.Client, *, retries: int, cache: AnswerCache | None, hooks: Sequence[Hook]) -> None:
        """Send through an HTTP client."""
        super().__init__(retries=retries, cache=cache, hooks=hooks)
        self.http = http

    def call(
        self,
        operation: Operation[Answer],
        options: CallOptions,
        *,
        path: Mapping[str, str] | None = None,
        query: Mapping[str, object] | None = None,
        body: object = UNSET,
    ) -> Answer:
        """Call an operation.

        Raises:
            RailrulesError: there is no answer, or it is a problem.
        """
        asked = Call(operation, options, path, query, body)
        attempt = 0
        while True:
            request = self.prepare(self.http, asked)
            exchange = self.begin(asked, request, attempt)
            started = time.perf_counter()
            outcome: httpx.Response | httpx.RequestError
            try:
                outcome = self.http.send(request)
            except httpx.RequestError as error:
                outcome = error
            self.end(exchange, outcome, started)
            wait = wait_after(outcome, attempt, options.get("retries", self.retries))
            if wait is None:
                return self.read(asked, exchange, outcome)
            time.sleep(wait)
            attempt += 1

    def lines(
        self, operation: Operation[Answer], options: CallOptions, *, query: Mapping[str, object] | None, body: bytes
    ) -> Iterator[bytes]:
        """Call an operation that answers line by line, once, and yield the lines as they come.

        Raises:
            RailrulesError: there is no answer, it is a problem, or the connection broke before its end.
        """
        asked = Call(operation, options, None, query, body)
        request = self.prepare(self.http, asked)
        exchange = self.begin(asked, request, 0)
        started = time.perf_counter()
        try:
            response = self.http.send(request, stream=True)
        except httpx.RequestError as error:
            self.end(exchange, error, started)
            raise broken(error, exchange) from error
        try:
            self.end(exchange, response, started)
            if not response.is_success:
                response.read()
            self.show(options, response)
            if not response.is_success:
                raise problem_of(response, exchange.request_id)
            cutter = LineCutter()
            for chunk in response.iter_bytes():
                yield from cutter.feed(chunk)
        except httpx.RequestError as error:
            raise broken(error, exchange) from error
        finally:
            response.close()


class AsyncSender(Sender):
    """Calls operations asynchronously."""

    def __init__(self, http: httpx.AsyncClient, *, retries: int, cache: AnswerCache | None, hooks: Sequence[Hook]) -> None:
        """Send through an HTTP client."""
        super().__init__(retries=retries, cache=cache, hooks=hooks)
        self.http = http

    async def call(
        self,
        operation: Operation[Answer],
        options: CallOptions,
        *,
        path: Mapping[str, str] | None = None,
        query: Mapping[str, object] | None = None,
        body: object = UNSET,
    ) -> Answer:
        """Call an operation.

        Raises:
            RailrulesError: there is no answer, or it is a problem.
        """
        import anyio  # noqa: PLC0415  comes with httpx; blocking callers do without

        asked = Call(operation, options, path, query, body)
        attempt = 0
        while True:
            request = self.prepare(self.http, asked)
            exchange = self.begin(asked, request, attempt)
            started = time.perf_counter()
            outcome: httpx.Response | httpx.RequestError
            try:
                outcome = await self.http.send(request)
            except httpx.RequestError as error:
                outcome = error
            self.end(exchange, outcome, started)
            wait = wait_after(outcome, attempt, options.get("retries", self.retries))
            if wait is None:
                return self.read(asked, exchange, outcome)
            await anyio.sleep(wait)
            attempt += 1

    async def lines(
        self, operation: Operation[Answer], options: CallOptions, *, query: Mapping[str, object] | None, body: bytes
    ) -> AsyncIterator[bytes]:
        """Call an operation that answers line by line, once, and yield the lines as they come.

        Raises:
            RailrulesError: there is no answer, it is a problem, or the connection broke before its end.
        """
        asked = Call(operation, options, None, query, body)
        request = self.prepare(self.http, asked)
        exchange = self.begin(asked, request, 0)
        started = time.perf_counter()
        try:
            response = await self.http.send(request, stream=True)
        except httpx.RequestError as error:
            self.end(exchange, error, started)
            raise broken(error, exchange) from error
        try:
            self.end(exchange, response, started)
            if not response.is_success:
                await response.aread()
            self.show(options, response)
            if not response.is_success:
                raise problem_of(response, exchange.request_id)
            cutter = LineCutter()
            async for chunk in response.aiter_bytes():
                for line in cutter.feed(chunk):
                    yield line
        except httpx.RequestError as error:
            raise broken(error, exchange) from error
        finally:
            await response.aclose()
