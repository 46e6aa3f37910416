"""Streams of jobs: order, refusals, back-pressure, bounded memory, and what happens when a connection breaks."""

from __future__ import annotations

import asyncio
import contextlib
import hashlib
import json
import math
import socket
import threading
import tracemalloc
from collections import deque
from collections.abc import Iterable, Iterator
from typing import Any

import httpx
import pytest
from railrules_client import AsyncClient, Client, ConnectionFailedError, UnreadableAnswerError, _bulk_requests

from tests.contract.serving import running_service
from tests.support.demo import demo_job

BAD: dict[str, Any] = {"name": "no segments"}


@pytest.fixture(scope="module")
def job() -> dict[str, Any]:
    return demo_job()


@pytest.fixture(scope="module")
def client() -> Iterator[Client]:
    with Client.in_process() as found:
        yield found


class Service(httpx.BaseTransport):
    """Stands in for the service: refuses every job, quickly, and may break off after some lines of some answers."""

    def __init__(self, *cuts: int | None, tamper: bool = False) -> None:
        self.cuts = list(cuts)
        self.tamper = tamper
        self.asked: list[list[int]] = []

    def handle_request(self, request: httpx.Request) -> httpx.Response:
        jobs = [json.loads(line) for line in request.read().splitlines()]
        self.asked.append([job["number"] for job in jobs])
        told = b'{"line":%d,"problem":{"type":"about:blank","title":"job %d","status":422,"detail":""}}\n'
        lines = [told % (number, job["number"]) for number, job in enumerate(jobs, 1)]
        if request.url.params.get("answer") == "totals":
            lines = []
        digest = hashlib.sha256(b"".join(lines) + (b"x" if self.tamper else b"")).hexdigest()
        net = {"value": 0.1 * len(jobs), "unit": "ft"}
        total = {"item": "rail", "product": "", "direction": "order", "jobs": len(jobs), "net": net, "order": net}
        trailer = {
            "lines": len(jobs), "answered": 0, "refused": len(lines), "digest": f"sha-256:{digest}",
            "totals": [] if lines else [total], "versions": {"service": "9", "catalogue": "1", "rulebook": "1"},
        }  # fmt: skip
        lines.append(json.dumps({"trailer": trailer}).encode() + b"\n")
        cut = self.cuts.pop(0) if self.cuts else None
        return httpx.Response(200, stream=Lines(lines, cut))


class Lines(httpx.SyncByteStream):
    def __init__(self, lines: list[bytes], cut: int | None) -> None:
        self.lines, self.cut = lines, cut

    def __iter__(self) -> Iterator[bytes]:
        for number, line in enumerate(self.lines):
            if number == self.cut:
                yield line[:7]  # in the middle of a line
                raise httpx.ReadError("gone")
            yield line


def numbered(many: int) -> Iterable[dict[str, Any]]:
    return ({"number": number} for number in range(many))


def titles(answers: Iterable[_bulk_requests.JobAnswer]) -> list[str]:
    return [answer.problem.title for answer in answers if answer.problem is not None]


# ---------------------------------------------------------------- answers


def test_answers_come_in_the_order_of_the_jobs_and_equal_single_ones(client: Client, job: dict[str, Any]) -> None:
    one = client.takeoffs.create(job)
    run = client.takeoffs.stream([job, BAD, json.dumps(job), json.dumps(job).encode(), job], connections=3)
    found = list(run)
    assert [answer.number for answer in found] == [0, 1, 2, 3, 4]
    assert [answer.answer == one for answer in found] == [True, False, True, True, True]
    assert found[1].problem is not None
    assert found[1].problem.errors
    assert (run.done, run.refused, run.resumed) == (5, 1, 0)


def test_the_same_awaited_from_an_asynchronous_source(job: dict[str, Any]) -> None:
    async def jobs() -> Any:
        for item in (job, BAD, job):
            await asyncio.sleep(0)
            yield item

    async def run() -> list[_bulk_requests.JobAnswer]:
        async with AsyncClient.in_process() as client, client.takeoffs.stream(jobs()) as answers:
            return [answer async for answer in answers]

    found = asyncio.run(run())
    assert [answer.number for answer in found] == [0, 1, 2]
    assert [answer.answer is not None for answer in found] == [True, False, True]


