"""What is fuzzed besides bodies: header fields and queries, the lines of a stream, and the bytes of a connection."""

from __future__ import annotations

import asyncio
import hashlib
import json
import re
from dataclasses import replace
from functools import cache
from typing import TYPE_CHECKING, Any

from railrules_api.api import bulk, bulk_run, coding, headers
from railrules_api.api.calculations import Calculation
from railrules_api.api.edge import request_id_of, traceparent_of
from railrules_api.api.problems import ProblemError
from railrules_api.api.replying import bind, worked
from railrules_api.api.resources import calculation_of
from railrules_api.app.serving import keys
from railrules_api.app.serving.board import Board
from railrules_api.app.serving.protocol import GuardedConfig, GuardedProtocol
from railrules_api.app.serving.settings import ServerSettings
from tests.fuzz.target import service
from tests.hostile.reading import entry_of, names, raw_of

if TYPE_CHECKING:
    from collections.abc import Iterator

_OFFERED = ("application/json", "text/csv", "image/svg+xml")
_ID, _TRACE = re.compile(rb"[A-Za-z0-9._-]{1,64}"), re.compile(rb"00-[0-9a-f]{32}-[0-9a-f]{16}-0[01]")
LONGEST_SEED = 4096

# ---------------------------------------------------------------- header fields and queries


@cache
def _known() -> dict[str, keys.Key]:
    return {"a": keys.Key("a", "0" * 64, 600, open=True, place=0)}


def one_header(data: bytes) -> None:
    """Read bytes as every header field that decides something, and as a query."""
    text = data.decode("latin-1")
    assert headers.accepted(text, _OFFERED) in (None, *_OFFERED)
    assert isinstance(coding.takes_gzip(text), bool)
    tags = [tag.strip() for tag in text.split(",")]
    assert headers.etag_matches(text, '"a"') is (tags == ["*"] or not {'"a"', 'W/"a"'}.isdisjoint(tags))
    assert ";" not in headers.media_type_of(text)
    assert _ID.fullmatch(request_id_of(data))
    assert _TRACE.fullmatch(traceparent_of(data))
    assert keys.recognised(data, _known()) is None
    scope: Any = {"method": "POST", "headers": [(b"content-type", b"application/x-ndjson")], "query_string": data}
    refused: ProblemError | None = None
    try:
        bulk._check(scope)  # noqa: SLF001  the one reader of queries that stands alone
    except ProblemError as problem:
        refused = problem
    assert refused is None or json.loads(refused.body())["status"] == 400


def header_seeds() -> Iterator[bytes]:
    """Return fields as callers send them."""
    yield from (
        b"text/csv;q=0.9, application/*, */*;q=0.1", b"gzip, br;q=0, identity;q=0.5", b'W/"a", "b"', b"*",
        b"application/json; charset=utf-8", b"00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01",
        b"Bearer rr_a_secret", b"answer=totals&units=si", b"answer=totals&answer=totals", b"%61nswer=%74otals&x=", b"",
    )  # fmt: skip


# ---------------------------------------------------------------- the lines of a stream

SMALL_JOB = (
    b'{"name":"a","temperatures":{"hottest_rail":{"value":126,"unit":"degF"},"coldest_rail":{"value":4,"unit":"degF"}},'
    b'"supply":{"tie_in":"compromise-weld","fixed_tie_in":"compromise-weld","string":{"stock":[{"length":'
    b'{"value":80,"unit":"ft"},"count":20}]}},"segments":[{"name":"b","begin":{"value":12,"unit":"mi"},"end":{"value":13,'
    b'"unit":"mi"},"rails":"both","ties":{"spacing":{"value":19.5,"unit":"in"}},"old":{"section":"90RA-A"},'
    b'"new":{"section":"115RE","plates":"new"}}]}'
)
"""The least that a job must say."""


@cache
def light() -> Calculation:
    """Return the takeoff with its answer ready: lines are read and jobs bound as ever, but nothing is taken off.

    The lists of the answer are cut to two, so that the search spends its time on what is read, not on what is written.
    """
    resource = calculation_of("takeoffs")
    found, _ = worked(resource, bind(resource, SMALL_JOB, service()), service())
    short = {name: getattr(found, name)[:2] for name in ("orders", "lines", "without_mass")}
    left_out = dict.fromkeys(("segments", "rail", "safety", "checks"), ())
    ready = replace(found, **short, **left_out)
    return replace(resource, rule=replace(resource.rule, evaluate=lambda _given: ready))


