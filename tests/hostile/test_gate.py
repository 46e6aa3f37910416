"""The gate: limits of the body, turns, overload, drain, request ids, logs without secrets."""

from __future__ import annotations

import asyncio
import json
from typing import TYPE_CHECKING, Any

from railrules_api.api.resources import calculation_of
from railrules_api.app.serving.routes import every_route
from tests.hostile.asgi import Told, ask, gate_of

if TYPE_CHECKING:
    import pytest


def run(*questions: Any) -> list[Told]:
    async def all_of() -> list[Told]:
        return list(await asyncio.gather(*questions))

    return asyncio.run(all_of())


def test_a_body_comes_through_whole() -> None:
    gate, inner = gate_of()
    [told] = run(ask(gate, chunks=(b"a" * 70_000, b"b", b"")))
    assert (told.status, told.body, told.ended) == (200, b"ok", True)
    assert inner.seen[0]["body"] == b"a" * 70_000 + b"b"
    assert "connection" not in told.headers


def test_a_body_too_long_is_refused_before_the_application_sees_it() -> None:
    gate, inner = gate_of(max_body_bytes=1024, linger_seconds=0.05)
    announced, sent, endless = run(
        ask(gate, headers={"content-length": "1025"}, chunks=(b"",), ends=False),
        ask(gate, chunks=(b"a" * 1024, b"b", b"c")),
        ask(gate, chunks=(b"a" * 2000,), ends=False),
    )
    for told in (announced, sent, endless):
        assert (told.status, told.headers["connection"], told.ended) == (413, "close", True)
        assert json.loads(told.body)["detail"] == "the request body is larger than the 1024 bytes that the service reads"
    assert not inner.seen
    assert gate.part.board.event("refused_too_large") == 3
    assert gate.in_progress == 0


def test_a_body_at_the_limit_is_read() -> None:
    gate, _ = gate_of(max_body_bytes=1024)
    [told] = run(ask(gate, headers={"content-length": "1024"}, chunks=(b"a" * 1024,)))
    assert told.status == 200


def test_too_many_values_are_refused() -> None:
    gate, _ = gate_of(max_items=100)
    most, more = run(ask(gate, chunks=(b"1," * 99 + b"1",)), ask(gate, chunks=(b"1," * 100 + b"1",)))
    assert (most.status, more.status) == (200, 413)


def test_a_body_that_does_not_end_is_cut() -> None:
    gate, inner = gate_of(body_seconds=0.05, linger_seconds=0.05)
    [told] = run(ask(gate, chunks=(b"{",), ends=False))
    assert (told.status, told.headers["connection"], told.ended) == (408, "close", True)
    assert not inner.seen
    assert gate.part.board.event("cut_body") == 1


def test_a_caller_that_waits_to_be_told_to_go_on_is_not_read() -> None:
    gate, _ = gate_of(max_body_bytes=1024, linger_seconds=10)
    [told] = run(ask(gate, headers={"content-length": "9999", "expect": "100-continue"}, chunks=(b"",), ends=False))
    assert (told.status, told.ended) == (413, True)


def test_a_caller_that_goes_away_is_no_error() -> None:
    gate, inner = gate_of()
    [told] = run(ask(gate, chunks=(b"{",), ends=False, leaves=True))
    assert told.status == 0
    assert not inner.seen
    assert gate.part.board.event("gone") == 1


def test_content_codings_are_not_read() -> None:
    gate, _ = gate_of()
    for coding in ("gzip", "deflate, gzip", "br"):
        [told] = run(ask(gate, headers={"content-encoding": coding}, chunks=(b"x",)))
        assert (told.status, told.headers["accept-encoding"]) == (415, "identity")
    [told] = run(ask(gate, headers={"content-encoding": "identity"}, chunks=(b"x",)))
    assert told.status == 200


def test_overload_is_refused_at_once_and_what_is_taken_is_answered() -> None:
    gate, inner = gate_of(light_waiting=10)
    told = run(*(ask(gate, "/block") for _ in range(50)))
    statuses = [each.status for each in told]
    assert statuses.count(200) == 11  # one at work and ten that wait
    assert statuses.count(503) == 39
    assert len(inner.seen) == 11
    assert {each.headers["retry-after"] for each in told if each.status == 503} == {"1"}
    assert gate.part.board.event("shed_queue_full_or_late") == 39
    # and afterwards all is as before
    assert [each.status for each in run(*(ask(gate, "/block") for _ in range(5)))] == [200] * 5


