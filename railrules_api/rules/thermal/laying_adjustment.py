"""Adjustment of a string that is laid at another temperature than the one it shall be free of force at."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Annotated, Final, Literal

from railrules_api.domain.amounts import SMALL
from railrules_api.domain.errors import refuse
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.rules.checks import Check
from railrules_api.rules.common import (
    NEUTRAL_TEMPERATURE_DRIFTS,
    OWN_STANDARDS,
    Area,
    ElasticModulus,
    Expansion,
    RailTemperature,
)
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.thermal.laying_record import RecordItem, laying_record
from railrules_api.rules.thermal.laying_verdict import follows, range_checks

EIGHTH: Final = 0.0254 / 8
"""The step to which gaps are read and recorded: 1/8 in [m]."""
MOST_ROWS: Final = 2000


@dataclass(frozen=True, slots=True, kw_only=True)
class StringLength:
    """One column of the table."""

    length: Annotated[float, Field("Length of string.", kind=Kind.LENGTH, at_least=1e-3, at_most=1e5)]


@dataclass(frozen=True, slots=True, kw_only=True)
class TableWanted:
    """Which temperatures and string lengths the table shall show."""

    coldest: RailTemperature
    hottest: RailTemperature
    step: Annotated[float, Field("Step of temperature.", kind=Kind.TEMPERATURE_CHANGE, at_least=0.1, at_most=50.0)]
    lengths: Annotated[tuple[StringLength, ...], Field("String lengths.", most_items=50)]


@dataclass(frozen=True, slots=True, kw_only=True)
class TableRow:
    """Adjustment of one string length at one rail temperature."""

    rail_temperature: Annotated[float, Field("Rail temperature.", kind=Kind.TEMPERATURE)]
    length: Annotated[float, Field("Length of string.", kind=Kind.LENGTH)]
    movement: Annotated[float, Field("Movement of the free end, lengthening positive.", kind=Kind.LENGTH, answer=SMALL)]
    movement_eighths: Annotated[int, Field("The same to the nearest 1/8 in, in eighths of an inch.")]
    gap: Annotated[float, Field("Gap to leave, opening for the weld included.", kind=Kind.LENGTH, answer=SMALL)]
    gap_eighths: Annotated[int, Field("The same to the nearest 1/8 in, in eighths of an inch.")]


@dataclass(frozen=True, slots=True, kw_only=True)
class LayingAdjustmentInput:
    """One string, fixed at one end, free at the other."""

    string_length: Annotated[float, Field("Length adjusted.", kind=Kind.LENGTH, symbol="L", at_least=1e-3, at_most=1e5)]
    area: Area
    elastic_modulus: ElasticModulus
    expansion: Expansion
    rail_temperature: RailTemperature
    target_temperature: Annotated[
        float,
        Field("Neutral temperature wanted.", kind=Kind.TEMPERATURE, symbol="t", at_least=173.15, at_most=373.15),
    ]
    weld_opening: Annotated[
        float,
        Field(
            "Opening that the weld or joint needs.",
            kind=Kind.LENGTH,
            symbol="O",
            at_least=0.0,
            at_most=0.2,
            default="thermite-gap",
            answer=SMALL,
        ),
    ]
    friction: Annotated[
        float,
        Field(
            "Drag on one unfastened rail per length while it is pulled.",
            kind=Kind.FORCE_PER_LENGTH,
            symbol="f",
            at_least=0.0,
            at_most=1e5,
            default="pulling-friction",
        ),
    ]
    movement_made: Annotated[
        float | None,
        Field(
            "Movement actually given to the free end; without it, none.",
            kind=Kind.LENGTH,
            at_least=-10.0,
            at_most=10.0,
            answer=SMALL,
        ),
    ] = None
    range_lower: Annotated[
        float | None,
        Field("Lowest desired laying temperature.", kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15),
    ] = None
    range_upper: Annotated[
        float | None,
        Field("Highest desired laying temperature.", kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15),
    ] = None
    table: Annotated[TableWanted | None, Field("Table wanted by temperature and length.")] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class LayingAdjustmentResult:
    """What the free end and the marks must do, and what it takes."""

    temperature_difference: Annotated[
        float,
        Field("Target above rail temperature; negative when the rail is hotter.", kind=Kind.TEMPERATURE_CHANGE, symbol="D"),
    ]
    movement: Annotated[
        float, Field("Movement of the free end, lengthening positive.", kind=Kind.LENGTH, symbol="u", answer=SMALL)
    ]
    quarter_movement: Annotated[
        float,
        Field("Movement a quarter of the length from the fixed end.", kind=Kind.LENGTH, symbol="u_1", answer=SMALL),
    ]
    half_movement: Annotated[float, Field("Movement at half the length.", kind=Kind.LENGTH, symbol="u_2", answer=SMALL)]
    three_quarter_movement: Annotated[
        float,
        Field("Movement three quarters of the length from the fixed end.", kind=Kind.LENGTH, symbol="u_3", answer=SMALL),
    ]
    gap: Annotated[
        float,
        Field(
            "Gap to leave between the free ends; negative when the ends must overlap before cutting.",
            kind=Kind.LENGTH,
            symbol="G",
            answer=SMALL,
        ),
    ]
    gap_eighths: Annotated[int, Field("Gap to the nearest 1/8 in, in eighths of an inch.")]
    strain_force: Annotated[
        float,
        Field("Tension that holds the rail at the target strain; negative is a push.", kind=Kind.FORCE, symbol="S"),
    ]
    friction_force: Annotated[float, Field("Drag of the whole length.", kind=Kind.FORCE, symbol="F")]
    pull_force: Annotated[
        float | None,
        Field("Greatest pull at the free end; absent when the rail need not be lengthened.", kind=Kind.FORCE),
    ]
    means: Annotated[
        Literal["none", "lengthen", "shorten"],
        Field("What the rail needs: nothing, pulling or heating, cooling or cutting."),
    ]
    neutral_achieved: Annotated[float, Field("Neutral temperature after the movement made.", kind=Kind.TEMPERATURE, symbol="T_N")]
    follows: Annotated[tuple[str, ...], Field("What must follow.")]
    checks: Annotated[tuple[Check, ...], Field("Neutral temperature achieved against the range.")]
    table: Annotated[tuple[TableRow, ...], Field("The table, if wanted.")]
    record: Annotated[tuple[RecordItem, ...], Field("What to write down for the string.")]


def eighths(length: float) -> int:
    """Return a length [m] to the nearest 1/8 in, in eighths; a half goes up.

    >>> eighths(0.0254), eighths(-0.0254), eighths(0.0254 * 4.9312)
    (8, -8, 39)
    """
    return math.floor(length / EIGHTH + 0.5 + 1e-9)


def evaluate(given: LayingAdjustmentInput) -> LayingAdjustmentResult:
    """Return the movement alpha L (t - T), the gap G = (t - T) L alpha + O, and the pull E A alpha (t - T) + f L.

    Raises:
        RefusedError: range turned round; table turned round or with more than 2,000 rows.
    """
    if given.range_lower is not None and given.range_upper is not None and given.range_upper < given.range_lower:
        reason = "highest desired temperature below the lowest"
        raise refuse("range_upper", reason=reason, value=given.range_upper, minimum=given.range_lower)
    difference = given.target_temperature - given.rail_temperature
    movement = given.expansion * given.string_length * difference
    strain_force = given.elastic_modulus * given.area * given.expansion * difference
    friction_force = given.friction * given.string_length
    made = 0.0 if given.movement_made is None else given.movement_made
    achieved = given.rail_temperature + made / (given.expansion * given.string_length)
    gap = movement + given.weld_opening
    return LayingAdjustmentResult(
        temperature_difference=difference,
        movement=movement,
        quarter_movement=movement / 4,
        half_movement=movement / 2,
        three_quarter_movement=movement * 3 / 4,
        gap=gap,
        gap_eighths=eighths(gap),
        strain_force=strain_force,
        friction_force=friction_force,
        pull_force=strain_force + friction_force if difference > 0.0 else None,
        means="none" if difference == 0.0 else ("lengthen" if difference > 0.0 else "shorten"),
        neutral_achieved=achieved,
        follows=follows(achieved, given.range_lower, given.range_upper, given.target_temperature),
        checks=range_checks(achieved, given.range_lower, given.range_upper, given.expansion * given.string_length),
        table=() if given.table is None else _table(given, given.table),
        record=laying_record(
            length=given.string_length,
            rail_temperature=given.rail_temperature,
            gap=gap,
            movement=made,
            neutral=achieved,
        ),
    )


def _table(given: LayingAdjustmentInput, wanted: TableWanted) -> tuple[TableRow, ...]:
    if wanted.hottest < wanted.coldest:
        raise refuse("table", "hottest", reason="hottest below coldest", value=wanted.hottest, minimum=wanted.coldest)
    steps = math.floor((wanted.hottest - wanted.coldest) / wanted.step + 1e-9) + 1
    if steps * len(wanted.lengths) > MOST_ROWS:
        raise refuse("table", "step", reason=f"the table would have more than {MOST_ROWS} rows", value=wanted.step)
    rows: list[TableRow] = []
    for number in range(steps):
        temperature = wanted.coldest + number * wanted.step
        for column in wanted.lengths:
            movement = given.expansion * column.length * (given.target_temperature - temperature)
            gap = movement + given.weld_opening
            rows.append(
                TableRow(
                    rail_temperature=temperature,
                    length=column.length,
                    movement=movement,
                    movement_eighths=eighths(movement),
                    gap=gap,
                    gap_eighths=eighths(gap),
                )
            )
    return tuple(rows)


RULE = Rule(
    id="thermal.laying-adjustment",
    title="Adjustment of a string at laying",
    summary=(
        "A string fixed at one end must change its length by alpha L (t - T) to be free of force at the target temperature t. "
        "Gives the movement of the free end and of marks at the quarter points, the gap to leave with the opening for the weld, "
        "the pull with friction, the table by temperature and length, the verdict on the neutral temperature achieved, what must "
        "follow, and the record to keep. Movement is even along the length only where nothing holds the rail between its ends."
    ),
    formulas=(
        Formula("temperature_difference", "t - T"),
        Formula("movement", "alpha * L * D"),
        Formula("quarter_movement", "u / 4"),
        Formula("half_movement", "u / 2"),
        Formula("three_quarter_movement", "u * 3 / 4"),
        Formula("gap", "D * L * alpha + O"),
        Formula("strain_force", "E * A * alpha * D"),
        Formula("friction_force", "f * L"),
        Formula("pull_force", "S + F where D > 0", exact=False),
        Formula("neutral_achieved", "T + movement made / (alpha L)", exact=False),
    ),
    cites=(
        Cite(
            "everett-34-11-70",
            "part 3, laying gap G = (t - T) L K + O; thermometers, record and vibration",
            "published",
        ),
        Cite("cfr-49-213", "213.119(d)(1), (d)(2) and (j)(1)", "published"),
        Cite("strength-of-materials", "thermal strain; equilibrium of a pulled bar with friction", "derived"),
    ),
    input=LayingAdjustmentInput,
    output=LayingAdjustmentResult,
    evaluate=evaluate,
    cautions=(NEUTRAL_TEMPERATURE_DRIFTS, OWN_STANDARDS),
)
