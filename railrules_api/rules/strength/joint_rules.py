"""What 49 CFR Part 213 asks of one bolted joint."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Final, Literal, NamedTuple

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.rules import words
from railrules_api.rules.checks import Check, compare

WELD_NEW: Final = 60 * words.DAY
"""213.119(c)(2): weld a joint made while installing within this time [s]."""
WELD_FAILURE: Final = 30 * words.DAY
"""213.119(c)(3): weld the replacement of a failed rail within this time [s]."""
ANCHORED: Final = 195 * words.FOOT
"""213.119(c): length of track with every tie anchored, both ways from the joint [m]."""
SIX_BOLTS: Final = 6
WELDED_RAIL_BOLTS: Final = 2
BOLTS: Final = {1: 1, 2: 2, 3: 2, 4: 2, 5: 2}
"""213.121(d), from memory: bolts in each rail at a joint of jointed track, by class."""
MISMATCH: Final = {1: (4, 4), 2: (4, 3), 3: (3, 3), 4: (2, 2), 5: (2, 2)}
"""213.115, from memory: greatest mismatch on the tread and on the gage side, in sixteenths of an inch, by class."""
TORCH_CUT_FROM: Final = 3
_SIXTEENTH: Final = words.INCH / 16
_HAIR: Final = 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class Joint:
    """A bolted joint as the job leaves it."""

    name: Annotated[str, Field("Name or station, for the answer.")]
    origin: Annotated[
        Literal["installation", "service-failure", "existing"],
        Field("How it came about: while installing welded rail, by a failure in service with a gap, or it was there."),
    ]
    bolts_in_rail: Annotated[
        int | None, Field("Bolts in the rail that has fewer; left out: not known, and not checked.", at_least=0, at_most=8)
    ] = None
    welded_after: Annotated[float | None, Field("Time until it is welded.", kind=Kind.DURATION, at_least=0.0, at_most=1e10)] = (
        None
    )
    anchored_each_way: Annotated[
        float | None, Field("Length with every tie anchored, on the shorter side.", kind=Kind.LENGTH, at_least=0.0, at_most=1e6)
    ] = None
    bolt_added: Annotated[bool | None, Field("After a failure: one bolt more in each rail end.")] = None
    anchors_adjusted: Annotated[bool | None, Field("After a failure: anchors put back or adjusted.")] = None
    rail_added_with_provision: Annotated[
        bool | None, Field("After a failure: rail was added and later adjustment is provided for.")
    ] = None
    torch_cut: Annotated[bool | None, Field("Whether a rail end is torch-cut.")] = None
    tread_mismatch: Annotated[
        float | None, Field("Mismatch on the tread.", kind=Kind.LENGTH, at_least=0.0, at_most=0.05, answer=SMALL)
    ] = None
    gage_mismatch: Annotated[
        float | None, Field("Mismatch on the gage side.", kind=Kind.LENGTH, at_least=0.0, at_most=0.05, answer=SMALL)
    ] = None


class _Way(NamedTuple):
    """One of the ways that a section leaves open; `also` must hold besides."""

    words: str
    demand: Amount
    capacity: Amount
    also: bool

    @property
    def met(self) -> bool:
        return self.also and self.demand.value <= self.capacity.value * (1 + _HAIR)


def checks_of(joint: Joint, *, track_class: int | None, welded: bool) -> tuple[Check, ...]:
    """Hold one joint against the sections that apply.

    Args:
        joint: the joint.
        track_class: 1 to 5; None where it is not known, so that what hangs on it is not checked.
        welded: whether it stands in continuous welded rail.
    """
    checks = [_bolts(joint, track_class=track_class, welded=welded)]
    if welded and joint.origin == "installation":
        checks.append(_one_of(joint, "joint-new", "Bolted joint made while installing", _new_ways(joint), "49 CFR 213.119(c)(2)"))
    if welded and joint.origin == "service-failure":
        checks.append(
            _one_of(
                joint, "joint-failure", "Bolted joint after a failure with a gap", _failure_ways(joint), "49 CFR 213.119(c)(3)"
            )
        )
    if track_class is None or track_class >= TORCH_CUT_FROM:
        checks.append(_torch(joint, track_class))
    tread, gage = (None, None) if track_class is None else MISMATCH[track_class]
    checks.extend(
        _mismatch(joint, side, found, limit)
        for side, found, limit in (("tread", joint.tread_mismatch, tread), ("gage", joint.gage_mismatch, gage))
        if found is not None
    )
    return tuple(checks)


def _bolts(joint: Joint, *, track_class: int | None, welded: bool) -> Check:
    code, title = "joint-bolts", f"Bolts in each rail: {joint.name}"
    place = "49 CFR 213.119(c)(1)" if welded else "49 CFR 213.121(d), from memory"
    if joint.bolts_in_rail is None:
        return Check(code=code, title=title, verdict="not-checked", governing="bolts_in_rail", place=place)
    if welded:
        wanted = WELDED_RAIL_BOLTS
    elif track_class is None:
        return Check(code=code, title=title, verdict="not-checked", governing="track_class", place=place)
    else:
        wanted = BOLTS[track_class]
    return compare(
        code=code,
        title=title,
        demand=Amount(wanted),
        capacity=Amount(joint.bolts_in_rail),
        governing="bolts_in_rail",
        would_pass=f"at least {wanted} in each rail",
        place=place,
    )


def _new_ways(joint: Joint) -> list[_Way]:
    ways: list[_Way] = []
    if joint.bolts_in_rail is not None:
        ways.append(_Way("six bolts installed", Amount(SIX_BOLTS), Amount(2 * joint.bolts_in_rail), also=True))
    if joint.welded_after is not None:
        ways.append(
            _Way("welded within 60 days", Amount(joint.welded_after, Kind.DURATION), Amount(WELD_NEW, Kind.DURATION), also=True)
        )
    return ways + _anchored(joint)


def _failure_ways(joint: Joint) -> list[_Way]:
    adjusted = joint.anchors_adjusted is True
    ways: list[_Way] = []
    if joint.welded_after is not None:
        ways.append(
            _Way(
                "welded, or rail replaced, anchors adjusted and welded within 30 days",
                Amount(joint.welded_after, Kind.DURATION),
                Amount(WELD_FAILURE, Kind.DURATION),
                also=adjusted or joint.welded_after == 0.0,
            )
        )
    for text, done in (
        ("one bolt added in each rail end and anchors adjusted", joint.bolt_added),
        ("rail added with provision for later adjustment, and anchors put back", joint.rail_added_with_provision),
    ):
        if done is not None:
            ways.append(_Way(text, Amount(1), Amount(1 if done else 0), also=adjusted))
    return ways + _anchored(joint)


def _anchored(joint: Joint) -> list[_Way]:
    if joint.anchored_each_way is None:
        return []
    held = Amount(joint.anchored_each_way, Kind.LENGTH)
    return [_Way("every tie anchored 195 ft both ways", Amount(ANCHORED, Kind.LENGTH), held, also=True)]


def _one_of(joint: Joint, code: str, title: str, ways: list[_Way], place: str) -> Check:
    """Pass where one way is met, fail where all are known and none is; show the way that is met or nearest."""
    title = f"{title}: {joint.name}"
    met = [way for way in ways if way.met]
    missing = [name for name in _NEEDED[code] if getattr(joint, name) is None]
    if missing and not met:
        return Check(code=code, title=title, verdict="not-checked", governing=", ".join(missing), place=place)
    shown = met[0] if met else min(ways, key=lambda way: way.demand.value / max(way.capacity.value, 1e-9))
    capacity = shown.capacity.value
    return Check(
        code=code,
        title=title,
        verdict="passes" if met else "fails",
        demand=shown.demand,
        capacity=shown.capacity,
        utilisation=shown.demand.value / capacity if capacity > 0.0 else None,
        governing=shown.words,
        would_pass="" if met else _WAYS[code],
        place=place,
    )


_NEEDED: Final = {
    "joint-new": ("bolts_in_rail", "welded_after", "anchored_each_way"),
    "joint-failure": ("welded_after", "anchors_adjusted", "bolt_added", "anchored_each_way", "rail_added_with_provision"),
}
_WAYS: Final = {
    "joint-new": "one of: welded within 60 days; six bolts installed; every tie anchored 195 ft both ways",
    "joint-failure": (
        "one of: welded; rail replaced, anchors adjusted and welded within 30 days; one bolt added in each rail end and anchors "
        "adjusted; every tie anchored 195 ft both ways; rail added with provision for later adjustment and anchors put back"
    ),
}


def _torch(joint: Joint, track_class: int | None) -> Check:
    code, title, place = "torch-cut", f"No torch-cut rail end: {joint.name}", "49 CFR 213.122(a), Classes 3 to 5"
    if joint.torch_cut is None or (joint.torch_cut and track_class is None):
        governing = "torch_cut" if joint.torch_cut is None else "track_class"
        return Check(code=code, title=title, verdict="not-checked", governing=governing, place=place)
    remedy = "the torch-cut end sawn off; until then, and only in an emergency, speed of Class 2"
    return Check(
        code=code,
        title=title,
        verdict="fails" if joint.torch_cut else "passes",
        governing="torch_cut",
        would_pass=remedy if joint.torch_cut else "",
        place=place,
    )


def _mismatch(joint: Joint, side: str, found: float, sixteenths: int | None) -> Check:
    code, title, place = f"mismatch-{side}", f"Mismatch on the {side}: {joint.name}", "49 CFR 213.115, from memory"
    if sixteenths is None:
        return Check(code=code, title=title, verdict="not-checked", governing="track_class", place=place)
    limit = sixteenths * _SIXTEENTH
    return compare(
        code=code,
        title=title,
        demand=Amount(found, Kind.LENGTH, SMALL),
        capacity=Amount(limit * (1 + _HAIR), Kind.LENGTH, SMALL),
        governing=f"{side}_mismatch",
        would_pass=f"no more than {words.small_length(limit)}, by welding, grinding or compromise bars, or a lower class",
        place=place,
    )
