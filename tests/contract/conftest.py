"""What the contract tests share: the document as the code makes it, and the example of every operation."""

from __future__ import annotations

from typing import Any

import pytest

from railrules_api.api import document as documents
from railrules_api.api.service import Service


@pytest.fixture(scope="session")
def document(service: Service) -> dict[str, Any]:
    return documents.build(service)
