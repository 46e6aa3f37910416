"""Answers as a service would write them, for the stand-in."""

from __future__ import annotations

import json
from typing import Any

import httpx

CITE = {"source": "arema", "title": "Manual", "where": "5-1", "status": "published"}
ROW: dict[str, Any] = {
    "id": "136RE", "title": "136 RE", "texts": {}, "also": [], "notes": "", "cite": CITE,
    "values": {"height": {"printed": "7 5/16 in", "value": {"value": 7.3125, "unit": "in"}, "cite": CITE}},
}  # fmt: skip
VERSIONS = {"service": "9.9.9", "catalogue": "1", "rulebook": "house 1"}
FORCE: dict[str, Any] = {
    "rule": "thermal.force", "title": "Thermal force", "assumptions": [], "cautions": [], "sources": [CITE],
    "versions": VERSIONS,
    "result": {
        "temperature_change": {"value": 35, "unit": "delta_degF"}, "stress": {"value": 6825, "unit": "psi"},
        "force": {"value": 90909, "unit": "lbf"}, "track_force": {"value": 181818, "unit": "lbf"},
        "force_per_degree": {"value": 2597, "unit": "lbf_per_degF"}, "stress_per_degree": {"value": 195, "unit": "psi_per_degF"},
    },
}  # fmt: skip
REFUSAL: dict[str, Any] = {
    "type": "/problems/refused", "title": "Refused", "status": 422, "detail": "/area: too small (and 1 more)",
    "errors": [
        {"pointer": "/area", "detail": "too small", "value": '{"value":1,"unit":"in2"}', "minimum": 2.5, "unit": "in2"},
        {"pointer": "/rulebook/id", "detail": "no such rulebook", "value": '"mine"', "allowed": ["house", "handbook"]},
    ],
}  # fmt: skip


def told(status: int, tree: Any, **headers: str) -> httpx.Response:
    media_type = "application/json" if status < 400 else "application/problem+json"
    named = {name.replace("_", "-"): value for name, value in headers.items()}
    return httpx.Response(status, content=json.dumps(tree).encode(), headers={"Content-Type": media_type, **named})


def problem(status: int, **headers: str) -> httpx.Response:
    return told(status, {"type": "/problems/x", "title": "No", "status": status, "detail": "not now"}, **headers)
