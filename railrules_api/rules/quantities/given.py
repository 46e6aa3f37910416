"""Inputs and small sums that many quantity rules share: said once here, so that one name always means one thing."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Annotated, Literal

from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import below
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import AnchorPattern, SpikePattern
from railrules_api.domain.track import rail_count, tie_ranges, worked_spans

if TYPE_CHECKING:
    from railrules_api.domain.track import Stretch, TieRange
    from railrules_api.rules.quantities.lines import Line

METRES_PER_MILE = 1609.344

TieKind = Annotated[Literal["wood", "concrete", "steel"], Field("What the ties are made of.", default="tie-kind")]
RenewedShare = Annotated[
    float,
    Field("Share of the ties that is renewed.", symbol="q", at_least=0.0, at_most=1.0, default="tie-renewed-share"),
]
OldSpikesPerPlate = Annotated[
    float,
    Field(
        "Spikes pulled at each tie plate of the old track, on average.",
        symbol="k_old",
        at_least=0.0,
        at_most=16.0,
        default="old-spikes-per-plate",
    ),
]
NewSpikes = Annotated[
    SpikePattern,
    Field("Spikes per plate of the new track.", default="spike-pattern", taken=Taken("spike_pattern", "spike-patterns")),
]
NewAnchors = Annotated[
    AnchorPattern,
    Field("Anchors that plain track carries.", default="anchor-pattern", taken=Taken("anchor_pattern", "anchor-patterns")),
]
JointRailLength = Annotated[
    float | None,
    Field(
        "Length of one rail where the new track is jointed; left out: it has no joints.",
        kind=Kind.LENGTH,
        at_least=1.0,
        at_most=1000.0,
    ),
]
BarsPerJoint = Annotated[int, Field("Bars to a joint.", symbol="b", at_least=1, at_most=4, default="bars-per-joint")]

PlatedShare = Annotated[
    float,
    Field("Share of the old tie seats that have a plate.", at_least=0.0, at_most=1.0, default="old-plated-share"),
]
RecoveredShare = Annotated[
    float,
    Field(
        "Share of the bars, bolts, plates, spikes and anchors that is recovered.",
        at_least=0.0,
        at_most=1.0,
        default="salvage-recovered-share",
    ),
]


def ranges_of(stretch: Stretch) -> tuple[TieRange, ...]:
    """Return the tie ranges of an input's stretch; refusals are told below `stretch`."""
    with below("stretch"):
        return tie_ranges(stretch)


def worked_length(stretch: Stretch) -> float:
    """Return the length of a stretch without what is left out [m]."""
    return sum(span.length for span in worked_spans(stretch))


def joint_count(stretch: Stretch, rail_length: float | None) -> float:
    """Return the joints of the renewed rails: rails times length over rail length, unrounded; 0 without a rail length."""
    return 0.0 if rail_length is None else rail_count(stretch.rails) * worked_length(stretch) / rail_length


def kept_ties(ties: int, renewed_share: float) -> float:
    """Return how many ties stay, unrounded: the same sum as in `quantities.ties`."""
    return ties - ties * renewed_share


def mass_of(count: float, each: float | None) -> float | None:
    """Return the mass of a number of pieces, None where the mass of one is not known [kg]."""
    return None if each is None else count * each


def mass_each(mass: float | None, package_mass: float | None, per_package: float | None) -> float | None:
    """Return the mass of one piece: its own where known, else a package's over the pieces in it [kg]."""
    if mass is None and package_mass is not None and per_package is not None:
        return package_mass / per_package
    return mass


def packed(line: Line, package: str, pieces: float | None) -> Line:
    """Return a line that says what its product is packed in, where the pieces in a package are known."""
    return line if pieces is None else replace(line, package=package, package_size=Amount(pieces))


def held_by_others(tie_kind: str, what: str) -> str | None:
    """Say why nothing is counted on ties that are not of wood; None on wood."""
    return None if tie_kind == "wood" else f"No {what} on {tie_kind} ties: they carry fastenings of their own."
