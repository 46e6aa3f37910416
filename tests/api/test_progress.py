"""Answers that tell how far they are: lines of progress, the same answer at the end, problems, and callers who go away."""

from __future__ import annotations

import asyncio
import json
import logging
import threading
import time
import zlib
from typing import TYPE_CHECKING, Any, cast

import msgspec
import pytest

from railrules_api.api import progress
from railrules_api.api.problems import ProblemError
from railrules_api.api.replying import bind
from railrules_api.api.resources import calculation_of
from railrules_api.app import sample
from railrules_api.rules.takeoff.takeoff import take_off
from tests.support.demo import demo_job

if TYPE_CHECKING:
    from litestar import Litestar
    from litestar.testing import TestClient

    from railrules_api.api.service import Service

LINES = {"Accept": progress.MEDIA_TYPE}
PATH = "/v1/takeoffs"


class Caller:
    """Takes what is sent, and may go away after some pieces."""

    def __init__(self, leaves_after: int | None = None) -> None:
        self.pieces: list[bytes] = []
        self.ended = False
        self.leaves_after = leaves_after
        self.left = asyncio.Event()

    async def receive(self) -> Any:
        if self.leaves_after is None:
            await asyncio.sleep(60)
        await self.left.wait()
        return {"type": "http.disconnect"}

    async def send(self, message: Any) -> None:
        self.pieces.append(message["body"])
        self.ended = not message["more_body"]
        if self.leaves_after is not None and len(self.pieces) >= self.leaves_after:
            self.left.set()

    @property
    def lines(self) -> list[dict[str, Any]]:
        return [json.loads(line) for line in b"".join(self.pieces).splitlines()]


def test_a_takeoff_tells_every_step_of_every_stage(service: Service) -> None:
    job = {**demo_job(), "stability": {"lateral_resistance": {"value": 20, "unit": "lbf_per_in"}}, "explain": True}
    told: list[tuple[str, int, int]] = []
    work = progress.work_of(calculation_of("takeoffs"), json.dumps(job).encode(), service)
    last = work(lambda *so_far: told.append(so_far))
    stages = list(dict.fromkeys(stage for stage, _, _ in told))
    assert stages == ["segments", "rail", "stability", "bill", "answer", "explanation"]
    segments = [(done, of) for stage, done, of in told if stage == "segments"]
    assert segments == [(done, len(job["segments"])) for done in range(len(job["segments"]) + 1)]
    for stage, done, of in told:
        assert 0 <= done <= of, stage
    assert set(msgspec.json.decode(last)) == {"answer"}


def test_to_tell_changes_nothing(service: Service) -> None:
    job = bind(calculation_of("takeoffs"), json.dumps(demo_job()).encode(), service).given
    terms = service.terms(service.house)
    assert take_off(job, terms).result == take_off(job, terms, lambda *_: None).result


def test_the_last_line_is_the_answer_to_the_byte(http: TestClient[Litestar]) -> None:
    body = json.dumps(sample.job(300, 1))
    plain = http.post(PATH, content=body, headers={"Content-Type": "application/json"})
    response = http.post(PATH, content=body, headers={"Content-Type": "application/json", **LINES})
    assert response.status_code == 200
    assert response.headers["content-type"] == progress.MEDIA_TYPE
    assert response.headers["cache-control"] == "no-store"
    assert response.headers["content-encoding"] == "gzip"
    *told, last = response.content.splitlines()
    assert last == b'{"answer":%b}' % plain.content
    assert all(set(json.loads(line)) == {"progress"} for line in told)


def test_who_takes_no_gzip_gets_none(http: TestClient[Litestar]) -> None:
    response = http.post(PATH, json=demo_job(), headers={**LINES, "Accept-Encoding": "identity"})
    assert "content-encoding" not in response.headers
    assert set(json.loads(response.content.splitlines()[-1])) == {"answer"}


def test_what_is_wrong_with_a_request_is_a_problem_before_the_lines_begin(http: TestClient[Litestar]) -> None:
    response = http.post(PATH, json={"name": "x"}, headers=LINES)
    assert response.status_code == 422
    assert response.headers["content-type"] == "application/problem+json"
    assert http.post(f"{PATH}?sheet=0", json=demo_job(), headers=LINES).status_code in (400, 404)


