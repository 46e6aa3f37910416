"""Ties: how many stand in a stretch, how many are renewed."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import below
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.track import Stretch, spacing_of, tie_ranges
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.lines import Line

METRES_PER_MILE = 1609.344


@dataclass(frozen=True, slots=True, kw_only=True)
class TiesInput:
    """A stretch and the share of its ties that is renewed."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    renewed_share: Annotated[
        float,
        Field("Share of the ties that is renewed.", symbol="q", at_least=0.0, at_most=1.0, default="tie-renewed-share"),
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class TiesResult:
    """Ties that stand, stay and are renewed."""

    ties: Annotated[int, Field("Ties that stand in the stretch.", symbol="n")]
    ties_on_curves: Annotated[int, Field("Ties that stand in curves.")]
    ties_renewed: Annotated[float, Field("Ties renewed, unrounded.", symbol="n_new")]
    ties_kept: Annotated[float, Field("Ties that stay, unrounded.", symbol="n_old")]
    spacing: Annotated[float, Field("Spacing as used.", kind=Kind.LENGTH, symbol="s", answer=("in", "mm"))]
    ties_per_mile: Annotated[float, Field("Average per mile, not rounded: 63,360 in over the spacing.", symbol="m")]
    lines: Annotated[tuple[Line, ...], Field("Ties to order.")]


def evaluate(given: TiesInput) -> TiesResult:
    """Count the ties that stand at `origin + k * spacing` with `begin <= x < end`.

    Raises:
        RefusedError: the stretch contradicts itself.
    """
    with below("stretch"):
        ranges = tie_ranges(given.stretch)
    ties = sum(part.count for part in ranges)
    spacing = spacing_of(given.stretch.ties)
    renewed = ties * given.renewed_share
    return TiesResult(
        ties=ties,
        ties_on_curves=sum(part.count for part in ranges if part.radius is not None),
        ties_renewed=renewed,
        ties_kept=ties - renewed,
        spacing=spacing,
        ties_per_mile=METRES_PER_MILE / spacing,
        lines=(Line(item="cross-ties", product="", net=Amount(renewed)),),
    )


RULE = Rule(
    id="quantities.ties",
    title="Ties standing, kept and renewed",
    summary=(
        "Ties stand at origin + k * spacing; a stretch owns those with begin <= x < end, so counts add up however the line "
        "is cut. The average per mile is a separate figure and is not rounded."
    ),
    formulas=(
        Formula("ties", "number of whole k with begin <= origin + k s < end, outside what is left out", exact=False),
        Formula("ties_renewed", "n * q"),
        Formula("ties_kept", "n - n_new"),
        Formula("ties_per_mile", "1609.344 / s"),
    ),
    cites=(
        Cite("ti-850-02", "paragraph 14f: usual, smallest and largest spacing", "published"),
        Cite("counting-rules", "half-open stretches of stationed ties", "common-practice"),
    ),
    input=TiesInput,
    output=TiesResult,
    evaluate=evaluate,
)