def test_who_waits_too_long_is_refused() -> None:
    gate, _ = gate_of(heavy_at_once=1, heavy_waiting=8, waiting_seconds=0.05)
    told = run(*(ask(gate, "/wait") for _ in range(3)))
    assert [each.status for each in told] == [200, 503, 503]
    assert gate.waiting == 0


def test_large_bodies_wait_in_their_own_queue() -> None:
    gate, _ = gate_of(heavy_at_once=1, heavy_waiting=1, thread_above_bytes=10)
    large = [ask(gate, "/wait", chunks=(b"a" * 11,)) for _ in range(3)]
    small = [ask(gate, "/ok", chunks=(b"a",)) for _ in range(3)]
    assert [told.status for told in run(*large, *small)] == [200, 200, 503, 200, 200, 200]


def test_slow_forms_of_an_answer_wait_in_the_queue_of_large_bodies() -> None:
    gate, _ = gate_of(heavy_at_once=1, heavy_waiting=1)
    told = run(*(ask(gate, headers={"accept": "slow"}) for _ in range(3)), *(ask(gate) for _ in range(3)))
    assert [each.status for each in told] == [200, 200, 503, 200, 200, 200]


def test_which_answers_are_slow() -> None:
    slow = every_route().is_slow
    assert slow(calculation_of("sections.properties").path, "application/json")
    assert slow("/v1/takeoffs", "application/pdf")
    assert slow("/v1/takeoffs", "application/json;q=0.1, application/*;q=0, application/pdf")
    assert not slow("/v1/takeoffs", "application/json, application/pdf;q=0.9")
    assert not slow("/v1/takeoffs", "")
    assert not slow("/v1/rail-sections", "application/pdf")
    assert not slow("unmatched", "application/pdf")
    assert slow("/handbook/worked-relay", "")


def test_work_that_takes_too_long_is_answered_503_and_keeps_its_turn_until_it_ends() -> None:
    gate, _ = gate_of(heavy_at_once=1, heavy_waiting=1, work_seconds=0.05, waiting_seconds=2)

    async def ask_two() -> list[Told]:
        first = await ask(gate, "/thread")
        turns = gate.heavy.free
        second = await ask(gate, "/thread")
        assert turns == 0
        return [first, second]

    told = asyncio.run(ask_two())
    assert [each.status for each in told] == [503, 503]
    assert told[0].headers["retry-after"] == "1"
    assert gate.part.board.event("shed_work_too_long") == 2
    assert not gate.drain.begun


def test_an_answer_of_lines_that_takes_too_long_is_ended_with_a_line() -> None:
    gate, _ = gate_of(work_seconds=0.05)
    [told] = run(ask(gate, "/lines", ends=False))
    assert (told.status, told.body, told.ended) == (200, b"given up", True)
    assert gate.part.board.event("shed_work_too_long") == 1
    assert gate.heavy.free == gate.settings.heavy_at_once


def test_an_answer_of_lines_hears_that_its_caller_has_gone() -> None:
    gate, inner = gate_of()
    run(ask(gate, "/lines", headers={"content-length": "1"}, chunks=(b"a",), leaves=True))
    assert inner.seen[-1] == {"gone": {"type": "http.disconnect"}}


def test_a_worker_with_stuck_work_goes_down_to_be_replaced() -> None:
    gate, _ = gate_of(work_seconds=0.05, silence_seconds=1)
    object.__setattr__(gate.settings, "silence_seconds", 0.05)

    async def stick() -> None:
        await ask(gate, "/thread")
        await asyncio.sleep(0.1)
        assert gate.drain.begun

    asyncio.run(stick())


def test_a_caller_that_is_cancelled_leaves_its_turn() -> None:
    gate, _ = gate_of(heavy_at_once=1)

    async def go() -> None:
        holds = asyncio.create_task(ask(gate, "/wait"))
        await asyncio.sleep(0.01)
        waits = asyncio.create_task(ask(gate, "/wait"))
        await asyncio.sleep(0.01)
        waits.cancel()
        await asyncio.gather(holds, waits, return_exceptions=True)
        await asyncio.sleep(0.01)
        assert gate.heavy.free == 1
        assert (await ask(gate, "/wait")).status == 200

    asyncio.run(go())


def test_a_failure_is_a_problem_and_tells_nothing(capfd: pytest.CaptureFixture[str]) -> None:
    gate, _ = gate_of()
    [told] = run(ask(gate, "/fail"))
    assert told.status == 500
    assert json.loads(told.body)["detail"] == "the service failed on this request; the fault is ours"
    [told] = run(ask(gate, "/half"))
    assert (told.status, told.body) == (200, b"")
    assert "secret" not in capfd.readouterr().out


