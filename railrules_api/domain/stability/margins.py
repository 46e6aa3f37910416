"""Allowed temperature rise from the upper and lower buckling rise, by stated margin rules."""

from __future__ import annotations

from dataclasses import dataclass

from railrules_api.domain.errors import refuse
from railrules_api.domain.stability._inputs import require_not_negative, require_positive


@dataclass(frozen=True, slots=True, kw_only=True)
class DifferenceRule:
    """Numbers of the rule that goes by the difference of the upper and the lower rise.

    Attributes:
        large_difference: above it a share of the difference is added to the lower rise [K].
        small_difference: below it a deduction is made from the lower rise [K].
        share: of the difference that is added.
        deduction: what is taken off the lower rise when the difference is small [K].
    """

    large_difference: float
    small_difference: float
    share: float
    deduction: float


UIC_720 = DifferenceRule(large_difference=20.0, small_difference=5.0, share=0.25, deduction=5.0)
"""UIC leaflet 720 and the ERRI D 202 reports, from memory: not checked against their text."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AllowedRise:
    """What a margin rule allows.

    Attributes:
        temperature_rise: allowed rise above the neutral temperature [K]; None when the rule does not permit the track.
        difference: upper rise minus lower rise [K].
        reason: which branch of the rule was taken, in words.
    """

    temperature_rise: float | None
    difference: float
    reason: str


def allowed_by_difference(*, upper_rise: float, lower_rise: float, rule: DifferenceRule) -> AllowedRise:
    """Return the rise that the difference rule allows.

    With `D = upper - lower`: `D > large`: `lower + share D`; `small <= D <= large`: `lower`; `0 < D < small`:
    `lower - deduction`; `D = 0`: not permitted. A progressive path has no upper and lower rise and is not permitted
    either; the caller must not feed it here. Source: see `UIC_720` (from memory). What the source says at exactly 20 K and
    5 K is not known; here both belong to the middle branch, the cautious side at 20 K.

    Args:
        upper_rise: rise at the upper buckling temperature [K].
        lower_rise: rise at the lower buckling temperature [K].
        rule: the numbers of the rule.

    Returns:
        The allowed rise with the branch taken.

    Raises:
        RefusedError: when a rise is not a finite number above zero, the upper is below the lower, or a number of the
            rule is negative or out of order.
    """
    require_positive(upper_rise=upper_rise, lower_rise=lower_rise)
    require_not_negative(
        large_difference=rule.large_difference,
        small_difference=rule.small_difference,
        share=rule.share,
        deduction=rule.deduction,
    )
    if rule.small_difference > rule.large_difference:
        raise refuse(
            "small_difference",
            reason="must not exceed the large difference",
            value=rule.small_difference,
            maximum=rule.large_difference,
        )
    difference = upper_rise - lower_rise
    if difference < 0.0:
        raise refuse("upper_rise", reason="must not be below the lower rise", value=upper_rise, minimum=lower_rise)
    if difference == 0.0:
        return AllowedRise(temperature_rise=None, difference=difference, reason="no difference: not permitted")
    if difference > rule.large_difference:
        rise, reason = lower_rise + rule.share * difference, "large difference: lower rise and a share of the difference"
    elif difference >= rule.small_difference:
        rise, reason = lower_rise, "medium difference: lower rise"
    else:
        rise, reason = lower_rise - rule.deduction, "small difference: lower rise less a deduction"
    if rise <= 0.0:
        return AllowedRise(temperature_rise=None, difference=difference, reason="the deduction leaves no rise")
    return AllowedRise(temperature_rise=rise, difference=difference, reason=reason)


def allowed_by_lower_rise(*, lower_rise: float, margin: float) -> float:
    """Return the rise allowed by the lower buckling rise: `dT_allowed = dT_lower - margin`.

    Below the lower rise no buckled state exists. That the lower rise is used as the allowed one is common practice,
    from memory; the margin is the caller's.

    Args:
        lower_rise: rise at the lower buckling temperature [K].
        margin: taken off it, zero or more and less than the lower rise [K].

    Returns:
        The allowed rise [K].

    Raises:
        RefusedError: when the lower rise is not above zero or the margin is negative or leaves nothing.
    """
    require_positive(lower_rise=lower_rise)
    require_not_negative(margin=margin)
    if margin >= lower_rise:
        raise refuse("margin", reason="must be less than the lower rise", value=margin, maximum=lower_rise)
    return lower_rise - margin
