"""The service inside the process: the same bytes as over HTTP, and the traps of running an application by hand."""

from __future__ import annotations

import asyncio
import gc
import json
import socket
import sys
import threading
from collections.abc import AsyncIterator, Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import asynccontextmanager
from typing import Any, cast

import httpx
import pytest
import uvicorn
from litestar import Litestar, Request, get, post
from litestar.response import Stream
from railrules_client import AsyncClient, Client, InProcessError, NotFoundError, RefusedError, models
from railrules_client._asgi import Application
from railrules_client._in_process import AsyncInProcessTransport, InProcessTransport

from railrules_api.api.app import create_app
from railrules_api.api.service import start

REQUEST = models.ThermalForceRequest(rail_temperature="130 degF", neutral_temperature="95 degF", section="136RE", explain=True)


@pytest.fixture(scope="module")
def served() -> Iterator[str]:
    """Serve the application on a free port of the loopback; give its address."""
    listening = socket.socket()
    listening.bind(("127.0.0.1", 0))
    server = uvicorn.Server(uvicorn.Config(create_app(start()), log_level="error", access_log=False, lifespan="on"))
    thread = threading.Thread(target=server.run, kwargs={"sockets": [listening]})
    thread.start()
    yield f"http://127.0.0.1:{listening.getsockname()[1]}"
    server.should_exit = True
    thread.join(20)
    listening.close()
    assert not thread.is_alive()


@pytest.fixture(scope="module")
def inside() -> Iterator[Client]:
    with Client.in_process() as client:
        yield client


def _getting(path: str) -> Callable[[Client], httpx.Response]:
    return lambda client: client.http.get(path)


def _posting(path: str, sent: object) -> Callable[[Client], httpx.Response]:
    return lambda client: client.http.post(path, json=sent)


def questions(document: str) -> list[tuple[str, Callable[[Client], httpx.Response]]]:
    """Return every catalogue list and every worked example of the document, and some bad requests, to be sent raw."""
    found: list[tuple[str, Callable[[Client], httpx.Response]]] = []
    for path, methods in json.loads(document)["paths"].items():
        if "get" in methods and "{" not in path:
            found.append((f"GET {path}", _getting(path)))
        body = methods.get("post", {}).get("requestBody", {}).get("content", {}).get("application/json", {})
        for example in body.get("examples", {}).values():
            sent = example["value"]
            found.append((f"POST {path}", _posting(path, sent)))
    found += [
        ("unknown path", lambda client: client.http.get("/v1/nothing")),
        ("wrong method", lambda client: client.http.delete("/v1/rules")),
        (
            "not JSON",
            lambda client: client.http.post("/v1/thermal/force", content=b"{", headers={"Content-Type": "application/json"}),
        ),
        ("refused", lambda client: client.http.post("/v1/thermal/force", json={"section": "none"})),
    ]
    return found


def test_the_same_bytes_as_over_http(served: str, inside: Client, document: str) -> None:
    with Client(served) as outside:
        for title, question in questions(document):
            here, there = question(inside), question(outside)
            assert (title, here.status_code, here.content) == (title, there.status_code, there.content)
            for name in ("content-type", "etag", "cache-control", "allow", "vary"):
                # over the network the same bytes may travel compressed, and are then named so
                told = there.headers.get(name, "").replace('-gz"', '"')
                assert (title, here.headers.get(name, "")) == (title, told)


def test_both_clients_against_the_real_service(served: str, inside: Client) -> None:
    async def awaiting() -> tuple[Any, ...]:
        async with AsyncClient.in_process() as client, AsyncClient(served) as outside:
            return (
                await client.thermal.force(REQUEST), await outside.thermal.force(REQUEST),
                await client.rail_sections.get("136RE"), await outside.rail_sections.get("136RE"),
            )  # fmt: skip

    force, force_outside, section, section_outside = asyncio.run(awaiting())
    assert force == force_outside == inside.thermal.force(REQUEST)
    assert section == section_outside == inside.rail_sections.get("136RE")
    assert inside.rail_sections.get("136RE") == section  # not changed, so the kept one
    assert force.result.force.to("kip").magnitude == pytest.approx(90.9, abs=0.1)