def test_totals_are_those_of_the_answers(client: Client, job: dict[str, Any]) -> None:
    run = client.takeoffs.stream([job] * 3 + [BAD], totals_only=True, units="si")
    refused = list(run)
    assert [answer.number for answer in refused] == [3]
    orders = client.takeoffs.create({**job, "units": "si"}).result.orders
    assert {(total.item, total.product, total.jobs) for total in run.totals} == {
        (order.item, order.product, 3) for order in orders
    }
    by_item = {(total.item, total.product): total for total in run.totals}
    for order in orders:
        assert by_item[order.item, order.product].net.value == pytest.approx(3 * order.net.value, rel=1e-12)


def test_totals_of_several_requests_are_summed_exactly() -> None:
    with Client("http://service.example", transport=Service()) as client:
        run = client.takeoffs.stream(numbered(200), totals_only=True, connections=1)
        assert list(run) == []
        (total,) = run.totals
    assert total.jobs == 200
    assert total.net.value == math.fsum(0.1 * many for many in (64, 64, 64, 8))


# ---------------------------------------------------------------- broken connections


@pytest.mark.parametrize("connections", [1, 3])
def test_only_what_has_no_answer_is_sent_again(connections: int, waits: list[float]) -> None:
    service = Service(5, None, 20) if connections == 1 else Service(5)
    with Client("http://service.example", transport=service) as client:
        run = client.takeoffs.stream(numbered(100), connections=connections)
        assert titles(run) == [f"job {number}" for number in range(100)]
    assert run.resumed == len(waits) == (2 if connections == 1 else 1)
    if connections == 1:
        assert service.asked == [[*range(64)], [*range(5, 64)], [*range(64, 100)], [*range(84, 100)]]


def test_an_answer_without_its_trailer_was_cut(waits: list[float]) -> None:
    class Short(Service):
        def handle_request(self, request: httpx.Request) -> httpx.Response:
            response = super().handle_request(request)
            if len(self.asked) == 1:
                content = b"".join(response.stream)  # type: ignore[arg-type]
                return httpx.Response(200, content=b"".join(content.splitlines(keepends=True)[:4]))
            return response

    service = Short()
    with Client("http://service.example", transport=service) as client:
        assert titles(client.takeoffs.stream(numbered(10))) == [f"job {number}" for number in range(10)]
    assert service.asked == [[*range(10)], [*range(4, 10)]]
    assert len(waits) == 1


def test_progress_earns_new_attempts_and_standing_still_does_not(waits: list[float]) -> None:
    service = Service(*range(1, 9))  # each time a line or more gets through
    with Client("http://service.example", transport=service, retries=1) as client:
        assert len(titles(client.takeoffs.stream(numbered(60)))) == 60
    service = Service(0, 0, 0)
    with Client("http://service.example", transport=service, retries=1) as client, pytest.raises(ConnectionFailedError):
        list(client.takeoffs.stream(numbered(60)))
    assert len(service.asked) == 2
    assert waits


def test_totals_of_a_broken_request_are_asked_for_as_a_whole(waits: list[float]) -> None:
    service = Service(0)
    with Client("http://service.example", transport=service) as client:
        run = client.takeoffs.stream(numbered(10), totals_only=True)
        assert list(run) == []
    assert service.asked == [[*range(10)]] * 2
    assert run.totals[0].jobs == 10
    assert len(waits) == 1


def test_lines_that_are_not_those_vouched_for_are_no_answer() -> None:
    with (
        Client("http://service.example", transport=Service(tamper=True)) as client,
        pytest.raises(UnreadableAnswerError, match="vouches"),
    ):
        list(client.takeoffs.stream(numbered(3)))


