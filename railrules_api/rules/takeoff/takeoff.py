"""The takeoff of a relay job: rules are chosen, asked and added up; no arithmetic of its own that is not a rule."""

from __future__ import annotations

from math import fsum
from typing import TYPE_CHECKING, Any

from railrules_api.domain.errors import RefusedError, below, refuse
from railrules_api.domain.laying import lay
from railrules_api.domain.progress import told
from railrules_api.domain.track import spacing_of
from railrules_api.rules.model import Cite, Formula, Rule, Working
from railrules_api.rules.ordering import AllowanceTerms, ItemTerms, order_lines
from railrules_api.rules.quantities import anchor_reuse as anchor_reuse_rule
from railrules_api.rules.quantities import (
    anchors,
    closing_joints,
    custom,
    joints,
    loads,
    rail_supply,
    string_layout,
    ties,
    train_loads,
    work,
)
from railrules_api.rules.quantities import work_plan as plan_rule
from railrules_api.rules.sections import compatibility
from railrules_api.rules.strength import hauling_curve, regulation
from railrules_api.rules.takeoff import (
    anchor_reuse,
    hauling,
    masses,
    money,
    own_items,
    packing,
    places,
    provisions,
    rail,
    regulated,
    safety,
    single_rails,
    stability,
    work_plan,
)
from railrules_api.rules.takeoff.book import Book, JobLine
from railrules_api.rules.takeoff.consistency import check_job
from railrules_api.rules.takeoff.job import Job
from railrules_api.rules.takeoff.parts import Part, parts_of
from railrules_api.rules.takeoff.result import Done, RailPlan, SafetyPlan, SegmentSummary, TakeoffResult
from railrules_api.rules.takeoff.segments import AnchorsAgain, questions
from railrules_api.rules.thermal import break_gap, end_movement, force, laying_adjustment, restraint, temperature_range

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from railrules_api.domain.progress import Tell


def _anchors_again(parts: Sequence[Part], book: Book, first_of: dict[str, int]) -> dict[int, AnchorsAgain]:
    """Pool the old anchors of the whole job; segments of which none takes or gives any are left out."""
    again: dict[int, AnchorsAgain] = {}
    for pool in anchor_reuse.pools_of(parts):
        lacking = [at for at in pool.positions if None in {parts[at].segment.new.base_width, parts[at].segment.old.base_width}]
        first_of.setdefault(pool.of, (lacking or pool.positions)[0])
        again |= anchor_reuse.by_segment(pool, book.ask(anchor_reuse_rule.RULE, pool.of, pool.given))
    return again


def _segment(part: Part, again: AnchorsAgain | None, book: Book, gang: work_plan.Gang) -> SegmentSummary:
    found: dict[str, Any] = {}
    segment = part.segment
    for rule, of, given in questions(part, found, again):
        try:
            if rule is work.RULE:
                # only what is added up for the plan of the whole job is wanted; the segment's own when somebody asks to see it
                gang.add(given)
                book.workings.append(Working(rule, of, given))
            elif rule is compatibility.RULE:
                found[rule.id] = book.ask_once(rule, of, given)
            else:
                found[rule.id] = book.ask(rule, of, given)
        except RefusedError as error:
            raise places.in_segment(error, rule, given, segment) from error
    counted: ties.TiesResult = found[ties.RULE.id]
    held: anchors.AnchorsResult = found[anchors.RULE.id]
    notes = [note for answer in found.values() for note in getattr(answer, "notes", ())]
    return SegmentSummary(
        name=segment.name,
        track=segment.track,
        begin=segment.begin,
        end=segment.end,
        length=segment.end - segment.begin,
        ties=counted.ties,
        spacing=spacing_of(segment.ties),
        anchors=held.anchors,
        zones=held.zones,
        notes=tuple(dict.fromkeys(notes)),
    )


def _named(section: rail.Section) -> str:
    name = section.name or f"rail of {section.mass_per_length:.2f} kg/m"
    return f"{name}, {section.track}" if section.track else name


def _rail(group: rail.Group, job: Job, book: Book, tell: Tell | None) -> RailPlan:
    of, supply = _named(group.section), job.supply
    try:
        asked = rail.supply_input(group, supply)
        # two rules tell of one layout, and nothing of a takeoff takes longer than to find it
        layout = lay(asked, tell)
        made = rail_supply.counted(asked, layout)
        book.enter(rail_supply.RULE, of, asked, made)
        where = rail.layout_input(asked, supply)
        laid = string_layout.placed(where, layout)
        book.enter(string_layout.RULE, of, where, laid)
        hauled = book.ask(train_loads.RULE, of, rail.trains_input(group, supply, made.strings, made.string_length))
        left = rail.joints_input(group, supply, made)
        any_left = left.plain or left.insulated or left.compromise
        joints = book.ask(closing_joints.RULE, of, left) if any_left else None
    except RefusedError as error:
        own = {segment.name for segment in group.segments}
        segments = [(position, segment) for position, segment in enumerate(job.segments) if segment.name in own]
        raise places.in_supply(error, group.runs, segments) from error
    way = None
    if supply.way is not None:
        question = rail.way_input(group, job, supply.way, made.string_length)
        with below("supply", "way"):
            way = book.ask(hauling_curve.RULE, of, question)
    return RailPlan(of=of, supply=made, joints=joints, layout=laid, trains=hauled, way=way)


