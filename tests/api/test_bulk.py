"""The stream of takeoffs: lines, sums, and the whole over a real socket."""

from __future__ import annotations

import asyncio
import hashlib
import itertools
import json
import math
import random
import socket
import threading
import time
from contextlib import contextmanager
from typing import TYPE_CHECKING, Any

import httpx
import pytest
from hypothesis import given
from hypothesis import strategies as st

from railrules_api.api.app import create_app
from railrules_api.api.bulk import MEDIA_TYPE, PATH
from railrules_api.api.bulk_run import LONGEST_LINE, Lines, Run
from railrules_api.api.replying import answer
from railrules_api.api.resources import calculation_of
from railrules_api.app import sample
from railrules_api.domain.exact_sum import ExactSum

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from litestar import Litestar
    from litestar.testing import TestClient

    from railrules_api.api.service import Service

TYPE = {"Content-Type": MEDIA_TYPE}


def jobs(count: int, segments: int = 1) -> list[bytes]:
    return [json.dumps(sample.job(segments, seed)).encode() for seed in range(count)]


def read(body: bytes) -> tuple[list[dict[str, Any]], dict[str, Any]]:
    """Return the lines of an answer and its trailer, whose digest and counts hold."""
    *lines, last = body.splitlines(keepends=True)
    trailer: dict[str, Any] = json.loads(last)["trailer"]
    assert trailer["digest"] == "sha-256:" + hashlib.sha256(b"".join(lines)).hexdigest()
    told = [json.loads(line) for line in lines]
    assert sum("problem" in line for line in told) == trailer["refused"]
    assert trailer["lines"] == trailer["answered"] + trailer["refused"]
    return told, trailer


# ---------------------------------------------------------------- lines and sums


@given(st.lists(st.binary(max_size=12)), st.lists(st.integers(0, 80)))
def test_lines_are_the_same_wherever_the_chunks_are_cut(lines: list[bytes], cuts: list[int]) -> None:
    body = b"\n".join(lines)
    places = sorted({0, *(cut for cut in cuts if cut <= len(body)), len(body)})
    cutter = Lines(longest=8)
    found = [
        line for begin, end in itertools.pairwise(places) for line in cutter.feed(body[begin:end])
    ]  # fmt: skip
    found += cutter.end()
    expected = [
        (number, None if len(line) > 8 else line)
        for number, line in enumerate(body.split(b"\n"), start=1)
        if len(line) > 8 or line.strip()
    ]
    assert found == expected


def test_a_line_that_never_ends_is_not_kept() -> None:
    cutter = Lines(longest=1000)
    for _ in range(1000):
        assert not list(cutter.feed(b"x" * 1000))
    assert sum(map(len, cutter._parts)) == 0  # noqa: SLF001  what it holds is the point
    assert list(cutter.feed(b"\n")) == [(1, None)]


@given(st.lists(st.floats(-1e15, 1e15)), st.randoms(use_true_random=False))
def test_an_exact_sum_hangs_on_no_order_and_no_grouping(values: list[float], shuffled: random.Random) -> None:
    total = ExactSum()
    for value in values:
        total.add(value)
    mixed = values.copy()
    shuffled.shuffle(mixed)
    other = ExactSum()
    for value in mixed:
        other.add(value)
    assert total.value == other.value == math.fsum(values)


# ---------------------------------------------------------------- the run, without HTTP


def test_each_line_answers_what_the_takeoff_answers(service: Service) -> None:
    resource, bodies = calculation_of("takeoffs"), jobs(3, 2)
    run = Run(resource, service)
    told = run.work(enumerate(bodies, start=1))
    expected = b"".join(
        b'{"line":%d,"answer":%b}\n' % (number, answer(resource, body, service)) for number, body in enumerate(bodies, start=1)
    )
    assert told == expected
    assert read(told + run.trailer())[1]["answered"] == 3


def test_totals_are_the_sums_of_the_single_answers_in_any_order(service: Service) -> None:
    resource, bodies = calculation_of("takeoffs"), jobs(12, 3)
    answers = [json.loads(answer(resource, body, service)) for body in bodies]
    trailers = []
    for order in (bodies, bodies[::-1], bodies[5:] + bodies[:5]):
        run = Run(resource, service, totals_only=True)
        assert run.work(enumerate(order, start=1)) == b""
        trailers.append(run.trailer())
    assert len(set(trailers)) == 1
    totals = {(total["item"], total["product"]): total for total in json.loads(trailers[0])["trailer"]["totals"]}
    singles: dict[tuple[str, str], list[dict[str, Any]]] = {}
    for found in answers:
        for one in found["result"]["orders"]:
            singles.setdefault((one["item"], one["product"]), []).append(one)
    assert totals.keys() == singles.keys()
    for key, ones in singles.items():
        assert totals[key]["jobs"] == len(ones)
        for name in ("net", "order"):
            assert totals[key][name]["unit"] == ones[0][name]["unit"]
            assert totals[key][name]["value"] == pytest.approx(math.fsum(one[name]["value"] for one in ones), rel=1e-12)


