"""An equation as it stands in one use of a rule: arithmetic on the numbers of that use."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.kinds import Kind
from railrules_api.domain.track import Stretch, rail_count, spacing_of, worked_spans


@dataclass(frozen=True, slots=True)
class Written:
    """A formula that is told in words, written out for one use of its rule.

    Attributes:
        text: right-hand side: arithmetic on the symbols in `numbers`, as in `Formula.text`.
        numbers: SI, by symbol.
        result: what the left-hand side is.
        of: the part of the result that it is about; empty for the whole.
        note: the row of a table that was read, or the case that holds; empty for none.
    """

    text: str
    numbers: Mapping[str, Amount]
    result: Amount
    of: str = ""
    note: str = ""


Way = Callable[[Any, Any], Iterable[Written]]
"""Writes a formula out from the input and the output of its rule."""
Numbers = dict[str, Amount]


def count(value: float) -> Amount:
    """Return a number without a kind."""
    return Amount(float(value))


def length(value: float) -> Amount:
    """Return a length [m]."""
    return Amount(value, Kind.LENGTH)


def small(value: float) -> Amount:
    """Return a length that reads best in inches or millimetres [m]."""
    return Amount(value, Kind.LENGTH, SMALL)


def read(value: Amount, note: str, of: str = "") -> Written:
    """Write a number that was read or given, with the place or the case."""
    return Written("v", {"v": value}, value, of, note)


def added(terms: Iterable[Amount], letter: str = "a") -> tuple[str, Numbers]:
    """Return a sum as text and numbers; terms that are alike stand once, times how often they do.

    >>> added([count(2), count(3), count(2)])[0]
    '2 * a_1 + a_2'
    """
    times = Counter(terms)
    numbers: Numbers = {}
    parts: list[str] = []
    for place, (term, often) in enumerate(times.items(), 1):
        numbers[f"{letter}_{place}"] = term
        parts.append(f"{letter}_{place}" if often == 1 else f"{often} * {letter}_{place}")
    return " + ".join(parts), numbers


def weighted(terms: Iterable[tuple[Amount, ...]], letters: str) -> tuple[str, Numbers]:
    """Return a sum of products as text and numbers, one letter a factor; products that are alike stand once.

    >>> weighted([(count(2), count(3)), (count(4), count(5))], "ab")[0]
    'a_1 * b_1 + a_2 * b_2'
    """
    times = Counter(terms)
    numbers: Numbers = {}
    parts: list[str] = []
    for place, (term, often) in enumerate(times.items(), 1):
        names = [f"{letter}_{place}" for letter in letters]
        numbers.update(zip(names, term, strict=True))
        parts.append(" * ".join(([str(often)] if often > 1 else []) + names))
    return " + ".join(parts), numbers


def worked(stretch: Stretch, over: str = "") -> tuple[str, Numbers]:
    """Return renewed rails times the length that is worked on: the end of each part less its begin; `over` follows each term."""
    parts: list[str] = []
    numbers: Numbers = {"r": rails_of(stretch)}
    for place, span in enumerate(worked_spans(stretch), 1):
        numbers[f"e_{place}"], numbers[f"b_{place}"] = length(span.end), length(span.begin)
        parts.append(f"r * (e_{place} - b_{place}){over}")
    if parts:
        return " + ".join(parts), numbers
    return f"r * l_0{over}", numbers | {"l_0": length(0.0)}


def rails_of(stretch: Stretch) -> Amount:
    """Return how many rails are renewed."""
    return count(rail_count(stretch.rails))


def ties_standing(stretch: Stretch) -> tuple[str, Numbers]:
    """Return the ties of a stretch: for each part, the first tie at or beyond its end less that at or beyond its begin."""
    numbers: Numbers = {"o": length(stretch.ties.origin), "s": small(spacing_of(stretch.ties))}
    parts: list[str] = []
    for place, span in enumerate(worked_spans(stretch), 1):
        numbers[f"e_{place}"], numbers[f"b_{place}"] = length(span.end), length(span.begin)
        parts.append(f"ceil((e_{place} - o) / s) - ceil((b_{place} - o) / s)")
    return (" + ".join(parts), numbers) if parts else ("n_0", {"n_0": count(0)})
