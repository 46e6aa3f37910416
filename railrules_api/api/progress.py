"""An answer that tells how far it is: lines of JSON, progress while the work is done, and the answer or a problem at the end.

The work is done in a thread and is asked, a few times a second, how far it has come. A caller who goes away ends it: the next
time it tells, it is told to stop.
"""

from __future__ import annotations

import asyncio
import logging
import threading
import zlib
from typing import TYPE_CHECKING, Annotated, Any, Final, Literal, TypeAlias

import msgspec
from litestar.response import Response
from litestar.response.base import ASGIResponse
from msgspec import UNSET, Meta, UnsetType

from railrules_api.api import bulk
from railrules_api.api.envelope import Problem
from railrules_api.api.problems import ProblemError
from railrules_api.api.replying import answer_struct, bind

if TYPE_CHECKING:
    from collections.abc import Callable

    from litestar import Litestar, Request
    from litestar.types import Receive, Send

    from railrules_api.api.calculations import Calculation
    from railrules_api.api.service import Service
    from railrules_api.api.wire import StructType
    from railrules_api.domain.progress import Tell

    Work: TypeAlias = Callable[[Tell], bytes]

MEDIA_TYPE: Final = bulk.MEDIA_TYPE
_LOG = logging.getLogger("railrules")

EVERY: Final = 0.2
"""Seconds between two lines of progress."""
_GIVEN_UP: Final = ProblemError(503, "the service has given this answer up: it took too long, or the service is about to stop")
EXAMPLE: Final = '{"progress":{"stage":"segments","done":1132,"of":5000}}\n{"problem":' + _GIVEN_UP.body().decode() + "}\n"
_PIECE: Final = 256 * 1024
"""Bytes of a long answer that are handed on at once."""
_MOST: Final = 2**31


class Progress(msgspec.Struct, frozen=True, kw_only=True):
    """How far the work has come. A stage's steps are of one kind; nothing is said of how long the next of them takes."""

    stage: Annotated[
        Literal["segments", "rail", "stability", "bill", "answer", "explanation"],
        Meta(
            description=(
                "What is being worked: the rules of each segment; the layout of strings, stretch by stretch, once for each rail "
                "and track; the buckling of each segment's track; the bill added up; the answer written down; the formulas with "
                "their numbers."
            )
        ),
    ]
    done: Annotated[int, Meta(ge=0, lt=_MOST, description="Steps of the stage that are done.")]
    of: Annotated[int, Meta(ge=0, lt=_MOST, description="Steps that it has.")]


def line_type(resource: Calculation) -> StructType:
    """Return the schema of a line: progress, or in the last line the answer or a problem."""
    return msgspec.defstruct(
        "TakeoffLine",
        [
            ("progress", Annotated[Progress, Meta(description="How far the work has come.")] | UnsetType, UNSET),
            ("answer", Annotated[resource.answer, Meta(description="The answer, in the last line.")] | UnsetType, UNSET),
            ("problem", Annotated[Problem, Meta(description="Why there is none, in the last line.")] | UnsetType, UNSET),
        ],
        namespace={
            "__doc__": (
                "A line of an answer that tells how far it is: `progress` a few times a second while the job is worked, and in "
                "the last line the `answer`, or the `problem` that a rule found. Without such a last line it was cut."
            )
        },
        module=__name__,
        frozen=True,
        kw_only=True,
    )


class StoppedError(Exception):
    """The caller has gone, so the work is given up."""


class Running:
    """What the thread that works and the loop that tells have between them."""

    def __init__(self) -> None:
        """Begin with nothing told."""
        self._latest: tuple[str, int, int] | None = None
        self._told: tuple[str, int, int] | None = None
        self._stopped = threading.Event()

    def tell(self, stage: str, done: int, of: int) -> None:
        """Keep how far the work has come.

        Raises:
            StoppedError: nobody waits for it any more.
        """
        if self._stopped.is_set():
            raise StoppedError
        self._latest = (stage, done, of)

    def stop(self) -> None:
        """Have the work given up the next time that it tells."""
        self._stopped.set()

    def line(self) -> bytes:
        """Return a line of progress; nothing where there was none since the last."""
        latest = self._latest
        if latest is None or latest == self._told:
            return b""
        self._told = latest
        return b'{"progress":{"stage":"%b","done":%d,"of":%d}}\n' % (latest[0].encode(), latest[1], latest[2])


