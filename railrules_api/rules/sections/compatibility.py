"""What of an old rail's furniture serves a new one: plates, joint bars, drilling, and how the height is run off."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated, Literal

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.errors import RefusedError, refuse
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.profile.compatibility import (
    Compatibility,
    Drilling,
    FittingDimensions,
    FittingLimits,
    compare_sections,
)
from railrules_api.domain.records import lean
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.common import OWN_STANDARDS
from railrules_api.rules.model import Caution, Cite, Formula, Rule

if TYPE_CHECKING:
    from collections.abc import Iterator

_EQUAL_LENGTH = 0.0004
"""Two measures closer than 1/64 in count as one: they are printed to that [m]."""
_EQUAL_ANGLE = math.radians(0.25)
"""Two slopes closer than this count as one: 13 degrees and 1 in 4, which lie 1.04 apart, do not [rad]."""


def _measure(about: str, side: str, table: str, column: str) -> Field:
    return Field(about, kind=Kind.LENGTH, above=0.0, at_most=1.0, taken=Taken(f"{side}_section", table, column), answer=SMALL)


def _section(about: str, side: str, column: str) -> Field:
    return _measure(about, side, "rail-sections", column)


def _hole(about: str, side: str, column: str) -> Field:
    return _measure(about, side, "rail-fittings", column)


def _slope(about: str, side: str, column: str) -> Field:
    taken = Taken(f"{side}_section", "rail-fittings", column)
    return Field(about, kind=Kind.ANGLE, at_least=0.0, at_most=math.pi / 4, taken=taken)


def _plate(about: str, column: str) -> Field:
    return Field(about, kind=Kind.LENGTH, above=0.0, at_most=1.0, taken=Taken("old_plate", "tie-plates", column), answer=SMALL)


PlatesWanted = Literal["new", "reused"]
OldPlateLeast = Annotated[float | None, _plate("Narrowest rail base that the old plates take.", "base_width_least")]
OldPlateMost = Annotated[float | None, _plate("Widest rail base that the old plates take.", "base_width_most")]
PlatePlay = Annotated[
    float,
    Field(
        "Difference of base and shoulders at which plates still hold the rail.", kind=Kind.LENGTH, symbol="p",
        at_least=0.0, at_most=0.01, default="plate-play",
    ),
]  # fmt: skip
RunOffRun = Annotated[
    float,
    Field(
        "Run for each unit of rise, where a change of height is run off.",
        symbol="n",
        at_least=10.0,
        at_most=1e5,
        default="run-off-run",
    ),
]


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SectionCompatibilityInput:
    """The rail that lies there and the rail that replaces or joins it."""

    old_height: Annotated[float, _section("Height of the old rail.", "old", "height")]
    new_height: Annotated[float, _section("Height of the new rail.", "new", "height")]
    old_base_width: Annotated[float, _section("Width of the old rail's base.", "old", "base_width")]
    new_base_width: Annotated[float, _section("Width of the new rail's base.", "new", "base_width")]
    old_head_width: Annotated[float | None, _section("Width of the old rail's head.", "old", "head_width")] = None
    new_head_width: Annotated[float | None, _section("Width of the new rail's head.", "new", "head_width")] = None
    old_fishing_height: Annotated[float | None, _section("Fishing height of the old rail.", "old", "fishing_height")] = None
    new_fishing_height: Annotated[float | None, _section("Fishing height of the new rail.", "new", "fishing_height")] = None
    old_head_fishing_angle: Annotated[float | None, _slope("Slope under the old rail's head.", "old", "head_fishing_angle")] = (
        None
    )
    new_head_fishing_angle: Annotated[float | None, _slope("Slope under the new rail's head.", "new", "head_fishing_angle")] = (
        None
    )
    old_base_fishing_angle: Annotated[float | None, _slope("Slope of the old rail's base.", "old", "base_fishing_angle")] = None
    new_base_fishing_angle: Annotated[float | None, _slope("Slope of the new rail's base.", "new", "base_fishing_angle")] = None
    old_hole_height: Annotated[float | None, _section("Height of the old rail's bolt holes.", "old", "hole_height")] = None
    new_hole_height: Annotated[float | None, _section("Height of the new rail's bolt holes.", "new", "hole_height")] = None
    old_hole_diameter: Annotated[float | None, _section("Diameter of the old rail's bolt holes.", "old", "hole_diameter")] = None
    new_hole_diameter: Annotated[float | None, _section("Diameter of the new rail's bolt holes.", "new", "hole_diameter")] = None
    old_hole_first: Annotated[float | None, _hole("Old rail's end to its first bolt hole.", "old", "hole_first")] = None
    new_hole_first: Annotated[float | None, _hole("New rail's end to its first bolt hole.", "new", "hole_first")] = None
    old_hole_second: Annotated[float | None, _hole("First to second bolt hole of the old rail.", "old", "hole_second")] = None
    new_hole_second: Annotated[float | None, _hole("First to second bolt hole of the new rail.", "new", "hole_second")] = None
    old_hole_third: Annotated[float | None, _hole("Second to third bolt hole of the old rail.", "old", "hole_third")] = None
    new_hole_third: Annotated[float | None, _hole("Second to third bolt hole of the new rail.", "new", "hole_third")] = None
    old_plate_base_least: OldPlateLeast = None
    old_plate_base_most: OldPlateMost = None
    plates: Annotated[
        PlatesWanted | None, Field("Plates of the new track: new, or those in track again; left out: not settled.")
    ] = None
    plate_play: PlatePlay
    run_off_run: RunOffRun


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SectionCompatibilityResult:
    """What serves, what does not, and why; what is not known is left out. Differences are new less old."""

    base_width_difference: Annotated[float, Field("Of the base widths.", kind=Kind.LENGTH, answer=SMALL)]
    height_difference: Annotated[
        float,
        Field("Of the heights: rise of the running surface on equal plates.", kind=Kind.LENGTH, symbol="dh", answer=SMALL),
    ]
    head_width_difference: Annotated[float | None, Field("Of the head widths.", kind=Kind.LENGTH, answer=SMALL)] = None
    fishing_height_difference: Annotated[float | None, Field("Of the fishing heights.", kind=Kind.LENGTH, answer=SMALL)] = None
    old_plates_serve: Annotated[bool, Field("The new rail's base lies between the shoulders of the old plates, and is held.")]
    plate_plan: Annotated[
        Literal["keep-old-plates", "new-plates", "new-plates-by-choice"],
        Field("What follows for the plates; by choice: the old ones would serve and new ones are wanted."),
    ]
    run_off_length: Annotated[
        float, Field("Length over which the difference of height is run off.", kind=Kind.LENGTH, symbol="L")
    ]
    same_joint_bars: Annotated[bool | None, Field("The same joint bars fit both; left out where that is not known.")] = None
    same_drilling: Annotated[bool | None, Field("Both are drilled alike; left out where that is not known.")] = None
    compromise_joint: Annotated[
        bool | None,
        Field("A bolted joint between them is a compromise joint, or a transition rail goes between; left out where not known."),
    ] = None
    not_known: Annotated[tuple[str, ...], Field("Measures that a verdict on the joint bars lacks.")]
    notes: Annotated[tuple[str, ...], Field("The reasons, in words.")]
    checks: Annotated[tuple[Check, ...], Field("Do the plates in track take the new rail? Asked where they are used again.")]


def _drilling(given: SectionCompatibilityInput, side: str) -> Drilling | None:
    height = getattr(given, f"{side}_hole_height")
    found = [getattr(given, f"{side}_hole_{place}") for place in ("first", "second", "third")]
    distances = tuple(distance for distance in found if distance is not None)
    if height is None or found[0] is None:
        return None
    return Drilling(distances=distances, height=height, diameter=getattr(given, f"{side}_hole_diameter"))


def _dimensions(given: SectionCompatibilityInput, side: str) -> FittingDimensions:
    names = ("height", "base_width", "head_width", "fishing_height", "head_fishing_angle", "base_fishing_angle")
    values = {name: getattr(given, f"{side}_{name}") for name in names}
    return FittingDimensions(**values, drilling=_drilling(given, side))


def _compared(given: SectionCompatibilityInput) -> Compatibility:
    limits = FittingLimits(
        ramp_gradient=1.0 / given.run_off_run,
        plate_play=given.plate_play,
        length_tolerance=_EQUAL_LENGTH,
        angle_tolerance=_EQUAL_ANGLE,
    )
    try:
        return compare_sections(_dimensions(given, "old"), _dimensions(given, "new"), limits)
    except RefusedError as error:
        first = error.refusals[0]
        raise refuse("_".join(map(str, first.path)), reason=first.reason, value=first.value) from error


def shoulders_of(given: SectionCompatibilityInput) -> tuple[float, float]:
    """Return the narrowest and the widest base that the old plates take: as their table says, else the old rail's own."""
    least, most = given.old_plate_base_least, given.old_plate_base_most
    if least is not None and most is not None and least > most:
        raise refuse("old_plate_base_least", reason="lies above the widest base of the same plates", value=least, maximum=most)
    return (
        given.old_base_width if least is None else least,
        given.old_base_width if most is None else most,
    )


