"""Joints left in welded rail: where runs of strings are closed by a joint and not by a weld."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.checks import Check
from railrules_api.rules.model import Cite, Formula, Rule
from railrules_api.rules.quantities.joints import JointSet, TrackClass, bolts_check, lines_of, parts_of, special_lines
from railrules_api.rules.quantities.lines import Line


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class ClosingJointsInput:
    """Joints that close the runs of a layout, and what a plain one is made of."""

    plain: Annotated[int, Field("Plain joints, counted on each rail.", symbol="j_p", at_least=0, at_most=1_000_000)]
    insulated: Annotated[int, Field("Insulated joints, counted on each rail.", symbol="j_i", at_least=0, at_most=1_000_000)]
    compromise: Annotated[int, Field("Compromise joints, counted on each rail.", symbol="j_c", at_least=0, at_most=1_000_000)]
    made_of: Annotated[
        JointSet | None, Field("What a plain joint is made of; left out: its parts are not counted, and the answer says so.")
    ] = None
    track_class: TrackClass = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class ClosingJointsResult:
    """Joints and their parts."""

    joints: Annotated[int, Field("All of them.", symbol="j")]
    bars: Annotated[float | None, Field("Bars of plain joints; left out where their parts are not counted.")] = None
    bolts: Annotated[float | None, Field("Bolts of plain joints.")] = None
    nuts: Annotated[float | None, Field("Nuts.")] = None
    washers: Annotated[float | None, Field("Spring washers.")] = None
    bonds: Annotated[float | None, Field("Bonds, at all joints that are not insulated.")] = None
    bars_mass: Annotated[float | None, Field("Mass of the bars.", kind=Kind.MASS)] = None
    bolts_mass: Annotated[float | None, Field("Mass of the bolts.", kind=Kind.MASS)] = None
    checks: Annotated[tuple[Check, ...], Field("Bolts in each rail end against the least that the regulation allows.")]
    notes: Annotated[tuple[str, ...], Field("What to mind about this answer.")]
    lines: Annotated[tuple[Line, ...], Field("Joints and parts to order.")]


def evaluate(given: ClosingJointsInput) -> ClosingJointsResult:
    """Count joints and their parts. Insulated and compromise joints come complete with bars and bolts.

    >>> evaluate(ClosingJointsInput(plain=4, insulated=2, compromise=0)).joints
    6
    """
    joints = given.plain + given.insulated + given.compromise
    special = special_lines(float(given.insulated), float(given.compromise))
    made_of = given.made_of
    if made_of is None:
        notes = (f"Bars, bolts and bonds of {given.plain} plain joints are not counted: say what a joint is made of.",)
        return ClosingJointsResult(joints=joints, checks=(), notes=notes if given.plain else (), lines=special)
    parts = parts_of(made_of, float(given.plain), bonded=float(given.plain + given.compromise))
    return ClosingJointsResult(
        joints=joints,
        bars=parts.bars,
        bolts=parts.bolts,
        nuts=parts.nuts,
        washers=parts.washers,
        bonds=parts.bonds,
        bars_mass=parts.bars_mass,
        bolts_mass=parts.bolts_mass,
        checks=(bolts_check(made_of.bolts_per_joint, given.track_class, welded=True),) if given.plain else (),
        notes=(),
        lines=(*lines_of(made_of, parts), *special),
    )


RULE = Rule(
    id="quantities.closing-joints",
    title="Joints left in welded rail",
    summary=(
        "The joints that close runs of welded strings, by kind, and their bars, bolts, nuts, washers and bonds. Insulated and "
        "compromise joints come complete. A joint left in welded rail needs two bolts in each rail."
    ),
    formulas=(
        Formula("joints", "j_p + j_i + j_c"),
        Formula("bars", "j_p * b"),
        Formula("bolts", "j_p * h"),
        Formula("nuts", "j_p * h * k_n"),
        Formula("washers", "j_p * h * k_w"),
        Formula("bonds", "(j_p + j_c) * k_b"),
    ),
    cites=(
        Cite("cfr-49-213", "213.121(e): at least two bolts in each rail of a joint in welded rail", "published"),
        Cite("joint-bars-length-supplier", "bars of 24 in with 4 holes, 36 in with 6", "published"),
    ),
    input=ClosingJointsInput,
    output=ClosingJointsResult,
    evaluate=evaluate,
)