def test_readiness_falls_and_connections_are_told_to_close_while_requests_are_served() -> None:
    gate, _ = gate_of()
    assert [told.status for told in run(ask(gate, "/health/ready", method="GET"))] == [200]
    gate.drain.begin()
    ready, live, other = run(
        ask(gate, "/health/ready", method="GET"), ask(gate, "/health/live", method="GET"), ask(gate, "/ok", chunks=(b"x",))
    )
    assert [told.status for told in (ready, live, other)] == [503, 200, 200]
    assert {told.headers["connection"] for told in (ready, live, other)} == {"close"}
    assert not gate.drain.over
    gate.drain.begin()
    assert gate.drain.over


def test_head_has_no_body() -> None:
    gate, _ = gate_of()
    gate.drain.begin()
    [told] = run(ask(gate, "/health/ready", method="HEAD"))
    assert (told.status, told.body) == (503, b"")


def test_request_ids_are_kept_when_they_are_plain_and_made_when_not() -> None:
    gate, inner = gate_of(max_body_bytes=1024)
    kept, made, refused = run(
        ask(gate, headers={"x-request-id": "job-17"}),
        ask(gate, headers={"x-request-id": 'a"b c'}),
        ask(
            gate,
            headers={"x-request-id": "job-18", "content-length": "9999", "expect": "100-continue"},
            chunks=(b"",),
            ends=False,
        ),
    )
    assert kept.headers["x-request-id"] == "job-17"
    assert len(made.headers["x-request-id"]) == 32
    assert (refused.status, refused.headers["x-request-id"]) == (413, "job-18")
    assert len(inner.seen) == 2


def test_one_line_of_the_log_for_each_answer(capfd: pytest.CaptureFixture[str]) -> None:
    gate, _ = gate_of(access_log=True)
    run(ask(gate, "/nowhere/secret", headers={"authorization": "Bearer secret", "x-request-id": "a"}, chunks=(b"secret",)))
    [line] = [json.loads(text) for text in capfd.readouterr().out.splitlines()]
    assert "secret" not in json.dumps(line)
    assert line["event"] == "answered"
    assert [line[name] for name in ("request_id", "method", "route", "status", "bytes_in", "bytes_out")] == [
        "a", "POST", "unmatched", 200, 6, 2,
    ]  # fmt: skip


def test_answers_are_counted_by_route_method_and_status() -> None:
    gate, _ = gate_of()
    run(ask(gate, "/ok"), ask(gate, "/ok"), ask(gate, "/elsewhere", method="FROB"))
    found = {(route, method, status): sum(counts[:-1]) for route, method, status, counts in gate.part.board.series()}
    assert found == {("/ok", "POST", 200): 2.0, ("unmatched", "_OTHER", 200): 1.0}


def test_a_stream_is_let_through_whatever_its_length() -> None:
    gate, _ = gate_of(max_body_bytes=1024)
    [told] = run(ask(gate, "/stream", chunks=(b"a" * 1000, b"b" * 1000, b"c")))
    assert (told.status, told.body, told.ended) == (200, b"A" * 1000 + b"B" * 1000 + b"C", True)


def test_a_stream_that_stops_is_left_without_its_end() -> None:
    gate, _ = gate_of(body_seconds=0.05)
    [told] = run(ask(gate, "/stream", chunks=(b"a",), ends=False))
    assert (told.status, told.body, told.ended) == (200, b"A", False)
    assert gate.part.board.event("cut_body") == 1


def test_more_streams_than_are_answered_at_once_are_refused() -> None:
    gate, _ = gate_of(streams_at_once=2, body_seconds=0.05)
    told = run(*(ask(gate, "/stream", chunks=(b"a",), ends=False) for _ in range(5)))
    assert [each.status for each in told] == [200, 200, 503, 503, 503]


def test_a_stream_that_the_application_refuses_is_read_on_for_a_moment() -> None:
    gate, _ = gate_of(linger_seconds=0.05)

    async def refuses(_scope: Any, _receive: Any, send: Any) -> None:
        await send({"type": "http.response.start", "status": 415, "headers": []})
        await send({"type": "http.response.body", "body": b"no"})

    gate.app = refuses
    [told] = run(ask(gate, "/stream", chunks=(b"a", b"b"), ends=False))
    assert (told.status, told.body, told.ended, told.headers["connection"]) == (415, b"no", True, "close")
