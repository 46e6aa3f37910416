"""Welded strings, the runs of rail they are laid in, and how long a rail is beside a curved centreline."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated, Literal, NamedTuple

from railrules_api.domain.errors import below, refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.domain.track import Curve, Station, radius_of

if TYPE_CHECKING:
    from collections.abc import Iterable

Rail = Literal["left", "right"]
PlantProcess = Literal["flash-butt", "gas-pressure"]
FieldProcess = Literal["thermite", "flash-butt"]
Closing = Literal["weld", "compromise-weld", "joint", "insulated-joint", "compromise-joint", "continues", "counted-elsewhere"]
RailTemperatureOrNone = Annotated[
    float | None,
    Field("Rail temperature; give both temperatures or neither.", kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class StockLength:
    """Stock rails of one length in a string."""

    length: Annotated[
        float, Field("Length of the rail as it comes from the mill.", kind=Kind.LENGTH, at_least=1.0, at_most=200.0)
    ]
    count: Annotated[int, Field("Rails of this length in one string.", at_least=1, at_most=1000)]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class WeldedString:
    """How a string is made at the plant, and what of it can be laid."""

    stock: Annotated[tuple[StockLength, ...], Field("Stock rails of one string, in one length or several.", most_items=20)]
    process: Annotated[PlantProcess, Field("How the plant welds.", default="plant-weld-process")]
    flash_butt_consumption: Annotated[
        float,
        Field(
            "Rail a flash-butt weld uses up, both ends together.",
            kind=Kind.LENGTH,
            at_least=0.0,
            at_most=0.2,
            default="weld-consumption",
        ),
    ]
    gas_pressure_consumption: Annotated[
        float,
        Field(
            "Rail a gas-pressure weld uses up: its upset.",
            kind=Kind.LENGTH,
            at_least=0.0,
            at_most=0.2,
            default="gas-pressure-consumption",
        ),
    ]
    end_trim: Annotated[
        float,
        Field("Cut off each end of the finished string.", kind=Kind.LENGTH, at_least=0.0, at_most=4.0, default="end-trim"),
    ]
    drilled_ends: Annotated[
        int, Field("Ends of each string drilled for temporary joints.", at_least=0, at_most=2, default="drilled-ends")
    ]
    drilled_end_cut: Annotated[
        float,
        Field(
            "Cut off a drilled end before it is welded.",
            kind=Kind.LENGTH,
            at_least=0.0,
            at_most=4.0,
            default="drilled-end-cut",
        ),
    ]
    made_temperature: RailTemperatureOrNone = None
    rail_temperature: RailTemperatureOrNone = None
    expansion: Annotated[
        float,
        Field(
            "Coefficient of linear thermal expansion.",
            kind=Kind.EXPANSION,
            above=0.0,
            at_most=1e-4,
            default="thermal-expansion",
        ),
    ]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class RailRun:
    """One rail renewed without a break; its ends are the middles of the welds or joints that close it."""

    rail: Annotated[Rail, Field("Which rail, looking along rising stations.")]
    begin: Station
    end: Station
    begin_closing: Annotated[
        Closing,
        Field(
            "How the run is closed at its begin; `continues` where it goes on in a touching run, `counted-elsewhere` where the "
            "weld is counted with rail of another section."
        ),
    ]
    end_closing: Annotated[Closing, Field("How the run is closed at its end; `continues` where it goes on in a touching run.")]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class KeepOut:
    """A place where no field weld may stand, on either rail."""

    begin: Station
    end: Station
    distance: Annotated[
        float,
        Field("Kept clear before and beyond it.", kind=Kind.LENGTH, at_least=0.0, at_most=1e4, default="keep-out-distance"),
    ]
    reason: Annotated[str, Field("What stands there: a road crossing, a bridge, a turnout.")]


RailCentres = Annotated[
    float,
    Field(
        "Distance of the middles of the two rails.",
        kind=Kind.LENGTH,
        above=0.0,
        at_most=4.0,
        default="rail-centres",
    ),
]
FieldWeld = Annotated[FieldProcess, Field("How welds are made in the field.", default="field-weld-process")]
ThermiteGap = Annotated[
    float,
    Field(
        "Gap that a thermite weld fills.",
        kind=Kind.LENGTH,
        symbol="g",
        at_least=0.0,
        at_most=0.2,
        default="thermite-gap",
    ),
]
FieldConsumption = Annotated[
    float,
    Field(
        "Rail a flash-butt weld in the field uses up.",
        kind=Kind.LENGTH,
        at_least=0.0,
        at_most=0.3,
        default="field-weld-consumption",
    ),
]
MinimumPiece = Annotated[
    float,
    Field(
        "Shortest piece of rail that may be laid.",
        kind=Kind.LENGTH,
        at_least=1.0,
        at_most=500.0,
        default="minimum-piece",
    ),
]
Stagger = Annotated[
    float,
    Field(
        "Least distance of a weld from the welds and ends of the other rail.",
        kind=Kind.LENGTH,
        at_least=0.0,
        at_most=500.0,
        default="weld-stagger",
    ),
]
SawCut = Annotated[float, Field("Rail a saw cut takes.", kind=Kind.LENGTH, at_least=0.0, at_most=0.1, default="saw-cut")]
LeftoverReach = Annotated[
    float | None,
    Field(
        "Farthest ahead of its cut that what is left of a string may be laid; left out: as far as its train goes.",
        kind=Kind.LENGTH,
        at_least=0.0,
        at_most=1e6,
    ),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Laying:
    """The runs to be laid, the strings, and what welds and cuts must keep to."""

    runs: Annotated[tuple[RailRun, ...], Field("Runs of rail renewed, in any order; runs of one rail do not overlap.")]
    string: Annotated[WeldedString, Field("The string.")]
    curves: Annotated[
        tuple[Curve, ...], Field("Curves, in order; there the rails are longer or shorter than the centreline.")
    ] = ()
    rail_centres: RailCentres
    keep_outs: Annotated[tuple[KeepOut, ...], Field("Where no field weld may stand.")] = ()
    field_weld: FieldWeld
    thermite_gap: ThermiteGap
    field_consumption: FieldConsumption
    minimum_piece: MinimumPiece
    stagger: Stagger
    saw_cut: SawCut
    leftover_reach: LeftoverReach = None
    train_strings: Annotated[
        int | None,
        Field(
            "Strings that one train brings: what is left of a cut one does not outlast its train; left out: one brings them all.",
            at_least=1,
            at_most=100_000,
        ),
    ] = None


class StringLength(NamedTuple):
    """What one string measures [m].

    Attributes:
        stock_rails: stock rails in it.
        stock: their lengths together.
        consumed: what its plant welds use up.
        made: length as made.
        usable: made, less drilled ends.
        stretch: length at the rail temperature over length as made.
    """

    stock_rails: int
    stock: float
    consumed: float
    made: float
    usable: float
    stretch: float

    @property
    def plant_welds(self) -> int:
        """Welds in one string."""
        return self.stock_rails - 1

    @property
    def laid(self) -> float:
        """What can be laid of it, at the rail temperature [m]."""
        return self.usable * self.stretch


def string_length(string: WeldedString) -> StringLength:
    """Measure a string: its stock rails, less what n - 1 welds use up, less both end trims.

    Raises:
        RefusedError: no stock, nothing left after welding and trimming, or one temperature without the other.
    """
    if not string.stock:
        raise refuse("stock", reason="a string needs at least one stock rail")
    if (string.made_temperature is None) != (string.rail_temperature is None):
        missing = "made_temperature" if string.made_temperature is None else "rail_temperature"
        raise refuse(missing, reason="give both temperatures or neither")
    count = sum(part.count for part in string.stock)
    stock = sum(part.length * part.count for part in string.stock)
    consumption = string.flash_butt_consumption if string.process == "flash-butt" else string.gas_pressure_consumption
    consumed = (count - 1) * consumption
    made = stock - consumed - 2 * string.end_trim
    usable = made - string.drilled_ends * string.drilled_end_cut
    if usable <= 0.0:
        raise refuse("stock", reason="nothing is left of the string after welding, trimming and cutting drilled ends off")
    stretch = 1.0
    if string.made_temperature is not None and string.rail_temperature is not None:
        stretch += string.expansion * (string.rail_temperature - string.made_temperature)
    return StringLength(count, stock, consumed, made, usable, stretch)


class Along:
    """Length of one rail against stations of the centreline.

    On a curve of radius R the inner rail is shorter than the centreline by half the distance of the rails over R, the outer
    longer by as much. Transitions count as part of the curve or of the tangent, as the caller gives the limits.
    """

    __slots__ = ("_lengths", "_rates", "_stations")

    def __init__(self, rail: Rail, curves: tuple[Curve, ...], rail_centres: float) -> None:
        """Build the map; the curves are in order and do not overlap.

        Args:
            rail: which rail.
            curves: the curves of the line.
            rail_centres: distance of the middles of the two rails [m].

        Raises:
            RefusedError: a curve is turned round, overlaps the one before, or has neither or both of radius and degree.
        """
        self._stations: list[float] = [0.0]
        self._lengths: list[float] = [0.0]
        self._rates: list[float] = [1.0]
        if curves:
            self._stations[0] = self._lengths[0] = curves[0].begin
        for position, curve in enumerate(curves):
            with below("curves", position):
                radius = radius_of(curve)
                if curve.end <= curve.begin:
                    raise refuse("end", reason="end must lie beyond begin", value=curve.end, minimum=curve.begin)
                if curve.begin < self._stations[-1]:
                    raise refuse(
                        "begin",
                        reason="curve overlaps the one before it",
                        value=curve.begin,
                        minimum=self._stations[-1],
                    )
            half = rail_centres / 2 / radius
            self._knot(curve.begin, 1.0 - half if curve.hand == rail else 1.0 + half)
            self._knot(curve.end, 1.0)

    def _knot(self, station: float, rate: float) -> None:
        self._lengths.append(self.length(station))
        self._stations.append(station)
        self._rates.append(rate)

    def length(self, station: float) -> float:
        """Return the length of rail up to a station [m]; before the first curve it is the station itself."""
        if station <= self._stations[0]:
            return self._lengths[0] + (station - self._stations[0])
        index = bisect_right(self._stations, station) - 1
        return self._lengths[index] + self._rates[index] * (station - self._stations[index])

    def lengths(self, stations: Iterable[float]) -> list[float]:
        """Return the lengths of rail up to stations that rise: the same as `length` of each, without looking each one up."""
        knots, places, rates = self._stations, self._lengths, self._rates
        found: list[float] = []
        index, last = -1, len(knots) - 1
        for station in stations:
            if station <= knots[0]:
                found.append(places[0] + (station - knots[0]))
                continue
            if index < 0:
                index = bisect_right(knots, station) - 1
            while index < last and knots[index + 1] <= station:
                index += 1
            found.append(places[index] + rates[index] * (station - knots[index]))
        return found

    def stations(self, lengths: Iterable[float]) -> list[float]:
        """Return the stations up to which the rail has lengths that rise: the inverse of `lengths`."""
        knots, places, rates = self._lengths, self._stations, self._rates
        found: list[float] = []
        index, last = -1, len(knots) - 1
        for length in lengths:
            if length <= knots[0]:
                found.append(places[0] + (length - knots[0]))
                continue
            if index < 0:
                index = bisect_right(knots, length) - 1
            while index < last and knots[index + 1] <= length:
                index += 1
            found.append(places[index] + (length - knots[index]) / rates[index])
        return found
