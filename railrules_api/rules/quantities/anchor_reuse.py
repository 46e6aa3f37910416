"""Anchors applied again: what comes off anywhere on a job and what its new track needs, put against each other once."""

from __future__ import annotations

import math
from dataclasses import dataclass
from math import fsum
from typing import Annotated

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.anchors import ReappliedShare

BasePlay = Annotated[
    float,
    Field(
        "Difference of the rails' bases at which an anchor of one still grips the other.",
        kind=Kind.LENGTH,
        at_least=0.0,
        at_most=0.05,
        default="anchor-base-play",
    ),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class AnchorPlace:
    """A part of the job: anchors that come off it, and anchors that it needs."""

    needed: Annotated[float, Field("Anchors that its new track carries.", at_least=0.0, at_most=1e9)]
    recovered: Annotated[float, Field("Anchors recovered from its old track.", at_least=0.0, at_most=1e9)]
    fit_share: ReappliedShare
    rail_base: Annotated[float | None, Field("Width of the new rail's base.", kind=Kind.LENGTH, above=0.0, at_most=1.0)] = None
    old_rail_base: Annotated[float | None, Field("Width of the old rail's base.", kind=Kind.LENGTH, above=0.0, at_most=1.0)] = (
        None
    )


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class AnchorReuseInput:
    """The parts of a job between which old anchors go, one kind of new anchor."""

    places: Annotated[tuple[AnchorPlace, ...], Field("Parts of the job.", at_least=1, most_items=20_000)]
    base_play: BasePlay


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceReuse:
    """What a part of the job takes and gives."""

    applied: Annotated[float, Field("Old anchors applied again here, from wherever they come.")]
    given: Annotated[float, Field("Anchors that come off here and go back in, wherever that is.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class AnchorReuseResult:
    """Anchors needed, fit, applied again and new, over the whole job."""

    needed: Annotated[float, Field("Anchors that the new track carries.", symbol="n")]
    fit: Annotated[float, Field("Anchors recovered and fit to be applied again.", symbol="n_f")]
    reapplied: Annotated[float, Field("Old anchors applied again.", symbol="n_old")]
    new: Annotated[float, Field("New anchors.", symbol="n_new")]
    places: Annotated[
        tuple[PlaceReuse, ...], Field("Part by part, in the order given: in proportion to need and to what is fit.")
    ]
    checks: Annotated[tuple[Check, ...], Field("Whether the old anchors grip the base of the new rail.")]


def _check(given: AnchorReuseInput) -> Check:
    """Hold the two bases that differ most, of rail that gives anchors and rail that takes them, against the play."""
    code, title = "anchors-grip-base", "Old anchors grip the new rail's base"
    place = "Fact of the trade: an anchor is made for one width of base"
    giving = {part.old_rail_base for part in given.places if part.recovered * part.fit_share > 0.0}
    taking = {part.rail_base for part in given.places if part.needed > 0.0}
    if giving and taking and None in giving | taking:
        missing = "rail_base" if None in taking else "old_rail_base"
        return Check(code=code, title=title, verdict="not-checked", governing=missing, place=place)
    gap = max((abs(old - new) for old in giving for new in taking if old is not None and new is not None), default=0.0)
    # bases given in different units may differ in the last bit
    gap = given.base_play if math.isclose(gap, given.base_play, abs_tol=1e-9) else gap
    return compare(
        code=code,
        title=title,
        demand=Amount(gap, Kind.LENGTH, SMALL),
        capacity=Amount(given.base_play, Kind.LENGTH, SMALL),
        governing="old_rail_base",
        would_pass="new anchors where the rail's base differs",  # noqa: S106  no password
        place=place,
    )


def evaluate(given: AnchorReuseInput) -> AnchorReuseResult:
    """Apply as many fit anchors again as the new track needs, wherever on the job they come off.

    Parts take in proportion to what they need and give in proportion to what is fit, so totals are the same however the job is
    cut into parts.

    >>> places = (AnchorPlace(needed=100, recovered=0, fit_share=0), AnchorPlace(needed=100, recovered=200, fit_share=0.75))
    >>> found = evaluate(AnchorReuseInput(places=places, base_play=0.001))
    >>> found.reapplied, found.new, [part.applied for part in found.places], [part.given for part in found.places]
    (150.0, 50.0, [75.0, 75.0], [0.0, 150.0])
    """
    fit_by_place = [part.recovered * part.fit_share for part in given.places]
    needed, fit = fsum(part.needed for part in given.places), fsum(fit_by_place)
    reapplied = min(needed, fit)
    taken = reapplied / needed if needed else 0.0
    used = reapplied / fit if fit else 0.0
    return AnchorReuseResult(
        needed=needed,
        fit=fit,
        reapplied=reapplied,
        new=needed - reapplied,
        places=tuple(
            PlaceReuse(applied=part.needed * taken, given=own * used)
            for part, own in zip(given.places, fit_by_place, strict=True)
        ),
        checks=(_check(given),),
    )


RULE = Rule(
    id="quantities.anchor-reuse",
    title="Anchors applied again over a whole job",
    summary=(
        "Anchors that come off one part of a job and are fit are applied again on another, as far as the new track needs them; "
        "what is over is salvage. The cap holds for the whole job, not part by part, so the answer does not hang on where the "
        "job is cut. Each part takes in proportion to its need."
    ),
    formulas=(
        Formula("fit", "sum of anchors recovered times the share that is fit", exact=False),
        Formula("reapplied", "min(n, n_f)"),
        Formula("new", "n - n_old"),
        Formula("places", "applied = needed * n_old / n; given = recovered * fit share * n_old / n_f", exact=False),
    ),
    cites=(
        Cite("counting-rules", "reuse is put against need once, on the job's total", "common-practice"),
        Cite("common-practice", "anchors fit for it go back on the track under way", "common-practice"),
    ),
    input=AnchorReuseInput,
    output=AnchorReuseResult,
    evaluate=evaluate,
)
