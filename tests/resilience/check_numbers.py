"""Every number of every good request we have, at and beyond its limits: the whole grid. Run by `make resilience`."""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING

from tests.hostile.extremes import examples, leaves_of, outcome, replaced
from tests.resilience.callers import tell

if TYPE_CHECKING:
    from railrules_api.api.service import Service


def test_the_whole_grid(service: Service) -> None:
    found: Counter[int] = Counter()
    for rule, body in examples():
        for path, values in leaves_of(rule, body):
            found.update(outcome(service, rule, replaced(body, {path: value})) for value in values)
    tell(f"extreme numbers: {found.total()} requests, {dict(found)}")
    assert found.keys() <= {200, 422}
