"""An ASGI application called without a server: one request in, one whole response out."""

from __future__ import annotations

import asyncio
from typing import TYPE_CHECKING, Any, Protocol, TypeAlias

import httpx

if TYPE_CHECKING:
    from collections.abc import Awaitable, Callable
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


async def exchange(application: Application, request: httpx.Request, content: bytes) -> httpx.Response:
    """Give an application one request and return its response."""
    start: Message = {}
    body: list[bytes] = []
    answered = asyncio.Event()
    unread = [content]

    async def receive() -> Message:
        if unread:
            return {"type": "http.request", "body": unread.pop(), "more_body": False}
        # told before the answer is whole, a disconnect would cut a streamed answer short without a word
        await answered.wait()
        return {"type": "http.disconnect"}

    async def send(message: Message) -> None:
        if message["type"] == "http.response.start":
            start.update(message)
        elif message["type"] == "http.response.body":
            body.append(message.get("body", b""))
            if not message.get("more_body", False):
                answered.set()

    await application(scope_of(request), receive, send)
    return httpx.Response(start["status"], headers=start.get("headers", []), content=b"".join(body), request=request)


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
