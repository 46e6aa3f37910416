"""Plan for destressing a length of welded rail: cut, free, pull, weld, with the marks to check on the way."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Annotated, Final

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.common import NEUTRAL_TEMPERATURE_DRIFTS, OWN_STANDARDS, Area, ElasticModulus, Expansion, RailTemperature
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.thermal.laying_adjustment import eighths
from railrules_api.rules.thermal.laying_record import RecordItem, laying_record
from railrules_api.rules.thermal.restraint_fields import Resistance

MOST_MARKS: Final = 1000
STEPS: Final = (
    "Measure rail temperature: thermometers on the shaded side of the base, until the reading stands, 10 minutes at least.",
    "Anchor the rail beyond both ends of the length over the holding length, and mark rail against track at the fixed ends.",
    "Cut at the cut station; note the opening that appears, it tells the neutral temperature there was.",
    "Take off anchors or clips over the length; lay the rail on rollers or vibrate it until it lies free.",
    "Measure rail temperature again; set marks on rail and ties at the stations of the plan; if it changed, make a new plan.",
    "Cut out or put in rail until the opening is the gap of the plan.",
    "Pull or heat until the gap is the opening for the weld; marks must have moved as planned, fixed ends not at all.",
    "Weld; keep the pull on until the weld has its strength; put the anchors back; record.",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class DestressingInput:
    """The length, the cut, the temperatures."""

    begin: Annotated[float, Field("Station of the first fixed end.", kind=Kind.LENGTH, symbol="x_1", at_least=-1e8, at_most=1e8)]
    end: Annotated[float, Field("Station of the second fixed end.", kind=Kind.LENGTH, symbol="x_2", at_least=-1e8, at_most=1e8)]
    cut: Annotated[
        float | None, Field("Station of the cut; without it the middle.", kind=Kind.LENGTH, at_least=-1e8, at_most=1e8)
    ] = None
    mark_spacing: Annotated[
        float,
        Field("Distance of marks from each fixed end on.", kind=Kind.LENGTH, above=0.1, at_most=1e4, default="mark-spacing"),
    ]
    area: Area
    elastic_modulus: ElasticModulus
    expansion: Expansion
    rail_temperature: RailTemperature
    target_temperature: Annotated[
        float, Field("Neutral temperature wanted.", kind=Kind.TEMPERATURE, symbol="t", at_least=173.15, at_most=373.15)
    ]
    neutral_temperature: Annotated[
        float | None,
        Field("Neutral temperature there is, if known.", kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15),
    ] = None
    weld_opening: Annotated[
        float,
        Field(
            "Opening that the weld needs.",
            kind=Kind.LENGTH,
            symbol="O",
            at_least=0.0,
            at_most=0.2,
            default="thermite-gap",
            answer=SMALL,
        ),
    ]
    resistance: Resistance
    anchored_beyond: Annotated[
        float | None,
        Field("Length anchored beyond each fixed end.", kind=Kind.LENGTH, at_least=0.0, at_most=1e6),
    ] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """One mark across rail and track."""

    station: Annotated[float, Field("Station.", kind=Kind.LENGTH)]
    from_fixed_end: Annotated[float, Field("Distance from the fixed end on its side of the cut.", kind=Kind.LENGTH)]
    movement: Annotated[
        float, Field("Movement expected while pulling, along rising stations positive.", kind=Kind.LENGTH, answer=SMALL)
    ]
    movement_eighths: Annotated[int, Field("The same to the nearest 1/8 in, in eighths of an inch.")]


@dataclass(frozen=True, slots=True, kw_only=True)
class DestressingResult:
    """Gap, marks, force, rail to remove, steps."""

    length: Annotated[float, Field("Length that is freed.", kind=Kind.LENGTH, symbol="L")]
    cut: Annotated[float, Field("Station of the cut as used.", kind=Kind.LENGTH, symbol="x_c")]
    extension: Annotated[
        float,
        Field("Lengthening of the free rail, both sides together.", kind=Kind.LENGTH, symbol="u", answer=SMALL),
    ]
    gap: Annotated[
        float,
        Field("Gap to make in the free rail before pulling.", kind=Kind.LENGTH, symbol="G", answer=SMALL),
    ]
    gap_eighths: Annotated[int, Field("Gap to the nearest 1/8 in, in eighths of an inch.")]
    opening: Annotated[
        float | None,
        Field(
            "Opening the freed rail makes by itself; negative is overlap; absent when the neutral temperature is not known.",
            kind=Kind.LENGTH,
            answer=SMALL,
        ),
    ]
    rail_to_remove: Annotated[
        float | None,
        Field("Rail to cut out, to put in when negative; absent likewise.", kind=Kind.LENGTH, answer=SMALL),
    ]
    pull_force: Annotated[
        float, Field("Pull at the target strain, friction not counted; negative is a push.", kind=Kind.FORCE, symbol="S")
    ]
    holding_length: Annotated[
        float,
        Field("Length beyond each fixed end whose anchors take up the pull.", kind=Kind.LENGTH, symbol="x_h"),
    ]
    marks: Annotated[tuple[Mark, ...], Field("Marks by station, the ends at the cut included.")]
    steps: Annotated[tuple[str, ...], Field("What to do, in order.")]
    checks: Annotated[tuple[Check, ...], Field("Rail cold enough to be pulled; length anchored beyond the ends.")]
    record: Annotated[tuple[RecordItem, ...], Field("What to write down.")]


def evaluate(given: DestressingInput) -> DestressingResult:
    """Return the plan: extension alpha L (t - T), shared between the sides of the cut by their lengths.

    Raises:
        RefusedError: end not beyond begin; cut outside; more than 1,000 marks.
    """
    if given.end <= given.begin:
        raise refuse("end", reason="end must lie beyond begin", value=given.end, minimum=given.begin)
    cut = (given.begin + given.end) / 2 if given.cut is None else given.cut
    if not given.begin <= cut <= given.end:
        raise refuse("cut", reason="cut lies outside", value=cut, minimum=given.begin, maximum=given.end)
    length = given.end - given.begin
    if length / given.mark_spacing > MOST_MARKS:
        raise refuse(
            "mark_spacing", reason=f"more than {MOST_MARKS} marks", value=given.mark_spacing, minimum=length / MOST_MARKS
        )
    strain = given.expansion * (given.target_temperature - given.rail_temperature)
    pull = given.elastic_modulus * given.area * strain
    extension = strain * length
    gap = extension + given.weld_opening
    neutral = given.neutral_temperature
    opening = None if neutral is None else given.expansion * (neutral - given.rail_temperature) * length
    return DestressingResult(
        length=length,
        cut=cut,
        extension=extension,
        gap=gap,
        gap_eighths=eighths(gap),
        opening=opening,
        rail_to_remove=None if opening is None else gap - opening,
        pull_force=pull,
        holding_length=abs(pull) / given.resistance,
        marks=_marks(given, cut, strain),
        steps=STEPS,
        checks=(_cold_check(given), _holding_check(given, abs(pull) / given.resistance)),
        record=laying_record(
            length=length,
            rail_temperature=given.rail_temperature,
            gap=gap,
            movement=extension,
            neutral=given.target_temperature,
        ),
    )


def _marks(given: DestressingInput, cut: float, strain: float) -> tuple[Mark, ...]:
    """Return marks every spacing from each fixed end, and both rail ends at the cut; the rail moves towards the cut."""
    marks: list[Mark] = []
    for fixed, way in ((given.begin, 1.0), (given.end, -1.0)):
        side = abs(cut - fixed)
        whole = math.floor(side / given.mark_spacing * (1 - 1e-12))
        distances = [number * given.mark_spacing for number in range(whole + 1)]
        if side > 0.0:
            distances.append(side)
        for distance in distances[:: 1 if way > 0 else -1]:
            movement = way * strain * distance
            marks.append(
                Mark(
                    station=cut if distance == side else fixed + way * distance,
                    from_fixed_end=distance,
                    movement=movement,
                    movement_eighths=eighths(movement),
                )
            )
    return tuple(marks)


def _cold_check(given: DestressingInput) -> Check:
    return compare(
        code="destressing-cold",
        title="Rail no hotter than the target, so that it can be pulled",
        demand=Amount(max(0.0, given.rail_temperature - given.target_temperature), Kind.TEMPERATURE_CHANGE),
        capacity=Amount(0.0, Kind.TEMPERATURE_CHANGE),
        governing="rail_temperature",
        would_pass=f"rail cooled to {words.temperature(given.target_temperature)} or below",
        place="rail is lengthened by pull or heat; a puller does not shorten it",
    )


def _holding_check(given: DestressingInput, holding_length: float) -> Check:
    code, title = "destressing-anchored", "Rail beyond the fixed ends anchored over the holding length"
    place = "equilibrium: pull over longitudinal resistance"
    if given.anchored_beyond is None:
        return Check(
            code=code,
            title=title,
            verdict="not-checked",
            demand=Amount(holding_length, Kind.LENGTH),
            governing="anchored_beyond",
            place=place,
        )
    return compare(
        code=code,
        title=title,
        demand=Amount(holding_length, Kind.LENGTH),
        capacity=Amount(given.anchored_beyond, Kind.LENGTH),
        governing="anchored_beyond",
        would_pass=f"{words.long_length(holding_length)} anchored beyond each end, or a stronger pattern",
        place=place,
    )


RULE = Rule(
    id="thermal.destressing",
    title="Destressing plan by stations",
    summary=(
        "Welded rail is cut, freed between two fixed ends, brought to the strain of the target neutral temperature and welded. "
        "Gives the gap, the rail to remove, the pull, the length that must hold beyond the ends, and for marks along the line "
        "the movement each must show: in proportion to its distance from the fixed end on its side of the cut."
    ),
    formulas=(
        Formula("length", "x_2 - x_1"),
        Formula("extension", "alpha * L * (t - T)"),
        Formula("gap", "u + O"),
        Formula("opening", "alpha L (T_N - T), where the neutral temperature is known", exact=False),
        Formula("rail_to_remove", "G less the opening", exact=False),
        Formula("pull_force", "E * A * alpha * (t - T)"),
        Formula("holding_length", "abs(S) / r"),
        Formula("marks", "alpha (t - T) times the distance from the fixed end, towards the cut", exact=False),
    ),
    cites=(
        Cite("everett-34-11-70", "part 3, laying gap and reading of rail temperature", "published"),
        Cite("cfr-49-213", "213.119(l), destressing; 213.119(d)(1) and (j)(1)", "published"),
        Cite("fra-l16683-1997", "abstract: deanchored length from rail force and resistance", "published"),
        Cite("memory", "order of the steps", "from-memory"),
    ),
    input=DestressingInput,
    output=DestressingResult,
    evaluate=evaluate,
    cautions=(NEUTRAL_TEMPERATURE_DRIFTS, OWN_STANDARDS),
)