def _safety(
    group: rail.Group, plan: RailPlan, job: Job, found: temperature_range.TemperatureRangeResult, book: Book
) -> SafetyPlan:
    given, of = job.temperatures, plan.of
    target = found.middle if given.target is None else given.target
    hot = safety.force_input(group, given, rail=given.hottest_rail, neutral=target - given.drift)
    cold = safety.force_input(group, given, rail=given.coldest_rail, neutral=target)
    laying = None
    if given.laying_rail is not None:
        question = safety.laying_input(
            group,
            given,
            string_length=plan.supply.string_length_laid,
            laying_rail=given.laying_rail,
            target=target,
            opening=job.supply.thermite_gap if job.supply.field_weld == "thermite" else 0.0,
            limits=(found.lower, found.upper),
        )
        laying = book.ask(laying_adjustment.RULE, of, question)
    # the approaches hold one way as well as the other, so the greater of the two forces is the one to hold
    harsh = max((hot, cold), key=lambda one: abs(one.rail_temperature - one.neutral_temperature))
    zones = safety.restraint_input(group, given, rail=harsh.rail_temperature, neutral=harsh.neutral_temperature)
    end = drifted = None
    provided = job.provisions or provisions.NONE
    if safety.ends(group):
        end = book.ask_once(
            end_movement.RULE, f"{of}, end of welded rail", safety.end_input(group, given, provided, neutral=target)
        )
        if given.drift:
            warm = safety.end_input(group, given, provided, neutral=target - given.drift)
            drifted = book.ask_once(end_movement.RULE, f"{of}, end of welded rail, neutral temperature drifted", warm)
    return SafetyPlan(
        of=of,
        target=target,
        hot=book.ask(force.RULE, f"{of}, hottest rail", hot),
        cold=book.ask(force.RULE, f"{of}, coldest rail", cold),
        break_gap=book.ask(break_gap.RULE, of, safety.break_input(group, given, neutral=target)),
        laying=laying,
        restraint=None if zones is None else book.ask(restraint.RULE, of, zones),
        end=end,
        end_drifted=drifted,
    )


def _regulated(
    groups: Sequence[rail.Group],
    job: Job,
    parts: Sequence[Part],
    found: temperature_range.TemperatureRangeResult,
    book: Book,
) -> None:
    """Hold the joints that the job leaves in its welded rail against the regulation."""
    anchoring = regulated.Anchoring(parts)
    for group in groups:
        for question in regulated.questions(group, job, found.lower, anchoring):
            book.ask_once(regulation.RULE, _named(group.section), question)


def _stability(
    job: Job, book: Book, tell: Tell | None
) -> tuple[tuple[stability.TrackStability, ...], temperature_range.TemperatureRangeInput]:
    """Return what is found of each segment's track, and the question of the range that follows from it."""
    plain = safety.range_input(job.temperatures)
    if job.stability is None:
        return (), plain
    with below("temperatures"):
        neutral = temperature_range.RULE.evaluate(plain).neutral_drifted
    rows = []
    questions = stability.asked(job, job.stability, job.temperatures, neutral)
    with below("stability"):
        for question in told(questions, "stability", tell):
            found = book.ask_once(stability.RULE, question.segment.name, question.given)
            rows.append(stability.row(question, found))
    allowed = stability.least_allowed(rows)
    if allowed is None:
        return tuple(rows), plain
    # the difference rule has its margin in it already
    margin = job.stability.margin if job.stability.margin_rule == "lower-rise" else 0.0
    return tuple(rows), safety.range_input(job.temperatures, allowed + margin, margin)


def _changes(job: Job, terms: Mapping[str, ItemTerms], lines: tuple[JobLine, ...]) -> AllowanceTerms:
    """Return what the job changes of the items' terms; an item that is in no line and no catalogue is a slip of the pen."""
    known = {*terms, *(line.item for line in lines)}
    named = [("allowances", position, entry.item) for position, entry in enumerate(job.allowances)]
    named += [("packaging", position, entry.item) for position, entry in enumerate(job.packaging)]
    for field, position, item in named:
        if item not in known:
            raise refuse(field, position, "item", reason="no such item", value=item, allowed=tuple(sorted(known))[:200])
    return AllowanceTerms(
        {entry.item: entry.share for entry in job.allowances},
        {entry.item: (entry.package, entry.pieces) for entry in job.packaging},
    )


