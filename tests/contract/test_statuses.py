"""The statuses that the document states of an operation are those it can be answered with: each is provoked, no other can be."""

from __future__ import annotations

import asyncio
import contextlib
import json
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.api.examples import example_id, example_request
from railrules_api.api.problems import MEDIA_TYPE, TITLES
from railrules_api.api.resources import operations
from railrules_api.app.serving import keys
from railrules_api.app.serving.board import Board
from railrules_api.app.serving.drain import Drain
from railrules_api.app.serving.routes import every_route
from railrules_api.app.serving.server import application
from railrules_api.app.serving.settings import ServerSettings
from railrules_api.app.serving.worker import guarded
from tests.hostile.asgi import Told, ask
from tests.hostile.serving import Serving, serving

if TYPE_CHECKING:
    from collections.abc import Awaitable, Callable, Iterator, Mapping

    from litestar import Litestar

    from railrules_api.api.operations import Operation
    from railrules_api.api.service import Service
    from railrules_api.app.serving.gate import Gate
    from railrules_api.app.serving.keys import Key

ROUTES = every_route()
BY_ID = {operation.id: operation for operation in operations()}
BODY_LIMIT = 100_000
STATUSES = frozenset(TITLES) - {414, 431}
"""Those that the application and its gate give; the other two are given before there is a request, whatever it asks."""


@pytest.fixture(scope="module")
def app() -> Litestar:
    return application()


@pytest.fixture(scope="module")
def known(tmp_path_factory: pytest.TempPathFactory) -> tuple[Mapping[str, Key], dict[str, str]]:
    """Return keys, and by name what is sent for them: one that opens, one that is closed, one that is used up at once."""
    made = {name: keys.made(name) for name in ("good", "closed", "spent")}
    file = tmp_path_factory.mktemp("keys") / "keys.toml"
    text = made["good"][1].replace("quota = 600", "quota = 100000") + made["closed"][1].replace("open = true", "open = false")
    file.write_text(text + made["spent"][1].replace("quota = 600", "quota = 1"))
    return keys.load(file), {name: f"Bearer {key}" for name, (key, _) in made.items()}


def gate_for(app: Any, known: Mapping[str, Key], **limits: Any) -> Gate:
    settings = ServerSettings(access_log=False, **{"max_body_bytes": BODY_LIMIT, "body_seconds": 0.05, **limits})
    return guarded(app, settings, Board(1, ROUTES.templates, len(known)).part(0), Drain(1), known, ROUTES)


class Asker:
    """Asks one operation, well or badly."""

    def __init__(
        self, operation: Operation, service: Service, app: Litestar, known: Mapping[str, Key], sent: dict[str, str]
    ) -> None:
        self.operation, self.app, self.known, self.sent = operation, app, known, sent
        self.path = operation.path.replace("{id}", example_id(service, operation)) if "{id}" in operation.path else operation.path
        self.body = json.dumps(example_request(operation)).encode() if operation.request else b""

    async def ask(
        self,
        gate: Callable[..., Awaitable[None]],
        *,
        key: str | None = "good",
        path: str = "",
        body: bytes | None = None,
        **named: Any,
    ) -> Told:
        headers = {**named.pop("headers", {})}
        if self.operation.request:
            headers.setdefault("content-type", self.operation.request_media_type)
        if key:
            headers["authorization"] = self.sent[key]
        chunks = (self.body if body is None else body,) if self.operation.request or body else ()
        told = await ask(
            gate, path or self.path, **{"method": self.operation.method, "headers": headers, "chunks": chunks, **named}
        )
        if told.status >= 400:
            assert told.headers["content-type"] == MEDIA_TYPE
            assert json.loads(told.body)["status"] == told.status
        return told

    async def provoked(self, status: int) -> int:
        """Do what the status is for, and return what comes of it."""
        gate = gate_for(self.app, self.known)
        provoke = getattr(self, f"_{status}")
        with contextlib.suppress(KeyError):
            told: Told = await provoke(gate)
            return told.status
        return 0

    async def _400(self, gate: Gate) -> Told:
        return await ask_query(self, gate, "no_such=1")

    async def _401(self, gate: Gate) -> Told:
        return await self.ask(gate, key=None)

    async def _403(self, gate: Gate) -> Told:
        return await self.ask(gate, key="closed")

    async def _404(self, gate: Gate) -> Told:
        parameters = {parameter.name for parameter in self.operation.parameters}
        if "id" in parameters:
            return await self.ask(gate, path=self.operation.path.replace("{id}", "zz-none"))
        if "version" in parameters:
            return await ask_query(self, gate, "version=0.0")
        if "sheet" in parameters:
            return await ask_query(self, gate, "sheet=9999", headers={"accept": "image/svg+xml"})
        return await self.ask(gate)

    async def _405(self, gate: Gate) -> Told:
        told = await self.ask(gate, method="DELETE")
        assert self.operation.method in told.headers["allow"]
        return told

    async def _406(self, gate: Gate) -> Told:
        return await self.ask(gate, headers={"accept": "application/x-none"})

    async def _408(self, gate: Gate) -> Told:
        return await self.ask(gate, body=b" ", ends=False)

    async def _413(self, gate: Gate) -> Told:
        return await self.ask(gate, body=b" " * (BODY_LIMIT + 1)) if self.operation.request else await self.ask(gate)

    async def _415(self, gate: Gate) -> Told:
        return await self.ask(gate, headers={"content-type": "text/plain"})

    async def _422(self, gate: Gate) -> Told:
        if any(parameter.name == "mass_from" for parameter in self.operation.parameters):
            return await ask_query(self, gate, "mass_from=140&mass_to=130")
        return await self.ask(gate, body=b'{"no_such": 1}') if self.operation.request else await self.ask(gate)

    async def _429(self, gate: Gate) -> Told:
        await self.ask(gate, key="spent")
        told = await self.ask(gate, key="spent")
        assert told.status != 429 or {"retry-after", "ratelimit", "ratelimit-policy"} <= told.headers.keys()
        return told

    async def _500(self, _gate: Gate) -> Told:
        async def failing(_scope: Any, _receive: Any, _send: Any) -> None:
            raise RuntimeError

        return await self.ask(gate_for(failing, self.known))

    async def _503(self, _gate: Gate) -> Told:
        gate = gate_for(self.app, self.known, waiting_seconds=0.01)
        for lane in (gate.light, gate.heavy, gate.stream_lane):
            lane.free = 0
        gate.drain.begin()
        told = await self.ask(gate)
        assert told.status != 503 or "retry-after" in told.headers
        return told


