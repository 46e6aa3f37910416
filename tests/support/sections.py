"""Asking the service about rail sections: what the tests of sections share."""

from __future__ import annotations

import json
from typing import Any

from litestar import Litestar
from litestar.testing import TestClient

from railrules_api.api.service import Service
from tests.support.asking import ask

PROPERTIES, COMPATIBILITY = "sections.properties", "sections.compatibility"
PROFILE = "/v1/rail-sections/136RE/profile"
STEEL = {"value": 7850, "unit": "kg_per_m3"}
OUTLINE = [
    (-1.0, 0.0), (1.0, 0.0), (1.0, 0.5), (0.2, 0.5), (0.2, 2.0), (0.5, 2.0), (0.5, 3.0), (-0.5, 3.0), (-0.5, 2.0), (-0.2, 2.0),
    (-0.2, 0.5), (-1.0, 0.5),
]  # fmt: skip


def inches(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "in"}


def points(outline: list[tuple[float, float]], unit: str = "in") -> list[dict[str, Any]]:
    return [{"x": {"value": x, "unit": unit}, "y": {"value": y, "unit": unit}} for x, y in outline]


def worn(amount: float, side: str = "left", angle: float = 20.0) -> list[dict[str, Any]]:
    return [{"side": side, "amount": inches(amount), "angle": {"value": angle, "unit": "deg"}}]


def result(service: Service, **body: Any) -> dict[str, Any]:
    found: dict[str, Any] = ask(service, PROPERTIES, body)["result"]
    return found


def refused(http: TestClient[Litestar], path: str, body: dict[str, Any]) -> dict[str, Any]:
    answer = http.post(path, content=json.dumps(body), headers={"content-type": "application/json"})
    assert answer.status_code == 422, answer.text
    found: dict[str, Any] = answer.json()["errors"][0]
    return found
