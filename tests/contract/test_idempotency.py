"""The header Idempotency-Key: taken, sent back, held against the body where it is made of it."""

from __future__ import annotations

import hashlib
import json
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.api.examples import example_request
from railrules_api.api.idempotency import HEADER, PARAMETER
from railrules_api.api.operations import Operation
from railrules_api.api.resources import operations

if TYPE_CHECKING:
    from litestar import Litestar
    from litestar.testing import TestClient

CALCULATIONS = [item for item in operations() if item.request is not None and item.request_media_type == "application/json"]
FORCE = next(item for item in CALCULATIONS if item.path == "/v1/thermal/force")
BODY = json.dumps(example_request(FORCE)).encode()
UUID = '"8e03978e-40d5-43e8-bc93-6894a57f9324"'


def key_of(body: bytes) -> str:
    return f'"sha-256:{hashlib.sha256(body).hexdigest()}"'


def ask(http: TestClient[Litestar], key: str | None, body: bytes = BODY, method: str = "POST") -> Any:
    sent = {"content-type": "application/json", **({} if key is None else {"idempotency-key": key})}
    return http.request(method, FORCE.path, content=body, headers=sent)


@pytest.mark.parametrize("key", [UUID, key_of(BODY), '"a"', f'"{"b" * 128}"'])
@pytest.mark.parametrize("method", ["POST", "QUERY"])
def test_a_key_is_sent_back_and_changes_nothing(key: str, method: str, http: TestClient[Litestar]) -> None:
    without = ask(http, None, method=method)
    for _ in range(2):
        found = ask(http, key, method=method)
        assert (found.status_code, found.content) == (200, without.content)
        assert found.headers[HEADER] == key
    assert HEADER not in without.headers


def test_a_key_of_the_body_is_refused_with_another_body(http: TestClient[Litestar]) -> None:
    other = BODY + b" "
    found = ask(http, key_of(BODY), other)
    assert found.status_code == 422
    told = found.json()
    assert told["type"] == "/problems/idempotency-key-of-another-request"
    assert hashlib.sha256(other).hexdigest() in told["detail"]
    assert ask(http, key_of(other), other).status_code == 200


def test_a_key_is_held_against_the_body_before_the_body_is_read(http: TestClient[Litestar]) -> None:
    assert ask(http, key_of(BODY), b"{").json()["type"] == "/problems/idempotency-key-of-another-request"
    assert ask(http, key_of(b"{"), b"{").json()["type"] == "/problems/malformed"


MALFORMED = [
    "",
    UUID.strip('"'),
    '""',
    '"a b"',
    f'"{"b" * 129}"',
    '"sha-256:00"',
    key_of(BODY).upper(),
    UUID + ";a=1",
    UUID + ", " + UUID,
]


@pytest.mark.parametrize("key", MALFORMED)
def test_what_is_no_key_is_told_so(key: str, http: TestClient[Litestar]) -> None:
    found = ask(http, key)
    assert found.status_code == 400
    assert found.json()["type"] == "/problems/idempotency-key-malformed"


def test_two_keys_are_none(http: TestClient[Litestar]) -> None:
    headers = [("content-type", "application/json"), (HEADER, UUID), (HEADER, UUID)]
    assert http.post(FORCE.path, content=BODY, headers=headers).status_code == 400


@pytest.mark.parametrize("operation", CALCULATIONS, ids=lambda item: item.id)
def test_every_calculation_takes_one(operation: Operation, http: TestClient[Litestar], document: dict[str, Any]) -> None:
    described = document["paths"][operation.path]["post"]
    assert {"$ref": "#/components/parameters/IdempotencyKey"} in described["parameters"]
    assert HEADER in described["responses"]["200"]["headers"]
    body = json.dumps(example_request(operation)).encode()
    for key, status in ((key_of(body), 200), (key_of(b""), 422)):
        headers = {"content-type": "application/json", HEADER: key}
        assert http.post(operation.path, content=body, headers=headers).status_code == status


def test_the_document_says_what_a_key_is(document: dict[str, Any]) -> None:
    described = document["components"]["parameters"]["IdempotencyKey"]
    assert described["in"] == "header"
    assert not described["required"]
    assert described["schema"]["pattern"] == PARAMETER.schema["pattern"]
    taking = [path for path, methods in document["paths"].items() if "IdempotencyKey" in json.dumps(methods)]
    assert taking == [item.path for item in CALCULATIONS]


@pytest.mark.parametrize("slug", ["idempotency-key-malformed", "idempotency-key-of-another-request"])
def test_the_type_of_each_refusal_leads_to_a_page(slug: str) -> None:
    from railrules_api.pages.problem_pages import index, problem_page  # noqa: PLC0415  the pages of people are not the contract's

    assert slug.encode() in index()
    assert b"Idempotency-Key" in (problem_page(slug) or b"")
