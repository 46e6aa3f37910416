"""Settings, metrics, the operator's listener, logs: what a service is run by."""

from __future__ import annotations

import dataclasses
import json
import logging
import re
import socket
import threading
import time
from html import escape
from typing import TYPE_CHECKING

import pytest
from litestar.testing import TestClient

from railrules_api.api.document_words import LIMITS
from railrules_api.app.command_line import main
from railrules_api.app.serving import keys, logs, metrics
from railrules_api.app.serving.board import BUCKETS, EVENTS, METHODS, STATUSES, Board
from railrules_api.app.serving.management import Management
from railrules_api.app.serving.routes import every_route
from railrules_api.app.serving.server import application, is_loopback, listening
from railrules_api.app.serving.settings import PREFIX, ServerSettings, SettingsError, from_environment, rows

if TYPE_CHECKING:
    from collections.abc import Iterator

# ---------------------------------------------------------------- settings


def test_every_setting_is_told_and_its_default_is_within_its_limits(capsys: pytest.CaptureFixture[str]) -> None:
    usual = ServerSettings()
    for field in dataclasses.fields(usual):
        assert len(field.metadata["about"]) > 20
        assert field.metadata["least"] <= getattr(usual, field.name) <= field.metadata["most"]
    assert main(["serve", "--settings"]) == 0
    printed = capsys.readouterr().out
    for name, value, unit, about in rows(usual):
        assert name in printed
        assert about in printed
        assert value
        assert unit in ("", "s", "bytes", "bytes/s")


STATED = {
    408: ("header_seconds", "body_seconds"),
    413: ("max_body_bytes", "max_items"),
    414: ("max_url_bytes",),
    431: ("max_header_bytes", "max_header_fields"),
    503: ("max_connections", "light_waiting", "heavy_waiting", "waiting_seconds", "work_seconds", "streams_at_once"),
}


def test_the_document_states_the_limits_that_callers_meet_as_they_are() -> None:
    usual = ServerSettings()
    for status, names in STATED.items():
        numbers = re.findall(r"\d[\d,]*", LIMITS[status])
        assert numbers == [f"{getattr(usual, name):,.0f}" for name in names]
    assert re.findall(r"\d+", LIMITS[429]) == [str(keys.USUAL_QUOTA), str(keys.WINDOW)]
    assert LIMITS.keys() == {*STATED, 429}


def test_the_handbook_lists_every_setting_with_its_default() -> None:
    with TestClient(application()) as client:
        page = client.get("/handbook/running").text
    for name, value, _, about in rows(ServerSettings(workers=2)):
        assert f"<code>{name}</code>" in page
        assert escape(about) in page
        assert f">{value}</td>" in page


def test_every_setting_is_read_from_the_environment() -> None:
    usual = ServerSettings()
    for field in dataclasses.fields(usual):
        value = field.metadata["least"] if getattr(usual, field.name) != field.metadata["least"] else field.metadata["most"]
        name = PREFIX + field.name.upper()
        read = from_environment({name: f"{value:g}" if isinstance(value, float) else str(int(value)), "HOME": "x"})
        assert getattr(read, field.name) == value
        assert type(getattr(read, field.name)) is type(getattr(usual, field.name))
        assert dataclasses.replace(read, **{field.name: getattr(usual, field.name)}) == usual


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("BODY_SECOND", "10"),
        ("BODY_SECONDS", "61"),
        ("HEADER_SECONDS", "31"),
        ("HEADER_SECONDS", "nan"),
        ("HEADER_SECONDS", "inf"),
        ("WORKERS", "0"),
        ("WORKERS", "2.5"),
        ("WORKERS", "many"),
        ("MAX_BODY_BYTES", "1"),
        ("ACCESS_LOG", "yes"),
        ("ACCESS_LOG", "2"),
    ],
)
def test_a_wrong_setting_stops_the_start(
    name: str, value: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SettingsError, match=PREFIX + name):
        from_environment({PREFIX + name: value})
    monkeypatch.setenv(PREFIX + name, value)
    assert main(["serve"]) == 2
    assert PREFIX + name in capsys.readouterr().err


def test_an_address_that_is_taken_is_told(capsys: pytest.CaptureFixture[str]) -> None:
    with listening("127.0.0.1", 0, 1) as taken:
        assert main(["serve", "--port", str(taken.getsockname()[1])]) == 2
    assert "in use" in capsys.readouterr().err


def test_loopback() -> None:
    assert [is_loopback(host) for host in ("127.0.0.1", "127.8.8.8", "::1", "localhost")] == [True] * 4
    assert [is_loopback(host) for host in ("0.0.0.0", "::", "10.0.0.1", "127.0.0.1.example.org", "")] == [False] * 5


