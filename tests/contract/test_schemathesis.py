"""Schemathesis in process: every check on every operation, with few cases each; `make contract-full` runs the many over HTTP."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import schemathesis
from hypothesis import HealthCheck, Phase, given, settings
from litestar import Litestar
from litestar.testing import TestClient
from schemathesis import GenerationMode
from schemathesis.config import SchemathesisConfig

from railrules_api.api.operations import Operation
from railrules_api.api.resources import operations

CASES = 4
# the client that Schemathesis brings for ASGI leaves its streams to the garbage collector
pytestmark = [
    pytest.mark.filterwarnings("ignore::pytest.PytestUnraisableExceptionWarning"),
    pytest.mark.filterwarnings("ignore::ResourceWarning"),
]


@pytest.fixture(scope="module")
def api(http: TestClient[Litestar], document: dict[str, Any]) -> Any:
    config = SchemathesisConfig.from_path(Path(__file__).with_name("schemathesis.toml"))
    schema = schemathesis.openapi.from_dict(document, config=config)
    schema.app = http.app
    return schema


# where there is nothing to send there is nothing to send wrong
KINDS = [(operation, GenerationMode.POSITIVE) for operation in operations()] + [
    (operation, GenerationMode.NEGATIVE) for operation in operations() if operation.parameters or operation.request
]


@pytest.mark.parametrize(("operation", "mode"), KINDS, ids=[f"{operation.id}-{mode.value}" for operation, mode in KINDS])
def test_the_service_keeps_to_its_document(operation: Operation, mode: GenerationMode, api: Any) -> None:
    described = api[operation.path][operation.method]

    # without a seed of the day this suite gives the same verdict every time; the runs over HTTP rotate theirs
    @settings(
        max_examples=CASES, derandomize=True, database=None, deadline=None,
        suppress_health_check=list(HealthCheck), phases=[Phase.generate],
    )  # fmt: skip
    @given(case=described.as_strategy(generation_mode=mode))
    def check(case: Any) -> None:
        case.call_and_validate()

    check()
