"""Costs as ratios to the floor, in one run, on CPU time; nothing here asserts a time.

The floor of a request is what it takes to read it and to write its answer: decode the body into the request struct, encode the
answer's struct again. Everything above the floor is ours.
"""

from __future__ import annotations

import copy
import json
import time
from collections.abc import Callable
from typing import Any

import msgspec

from railrules_api.api.calculations import answer, answer_struct, bind
from railrules_api.api.decoding import decode
from railrules_api.api.examples import requests
from railrules_api.api.resources import calculation_of, operations
from railrules_api.api.service import Service, start
from railrules_api.app.job_file import job
from tests.support.demo import DEMO

ROUNDS = 3


def cost(work: Callable[[], object]) -> float:
    """Return the least CPU time of a call over several rounds, each long enough to be measured [s]."""
    work()
    began = time.process_time()
    work()
    calls = max(1, int(0.05 / max(time.process_time() - began, 1e-6)))
    least = float("inf")
    for _ in range(ROUNDS):
        began = time.process_time()
        for _ in range(calls):
            work()
        least = min(least, (time.process_time() - began) / calls)
    return least


def line_of(segments: int) -> bytes:
    """Return a job of so many half-mile segments of plain line, one behind the other."""
    body: dict[str, Any] = job(DEMO)
    first = copy.deepcopy(body["segments"][0])
    first.pop("curves", None)
    first.pop("features", None)
    parts = []
    for position in range(segments):
        part = {**first, "name": f"segment {position + 1}"}
        part["begin"] = {"value": position / 2, "unit": "mi"}
        part["end"] = {"value": (position + 1) / 2, "unit": "mi"}
        parts.append(part)
    body["segments"] = parts
    return json.dumps(body).encode()


def ratio(service: Service, rule: str, body: bytes) -> tuple[float, float]:
    """Return the cost of a whole answer [s] and its ratio to the floor of the same bytes."""
    resource = calculation_of(rule)
    struct = answer_struct(resource, bind(resource, body, service), service)
    floor = cost(lambda: (decode(body, resource.request), msgspec.json.encode(struct)))
    whole = cost(lambda: answer(resource, body, service))
    return whole, whole / floor


def main() -> None:
    """Print the table and, as the last line, the same as JSON."""
    service = start()
    rows: list[tuple[str, float, float]] = []
    for segments in (1, 10, 100):
        whole, against_floor = ratio(service, "takeoffs", line_of(segments))
        rows.append((f"takeoff of {segments} segments, per segment", whole / segments, against_floor))
    for operation in operations():
        example = requests().get(operation.id)
        if operation.path.startswith("/v1/") and example is not None and operation.tag != "takeoffs":
            rule = operation.path.removeprefix("/v1/").replace("/", ".")
            try:
                calculation_of(rule)
            except KeyError:
                continue
            whole, against_floor = ratio(service, rule, json.dumps(example).encode())
            rows.append((rule, whole, against_floor))
    print(f"{'what':44}{'CPU us':>12}{'x floor':>10}")
    for name, whole, against_floor in rows:
        print(f"{name:44}{whole * 1e6:12.1f}{against_floor:10.2f}")
    print(json.dumps({name: round(against_floor, 3) for name, _, against_floor in rows}))


if __name__ == "__main__":
    main()
