"""Ties: how many stand in a stretch, how many are renewed, and whether their spacing is a usual one."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache
from typing import Annotated, Final, Literal

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.errors import below
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.domain.track import Stretch, spacing_of, tie_ranges
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.given import METRES_PER_MILE
from railrules_api.rules.quantities.lines import Line

CLOSEST: Final = 18 * 0.0254
"""TI 850-02, 14f: smallest spacing of ties [m]."""
WIDEST: Final = 24 * 0.0254
"""TI 850-02, 14f: largest spacing of ties [m]."""
NOISE: Final = 1e-9
"""Share of it that two ways of giving the same spacing may differ by."""


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class TiesInput:
    """A stretch and the share of its ties that is renewed."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    renewed_share: Annotated[
        float,
        Field("Share of the ties that is renewed.", symbol="q", at_least=0.0, at_most=1.0, default="tie-renewed-share"),
    ]
    tie_kind: Annotated[
        Literal["wood", "concrete", "steel"] | None,
        Field("What the ties are made of, for the check of their spacing; left out: wood."),
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class TiesResult:
    """Ties that stand, stay and are renewed."""

    ties: Annotated[int, Field("Ties that stand in the stretch.", symbol="n")]
    ties_on_curves: Annotated[int, Field("Ties that stand in curves.")]
    ties_renewed: Annotated[float, Field("Ties renewed, unrounded.", symbol="n_new")]
    ties_kept: Annotated[float, Field("Ties that stay, unrounded.", symbol="n_old")]
    spacing: Annotated[float, Field("Spacing as used.", kind=Kind.LENGTH, symbol="s", answer=SMALL)]
    ties_per_mile: Annotated[float, Field("Average per mile, not rounded: 63,360 in over the spacing.", symbol="m")]
    checks: Annotated[tuple[Check, ...], Field("Spacing against the limits of a manual for wood ties; none on other ties.")]
    lines: Annotated[tuple[Line, ...], Field("Ties to order.")]


@lru_cache(maxsize=256)
def spacing_checks(spacing: float) -> tuple[Check, ...]:
    """Hold a spacing of wood ties against the smallest and the largest of TI 850-02, paragraph 14f [m]."""
    place = "TI 850-02, paragraph 14f"
    # 24 in and 2 ft are the same spacing, whatever the last bit says
    used = next((limit for limit in (CLOSEST, WIDEST) if math.isclose(spacing, limit, rel_tol=NOISE)), spacing)
    return (
        compare(
            code="tie-spacing-least",
            title="Ties are not too close",
            demand=Amount(CLOSEST, Kind.LENGTH, SMALL),
            capacity=Amount(used, Kind.LENGTH, SMALL),
            governing="spacing",
            would_pass="a spacing of 18 in or more",  # noqa: S106  no password
            place=place,
        ),
        compare(
            code="tie-spacing-most",
            title="Ties are not too far apart",
            demand=Amount(used, Kind.LENGTH, SMALL),
            capacity=Amount(WIDEST, Kind.LENGTH, SMALL),
            governing="spacing",
            would_pass="a spacing of 24 in or less",  # noqa: S106  no password
            place=place,
        ),
    )


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
        checks=spacing_checks(spacing) if given.tie_kind in (None, "wood") else (),
        lines=(Line(item="cross-ties", product="", net=Amount(renewed)),),
    )


RULE = Rule(
    id="quantities.ties",
    title="Ties standing, kept and renewed",
    summary=(
        "Ties stand at origin + k * spacing; a stretch owns those with begin <= x < end, so counts add up however the line "
        "is cut. The average per mile is a separate figure and is not rounded. The spacing of wood ties is held against the "
        "limits of a manual of government railroads; a railroad's own standard goes before."
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
