"""HTTP done right: methods, negotiation, validators, content coding, tracing, and how to find out what there is."""

from __future__ import annotations

import gzip
import json
import re
from datetime import UTC, datetime, timedelta, timezone
from typing import Any

import pytest
from litestar import Litestar
from litestar.testing import TestClient

from railrules_api.api import bulk
from railrules_api.api.coding import Squeezer, coded_etag
from railrules_api.api.discovery import CATALOGUE_PATH
from railrules_api.api.examples import example_id, requests
from railrules_api.api.lifecycle import Lifecycle
from railrules_api.api.operations import Operation
from railrules_api.api.resources import operations

PLAIN = {"accept-encoding": "identity"}
FORCE = "/v1/thermal/force"
READING = [operation for operation in operations() if operation.request is None]
TRACE = "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01"


def path_of(operation: Operation, service: Any) -> str:
    return operation.path.replace("{id}", example_id(service, operation)) if "{id}" in operation.path else operation.path


def force(http: TestClient[Litestar], method: str = "POST", **headers: str) -> Any:
    sent = {"content-type": "application/json", **PLAIN, **{name.replace("_", "-"): value for name, value in headers.items()}}
    return http.request(method, FORCE, content=json.dumps(requests()["calculateForce"]), headers=sent)


# ---------------------------------------------------------------- methods


@pytest.mark.parametrize("operation", READING, ids=lambda item: item.id)
def test_head_is_get_without_its_body(operation: Operation, http: TestClient[Litestar], service: Any) -> None:
    path = path_of(operation, service)
    whole, head = http.get(path, headers=PLAIN), http.head(path, headers=PLAIN)
    assert whole.status_code == head.status_code == 200
    assert head.content == b""
    own = ("x-request-id", "traceparent")
    assert {k: v for k, v in head.headers.items() if k not in own} == {k: v for k, v in whole.headers.items() if k not in own}
    assert int(head.headers["content-length"]) == len(whole.content)


def test_options_and_a_wrong_method_tell_the_methods_there_are(http: TestClient[Litestar]) -> None:
    told = {"/v1/rail-sections": "GET, HEAD, OPTIONS", FORCE: "OPTIONS, POST, QUERY", bulk.PATH: "OPTIONS, POST"}
    for path, methods in told.items():
        asked, wrong = http.options(path), http.delete(path)
        assert asked.status_code == 204
        assert asked.headers["allow"] == wrong.headers["allow"] == methods
        assert wrong.status_code == 405
        assert wrong.headers["content-type"] == "application/problem+json"
    assert http.options("/v1/nothing").status_code == 404


def test_query_answers_as_post_does_and_can_be_validated(http: TestClient[Litestar]) -> None:
    posted, queried = force(http), force(http, "QUERY")
    assert queried.status_code == 200
    assert queried.content == posted.content
    assert "etag" not in posted.headers
    assert posted.headers["cache-control"] == "no-store"
    assert queried.headers["cache-control"] == "private, no-cache"
    again = force(http, "QUERY", if_none_match=queried.headers["etag"])
    assert again.status_code == 304
    assert again.content == b""
    assert http.options(FORCE).headers["accept-query"] == "application/json"
    refused = http.request("QUERY", FORCE, content="{}", headers={"content-type": "application/json"})
    assert refused.status_code == 422
    missing = http.request("QUERY", "/v1/rules")
    assert missing.status_code == 405
    assert "QUERY" not in missing.headers["allow"]
    assert "accept-query" not in missing.headers


# ---------------------------------------------------------------- negotiation


def test_a_form_that_is_not_offered_is_refused_with_those_that_are(http: TestClient[Litestar]) -> None:
    answer = force(http, accept="application/xml")
    assert answer.status_code == 406
    assert "application/json" in answer.json()["detail"]
    assert force(http, accept="text/html;q=0.2, */*;q=0.1").status_code == 200
    assert force(http, accept="application/json;q=0").status_code == 406


def test_a_body_of_another_type_is_refused_with_the_type_that_would_do(http: TestClient[Litestar]) -> None:
    for sent in ("text/plain", "application/x-www-form-urlencoded", ""):
        answer = http.post(FORCE, content="{}", headers={"content-type": sent})
        assert answer.status_code == 415
        assert answer.headers["accept"] == "application/json"
    assert force(http, content_type="application/json; charset=utf-8").status_code == 200


