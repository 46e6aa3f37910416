"""What can go wrong, as exceptions: one class a status, each with the whole problem as the service told it."""

from __future__ import annotations

from http import HTTPStatus
from typing import TYPE_CHECKING

import msgspec
from msgspec import UNSET

from railrules_client._generated.models import Fault, Problem

if TYPE_CHECKING:
    import httpx

_SHOWN_FAULTS = 20
_SHOWN_TEXT = 300


class RailrulesError(Exception):
    """Anything that keeps a call from being answered.

    Attributes:
        request_id: name of the call in the logs of both sides; empty where there was no call.
    """

    def __init__(self, message: str, request_id: str = "") -> None:
        """Tell what went wrong."""
        super().__init__(message, request_id)
        self.message: str = message
        self.request_id: str = request_id

    def __str__(self) -> str:
        return f"{self.message} (request {self.request_id})" if self.request_id else self.message


class ConnectionFailedError(RailrulesError):
    """The service could not be reached, or the connection broke."""


class TimedOutError(RailrulesError):
    """The service did not answer in time."""


class UnreadableAnswerError(RailrulesError):
    """The answer is not what the OpenAPI document says: something between, or the service is older than the client."""


class InProcessError(RailrulesError):
    """The service cannot run inside this process; the message says what to do."""


class ProblemError(RailrulesError):
    """The service answered with a problem (RFC 9457).

    Attributes:
        problem: the problem as it was told.
        response: the raw response.
        request_id: name of the call in the logs of both sides.
    """

    def __init__(self, problem: Problem, response: httpx.Response, request_id: str = "") -> None:
        """Tell a problem."""
        super().__init__(_told(problem), request_id)
        self.problem: Problem = problem
        self.response: httpx.Response = response

    def __reduce__(self) -> tuple[type[ProblemError], tuple[Problem, httpx.Response, str]]:
        """Travel between processes whole."""
        return type(self), (self.problem, self.response, self.request_id)

    @property
    def status(self) -> int:
        """HTTP status of the response."""
        return self.response.status_code

    @property
    def faults(self) -> tuple[Fault, ...]:
        """Everything found wrong with the request: pointer, detail, value, allowed range."""
        return () if self.problem.errors is UNSET else tuple(self.problem.errors)


class BadRequestError(ProblemError):
    """400: the request is malformed."""


class UnauthorizedError(ProblemError):
    """401: a key is wanted."""


class ForbiddenError(ProblemError):
    """403: the key does not open this."""


class NotFoundError(ProblemError):
    """404: there is no such resource or row; near matches stand in the detail."""


class MethodNotAllowedError(ProblemError):
    """405: the service is of another version than the client."""


class NotAcceptableError(ProblemError):
    """406: the service has no answer of the form that was asked for."""


class TooLargeError(ProblemError):
    """413: the request is larger than the service reads."""


class UnsupportedMediaTypeError(ProblemError):
    """415: the service does not read requests of this type."""


class RefusedError(ProblemError):
    """422: the request is understood but its values are refused; `faults` says which and what would do."""


class TooManyRequestsError(ProblemError):
    """429: too many requests, still after the last repetition."""


class ServiceFailedError(ProblemError):
    """5xx: the service failed; the fault is not the caller's."""


class UnavailableError(ServiceFailedError):
    """503: the service cannot take the request now, still after the last repetition."""


BY_STATUS: dict[int, type[ProblemError]] = {
    400: BadRequestError,
    401: UnauthorizedError,
    403: ForbiddenError,
    404: NotFoundError,
    405: MethodNotAllowedError,
    406: NotAcceptableError,
    413: TooLargeError,
    415: UnsupportedMediaTypeError,
    422: RefusedError,
    429: TooManyRequestsError,
    500: ServiceFailedError,
    503: UnavailableError,
}


def _range(fault: Fault) -> str:
    unit = "" if fault.unit is UNSET else f" {fault.unit}"
    parts: list[str] = []
    if fault.minimum is not UNSET:
        parts.append(f"at least {fault.minimum:.12g}{unit}")
    if fault.maximum is not UNSET:
        parts.append(f"at most {fault.maximum:.12g}{unit}")
    if fault.allowed is not UNSET:
        parts.append(f"one of {', '.join(fault.allowed)}"[:_SHOWN_TEXT])
    return " and ".join(parts)


def told(fault: Fault, place: str = "") -> str:
    """Return a fault as people read it: its place, what is wrong, what was sent, what would do."""
    sent = "" if fault.value is UNSET else f" (sent {fault.value})"
    wanted = _range(fault)
    return f"{place or fault.pointer or 'body'}: {fault.detail}{sent}{f'; wanted {wanted}' if wanted else ''}"


def _told(problem: Problem) -> str:
    """Return a problem as people read it: the first line says it, then comes a line a fault."""
    faults = [] if problem.errors is UNSET else problem.errors
    lines = [f"{problem.status} {problem.title}"] if faults else [f"{problem.status} {problem.title}: {problem.detail}"]
    lines += [f"  {told(fault)}" for fault in faults[:_SHOWN_FAULTS]]
    if len(faults) > _SHOWN_FAULTS:
        lines.append(f"  and {len(faults) - _SHOWN_FAULTS} more")
    return "\n".join(lines)


def problem_of(response: httpx.Response, request_id: str) -> ProblemError:
    """Return the error for a response that is not an answer."""
    status = response.status_code
    try:
        problem = msgspec.json.decode(response.content, type=Problem)
    except (msgspec.DecodeError, UnicodeDecodeError):  # a proxy's page, or nothing
        try:
            title = HTTPStatus(status).phrase
        except ValueError:
            title = "Not an answer"
        detail = " ".join(response.text[:_SHOWN_TEXT].split()) or "no further explanation"
        problem = Problem(type="about:blank", title=title, status=status, detail=detail)
    usual = ServiceFailedError if status >= HTTPStatus.INTERNAL_SERVER_ERROR else ProblemError
    return BY_STATUS.get(status, usual)(problem, response, request_id)