@contextlib.contextmanager
def cutting_proxy(address: str, cuts: list[int]) -> Iterator[str]:
    """Stand between client and service on real sockets; end each connection after so many bytes of answers, while cuts last."""
    host, port = address.removeprefix("http://").split(":")
    listener = socket.create_server(("127.0.0.1", 0))
    left = list(cuts)

    def carry(source: socket.socket, target: socket.socket, most: int | None) -> None:
        carried = 0
        with contextlib.suppress(OSError):
            while chunk := source.recv(4096):
                target.sendall(chunk)
                carried += len(chunk)
                if most is not None and carried >= most:
                    break
        for end in (source, target):
            with contextlib.suppress(OSError):
                end.shutdown(socket.SHUT_RDWR)
            end.close()

    def serve() -> None:
        with contextlib.suppress(OSError):
            while True:
                near, _ = listener.accept()
                far = socket.create_connection((host, int(port)))
                most = left.pop(0) if left else None
                threading.Thread(target=carry, args=(near, far, None), daemon=True).start()
                threading.Thread(target=carry, args=(far, near, most), daemon=True).start()

    threading.Thread(target=serve, daemon=True).start()
    try:
        yield f"http://127.0.0.1:{listener.getsockname()[1]}"
    finally:
        listener.close()


def test_over_real_sockets_that_break_every_job_is_answered_once(job: dict[str, Any], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("railrules_client._retrying.FIRST_WAIT", 0.01)
    with running_service() as address, cutting_proxy(address, [150_000, 400_000]) as proxy:
        with Client(address) as direct:
            one = direct.takeoffs.create(job)
        with Client(proxy, headers={"Accept-Encoding": "identity"}) as client:
            run = client.takeoffs.stream((job for _ in range(60)), connections=2)
            found = list(run)
    assert [answer.number for answer in found] == [*range(60)]
    assert all(answer.answer == one for answer in found)
    assert run.resumed >= 2


# ---------------------------------------------------------------- bounded


def test_jobs_are_read_only_as_answers_are_taken() -> None:
    read = 0

    def jobs() -> Iterator[dict[str, Any]]:
        nonlocal read
        for item in numbered(100_000):
            read += 1
            yield item

    with Client("http://service.example", transport=Service()) as client, client.takeoffs.stream(jobs(), connections=2) as run:
        for taken, _ in enumerate(run, 1):
            assert read - taken <= 4 * _bulk_requests.MOST_JOBS
            if taken == 1000:
                break
    assert read < 1300


def test_a_request_holds_no_more_than_the_service_takes_in() -> None:
    batches = _bulk_requests.Batches()
    full = [batch for number in range(40) if (batch := batches.add({"number": number, "text": "x" * 5000})) is not None]
    assert all(batch.size <= _bulk_requests.LARGEST_REQUEST < 64 * 1024 for batch in full)
    assert batches.add({"text": "x" * 200_000}) is not None
    large = batches.end()
    assert large is not None
    assert len(large.lines) == 1


def peak(many: int) -> int:
    service = Service()
    service.asked = deque(maxlen=1)  # type: ignore[assignment]  # what the stand-in remembers is not the client's
    with Client("http://service.example", transport=service) as client:
        tracemalloc.start()
        count = sum(1 for _ in client.takeoffs.stream(numbered(many)))
        found = tracemalloc.get_traced_memory()[1]
        tracemalloc.stop()
    assert count == many
    return found


def test_memory_does_not_grow_with_the_number_of_jobs() -> None:
    peak(200)  # what is made once
    # ten thousand answers kept would take five megabytes and more; how far the threads get ahead takes a part of one
    assert peak(12_000) < peak(2_000) + 1_000_000


# ---------------------------------------------------------------- being told


def test_progress_is_told_to_a_function_or_shown_as_a_bar(capsys: pytest.CaptureFixture[str]) -> None:
    seen: list[int] = []
    with Client("http://service.example", transport=Service()) as client:
        list(client.takeoffs.stream(numbered(150), progress=seen.append))
        assert sum(seen) == 150
        list(client.takeoffs.stream(list(numbered(150)), progress=True))
    assert "150/150" in capsys.readouterr().err


@pytest.mark.parametrize("text", ["", "{\n}", b"\n"])
def test_text_that_is_not_one_line_is_no_job(text: str | bytes) -> None:
    with Client("http://service.example", transport=Service()) as client, pytest.raises(ValueError, match="one line"):
        list(client.takeoffs.stream([text]))


def test_at_least_one_connection() -> None:
    with Client("http://service.example", transport=Service()) as client, pytest.raises(ValueError, match="at least 1"):
        client.takeoffs.stream([], connections=0)