# ---------------------------------------------------------------- board and metrics


def test_the_board_adds_up_what_workers_write_and_keeps_it_when_they_are_gone() -> None:
    board = Board(2, ("/a", "/b"))
    one, two = board.part(0), board.part(1)
    one.count(EVENTS[0])
    two.count(EVENTS[0])
    two.count(EVENTS[-1])
    one.beat(ready=True, in_progress=2, waiting=1, connections=5)
    two.beat(ready=True, in_progress=1, waiting=0, connections=1)
    assert [board.event(event) for event in EVENTS] == [2.0] + [0.0] * (len(EVENTS) - 2) + [1.0]
    assert board.gauges() == {"in_progress": 3.0, "waiting": 1.0, "connections": 6.0, "workers_ready": 2}
    board.clear(0)
    assert board.gauges() == {"in_progress": 1.0, "waiting": 0.0, "connections": 1.0, "workers_ready": 1}
    assert board.event(EVENTS[0]) == 2.0
    assert 0.0 <= board.silent_for(0) < 60.0


def test_every_series_has_its_own_place() -> None:
    board = Board(2, ("/a", "/b"), keys=3)
    part = board.part(1)
    for route in board.routes:
        for method in METHODS:
            for status in STATUSES:
                part.observe(route, method, status, 0.003)
    part.use(2, 9.0)
    part.count(EVENTS[3])
    found = board.series()
    assert len(found) == len(board.routes) * len(METHODS) * len(STATUSES)
    assert all(counts == [1.0, *[0.0] * len(BUCKETS), 0.003] for *_, counts in found)


@pytest.mark.parametrize(("seconds", "bucket"), [(0.0, 0), (0.005, 0), (0.0051, 1), (10.0, 13), (10.1, 14), (1e9, 14)])
def test_buckets_hold_what_is_not_above_their_bound(seconds: float, bucket: int) -> None:
    board = Board(1, ("/a",))
    board.part(0).observe("/a", "GET", 200, seconds)
    [(*_, counts)] = board.series()
    assert counts.index(1.0) == bucket


def test_metrics_are_as_prometheus_reads_them() -> None:
    board = Board(1, ("/v1/rules/{id}",))
    part = board.part(0)
    for seconds in (0.001, 0.02, 20.0):
        part.observe("/v1/rules/{id}", "GET", 404, seconds)
    part.observe("unmatched", "FROB", 418, 0.001)
    lines = metrics.render(board).splitlines()
    name = "http_server_request_duration_seconds"
    labels = 'http_request_method="GET",http_response_status_code="404",http_route="/v1/rules/{id}"'
    assert f'{name}_bucket{{{labels},le="0.005"}} 1' in lines
    assert f'{name}_bucket{{{labels},le="0.025"}} 2' in lines
    assert f'{name}_bucket{{{labels},le="10"}} 2' in lines
    assert f'{name}_bucket{{{labels},le="+Inf"}} 3' in lines
    assert f"{name}_count{{{labels}}} 3" in lines
    assert any('http_request_method="_OTHER",http_response_status_code="_OTHER",http_route="unmatched"' in line for line in lines)
    samples = [line for line in lines if not line.startswith("#")]
    described = {line.split()[2] for line in lines if line.startswith("# TYPE")}
    for sample in samples:
        metric = sample.partition("{")[0].partition(" ")[0]
        assert metric.removesuffix("_bucket").removesuffix("_sum").removesuffix("_count") in described
        float(sample.rpartition(" ")[2])
    assert len({sample.rpartition(" ")[0] for sample in samples}) == len(samples)


def test_routes_are_told_by_their_templates() -> None:
    routes = every_route()
    assert routes.template("/v1/rail-sections/136RE") == "/v1/rail-sections/{id}"
    assert routes.template("/v1/rail-sections/136RE/profile") == "/v1/rail-sections/{id}/profile"
    assert routes.template("/v1/rail-sections/") == "/v1/rail-sections"
    assert routes.template("/v1/thermal/force") == "/v1/thermal/force"
    assert routes.template("/") == routes.template("") == "/"
    assert routes.template("/handbook/worked-relay") == "/handbook/worked-relay"
    assert routes.template("/handbook/rules/thermal.force") == "/handbook/rules/{id}"
    unknown = ("/v1", "/v1/rail-sections/a/b", "/v1/nothing/a", "*", "/v1/rail-sections/{id}/profile/", "/handbook/rules//a")
    assert [routes.template(path) for path in unknown] == [*["unmatched"] * 4, "/v1/rail-sections/{id}/profile", "unmatched"]


