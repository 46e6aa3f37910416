"""Bulk takeoffs as Arrow: the totals of the map over batches, and nothing but refusals for what is no good stream."""

from __future__ import annotations

import asyncio
import importlib
import io
import json
import random
import threading
from typing import Any

import pytest
from litestar import Litestar
from litestar.testing import TestClient

from railrules_api.api.arrow_stream import LARGEST, MEDIA_TYPE, Incoming
from railrules_api.api.bulk import PATH, Bulk
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service
from railrules_api.app import sample
from railrules_api.columns import schema, summed, takeoff_totals

arrow: Any = importlib.import_module("pyarrow")
HEADERS = {"Content-Type": MEDIA_TYPE}


@pytest.fixture(scope="module")
def jobs() -> list[str]:
    return [*(json.dumps(sample.job(1, seed)) for seed in range(5)), "{}"]


def written(jobs: list[Any], rows: int, kind: Any = None, options: Any = None) -> bytes:
    table = arrow.table({"job": arrow.array(jobs, kind or arrow.string())})
    sink = io.BytesIO()
    with arrow.ipc.new_stream(sink, table.schema, options=options) as writer:
        writer.write_table(table, max_chunksize=rows)
    return sink.getvalue()


def read(body: bytes) -> Any:
    return arrow.ipc.open_stream(body).read_all()


@pytest.mark.parametrize("rows", [1, 2, 6])
@pytest.mark.parametrize("kind", ["string", "large_string", "binary"])
def test_the_totals_are_those_of_the_map_however_the_rows_are_cut(
    http: TestClient[Litestar], jobs: list[str], rows: int, kind: str
) -> None:
    response = http.post(PATH, content=written(jobs, rows, getattr(arrow, kind)()), headers=HEADERS)
    assert response.status_code == 200
    assert response.headers["content-type"] == MEDIA_TYPE
    told = read(response.content)
    assert told.schema == schema()
    expected = takeoff_totals(arrow.record_batch({"job": jobs}))
    assert told.combine_chunks().to_batches()[0].equals(expected)
    assert summed(told.to_batches()) == summed([expected])
    assert "missing required" in told.column("problem")[-1].as_py()


def test_what_is_no_stream_of_jobs_is_refused(http: TestClient[Litestar], jobs: list[str]) -> None:
    other = io.BytesIO()
    with arrow.ipc.new_stream(other, arrow.schema([("length", arrow.float64())])):
        pass
    for body in (b"", b"nothing of the kind", jobs[0].encode(), other.getvalue()):
        response = http.post(PATH, content=body, headers=HEADERS)
        assert response.status_code == 400
        assert response.headers["content-type"] == "application/problem+json"
    assert http.post(PATH, content=written(jobs, 9), headers={**HEADERS, "Accept": "text/csv"}).status_code == 406


@pytest.mark.parametrize("codec", ["lz4", "zstd"])
def test_what_can_stand_for_more_than_it_holds_is_refused(http: TestClient[Litestar], jobs: list[str], codec: str) -> None:
    body = written(jobs * 50, 300, options=arrow.ipc.IpcWriteOptions(compression=codec))
    told = read(http.post(PATH, content=body, headers=HEADERS).content)
    assert told.num_rows == 1
    assert "neither compressed" in told.column("problem")[0].as_py()


def test_no_more_is_read_at_once_than_a_batch_may_have() -> None:
    with pytest.raises(ValueError, match="larger"):
        Incoming(lambda: b"").read(LARGEST + 1)
    chunks = iter([b"ab", b"c", b"defg", b""])
    incoming = Incoming(lambda: next(chunks))
    assert [incoming.read(3), incoming.read(3), incoming.read(3)] == [b"abc", b"def", b"g"]


def test_mangled_streams_end_in_a_refusal_and_never_in_a_failure(http: TestClient[Litestar], caplog: Any) -> None:
    chosen = random.Random(7)
    good = written(["{}", '{"name": 1}', "[]"] * 3, 2)
    ended = 0
    for _ in range(400):
        body = bytearray(good)
        for _ in range(chosen.choice((1, 1, 2, 8))):
            place = chosen.randrange(len(body))
            body[place] = chosen.choice((0, 255, 127, 128, chosen.randrange(256), body[place] ^ 1 << chosen.randrange(8)))
        if chosen.random() < 0.3:
            del body[chosen.randrange(len(body)) :]
        response = http.post(PATH, content=bytes(body), headers=HEADERS)
        assert response.status_code in {200, 400}
        if response.status_code == 200:
            told = read(response.content)
            told.validate(full=True)
            ended += "read on" in (told.column("problem").to_pylist() or [""])[-1]
    assert ended > 20
    assert not [record for record in caplog.records if record.levelname == "ERROR"]


def test_a_dropped_connection_leaves_nothing_behind(service: Service, jobs: list[str]) -> None:
    body = written(jobs, 2)
    before = threading.active_count()
    sent: list[Any] = []

    async def run() -> None:
        messages = iter([{"type": "http.request", "body": body[:-400], "more_body": True}, {"type": "http.disconnect"}])

        async def receive() -> Any:
            return next(messages)

        async def send(message: Any) -> None:
            sent.append(message)

        scope: Any = {"method": "POST", "headers": [(b"content-type", MEDIA_TYPE.encode())], "query_string": b""}
        await Bulk(calculation_of("takeoffs"), service, {})(scope, receive, send)
        assert len(asyncio.all_tasks()) == 1

    asyncio.run(run())
    assert all(message.get("more_body", True) for message in sent)
    assert threading.active_count() <= before


def test_a_caller_who_does_not_read_is_not_worked_for(service: Service, jobs: list[str]) -> None:
    """The second batch is not asked for while the first answer waits to be sent."""
    body = written(jobs * 4, 2)
    pulled: list[int] = []

    async def run() -> None:
        reading = asyncio.Event()

        async def receive() -> Any:
            await asyncio.sleep(0)
            start = len(pulled) * 2000
            pulled.append(start)
            return {"type": "http.request", "body": body[start : start + 2000], "more_body": start + 2000 < len(body)}

        async def send(message: Any) -> None:
            if message["type"] == "http.response.body":
                await reading.wait()

        scope: Any = {"method": "POST", "headers": [(b"content-type", MEDIA_TYPE.encode())], "query_string": b""}
        task = asyncio.create_task(Bulk(calculation_of("takeoffs"), service, {})(scope, receive, send))
        await asyncio.sleep(1.0)
        held = len(pulled)
        await asyncio.sleep(0.3)
        assert len(pulled) == held < len(body) / 2000 - 2
        reading.set()
        await task
        assert len(pulled) * 2000 >= len(body)

    asyncio.run(run())
