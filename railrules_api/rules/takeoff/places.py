"""Where in a job the fields of a rule's question come from, so that a refusal names what the caller wrote."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Final

from railrules_api.domain.errors import Refusal, RefusedError
from railrules_api.domain.fields import slots_of
from railrules_api.rules.quantities import (
    anchors,
    cribbing,
    custom,
    joints,
    plate_pins,
    preservative,
    rail_mass,
    salvage,
    spikes,
    tie_plates,
    tie_plugs,
    work,
)
from railrules_api.rules.words import long_length

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from railrules_api.domain.strings import RailRun
    from railrules_api.rules.model import Rule
    from railrules_api.rules.takeoff.job import CustomItem, Segment

Path = tuple[str | int, ...]

STRETCH: Final[Mapping[str, Path]] = {
    "begin": ("begin",), "end": ("end",), "rails": ("rails",), "ties": ("ties",), "curves": ("curves",),
    "left_out": ("left_out",),
}  # fmt: skip
_NEW: Final = ("new",)
_OLD: Final = ("old",)
FIELDS: Final[Mapping[str, Mapping[str, Path]]] = {
    spikes.RULE.id: {"pattern": (*_NEW, "spikes")},
    tie_plates.RULE.id: {},
    tie_plugs.RULE.id: {},
    plate_pins.RULE.id: {"every": (*_NEW, "pinned_every"), "per_plate": (*_NEW, "pins_per_plate")},
    preservative.RULE.id: {"surface": (*_NEW, "preservative_surface")},
    anchors.RULE.id: {"pattern": (*_NEW, "anchors"), "zones": ("features",)},
    salvage.RULE.id: {
        "old_anchors": (*_OLD, "anchors"),
        **{
            name: (*_OLD, name)
            for name in ("relay_share", "reroll_share", "scrap_share", "relay_wear", "reroll_wear", "bolts_per_joint")
        },
    },
    cribbing.RULE.id: {},
    rail_mass.RULE.id: {},
    joints.RULE.id: {
        "insulated_joints": ("features",),
        **{name: (*_NEW, "joints", name) for name in ("section_changes", "rail_length", "bolts_per_joint")},
    },
    work.RULE.id: {
        "pattern": (*_NEW, "spikes"), "anchors": (*_NEW, "anchors"), "old_anchors": (*_OLD, "anchors"), "zones": ("features",),
    },
}  # fmt: skip
"""For each rule that a segment asks: which field of the segment a field of the question is. What is not here has one name in
both, or cannot be refused."""


def _moved(refusal: Refusal, path: Path, reason: str = "") -> Refusal:
    return Refusal(path, reason or refusal.reason, refusal.value, refusal.minimum, refusal.maximum, refusal.allowed)


def _is_of(item: CustomItem, given: custom.CustomInput) -> bool:
    """Tell whether a question is about an item; several may have one name."""
    return all(getattr(item, slot.name) == getattr(given, slot.name) for slot in slots_of(type(item)))


def in_segment(error: RefusedError, rule: Rule[Any, Any], given: Any, segment: Segment) -> RefusedError:  # noqa: ANN401  any rule's question
    """Return a rule's refusal of a question with the fields of the segment that it is about."""

    def place(path: Path) -> Path:
        first, *rest = path or ("",)
        if first == "stretch" and rest:
            known = STRETCH.get(str(rest[0]))
            # parts left out are those of features too, merged: their numbers are not the caller's
            return path if known is None else known if known == ("left_out",) else (*known, *rest[1:])
        if rule is custom.RULE:
            number = next(number for number, item in enumerate(segment.custom) if _is_of(item, given))
            # rails and joints are those of the old track, or of new track laid of single rails: what goes by them asks for them
            asking = "per_rail" if given.per_joint is None else "per_joint"
            return ("custom", number, asking if first == "rail_length" else str(first))
        known = FIELDS.get(rule.id, {}).get(str(first))
        return path if known is None else (*known, *rest)

    return RefusedError(*(_moved(refusal, place(refusal.path)) for refusal in error.refusals))


def in_supply(error: RefusedError, runs: Sequence[RailRun], segments: Sequence[tuple[int, Segment]]) -> RefusedError:
    """Return a refusal of the laying of some runs with the part of the job that it is about.

    Args:
        error: what the rules of supply, layout and haulage said.
        runs: the runs that were to be laid.
        segments: the segments that they are of, with their positions in the job.
    """

    def moved(refusal: Refusal) -> Refusal:
        first, *rest = refusal.path or ("",)
        if first == "runs":
            if not rest or not isinstance(rest[0], int):
                return _moved(refusal, ("segments",))
            run = runs[rest[0]]
            at = next((position for position, one in segments if one.begin <= run.begin < one.end), segments[0][0])
            where = f"new {run.rail} rail from {long_length(run.begin)} to {long_length(run.end)}"
            # lengths and stations of a run are nowhere in the request: they stand in the words
            return Refusal(("segments", at), f"{where}: {refusal.reason}")
        if first == "curves":
            return _moved(refusal, ("segments",))
        if first == "block_length":
            return _moved(refusal, ("supply", "work_block"))
        if first in ("strings", "string_length"):
            return _moved(refusal, ("supply", "string"))
        return _moved(refusal, ("supply", *refusal.path))

    return RefusedError(*(moved(refusal) for refusal in error.refusals))