def test_every_operation_has_its_route() -> None:
    """A made-up value in each template leads back to it, so that metrics and spans know every operation that is served."""
    routes = every_route()
    for template in routes.templates:
        assert routes.template(re.sub(r"{\w+}", "zz-9", template)) == template
    served = {re.sub(r"{(\w+):str}", r"{\1}", route.path) for route in application().routes}
    assert served == {*routes.templates}


# ---------------------------------------------------------------- the operator's listener


@pytest.fixture
def management() -> Iterator[tuple[Management, list[bool], int]]:
    board, stopping, ends = Board(1, ()), [False], threading.Event()
    board.part(0).beat(ready=True, in_progress=0, waiting=0, connections=0)
    listener = listening("127.0.0.1", 0, 8)
    port: int = listener.getsockname()[1]
    running = Management(listener, board, lambda: stopping[0])

    def serve() -> None:
        while not ends.is_set():
            running.wait(0.01)
        running.close()

    thread = threading.Thread(target=serve)
    thread.start()
    yield running, stopping, port
    ends.set()
    thread.join()


def said(port: int, sent: bytes) -> bytes:
    with socket.create_connection(("127.0.0.1", port), timeout=60) as connection:
        connection.sendall(sent)
        received = b""
        try:
            while data := connection.recv(65_536):
                received += data
        except ConnectionError:
            received += b"[reset]"
        return received


def test_health_and_metrics(management: tuple[Management, list[bool], int]) -> None:
    running, stopping, port = management
    end = b" HTTP/1.1\r\nHost: a\r\n\r\n"
    assert said(port, b"GET /health/live" + end).startswith(b"HTTP/1.1 200 OK\r\n")
    assert said(port, b"GET /health/ready?a=b" + end).endswith(b"\r\n\r\nready\n")
    assert b"railrules_workers_ready 1" in said(port, b"GET /metrics" + end)
    assert said(port, b"HEAD /metrics" + end).endswith(b"\r\n\r\n")
    assert said(port, b"GET /v1/rules" + end).startswith(b"HTTP/1.1 404 ")
    assert b"allow: GET, HEAD" in said(port, b"POST /metrics" + end)
    stopping[0] = True
    assert said(port, b"GET /health/ready" + end).startswith(b"HTTP/1.1 503 ")
    stopping[0] = False
    running.board.clear(0)
    assert said(port, b"GET /health/ready" + end).startswith(b"HTTP/1.1 503 ")
    assert said(port, b"GET /health/live" + end).startswith(b"HTTP/1.1 200 ")


def test_rubbish_and_floods_do_not_stop_it(management: tuple[Management, list[bool], int]) -> None:
    _, _, port = management
    assert said(port, b"\x00\xff\r\n\r\n").startswith(b"HTTP/1.1 405 ")
    assert b"200" not in said(port, b"GET /metrics HTTP/1.1\r\n" + b"a" * 100_000)
    held = [socket.create_connection(("127.0.0.1", port), timeout=60) for _ in range(80)]
    for connection in held:
        connection.close()
    time.sleep(0.1)
    assert said(port, b"GET /health/live HTTP/1.1\r\n\r\n").startswith(b"HTTP/1.1 200 ")


def test_who_says_nothing_is_dropped(management: tuple[Management, list[bool], int], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("railrules_api.app.serving.management._SECONDS", 0.05)
    assert said(management[2], b"GET") == b""


# ---------------------------------------------------------------- logs


def test_what_libraries_log_becomes_a_line_without_what_was_sent(capfd: pytest.CaptureFixture[str]) -> None:
    root = logging.getLogger()
    before, level = root.handlers[:], root.level
    try:
        logs.install()
        logging.getLogger("uvicorn.error").warning("left out")
        try:
            int("secret")
        except ValueError:
            logging.getLogger("railrules").exception("unhandled error at %s", "/a")
    finally:
        root.handlers[:] = before
        root.setLevel(level)
    [line] = [json.loads(text) for text in capfd.readouterr().out.splitlines()]
    assert [line[name] for name in ("level", "event", "error", "logger")] == [
        "error", "unhandled error at /a", "ValueError", "railrules",
    ]  # fmt: skip
    assert "secret" not in json.dumps(line)
    assert line["at"]


def test_a_log_that_cannot_be_written_stops_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    def full(_descriptor: int, _data: bytes) -> int:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("os.write", full)
    logs.line("anything")