def _checks(given: SectionCompatibilityInput, least: float, most: float) -> Iterator[Check]:
    place = "Geometry: the rail's base lies between, or against, the plate's shoulders"
    cure = "new plates for the new rail's base"
    play = given.plate_play
    yield compare(
        code="old-plates-take-base",
        title="Plates in track are wide enough for the new rail's base",
        demand=Amount(given.new_base_width, Kind.LENGTH, SMALL),
        capacity=Amount(most + play, Kind.LENGTH, SMALL),
        governing="new_base_width",
        would_pass=cure,
        place=place,
    )
    yield compare(
        code="old-plates-hold-base",
        title="Plates in track are narrow enough for the new rail's base",
        demand=Amount(max(least - play, 0.0), Kind.LENGTH, SMALL),
        capacity=Amount(given.new_base_width, Kind.LENGTH, SMALL),
        governing="new_base_width",
        would_pass=cure,
        place=place,
    )


def _notes(given: SectionCompatibilityInput, found: Compatibility, shoulders: tuple[float, float]) -> Iterator[str]:
    least, most = shoulders
    base, play = given.new_base_width, given.plate_play
    plates = words.fine_length(most)
    if least != most:
        plates = f"{words.fine_length(least)} to {plates}"
    held = f"{words.fine_length(base)} of base, on plates for {plates}"
    if base > most + play:
        yield f"New plates: the new rail's base is wider than the old plates' shoulders allow ({held})."
    elif base < least - play:
        yield f"New plates: the new rail's base is narrower than the old plates hold, so gage would widen ({held})."
    if found.run_off_length > 0.0 and abs(found.height_difference) > _EQUAL_LENGTH:
        way = "higher" if found.height_difference > 0.0 else "lower"
        yield (
            f"The new rail stands {words.fine_length(abs(found.height_difference))} {way} on equal plates: run it off over "
            f"{words.long_length(found.run_off_length)} where it meets the old rail."
        )
    if found.same_joint_bars is False:
        yield "The joint bars of the old rail do not fit the new one: fishing height, fishing angles or drilling differ."
    if found.compromise_joint_needed:
        yield "A joint between the two is a compromise joint or weld, or a transition rail goes between."


