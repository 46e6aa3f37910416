"""Bad input: one clear problem, naming the field, the value and what is allowed; never a 500."""

from __future__ import annotations

import copy
import json
from typing import Any

import pytest
from litestar import Litestar
from litestar.testing import TestClient

from tests.support.demo import demo_job

FORCE = {
    "section": "136RE",
    "rail_temperature": {"value": 25.0, "unit": "degF"},
    "neutral_temperature": {"value": 95.0, "unit": "degF"},
}
TIES = {
    "stretch": {
        "begin": {"value": 0.0, "unit": "mi"},
        "end": {"value": 1.0, "unit": "mi"},
        "rails": "both",
        "ties": {"spacing": {"value": 19.5, "unit": "in"}},
    }
}


def post(http: TestClient[Litestar], path: str, body: object) -> tuple[int, dict[str, Any]]:
    raw = body if isinstance(body, bytes) else json.dumps(body).encode()
    answer = http.post(path, content=raw, headers={"content-type": "application/json"})
    assert not holds_null(answer.json())
    if answer.status_code >= 400:
        assert answer.headers["content-type"] == "application/problem+json"
    return answer.status_code, answer.json()


def holds_null(tree: Any) -> bool:
    if isinstance(tree, dict):
        return any(holds_null(value) for value in tree.values())
    return any(holds_null(value) for value in tree) if isinstance(tree, list) else tree is None


def changed(body: dict[str, Any], path: str, value: object) -> dict[str, Any]:
    """Return a copy of a body with the value at a dotted path replaced, or taken out when the value is `...`."""
    result = copy.deepcopy(body)
    at: Any = result
    *way, last = [int(step) if step.isdigit() else step for step in path.split(".")]
    for step in way:
        at = at[step]
    if value is ...:
        del at[last]
    else:
        at[last] = value
    return result


def fault(problem: dict[str, Any], pointer: str) -> dict[str, Any]:
    return next(item for item in problem["errors"] if item["pointer"] == pointer)


@pytest.mark.parametrize(
    ("body", "status", "says"),
    [
        (b"", 400, "empty"),
        (b"relay", 400, "not JSON"),
        (b'{"section": "136RE",', 400, "not JSON"),
        (b'{"rail_temperature": {"value": NaN, "unit": "degF"}}', 400, "not JSON"),
        (b'{"rail_temperature": {"value": Infinity, "unit": "degF"}}', 400, "not JSON"),
        (b'{"rail_temperature": {"value": -Infinity, "unit": "degF"}}', 400, "not JSON"),
        (b'{"section": "\\ud800"}', 400, "not JSON"),
        (b'{"section": "\xff\xfe"}', 400, "UTF-8"),
        (b"[" * 100_000, 422, "Expected `object`"),
        (b'{"rail_temperature": {"value": 1e400, "unit": "degF"}}', 422, "out of range"),
        (b'{"rail_temperature": {"value": "25", "unit": "degF"}}', 422, "Expected `float`"),
        (b"[]", 422, "Expected `object`"),
        (b"null", 422, "Expected `object`"),
    ],
)
def test_what_is_not_a_request(http: TestClient[Litestar], body: bytes, status: int, says: str) -> None:
    found, problem = post(http, "/v1/thermal/force", body)
    assert found == status
    assert says in problem["detail"]


def test_a_key_that_stands_twice(http: TestClient[Litestar]) -> None:
    raw = json.dumps(FORCE).replace('"section": "136RE"', '"section": "136RE", "section": "115RE"').encode()
    status, problem = post(http, "/v1/thermal/force", raw)
    assert status == 400
    assert problem["errors"][0]["pointer"] == "/section"
    assert "twice" in problem["detail"]


def test_a_key_that_stands_twice_with_white_space_before_the_colon(http: TestClient[Litestar]) -> None:
    raw = json.dumps(FORCE).replace('"section": "136RE"', '"section" : "136RE", "section": "115RE"').encode()
    assert post(http, "/v1/thermal/force", raw)[0] == 400


def test_text_that_looks_like_keys_is_no_duplicate(http: TestClient[Litestar]) -> None:
    body = changed(demo_job(), "name", 'a job called "x": and "y" : {"name":1}')
    assert post(http, "/v1/takeoffs", body)[0] == 200


