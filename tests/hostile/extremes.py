"""Good requests with some of their numbers replaced by extreme ones: at the limits of the schema, and far beyond."""

from __future__ import annotations

import copy
import json
import math
import tomllib
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

from railrules_api.api.examples import requests
from railrules_api.api.operations import Asked
from railrules_api.api.problems import ProblemError
from railrules_api.api.resources import calculations, operations
from railrules_api.domain.fields import slots_of
from railrules_api.rules.registry import BY_ID
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.api.service import Service
    from railrules_api.domain.fields import Slot

Path_ = tuple[str | int, ...]
FAR = (
    0.0,
    -0.0,
    5e-324,
    -5e-324,
    2.2250738585072014e-308,
    1e-300,
    1e-15,
    1e-9,
    -1.0,
    1e9,
    1e15,
    -1e15,
    1e16,
    1e154,
    1.7976931348623157e308,
    -1.7976931348623157e308,
    2.0**53,
    2.0**63,
)


@cache
def examples() -> tuple[tuple[str, dict[str, Any]], ...]:
    """Return (rule, body) of every good request we have: the document's examples and the check cases."""
    found = [(resource.rule.id, requests()[operation.id]) for resource, operation in _calculating() if operation.id in requests()]
    for file in sorted((Path(__file__).parents[1] / "checks").glob("*.toml")):
        found += [(case["rule"], case["inputs"]) for case in tomllib.loads(file.read_text())["case"]]
    return tuple(found)


@cache
def _calculating() -> tuple[tuple[Any, Any], ...]:
    by_path = {operation.path: operation for operation in operations()}
    return tuple((resource, by_path[resource.path]) for resource in calculations())


@cache
def operation_of(rule: str) -> Any:
    """Return the operation of a rule."""
    return {resource.rule.id: operation for resource, operation in _calculating()}[rule]


def _limits(slot: Slot, code: str) -> Iterator[float]:
    """Return the limits of a quantity in a unit, and the next numbers on either side."""
    assert slot.field.kind is not None
    unit = UNITS[slot.field.kind][code]
    for limit in (slot.field.above, slot.field.at_least, slot.field.at_most):
        if limit is not None:
            value = unit.from_si(limit)
            yield from (value, math.nextafter(value, math.inf), math.nextafter(value, -math.inf))


def leaves(record: type | None, body: Any, path: Path_ = ()) -> Iterator[tuple[Path_, tuple[float, ...]]]:
    """Return every number of a body with the extremes that its field makes interesting."""
    if isinstance(body, list):
        for position, item in enumerate(body):
            yield from leaves(record, item, (*path, position))
    elif isinstance(body, dict):
        slots = {slot.name: slot for slot in slots_of(record)} if record is not None else {}
        for name, value in body.items():
            slot = slots.get(name)
            if slot is not None and slot.shape == "quantity" and isinstance(value, dict):
                yield (*path, name, "value"), (*_limits(slot, value["unit"]), *FAR)
            elif isinstance(value, (dict, list)):
                yield from leaves(slot.record if slot else None, value, (*path, name))
            elif isinstance(value, (int, float)) and not isinstance(value, bool):
                limits = [slot.field.above, slot.field.at_least, slot.field.at_most] if slot else []
                yield (*path, name), (*(limit for limit in limits if limit is not None), *FAR)
    elif isinstance(body, (int, float)) and not isinstance(body, bool):
        yield path, FAR


def leaves_of(rule: str, body: dict[str, Any]) -> list[tuple[Path_, tuple[float, ...]]]:
    """Return the numbers of a rule's request."""
    return list(leaves(BY_ID[rule].input, body))


def replaced(body: dict[str, Any], changes: dict[Path_, float]) -> dict[str, Any]:
    """Return a body with some numbers replaced."""
    changed = copy.deepcopy(body)
    for path, value in changes.items():
        place: Any = changed
        for step in path[:-1]:
            place = place[step]
        whole = isinstance(place[path[-1]], int) and float(value).is_integer()
        place[path[-1]] = int(value) if whole else value
    return changed


def faults_in(tree: Any) -> Iterator[str]:
    """Return what no answer may hold."""
    if tree is None:
        yield "null"
    elif isinstance(tree, float) and not math.isfinite(tree):
        yield repr(tree)
    elif isinstance(tree, dict):
        for value in tree.values():
            yield from faults_in(value)
    elif isinstance(tree, list):
        for value in tree:
            yield from faults_in(value)


def outcome(service: Service, rule: str, body: dict[str, Any]) -> int:
    """Ask and return the status; an answer that holds what none may hold is an error."""
    operation = operation_of(rule)
    try:
        reply = operation.handler(service, Asked({}, {}, json.dumps(body).encode(), operation.media_types[0]))
        found, status = reply.body, 200
    except ProblemError as problem:
        found, status = problem.body(), problem.status
        assert 400 <= status < 500
    faults = list(faults_in(json.loads(found)))
    assert not faults, (status, faults[:3], found[:500])
    return status
