"""Long work that shows how far it is: in the client, and on the command line where a person looks on."""

from __future__ import annotations

import asyncio
import io
import json
import sys
from typing import TYPE_CHECKING, Any

import httpx
import pytest
from railrules_client import (
    AsyncClient,
    Client,
    ConnectionFailedError,
    RefusedError,
    UnavailableError,
    UnreadableAnswerError,
    models,
)
from railrules_client.command_line.commands import GOOD
from railrules_client.command_line.running import main

from railrules_api.app import sample
from tests.support.demo import DEMO, demo_job

if TYPE_CHECKING:
    from collections.abc import Iterator

    from tests.client.conftest import Ask

Told = list[tuple[str, int, int]]
LINE = b'{"progress":{"stage":"segments","done":%d,"of":9}}\n'
BUSY = b'{"problem":{"type":"about:blank","title":"busy","status":503,"detail":"later"}}\n'
REFUSED = b'{"problem":{"type":"/problems/refused","title":"no","status":422,"detail":"so"}}\n'


@pytest.fixture(autouse=True)
def often(monkeypatch: pytest.MonkeyPatch) -> None:
    """Have the service tell often enough for any machine."""
    monkeypatch.setattr("railrules_api.api.progress.EVERY", 0.01)


@pytest.fixture(scope="module")
def client() -> Iterator[Client]:
    with Client.in_process() as found:
        yield found


@pytest.fixture(scope="module")
def answer(client: Client) -> bytes:
    raw: list[httpx.Response] = []
    client.takeoffs.create(demo_job(), on_response=raw.append)
    return raw[0].content


def noted(told: Told) -> Any:
    def note(progress: models.Progress) -> None:
        told.append((progress.stage, progress.done, progress.of))

    return note


def in_turn(*bodies: bytes, seen: list[httpx.Request] | None = None) -> Any:
    """Answer with one body after another; an empty one stands for a plain problem."""
    ahead = list(bodies)

    def handler(request: httpx.Request) -> httpx.Response:
        if seen is not None:
            seen.append(request)
        body = ahead.pop(0)
        headers = {"content-type": "application/x-ndjson", "x-request-id": request.headers["x-request-id"]}
        return httpx.Response(200, headers=headers, content=body)

    return handler


def test_what_comes_is_told_and_the_answer_is_that_of_the_usual_form(ask: Ask, answer: bytes) -> None:
    told: Told = []
    raw: list[httpx.Response] = []
    seen: list[httpx.Request] = []
    body = LINE % 0 + LINE % 4 + b'{"answer":%b}\n' % answer
    [found] = ask(
        in_turn(body, seen=seen),
        lambda client: client.takeoffs.create(demo_job(), progress=noted(told), on_response=raw.append, request_id="mine"),
    )
    assert isinstance(found, models.TakeoffAnswer)
    assert told == [("segments", 0, 9), ("segments", 4, 9)]
    assert seen[0].headers["accept"] == "application/x-ndjson"
    [response] = raw
    assert (response.status_code, response.headers["content-type"]) == (200, "application/json")
    assert (response.content, response.headers["x-request-id"]) == (answer, "mine")


def test_a_cut_answer_is_asked_for_again(ask: Ask, answer: bytes, waits: list[float], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("railrules_client._watching.time.sleep", waits.append)
    told: Told = []
    bodies = (LINE % 3 + b'{"answer":{"ru', BUSY, LINE % 7 + b'{"answer":%b}\n' % answer)
    [found] = ask(in_turn(*bodies), lambda client: client.takeoffs.create(demo_job(), progress=noted(told)))
    assert found.result.name
    assert [done for _, done, _ in told] == [3, 7]
    assert len(waits) == 2


@pytest.mark.parametrize(
    ("body", "error"),
    [
        (LINE % 1, ConnectionFailedError),
        (BUSY, UnavailableError),
        (REFUSED, RefusedError),
        (b"<html>\n", UnreadableAnswerError),
        (b'{"answer":{"rule":1}}\n', UnreadableAnswerError),
        (b'{"problem":{}}\n', UnreadableAnswerError),
    ],
)
def test_what_is_no_answer_is_an_error(ask: Ask, body: bytes, error: type[Exception]) -> None:
    def question(client: Any) -> Any:
        return client.takeoffs.create(demo_job(), progress=lambda _: None, retries=0)

    with pytest.raises(error):
        ask(in_turn(body), question)


def test_a_problem_is_shown_to_who_wants_the_response(ask: Ask) -> None:
    raw: list[httpx.Response] = []
    with pytest.raises(RefusedError) as caught:
        ask(
            in_turn(REFUSED),
            lambda client: client.takeoffs.create(demo_job(), progress=lambda _: None, on_response=raw.append),
        )
    assert raw == [caught.value.response]
    assert caught.value.problem.detail == "so"


def test_in_this_process_progress_comes_while_the_work_is_done(client: Client) -> None:
    told: Told = []
    job = sample.job(400, 1)
    found = client.takeoffs.create(job, progress=noted(told))
    assert found == client.takeoffs.create(job)
    assert told
    assert {of for stage, _, of in told if stage == "segments"} <= {400}


def test_awaited_in_this_process() -> None:
    async def run() -> tuple[Told, models.TakeoffAnswer]:
        told: Told = []
        async with AsyncClient.in_process() as client:
            return told, await client.takeoffs.create(sample.job(400, 1), progress=noted(told))

    told, found = asyncio.run(run())
    assert told
    assert len(found.result.segments) == 400


def test_who_fails_while_being_told_ends_the_call_and_the_client_goes_on(client: Client) -> None:
    def fail(_: models.Progress) -> None:
        raise KeyError("mine")

    with pytest.raises(KeyError, match="mine"):
        client.takeoffs.create(sample.job(400, 1), progress=fail)
    assert client.takeoffs.create(demo_job()).result.name


def test_what_is_refused_is_refused(client: Client) -> None:
    with pytest.raises(RefusedError):
        client.takeoffs.create({"name": "x"}, progress=lambda _: None)


def test_a_bar_for_each_stage(client: Client, capsys: pytest.CaptureFixture[str]) -> None:
    client.takeoffs.create(sample.job(400, 1), progress=True)
    told = capsys.readouterr().err
    assert "segments: " in told
    assert "/400" in told


# ---------------------------------------------------------------- the command line


class Terminal(io.StringIO):
    def isatty(self) -> bool:
        return True


def many(tmp_path: Any) -> str:
    path = tmp_path / "job.json"
    path.write_text(json.dumps(sample.job(400, 1)))
    return str(path)


@pytest.mark.parametrize("bar", ["tqdm", "its own"])
def test_a_person_at_a_terminal_sees_it(
    bar: str, tmp_path: Any, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    if bar != "tqdm":
        monkeypatch.setattr("importlib.util.find_spec", lambda _: None)
    terminal = Terminal()
    monkeypatch.setattr(sys, "stderr", terminal)
    assert main(["takeoff", many(tmp_path), "--json"]) == GOOD
    told = terminal.getvalue()
    assert "segments" in told
    assert "400" in told
    assert json.loads(capsys.readouterr().out)["rule"] == "takeoffs"


def test_a_file_or_a_pipe_gets_none_of_it(tmp_path: Any, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["takeoff", many(tmp_path), "--json"]) == GOOD
    with_none = capsys.readouterr()
    assert not with_none.err
    assert main(["check", str(DEMO)]) in (0, 1)
    assert not capsys.readouterr().err
