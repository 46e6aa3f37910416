"""What is fuzzed besides text: the bytes of an Arrow stream of jobs, which a careless reader follows outside its memory."""

from __future__ import annotations

import io
from typing import TYPE_CHECKING

from railrules_api.api import arrow_stream
from railrules_api.api.problems import ProblemError
from tests.fuzz.edges import SMALL_JOB, light
from tests.fuzz.target import service

if TYPE_CHECKING:
    from collections.abc import Iterator


def one_arrow(data: bytes) -> None:
    """Answer bytes as an Arrow stream of jobs: a refusal with 400, or a whole stream of rows that are what they say."""
    body = io.BytesIO(data)
    refused: ProblemError | None = None
    told = b""
    try:
        told = b"".join(arrow_stream.Stream(arrow_stream.Incoming(lambda: body.read(1000)), light(), service()).run())
    except ProblemError as problem:
        refused = problem
    if refused is not None:
        assert refused.status == 400
        return
    table = arrow_stream.library().ipc.open_stream(told).read_all()
    table.validate(full=True)
    assert table.schema == arrow_stream.schema()


def arrow_seeds() -> Iterator[bytes]:
    """Return streams of jobs, good and bad, in one batch and in two, and what is none."""
    for jobs in ([SMALL_JOB], [b"{}", SMALL_JOB, b"\xff"], []):
        for kind in (arrow_stream.library().string(), arrow_stream.library().binary(), arrow_stream.library().large_string()):
            if b"\xff" in jobs and kind != arrow_stream.library().binary():
                continue
            sink = io.BytesIO()
            rows = [job if kind == arrow_stream.library().binary() else job.decode() for job in jobs]
            batch = arrow_stream.library().record_batch([arrow_stream.library().array(rows, kind)], names=[arrow_stream.COLUMN])
            with arrow_stream.library().ipc.new_stream(sink, batch.schema) as writer:
                writer.write_batch(batch)
                writer.write_batch(batch)
            yield sink.getvalue()
    yield b""
    yield SMALL_JOB