# ---------------------------------------------------------------- validators and content coding


@pytest.mark.parametrize("operation", [item for item in READING if item.tag != "service"], ids=lambda item: item.id)
def test_every_list_and_item_has_a_validator_that_saves_sending_it_again(
    operation: Operation, http: TestClient[Litestar], service: Any
) -> None:
    path = path_of(operation, service)
    for coding in ("identity", "gzip"):
        whole = http.get(path, headers={"accept-encoding": coding})
        tag = whole.headers["etag"]
        for sent in (tag, f"W/{tag}", f'"other", {tag}', "*"):
            again = http.get(path, headers={"accept-encoding": coding, "if-none-match": sent})
            assert again.status_code == 304
            assert again.content == b""
            assert {name: again.headers[name] for name in ("etag", "vary", "cache-control")} == {
                name: whole.headers[name] for name in ("etag", "vary", "cache-control")
            }
            assert "content-encoding" not in again.headers
        assert http.get(path, headers={"accept-encoding": coding, "if-none-match": '"other"'}).status_code == 200


def raw(http: TestClient[Litestar], path: str, **headers: str) -> Any:
    """Ask without the client's own decoding."""
    with http.stream("GET", path, headers={name.replace("_", "-"): value for name, value in headers.items()}) as answer:
        return answer, b"".join(answer.iter_raw())


def test_gzip_is_used_where_it_is_liked_and_has_its_own_validator(http: TestClient[Litestar]) -> None:
    path = "/v1/rail-sections"
    plain, whole = raw(http, path, accept_encoding="identity")
    assert "content-encoding" not in plain.headers
    assert plain.headers["vary"] == "Accept, Accept-Encoding"
    for header in ("gzip", "x-gzip", "br, gzip;q=0.5", "*", "GZIP;q=1.0"):
        answer, body = raw(http, path, accept_encoding=header)
        assert answer.headers["content-encoding"] == "gzip", header
        assert answer.headers["vary"] == plain.headers["vary"]
        assert answer.headers["etag"] == coded_etag(plain.headers["etag"]) != plain.headers["etag"]
        assert len(body) == int(answer.headers["content-length"]) < len(whole) / 5
        assert gzip.decompress(body) == whole
    for header in ("", "identity", "gzip;q=0", "br", "*;q=0", "identity, gzip;q=0.5", "gzip;q=x"):
        answer, body = raw(http, path, accept_encoding=header)
        assert "content-encoding" not in answer.headers, header
        assert body == whole


def test_a_small_answer_is_not_squeezed(http: TestClient[Litestar]) -> None:
    answer, _ = raw(http, "/health/live", accept_encoding="gzip")
    assert "content-encoding" not in answer.headers
    assert answer.headers["vary"] == "Accept, Accept-Encoding"


def test_what_is_kept_squeezed_is_bounded() -> None:
    squeezer = Squeezer()
    for number in range(1000):
        squeezer.squeezed(b"x", f'"{number}"')
    assert len(squeezer._kept) == 256  # noqa: SLF001
    assert gzip.decompress(squeezer.squeezed(b"y" * 9, "")) == b"y" * 9
    assert squeezer.squeezed(b"z", '"z"') is squeezer.squeezed(b"z", '"z"')


# ---------------------------------------------------------------- tracing


@pytest.mark.parametrize("path", ["/v1/rules", "/v1/nothing", "/health/live"])
def test_the_request_id_and_the_trace_come_back(path: str, http: TestClient[Litestar]) -> None:
    answer = http.get(path, headers={"x-request-id": "job-17.a_b", "traceparent": TRACE})
    assert answer.headers["x-request-id"] == "job-17.a_b"
    version, trace, span, flags = answer.headers["traceparent"].split("-")
    assert (version, trace, flags) == ("00", TRACE.split("-")[1], "01")
    assert span != TRACE.split("-")[2]