def evaluate(given: SectionCompatibilityInput) -> SectionCompatibilityResult:
    """Hold the new section against the old one and its plates.

    Raises:
        RefusedError: the plates' narrowest base is wider than their widest.
    """
    found = _compared(given)
    least, most = shoulders_of(given)
    serve = least - given.plate_play <= given.new_base_width <= most + given.plate_play
    plan: Literal["keep-old-plates", "new-plates", "new-plates-by-choice"] = "new-plates"
    if serve:
        plan = "new-plates-by-choice" if given.plates == "new" else "keep-old-plates"
    return SectionCompatibilityResult(
        base_width_difference=found.base_width_difference,
        height_difference=found.height_difference,
        head_width_difference=found.head_width_difference,
        fishing_height_difference=found.fishing_height_difference,
        old_plates_serve=serve,
        plate_plan=plan,
        run_off_length=abs(found.height_difference) * given.run_off_run,
        same_joint_bars=found.same_joint_bars,
        same_drilling=found.same_drilling,
        compromise_joint=found.compromise_joint_needed,
        not_known=found.unknown,
        notes=tuple(_notes(given, found, (least, most))),
        checks=tuple(_checks(given, least, most)) if given.plates == "reused" else (),
    )


RULE = Rule(
    id="sections.compatibility",
    resource="section-compatibility",
    title="Compatibility of an old and a new rail section",
    summary=(
        "Whether plates, joint bars and drilling of the old rail serve the new one, and how the change of height is run off. "
        "Plates serve when the new base lies between their shoulders within the play; where their table is not given, they are "
        "taken as made for the old rail. Joint bars serve both when fishing height, both fishing angles and drilling are the "
        "same, within 1/64 in and a quarter of a degree; a thicker web does not matter. A joint between the two is a compromise "
        "joint when the bars or the running surface differ. What is not known gives no verdict."
    ),
    formulas=(
        Formula("run_off_length", "abs(dh) * n"),
        Formula("old_plates_serve", "narrowest base - p <= new base <= widest base + p", exact=False),
    ),
    cites=(
        Cite(
            "common-practice", "plates take the base between their shoulders; bars bear on the fishing planes", "common-practice"
        ),
        Cite("arema-ch4-joint-bars", "titles: one bar for 115 and 119 RE, one for 132, 136 and 141 RE", "published"),
        Cite("cfr-49-213", "213.63(a): runoff at the end of a raise", "published"),
    ),
    input=SectionCompatibilityInput,
    output=SectionCompatibilityResult,
    evaluate=evaluate,
    columns=True,
    cautions=(
        Caution(
            code="nominal-measures",
            text=(
                "Compared by nominal measures. Worn rail, relay rail drilled to an owner's pattern and old plates with worn "
                "shoulders are measured before anything is ordered."
            ),
            cite=Cite("common-practice", "relay rail is commonly drilled to its owner's own pattern", "common-practice"),
        ),
        OWN_STANDARDS,
    ),
)
