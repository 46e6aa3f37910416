"""What is fuzzed: from the bytes of a body to a bound input, for every calculation. The first byte chooses the calculation."""

from __future__ import annotations

import json
from functools import cache
from typing import TYPE_CHECKING, Any

import msgspec

from railrules_api.api.envelope import Problem
from railrules_api.api.problems import ProblemError
from railrules_api.api.replying import bind
from railrules_api.api.resources import calculations
from railrules_api.api.service import Service, start
from tests.hostile.extremes import examples
from tests.hostile.reading import entry_of, names

if TYPE_CHECKING:
    from collections.abc import Iterator

LONGEST_SEED = 4096


@cache
def service() -> Service:
    """Return the service."""
    return start()


def _no_constant(text: str) -> None:
    raise AssertionError(f"{text} was taken for JSON")


def _no_double(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    assert len(found) == len(pairs), "a key twice was taken"
    return found


def one_input(data: bytes) -> None:
    """Put one input to the decoder: it is a refusal that can be told, or JSON as any other reader takes it."""
    if not data:
        return
    table = calculations()
    resource, body = table[data[0] % len(table)], data[1:]
    refused: ProblemError | None = None
    try:
        bind(resource, body, service())
    except ProblemError as problem:
        refused = problem
    if refused is not None:
        assert refused.status in (400, 422)
        encoded = refused.body()
        assert len(encoded) < 2_000_000
        msgspec.json.decode(encoded, type=Problem)
        return
    json.loads(body, parse_constant=_no_constant, object_pairs_hook=_no_double)


def seeds() -> Iterator[bytes]:
    """Return where the search begins: every good request, and the short ones of the hostile corpus."""
    place = {resource.rule.id: position for position, resource in enumerate(calculations())}
    for rule, body in examples():
        yield bytes([place[rule]]) + json.dumps(body, separators=(",", ":")).encode()
    force = bytes([place["thermal.force"]])
    for name in names(raw=False):
        entry = entry_of(name)
        if 0 < len(entry.body) <= LONGEST_SEED:
            yield force + entry.body
