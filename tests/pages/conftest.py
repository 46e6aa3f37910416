"""The application with its pages."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from litestar.testing import TestClient

from railrules_api.api.app import create_app
from railrules_api.pages.routes import pages

if TYPE_CHECKING:
    from collections.abc import Iterator

    from litestar import Litestar

    from railrules_api.api.service import Service


@pytest.fixture(scope="session")
def site(service: Service) -> Iterator[TestClient[Litestar]]:
    with TestClient(create_app(service, pages()), raise_server_exceptions=False) as client:
        yield client
