"""The demo job and every worked request, answered on paper."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.api.examples import requests
from railrules_api.api.replying import answer, answer_on_paper
from railrules_api.api.resources import calculation_of, calculations, operations
from tests.support.demo import demo_job

if TYPE_CHECKING:
    from collections.abc import Callable

    from railrules_api.api.service import Service


def examples() -> list[tuple[str, Any]]:
    """Return every rule that has a worked request, with it."""
    ids = {operation.path: operation.id for operation in operations()}
    named = [(resource.rule.id, ids[resource.path]) for resource in calculations()]
    return [(rule, requests()[name]) for rule, name in named if name in requests()]


@pytest.fixture(scope="session")
def demo() -> dict[str, Any]:
    return demo_job()


@pytest.fixture(scope="session")
def on_paper(service: Service) -> Callable[..., bytes]:
    def ask(rule: str, body: Any, media_type: str = "text/html") -> bytes:
        return answer_on_paper(calculation_of(rule), json.dumps(body).encode(), service, media_type)

    return ask


@pytest.fixture(scope="session")
def in_json(service: Service) -> Callable[..., Any]:
    def ask(rule: str, body: Any) -> Any:
        return json.loads(answer(calculation_of(rule), json.dumps(body).encode(), service))

    return ask
