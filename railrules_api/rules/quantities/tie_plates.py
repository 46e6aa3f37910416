"""Tie plates: one under each renewed rail on each wood tie."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from math import isclose
from typing import TYPE_CHECKING, Annotated

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.domain.track import Stretch, rail_count
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.given import PlatedShare, RecoveredShare, TieKind, held_by_others, mass_of, packed, ranges_of
from railrules_api.rules.quantities.lines import Line

if TYPE_CHECKING:
    from collections.abc import Iterator


Handed = Annotated[bool | None, Field("Plates differ for left and right rail; left out: one kind fits both.")]
PlateProduct = Annotated[str | None, Field("Catalogue id of the plate.", taken=Taken("plate", "tie-plates", "id"))]
PlateMass = Annotated[
    float | None,
    Field(
        "Mass of one plate.",
        kind=Kind.MASS,
        symbol="m_1",
        above=0.0,
        at_most=200.0,
        taken=Taken("plate", "tie-plates", "mass"),
    ),
]
PlateBaseLeast = Annotated[
    float | None,
    Field(
        "Narrowest rail base that the plate takes.",
        kind=Kind.LENGTH,
        above=0.0,
        at_most=1.0,
        taken=Taken("plate", "tie-plates", "base_width_least"),
    ),
]
PlateBaseMost = Annotated[
    float | None,
    Field(
        "Widest rail base that the plate takes.",
        kind=Kind.LENGTH,
        above=0.0,
        at_most=1.0,
        taken=Taken("plate", "tie-plates", "base_width_most"),
    ),
]
PlatesPerBundle = Annotated[float | None, Field("Plates in a bundle, as the mill ships them.", above=0.0, at_most=1e5)]
RailBase = Annotated[
    float | None,
    Field(
        "Width of the new rail's base.",
        kind=Kind.LENGTH,
        above=0.0,
        at_most=1.0,
        taken=Taken("section", "rail-sections", "base_width"),
    ),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class TiePlatesInput:
    """A stretch and the plate that goes under its rail."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    tie_kind: TieKind
    reused: Annotated[
        bool | None,
        Field("The plates in track are used again, and new ones replace those that are missing; left out: all are new."),
    ] = None
    plated_share: PlatedShare
    recovered_share: RecoveredShare
    handed: Handed = None
    product: PlateProduct = None
    plate_mass: PlateMass = None
    plate_rail_base_least: PlateBaseLeast = None
    plate_rail_base: PlateBaseMost = None
    rail_base: RailBase = None
    per_bundle: PlatesPerBundle = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class TiePlatesResult:
    """Plates needed, by hand and by weight."""

    seats: Annotated[int, Field("Tie seats that take a plate: wood ties times renewed rails.", symbol="n_s")]
    plates: Annotated[int, Field("Plates that lie in the new track.", symbol="n")]
    plates_new: Annotated[
        float,
        Field("Plates to order, unrounded: all, or what the old track lacks and what is lost where its plates are used again."),
    ]
    plates_left: Annotated[int, Field("Plates that lie under the left rail.")]
    plates_right: Annotated[int, Field("Plates that lie under the right rail.")]
    bundles: Annotated[float | None, Field("Bundles of new plates of both hands, unrounded.")] = None
    mass: Annotated[float | None, Field("Mass of the plates that lie in track.", kind=Kind.MASS)] = None
    checks: Annotated[tuple[Check, ...], Field("Whether the plate takes the base of the rail.")]
    note: Annotated[str | None, Field("Why none is counted, where none is.")] = None
    notes: Annotated[tuple[str, ...], Field("What to mind where plates are used again and some are missing.")]
    lines: Annotated[tuple[Line, ...], Field("Plates to order.")]


def _hands(stretch: Stretch, seats: int) -> tuple[int, int]:
    """Return the seats under the left and the right rail; the high rail of a curve lies opposite to its hand."""
    if stretch.rails == "both":
        return seats // 2, seats // 2
    if stretch.rails in ("left", "right"):
        is_left = stretch.rails == "left"
    else:
        is_left = (stretch.rails == "high") == (stretch.curves[0].hand == "right")
    return (seats, 0) if is_left else (0, seats)