@pytest.mark.parametrize(
    ("path", "value", "pointer", "allowed"),
    [
        ("rail_temperature.unit", "delta_degF", "/rail_temperature/unit", ["K", "degC", "degF"]),
        ("rail_temperature.unit", "furlong", "/rail_temperature/unit", ["K", "degC", "degF"]),
        ("section", "136 re", "/section", ["136RE"]),
        ("units", "imperial", "/units", ["us", "si"]),
    ],
)
def test_words_that_are_not_known_come_with_those_that_are(
    http: TestClient[Litestar], path: str, value: str, pointer: str, allowed: list[str]
) -> None:
    status, problem = post(http, "/v1/thermal/force", {**changed({**FORCE, "units": "us"}, path, value)})
    assert status == 422
    found = fault(problem, pointer)
    assert sorted(found["allowed"]) == sorted(allowed)
    assert found["value"] == json.dumps(value)


def test_a_wrong_kind_of_unit_is_called_by_its_name(http: TestClient[Litestar]) -> None:
    body = {"mass_per_length": {"value": 136, "unit": "lbf_per_in"}, "length": {"value": 1, "unit": "mi"}, "rail_lines": 2}
    status, problem = post(http, "/v1/quantities/rail-mass", body)
    assert status == 422
    assert "force per length" in fault(problem, "/mass_per_length/unit")["detail"]


def test_unknown_and_missing_fields(http: TestClient[Litestar]) -> None:
    status, problem = post(http, "/v1/thermal/force", {**FORCE, "rail_temprature": 3})
    assert (status, problem["errors"][0]["pointer"]) == (422, "/rail_temprature")
    assert "rail_temperature" in problem["errors"][0]["allowed"]
    status, problem = post(http, "/v1/thermal/force", changed(FORCE, "neutral_temperature", ...))
    assert (status, problem["errors"][0]["pointer"]) == (422, "/neutral_temperature")
    status, problem = post(http, "/v1/thermal/force", changed(FORCE, "section", ...))
    assert (status, problem["errors"][0]["pointer"]) == (422, "/area")
    assert "section" in problem["errors"][0]["detail"]


def test_limits_are_told_in_the_callers_unit(http: TestClient[Litestar]) -> None:
    status, problem = post(http, "/v1/thermal/force", changed(FORCE, "rail_temperature.value", 2500.0))
    found = fault(problem, "/rail_temperature")
    assert status == 422
    assert found["unit"] == "degF"
    assert found["minimum"] == pytest.approx(-148.0)
    assert found["maximum"] == pytest.approx(212.0)
    assert json.loads(found["value"]) == {"value": 2500.0, "unit": "degF"}


def test_everything_wrong_is_told_at_once(http: TestClient[Litestar]) -> None:
    body = changed(changed(FORCE, "rail_temperature.value", 2500.0), "section", "nonsense")
    status, problem = post(http, "/v1/thermal/force", body)
    assert status == 422
    assert {item["pointer"] for item in problem["errors"]} == {"/section", "/rail_temperature"}


@pytest.mark.parametrize(
    ("path", "value", "pointer"),
    [
        ("stretch.end.value", 0.0, "/stretch/end"),
        ("stretch.end.value", -1.0, "/stretch/end"),
        ("stretch.ties.spacing.value", -19.5, "/stretch/ties/spacing"),
        ("stretch.ties.spacing.value", 0.0, "/stretch/ties/spacing"),
        ("stretch.ties.spacing.value", 1e6, "/stretch/ties/spacing"),
        ("stretch.begin.value", -1e9, "/stretch/begin"),
        ("stretch.rails", "high", "/stretch/rails"),
        ("renewed_share", 1.5, "/renewed_share"),
        ("renewed_share", -0.1, "/renewed_share"),
    ],
)
def test_a_stretch_that_cannot_be(http: TestClient[Litestar], path: str, value: object, pointer: str) -> None:
    status, problem = post(http, "/v1/quantities/ties", changed({**TIES, "renewed_share": 0.1}, path, value))
    assert status == 422
    assert problem["errors"][0]["pointer"] == pointer


def test_overlapping_curves(http: TestClient[Litestar]) -> None:
    curve = {"begin": {"value": 0.1, "unit": "mi"}, "end": {"value": 0.4, "unit": "mi"}, "hand": "left"}
    first = {**curve, "degree": {"value": 2, "unit": "deg"}}
    second = {**first, "begin": {"value": 0.3, "unit": "mi"}, "end": {"value": 0.6, "unit": "mi"}}
    status, problem = post(http, "/v1/quantities/ties", changed(TIES, "stretch.curves", [first, second]))
    assert (status, problem["errors"][0]["pointer"]) == (422, "/stretch/curves/1/begin")
    assert problem["errors"][0]["minimum"] == pytest.approx(0.4)
    status, problem = post(http, "/v1/quantities/ties", changed(TIES, "stretch.curves", [curve]))
    assert (status, problem["errors"][0]["pointer"]) == (422, "/stretch/curves/0/radius")


