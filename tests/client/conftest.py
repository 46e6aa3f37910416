"""Both clients asked the same question through a stand-in for the network."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from pathlib import Path
from typing import Any, TypeAlias

import anyio
import httpx
import pytest
from railrules_client import AsyncClient, Client

Handler: TypeAlias = Callable[[httpx.Request], httpx.Response]
Ask: TypeAlias = Callable[..., list[Any]]
ROOT = Path(__file__).resolve().parents[2]
DOCUMENT = ROOT / "openapi" / "openapi.json"


def fresh(handler: Handler) -> Handler:
    """Let a handler give one response several times: a response belongs to one request."""

    def copied(request: httpx.Request) -> httpx.Response:
        response = handler(request)
        return httpx.Response(response.status_code, headers=response.headers, content=response.content)

    return copied


def ask_waiting(handler: Handler, *questions: Callable[[Any], Any], **settings: Any) -> list[Any]:
    with Client("http://service.example", transport=httpx.MockTransport(fresh(handler)), **settings) as client:
        return [question(client) for question in questions]


def ask_awaiting(handler: Handler, *questions: Callable[[Any], Any], **settings: Any) -> list[Any]:
    async def run() -> list[Any]:
        async with AsyncClient("http://service.example", transport=httpx.MockTransport(fresh(handler)), **settings) as client:
            return [await question(client) for question in questions]

    return asyncio.run(run())


@pytest.fixture(params=[ask_waiting, ask_awaiting], ids=["waiting", "awaiting"])
def ask(request: pytest.FixtureRequest) -> Ask:
    found: Ask = request.param
    return found


@pytest.fixture
def waits(monkeypatch: pytest.MonkeyPatch) -> list[float]:
    """Collect the waits between attempts instead of waiting."""
    found: list[float] = []

    async def sleep(seconds: float) -> None:
        found.append(seconds)

    monkeypatch.setattr("railrules_client._sending.time.sleep", found.append)
    monkeypatch.setattr(anyio, "sleep", sleep)
    return found


@pytest.fixture(scope="session")
def document() -> str:
    return DOCUMENT.read_text(encoding="utf-8")
