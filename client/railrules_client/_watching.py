"""A call that tells how far it is: lines of progress, and the answer in the last of them."""

from __future__ import annotations

import time
import uuid
from typing import TYPE_CHECKING, Generic, cast

import anyio
import httpx
import msgspec
from msgspec import UNSET, Raw, Struct, UnsetType

from railrules_client._calls import Answer, CallOptions
from railrules_client._errors import ConnectionFailedError, ProblemError, RailrulesError, UnreadableAnswerError, problem_of
from railrules_client._generated.models import Progress
from railrules_client._retrying import wait_after
from railrules_client._sending import encoded

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_client._calls import AsyncCaller, Caller, Operation
    from railrules_client._generated.models import TakeoffLine
    from railrules_client._progress import Stages


class _Line(Struct):
    progress: Progress | UnsetType = UNSET
    answer: Raw | UnsetType = UNSET
    problem: Raw | UnsetType = UNSET


class _Status(Struct):
    status: int


_DECODER = msgspec.json.Decoder(_Line)
_STATUS = msgspec.json.Decoder(_Status)
_KEPT = ("x-request-id", "traceparent", "ratelimit", "ratelimit-policy")


class Watching(Generic[Answer]):
    """Reads the lines of one call, as often as it takes to have the last."""

    def __init__(self, operation: Operation[Answer], options: CallOptions, stages: Stages, retries: int) -> None:
        """Begin a call.

        Args:
            operation: the call in its usual form, as which the answer is read.
            options: settings of the call.
            stages: who is told how far it is.
            retries: how often it is repeated.
        """
        self.operation = operation
        self._options, self._stages, self._retries = options, stages, retries
        self._attempt = 0
        self._lines: httpx.Response | None = None
        self._whole: httpx.Response | None = None
        self.request_id = options.get("request_id") or uuid.uuid4().hex
        self.options: CallOptions = {**options, "request_id": self.request_id, "on_response": self._begun}

    def _begun(self, response: httpx.Response) -> None:
        self._lines = response

    def take(self, raw: bytes) -> None:
        """Take a line.

        Raises:
            UnreadableAnswerError: it is none.
        """
        try:
            line = _DECODER.decode(raw)
            if not isinstance(line.progress, UnsetType):
                self._stages.tell(line.progress)
            elif not isinstance(line.answer, UnsetType):
                self._whole = self._response(200, "application/json", line.answer)
            elif not isinstance(line.problem, UnsetType):
                self._whole = self._response(_STATUS.decode(line.problem).status, "application/problem+json", line.problem)
        except (msgspec.DecodeError, UnicodeDecodeError) as error:
            raise UnreadableAnswerError(f"a line of the answer is something else: {error}", self.request_id) from error

    def _response(self, status: int, media_type: str, content: Raw) -> httpx.Response:
        """Return what would have come if nobody had asked for progress."""
        lines = self._lines
        assert lines is not None
        headers = {name: value for name in _KEPT if (value := lines.headers.get(name)) is not None}
        return httpx.Response(
            status, headers={**headers, "content-type": media_type}, content=bytes(content), request=lines.request
        )

    def finish(self) -> Answer:
        """Return the answer.

        Raises:
            ConnectionFailedError: the last line has not come.
            ProblemError: it holds a problem.
            UnreadableAnswerError: it is something else than an answer.
        """
        if self._whole is None:
            raise ConnectionFailedError("the answer ended before its last line", self.request_id)
        if not self._whole.is_success:
            raise problem_of(self._whole, self.request_id)
        self._show(self._whole)
        try:
            return msgspec.json.decode(self._whole.content, type=self.operation.answer)
        except (msgspec.DecodeError, UnicodeDecodeError) as error:
            told = f"the last line is something else than a {self.operation.answer.__name__}: {error}"
            raise UnreadableAnswerError(told, self.request_id) from error

    def _show(self, response: httpx.Response) -> None:
        if "on_response" in self._options:
            self._options["on_response"](response)

    def wait_after(self, error: RailrulesError) -> float | None:
        """Return the seconds to wait before the call is repeated; None where the error stands."""
        outcome: object = error.response if isinstance(error, ProblemError) else error.__cause__
        if isinstance(error, ConnectionFailedError) and outcome is None:
            outcome = httpx.RemoteProtocolError("cut before the last line")
        wait = wait_after(cast("httpx.Response | httpx.RequestError", outcome), self._attempt, self._retries)
        self._attempt += 1
        self._whole = None
        if wait is None and isinstance(error, ProblemError):
            self._show(error.response)
        return wait


def watched(  # noqa: PLR0913, PLR0917  what a call is made of
    caller: Caller,
    operation: Operation[Answer],
    form: Operation[TakeoffLine],
    options: CallOptions,
    query: Mapping[str, object],
    body: object,
    stages: Stages,
) -> Answer:
    """Call an operation in the form that tells how far it is.

    Raises:
        RailrulesError: there is no answer, or it is a problem.
    """
    watching = Watching(operation, options, stages, options.get("retries", caller.retries))
    sent = body if isinstance(body, bytes) else encoded(body)
    try:
        while True:
            try:
                for raw in caller.lines(form, watching.options, query=query, body=sent):
                    watching.take(raw)
                return watching.finish()
            except RailrulesError as error:
                wait = watching.wait_after(error)
                if wait is None:
                    raise
                time.sleep(wait)
    finally:
        stages.close()


async def watched_async(  # noqa: PLR0913, PLR0917  what a call is made of
    caller: AsyncCaller,
    operation: Operation[Answer],
    form: Operation[TakeoffLine],
    options: CallOptions,
    query: Mapping[str, object],
    body: object,
    stages: Stages,
) -> Answer:
    """Like `watched`, awaited.

    Raises:
        RailrulesError: there is no answer, or it is a problem.
    """
    watching = Watching(operation, options, stages, options.get("retries", caller.retries))
    sent = body if isinstance(body, bytes) else encoded(body)
    try:
        while True:
            try:
                async for raw in caller.lines(form, watching.options, query=query, body=sent):
                    watching.take(raw)
                return watching.finish()
            except RailrulesError as error:
                wait = watching.wait_after(error)
                if wait is None:
                    raise
                await anyio.sleep(wait)
    finally:
        stages.close()
