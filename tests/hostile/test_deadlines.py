"""Slow callers are cut, each with its reason, while others are served."""

from __future__ import annotations

import contextlib
import socket
import time
from typing import TYPE_CHECKING

import pytest

from railrules_api.app.serving.settings import ServerSettings
from tests.hostile.serving import GUARD, Serving, read_answer, serving

if TYPE_CHECKING:
    from collections.abc import Iterator

SLOW = 100
BODY = b'{"section":"136RE","rail_temperature":{"value":120,"unit":"degF"},"neutral_temperature":{"value":95,"unit":"degF"}}'
HEAD = b"POST /v1/thermal/force HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\n"
GOOD = HEAD + b"Content-Length: %d\r\n\r\n" % len(BODY) + BODY


@pytest.fixture(scope="module")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Serving]:
    folder = tmp_path_factory.mktemp("serving")
    limits = {"header_seconds": 1, "body_seconds": 1.5, "send_seconds": 1, "idle_seconds": 1, "drain_seconds": 0}
    with serving(folder, workers=1, max_connections=400, **limits) as running:
        yield running


def test_the_usual_deadlines_are_within_what_is_promised() -> None:
    usual = ServerSettings()
    assert usual.header_seconds <= 30
    assert usual.body_seconds <= 60


def drip(server: Serving, begin: bytes, piece: bytes) -> None:
    """Open slow connections and feed them a little now and then: all are cut, and good questions are answered meanwhile."""
    with contextlib.ExitStack() as stack:
        slow = [stack.enter_context(server.connect()) for _ in range(SLOW)]
        for connection in slow:
            connection.sendall(begin)
        for _ in range(4):
            for connection in slow:
                connection.sendall(piece)
            assert server.ask(GOOD).status == 200
            time.sleep(0.1)
        assert [read_answer(connection).status for connection in slow] == [408] * SLOW
        assert [connection.recv(1) for connection in slow] == [b""] * SLOW


def test_slow_headers(server: Serving) -> None:
    drip(server, b"GET /v1/rules HTTP/1.1\r\nHost: a\r\n", b"X-Drop: a\r\n")
    assert server.metric('railrules_events_total{event="cut_header"}') >= SLOW


def test_slow_bodies(server: Serving) -> None:
    before = server.metric('railrules_events_total{event="cut_body"}')
    drip(server, HEAD + b"Content-Length: 5000\r\n\r\n", b" ")
    drip(server, HEAD + b"Transfer-Encoding: chunked\r\n\r\n", b"1\r\n \r\n")
    assert server.metric('railrules_events_total{event="cut_body"}') == before + 2 * SLOW


def test_a_connection_that_says_nothing_is_closed(server: Serving) -> None:
    with server.connect() as connection:
        assert connection.recv(1) == b""


def test_a_connection_that_is_idle_between_requests_is_closed(server: Serving) -> None:
    with server.connect() as connection:
        connection.sendall(GOOD)
        assert read_answer(connection).status == 200
        assert connection.recv(1) == b""


def test_a_connection_kept_awake_with_empty_lines_is_cut(server: Serving) -> None:
    with server.connect() as connection:
        connection.sendall(GOOD)
        assert read_answer(connection).status == 200
        end = time.monotonic() + GUARD
        try:
            while time.monotonic() < end:
                connection.sendall(b"\r\n")
                time.sleep(0.05)
        except ConnectionError:
            return
        pytest.fail("it was never cut")


def test_a_caller_that_does_not_read_is_cut(server: Serving) -> None:
    before = server.metric('railrules_events_total{event="cut_send"}')
    with socket.socket() as connection:
        connection.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, 4096)
        connection.settimeout(GUARD)
        connection.connect(("127.0.0.1", server.port))
        # more answers than the buffers of both ends hold
        connection.sendall(b"GET /v1/rules HTTP/1.1\r\nHost: a\r\n\r\n" * 200)
        end = time.monotonic() + GUARD
        while server.metric('railrules_events_total{event="cut_send"}') == before and time.monotonic() < end:
            assert server.ask(GOOD).status == 200
    assert server.metric('railrules_events_total{event="cut_send"}') == before + 1


def test_pipelined_requests_are_answered_in_their_order(server: Serving) -> None:
    with server.connect() as connection:
        connection.sendall(GOOD + b"GET /v1/nothing HTTP/1.1\r\nHost: a\r\n\r\n" + GOOD)
        received = b""
        while received.count(b"HTTP/1.1 ") < 3:
            received += connection.recv(65_536)
    statuses = [part[:3] for part in received.split(b"HTTP/1.1 ")[1:]]
    assert statuses == [b"200", b"404", b"200"]


def test_connections_beyond_the_limit_are_told_to_come_again(tmp_path_factory: pytest.TempPathFactory) -> None:
    folder = tmp_path_factory.mktemp("few")
    with serving(folder, workers=1, max_connections=20, drain_seconds=0) as server:
        held = [server.connect() for _ in range(20)]
        answers = [server.ask(GOOD) for _ in range(5)]
        assert [(answer.status, answer.headers["retry-after"]) for answer in answers] == [(503, "1")] * 5
        assert server.manage("/health/live").status == 200
        for connection in held:
            connection.close()
        end = time.monotonic() + GUARD
        while server.ask(GOOD).status == 503 and time.monotonic() < end:
            time.sleep(0.02)
        assert server.ask(GOOD).status == 200
