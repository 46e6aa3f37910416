"""Rail laid hot or cold: the verdict, and what must follow."""

from __future__ import annotations

from typing import Final

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare

FAR_BELOW: Final = 40 * words.FAHRENHEIT_DEGREE
"""40 °F below target: one railroad's study cards restrict or destress from here [K]."""
_PLACE: Final = "49 CFR 213.119(a)(1) and (d): the plan's desired range; the range as given"


def range_checks(neutral: float, lower: float | None, upper: float | None, length_per_degree: float) -> tuple[Check, ...]:
    """Hold a neutral temperature against both ends of the desired range.

    The demand is how far it lies outside, the capacity nothing: there is no utilisation to state.

    Args:
        neutral: neutral temperature achieved [K].
        lower: lowest desired [K], None when not given.
        upper: highest desired [K], None when not given.
        length_per_degree: change of length that shifts it by one degree, alpha L [m/K].
    """
    below_title, above_title = "Laid no colder than the desired range", "Laid no hotter than the desired range"
    checks: list[Check] = []
    if lower is None:
        checks.append(Check(code="laid-cold", title=below_title, verdict="not-checked", governing="range_lower", place=_PLACE))
    else:
        short = max(0.0, lower - neutral)
        checks.append(
            compare(
                code="laid-cold",
                title=below_title,
                demand=Amount(short, Kind.TEMPERATURE_CHANGE),
                capacity=Amount(0.0, Kind.TEMPERATURE_CHANGE),
                governing="rail_temperature",
                would_pass=f"lengthen the string by {words.small_length(short * length_per_degree)} more, by pull or heat",
                place=_PLACE,
            )
        )
    if upper is None:
        checks.append(Check(code="laid-hot", title=above_title, verdict="not-checked", governing="range_upper", place=_PLACE))
    else:
        over = max(0.0, neutral - upper)
        checks.append(
            compare(
                code="laid-hot",
                title=above_title,
                demand=Amount(over, Kind.TEMPERATURE_CHANGE),
                capacity=Amount(0.0, Kind.TEMPERATURE_CHANGE),
                governing="rail_temperature",
                would_pass=(
                    f"add {words.small_length(over * length_per_degree)} of rail in the range, or lay when the rail is cooler"
                ),
                place=_PLACE,
            )
        )
    return tuple(checks)


def follows(neutral: float, lower: float | None, upper: float | None, target: float) -> tuple[str, ...]:
    """Return what must follow from a neutral temperature, in the order in which to do it.

    Args:
        neutral: neutral temperature achieved [K].
        lower: lowest desired [K], None when not given.
        upper: highest desired [K], None when not given.
        target: neutral temperature wanted [K].
    """
    if lower is not None and neutral < lower:
        steps = [
            "Record place, date and rail temperature as laid; keep it until adjusted, and at least a year (49 CFR 213.119(j)).",
            "Provide for later adjustment: rail laid or added below the range may not simply stay (49 CFR 213.119(d)(2)).",
            "Adjust it before hot weather; until then inspect it in heat for tight and kinky rail (49 CFR 213.119(g)).",
        ]
        if neutral <= target - FAR_BELOW:
            steps.insert(
                1,
                "40 °F or more below target: restrict speed or destress, as one railroad's study cards have it (unverified).",
            )
        return tuple(steps)
    if upper is not None and neutral > upper:
        return (
            "Record place, date and rail temperature as laid (49 CFR 213.119(j)(1)).",
            "Check break gap, joints and bolts for the coldest rail with this neutral temperature, which is above the range.",
            "Inspect it in cold weather for pull-aparts, or bring it into the range (49 CFR 213.119(g)).",
        )
    if lower is None or upper is None:
        return ("Give the desired range: without it nothing is said about what must follow.",)
    return ("Record place, date and rail temperature as laid (49 CFR 213.119(j)(1)).",)