def test_a_bad_line_is_told_in_its_place_and_the_rest_goes_on(service: Service) -> None:
    good = jobs(1)[0]
    refused = json.dumps({**json.loads(good), "segments": []}).encode()
    run = Run(calculation_of("takeoffs"), service)
    told = run.work([(1, good), (2, b"{not json"), (4, refused), (5, None), (6, b"\xff"), (9, good)])
    lines, trailer = read(told + run.trailer())
    assert [line["line"] for line in lines] == [1, 2, 4, 5, 6, 9]
    assert [line.get("problem", {}).get("status") for line in lines] == [None, 400, 422, 413, 400, None]
    assert lines[2]["problem"]["errors"][0]["pointer"] == "/segments"
    assert (trailer["answered"], trailer["refused"]) == (2, 4)


def test_an_error_of_ours_does_not_end_the_stream(service: Service, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(*_: object) -> bytes:
        raise KeyError("secret")

    monkeypatch.setattr("railrules_api.api.bulk_run.answer", fail)
    run = Run(calculation_of("takeoffs"), service)
    told = run.work([(1, b"{}")])
    assert b"secret" not in told
    assert json.loads(told)["problem"]["status"] == 500


def test_invented_items_cannot_fill_the_memory(service: Service, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("railrules_api.api.bulk_run.MOST_TOTALS", 40)
    run = Run(calculation_of("takeoffs"), service, totals_only=True)
    for number in range(30):
        job = sample.job(1, 1)
        job["segments"][0]["custom"] = [{"item": f"thing {number}", "per_tie": 1.0}]
        run.work([(number + 1, json.dumps(job).encode())])
    trailer = json.loads(run.trailer())["trailer"]
    assert len(trailer["totals"]) <= 40
    assert trailer["refused"]
    assert trailer["answered"]


# ---------------------------------------------------------------- HTTP, in process


def test_the_stream_answers_in_process(http: TestClient[Litestar]) -> None:
    body = b"\n".join(jobs(2)) + b"\n\n"
    response = http.post(PATH, content=body, headers=TYPE)
    assert response.status_code == 200
    assert response.headers["content-type"] == MEDIA_TYPE
    assert response.headers["x-content-type-options"] == "nosniff"
    assert response.headers["x-request-id"]
    lines, trailer = read(response.content)
    assert [line["line"] for line in lines] == [1, 2]
    assert trailer["totals"] == []
    totals = http.post(f"{PATH}?answer=totals&units=si", content=body, headers=TYPE)
    assert {total["net"]["unit"] for total in read(totals.content)[1]["totals"]} >= {"each", "m"}


def test_an_empty_stream_has_a_trailer(http: TestClient[Litestar]) -> None:
    assert read(http.post(PATH, content=b"", headers=TYPE).content)[1]["lines"] == 0


@pytest.mark.parametrize(
    ("status", "ask"),
    [
        (405, lambda http: http.put(PATH, content=b"", headers=TYPE)),
        (406, lambda http: http.post(PATH, content=b"", headers={**TYPE, "Accept": "text/html"})),
        (415, lambda http: http.post(PATH, json={})),
        (400, lambda http: http.post(f"{PATH}?answer=some", content=b"", headers=TYPE)),
        (400, lambda http: http.post(f"{PATH}?answer=full&answer=full", content=b"", headers=TYPE)),
        (400, lambda http: http.post(f"{PATH}?what=1", content=b"", headers=TYPE)),
    ],
)
def test_what_is_wrong_before_the_first_line_is_a_problem(
    http: TestClient[Litestar], status: int, ask: Callable[[Any], httpx.Response]
) -> None:
    response = ask(http)
    assert response.status_code == status
    assert response.headers["content-type"].startswith("application/problem+json")
    assert response.json()["status"] == status


# ---------------------------------------------------------------- HTTP, over a socket


@contextmanager
def served(service: Service) -> Iterator[int]:
    import uvicorn  # noqa: PLC0415

    listener = socket.create_server(("127.0.0.1", 0))
    config = uvicorn.Config(create_app(service), loop="asyncio", http="httptools", ws="none", log_level="error", lifespan="on")
    server = uvicorn.Server(config)
    thread = threading.Thread(target=lambda: asyncio.run(server.serve([listener])), daemon=True)
    thread.start()
    while not server.started:
        time.sleep(0.01)
    try:
        yield listener.getsockname()[1]
    finally:
        server.should_exit = True
        thread.join(10)
        listener.close()
    assert not thread.is_alive()


@pytest.fixture(scope="module")
def port(service: Service) -> Iterator[int]:
    with served(service) as number:
        yield number


HEAD = f"POST {PATH} HTTP/1.1\r\nHost: localhost\r\nContent-Type: {MEDIA_TYPE}\r\nTransfer-Encoding: chunked\r\n\r\n".encode()


def chunk(body: bytes) -> bytes:
    return b"%x\r\n%b\r\n" % (len(body), body)


def until(connection: socket.socket, wanted: bytes, seconds: float = 20.0) -> bytes:
    connection.settimeout(seconds)
    found = b""
    while wanted not in found:
        got = connection.recv(65536)
        assert got, found[-200:]
        found += got
    return found


def settled(count: Callable[[], int]) -> int:
    """Return a count that has not risen for a while."""
    deadline, last = time.monotonic() + 60, -1
    while count() != last:
        assert time.monotonic() < deadline, "it never stops"
        last = count()
        time.sleep(1.0)
    return last


def test_each_line_is_answered_before_the_next_is_sent(port: int) -> None:
    with socket.create_connection(("127.0.0.1", port)) as connection:
        connection.sendall(HEAD)
        assert b" 200 " in until(connection, b"\r\n\r\n")
        for number, body in enumerate(jobs(3), start=1):
            connection.sendall(chunk(body + b"\n"))
            assert b'{"line":%d,"answer"' % number in until(connection, b"}\n")
        connection.sendall(b"0\r\n\r\n")
        assert b'"answered":3' in until(connection, b"0\r\n\r\n")


def test_the_answer_is_the_same_however_the_network_cuts_it(port: int) -> None:
    body = b"\n".join([*jobs(4), b"oops", *jobs(2)])

    def pieces(size: int) -> Iterator[bytes]:
        yield from (body[begin : begin + size] for begin in range(0, len(body), size))

    found = set()
    for size in (len(body), 4096, 333):
        for query in ("", "?answer=totals"):
            response = httpx.post(f"http://127.0.0.1:{port}{PATH}{query}", content=pieces(size), headers=TYPE, timeout=60)
            found.add((query, response.content))
    assert len(found) == 2


def test_a_line_over_the_limit_is_refused_and_the_next_answered(port: int) -> None:
    long = b'{"name":"' + b"x" * LONGEST_LINE + b'"}'
    body = b"\n".join([long, *jobs(1)])
    response = httpx.post(f"http://127.0.0.1:{port}{PATH}", content=body, headers=TYPE, timeout=60)
    lines, _ = read(response.content)
    assert lines[0]["problem"]["status"] == 413
    assert "answer" in lines[1]


def test_a_caller_who_does_not_read_is_not_worked_for(service: Service, monkeypatch: pytest.MonkeyPatch) -> None:
    worked = 0
    real = answer

    def counted(*arguments: Any) -> bytes:
        nonlocal worked
        worked += 1
        return real(*arguments)

    monkeypatch.setattr("railrules_api.api.bulk_run.answer", counted)
    line = chunk(jobs(1)[0] + b"\n")
    with served(service) as number, socket.create_connection(("127.0.0.1", number)) as connection:
        connection.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, 4096)
        connection.sendall(HEAD)
        connection.settimeout(1.0)
        sent = 0
        try:
            for _ in range(5000):
                connection.sendall(line)
                sent += 1
        except TimeoutError:
            pass
        assert sent < 5000, "the service reads on though nobody takes its answers"
        # what was on its way is answered, then all stands still
        assert settled(lambda: worked) < 5000


def test_a_dropped_connection_leaves_nothing_behind(service: Service, monkeypatch: pytest.MonkeyPatch) -> None:
    worked = 0
    real = answer

    def counted(*arguments: Any) -> bytes:
        nonlocal worked
        worked += 1
        return real(*arguments)

    monkeypatch.setattr("railrules_api.api.bulk_run.answer", counted)
    before = threading.active_count()
    with served(service) as number:
        for _ in range(5):
            with socket.create_connection(("127.0.0.1", number)) as connection:
                connection.sendall(HEAD + b"".join(chunk(body + b"\n") for body in jobs(20)))
                until(connection, b'{"line":1,')
        response = httpx.get(f"http://127.0.0.1:{number}/health/live")
        assert response.status_code == 200
        assert settled(lambda: worked) <= 5 * 20
    # the pool of the event loop is gone with it
    assert threading.active_count() <= before + 1
