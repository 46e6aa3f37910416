"""Preservative for the bared wood of adzed tie seats."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Annotated, Literal

from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import refuse
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


def _on(about: str, column: str) -> Field:
    return Field(about, kind=Kind.COVERAGE, above=0.0, at_most=1e6, taken=Taken("preservative", "preservatives", column))


Coats = Annotated[int, Field("Coats.", symbol="c", at_least=0, at_most=10, default="preservative-coats")]
Coverage = Annotated[
    float,
    Field(
        "Area that a volume covers once; stands back where a surface is named.",
        kind=Kind.COVERAGE,
        above=0.0,
        at_most=1e6,
        default="preservative-coverage",
    ),
]
Surface = Annotated[
    Literal["rough", "smooth", "sprayed"] | None,
    Field("Surface, of which the preservative's own coverage is taken; adzed wood is rough. Left out: `coverage` holds."),
]
PreservativeProduct = Annotated[
    str | None, Field("Catalogue id of the preservative.", taken=Taken("preservative", "preservatives", "id"))
]
CoverageRough = Annotated[float | None, _on("Its coverage of rough wood.", "coverage_rough")]
CoverageSmooth = Annotated[float | None, _on("Its coverage of smooth wood.", "coverage_smooth")]
CoverageSprayed = Annotated[float | None, _on("Its coverage when sprayed.", "coverage_spray")]
DrumVolume = Annotated[
    float | None,
    Field(
        "What a drum of it holds.",
        kind=Kind.VOLUME,
        above=0.0,
        at_most=10.0,
        taken=Taken("preservative", "preservatives", "drum_volume"),
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
    surface: Surface = None
    product: PreservativeProduct = None
    coverage_rough: CoverageRough = None
    coverage_smooth: CoverageSmooth = None
    coverage_sprayed: CoverageSprayed = None
    drum_volume: DrumVolume = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class PreservativeResult:
    """Bared wood and what it takes, unrounded."""

    seats: Annotated[float, Field("Tie seats adzed: ties that stay, at renewed rails, on wood ties.", symbol="n")]
    area_per_seat: Annotated[float, Field("Bared area of one seat.", kind=Kind.AREA, symbol="A_1", answer=("in2", "cm2"))]
    area: Annotated[float, Field("Bared area of all seats.", kind=Kind.AREA, symbol="A", answer=("ft2", "m2"))]
    coverage_used: Annotated[float, Field("Area that a volume covers once, as used.", kind=Kind.COVERAGE, symbol="k")]
    volume: Annotated[float, Field("Preservative.", kind=Kind.VOLUME, answer=("gal", "l"))]
    drums: Annotated[float | None, Field("Drums of it, unrounded.")] = None
    note: Annotated[str | None, Field("Why none is counted, where none is.")] = None
    lines: Annotated[tuple[Line, ...], Field("Preservative to order, and seats to adze.")]


def _coverage(given: PreservativeInput) -> float:
    if given.surface is None:
        return given.coverage
    own = {"rough": given.coverage_rough, "smooth": given.coverage_smooth, "sprayed": given.coverage_sprayed}[given.surface]
    if own is None:
        reason = "no coverage of this surface is known: give it, or a preservative that has one"
        raise refuse("surface", reason=reason, value=given.surface)
    return own


def evaluate(given: PreservativeInput) -> PreservativeResult:
    """Return the bared area of adzed seats and the preservative that it takes.

    Raises:
        RefusedError: the stretch contradicts itself, or the coverage of the surface is not known.
    """
    ties = sum(part.count for part in ranges_of(given.stretch)) if given.tie_kind == "wood" else 0
    seats = kept_ties(ties, given.renewed_share) * rail_count(given.stretch.rails)
    each = (given.plate_length + 2.0 * given.adze_margin) * (given.plate_width + 2.0 * given.adze_margin)
    area = seats * each
    coverage = _coverage(given)
    volume = area * given.coats / coverage
    line = Line(item="preservative", product=given.product or "", net=Amount(volume, Kind.VOLUME))
    if given.drum_volume is not None:
        line = replace(line, package="drum", package_size=Amount(given.drum_volume, Kind.VOLUME))
    return PreservativeResult(
        seats=seats,
        area_per_seat=each,
        area=area,
        coverage_used=coverage,
        volume=volume,
        drums=None if given.drum_volume is None else volume / given.drum_volume,
        note=held_by_others(given.tie_kind, "adzed seats"),
        lines=(
            line,
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
