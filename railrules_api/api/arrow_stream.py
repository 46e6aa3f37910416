"""Bulk takeoffs as Arrow: a stream of record batches with a column of jobs in, a stream of their totals out, batch by batch.

Read by the library that owns the format, and never trusted: nothing is read that is larger than a batch may be, compressed or
dictionary-encoded batches are refused, since both can stand for more than they hold, and every batch is validated in full before
anything looks into it. The library is an extra; without it the service answers 415.
"""

from __future__ import annotations

import asyncio
import importlib
import importlib.util
import struct
from functools import cache
from typing import TYPE_CHECKING, Any, Final

from railrules_api.api.arrow_schema import only_column
from railrules_api.api.calculations import Calculation
from railrules_api.api.problems import ProblemError
from railrules_api.api.replying import bind, worked

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from litestar.types import Receive

    from railrules_api.api.service import Service

MEDIA_TYPE: Final = "application/vnd.apache.arrow.stream"
COLUMN: Final = "job"
TEXTS: Final = ("item", "product", "direction", "kind")
SUMS: Final = ("net", "order", "mass")
LARGEST: Final = 2**24
"""Bytes of one batch at most, some 12,000 segments; a stream may have any number of them."""


def available() -> bool:
    """Tell whether the library is installed."""
    return importlib.util.find_spec("pyarrow") is not None


def library() -> Any:  # noqa: ANN401  the library, which is an extra
    """Return the library."""
    return importlib.import_module("pyarrow")


@cache
def schema() -> Any:  # noqa: ANN401  of pyarrow
    """Return the schema of totals: one row for each item and product of each job, in coherent SI; `kind` is empty for pieces."""
    arrow = library()
    return arrow.schema(
        [
            ("job", arrow.int64()),
            *((name, arrow.string()) for name in TEXTS),
            *((name, arrow.float64()) for name in SUMS),
            ("problem", arrow.string()),
        ]
    )


def totals(bodies: Iterable[bytes], resource: Calculation, service: Service, first: int = 0) -> Any:  # noqa: ANN401  of pyarrow
    """Take jobs off, and return a record batch of `schema()`; jobs are numbered from `first`."""
    rows: dict[str, list[Any]] = {name: [] for name in schema().names}
    for number, body in enumerate(bodies, first):
        for values in _rows(body, resource, service):
            for name, value in zip(rows, (number, *values), strict=True):
                rows[name].append(value)
    return library().RecordBatch.from_pydict(rows, schema=schema())


def _rows(body: bytes, resource: Calculation, service: Service) -> Iterator[tuple[Any, ...]]:
    try:
        found, _ = worked(resource, bind(resource, body, service), service)
    except ProblemError as problem:
        yield (*[None] * (len(TEXTS) + len(SUMS)), problem.detail)
        return
    for order in found.orders:
        kind = "" if order.net.kind is None else order.net.kind.value
        mass = order.order_mass if order.direction == "order" else order.net_mass
        yield order.item, order.product, order.direction, kind, order.net.value, order.order.value, mass, None


class Incoming:
    """Bytes as they come, to be read like a file by a thread that may wait."""

    closed = False

    def __init__(self, pull: Callable[[], bytes]) -> None:
        """Read from a function that gives the next bytes, none at the end."""
        self._pull = pull
        self._held = bytearray()

    def read(self, size: int = -1) -> bytes:
        """Return so many bytes, fewer at the end.

        Raises:
            ValueError: more are asked for at once than a batch may have.
        """
        if not 0 <= size <= LARGEST:
            raise ValueError(f"a batch is larger than {LARGEST} bytes")
        while len(self._held) < size and (more := self._pull()):
            self._held += more
        found = bytes(self._held[:size])
        del self._held[:size]
        return found


class _Outgoing:
    """What the library writes, until it is sent."""

    closed = False

    def __init__(self) -> None:
        self._parts: list[bytes] = []

    def write(self, data: Any) -> int:  # noqa: ANN401  bytes or a buffer of the library
        self._parts.append(bytes(data))
        return len(self._parts[-1])

    def flush(self) -> None:
        """Nothing waits anywhere else."""

    def taken(self) -> bytes:
        """Return what was written since the last time."""
        found = b"".join(self._parts)
        self._parts.clear()
        return found


