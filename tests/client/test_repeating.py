"""Repetition of calls that failed in passing, and catalogue answers asked for only when changed."""

from __future__ import annotations

import hashlib
from datetime import UTC, datetime, timedelta
from email.utils import format_datetime
from typing import TYPE_CHECKING

import httpx
import pytest
from railrules_client import Client, ConnectionFailedError, RefusedError, TimedOutError, TooManyRequestsError, UnavailableError
from railrules_client._caching import AnswerCache
from railrules_client._retrying import asked_wait, backoff

from tests.client.answers import FORCE, REFUSAL, ROW, problem, told

if TYPE_CHECKING:
    from tests.client.conftest import Ask, Handler


def script(*outcomes: httpx.Response | Exception) -> tuple[Handler, list[httpx.Request]]:
    """Return a handler that answers with one outcome after another, the last one for ever, and what it was asked."""
    seen: list[httpx.Request] = []

    def handler(request: httpx.Request) -> httpx.Response:
        outcome = outcomes[min(len(seen), len(outcomes) - 1)]
        seen.append(request)
        if isinstance(outcome, Exception):
            raise outcome
        return outcome

    return handler, seen


@pytest.mark.parametrize(
    "passing",
    [
        problem(429),
        problem(502),
        problem(503),
        problem(504),
        httpx.ConnectError("no"),
        httpx.ConnectTimeout("no"),
        httpx.ReadError("cut"),
    ],
    ids=["429", "502", "503", "504", "refused", "connect timeout", "cut"],
)
def test_a_call_that_failed_in_passing_is_repeated(ask: Ask, waits: list[float], passing: httpx.Response | Exception) -> None:
    handler, seen = script(passing, passing, told(200, FORCE))
    (answer,) = ask(handler, lambda client: client.thermal.force({}))
    assert answer.rule == "thermal.force"
    assert len({request.headers["x-request-id"] for request in seen}) == 1
    assert len(seen) == 3
    assert 0.25 <= waits[0] <= 0.5 <= waits[1] <= 1.0


def test_every_attempt_at_a_calculation_has_one_idempotency_key_made_of_its_body(ask: Ask, waits: list[float]) -> None:
    handler, seen = script(problem(503), httpx.ReadError("cut"), told(200, FORCE))
    ask(handler, lambda client: client.thermal.force({"section": "136RE"}))
    keys = {request.headers["idempotency-key"] for request in seen}
    assert keys == {f'"sha-256:{hashlib.sha256(seen[0].content).hexdigest()}"'}
    assert len(seen) == 3 == len(waits) + 1


def test_a_call_may_have_an_idempotency_key_of_its_own_and_the_catalogue_has_none(ask: Ask) -> None:
    handler, seen = script(told(200, FORCE))
    ask(
        handler,
        lambda client: client.thermal.force({}, idempotency_key="job-17"),
        lambda client: client.thermal.force({}, headers={"idempotency-key": '"mine"'}),
    )
    assert [request.headers["idempotency-key"] for request in seen] == ['"job-17"', '"mine"']
    handler, seen = script(told(200, ROW))
    ask(handler, lambda client: client.rail_sections.get("136RE"))
    assert "idempotency-key" not in seen[0].headers
    with pytest.raises(ValueError, match="line break"):
        ask(handler, lambda client: client.thermal.force({}, idempotency_key="a\r\nX: y"))


def test_the_service_sends_the_key_back_and_refuses_that_of_another_body() -> None:
    raw: list[httpx.Response] = []
    question = {
        "section": "136RE", "rail_temperature": {"value": 25, "unit": "degF"},
        "neutral_temperature": {"value": 95, "unit": "degF"},
    }  # fmt: skip
    with Client.in_process() as client:
        client.thermal.force(question, on_response=raw.append)
        assert raw[0].headers["idempotency-key"] == raw[0].request.headers["idempotency-key"]
        with pytest.raises(RefusedError) as caught:
            client.thermal.force(question, idempotency_key="sha-256:" + "0" * 64)
    assert caught.value.problem.type == "/problems/idempotency-key-of-another-request"


def test_it_gives_up_after_the_last_repetition(ask: Ask, waits: list[float]) -> None:
    handler, seen = script(problem(503))
    with pytest.raises(UnavailableError):
        ask(handler, lambda client: client.thermal.force({}), retries=4)
    assert len(seen) == 5
    assert len(waits) == 4
    handler, seen = script(httpx.ConnectError("no"))
    with pytest.raises(ConnectionFailedError, match="after attempt 2"):
        ask(handler, lambda client: client.thermal.force({}, retries=1), retries=4)
    assert len(seen) == 2


