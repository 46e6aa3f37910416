"""What all tests share: one service around the catalogue as shipped."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from hypothesis import settings

from railrules_api.api.service import Service, start

if TYPE_CHECKING:
    from collections.abc import Iterator

    from litestar import Litestar
    from litestar.testing import TestClient


# a plugin for `make mutation`, whose tools are in an environment of their own
collect_ignore = ["mutation/loop.py"]

# how long an example takes is the machine's doing, and no test is about that
settings.register_profile("untimed", deadline=None)
settings.load_profile("untimed")


@pytest.fixture(scope="session")
def service() -> Service:
    return start()


@pytest.fixture(scope="session")
def http(service: Service) -> Iterator[TestClient[Litestar]]:
    from litestar.testing import TestClient  # noqa: PLC0415

    from railrules_api.api.app import create_app  # noqa: PLC0415

    with TestClient(create_app(service), raise_server_exceptions=False) as client:
        yield client
