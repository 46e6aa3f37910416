"""Joint, bolt and anchoring rules of 49 CFR Part 213 that a job can be held against."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Final, Literal

from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.rules import words
from railrules_api.rules.checks import Check
from railrules_api.rules.common import OWN_STANDARDS
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.strength import joint_rules as joints

CWR_ABOVE: Final = 400 * words.FOOT
"""213.119(l): welded rail longer than this is continuous welded rail [m]."""
RECORD_KEPT: Final = 365 * words.DAY
"""213.119(j)(1): records are kept at least a year [s]."""
ANCHORED_CLASSES: Final = range(3, 6)
_HAIR: Final = 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class TrackJointsInput:
    """The job, as far as Part 213 speaks of it. What is left out is not checked, and said to be so."""

    track_class: Annotated[
        int | None,
        Field(
            "Class of track, 1 to 5; higher classes have rules of their own. Left out: what hangs on it is not checked.",
            at_least=1,
            at_most=5,
        ),
    ] = None
    rail_length: Annotated[
        float, Field("Length of the rail as welded.", kind=Kind.LENGTH, symbol="L", at_least=1e-3, at_most=1e7)
    ]
    laid_as_welded_rail: Annotated[
        bool | None, Field("Whether it was installed as continuous welded rail, which it then remains.")
    ] = None
    joints: Annotated[tuple[joints.Joint, ...], Field("Bolted joints left by the job.")] = ()
    anchored_at_turnouts: Annotated[
        bool | None, Field("Whether rail anchors stand through and on each side of every turnout and track crossing.")
    ] = None
    laid_at: Annotated[
        float | None,
        Field("Rail temperature at which rail was added.", kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15),
    ] = None
    range_lower: Annotated[
        float | None, Field("Lowest desired laying temperature.", kind=Kind.TEMPERATURE, at_least=173.15, at_most=373.15)
    ] = None
    later_adjustment: Annotated[bool | None, Field("Whether later adjustment of rail laid cold is provided for.")] = None
    plan_in_force: Annotated[bool | None, Field("Whether a welded rail plan is filed and in force.")] = None
    record_kept: Annotated[
        float | None,
        Field("How long laying temperature, place and date are kept on record.", kind=Kind.DURATION, at_least=0.0, at_most=1e11),
    ] = None


@dataclass(frozen=True, slots=True, kw_only=True)
class TrackJointsResult:
    """The checks, section by section."""

    continuous_welded_rail: Annotated[bool, Field("Whether the rules for continuous welded rail hold.")]
    failed: Annotated[int, Field("Checks that fail.")]
    not_checked: Annotated[int, Field("Checks that lack an input.")]
    checks: Annotated[tuple[Check, ...], Field("The checks.")]


def evaluate(given: TrackJointsInput) -> TrackJointsResult:
    """Hold the job against the sections of Part 213 that apply to it."""
    welded = given.laid_as_welded_rail is True or given.rail_length > CWR_ABOVE * (1 + _HAIR)
    checks: list[Check] = []
    for joint in given.joints:
        checks.extend(joints.checks_of(joint, track_class=given.track_class, welded=welded))
    if given.track_class is None or given.track_class in ANCHORED_CLASSES:
        # where they are anchored it is well in any class; where not, the class decides
        decides = given.track_class is not None or given.anchored_at_turnouts is not False
        checks.append(
            _yes_or_no(
                "anchored-turnouts",
                "Rail anchors through and on each side of turnouts and track crossings",
                "anchored_at_turnouts" if decides else "track_class",
                given.anchored_at_turnouts if decides else None,
                "rail anchors through and on each side of each",
                "49 CFR 213.133(b), Classes 3 to 5",
            )
        )
    if welded:
        checks += [
            _cold_check(given),
            _yes_or_no(
                "welded-rail-plan",
                "Welded rail plan filed and in force",
                "plan_in_force",
                given.plan_in_force,
                "a plan filed under 213.118 before the work",
                "49 CFR 213.118",
            ),
            _yes_or_no(
                "record-kept",
                "Record of rail temperature, place and date kept for a year",
                "record_kept",
                None if given.record_kept is None else given.record_kept >= RECORD_KEPT * (1 - _HAIR),
                "the record kept for at least one year",
                "49 CFR 213.119(j)(1)",
            ),
        ]
    verdicts: list[Literal["passes", "fails", "not-checked"]] = [check.verdict for check in checks]
    return TrackJointsResult(
        continuous_welded_rail=welded,
        failed=verdicts.count("fails"),
        not_checked=verdicts.count("not-checked"),
        checks=tuple(checks),
    )


def _yes_or_no(code: str, title: str, name: str, value: bool | None, remedy: str, place: str) -> Check:  # noqa: FBT001, PLR0913, PLR0917
    if value is None:
        return Check(code=code, title=title, verdict="not-checked", governing=name, place=place)
    return Check(
        code=code,
        title=title,
        verdict="passes" if value else "fails",
        governing=name,
        would_pass="" if value else remedy,
        place=place,
    )


def _cold_check(given: TrackJointsInput) -> Check:
    cold: bool | None = None
    name = "laid_at" if given.laid_at is None else "range_lower"
    if given.laid_at is not None and given.range_lower is not None:
        name = "later_adjustment"
        cold = True if given.laid_at >= given.range_lower else given.later_adjustment
    return _yes_or_no(
        "added-below-range",
        "No rail added below the desired range without provision for later adjustment",
        name,
        cold,
        "provision for later adjustment, or rail laid in the range",
        "49 CFR 213.119(d)(2)",
    )


RULE = Rule(
    id="regulation.track-joints",
    title="Joints, bolts and anchors by 49 CFR Part 213",
    summary=(
        "Holds a job against the sections of Part 213 on bolted joints, their bolts, torch-cut ends and mismatch, on anchoring "
        "at turnouts, and on laying welded rail: what is left out is not checked. Part 213 is a floor; a railroad's plan goes "
        "further."
    ),
    formulas=(Formula("continuous_welded_rail", "laid as such, or longer than 400 ft", exact=False),),
    cites=(
        Cite("cfr-49-213", "213.119(c), (d), (j) and (l); 213.121; 213.122(a); 213.133(b); 213.118", "published"),
        Cite("cfr-49-213", "213.115 mismatch; 213.121(d), bolts of jointed rail", "from-memory"),
    ),
    input=TrackJointsInput,
    output=TrackJointsResult,
    evaluate=evaluate,
    cautions=(OWN_STANDARDS,),
)
