"""Spikes of the new track, by pattern and curvature, rail-holding and plate-holding apart."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import bands_for, by_class
from railrules_api.domain.records import lean
from railrules_api.domain.track import Stretch, rail_count
from railrules_api.rules.model import Caution, Cite, Formula, Rule
from railrules_api.rules.quantities.given import (
    JointRailLength,
    NewSpikes,
    TieKind,
    held_by_others,
    joint_count,
    mass_each,
    mass_of,
    packed,
    ranges_of,
)
from railrules_api.rules.quantities.lines import Line

if TYPE_CHECKING:
    from collections.abc import Sequence

    from railrules_api.domain.patterns import SpikePattern
    from railrules_api.domain.track import TieRange

NOISE = 1e-9
"""Share of a radius that two ways of giving the same radius may differ by."""


SharpCurveRadius = Annotated[
    float,
    Field(
        "Curves below this radius are pointed out.",
        kind=Kind.LENGTH,
        above=0.0,
        at_most=1e6,
        default="sharp-curve-radius",
    ),
]
SpikingClass = Annotated[
    int | None, Field("Class of track, where the spike pattern goes by it; left out: it does not.", at_least=1, at_most=9)
]
SpikeProduct = Annotated[str | None, Field("Catalogue id of the spike.", taken=Taken("spike", "spikes", "id"))]
SpikeMass = Annotated[
    float | None,
    Field("Mass of one spike.", kind=Kind.MASS, above=0.0, at_most=10.0, taken=Taken("spike", "spikes", "mass")),
]
KegMass = Annotated[
    float | None,
    Field(
        "Mass of a keg or bag, where that of one spike is not known.",
        kind=Kind.MASS,
        above=0.0,
        at_most=5000.0,
        taken=Taken("spike", "spikes", "keg_mass"),
    ),
]
SpikesPerKeg = Annotated[
    float | None,
    Field("Spikes in a keg or bag.", above=0.0, at_most=1e5, taken=Taken("spike", "spikes", "count_per_keg")),
]
PlateSpike = Annotated[
    str | None,
    Field(
        "Catalogue id of what holds the plate only, such as a screw spike; left out: the same spike.",
        taken=Taken("plate_spike", "spikes", "id"),
    ),
]
PlateSpikeMass = Annotated[
    float | None,
    Field("Mass of one of them.", kind=Kind.MASS, above=0.0, at_most=10.0, taken=Taken("plate_spike", "spikes", "mass")),
]
PlateKegMass = Annotated[
    float | None,
    Field(
        "Mass of a keg of them, where that of one is not known.",
        kind=Kind.MASS,
        above=0.0,
        at_most=5000.0,
        taken=Taken("plate_spike", "spikes", "keg_mass"),
    ),
]
PlateSpikesPerKeg = Annotated[
    float | None,
    Field("Of them in a keg or bag.", above=0.0, at_most=1e5, taken=Taken("plate_spike", "spikes", "count_per_keg")),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SpikesInput:
    """A stretch and how its plates are spiked."""

    stretch: Annotated[Stretch, Field("The stretch.")]
    tie_kind: TieKind
    pattern: NewSpikes
    track_class: SpikingClass = None
    joint_rail_length: JointRailLength = None
    sharp_curve_radius: SharpCurveRadius
    product: SpikeProduct = None
    spike_mass: SpikeMass = None
    keg_mass: KegMass = None
    per_keg: SpikesPerKeg = None
    plate_spike: PlateSpike = None
    plate_spike_mass: PlateSpikeMass = None
    plate_keg_mass: PlateKegMass = None
    plate_spikes_per_keg: PlateSpikesPerKeg = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SpikesInBand:
    """What one band of the pattern comes to."""

    at_least_radius: Annotated[float | None, Field("Smallest radius of the band.", kind=Kind.LENGTH)] = None
    class_from: Annotated[int | None, Field("Lowest class of track that it holds for.")] = None
    class_to: Annotated[int | None, Field("Highest class of track that it holds for.")] = None
    ties: Annotated[int, Field("Ties in the band.")]
    rail_spikes: Annotated[int, Field("Spikes that hold the rail.")]
    plate_spikes: Annotated[int, Field("Spikes that hold the plate only.")]
    gage_spikes: Annotated[int | None, Field("Of both, spikes on the gage side; left out where the pattern does not say.")] = None
    field_spikes: Annotated[int | None, Field("Of both, spikes on the field side; left out where the pattern does not say.")] = (
        None
    )


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SpikesResult:
    """Spikes to drive, unrounded where joints are an average."""

    rail_spikes: Annotated[int, Field("Spikes that hold the rail.", symbol="n_r")]
    plate_spikes: Annotated[int, Field("Spikes that hold the plate only.", symbol="n_p")]
    gage_spikes: Annotated[
        int | None, Field("Of both, spikes on the gage side; left out where a band with ties does not say.")
    ] = None
    field_spikes: Annotated[
        int | None, Field("Of both, spikes on the field side; left out where a band with ties does not say.")
    ] = None
    joints: Annotated[float, Field("Joints of jointed track, each at a tie of its own, unrounded.", symbol="j")]
    joint_spikes: Annotated[float, Field("Further spikes at joint ties, unrounded.", symbol="n_j")]
    spikes: Annotated[float, Field("All spikes, unrounded.", symbol="n")]
    mass: Annotated[float | None, Field("Mass of all spikes.", kind=Kind.MASS)] = None
    kegs: Annotated[
        float | None, Field("Kegs or bags of the spike, unrounded; without those of another that holds the plate.")
    ] = None
    bands: Annotated[tuple[SpikesInBand, ...], Field("Count by band of the pattern.")]
    sharp_curve_ties: Annotated[int, Field("Ties in curves sharper than the limit for the usual pattern.")]
    notes: Annotated[tuple[str, ...], Field("What to mind about this answer.")]
    lines: Annotated[tuple[Line, ...], Field("Spikes to order.")]


def check_bands(pattern: SpikePattern, track_class: int | None = None) -> None:
    """Refuse a pattern whose bands do not go from wide to sharp, leave the sharpest curves out, or miscount a side.

    Raises:
        RefusedError: so it is, of the bands that hold for the class of track; or the pattern goes by class and none is given.
    """
    if track_class is None and by_class(pattern):
        raise refuse("track_class", reason="missing; the spike pattern goes by class of track")
    held = bands_for(pattern, track_class)
    if not held:
        raise refuse("track_class", reason="the spike pattern has no band for this class of track", value=track_class)
    widest = float("inf")
    for position in held:
        band = pattern.bands[position]
        at = ("pattern", "bands", position, "at_least_radius")
        if (band.at_least_radius is None) != (position == held[-1]):
            reason = "the last band, and no other, goes without a radius"
            raise refuse(*at, reason=reason, value=band.at_least_radius)
        if band.at_least_radius is not None and band.at_least_radius >= widest:
            raise refuse(*at, reason="bands must go from wide to sharp", value=band.at_least_radius, maximum=widest)
        widest = band.at_least_radius or widest
        most = band.rail_spikes + band.plate_spikes
        if band.gage_spikes is not None and band.gage_spikes > most:
            reason = "more spikes on the gage side than the band has"
            raise refuse("pattern", "bands", position, "gage_spikes", reason=reason, value=band.gage_spikes, maximum=float(most))


def band_of(pattern: SpikePattern, radius: float | None, track_class: int | None = None) -> int:
    """Return the position of the band that a curve falls in: of its class the first not wider; tangent takes the first."""
    held = bands_for(pattern, track_class)
    if radius is None:
        return held[0]
    limits = ((position, pattern.bands[position].at_least_radius) for position in held)
    return next(position for position, limit in limits if limit is None or limit <= radius * (1.0 + NOISE))


def in_bands(
    pattern: SpikePattern, ranges: Sequence[TieRange], rails: int, track_class: int | None = None
) -> tuple[SpikesInBand, ...]:
    """Return the spikes of each band on these ties.

    Raises:
        RefusedError: the pattern contradicts itself (see `check_bands`).
    """
    check_bands(pattern, track_class)
    ties = [0] * len(pattern.bands)
    for part in ranges:
        ties[band_of(pattern, part.radius, track_class)] += part.count
    return tuple(
        SpikesInBand(
            at_least_radius=band.at_least_radius,
            class_from=band.class_from,
            class_to=band.class_to,
            ties=count,
            rail_spikes=count * rails * band.rail_spikes,
            plate_spikes=count * rails * band.plate_spikes,
            gage_spikes=None if band.gage_spikes is None else count * rails * band.gage_spikes,
            field_spikes=None
            if band.gage_spikes is None
            else count * rails * (band.rail_spikes + band.plate_spikes - band.gage_spikes),
        )
        for band, count in zip(pattern.bands, ties, strict=True)
    )


def _side(spikes: Sequence[int | None]) -> int | None:
    """Add up one side over the bands that have ties; None where one of them does not tell the sides apart."""
    known = [count for count in spikes if count is not None]
    return sum(known) if len(known) == len(spikes) else None


def evaluate(given: SpikesInput) -> SpikesResult:
    """Count spikes: ties times renewed rails times spikes per plate, band by band, and what joint ties take besides.

    Raises:
        RefusedError: the stretch or the pattern contradicts itself.
    """
    ranges, rails = ranges_of(given.stretch), rail_count(given.stretch.rails)
    on_wood = given.tie_kind == "wood"
    bands = in_bands(given.pattern, ranges if on_wood else (), rails, given.track_class)
    rail_spikes, plate_spikes = sum(band.rail_spikes for band in bands), sum(band.plate_spikes for band in bands)
    sided = [band for band in bands if band.ties]
    joints = joint_count(given.stretch, given.joint_rail_length) if on_wood else 0.0
    joint_spikes = joints * given.pattern.extra_at_joint_ties
    spikes = rail_spikes + plate_spikes + joint_spikes
    limit = given.sharp_curve_radius * (1.0 - NOISE)
    sharp = sum(part.count for part in ranges if part.radius is not None and part.radius < limit)
    notes = [note] if (note := held_by_others(given.tie_kind, "cut spikes")) else []
    if sharp and on_wood:
        notes.append(
            f"{sharp} ties stand in curves sharper than the usual pattern is meant for (MIL-HDBK-1005/6, 5.3.2: 6 degrees, "
            "955 ft radius): make sure that the pattern used here is meant for them."
        )
    own = spikes if given.plate_spike is None else spikes - plate_spikes
    mass = mass_of(own, mass_each(given.spike_mass, given.keg_mass, given.per_keg))
    lines = [packed(Line(item="spikes", product=given.product or "", net=Amount(float(own)), mass=mass), "keg", given.per_keg)]
    if given.plate_spike is not None:
        each = mass_each(given.plate_spike_mass, given.plate_keg_mass, given.plate_spikes_per_keg)
        others = mass_of(plate_spikes, each)
        line = Line(item="spikes", product=given.plate_spike, net=Amount(float(plate_spikes)), mass=others)
        lines.append(packed(line, "keg", given.plate_spikes_per_keg))
        mass = None if mass is None or others is None else mass + others
    return SpikesResult(
        rail_spikes=rail_spikes,
        plate_spikes=plate_spikes,
        gage_spikes=_side([band.gage_spikes for band in sided]),
        field_spikes=_side([band.field_spikes for band in sided]),
        joints=joints,
        joint_spikes=joint_spikes,
        spikes=spikes,
        mass=mass,
        kegs=None if given.per_keg is None else own / given.per_keg,
        bands=bands,
        sharp_curve_ties=sharp,
        notes=tuple(notes),
        lines=tuple(lines),
    )


RULE = Rule(
    id="quantities.spikes",
    title="Spikes",
    summary=(
        "Spikes per plate follow the pattern's band for the curvature at each tie and, where it goes by that, for the class "
        "of track; tangent track takes the first band. Each joint of jointed track stands at a tie of its own, which takes the "
        "pattern's further spikes."
    ),
    formulas=(
        Formula("rail_spikes", "sum over bands of ties times rails times rail-holding spikes per plate", exact=False),
        Formula("plate_spikes", "sum over bands of ties times rails times plate-holding spikes per plate", exact=False),
        Formula("gage_spikes", "sum over bands of ties times rails times gage-side spikes per plate", exact=False),
        Formula("field_spikes", "n_r + n_p less those on the gage side", exact=False),
        Formula("joints", "rails times length over rail length", exact=False),
        Formula("joint_spikes", "joints times the pattern's further spikes at a joint tie", exact=False),
        Formula("spikes", "n_r + n_p + n_j"),
    ),
    cites=(
        Cite("tr0670", "3.21: on tangent two spikes a rail on every tie; more in curves", "published"),
        Cite("mil-hdbk-1005-6", "5.3.2: two spikes a side at each plate up to 6 degrees of curve", "published"),
        Cite("trautwine", "weight of railroad spikes: four to a tie, two more at each joint", "published"),
    ),
    cautions=(
        Caution(
            code="no-spike-count-in-law",
            text="49 CFR 213.127 asks for fastenings that hold gage and sets no number of spikes: the pattern is the railroad's.",
            cite=Cite("cfr-49-213", "213.127", "published"),
        ),
        Caution(
            code="spike-sources-differ",
            text="Sources differ by 5 to 7 percent on how many spikes a keg holds. Use the count of the spikes that are bought.",
            cite=Cite("spikes-supplier", "count per 200-lb keg, beside Trautwine's table and that of 1901", "published"),
        ),
    ),
    input=SpikesInput,
    output=SpikesResult,
    evaluate=evaluate,
)
