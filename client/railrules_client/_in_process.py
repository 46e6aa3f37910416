"""The service inside this process: no server, no socket, the same bytes."""

from __future__ import annotations

import asyncio
import importlib
import threading
import weakref
from concurrent.futures import ThreadPoolExecutor
from typing import TYPE_CHECKING, Any, TypeVar, cast

import httpx

from railrules_client._asgi import Application, Exchange, Running
from railrules_client._errors import InProcessError

if TYPE_CHECKING:
    from collections.abc import AsyncIterator, Callable, Coroutine, Iterator, Sequence
    from pathlib import Path

BASE_URL = "http://in-process.invalid"
"""Stands where an address is wanted; nothing is ever looked up or opened."""
PLAIN = {"Accept-Encoding": "identity"}
"""Nothing travels, so nothing is worth compressing."""
_Result = TypeVar("_Result")


def application_of(rulebooks: Sequence[Path] = ()) -> Application:
    """Build the service's application.

    Raises:
        InProcessError: the service's package is not installed, or a rulebook cannot be used.
    """
    try:
        app = importlib.import_module("railrules_api.api.app")
        service = importlib.import_module("railrules_api.api.service")
    except ModuleNotFoundError as error:
        if error.name is not None and not error.name.startswith("railrules_api"):
            raise
        told = "the service is not installed here: install the package `railrules` beside the client, or give Client an address"
        raise InProcessError(told) from error
    try:
        started = service.start(tuple(rulebooks))
    except (ValueError, OSError) as error:  # what is wrong with a rulebook is told by such
        raise InProcessError(str(error)) from error
    return cast("Application", app.create_app(started))


def _ended(loop: asyncio.AbstractEventLoop, running: Running) -> None:
    if loop.is_closed():
        return
    try:
        loop.run_until_complete(running.down())
        loop.run_until_complete(loop.shutdown_asyncgens())
        loop.run_until_complete(loop.shutdown_default_executor())
    finally:
        loop.close()


class InProcessTransport(httpx.BaseTransport):
    """Carries requests into the application on a loop of its own. Safe to share between threads: one call at a time."""

    def __init__(self, application: Application) -> None:
        """Start an application.

        Raises:
            Exception: whatever keeps the application from starting.
        """
        self._application = application
        self._loop = asyncio.new_event_loop()
        self._lock = threading.Lock()
        try:
            self._running = self._run(self._start())
        except BaseException:
            self._loop.close()
            raise
        # a script need not close its client: the loop is closed with the transport, at the latest when Python ends
        self._end = weakref.finalize(self, _ended, self._loop, self._running)

    async def _start(self) -> Running:
        running = Running(self._application)
        await running.up()
        return running

    def _run(self, work: Coroutine[Any, Any, _Result]) -> _Result:
        """Run something on the own loop; from another thread where this one has a loop running already, as notebooks do."""
        return _beside_a_loop(lambda: self._loop.run_until_complete(work))

    def handle_request(self, request: httpx.Request) -> httpx.Response:
        """Give the application a request."""
        content = request.read()
        with self._lock:
            if self._loop.is_closed():
                raise RuntimeError("the client has been closed")
            return self._run(self._answer(request, content))

    async def _answer(self, request: httpx.Request, content: bytes) -> httpx.Response:
        exchange = Exchange(self._application, request, content)
        return await exchange.response(_Pieces(self, exchange))

    def locked(self, work: Callable[[], Coroutine[Any, Any, _Result]]) -> _Result:
        """Run something on the own loop, when it is free."""
        with self._lock:
            if self._loop.is_closed():
                raise RuntimeError("the client has been closed")
            return self._run(work())

    def close(self) -> None:
        """Stop the application."""
        with self._lock:
            if self._end.detach() is not None:
                _beside_a_loop(lambda: _ended(self._loop, self._running))


def _beside_a_loop(work: Callable[[], _Result]) -> _Result:
    try:
        asyncio.get_running_loop()
    except RuntimeError:
        return work()
    with ThreadPoolExecutor(1) as beside:
        return beside.submit(work).result()


class _Pieces(httpx.SyncByteStream):
    """A body that comes piece by piece; the loop runs while the next is waited for."""

    def __init__(self, transport: InProcessTransport, exchange: Exchange) -> None:
        self._transport, self._exchange = transport, exchange
        self._pieces = exchange.pieces()

    async def _next(self) -> bytes | None:
        return await anext(self._pieces, None)

    def __iter__(self) -> Iterator[bytes]:
        while (piece := self._transport.locked(self._next)) is not None:
            yield piece

    def close(self) -> None:
        self._transport.locked(self._exchange.end)


class _AsyncPieces(httpx.AsyncByteStream):
    """A body that comes piece by piece."""

    def __init__(self, exchange: Exchange) -> None:
        self._exchange = exchange

    async def __aiter__(self) -> AsyncIterator[bytes]:
        async for piece in self._exchange.pieces():
            yield piece

    async def aclose(self) -> None:
        await self._exchange.end()


class AsyncInProcessTransport(httpx.AsyncBaseTransport):
    """Carries requests into the application on the caller's own loop; the application starts with the first of them."""

    def __init__(self, application: Application) -> None:
        """Keep an application to start."""
        self._application = application
        self._running: Running | None = None

    async def handle_async_request(self, request: httpx.Request) -> httpx.Response:
        """Give the application a request."""
        content = await request.aread()
        if self._running is None:
            self._running = Running(self._application)
        await self._running.up()
        exchange = Exchange(self._application, request, content)
        return await exchange.response(_AsyncPieces(exchange))

    async def aclose(self) -> None:
        """Stop the application."""
        if self._running is not None:
            await self._running.down()
            self._running = None
