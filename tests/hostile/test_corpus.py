"""Every hostile request gets its documented problem, in process and over a socket, and the service lives on."""

from __future__ import annotations

import asyncio
import json
from typing import TYPE_CHECKING

import httpx
import msgspec
import pytest

from railrules_api.api.envelope import Problem
from railrules_api.api.problems import MEDIA_TYPE, TITLES
from railrules_api.app.serving.board import Board
from railrules_api.app.serving.drain import Drain
from railrules_api.app.serving.routes import every_route
from railrules_api.app.serving.server import application
from railrules_api.app.serving.settings import ServerSettings
from railrules_api.app.serving.worker import guarded
from tests.hostile.reading import entry_of, names, raw_of
from tests.hostile.serving import Serving, serving

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.app.serving.gate import Gate

CLEAN, RAW = names(raw=False), names(raw=True)
MOST_GROWTH = 200_000_000
"""How much more memory than before a worker may have had at its peak, in all the corpus [bytes]."""


def check(status: int, body: bytes, media_type: str) -> None:
    assert media_type == MEDIA_TYPE

    def no_constant(text: str) -> None:
        raise AssertionError(f"{text} is no JSON")

    json.loads(body, parse_constant=no_constant)
    problem = msgspec.json.decode(body, type=Problem)
    assert (problem.status, problem.title) == (status, TITLES[status][1])
    assert len(body) < 20_000


@pytest.fixture(scope="module")
def gate() -> Gate:
    settings, routes = ServerSettings(access_log=False), every_route()
    return guarded(application((), settings), settings, Board(1, routes.templates).part(0), Drain(1), {}, routes)


@pytest.fixture(scope="module")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Serving]:
    with serving(tmp_path_factory.mktemp("serving"), workers=1, drain_seconds=0) as running:
        yield running


def test_the_corpus_is_large_and_its_names_are_told_apart() -> None:
    assert len(CLEAN) + len(RAW) >= 140
    assert len({*CLEAN, *RAW}) == len(CLEAN) + len(RAW)


async def _in_process(gate: Gate, name: str) -> httpx.Response:
    entry = entry_of(name)
    transport = httpx.ASGITransport(app=gate, raise_app_exceptions=True)  # type: ignore[arg-type]
    async with httpx.AsyncClient(transport=transport, base_url="http://service.example") as client:
        request = client.build_request(entry.method, entry.path, headers=entry.headers, content=entry.body or None)
        if "Accept" not in entry.headers:
            request.headers.pop("accept", None)
        return await client.send(request)


@pytest.mark.parametrize("name", CLEAN)
def test_in_process(gate: Gate, name: str) -> None:
    response = asyncio.run(_in_process(gate, name))
    assert response.status_code == entry_of(name).status, response.text[:500]
    check(response.status_code, response.content, response.headers["content-type"])


@pytest.mark.parametrize("name", [*CLEAN, *RAW])
def test_over_a_socket(server: Serving, name: str) -> None:
    entry = entry_of(name)
    answer = server.ask(raw_of(entry))
    assert answer.status == entry.status, (answer, server.log.read_text()[-500:])
    check(answer.status, answer.body, answer.headers["content-type"])
    assert server.get("/health/live").status == 200


def test_afterwards_the_same_worker_lives_and_has_stayed_small(server: Serving) -> None:
    before = server.workers()
    for name in ("a body of 200 MB", "chunks without end", "200,000 keys", "100,000 objects deep under an unknown key"):
        server.ask(raw_of(entry_of(name)))
    assert server.workers() == before
    assert server.metric("railrules_worker_restarts_total") == 0
    status = server.peak_memory()
    assert status < 60_000_000 + MOST_GROWTH, status


def test_nothing_failed(server: Serving) -> None:
    assert not [line for line in server.lines() if line["level"] in ("error", "fatal") or line.get("status") == 500]