def work_of(resource: Calculation, body: bytes, service: Service) -> Work:
    """Bind a request; return the work that answers it and ends with the last line.

    Raises:
        ProblemError: the request is malformed, or refused before anything is worked.
    """
    bound = bind(resource, body, service)

    def work(tell: Tell) -> bytes:
        try:
            return b'{"answer":%b}\n' % msgspec.json.encode(answer_struct(resource, bound, service, tell))
        except ProblemError as problem:
            return b'{"problem":%b}\n' % problem.body()
        except StoppedError:
            raise
        except Exception as error:  # noqa: BLE001  the answer has begun, so the caller is told in its last line
            _LOG.error("unhandled error in a takeoff that tells its progress", exc_info=error)
            return b'{"problem":%b}\n' % ProblemError(500, "the service failed on this request; the fault is ours").body()

    return work


async def _gone(receive: Receive) -> None:
    """Return when the caller has gone away."""
    while (await receive())["type"] != "http.disconnect":
        pass


async def send_lines(work: Work, receive: Receive, send: Send, *, coded: bool = False, every: float = EVERY) -> None:
    """Do the work in a thread and send lines: progress while it lasts, then the line that ends it.

    Args:
        work: what is done; it is told whom to tell, and returns the last line.
        receive: of ASGI.
        send: of ASGI; the response has begun.
        coded: squeeze the lines by gzip, each so that it can be read when it comes.
        every: seconds between two lines of progress.
    """
    squeezer = zlib.compressobj(level=1, wbits=31) if coded else None

    async def give(body: bytes, *, more: bool = True) -> None:
        if squeezer is not None:
            body = squeezer.compress(body) + squeezer.flush(zlib.Z_SYNC_FLUSH if more else zlib.Z_FINISH)
        await send({"type": "http.response.body", "body": body, "more_body": more})

    running = Running()
    task = asyncio.ensure_future(asyncio.to_thread(work, running.tell))
    gone = asyncio.ensure_future(_gone(receive))
    try:
        while not task.done():
            await asyncio.wait((task, gone), timeout=every, return_when=asyncio.FIRST_COMPLETED)
            if gone.done():
                return
            line = b"" if task.done() else running.line()
            if line:
                await give(line)
        last = task.result()
        for first in range(0, len(last), _PIECE):
            await give(last[first : first + _PIECE])
        await give(b"", more=False)
    except asyncio.CancelledError:
        await give(b'{"problem":%b}\n' % _GIVEN_UP.body(), more=False)
        raise
    finally:
        gone.cancel()
        # a thread cannot be cut off: its turn is over when it has heard that it is to stop
        running.stop()
        await asyncio.wait((task,))
        task.exception()


class LinesResponse(Response[bytes]):
    """A response of lines that tell how far the work has come, as the framework wants it."""

    def __init__(self, work: Work, *, media_type: str, headers: dict[str, str], coded: bool) -> None:
        """Answer with the lines of some work."""
        super().__init__(b"", media_type=media_type, headers=headers)
        self.work, self.coded = work, coded

    def to_asgi_response(self, app: Litestar | None, request: Request[Any, Any, Any], **_: Any) -> ASGIResponse:  # noqa: ANN401, ARG002  the framework's own
        """Return what the framework sends."""
        headers = {**self.headers, **({"content-encoding": "gzip"} if self.coded else {})}
        return _Sending(self.work, coded=self.coded, media_type=self.media_type, headers=headers)


class _Sending(ASGIResponse):
    _should_set_content_length = False

    def __init__(self, work: Work, *, coded: bool, media_type: str | None, headers: dict[str, str]) -> None:
        super().__init__(media_type=media_type, headers=headers)
        self.work, self.coded = work, coded

    async def send_body(self, send: Send, receive: Receive) -> None:
        """Do the work and send its lines."""
        await send_lines(self.work, receive, send, coded=self.coded, every=EVERY)