@pytest.mark.parametrize("lasting", [told(422, REFUSAL), httpx.ReadTimeout("late")], ids=["refused", "late"])
def test_what_would_fail_again_is_not_repeated(ask: Ask, waits: list[float], lasting: httpx.Response | Exception) -> None:
    handler, seen = script(lasting)
    with pytest.raises((RefusedError, TimedOutError)):
        ask(handler, lambda client: client.thermal.force({}))
    assert len(seen) == 1
    assert waits == []


def test_retry_after_is_obeyed_unless_it_asks_too_much(ask: Ask, waits: list[float]) -> None:
    handler, _ = script(problem(429, Retry_After="7"), told(200, FORCE))
    ask(handler, lambda client: client.thermal.force({}))
    assert waits == [7.0]
    handler, seen = script(problem(429, Retry_After="3600"))
    with pytest.raises(TooManyRequestsError):
        ask(handler, lambda client: client.thermal.force({}))
    assert len(seen) == 1


def test_both_forms_of_retry_after() -> None:
    moment = format_datetime(datetime.now(UTC) + timedelta(seconds=30), usegmt=True)
    waited = asked_wait(problem(503, Retry_After=moment))
    assert waited is not None
    assert 28 <= waited <= 30
    assert asked_wait(problem(503, Retry_After="Wed, 21 Oct 2015 07:28:00 GMT")) == 0.0
    assert asked_wait(problem(503, Retry_After="soon")) is None
    assert asked_wait(problem(503)) is None


def test_waits_double_spread_and_are_bounded() -> None:
    for attempt, longest in enumerate([0.5, 1.0, 2.0, 4.0, 8.0, 8.0, 8.0]):
        found = {backoff(attempt) for _ in range(200)}
        assert longest / 2 <= min(found) < max(found) <= longest
        assert len(found) > 100


def test_a_catalogue_answer_is_asked_for_only_when_changed(ask: Ask) -> None:
    newer = {**ROW, "title": "changed"}
    handler, seen = script(
        told(200, ROW, ETag='"one"'),
        httpx.Response(304, headers={"ETag": '"one"'}),
        told(200, newer, ETag='"two"'),
        httpx.Response(304),
    )
    raw: list[httpx.Response] = []
    answers = ask(handler, *[lambda client: client.rail_sections.get("136RE", on_response=raw.append)] * 4)
    assert [answer.title for answer in answers] == ["136 RE", "136 RE", "changed", "changed"]
    assert [request.headers.get("if-none-match") for request in seen] == [None, '"one"', '"one"', '"two"']
    assert [response.status_code for response in raw] == [200] * 4


def test_each_address_has_its_own_kept_answer_and_calculations_have_none(ask: Ask) -> None:
    handler, seen = script(told(200, {**ROW, **FORCE}, ETag='"one"'))
    ask(
        handler,
        lambda client: client.rail_sections.get("136RE"),
        lambda client: client.rail_sections.get("136RE", units="si"),
        lambda client: client.thermal.force({}),
        lambda client: client.thermal.force({}),
    )
    assert all("if-none-match" not in request.headers for request in seen)
    ask(handler, *[lambda client: client.rail_sections.get("136RE")] * 2, cache_entries=0)
    assert all("if-none-match" not in request.headers for request in seen)


def test_the_store_keeps_the_last_used_and_stays_small(monkeypatch: pytest.MonkeyPatch) -> None:
    cache = AnswerCache(2)

    def get(name: str) -> tuple[httpx.Request, str | None]:
        request = httpx.Request("GET", f"http://service.example/{name}")
        cache.prepare(request)
        return request, request.headers.get("if-none-match")

    def keep(name: str, size: int = 10) -> None:
        cache.settle(get(name)[0], httpx.Response(200, content=b"x" * size, headers={"ETag": f'"{name}"'}))

    keep("a")
    keep("b")
    request, tag = get("a")
    assert tag == '"a"'
    keep("b")
    keep("c")
    assert [get(name)[1] for name in "abc"] == [None, '"b"', '"c"']
    # the answer that was there when the request went out still serves, though crowded out since
    assert cache.settle(request, httpx.Response(304)).content == b"x" * 10
    monkeypatch.setattr("railrules_client._caching.LARGEST_BYTES", 100)
    keep("huge", 101)
    assert [get(name)[1] for name in ("b", "c", "huge")] == [None, None, None]
