"""Example requests of the document, and the answers that the service gives to them today."""

from __future__ import annotations

import json
import tomllib
from functools import cache
from importlib.resources import files
from typing import TYPE_CHECKING, Any

from railrules_api.api.operations import Asked

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_api.api.operations import Operation
    from railrules_api.api.service import Service

_LONGEST_LIST = 2
"""Lists in an example answer are cut to this many items, so that the document stays readable."""
_DIGITS = 10
"""Digits of its numbers: machines differ in the last that the service sends, and the document is to be the same on all."""
_LIKE = {"createTakeoffs": "createTakeoff"}
"""Operations whose example is that of another one."""
_FIRST_IDS = {"rail-sections": "136RE"}


@cache
def requests() -> Mapping[str, Any]:
    """Return the example request of each operation, by operationId."""
    text = files("railrules_api").joinpath("data/examples.toml").read_text(encoding="utf-8")
    return tomllib.loads(text)


def example_request(operation: Operation) -> Any:  # noqa: ANN401  a JSON tree
    """Return the example request of an operation, one line of it where it takes a stream; None where it has none."""
    return requests().get(_LIKE.get(operation.id, operation.id))


def example_id(service: Service, operation: Operation) -> str:
    """Return an id that the operation knows, for the `{id}` in its path."""
    table = operation.path.split("/")[2]
    if table == "rules":
        return "thermal.force"
    return _FIRST_IDS.get(table) or next(iter(service.catalogue.tables[table].rows))


def _shortened(value: Any) -> Any:  # noqa: ANN401  a JSON tree
    if isinstance(value, dict):
        return {key: _shortened(item) for key, item in value.items()}
    if isinstance(value, list):
        return [_shortened(item) for item in value[:_LONGEST_LIST]]
    return float(f"{value:.{_DIGITS}g}") if isinstance(value, float) else value


def worked_answer(service: Service, operation: Operation) -> Any:  # noqa: ANN401  a JSON tree
    """Run an operation's example and return its answer, lists and numbers cut short; None where it has none."""
    if operation.answer is None:
        return None
    body = b""
    if operation.request is not None:
        example = example_request(operation)
        if example is None:
            return None
        body = json.dumps(example).encode()
    path = {"id": example_id(service, operation)} if "{id}" in operation.path else {}
    accept = next(form for form in operation.media_types if form.endswith("json"))
    reply = operation.handler(service, Asked(path, {}, body, accept))
    return _shortened(json.loads(reply.body.partition(b"\n")[0]))
