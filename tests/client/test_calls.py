"""What goes out and what comes back, with both clients."""

from __future__ import annotations

import json
import logging
from typing import TYPE_CHECKING, Any

import httpx
import pytest
from railrules_client import Client, Exchange, Hook, ProblemError, UnreadableAnswerError, __version__, models

from tests.client.answers import FORCE, ROW, problem, told

if TYPE_CHECKING:
    from tests.client.conftest import Ask

FORCE_REQUEST = models.ThermalForceRequest(rail_temperature="130 degF", neutral_temperature="95 °F", section="136RE")


def test_a_calculation_sends_what_was_given_and_nothing_else(ask: Ask) -> None:
    seen: list[httpx.Request] = []

    def handler(request: httpx.Request) -> httpx.Response:
        seen.append(request)
        return told(200, FORCE)

    (answer,) = ask(handler, lambda client: client.thermal.force(FORCE_REQUEST))
    assert json.loads(seen[0].content) == {
        "rail_temperature": {"value": 130.0, "unit": "degF"},
        "neutral_temperature": {"value": 95.0, "unit": "degF"},
        "section": "136RE",
    }
    assert (seen[0].method, seen[0].url.path) == ("POST", "/v1/thermal/force")
    assert seen[0].headers["content-type"] == "application/json"
    assert seen[0].headers["accept"] == "application/json"
    assert isinstance(answer, models.ThermalForceAnswer)
    assert answer.result.force == models.Force(90909.0, "lbf")
    assert answer.versions.service == "9.9.9"


def test_a_mapping_is_sent_as_it_stands(ask: Ask) -> None:
    def handler(request: httpx.Request) -> httpx.Response:
        assert json.loads(request.content) == {"anything": [1, {"at": "all"}]}
        return told(200, FORCE)

    ask(handler, lambda client: client.thermal.force({"anything": [1, {"at": "all"}]}))


def test_path_and_query_parameters(ask: Ask) -> None:
    seen: list[str] = []

    def handler(request: httpx.Request) -> httpx.Response:
        seen.append(request.url.raw_path.decode())
        listed = request.url.path.endswith("sections")
        return told(200, {"table": "t", "title": "", "about": "", "version": "", "rows": [ROW]} if listed else ROW)

    ask(
        handler,
        lambda client: client.rail_sections.get("136RE", units="si"),
        lambda client: client.rail_sections.get("../rules?x=1#y"),
        lambda client: client.rail_sections.list(standard="AREMA", mass_from=130.5),
        lambda client: client.rail_sections.list(),
    )
    assert seen == [
        "/v1/rail-sections/136RE?units=si",
        "/v1/rail-sections/..%2Frules%3Fx%3D1%23y",
        "/v1/rail-sections?standard=AREMA&mass_from=130.5",
        "/v1/rail-sections",
    ]


@pytest.mark.parametrize("name", ["", ".", ".."])
def test_a_name_that_would_lead_elsewhere_is_not_sent(ask: Ask, name: str) -> None:
    with pytest.raises(ValueError, match="names nothing"):
        ask(lambda _: told(200, ROW), lambda client: client.rail_sections.get(name))


def test_what_a_newer_service_adds_passes(ask: Ask) -> None:
    newer = json.loads(json.dumps(FORCE))
    newer["confidence"] = "high"
    newer["result"]["force"] = {"value": 1, "unit": "stone_force", "uncertainty": 3}
    newer["sources"][0]["status"] = "overheard"
    (answer,) = ask(lambda _: told(200, newer), lambda client: client.thermal.force(FORCE_REQUEST))
    assert str(answer.result.force) == "1 stone_force"
    assert answer.sources[0].status == "overheard"
    with pytest.raises(ValueError, match=r"stone_force.*not known"):
        answer.result.force.to("kN")


@pytest.mark.parametrize(
    "response",
    [
        told(200, {**FORCE, "result": "much"}),
        told(200, {}),
        httpx.Response(200, content=b"<html>"),
        httpx.Response(200, content=b"\xff"),
    ],
    ids=["wrong type", "missing fields", "not JSON", "not UTF-8"],
)
def test_an_answer_that_is_none_is_told(ask: Ask, response: httpx.Response) -> None:
    with pytest.raises(UnreadableAnswerError, match=r"POST /v1/thermal/force.*ThermalForceAnswer"):
        ask(lambda _: response, lambda client: client.thermal.force(FORCE_REQUEST))


