"""Problems become typed errors that carry the whole problem."""

from __future__ import annotations

import pickle
from typing import TYPE_CHECKING

import httpx
import pytest
from generator.resources import ERRORS
from railrules_client import (
    ConnectionFailedError,
    NotFoundError,
    ProblemError,
    RailrulesError,
    RefusedError,
    ServiceFailedError,
    TimedOutError,
    UnavailableError,
    UnreadableAnswerError,
    models,
)
from railrules_client._errors import BY_STATUS

from tests.client.answers import REFUSAL, problem, told

if TYPE_CHECKING:
    from tests.client.conftest import Ask


def test_a_refusal_tells_everything_that_is_wrong(ask: Ask) -> None:
    with pytest.raises(RefusedError) as caught:
        ask(lambda _: told(422, REFUSAL), lambda client: client.thermal.force({}, request_id="call-8"))
    error = caught.value
    assert (error.status, error.request_id, error.problem.type) == (422, "call-8", "/problems/refused")
    area, book = error.faults
    assert (area.pointer, area.value, area.minimum, area.unit) == ("/area", '{"value":1,"unit":"in2"}', 2.5, "in2")
    assert book.allowed == ["house", "handbook"]
    assert str(error) == (
        "422 Refused\n"
        '  /area: too small (sent {"value":1,"unit":"in2"}); wanted at least 2.5 in2\n'
        '  /rulebook/id: no such rulebook (sent "mine"); wanted one of house, handbook (request call-8)'
    )
    assert error.response.headers["content-type"] == "application/problem+json"


@pytest.mark.parametrize("status", sorted(BY_STATUS))
def test_every_status_has_its_error(ask: Ask, status: int) -> None:
    with pytest.raises(BY_STATUS[status]) as caught:
        ask(lambda _: problem(status), lambda client: client.rail_sections.get("x"), retries=0)
    assert type(caught.value) is BY_STATUS[status]
    assert caught.value.faults == ()


@pytest.mark.parametrize(
    ("status", "kind"), [(418, ProblemError), (302, ProblemError), (502, ServiceFailedError), (599, ServiceFailedError)]
)
def test_a_status_without_an_error_of_its_own(ask: Ask, status: int, kind: type[ProblemError]) -> None:
    with pytest.raises(kind) as caught:
        ask(lambda _: problem(status), lambda client: client.rail_sections.get("x"), retries=0)
    assert type(caught.value) is kind


def test_a_page_of_something_between_is_told_as_a_problem(ask: Ask) -> None:
    page = httpx.Response(503, content=b"<html>come\nback later</html>", headers={"Content-Type": "text/html"})
    with pytest.raises(UnavailableError, match="503 Service Unavailable: <html>come back later</html>"):
        ask(lambda _: page, lambda client: client.rail_sections.get("x"), retries=0)


@pytest.mark.parametrize(
    ("failure", "kind"),
    [
        (httpx.ConnectError("refused"), ConnectionFailedError),
        (httpx.ConnectTimeout("slow"), ConnectionFailedError),
        (httpx.RemoteProtocolError("closed"), ConnectionFailedError),
        (httpx.ReadTimeout(""), TimedOutError),
        (httpx.DecodingError("bad gzip"), UnreadableAnswerError),
    ],
    ids=lambda item: item.__name__ if isinstance(item, type) else type(item).__name__,
)
def test_a_broken_connection_is_told_with_address_and_cause(ask: Ask, failure: Exception, kind: type[RailrulesError]) -> None:
    def handler(_: httpx.Request) -> httpx.Response:
        raise failure

    with pytest.raises(kind, match=r"http://service.example, after attempt 1 \(request") as caught:
        ask(handler, lambda client: client.rail_sections.get("x"), retries=0)
    assert caught.value.__cause__ is failure


def test_errors_travel_between_processes() -> None:
    response = told(404, {"type": "/problems/not-found", "title": "None", "status": 404, "detail": "near: 136RE"})
    error = NotFoundError(models.Problem(type="/problems/not-found", title="None", status=404, detail="near"), response, "call-9")
    copy = pickle.loads(pickle.dumps(error))
    assert (type(copy), copy.problem, copy.request_id, str(copy)) == (NotFoundError, error.problem, "call-9", str(error))
    plain = pickle.loads(pickle.dumps(TimedOutError("late", "call-10")))
    assert str(plain) == "late (request call-10)"


def test_docstrings_name_the_errors_that_are_raised() -> None:
    assert {status: kind.__name__ for status, kind in BY_STATUS.items()} == ERRORS