def _compressed(metadata: bytes) -> bool:
    """Tell whether a record batch's message says that it is compressed: the fourth field of its header, if it has one."""
    (root,) = struct.unpack_from("<I", metadata, 0)
    (back,) = struct.unpack_from("<i", metadata, root)
    (header,) = struct.unpack_from("<H", metadata, root - back + 8)
    place = root + header
    place += struct.unpack_from("<I", metadata, place)[0]
    (back,) = struct.unpack_from("<i", metadata, place)
    (size,) = struct.unpack_from("<H", metadata, place - back)
    return size > 10 and bool(struct.unpack_from("<H", metadata, place - back + 10)[0])  # noqa: PLR2004  the first three end there


class Stream:
    """The answer to one stream; a thread of its own runs it."""

    def __init__(self, incoming: Incoming, resource: Calculation, service: Service) -> None:
        """Read the schema.

        Raises:
            ProblemError: it is no Arrow stream, or has not the one column of jobs.
        """
        arrow = library()
        self._faults = (arrow.ArrowException, ValueError, OSError, struct.error, UnicodeDecodeError)
        self._resource, self._service = resource, service
        try:
            self._messages = arrow.ipc.MessageReader.open_stream(arrow.PythonFile(incoming, mode="r"))
            name, kind = only_column(self._messages.read_next_message().metadata.to_pybytes())
        except (*self._faults, StopIteration) as error:
            if isinstance(error, ConnectionError):
                raise
            raise ProblemError(400, f"the body is no Arrow stream: {error}"[:300]) from error
        if name != COLUMN or not kind:
            raise ProblemError(
                400, f"the stream has to have one column, {COLUMN!r}, of texts: each the JSON of a takeoff request"
            )
        self._schema = arrow.schema([(COLUMN, getattr(arrow, kind)())])
        self._sink = _Outgoing()

    def run(self) -> Iterator[bytes]:
        """Yield the bytes of the answer, batch by batch; a batch that cannot be read ends it with a row that says why."""
        arrow = library()
        with arrow.ipc.new_stream(self._sink, schema()) as writer:
            job = 0
            while True:
                try:
                    bodies = self._next()
                except ConnectionError:
                    raise
                except self._faults as error:
                    said = {name: [None] for name in schema().names} | {
                        "problem": [f"the stream cannot be read on: {error}"[:300]]
                    }
                    writer.write_batch(arrow.RecordBatch.from_pydict(said, schema=schema()))
                    break
                if bodies is None:
                    break
                writer.write_batch(totals(bodies, self._resource, self._service, job))
                job += len(bodies)
                yield self._sink.taken()
        yield self._sink.taken()

    def _next(self) -> list[bytes] | None:
        arrow = library()
        try:
            message = self._messages.read_next_message()
        except StopIteration:
            return None
        if message.type != "record batch" or _compressed(message.metadata.to_pybytes()):
            raise ValueError("batches have to come as they are: neither compressed nor as dictionaries")
        batch = arrow.ipc.read_record_batch(message, self._schema)
        batch.validate(full=True)
        return [b"" if job is None else job if isinstance(job, bytes) else job.encode() for job in batch.column(0).to_pylist()]


def incoming_from(receive: Receive, loop: asyncio.AbstractEventLoop) -> Incoming:
    """Return the body of a request as a thread reads it; a caller who goes away is an error of the connection."""
    ended = False

    async def following() -> bytes:
        nonlocal ended
        while not ended:
            message: Any = await receive()
            if message["type"] == "http.disconnect":
                raise ConnectionResetError("the caller has gone away")
            ended = not message.get("more_body", False)
            if message.get("body"):
                found: bytes = message["body"]
                return found
        return b""

    return Incoming(lambda: asyncio.run_coroutine_threadsafe(following(), loop).result())