def test_what_a_rule_refuses_is_the_last_line(http: TestClient[Litestar]) -> None:
    job = demo_job()
    job["segments"][1]["begin"] = job["segments"][0]["begin"]
    plain = http.post(PATH, json=job)
    assert plain.status_code == 422
    response = http.post(PATH, json=job, headers=LINES)
    assert response.status_code == 200
    assert json.loads(response.content.splitlines()[-1]) == {"problem": plain.json()}


def test_our_own_fault_is_told_in_the_last_line(
    service: Service, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def fail(*_: object) -> None:
        raise RuntimeError("secret of a caller")

    monkeypatch.setattr(progress, "answer_struct", fail)
    work = progress.work_of(calculation_of("takeoffs"), json.dumps(demo_job()).encode(), service)
    with caplog.at_level(logging.CRITICAL, logger="railrules"):
        line = json.loads(work(lambda *_: None))
    assert line["problem"]["status"] == 500
    assert "secret" not in json.dumps(line)


def slow(steps: int, heard: list[str], step: float = 0.02) -> Any:
    def work(tell: Any) -> bytes:
        try:
            for done in range(steps):
                tell("segments", done, steps)
                time.sleep(step)
        except progress.StoppedError:
            heard.append("stopped")
            raise
        heard.append("done")
        return b'{"answer":{}}\n'

    return work


def test_lines_come_while_the_work_is_done() -> None:
    async def ask() -> Caller:
        caller = Caller()
        await progress.send_lines(slow(20, []), caller.receive, caller.send, every=0.03)
        return caller

    caller = asyncio.run(ask())
    *told, last = caller.lines
    assert len(told) > 3
    counts = [line["progress"]["done"] for line in told]
    assert counts == sorted(set(counts))
    assert last == {"answer": {}}
    assert caller.ended


def test_who_goes_away_ends_the_work() -> None:
    heard: list[str] = []

    async def ask() -> Caller:
        caller = Caller(leaves_after=1)
        await progress.send_lines(slow(1000, heard), caller.receive, caller.send, every=0.02)
        return caller

    caller = asyncio.run(ask())
    assert heard == ["stopped"]
    assert not caller.ended


def test_work_that_is_given_up_says_so_in_its_last_line() -> None:
    heard: list[str] = []

    async def ask() -> Caller:
        caller = Caller()
        task = asyncio.create_task(progress.send_lines(slow(1000, heard), caller.receive, caller.send, every=0.02))
        await asyncio.sleep(0.1)
        task.cancel()
        with pytest.raises(asyncio.CancelledError):
            await task
        return caller

    caller = asyncio.run(ask())
    assert heard == ["stopped"]
    assert caller.lines[-1]["problem"]["status"] == 503
    assert caller.ended


def test_each_squeezed_line_can_be_read_when_it_comes() -> None:
    async def ask() -> Caller:
        caller = Caller()
        await progress.send_lines(slow(10, []), caller.receive, caller.send, coded=True, every=0.03)
        return caller

    pieces = asyncio.run(ask()).pieces
    reader = zlib.decompressobj(wbits=31)
    for piece in pieces[:-1]:
        assert reader.decompress(piece).endswith(b"\n")
    reader.decompress(pieces[-1])
    assert reader.eof


def test_nothing_new_is_nothing_told() -> None:
    running = progress.Running()
    assert running.line() == b""
    running.tell("rail", 1, 2)
    assert json.loads(running.line()) == {"progress": {"stage": "rail", "done": 1, "of": 2}}
    assert running.line() == b""


def test_the_example_is_of_the_schema_of_a_line() -> None:
    line = progress.line_type(calculation_of("takeoffs"))
    first, last = (cast("Any", msgspec.json.decode(text, type=line)) for text in progress.EXAMPLE.splitlines())
    assert first.progress.of == 5000
    assert last.problem.status == 503


def test_others_are_served_meanwhile(http: TestClient[Litestar]) -> None:
    body = json.dumps(sample.job(400, 3))
    found: list[int] = []

    def ask() -> None:
        found.append(http.post(PATH, content=body, headers={"Content-Type": "application/json", **LINES}).status_code)

    thread = threading.Thread(target=ask)
    thread.start()
    assert http.get("/health/live").status_code == 200
    thread.join()
    assert found == [200]


def test_a_body_that_is_no_json_is_refused(service: Service) -> None:
    with pytest.raises(ProblemError) as caught:
        progress.work_of(calculation_of("takeoffs"), b"{", service)
    assert caught.value.status == 400
