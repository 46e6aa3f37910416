"""Radius of a turnout by the number of its frog and the gauge: the curve that strings hauled through it must follow."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Final

from railrules_api.domain import turnout
from railrules_api.domain.amounts import SMALL
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.roots import arctangent
from railrules_api.rules.common import OWN_STANDARDS
from railrules_api.rules.model import Caution, Cite, Formula, Rule

LARGEST_SINE: Final = 0.5

TurnoutNumber = Annotated[float, Field("Number of the frog.", symbol="N", at_least=2.0, at_most=100.0)]
Gauge = Annotated[
    float,
    Field(
        "Gauge of track.", kind=Kind.LENGTH, symbol="g", at_least=0.3, at_most=3.0, default="track-gauge", answer=SMALL
    ),
]  # fmt: skip
HeelSpread = Annotated[
    float,
    Field(
        "Distance of the gage lines at the heel of the switch.",
        kind=Kind.LENGTH, symbol="h", at_least=0.0, at_most=1.0, default="switch-heel-spread", answer=SMALL,
    ),
]  # fmt: skip
FrogToeSpread = Annotated[
    float,
    Field(
        "Distance of the gage lines at the toe of the frog.",
        kind=Kind.LENGTH, symbol="e_f", at_least=0.0, at_most=1.0, default="frog-toe-spread", answer=SMALL,
    ),
]  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class TurnoutRadiusInput:
    """Frog, gauge, and the straight parts at either end of the closure curve."""

    turnout_number: TurnoutNumber
    gauge: Gauge
    heel_spread: HeelSpread
    frog_toe_spread: FrogToeSpread
    switch_point_length: Annotated[
        float | None,
        Field(
            "Length of the straight switch point; left out: the switch is taken not to turn at all, which is the sharpest case.",
            kind=Kind.LENGTH, at_least=0.5, at_most=50.0,
        ),
    ] = None  # fmt: skip
    point_thickness: Annotated[
        float,
        Field(
            "Thickness of the switch point at its tip.",
            kind=Kind.LENGTH, at_least=0.0, at_most=0.1, default="switch-point-thickness", answer=SMALL,
        ),
    ]  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class TurnoutRadiusResult:
    """The radius to go by, and those it is held against."""

    frog_angle: Annotated[float, Field("Angle of the frog.", kind=Kind.ANGLE, symbol="F")]
    switch_sine: Annotated[float, Field("Sine of the angle of the switch; 0 where its length is left out.", symbol="s")]
    closure_rail_radius: Annotated[
        float, Field("Radius of the curved closure rail between switch and frog.", kind=Kind.LENGTH, symbol="R_c")
    ]
    radius: Annotated[
        float, Field("Radius to go by: that of the closure curve, middle of the track.", kind=Kind.LENGTH, symbol="R")
    ]
    lead_radius: Annotated[
        float,
        Field(
            "Radius of a turnout that curves all the way from stock rail to frog, middle of the track: wider than a turnout with "
            "straight switch and frog has, so not on the safe side for one.",
            kind=Kind.LENGTH, symbol="R_L",
        ),
    ]  # fmt: skip


def switch_sine(length: float | None, heel_spread: float, point_thickness: float) -> float:
    """Return the sine of the switch angle, (h - t) / a; 0 where the length is left out.

    Raises:
        RefusedError: a point thicker than the heel spread, or so short that it stands across the track.
    """
    if length is None:
        return 0.0
    if point_thickness > heel_spread:
        reason = "thicker than the gage lines stand apart at the heel"
        raise refuse("point_thickness", reason=reason, value=point_thickness, maximum=heel_spread)
    sine = (heel_spread - point_thickness) / length
    if sine > LARGEST_SINE:
        least = (heel_spread - point_thickness) / LARGEST_SINE
        raise refuse("switch_point_length", reason="too short for the heel spread", value=length, minimum=least)
    return sine


def middle_radius(number: float, gauge: float, heel_spread: float, toe_spread: float) -> float:
    """Return the radius of the middle of the track in the closure of a turnout whose switch is not known: the sharpest case [m].

    Raises:
        RefusedError: spreads that leave nothing of the gauge, or a rail that curves within the gauge.
    """
    rail = turnout.closure_rail_radius(
        number=number, gauge=gauge, heel_spread=heel_spread, toe_spread=toe_spread, switch_sine=0.0
    )
    return _middle(rail, gauge)


def _middle(rail: float, gauge: float) -> float:
    if rail <= gauge:
        raise refuse("turnout_number", reason="so blunt a frog leaves no track to curve")
    return rail - gauge / 2


def evaluate(given: TurnoutRadiusInput) -> TurnoutRadiusResult:
    """Return the closure rail's radius (g - h - e) / (cos S - cos F), that of the middle of the track, and 2 g N^2.

    Raises:
        RefusedError: parts that do not make a turnout.
    """
    sine = switch_sine(given.switch_point_length, given.heel_spread, given.point_thickness)
    rail = turnout.closure_rail_radius(
        number=given.turnout_number,
        gauge=given.gauge,
        heel_spread=given.heel_spread,
        toe_spread=given.frog_toe_spread,
        switch_sine=sine,
    )
    return TurnoutRadiusResult(
        frog_angle=2 * arctangent(1 / (2 * given.turnout_number)),
        switch_sine=sine,
        closure_rail_radius=rail,
        radius=_middle(rail, given.gauge),
        lead_radius=turnout.lead_radius(number=given.turnout_number, gauge=given.gauge),
    )


RULE = Rule(
    id="strength.turnout-radius",
    title="Radius of a turnout by its number",
    summary=(
        "The closure curve between a straight switch and a straight frog, by the number of the frog and the gauge. Without the "
        "length of the switch point the switch is taken not to turn, which gives a radius somewhat smaller than any such turnout "
        "has: on the safe side for strings hauled through. The wider radius of a turnout curved all the way is given beside it."
    ),
    formulas=(
        Formula("frog_angle", "2 atan(1 / (2 N))", exact=False),
        Formula("switch_sine", "heel spread less point thickness over the length of the point", exact=False),
        Formula("closure_rail_radius", "(g - h - e_f) / (2 / (1 + 4 * N**2) - s**2 / (1 + sqrt(1 - s**2)))"),
        Formula("radius", "R_c - g / 2"),
        Formula("lead_radius", "2 * g * N**2"),
    ),
    cites=(
        Cite(
            "ti-850-02", "figure 6-28, equations 6-12 to 6-14: switch angle, long chord, radius of the closure rail", "published"
        ),
        Cite("google-books-tnw1", "p. 132, articles 11 and 16: radius of the outer rail, with a worked example", "published"),
        Cite("webb-railroad-construction", "section 262: turnout with circular lead rails", "published"),
    ),
    input=TurnoutRadiusInput,
    output=TurnoutRadiusResult,
    evaluate=evaluate,
    columns=True,
    cautions=(
        Caution(
            code="turnout-as-built",
            text=(
                "A turnout as built may be sharper than its number says: in points, in worn or kinked closure rails, where it "
                "leaves from the inside of a curve. Take its radius from the railroad's standard plan, or measure it."
            ),
            cite=Cite("common-practice", "turnouts as built", "common-practice"),
        ),
        OWN_STANDARDS,
    ),
)
