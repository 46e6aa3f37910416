"""Preservative for the bared wood of adzed tie seats."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.domain.track import Stretch, rail_count
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.quantities.given import RenewedShare, TieKind, held_by_others, kept_ties, ranges_of
from railrules_api.rules.quantities.lines import Line

AdzeMargin = Annotated[
    float,
    Field(
        "Adzed beyond the plate on each side.",
        kind=Kind.LENGTH,
        symbol="e",
        at_least=0.0,
        at_most=0.5,
        default="adze-margin",
    ),
]
Coats = Annotated[int, Field("Coats.", symbol="c", at_least=0, at_most=10, default="preservative-coats")]
Coverage = Annotated[
    float,
    Field(
        "Area that a volume covers once.",
        kind=Kind.COVERAGE,
        symbol="k",
        above=0.0,
        at_most=1e6,
        default="preservative-coverage",
    ),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class PreservativeInput:
    """A stretch, the plate whose seats are adzed, and the coats they get."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    tie_kind: TieKind
    renewed_share: RenewedShare
    plate_length: Annotated[
        float,
        Field(
            "Length of a plate, along the tie.",
            kind=Kind.LENGTH,
            symbol="l",
            above=0.0,
            at_most=2.0,
            taken=Taken("plate", "tie-plates", "length"),
        ),
    ]
    plate_width: Annotated[
        float,
        Field(
            "Width of a plate, along the rail.",
            kind=Kind.LENGTH,
            symbol="b",
            above=0.0,
            at_most=1.0,
            taken=Taken("plate", "tie-plates", "width"),
        ),
    ]
    adze_margin: AdzeMargin
    coats: Coats
    coverage: Coverage


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class PreservativeResult:
    """Bared wood and what it takes, unrounded."""

    seats: Annotated[float, Field("Tie seats adzed: ties that stay, at renewed rails, on wood ties.", symbol="n")]
    area_per_seat: Annotated[float, Field("Bared area of one seat.", kind=Kind.AREA, symbol="A_1", answer=("in2", "cm2"))]
    area: Annotated[float, Field("Bared area of all seats.", kind=Kind.AREA, symbol="A", answer=("ft2", "m2"))]
    volume: Annotated[float, Field("Preservative.", kind=Kind.VOLUME, answer=("gal", "l"))]
    note: Annotated[str | None, Field("Why none is counted, where none is.")] = None
    lines: Annotated[tuple[Line, ...], Field("Preservative to order, and seats to adze.")]


def evaluate(given: PreservativeInput) -> PreservativeResult:
    """Return the bared area of adzed seats and the preservative that it takes.

    Raises:
        RefusedError: the stretch contradicts itself.
    """
    ties = sum(part.count for part in ranges_of(given.stretch)) if given.tie_kind == "wood" else 0
    seats = kept_ties(ties, given.renewed_share) * rail_count(given.stretch.rails)
    each = (given.plate_length + 2.0 * given.adze_margin) * (given.plate_width + 2.0 * given.adze_margin)
    area = seats * each
    volume = area * given.coats / given.coverage
    return PreservativeResult(
        seats=seats,
        area_per_seat=each,
        area=area,
        volume=volume,
        note=held_by_others(given.tie_kind, "adzed seats"),
        lines=(
            Line(item="preservative", product="", net=Amount(volume, Kind.VOLUME)),
            Line(item="tie-seats-adzed", product="", net=Amount(seats)),
        ),
    )


RULE = Rule(
    id="quantities.preservative",
    title="Preservative for adzed tie seats",
    summary=(
        "Seats are adzed on wood ties that stay, at the rails renewed, over the new plate and a margin on all four sides. New "
        "ties come treated and are not adzed."
    ),
    formulas=(
        Formula("seats", "(ties - ties renewed) times renewed rails, on wood ties", exact=False),
        Formula("area_per_seat", "(l + 2 * e) * (b + 2 * e)"),
        Formula("area", "n * A_1"),
        Formula("volume", "A * c / k"),
    ),
    cites=(
        Cite("tr0671", "1.15: bared wood is treated before new plates are set", "published"),
        Cite("preservative-label", "coverage of rough and smooth wood", "published"),
    ),
    cautions=(
        Caution(
            code="coverage-depends-on-wood",
            text="Adzed wood is rough and old wood drinks: coverage varies by a factor of two and more. Try it on a few ties.",
            cite=Cite("preservative-label", "100 square feet a gallon on rough wood, 225 to 250 on smooth", "published"),
        ),
    ),
    input=PreservativeInput,
    output=PreservativeResult,
    evaluate=evaluate,
)
