"""Gap at bolted joints by rail temperature and rail length: a published table, and the computation."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Annotated, Final

from railrules_api.domain.amounts import SMALL
from railrules_api.domain.fields import Field, Taken
from railrules_api.domain.kinds import Kind
from railrules_api.domain.patterns import JointGap, JointGapTable
from railrules_api.rules import words
from railrules_api.rules.common import OWN_STANDARDS, Expansion, RailTemperature
from railrules_api.rules.model import Caution, Cite, Formula, Rule

_HAIR: Final = 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class JointGapInput:
    """One rail length at one rail temperature."""

    rail_length: Annotated[float, Field("Length of the rails.", kind=Kind.LENGTH, symbol="L", at_least=1e-3, at_most=500.0)]
    rail_temperature: RailTemperature
    table: Annotated[
        JointGapTable,
        Field("Gaps by rail length and temperature.", default="joint-gap-table", taken=Taken("gap_table", "joint-gap-tables")),
    ]
    expansion: Expansion
    closing_temperature: Annotated[
        float,
        Field(
            "Rail temperature at which the joints shall just close, for the computation.",
            kind=Kind.TEMPERATURE,
            symbol="T_C",
            at_least=173.15,
            at_most=373.15,
            default="joint-closing-temperature",
        ),
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class JointGapResult:
    """The gap by table and by computation."""

    table_gap: Annotated[
        float | None,
        Field("Gap by the table; absent for lengths that it does not list.", kind=Kind.LENGTH, symbol="G_table", answer=SMALL),
    ]
    table_row: Annotated[str, Field("The row used; empty likewise.")]
    computed_gap: Annotated[
        float,
        Field("Gap by thermal expansion up to the closing temperature, 0 above it.", kind=Kind.LENGTH, symbol="G", answer=SMALL),
    ]
    gap_per_degree: Annotated[float, Field("Change of gap per degree.", kind=Kind.LENGTH_PER_TEMPERATURE, symbol="g")]


def evaluate(given: JointGapInput) -> JointGapResult:
    """Return the table's gap for the temperature to the nearest whole degree Fahrenheit, and alpha L (T_C - T).

    The table is printed in whole degrees; a half counts as the warmer degree.
    """
    table_gap, row = _look_up(given.table, given.rail_length, _whole(given.rail_temperature))
    per_degree = given.expansion * given.rail_length
    return JointGapResult(
        table_gap=table_gap,
        table_row=row,
        computed_gap=per_degree * max(0.0, given.closing_temperature - given.rail_temperature),
        gap_per_degree=per_degree,
    )


def _whole(temperature: float) -> int:
    return math.floor(words.fahrenheit(temperature) + 0.5 + _HAIR)


def _look_up(table: JointGapTable, length: float, reading: int) -> tuple[float | None, str]:
    """Return gap and row of the first row, warmest first, that holds for a length and a reading; none for other lengths."""
    held = [row for row in table.gaps if (row.shortest or 0.0) * (1 - _HAIR) <= length <= row.longest * (1 + _HAIR)]
    warmer: int | None = None
    for row in held:
        lowest = None if row.coldest is None else _whole(row.coldest)
        if lowest is None or reading >= lowest:
            return row.gap, f"{_rails(row)}, {_band(lowest, warmer)}"
        warmer = lowest
    return None, ""


def _rails(row: JointGap) -> str:
    longest = f"{row.longest / words.FOOT:.6g} ft"
    return f"rails up to {longest}" if row.shortest is None else f"rails of {row.shortest / words.FOOT:.6g} to {longest}"


def _band(lowest: int | None, warmer: int | None) -> str:
    if lowest is None:
        return "however warm" if warmer is None else f"below {warmer} °F"
    return f"over {lowest - 1} °F" if warmer is None else f"{lowest} to {warmer - 1} °F"


RULE = Rule(
    id="thermal.joint-gap",
    title="Gap at bolted joints by rail temperature",
    summary=(
        "The gap to leave between rails when laying jointed track: by a table, that of TI 850-02 unless another is given, for "
        "the rail lengths that it lists, and by thermal expansion up to the temperature at which joints shall close. Insulated "
        "joints are left only as wide as the end post."
    ),
    formulas=(
        Formula("table_gap", "row of the table for the rail length and the whole degree Fahrenheit", exact=False),
        Formula("computed_gap", "alpha * L * max(0, T_C - T)"),
        Formula("gap_per_degree", "alpha * L"),
    ),
    cites=(
        Cite("ti-850-02", "table 9-2", "published"),
        Cite("vose-1857", "article 289: gaps for 20-ft rails closing at 100 °F", "published"),
        Cite("strength-of-materials", "thermal expansion alpha L dT", "derived"),
    ),
    input=JointGapInput,
    output=JointGapResult,
    evaluate=evaluate,
    cautions=(
        Caution(
            code="thermometer-on-rail",
            text="Measure the rail, not the air: near the web on the shaded side of the base, ahead of laying.",
            cite=Cite("ti-850-02", "paragraph to table 9-2", "published"),
        ),
        OWN_STANDARDS,
    ),
)