@pytest.mark.parametrize(
    "sent",
    [
        {}, {"x-request-id": "a b", "traceparent": "rubbish"}, {"x-request-id": "x" * 65},
        {"traceparent": TRACE.replace("00-", "ff-", 1)}, {"traceparent": f"00-{'0' * 32}-00f067aa0ba902b7-01"},
        {"traceparent": f"00-{'4' * 32}-{'0' * 16}-01"}, {"traceparent": TRACE.upper()},
    ],
)  # fmt: skip
def test_without_a_usable_one_there_is_a_new_one(sent: dict[str, str], http: TestClient[Litestar]) -> None:
    one, other = (http.get("/health/live", headers=sent).headers for _ in range(2))
    assert re.fullmatch(r"[0-9a-f]{32}", one["x-request-id"])
    assert one["x-request-id"] != other["x-request-id"]
    assert re.fullmatch(r"00-[0-9a-f]{32}-[0-9a-f]{16}-00", one["traceparent"])
    assert one["traceparent"].split("-")[1] not in {"0" * 32, TRACE.split("-")[1], other["traceparent"].split("-")[1]}


# ---------------------------------------------------------------- what there is


def test_the_document_is_served_as_committed_with_a_validator(http: TestClient[Litestar], document: dict[str, Any]) -> None:
    answer = http.get("/openapi.json", headers=PLAIN)
    assert answer.status_code == 200
    assert answer.json() == document
    tag = answer.headers["etag"]
    assert http.get("/openapi.json", headers={**PLAIN, "if-none-match": tag}).status_code == 304
    assert int(http.head("/openapi.json", headers=PLAIN).headers["content-length"]) == len(answer.content)


def test_the_api_catalogue_is_a_linkset_whose_links_lead_somewhere(http: TestClient[Litestar]) -> None:
    answer, head = http.get(CATALOGUE_PATH), http.head(CATALOGUE_PATH)
    assert answer.headers["content-type"].startswith("application/linkset+json")
    assert 'rel="api-catalog"' in head.headers["link"]
    assert head.content == b""
    found = answer.json()["linkset"]
    links = [link["href"] for context in found for name, links in context.items() if name != "anchor" for link in links]
    assert {"/openapi.json", "/health/ready"} <= {*links}
    for link in links:
        if link.startswith("/") and link != "/":
            assert http.get(link).status_code == 200
    assert http.get(CATALOGUE_PATH, headers={"accept": "application/json"}).status_code == 200


# ---------------------------------------------------------------- parameters


@pytest.mark.parametrize(
    "query",
    ["standard=", f"standard={'x' * 81}", "standard=%0A", "units=metric", "mass_from=much", "unknown=1", "units=us&units=si"],
)
def test_a_query_that_the_document_does_not_allow_is_refused(query: str, http: TestClient[Litestar]) -> None:
    answer = http.get(f"/v1/rail-sections?{query}")
    assert answer.status_code == 400
    assert answer.headers["content-type"] == "application/problem+json"


def test_control_characters_that_were_sent_do_not_come_back_raw(http: TestClient[Litestar]) -> None:
    answer = http.post(FORCE, content=b'{"rail_temperature": "\x7f"}', headers={"content-type": "application/json"})
    assert answer.status_code == 422
    assert b"\x7f" not in answer.content
    assert answer.json()["errors"][0]["value"] == '"\\u007f"'


# ---------------------------------------------------------------- the end of an operation


def test_a_lifecycle_refuses_dates_that_nobody_could_keep_to() -> None:
    start = datetime(2027, 1, 1, tzinfo=UTC)
    with pytest.raises(ValueError, match="before"):
        Lifecycle(deprecated=start, sunset=start - timedelta(days=1))
    for date in (start.replace(tzinfo=None), start.astimezone(timezone(timedelta(hours=2)))):
        with pytest.raises(ValueError, match="UTC"):
            Lifecycle(deprecated=date)


def test_a_lifecycle_tells_what_takes_its_place_and_where_more_stands() -> None:
    start = datetime(2027, 1, 1, tzinfo=UTC)
    assert Lifecycle(deprecated=start).headers() == {"Deprecation": "@1798761600"}
    told = Lifecycle(deprecated=start, sunset=start, successor="/v2/x", about="https://example.org/end").headers()
    assert told["Sunset"] == "Fri, 01 Jan 2027 00:00:00 GMT"
    assert told["Link"].count("rel=") == 3
