"""Gap at bolted joints by rail temperature and rail length: a published table, and the computation."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Annotated, Final

from railrules_api.domain.amounts import SMALL
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.rules import words
from railrules_api.rules.common import OWN_STANDARDS, Expansion, RailTemperature
from railrules_api.rules.model import Caution, Cite, Formula, Rule

# TI 850-02, table 9-2: (whole degrees Fahrenheit from which the row holds, gap in inches), warmest first.
_SHORT: Final = ((86, 0.0), (60, 0.0625), (35, 0.125), (15, 0.1875), (-10, 0.25))
_LONG: Final = ((86, 0.0), (66, 0.0625), (46, 0.125), (26, 0.1875), (6, 0.25))
WIDEST: Final = 0.3125
"""The table's gap below its lowest row, and so its widest [in]."""
SHORT_TO: Final = 33 * words.FOOT
LONG_FROM: Final = 39 * words.FOOT
LONG_TO: Final = 160 * words.FOOT
_HAIR: Final = 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class JointGapInput:
    """One rail length at one rail temperature."""

    rail_length: Annotated[float, Field("Length of the rails.", kind=Kind.LENGTH, symbol="L", at_least=1e-3, at_most=500.0)]
    rail_temperature: RailTemperature
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
    reading = math.floor(words.fahrenheit(given.rail_temperature) + 0.5 + _HAIR)
    table_gap, row = _look_up(given.rail_length, reading)
    per_degree = given.expansion * given.rail_length
    return JointGapResult(
        table_gap=table_gap,
        table_row=row,
        computed_gap=per_degree * max(0.0, given.closing_temperature - given.rail_temperature),
        gap_per_degree=per_degree,
    )


def _look_up(length: float, reading: int) -> tuple[float | None, str]:
    if length <= SHORT_TO * (1 + _HAIR):
        rows, name = _SHORT, "rails up to 33 ft"
    elif LONG_FROM * (1 - _HAIR) <= length <= LONG_TO * (1 + _HAIR):
        rows, name = _LONG, "rails of 39 to 160 ft"
    else:
        return None, ""
    warmer: int | None = None
    for lowest, gap in rows:
        if reading >= lowest:
            band = f"over {lowest - 1} °F" if warmer is None else f"{lowest} to {warmer - 1} °F"
            return gap * words.INCH, f"{name}, {band}"
        warmer = lowest
    return WIDEST * words.INCH, f"{name}, below {warmer} °F"


RULE = Rule(
    id="thermal.joint-gap",
    title="Gap at bolted joints by rail temperature",
    summary=(
        "The gap to leave between rails when laying jointed track: by the table of TI 850-02 for rails up to 33 ft and of 39 to "
        "160 ft, and by thermal expansion up to the temperature at which joints shall close. Insulated joints are left only as "
        "wide as the end post."
    ),
    formulas=(
        Formula("table_gap", "table 9-2 by whole degrees Fahrenheit", exact=False),
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
    columns=True,
    cautions=(
        Caution(
            code="thermometer-on-rail",
            text="Measure the rail, not the air: near the web on the shaded side of the base, ahead of laying.",
            cite=Cite("ti-850-02", "paragraph to table 9-2", "published"),
        ),
        OWN_STANDARDS,
    ),
)