def test_headers_say_who_calls_and_name_the_call(ask: Ask) -> None:
    seen: list[httpx.Headers] = []

    def handler(request: httpx.Request) -> httpx.Response:
        seen.append(request.headers)
        return told(200, ROW)

    ask(
        handler,
        lambda client: client.rail_sections.get("136RE"),
        lambda client: client.rail_sections.get("136RE", request_id="mine", headers={"X-Job": "7"}),
        api_key="secret", application="Estimator 3", headers={"X-Office": "north"},
    )  # fmt: skip
    assert seen[0]["user-agent"].startswith(f"Estimator 3 railrules-client/{__version__} (python 3.")
    assert seen[0]["authorization"] == "Bearer secret"
    assert [headers["x-office"] for headers in seen] == ["north", "north"]
    assert len(seen[0]["x-request-id"]) == 32
    assert (seen[1]["x-request-id"], seen[1]["x-job"]) == ("mine", "7")


def test_a_line_break_does_not_get_into_a_header(ask: Ask) -> None:
    with pytest.raises(ValueError, match="line break"):
        ask(lambda _: told(200, ROW), lambda client: client.rail_sections.get("136RE", headers={"X-Job": "7\r\nX-Admin: 1"}))
    with pytest.raises(ValueError, match="application"):
        Client(application="x\r\ny")


def test_environment_gives_address_and_key(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("RAILRULES_URL", "http://rail.example/below")
    monkeypatch.setenv("RAILRULES_API_KEY", "from-the-environment")
    seen: list[httpx.Request] = []

    def handler(request: httpx.Request) -> httpx.Response:
        seen.append(request)
        return told(200, ROW)

    with Client(transport=httpx.MockTransport(handler)) as client:
        client.rail_sections.get("136RE")
    with Client("http://other.example", api_key="", transport=httpx.MockTransport(handler)) as client:
        client.rail_sections.get("136RE")
    assert [str(request.url) for request in seen] == [
        "http://rail.example/below/v1/rail-sections/136RE",
        "http://other.example/v1/rail-sections/136RE",
    ]
    assert seen[0].headers["authorization"] == "Bearer from-the-environment"
    assert "authorization" not in seen[1].headers


def test_time_limits_of_client_and_call(ask: Ask) -> None:
    seen: list[Any] = []

    def handler(request: httpx.Request) -> httpx.Response:
        seen.append(request.extensions["timeout"])
        return told(200, ROW)

    ask(
        handler,
        lambda client: client.rail_sections.get("136RE"),
        lambda client: client.rail_sections.get("136RE", timeout=1.5),
        lambda client: client.rail_sections.get("136RE", timeout=None),
        timeout=20.0,
    )
    assert [(limits["connect"], limits["read"]) for limits in seen] == [(5.0, 20.0), (1.5, 1.5), (5.0, None)]


def test_the_raw_response_is_at_hand_for_answers_and_problems(ask: Ask) -> None:
    raw: list[httpx.Response] = []
    ask(
        lambda _: told(200, ROW, X_Copy="3"),
        lambda client: client.rail_sections.get("136RE", on_response=raw.append),
    )
    with pytest.raises(ProblemError):
        ask(lambda _: problem(404), lambda client: client.rail_sections.get("x", on_response=raw.append))
    assert [response.status_code for response in raw] == [200, 404]
    assert raw[0].headers["x-copy"] == "3"
    assert json.loads(raw[0].content)["id"] == "136RE"


class Watch(Hook):
    def __init__(self) -> None:
        self.seen: list[tuple[str, Exchange]] = []

    def before(self, exchange: Exchange) -> None:
        exchange.request.headers["traceparent"] = "00-1-2-01"
        self.seen.append(("before", exchange))

    def after(self, exchange: Exchange) -> None:
        self.seen.append(("after", exchange))


def test_hooks_see_every_attempt_and_can_add_headers(ask: Ask, waits: list[float]) -> None:
    watch = Watch()
    responses = [problem(503), told(200, ROW)]

    def handler(request: httpx.Request) -> httpx.Response:
        assert request.headers["traceparent"] == "00-1-2-01"
        return responses.pop(0)

    ask(handler, lambda client: client.rail_sections.get("136RE"), hooks=[watch])
    assert [when for when, _ in watch.seen] == ["before", "after", "before", "after"]
    first, second = watch.seen[1][1], watch.seen[3][1]
    assert (first.operation, first.attempt, second.attempt) == ("getRailSection", 0, 1)
    assert first.request_id == second.request_id
    assert first.response is not None
    assert first.response.status_code == 503
    assert second.seconds > 0
    assert len(waits) == 1


def test_the_log_tells_what_happened_but_no_secret(ask: Ask, caplog: pytest.LogCaptureFixture) -> None:
    caplog.set_level(logging.DEBUG, logger="railrules_client")
    ask(
        lambda _: told(200, FORCE, Set_Cookie="session=secret3"),
        lambda client: client.thermal.force(FORCE_REQUEST, request_id="call-7", headers={"X-Token": "secret2"}),
        api_key="secret1",
    )
    text = caplog.text
    assert "call-7 POST /v1/thermal/force: 200 in" in text
    assert "secret" not in text
    assert "136RE" not in text  # nor what was asked
    assert "'authorization': 'hidden'" in text
