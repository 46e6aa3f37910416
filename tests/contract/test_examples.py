"""Every calculation has an example that runs, and what lies near it is answered as the document says or refused as a problem."""

from __future__ import annotations

import copy
import json
import random
from collections.abc import Iterator
from typing import Any

import jsonschema_rs
import msgspec
import pytest
from litestar import Litestar
from litestar.testing import TestClient

from railrules_api.api.examples import requests
from railrules_api.api.operations import Operation
from railrules_api.api.resources import operations

CALCULATIONS = [item for item in operations() if item.request is not None and item.request_media_type == "application/json"]
IDS = [operation.id for operation in CALCULATIONS]
SLOW = ("createTakeoff", "calculateSectionProperties", "calculateBuckling")
EXTREMES = (0.0, -1.0, 1e-9, 1e-3, 0.1, 0.5, 0.99, 1.01, 2.0, 10.0, 1e3, 1e6, 1e9, 1e15)


def test_every_calculation_has_an_example_and_no_example_is_left_over() -> None:
    assert sorted(requests()) == sorted(IDS)


def test_the_stream_takes_the_takeoff_s_example(http: TestClient[Litestar]) -> None:
    line = json.dumps(requests()["createTakeoff"]).encode() + b"\n"
    answer = http.post("/v1/takeoffs/bulk", content=line * 2, headers={"content-type": "application/x-ndjson"})
    assert answer.status_code == 200
    model = next(item.answer for item in operations() if item.id == "createTakeoffs")
    assert len([msgspec.json.decode(item, type=model) for item in answer.content.splitlines()]) == 3


@pytest.mark.parametrize("operation", CALCULATIONS, ids=IDS)
def test_the_example_runs_and_its_answer_is_of_the_schema(operation: Operation, http: TestClient[Litestar]) -> None:
    answer = http.post(operation.path, json=requests()[operation.id])
    assert answer.status_code == 200, answer.text
    assert operation.answer is not None
    found: Any = msgspec.json.decode(answer.content, type=operation.answer)
    assert found.sources
    assert found.rule


def _numbers(tree: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    if isinstance(tree, dict):
        for key, value in tree.items():
            yield from _numbers(value, (*path, key))
    elif isinstance(tree, list):
        for position, value in enumerate(tree):
            yield from _numbers(value, (*path, position))
    elif isinstance(tree, (int, float)) and not isinstance(tree, bool):
        yield path


def _changed(body: Any, path: tuple[Any, ...], factor: float) -> Any:
    body = copy.deepcopy(body)
    at = body
    for step in path[:-1]:
        at = at[step]
    value = at[path[-1]]
    at[path[-1]] = max(-1e15, min(1e15, value * factor if isinstance(value, float) else round(value * factor)))
    return body


def variants(operation: Operation, most: int, seed: int) -> list[Any]:
    """Return the example with one number, or two, put to an extreme; and each in both unit systems."""
    body, choice = requests()[operation.id], random.Random(seed)
    paths = list(_numbers(body))
    found = [_changed(body, path, factor) for path in paths for factor in EXTREMES]
    for _ in range(len(found) // 2):
        first, second = choice.choice(paths), choice.choice(paths)
        found.append(_changed(_changed(body, first, choice.choice(EXTREMES)), second, choice.choice(EXTREMES)))
    for one in found:
        one["units"] = choice.choice(["us", "si"])
    choice.shuffle(found)
    return [body, *found[: most - 1]]


def validator(document: dict[str, Any], name: str) -> Any:
    """Return a validator of one component schema of the document."""
    schema = {"$ref": f"#/components/schemas/{name}", "components": document["components"]}
    return jsonschema_rs.Draft202012Validator(schema, validate_formats=True)


@pytest.mark.parametrize("operation", CALCULATIONS, ids=IDS)
def test_what_lies_near_an_example_is_answered_as_the_document_says(
    operation: Operation, http: TestClient[Litestar], document: dict[str, Any]
) -> None:
    assert operation.answer is not None
    answers, problems = validator(document, operation.answer.__name__), validator(document, "Problem")
    good = 0
    for body in variants(operation, 15 if operation.id in SLOW else 80, seed=len(operation.id)):
        answer = http.post(operation.path, json=body)
        found = answer.json()
        if answer.status_code == 200:
            good += 1
            errors = [f"{list(error.instance_path)}: {error.message[:200]}" for error in answers.iter_errors(found)]
        else:
            assert answer.status_code == 422, (answer.status_code, json.dumps(body))
            errors = [error.message[:200] for error in problems.iter_errors(found)]
        assert not errors, (errors[:3], json.dumps(body))
    assert good
