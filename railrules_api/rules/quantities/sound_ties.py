"""Check: sound ties in each 39 ft against the least that the regulation allows."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Annotated, Final

from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.checks import Check, compare
from railrules_api.rules.model import Caution, Cite, Formula, Rule

LEAST: Final = {1: (5, 6), 2: (8, 9), 3: (8, 10), 4: (12, 14), 5: (12, 14)}
"""49 CFR 213.109(b)(4): sound ties in 39 ft by class: up to 2 degrees of curve; in turnouts and sharper curves."""
SHARP: Final = math.radians(2.0)
"""Degree of curve above which the second figure holds [rad]."""
NOISE: Final = 1e-9
"""Share of it that two ways of giving the same degree may differ by."""


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SoundTiesInput:
    """Class of track, place, and the sound ties found there."""

    track_class: Annotated[int, Field("Class of track.", at_least=1, at_most=5)]
    degree: Annotated[
        float | None,
        Field("Degree of curve, by 100-ft chord; left out: tangent.", kind=Kind.ANGLE, above=0.0, at_most=math.pi),
    ] = None
    in_turnout: Annotated[bool | None, Field("The 39 ft lie in a turnout; left out: they do not.")] = None
    sound_ties: Annotated[int | None, Field("Sound ties in the 39 ft; left out: not counted yet.", at_least=0, at_most=200)] = (
        None
    )


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class SoundTiesResult:
    """The least number and the verdict."""

    least: Annotated[int, Field("Least number of sound ties in 39 ft.")]
    check: Annotated[Check, Field("Sound ties against the least number.")]


def is_sharp(degree: float) -> bool:
    """Tell whether a degree of curve is above 2 degrees, whatever the last bit says [rad]."""
    return degree > SHARP * (1.0 + NOISE)


def evaluate(given: SoundTiesInput) -> SoundTiesResult:
    """Look up the least number of sound ties and hold the count against it.

    >>> evaluate(SoundTiesInput(track_class=4, degree=math.radians(3.0), sound_ties=13)).check.verdict
    'fails'
    """
    straight, sharp = LEAST[given.track_class]
    least = sharp if given.in_turnout or (given.degree is not None and is_sharp(given.degree)) else straight
    code, title, place = "sound-ties", "Sound ties in 39 ft", "49 CFR 213.109(b)(4)"
    demand = Amount(float(least))
    if given.sound_ties is None:
        check = Check(code=code, title=title, verdict="not-checked", demand=demand, governing="sound_ties", place=place)
    else:
        short = least - given.sound_ties
        check = compare(
            code=code,
            title=title,
            demand=demand,
            capacity=Amount(given.sound_ties * 1.0),
            governing="sound_ties",
            would_pass=f"{short} more sound ties in these 39 ft, or a lower class of track",
            place=place,
        )
    return SoundTiesResult(least=least, check=check)


RULE = Rule(
    id="quantities.sound-ties",
    title="Sound ties in 39 ft",
    summary=(
        "Each 39 ft of track in classes 1 to 5 must have at least a number of ties that are not defective, more of them in "
        "turnouts and in curves of more than 2 degrees."
    ),
    formulas=(Formula("least", "table of 49 CFR 213.109(b)(4) by class and place", exact=False),),
    cites=(Cite("cfr-49-213", "213.109(b)(4)", "published"),),
    cautions=(
        Caution(
            code="number-is-not-all",
            text="The section also asks how sound ties are placed, in the 39 ft and at joints. This checks their number alone.",
            cite=Cite("cfr-49-213", "213.109", "from-memory"),
        ),
    ),
    input=SoundTiesInput,
    output=SoundTiesResult,
    evaluate=evaluate,
    columns=True,
)
