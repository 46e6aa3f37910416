"""Mass of rail: by the rail, the mile, and in short, long and metric tons."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.given import METRES_PER_MILE
from railrules_api.rules.quantities.lines import Line

POUNDS_PER_YARD = 0.9144 / 0.45359237
"""Pounds per yard in one kg/m."""


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class RailMassInput:
    """A section and a length of it."""

    mass_per_length: Annotated[
        float,
        Field(
            "Mass of the rail per length.",
            kind=Kind.MASS_PER_LENGTH,
            symbol="m",
            above=0.0,
            at_most=500.0,
            taken=Taken("section", "rail-sections", "mass_per_length"),
        ),
    ]
    length: Annotated[float, Field("Length of each line of rail.", kind=Kind.LENGTH, symbol="L", at_least=0.0, at_most=1e8)]
    rail_lines: Annotated[int, Field("Lines of rail: 1, or 2 for both rails of a track.", symbol="r", at_least=1, at_most=2)]
    stock_length: Annotated[
        float | None,
        Field("Length of one stock rail, where its mass is asked for.", kind=Kind.LENGTH, at_least=0.1, at_most=1000.0),
    ] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class RailMassResult:
    """Mass of the rail, and per mile in every ton."""

    mass: Annotated[float, Field("Mass of the rail.", kind=Kind.MASS, symbol="M", answer=("short_ton", "t"))]
    rail_length: Annotated[float, Field("Length of all lines of rail.", kind=Kind.LENGTH, symbol="L_r")]
    track_miles: Annotated[float, Field("Miles of track, two lines of rail each, that the rail makes.", symbol="n_mi")]
    pounds_per_yard: Annotated[float, Field("Section in pounds per yard.", symbol="W")]
    short_tons_per_rail_mile: Annotated[float, Field("Tons of 2,000 lb in a mile of one rail.")]
    long_tons_per_rail_mile: Annotated[float, Field("Tons of 2,240 lb in a mile of one rail.")]
    metric_tons_per_rail_mile: Annotated[float, Field("Tonnes in a mile of one rail.")]
    short_tons_per_track_mile: Annotated[float, Field("Tons of 2,000 lb in a mile of track.")]
    long_tons_per_track_mile: Annotated[float, Field("Tons of 2,240 lb in a mile of track.")]
    metric_tons_per_track_mile: Annotated[float, Field("Tonnes in a mile of track.")]
    stock_rail_mass: Annotated[
        float | None, Field("Mass of one stock rail; left out where its length is.", kind=Kind.MASS, answer=("lb", "kg"))
    ] = None
    lines: Annotated[tuple[Line, ...], Field("The rail.")]


def evaluate(given: RailMassInput) -> RailMassResult:
    """Return the mass of a length of rail.

    >>> found = evaluate(RailMassInput(mass_per_length=70 / POUNDS_PER_YARD, length=1609.344, rail_lines=2))
    >>> round(found.short_tons_per_rail_mile, 9), round(found.long_tons_per_track_mile, 9)
    (61.6, 110.0)
    """
    each = given.mass_per_length
    pounds = each * POUNDS_PER_YARD
    length = given.length * given.rail_lines
    mass = each * length
    return RailMassResult(
        mass=mass,
        rail_length=length,
        track_miles=length / (2 * METRES_PER_MILE),
        pounds_per_yard=pounds,
        short_tons_per_rail_mile=pounds * 1760 / 2000,
        long_tons_per_rail_mile=pounds * 1760 / 2240,
        metric_tons_per_rail_mile=each * METRES_PER_MILE / 1000,
        short_tons_per_track_mile=2 * pounds * 1760 / 2000,
        long_tons_per_track_mile=pounds * 11 / 7,
        metric_tons_per_track_mile=2 * each * METRES_PER_MILE / 1000,
        stock_rail_mass=None if given.stock_length is None else each * given.stock_length,
        lines=(Line(item="new-rail", product="", net=Amount(length, Kind.LENGTH), mass=mass),),
    )


RULE = Rule(
    id="quantities.rail-mass",
    title="Mass of rail",
    summary=(
        "Mass of one or two lines of rail, and what a mile of rail and of track weighs in short, long and metric tons. The old "
        "rule that a mile of track weighs 11/7 of the pounds per yard in long tons is exact: 2 x 1760 / 2240."
    ),
    formulas=(
        Formula("rail_length", "L * r"),
        Formula("mass", "m * L_r"),
        Formula("track_miles", "L_r / (2 * 1609.344)"),
        Formula("pounds_per_yard", "m * 0.9144 / 0.45359237"),
        Formula("short_tons_per_rail_mile", "W * 1760 / 2000"),
        Formula("long_tons_per_rail_mile", "W * 1760 / 2240"),
        Formula("metric_tons_per_rail_mile", "m * 1609.344 / 1000"),
        Formula("short_tons_per_track_mile", "2 * W * 1760 / 2000"),
        Formula("long_tons_per_track_mile", "W * 11 / 7"),
        Formula("metric_tons_per_track_mile", "2 * m * 1609.344 / 1000"),
    ),
    cites=(
        Cite("vose-1857", "article 288: weight per mile of different rails", "published"),
        Cite("mills-1898", "pp. 242-247: rails of one mile of track, in long tons", "published"),
        Cite("geometry", "1,760 yards to a mile; 2,000 and 2,240 pounds to a ton", "derived"),
    ),
    input=RailMassInput,
    output=RailMassResult,
    evaluate=evaluate,
    columns=True,
)