def one_stream(data: bytes) -> None:
    """Answer bytes as a stream of jobs, whole and cut at a place that the first two bytes choose: the same lines, all of JSON."""
    chosen, body = int.from_bytes(data[:2], "big"), data[2:]
    cut, totals_only = chosen % (len(body) + 1), bool(chosen & 0x8000)
    whole, pieces = bulk_run.Lines(2048), bulk_run.Lines(2048)
    lines = [*whole.feed(body), *whole.end()]
    assert lines == [*pieces.feed(body[:cut]), *pieces.feed(body[cut:]), *pieces.end()]
    run = bulk_run.Run(light(), service(), totals_only=totals_only)
    told = run.work(lines)
    answers = [json.loads(line) for line in told.splitlines()]
    numbers = [answer["line"] for answer in answers]
    problems = [answer["problem"]["status"] for answer in answers if "problem" in answer]
    assert numbers == sorted(set(numbers))
    assert set(numbers) <= {number for number, _ in lines}
    assert len(numbers) == (len(problems) if totals_only else len(lines))
    assert set(problems) <= {400, 413, 422}
    trailer = json.loads(run.trailer())["trailer"]
    assert trailer["lines"] == len(lines) == trailer["answered"] + trailer["refused"]
    assert trailer["refused"] == len(problems)
    assert trailer["digest"] == f"sha-256:{hashlib.sha256(told).hexdigest()}"
    assert bool(trailer["totals"]) is (totals_only and trailer["answered"] > 0)


def stream_seeds() -> Iterator[bytes]:
    """Return streams of short lines, good and bad, answered whole and by totals alone."""
    bad = b'{"name":"a","segments":[]}'
    yield from (
        b"\x00\x05" + bad + b"\n" + bad,
        b"\x00\x20" + SMALL_JOB + b"\r\n" + bad + b"\n" + SMALL_JOB + b"\n",
        b"\x80\x20" + SMALL_JOB + b"\n\n" + SMALL_JOB,
        b"\x00\x00\n\r\n \n{}\n[1]\n\xff\n",
        b"\x00\x09" + b"[" * 3000 + b"\n{}",
        b"\x00\x00",
    )


# ---------------------------------------------------------------- the bytes of a connection


class _Transport(asyncio.Transport):
    """Keeps what is written."""

    def __init__(self) -> None:
        super().__init__()
        self.written = b""
        self.closing = False

    def write(self, data: Any) -> None:
        self.written += bytes(data)

    def close(self) -> None:
        self.closing = True

    abort = close

    def is_closing(self) -> bool:
        return self.closing

    def get_extra_info(self, name: str, default: Any = None) -> Any:
        return ("127.0.0.1", 1) if name in ("sockname", "peername") else default

    def pause_reading(self) -> None: ...
    def resume_reading(self) -> None: ...
    def set_write_buffer_limits(self, high: int | None = None, low: int | None = None) -> None: ...


async def _echo(scope: Any, receive: Any, send: Any) -> None:
    """Read the whole body and answer, as the gate does."""
    assert scope["type"] == "http"
    more = True
    while more:
        message = await receive()
        if message["type"] == "http.disconnect":
            return
        more = message["more_body"]
    await send({"type": "http.response.start", "status": 200, "headers": [(b"content-length", b"0")]})
    await send({"type": "http.response.body", "body": b""})


@cache
def _loop() -> asyncio.AbstractEventLoop:
    return asyncio.new_event_loop()


@cache
def _config() -> GuardedConfig:
    settings = ServerSettings(max_url_bytes=256, max_header_bytes=1024, max_header_fields=10)
    config = GuardedConfig(_echo, settings, Board(1, ()).part(0), ws="none", lifespan="off", log_config=None, access_log=False)
    config.load()
    return config


async def _spoken(data: bytes) -> bytes:
    from uvicorn.server import ServerState  # noqa: PLC0415  the server's own, wanted here only

    state = ServerState()
    protocol = GuardedProtocol(config=_config(), server_state=state, app_state={}, _loop=asyncio.get_running_loop())
    transport = _Transport()
    protocol.connection_made(transport)
    cut = len(data) // 2
    protocol.data_received(data[:cut])
    await asyncio.sleep(0)
    protocol.data_received(data[cut:])
    for _ in range(4):
        await asyncio.sleep(0)
    protocol.connection_lost(None)
    await asyncio.gather(*state.tasks)
    return transport.written


def one_connection(data: bytes) -> None:
    """Speak bytes to the server: it answers with whole answers of known statuses, or waits, and never raises."""
    written = _loop().run_until_complete(_spoken(data))
    for answer in written.split(b"HTTP/1.1 ")[1:]:
        assert answer[:3] in (b"200", b"400", b"414", b"431", b"100"), answer[:200]


def connection_seeds() -> Iterator[bytes]:
    """Return the short ones of the hostile corpus, as they go over a socket, and a good one."""
    yield b"GET /a HTTP/1.1\r\nHost: a\r\n\r\n" * 2
    yield b"POST /a HTTP/1.1\r\nHost: a\r\nTransfer-Encoding: chunked\r\n\r\n3\r\nabc\r\n0\r\n\r\n"
    for name in names(raw=True):
        entry = entry_of(name)
        if len(entry.raw) <= LONGEST_SEED:
            yield raw_of(entry)
