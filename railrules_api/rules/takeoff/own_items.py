"""Items of a job's own: asked about segment by segment, and held to be no less than nothing over the whole job."""

from __future__ import annotations

from typing import TYPE_CHECKING

from railrules_api.domain.errors import below, refuse
from railrules_api.domain.fields import slots_of
from railrules_api.rules.ordering import total_of
from railrules_api.rules.quantities import custom
from railrules_api.rules.takeoff.job import CustomItem

if TYPE_CHECKING:
    from collections.abc import Iterable

    from railrules_api.rules.takeoff.job import Job
    from railrules_api.rules.takeoff.parts import Part


def question(part: Part, item: CustomItem) -> custom.CustomInput:
    """Return the question to `quantities.custom` for an item in a segment, which is a piece of the job."""
    new, old = part.segment.new, part.segment.old
    by_rails = item.per_rail is not None or item.per_joint is not None
    rail_length = old.rail_length if new.joints is None else new.joints.rail_length
    return custom.CustomInput(
        **{slot.name: getattr(item, slot.name) for slot in slots_of(CustomItem)},
        stretch=part.stretch,
        rail_length=rail_length if by_rails else None,
        piece=True,
    )


def check(job: Job, counted: Iterable[custom.CustomResult]) -> None:
    """Refuse an item of the job's own that comes out below zero over all segments.

    Raises:
        RefusedError: see above; at the first count that takes away from it.
    """
    counts: dict[str, list[float]] = {}
    for found in counted:
        counts.setdefault(found.lines[0].item, []).append(found.count)
    for item, values in counts.items():
        total = total_of(values)
        if total < 0.0:
            position, number, field = next(
                (position, number, field)
                for position, segment in enumerate(job.segments)
                for number, own in enumerate(segment.custom)
                for field in ("per_joint", "per_rail", "pieces", "per_seat", "per_tie")
                if own.item == item and (getattr(own, field) or 0.0) < 0.0
            )
            with below("segments", position, "custom", number):
                raise refuse(field, reason="the count comes out below zero over all segments", value=total, minimum=0.0)