def take_off(job: Job, terms: Mapping[str, ItemTerms], tell: Tell | None = None) -> Done:
    """Answer a whole job.

    Args:
        job: the job.
        terms: how each item is ordered, by its id.
        tell: is told how far the work has come, in stages `segments`, `rail` (for each plan of rail), `stability`
            and `bill`.

    Raises:
        RefusedError: a part of the job contradicts itself or another, or a rule refuses what it is given.
    """
    check_job(job)
    book, gang = Book(), work_plan.Gang()
    parts = parts_of(job)
    first_of = {segment.name: position for position, segment in enumerate(job.segments)}
    again = _anchors_again(parts, book, first_of)
    summaries = []
    for position, part in enumerate(told(parts, "segments", tell)):
        with below("segments", position):
            summaries.append(_segment(part, again.get(position), book, gang))
    own_items.check(job, [working.found for working in book.workings if working.rule is custom.RULE])
    for track in single_rails.jointed(job, parts):
        first_of.setdefault(track.of, track.positions[0])
        try:
            book.ask(joints.RULE, track.of, track.given)
        except RefusedError as error:
            raise single_rails.in_job(error, track, job) from error
    groups = rail.groups_of(job)
    if not groups and all(segment.new.joints is None for segment in job.segments):
        raise refuse("segments", reason="no rail is renewed: features and left-out parts cover every segment")
    for group in groups:
        lacking = [segment for segment in group.segments if segment.track_class is None]
        first_of.setdefault(_named(group.section), first_of[(lacking or group.segments)[0].name])
    plans = tuple(_rail(group, job, book, tell) for group in groups)
    hot_track, range_asked = _stability(job, book, tell)
    with below("temperatures"):
        laying_range = book.ask(temperature_range.RULE, "", range_asked)
        plans_safe = tuple(_safety(group, plan, job, laying_range, book) for group, plan in zip(groups, plans, strict=True))
    _regulated(groups, job, parts, laying_range, book)
    if tell is not None:
        tell("bill", 0, 1)
    # layouts and train loads repeat no line of the supply, so every line of every answer is in the bill once
    book.weigh(masses.masses_of(job, terms, book.bill))
    lines = tuple(book.lines)
    changes = _changes(job, terms, lines)
    packing.check(job, [(entry.of, line) for entry, line in zip(lines, book.bill, strict=True)], first_of, changes.packages)
    orders = order_lines(book.bill, terms, changes)
    priced = None
    if job.prices is not None:
        with below("prices"):
            priced = money.price(orders, job.prices)
    with below("production"):
        planned = book.ask(plan_rule.RULE, "", gang.plan_input(job.production))
    with below("hauling"):
        hauling.check_items(job.hauling, terms, lines)
        hauled = [
            book.ask(loads.RULE, direction, hauling.loads_input(orders, direction, job.hauling))
            for direction in ("order", "recover")
        ]
    moved = [order for order in orders if order.direction != "work" and order.net.value > 0.0]
    return Done(
        TakeoffResult(
            name=job.name,
            orders=orders,
            lines=lines,
            segments=tuple(summaries),
            rail=plans,
            range=laying_range,
            safety=plans_safe,
            stability=hot_track,
            checks=book.checks(job, first_of),
            work=planned,
            hauled_in=hauled[0],
            hauled_out=hauled[1],
            mass_in=fsum(order.order_mass or 0.0 for order in moved if order.direction == "order"),
            mass_out=fsum(order.net_mass or 0.0 for order in moved if order.direction == "recover"),
            without_mass=tuple(
                dict.fromkeys(
                    order.item for order in moved if (order.order_mass if order.direction == "order" else order.net_mass) is None
                )
            ),
            money=priced,
        ),
        tuple(book.workings),
    )


def _alone(job: Job) -> TakeoffResult:
    """Answer a job without a catalogue of items: every item is ordered by the piece, without allowance."""
    return take_off(job, {}).result


RULE = Rule(
    id="takeoffs",
    title="Takeoff of a relay job",
    summary=(
        "Every quantity, order, train load, recovered material, check and price of a relay job, in one answer. Each line comes "
        "from the same rule that answers the question alone; allowances and rounding are applied once, to the job's total of an "
        "item."
    ),
    formulas=(
        Formula("mass_in", "sum of the masses ordered", exact=False),
        Formula("mass_out", "sum of the masses recovered", exact=False),
    ),
    cites=(Cite("counting-rules", "the takeoff adds up rules and has no arithmetic of its own", "common-practice"),),
    input=Job,
    output=TakeoffResult,
    evaluate=_alone,
)