JOB_FAULTS = [
    ("segments.0.end.value", 11.0, "/segments/0/end"),
    ("segments.0.features.0.begin.value", 40.0, "/segments/0/features/0/begin"),
    ("segments.0.features.0.kind", "turn-out", "/segments/0/features/0/kind"),
    ("segments.1.name", "Marl Pit to Cinder Road", "/segments/1/name"),
    ("segments.1.begin.value", 14.0, "/segments/1/begin"),
    ("segments.0.new.section", "115", "/segments/0/new/section"),
    ("segments.0.old.worn_share", 2.0, "/segments/0/old/worn_share"),
    ("allowances.0.item", "spykes", "/allowances/0/item"),
    ("prices.items.0.price", "1e3", "/prices/items/0/price"),
    ("prices.items.0.per", "gal", "/prices/items/0/per"),
    ("supply.string.stock", [], "/supply/string/stock"),
    ("temperatures.coldest_rail.value", 130.0, "/temperatures/coldest_rail"),
    ("segments", [], "/segments"),
]


@pytest.mark.parametrize(("path", "value", "pointer"), JOB_FAULTS, ids=[fault[0] for fault in JOB_FAULTS])
def test_a_job_that_cannot_be(http: TestClient[Litestar], path: str, value: object, pointer: str) -> None:
    status, problem = post(http, "/v1/takeoffs", changed(demo_job(), path, value))
    assert status == 422
    assert problem["errors"][0]["pointer"] == pointer, problem


def test_a_body_over_the_limit(http: TestClient[Litestar]) -> None:
    status, problem = post(http, "/v1/thermal/force", b" " * (16 * 1024 * 1024 + 1))
    assert (status, problem["type"]) == (413, "/problems/too-large")


def test_other_media_types_methods_and_paths(http: TestClient[Litestar]) -> None:
    answer = http.post("/v1/thermal/force", content=b"{}", headers={"content-type": "text/plain"})
    assert answer.status_code == 415
    assert answer.headers["accept"] == "application/json"
    answer = http.post("/v1/thermal/force", json=FORCE, headers={"accept": "image/png"})
    assert answer.status_code == 406
    answer = http.put("/v1/thermal/force", json=FORCE)
    assert answer.status_code == 405
    assert "POST" in answer.headers["allow"]
    answer = http.get("/v1/rail-sections/136R")
    assert answer.status_code == 404
    assert "136RE" in answer.json()["detail"]
    assert http.get("/v1/nothing").json()["type"] == "/problems/not-found"
    assert http.get("/v1/rail-sections?colour=red").status_code == 400
    assert http.get("/v1/rail-sections?mass_from=nan").status_code == 400
    assert http.get("/v1/rail-sections?units=us&units=si").status_code == 400


def test_rulebook_entries_of_a_request(http: TestClient[Litestar]) -> None:
    entry = {"id": "elastic-modulus", "value": 29e6, "unit": "psi"}
    status, answer = post(http, "/v1/thermal/force", {**FORCE, "rulebook": {"entries": [entry]}})
    assert status == 200
    assert "changed by the request" in answer["versions"]["rulebook"]
    assert answer["result"]["stress_per_degree"]["value"] == pytest.approx(29e6 * 6.5e-6)
    for bad, pointer in (
        ({**entry, "id": "elastic"}, "/rulebook/entries/0/id"),
        ({**entry, "unit": "ft"}, "/rulebook/entries/0/unit"),
        ({**entry, "value": -1.0}, "/rulebook/entries/0/value"),
        ({"id": "elastic-modulus", "word": "stiff"}, "/rulebook/entries/0/value"),
    ):
        status, problem = post(http, "/v1/thermal/force", {**FORCE, "rulebook": {"entries": [bad]}})
        assert status == 422
        assert problem["errors"][0]["pointer"] == pointer, problem
    status, problem = post(http, "/v1/thermal/force", {**FORCE, "rulebook": {"id": "nowhere"}})
    assert (status, problem["errors"][0]["pointer"]) == (422, "/rulebook/id")
