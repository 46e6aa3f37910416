"""No word and no number of an answer or a refusal changes unseen."""

from __future__ import annotations

from itertools import zip_longest
from typing import TYPE_CHECKING

import pytest

from tests.mutation.kept import ANSWERS, REFUSALS, answers, refusals, rules
from tests.mutation.kept_sums import SUMS, sums

if TYPE_CHECKING:
    from collections.abc import Iterable
    from pathlib import Path

    from railrules_api.api.service import Service

ANEW = "if that is meant: python -m tests.mutation.kept, and a line in openapi/CHANGELOG.md"


def compare(file: Path, rule: str, found: Iterable[str]) -> None:
    prefix = f'["{rule}",'
    kept = [line for line in file.read_text(encoding="utf-8").splitlines() if line.startswith(prefix)]
    for before, now in zip_longest(kept, found, fillvalue=""):
        if before != now:
            pairs = enumerate(zip_longest(before, now))
            begin = max(0, next(place for place, (one, other) in pairs if one != other) - 80)
            raise AssertionError(f"was ...{before[begin : begin + 160]}\nnow ...{now[begin : begin + 160]}\n{ANEW}")


@pytest.mark.parametrize("rule", rules())
def test_answers(service: Service, rule: str) -> None:
    compare(ANSWERS, rule, answers(service, rule))


@pytest.mark.parametrize("rule", rules())
def test_refusals(service: Service, rule: str) -> None:
    compare(REFUSALS, rule, refusals(service, rule))


@pytest.mark.parametrize("rule", rules())
def test_sums(service: Service, rule: str) -> None:
    compare(SUMS, rule, sums(service, rule))
