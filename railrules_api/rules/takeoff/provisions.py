"""What a job provides for that no count can tell: the railroad's papers, and how its joints are made and looked after."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.amounts import SMALL
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class Provisions:
    """What checks of the job rest on besides its track; what is left out is not checked, and the answer says where to give it."""

    plan_in_force: Annotated[bool | None, Field("Whether a welded rail plan is filed and in force.")] = None
    record_kept: Annotated[
        float | None,
        Field("How long laying temperature, place and date are kept on record.", kind=Kind.DURATION, at_least=0.0, at_most=1e11),
    ] = None
    later_adjustment: Annotated[bool | None, Field("Whether later adjustment of rail laid cold is provided for.")] = None
    anchored_at_turnouts: Annotated[
        bool | None, Field("Whether rail anchors stand through and on each side of every turnout and track crossing.")
    ] = None
    torch_cut: Annotated[bool | None, Field("Whether any rail end at a joint is left torch-cut.")] = None
    joints_welded_after: Annotated[
        float | None,
        Field("Time until the bolted joints left in welded rail are welded.", kind=Kind.DURATION, at_least=0.0, at_most=1e10),
    ] = None
    special_bolts_in_rail: Annotated[
        int | None,
        Field("Bolts in each rail of insulated and compromise joints, which come complete.", at_least=0, at_most=8),
    ] = None
    room_to_close: Annotated[
        float | None,
        Field(
            "Room for an end of welded rail to move out: the gap of its joint at neutral temperature.",
            kind=Kind.LENGTH, at_least=0.0, answer=SMALL,
        ),
    ] = None  # fmt: skip
    room_to_open: Annotated[
        float | None,
        Field("Room for an end of welded rail to draw back before the bolts bear.", kind=Kind.LENGTH, at_least=0.0, answer=SMALL),
    ] = None


NONE = Provisions()
"""Nothing is said."""