async def ask_query(asker: Asker, gate: Gate, query: str, **named: Any) -> Told:
    """Ask with a query, which the caller without a network has no word for."""

    async def with_query(scope: Any, receive: Any, send: Any) -> None:
        scope["query_string"] = query.encode()
        await gate(scope, receive, send)

    return await asker.ask(with_query, **named)


@pytest.mark.parametrize("name", BY_ID)
def test_what_is_stated_is_what_can_come(
    name: str, document: dict[str, Any], service: Service, app: Litestar, known: tuple[Mapping[str, Key], dict[str, str]]
) -> None:
    operation = BY_ID[name]
    described = document["paths"][operation.path][operation.method.lower()]
    stated = {int(status) for status in described["responses"] if status.isdigit()} - {200, 304, 414, 431}
    asker = Asker(operation, service, app, *known)

    async def every() -> dict[int, int]:
        return {status: await asker.provoked(status) for status in sorted(STATUSES)}

    found = asyncio.run(every())
    can = {status for status, told in found.items() if told == status}
    if operation.id == "healthLive":
        can |= {503}  # too many connections: `test_deadlines.py`
    if operation.probe or operation.request_media_type != "application/json":
        can |= {408}  # the header comes too slowly: `test_deadlines.py`
    assert stated == can, found
    assert {*found.values()} <= {*stated, 200}


@pytest.mark.parametrize("name", BY_ID)
def test_without_keys_nobody_is_asked_for_one(name: str, service: Service, app: Litestar) -> None:
    asker = Asker(BY_ID[name], service, app, {}, {})

    async def asked() -> list[Told]:
        gate = gate_for(app, {})
        return [await asker.ask(gate, key=None, headers=headers) for headers in ({}, {"authorization": "Bearer rr_nobody_x"})]

    for told in asyncio.run(asked()):
        assert told.status == 200
        assert not {"ratelimit", "ratelimit-policy", "www-authenticate"} & told.headers.keys()


@pytest.fixture(scope="module")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Serving]:
    with serving(tmp_path_factory.mktemp("serving"), workers=1, drain_seconds=0) as running:
        yield running


def test_an_address_or_a_header_that_is_too_large_is_refused_whatever_is_asked(server: Serving, document: dict[str, Any]) -> None:
    for operation in operations():
        assert {"414", "431"} <= document["paths"][operation.path][operation.method.lower()]["responses"].keys()
    for path in ("/v1/rules", "/v1/thermal/force", "/health/live"):
        assert server.get(f"{path}?a={'a' * 9000}").status == 414
        assert server.get(path, f"X-Long: {'a' * 40_000}\r\n").status == 431


def test_probes_need_no_key_and_say_so(document: dict[str, Any]) -> None:
    assert document["security"] == [{}, {"ApiKey": []}]
    own = {operation.id for operation in operations() if operation.probe}
    assert own == {"healthLive", "healthReady"}
    for operation in operations():
        described = document["paths"][operation.path][operation.method.lower()]
        assert (described.get("security") == []) is operation.probe