def test_problems_of_the_real_service_are_typed(inside: Client) -> None:
    with pytest.raises(NotFoundError, match="136RE"):
        inside.rail_sections.get("136XE")
    with pytest.raises(RefusedError) as caught:
        inside.thermal.force(
            models.ThermalForceRequest(rail_temperature="130 delta_degF", neutral_temperature="95 degF", section="136RE")
        )
    assert caught.value.faults[0].pointer == "/rail_temperature/unit"
    assert "degF" in (caught.value.faults[0].allowed or ())


def test_no_socket_is_opened(monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(*_: object, **__: object) -> None:
        raise AssertionError("a socket was opened")

    with Client.in_process() as client:
        monkeypatch.setattr(socket.socket, "connect", refuse)
        monkeypatch.setattr(socket.socket, "bind", refuse)
        assert client.health.live().status == "up"


def test_it_works_where_a_loop_is_running_already() -> None:
    async def notebook_cell() -> str:
        with Client.in_process() as client:
            return client.health.live().status

    assert asyncio.run(notebook_cell()) == "up"


def test_threads_take_turns(inside: Client) -> None:
    with ThreadPoolExecutor(8) as threads:
        answers = list(threads.map(lambda _: inside.thermal.force(REQUEST), range(40)))
    assert answers == [answers[0]] * 40


def test_a_client_left_open_leaves_nothing_behind() -> None:
    client = Client.in_process()
    client.health.live()
    del client
    gc.collect()  # an event loop left open would be a ResourceWarning, and so an error here


def test_closing_twice_is_harmless_and_a_closed_client_says_so() -> None:
    client = Client.in_process()
    client.close()
    client.close()
    with pytest.raises(RuntimeError, match="closed"):
        client.health.live()


def test_a_service_that_is_not_installed_is_explained(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "railrules_api.api.app", None)
    with pytest.raises(InProcessError, match="install the package `railrules`"):
        Client.in_process()
    with pytest.raises(InProcessError, match="install the package `railrules`"):
        AsyncClient.in_process()


# ---------------------------------------------------------------- traps of running an application by hand


class Life:
    """An application that notes its start and stop, and the tasks they happened in."""

    def __init__(self, *, fails: bool = False) -> None:
        self.tasks: list[object] = []
        self.fails = fails

    @asynccontextmanager
    async def lifespan(self, _: Litestar) -> AsyncIterator[None]:
        self.tasks.append(asyncio.current_task())
        if self.fails:
            raise OSError("no catalogue")
        yield
        self.tasks.append(asyncio.current_task())


@post("/echo", status_code=200)
async def echo(request: Request[Any, Any, Any]) -> Stream:
    body = await request.body()

    async def parts() -> AsyncIterator[bytes]:
        for at in range(0, len(body), 1000):
            await asyncio.sleep(0)
            yield body[at : at + 1000]

    return Stream(parts())


@get("/in-thread", sync_to_thread=True)
def in_thread() -> str:
    return threading.current_thread().name


def app(life: Life) -> Application:
    # the framework's scope is a narrower type than the plain dict of the protocol
    return cast("Application", Litestar([echo, in_thread], lifespan=[life.lifespan], openapi_config=None, logging_config=None))


def test_start_and_stop_happen_once_and_in_one_task() -> None:
    life = Life()
    with httpx.Client(transport=InProcessTransport(app(life)), base_url="http://x") as client:
        assert client.get("/in-thread").text != threading.current_thread().name
        assert len(life.tasks) == 1
    assert len(life.tasks) == 2
    assert life.tasks[0] is life.tasks[1]


def test_a_streamed_answer_is_whole() -> None:
    sent = bytes(range(256)) * 400
    with httpx.Client(transport=InProcessTransport(app(Life())), base_url="http://x") as client:
        assert client.post("/echo", content=sent).content == sent
        assert client.post("/echo", content=iter([sent[:10], sent[10:]])).content == sent


def test_an_application_that_cannot_start_says_why() -> None:
    with pytest.RaisesGroup(pytest.RaisesExc(OSError, match="no catalogue")):
        InProcessTransport(app(Life(fails=True)))

    async def awaiting() -> None:
        async with httpx.AsyncClient(transport=AsyncInProcessTransport(app(Life(fails=True))), base_url="http://x") as client:
            await client.get("/in-thread")

    with pytest.RaisesGroup(pytest.RaisesExc(OSError, match="no catalogue")):
        asyncio.run(awaiting())