@lru_cache(maxsize=256)
def _fit(base: float | None, least: float | None, most: float | None) -> tuple[Check, Check]:
    """Hold the rail's base against the widest and the narrowest that the plate takes."""
    wide, narrow = "plate-takes-base", "plate-holds-base"
    titles = {wide: "Plate is wide enough for the rail's base", narrow: "Plate is narrow enough for the rail's base"}
    place = "Geometry: the rail's base lies between, or against, the plate's shoulders"

    def fit(code: str, demand: float | None, capacity: float | None, limit: str) -> Check:
        if demand is None or capacity is None:
            missing = "rail_base" if base is None else limit
            return Check(code=code, title=titles[code], verdict="not-checked", governing=missing, place=place)
        # equal widths given in different units may differ in the last bit
        demand = capacity if isclose(demand, capacity) else demand
        return compare(
            code=code,
            title=titles[code],
            demand=Amount(demand, Kind.LENGTH, SMALL),
            capacity=Amount(capacity, Kind.LENGTH, SMALL),
            governing="rail_base",
            would_pass="plates made for a rail base of this width",  # noqa: S106  no password
            place=place,
        )

    return fit(wide, base, most, "plate_rail_base"), fit(narrow, least, base, "plate_rail_base_least")


def _lines(given: TiePlatesInput, left: float, right: float) -> Iterator[Line]:
    counts = {"tie-plates-left": left, "tie-plates-right": right} if given.handed else {"tie-plates": left + right}
    for item, count in counts.items():
        if count or not (given.handed or given.reused):
            mass = mass_of(count, given.plate_mass)
            line = Line(item=item, product=given.product or "", net=Amount(count), mass=mass)
            yield packed(line, "bundle", given.per_bundle)


def _missing(given: TiePlatesInput, seats: int) -> float:
    """Return how many of some seats no old plate is left for; all of them where none is used again."""
    # taken from the seats themselves, so that no rounding of a share makes a plate more
    return seats - (seats * given.plated_share * given.recovered_share if given.reused else 0.0)


def _notes(given: TiePlatesInput, seats: int, new: float) -> tuple[str, ...]:
    if not given.reused or not new:
        return ()
    named = "" if given.product else " No plate is named for them: say which matches those in track."
    told = (
        f"Plates are used again at {seats - new:.10g} of {seats} seats ({given.plated_share:.4g} of the old seats have one, "
        f"{given.recovered_share:.4g} of these are recovered); the other {new:.10g} are ordered new.{named}"
    )
    return (told,)


def evaluate(given: TiePlatesInput) -> TiePlatesResult:
    """Count plates: ties times renewed rails on wood ties.

    Raises:
        RefusedError: the stretch contradicts itself.
    """
    ties = sum(part.count for part in ranges_of(given.stretch))
    seats = ties * rail_count(given.stretch.rails) if given.tie_kind == "wood" else 0
    left, right = _hands(given.stretch, seats)
    new = _missing(given, seats)
    return TiePlatesResult(
        seats=seats,
        plates=seats,
        plates_new=new,
        plates_left=left,
        plates_right=right,
        bundles=None if given.per_bundle is None else new / given.per_bundle,
        mass=mass_of(seats, given.plate_mass),
        checks=_fit(given.rail_base, given.plate_rail_base_least, given.plate_rail_base),
        note=held_by_others(given.tie_kind, "tie plates"),
        notes=_notes(given, seats, new),
        lines=tuple(_lines(given, _missing(given, left), _missing(given, right))),
    )


RULE = Rule(
    id="quantities.tie-plates",
    title="Tie plates",
    summary=(
        "One plate under each renewed rail on each wood tie, whatever its shoulders. Where plates are used again, only those are "
        "ordered that the old track lacks or that are not recovered. Handed plates are split by rail; the high rail of a curve "
        "to the left is the right one."
    ),
    formulas=(
        Formula("seats", "ties times renewed rails where ties are of wood, else 0", exact=False),
        Formula("plates", "n_s"),
        Formula("plates_new", "n_s, or n_s * (1 - plated share * recovered share) where plates are used again", exact=False),
        Formula("mass", "n * m_1", exact=False),
    ),
    cites=(
        Cite("tie-plates-supplier", "table of plates by rail base and plan number, mass of one", "published"),
        Cite("common-practice", "one plate at each crossing of rail and wood tie", "common-practice"),
    ),
    input=TiePlatesInput,
    output=TiePlatesResult,
    evaluate=evaluate,
)
