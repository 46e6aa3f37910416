"""Where in a job to give what a check lacks: the rule names its own input, the caller wrote a job."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Final

from railrules_api.rules.quantities import anchor_reuse, closing_joints, joints, sound_ties, tie_plates
from railrules_api.rules.strength import hauling_curve, regulation
from railrules_api.rules.thermal import end_movement, temperature_range

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_api.rules.checks import Check
    from railrules_api.rules.takeoff.job import Job

OF_SEGMENT: Final[Mapping[str, Mapping[str, str]]] = {
    sound_ties.RULE.id: {"sound_ties": "sound_ties"},
    tie_plates.RULE.id: {
        "rail_base": "new/base_width",
        "plate_rail_base": "new/plate_base_most",
        "plate_rail_base_least": "new/plate_base_least",
    },
    anchor_reuse.RULE.id: {"rail_base": "new/base_width", "old_rail_base": "old/base_width"},
    joints.RULE.id: {"track_class": "track_class"},
    closing_joints.RULE.id: {"track_class": "track_class"},
    regulation.RULE.id: {"track_class": "track_class"},
}
"""For each rule that a segment, or several of them, ask: which field of the segment an input is."""
OF_JOB: Final[Mapping[str, Mapping[str, str]]] = {
    temperature_range.RULE.id: {"allowed_rise": "/stability"},
    end_movement.RULE.id: {"room_to_close": "/provisions/room_to_close", "room_to_open": "/provisions/room_to_open"},
    hauling_curve.RULE.id: {"yield_share": "/supply/way/yield_share", "end_clearance": "/supply/way/end_clearance"},
    regulation.RULE.id: {
        "plan_in_force": "/provisions/plan_in_force",
        "record_kept": "/provisions/record_kept",
        "later_adjustment": "/provisions/later_adjustment",
        "anchored_at_turnouts": "/provisions/anchored_at_turnouts",
        "torch_cut": "/provisions/torch_cut",
        "welded_after": "/provisions/joints_welded_after",
        "laid_at": "/temperatures/laying_rail",
    },
}
"""For each rule that the whole job asks: which place in the job an input is."""
PLAIN: Final = "plain joint"
"""How the name of a plain joint begins."""


def _is_given(job: Job, pointer: str) -> bool:
    """Tell whether something stands in a job at a place."""
    found: Any = job
    for step in pointer.split("/")[1:]:
        found = found[int(step)] if isinstance(found, tuple) else getattr(found, step)
        if found is None:
            return False
    return True


def needs_of(job: Job, rule: str, given: Any, check: Check, segment: int) -> tuple[str, ...]:  # noqa: ANN401  any rule's question
    """Return the JSON pointers into a job of what a check lacks: of several, any one would let it be made.

    What is there already is not asked for again: the rule says then why it does not answer.

    Args:
        job: the job.
        rule: id of the rule that made the check.
        given: the question that it was asked.
        check: the check, which lacks something.
        segment: position of the segment that it is about, or of the first of several.
    """
    found = []
    for name in check.governing.split(", "):
        of_segment = OF_SEGMENT.get(rule, {}).get(name)
        if of_segment == "sound_ties" and given.degree is not None:
            of_segment = "sound_ties_in_curves"
        if of_segment is not None:
            found.append(f"/segments/{segment}/{of_segment}")
        elif name == "bolts_in_rail":
            joint = next(joint for joint in given.joints if check.title.endswith(joint.name))
            found.append("/supply/joints" if joint.name.startswith(PLAIN) else "/provisions/special_bolts_in_rail")
        elif name in OF_JOB.get(rule, {}):
            found.append(OF_JOB[rule][name])
    return tuple([pointer for pointer in found if not _is_given(job, pointer)])
