"""The job model: what an estimator knows of a relay before anything is ordered."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from typing import Annotated, Literal

from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import FeatureRule
from railrules_api.domain.records import lean
from railrules_api.domain.track import Curve, Rails, Span, Station, TieSetting
from railrules_api.rules.quantities.given import (
    RenewedShare,
    TieKind,
)
from railrules_api.rules.quantities.loads import Vehicle
from railrules_api.rules.quantities.work_plan import Production
from railrules_api.rules.takeoff.provisions import Provisions
from railrules_api.rules.takeoff.stability_terms import Stability
from railrules_api.rules.takeoff.supply import Supply, Temperatures, TieIn
from railrules_api.rules.takeoff.tracks import NewTrack, OldTrack


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class JobFeature:
    """A fixed object along the line; what its kind asks for comes from the catalogue, unless a rule of its own is given."""

    kind: Annotated[str, Field("Kind of object.", taken=Taken("kind", "feature-kinds", "id"))]
    rule: Annotated[FeatureRule, Field("What it asks for, if not as its kind does.", taken=Taken("kind", "feature-kinds"))]
    begin: Station
    end: Annotated[
        float | None,
        Field("Station of its far end; left out: it stands at one station.", kind=Kind.LENGTH, at_least=-1e8, at_most=1e8),
    ] = None
    name: Annotated[str | None, Field("Name, such as `bridge 14.2`.")] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class CustomItem:
    """Something of the railroad's own, counted by a rule of quantity; what is left out adds nothing.

    A count may be negative where one thing stands in for another, so long as the item's total over the job is not.
    """

    item: Annotated[str, Field("What it is.")]
    per_tie: Annotated[float | None, Field("Pieces to each tie.", at_least=-1e4, at_most=1e4)] = None
    per_seat: Annotated[float | None, Field("Pieces to each tie at each renewed rail.", at_least=-1e4, at_most=1e4)] = None
    per_rail: Annotated[
        float | None,
        Field(
            "Pieces to each rail length of each renewed rail: of new track laid of single rails, else of the old track.",
            at_least=-1e4, at_most=1e4,
        ),
    ] = None  # fmt: skip
    per_joint: Annotated[
        float | None,
        Field("Pieces to each joint: of new track laid of single rails, else of the old track.", at_least=-1e4, at_most=1e4),
    ] = None
    pieces: Annotated[float | None, Field("Pieces to each `per_length` of track.", at_least=-1e6, at_most=1e6)] = None
    per_length: Annotated[
        float | None, Field("Length of track that takes `pieces`.", kind=Kind.LENGTH, above=0.0, at_most=1e6)
    ] = None
    mass_each: Annotated[float | None, Field("Mass of one piece.", kind=Kind.MASS, above=0.0, at_most=1e6)] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Segment:
    """A part of the job in which everything but curves and features is the same."""

    name: Annotated[str, Field("Name of the segment, unique in the job.")]
    track: Annotated[str | None, Field("Track it belongs to, such as `main 1`; left out: the job has one track.")] = None
    begin: Station
    end: Station
    rails: Annotated[Rails, Field("Rails renewed; high or low only where all of the segment lies in curves of one hand.")]
    tie_kind: TieKind
    ties: Annotated[TieSetting, Field("Where the ties stand.")]
    renewed_share: RenewedShare
    track_class: Annotated[
        int | None, Field("Class of track, for the checks of sound ties and of joints.", at_least=1, at_most=5)
    ] = None
    sound_ties: Annotated[
        int | None,
        Field(
            "Fewest sound ties in any 39 ft that are straight or curve by no more than 2 degrees; left out: not counted yet.",
            at_least=0,
            at_most=200,
        ),
    ] = None
    sound_ties_in_curves: Annotated[
        int | None,
        Field("Fewest sound ties in any 39 ft of sharper curves; left out: not counted yet.", at_least=0, at_most=200),
    ] = None
    lateral_resistance: Annotated[
        float | None,
        Field(
            "Lateral resistance of the track per length, where it is not that of the job's stability.",
            kind=Kind.FORCE_PER_LENGTH, at_least=1.0, at_most=1e7,
        ),
    ] = None  # fmt: skip
    curves: Annotated[tuple[Curve, ...], Field("Curves, in order, not overlapping; the rest is tangent.")] = ()
    left_out: Annotated[tuple[Span, ...], Field("Further parts that the work skips.")] = ()
    features: Annotated[tuple[JobFeature, ...], Field("Fixed objects in the segment.")] = ()
    begin_closing: Annotated[
        TieIn | None, Field("How a rail that begins here is closed to the rail before; left out: the supply's `tie_in`.")
    ] = None
    end_closing: Annotated[
        TieIn | None, Field("How a rail that ends here is closed to the rail beyond; left out: the supply's `tie_in`.")
    ] = None
    old: Annotated[OldTrack, Field("The track that comes out.")]
    new: Annotated[NewTrack, Field("The track that goes in.")]
    custom: Annotated[tuple[CustomItem, ...], Field("Further items by rule of quantity.", most_items=50)] = ()


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Allowance:
    """A share added to the job's net total of an item."""

    item: Annotated[str, Field("Id of the item.")]
    share: Annotated[float, Field("Share added: 0.02 is two percent.", at_least=0.0, at_most=1.0)]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Packaging:
    """How an item is packed, where it is not as the catalogue says. For counted items only."""

    item: Annotated[str, Field("Id of the item.")]
    package: Annotated[str, Field("What it comes in, such as `keg`.")]
    pieces: Annotated[float, Field("Pieces in one.", above=0.0, at_most=1e6)]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class ItemMass:
    """What an item weighs, where neither the catalogue nor the job says so with the item."""

    item: Annotated[str, Field("Id of the item.")]
    mass_each: Annotated[
        float | None, Field("Mass of one piece, of what is counted.", kind=Kind.MASS, above=0.0, at_most=1e5)
    ] = None
    density: Annotated[
        float | None, Field("Mass to a volume, of what is measured by volume.", kind=Kind.DENSITY, above=0.0, at_most=3e4)
    ] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Price:
    """The price of an item: of one piece, one package, or one unit of length, volume or mass."""

    item: Annotated[str, Field("Id of the item.")]
    product: Annotated[str | None, Field("Catalogue id of the product; left out: any.")] = None
    price: Annotated[Decimal, Field("Price, as a decimal in quotes.")]
    per: Annotated[
        Literal["each", "package", "ft", "m", "mi", "km", "gal", "l", "lb", "kg", "short_ton", "long_ton", "t"],
        Field("What it buys."),
    ]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Prices:
    """Prices in one currency."""

    currency: Annotated[str, Field("Currency code, such as USD.")]
    decimals: Annotated[int, Field("Decimals to which each line is rounded.", at_least=0, at_most=6)]
    items: Annotated[tuple[Price, ...], Field("Prices.", most_items=500)]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Hauling:
    """How materials are hauled in, and what is recovered hauled out; strings go by rail train besides."""

    vehicles: Annotated[
        tuple[Vehicle, ...], Field("Kinds of truck and car, each in place of the others.", at_least=1, most_items=20)
    ]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Job:
    """A relay job."""

    name: Annotated[str, Field("Name of the job.")]
    segments: Annotated[tuple[Segment, ...], Field("Segments, in any order.", at_least=1, most_items=20_000)]
    supply: Annotated[Supply, Field("How the new rail is made, hauled and joined.")]
    temperatures: Annotated[Temperatures, Field("Rail temperatures that the checks rest on.")]
    stability: Annotated[
        Stability | None,
        Field("What holds the hot track sideways; left out: buckling is not checked, and no restriction temperature is told."),
    ] = None
    provisions: Annotated[
        Provisions | None, Field("What the job provides for and no count can tell; what is left out is not checked.")
    ] = None
    allowances: Annotated[tuple[Allowance, ...], Field("Allowances, where not as the catalogue says.", most_items=200)] = ()
    packaging: Annotated[tuple[Packaging, ...], Field("Packages, where not as the catalogue says.", most_items=200)] = ()
    masses: Annotated[
        tuple[ItemMass, ...], Field("Masses of items whose mass is not known otherwise, for tons and loads.", most_items=200)
    ] = ()
    production: Annotated[Production | None, Field("The user's own production; left out: work is counted and not timed.")] = None
    hauling: Annotated[Hauling | None, Field("Trucks and cars; left out: tons by item, and no loads.")] = None
    prices: Annotated[Prices | None, Field("Prices; left out: the answer has no money in it.")] = None
