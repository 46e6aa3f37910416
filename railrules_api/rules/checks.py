"""The check: what is asked of the track, what it can bear, and the verdict. What every safety answer carries."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Annotated, Literal

from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import Field
from railrules_api.domain.records import lean

Verdict = Literal["passes", "fails", "not-checked"]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Check:
    """One thing held against a limit. A check that lacks an input says so and is not passed."""

    code: Annotated[str, Field("Stable identifier of the check.")]
    title: Annotated[str, Field("What is checked, in words.")]
    verdict: Annotated[Verdict, Field("Outcome; `not-checked` when an input it needs is missing.")]
    demand: Annotated[Amount | None, Field("What is asked of the track.")] = None
    capacity: Annotated[Amount | None, Field("What the track can bear, or the rule allows.")] = None
    utilisation: Annotated[float | None, Field("Demand over capacity; 1 is the limit.")] = None
    governing: Annotated[str, Field("Input that decides, or that is missing.")]
    would_pass: Annotated[str, Field("What would make it pass; empty when it does.")] = ""
    place: Annotated[str, Field("Source and place of the limit, in words.")]


def compare(  # noqa: PLR0913  the parts of a check
    *, code: str, title: str, demand: Amount, capacity: Amount, governing: str, would_pass: str, place: str
) -> Check:
    """Build the check that passes while demand does not exceed capacity.

    Utilisation is left out where no finite figure says it: at a capacity of zero, or next to it.
    """
    passes = demand.value <= capacity.value
    utilisation = demand.value / capacity.value if capacity.value > 0.0 else math.inf
    return Check(
        code=code,
        title=title,
        verdict="passes" if passes else "fails",
        demand=demand,
        capacity=capacity,
        utilisation=utilisation if -math.inf < utilisation < math.inf else None,
        governing=governing,
        would_pass="" if passes else would_pass,
        place=place,
    )


def checks_in(found: object) -> tuple[Check, ...]:
    """Return the checks that a rule's answer carries: several, or its only one."""
    several: tuple[Check, ...] = getattr(found, "checks", ())
    single: Check | None = getattr(found, "check", None)
    return several if single is None else (*several, single)
