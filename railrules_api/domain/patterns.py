"""Patterns that a railroad lays down once and uses everywhere.

How plates are spiked, how ties are anchored, what a fixed object asks of the track beside it: rows of the catalogue, or given
in a request.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal

from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SpikeBand:
    """Spikes in each plate on curves of a given radius or wider, on track of some classes or of all."""

    at_least_radius: Annotated[
        float | None,
        Field("Smallest radius of the band; left out: however sharp.", kind=Kind.LENGTH, above=0.0, at_most=1e6),
    ] = None
    class_from: Annotated[
        int | None, Field("Lowest class of track that it holds for; left out: the lowest there is.", at_least=1, at_most=9)
    ] = None
    class_to: Annotated[
        int | None,
        Field("Highest class of track that it holds for; left out: the highest there is.", at_least=1, at_most=9),
    ] = None
    rail_spikes: Annotated[int, Field("Spikes per plate that hold the rail base.", at_least=0, at_most=8)]
    plate_spikes: Annotated[int, Field("Spikes per plate that hold the plate only.", at_least=0, at_most=8)]
    gage_spikes: Annotated[
        int | None,
        Field("Of both, spikes per plate on the gage side; left out: the sides are not told apart.", at_least=0, at_most=16),
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SpikePattern:
    """Spikes per plate by curvature, widest radius first, and by class of track; tangent takes the first band of its class."""

    bands: Annotated[
        tuple[SpikeBand, ...],
        Field("Bands from wide to sharp; of each class of track the last must have no radius.", at_least=1, most_items=20),
    ]
    extra_at_joint_ties: Annotated[
        int, Field("Further spikes on each joint tie of jointed track, both rails together.", at_least=0, at_most=16)
    ]


def by_class(pattern: SpikePattern) -> bool:
    """Tell whether any band holds for some classes of track only."""
    return any(band.class_from is not None or band.class_to is not None for band in pattern.bands)


def bands_for(pattern: SpikePattern, track_class: int | None) -> tuple[int, ...]:
    """Return the positions of the bands that hold for a class of track; all of them where no class is given."""
    return tuple(
        position
        for position, band in enumerate(pattern.bands)
        if track_class is None or (band.class_from or 0) <= track_class <= (band.class_to or track_class)
    )


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class AnchorsPerRailLength:
    """Anchors of jointed track, by rail length: some against the run of traffic, some against creep back."""

    rail_length: Annotated[float, Field("Length of one rail.", kind=Kind.LENGTH, above=0.0, at_most=200.0)]
    forward: Annotated[int, Field("Anchors per rail that hold it in the main direction.", at_least=0, at_most=200)]
    back_up: Annotated[int, Field("Anchors per rail that hold it the other way.", at_least=0, at_most=200)]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class AnchorPattern:
    """Which ties carry anchors. Neither field given: none does."""

    boxed_every: Annotated[
        int | None, Field("Every n-th tie is boxed: an anchor on each side, at each rail.", at_least=1, at_most=24)
    ] = None
    per_rail: Annotated[AnchorsPerRailLength | None, Field("Anchors per rail length of jointed track.")] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class FeatureRule:
    """What a kind of fixed object asks of the relay: does the new rail go through, how are its ties and approaches anchored."""

    rail_through: Annotated[bool, Field("New rail is laid through it; if not, strings end at its limits.")]
    ties_through: Annotated[bool, Field("Ties and fastenings within its limits belong to the relay.")]
    within: Annotated[
        Literal["as-adjoining", "boxed", "none"],
        Field("Anchoring within its limits: as the adjoining track, every tie boxed, or none."),
    ]
    approach_length: Annotated[
        float, Field("Length each way that is boxed every tie.", kind=Kind.LENGTH, at_least=0.0, at_most=2000.0)
    ]
    breaks_string: Annotated[bool, Field("Strings end here and a weld or joint is made on each side.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class JointGap:
    """The gap of bolted joints for rails of some lengths, from one rail temperature up to that of the next row."""

    shortest: Annotated[
        float | None,
        Field("Shortest rails; left out: however short.", kind=Kind.LENGTH, above=0.0, at_most=500.0),
    ] = None
    longest: Annotated[float, Field("Longest rails.", kind=Kind.LENGTH, above=0.0, at_most=500.0)]
    coldest: Annotated[
        float | None,
        Field(
            "Coldest rail that it holds for, to a whole degree Fahrenheit; left out: however cold.",
            kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15,
        ),
    ] = None  # fmt: skip
    gap: Annotated[float, Field("Gap.", kind=Kind.LENGTH, at_least=0.0, at_most=0.1)]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class JointGapTable:
    """Gaps of bolted joints by rail length and rail temperature."""

    gaps: Annotated[tuple[JointGap, ...], Field("Warmest first for each range of lengths.", at_least=1, most_items=200)]
