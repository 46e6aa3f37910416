"""An ASGI application called without a server: one request in, its response out, piece by piece where it comes so."""

from __future__ import annotations

import asyncio
from typing import TYPE_CHECKING, Any, Protocol, TypeAlias

import httpx

if TYPE_CHECKING:
    from collections.abc import AsyncIterator, Awaitable, Callable
    from contextlib import AbstractAsyncContextManager

Message: TypeAlias = "dict[str, Any]"
"""What an ASGI application is told and tells, as the ASGI specification has it."""


class Application(Protocol):
    """An ASGI application that can be started and stopped."""

    async def __call__(
        self, scope: Message, receive: Callable[[], Awaitable[Message]], send: Callable[[Message], Awaitable[None]], /
    ) -> None:
        """Serve one request."""
        ...

    def lifespan(self) -> AbstractAsyncContextManager[None]:
        """Start the application, and stop it at the end."""
        ...


def scope_of(request: httpx.Request) -> Message:
    """Return what an ASGI application is told of a request."""
    return {
        "type": "http",
        "asgi": {"version": "3.0", "spec_version": "2.4"},
        "http_version": "1.1",
        "method": request.method,
        "scheme": request.url.scheme,
        "path": request.url.path,
        "raw_path": request.url.raw_path.partition(b"?")[0],
        "query_string": request.url.query,
        "root_path": "",
        "headers": [(name.lower(), value) for name, value in request.headers.raw],
        "client": ("127.0.0.1", 0),
        "server": (request.url.host, request.url.port or 80),
        "state": {},
    }


class Exchange:
    """One request to an application, whose response is taken as it comes. Needs a running loop."""

    def __init__(self, application: Application, request: httpx.Request, content: bytes) -> None:
        """Give an application a request."""
        self._start: Message = {}
        self._pieces: asyncio.Queue[bytes | None] = asyncio.Queue(1)  # what is not taken is not worked on either
        self._over = asyncio.Event()
        self._unread = [content]
        self._request = request
        self._task = asyncio.ensure_future(application(scope_of(request), self._receive, self._send))
        self._task.add_done_callback(lambda _: self._over.set())

    async def _receive(self) -> Message:
        if self._unread:
            return {"type": "http.request", "body": self._unread.pop(), "more_body": False}
        # told before the answer is whole, a disconnect would cut a streamed answer short without a word
        await self._over.wait()
        return {"type": "http.disconnect"}

    async def _send(self, message: Message) -> None:
        if message["type"] == "http.response.start":
            self._start.update(message)
        elif message["type"] == "http.response.body":
            more: bool = message.get("more_body", False)
            await self._pieces.put(message.get("body", b""))
            if not more:
                self._over.set()
                await self._pieces.put(None)

    async def piece(self) -> bytes | None:
        """Return the next piece of the body; None where it has ended.

        Raises:
            Exception: whatever the application failed with.
        """
        taken = asyncio.ensure_future(self._pieces.get())
        await asyncio.wait((taken, self._task), return_when=asyncio.FIRST_COMPLETED)
        if not taken.done() and self._pieces.empty():
            taken.cancel()
            self._task.result()
            return None
        return await taken

    async def response(self, stream: httpx.SyncByteStream | httpx.AsyncByteStream) -> httpx.Response:
        """Return the response, its body in one where it came so, else as a stream of what `piece` returns."""
        first = await self.piece()
        status: int = self._start["status"]
        headers: list[tuple[bytes, bytes]] = self._start.get("headers", [])
        if self._over.is_set():
            body = first or b""
            while (more := await self.piece()) is not None:
                body += more
            await self._task
            return httpx.Response(status, headers=headers, content=body, request=self._request)
        self._first = first
        return httpx.Response(status, headers=headers, stream=stream, request=self._request)

    async def pieces(self) -> AsyncIterator[bytes]:
        """Yield the pieces of a body that comes as a stream."""
        piece: bytes | None = self._first
        while piece is not None:
            yield piece
            piece = await self.piece()

    async def end(self) -> None:
        """Tell the application that the caller is gone, where it has not answered whole, and wait for it."""
        self._over.set()
        while not self._task.done():
            taken = asyncio.ensure_future(self._pieces.get())
            await asyncio.wait((taken, self._task), return_when=asyncio.FIRST_COMPLETED)
            taken.cancel()
        self._task.exception()


class Running:
    """A started application. Starting and stopping happen in one task, as the application's own task groups demand."""

    def __init__(self, application: Application) -> None:
        """Prepare to start an application; needs a running loop."""
        self._application = application
        self._stop = asyncio.Event()
        self._up: asyncio.Future[None] = asyncio.get_running_loop().create_future()
        self._life = asyncio.get_running_loop().create_task(self._live())

    async def _live(self) -> None:
        try:
            async with self._application.lifespan():
                self._up.set_result(None)
                await self._stop.wait()
        except BaseException as error:
            if self._up.done():
                raise
            self._up.set_exception(error)  # whoever waits for the start would otherwise wait for ever

    async def up(self) -> None:
        """Wait until it has started; raise what kept it from starting."""
        await asyncio.shield(self._up)

    async def down(self) -> None:
        """Stop it and wait until it has stopped."""
        self._stop.set()
        await self._life
