"""What a job asks of the quantity rules, segment by segment. No arithmetic here: rules are chosen and given their inputs.

The joints of single rails are asked for by `single_rails`, as they run on from one segment into the next.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any, NamedTuple

from railrules_api.domain.track import CHORD, radius_of, rail_count
from railrules_api.rules.quantities import (
    anchors,
    cribbing,
    custom,
    plate_pins,
    preservative,
    rail_mass,
    salvage,
    sound_ties,
    spikes,
    tie_plates,
    tie_plugs,
    ties,
    work,
)
from railrules_api.rules.quantities.given import worked_length
from railrules_api.rules.sections import compatibility
from railrules_api.rules.takeoff import own_items
from railrules_api.rules.words import DAY

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from railrules_api.rules.model import Rule
    from railrules_api.rules.takeoff.job import Segment
    from railrules_api.rules.takeoff.parts import Part


class AnchorsAgain(NamedTuple):
    """What a segment takes and gives of the job's old anchors.

    Attributes:
        applied: old anchors applied again in it, from wherever they come.
        given: anchors that come off it and are applied again, wherever that is.
    """

    applied: float
    given: float


class Question(NamedTuple):
    """A rule and what it is asked, on behalf of a part of the job."""

    rule: Rule[Any, Any]
    of: str
    given: Any


def _compatibility(segment: Segment) -> compatibility.SectionCompatibilityInput | None:
    """Return the question whether the old plates serve the new rail; None without plates, or where a section is not known."""
    old, new = segment.old, segment.new
    if segment.tie_kind != "wood":
        return None
    if old.height is None or old.base_width is None or new.height is None or new.base_width is None:
        return None
    return compatibility.SectionCompatibilityInput(
        old_height=old.height,
        new_height=new.height,
        old_base_width=old.base_width,
        new_base_width=new.base_width,
        old_plate_base_least=old.plate_base_least,
        old_plate_base_most=old.plate_base_most,
        plates=new.plates,
        plate_play=new.plate_play,
        run_off_run=new.run_off_run,
    )


def _degree(radius: float) -> float:
    """Return the degree of a curve by 100-ft chord; the sharpest there is where no such chord fits [rad]."""
    return math.pi if radius < CHORD / 2 else 2 * math.asin(CHORD / 2 / radius)


def _sound_ties(segment: Segment) -> Iterator[Question]:
    """Ask about sound ties where the class of track is given: once for what is straight or wide, once for sharp curves."""
    if segment.track_class is None:
        return
    degrees = [_degree(radius_of(curve)) for curve in segment.curves]
    sharp = [degree for degree in degrees if sound_ties.is_sharp(degree)]
    in_sharp = sum(
        curve.end - curve.begin for curve, degree in zip(segment.curves, degrees, strict=True) if sound_ties.is_sharp(degree)
    )
    if in_sharp < segment.end - segment.begin:
        given = sound_ties.SoundTiesInput(track_class=segment.track_class, sound_ties=segment.sound_ties)
        yield Question(sound_ties.RULE, segment.name, given)
    if sharp:
        given = sound_ties.SoundTiesInput(
            track_class=segment.track_class, degree=max(sharp), sound_ties=segment.sound_ties_in_curves
        )
        yield Question(sound_ties.RULE, segment.name, given)


def anchors_input(part: Part, again: AnchorsAgain | None = None) -> anchors.AnchorsInput:
    """Return the question to `quantities.anchors` for a segment, which takes its part of the job's old anchors."""
    new = part.segment.new
    return anchors.AnchorsInput(
        stretch=part.stretch,
        pattern=new.anchors,
        zones=part.zones,
        elastic_fasteners=new.elastic_fasteners,
        old_anchors=None if again is None else again.applied,
        reapplied_share=0.0 if again is None else 1.0,  # what is fit for it has been decided for the whole job
        product=new.anchor_id,
        anchor_mass=new.anchor_mass,
        per_bag=new.anchors_per_bag,
    )


def questions(part: Part, found: Mapping[str, Any], again: AnchorsAgain | None = None) -> Iterator[Question]:
    """Ask the quantity rules about a segment, in the order of a bill of material.

    `found` holds the answers so far, by rule: ballast is dug away where anchors are applied. `again` is what the segment takes
    and gives of the job's old anchors, where any is applied again.
    """
    segment, stretch = part.segment, part.stretch
    old, new, name = segment.old, segment.new, segment.name
    kind, share = segment.tie_kind, segment.renewed_share
    yield Question(ties.RULE, name, ties.TiesInput(stretch=stretch, renewed_share=share, tie_kind=kind))
    yield from _sound_ties(segment)
    yield Question(
        tie_plates.RULE,
        name,
        tie_plates.TiePlatesInput(
            stretch=stretch,
            tie_kind=kind,
            reused=True if new.plates == "reused" else None,
            plated_share=old.plated_share,
            recovered_share=old.recovered_share,
            product=new.plate_id,
            handed=new.handed_plates,
            plate_mass=new.plate_mass,
            plate_rail_base_least=new.plate_base_least,
            plate_rail_base=new.plate_base_most,
            rail_base=new.base_width,
            per_bundle=new.plates_per_bundle,
        ),
    )
    fits = _compatibility(segment)
    if fits is not None:
        yield Question(compatibility.RULE, name, fits)
    yield Question(
        spikes.RULE,
        name,
        spikes.SpikesInput(
            stretch=stretch,
            tie_kind=kind,
            pattern=new.spikes,
            track_class=segment.track_class,
            joint_rail_length=None if new.joints is None else new.joints.rail_length,
            sharp_curve_radius=new.sharp_curve_radius,
            product=new.spike_id,
            spike_mass=new.spike_mass,
            keg_mass=new.keg_mass,
            per_keg=new.spikes_per_keg,
            plate_spike=new.plate_spike,
            plate_spike_mass=new.plate_spike_mass,
            plate_keg_mass=new.plate_keg_mass,
            plate_spikes_per_keg=new.plate_spikes_per_keg,
        ),
    )
    yield Question(
        tie_plugs.RULE,
        name,
        tie_plugs.TiePlugsInput(
            stretch=stretch,
            tie_kind=kind,
            renewed_share=share,
            old_spikes_per_plate=old.spikes_per_plate,
            filling=new.hole_filling,
            hole_shape=new.hole_shape,
            hole_side=new.hole_side,
            hole_depth=new.hole_depth,
            compound_waste=new.compound_waste,
            product=new.plug_id,
            per_bundle=new.plugs_per_bundle,
        ),
    )
    if new.pins_per_plate:
        yield Question(
            plate_pins.RULE,
            name,
            plate_pins.PlatePinsInput(
                stretch=stretch,
                tie_kind=kind,
                every=new.pinned_every,
                per_plate=new.pins_per_plate,
                product=new.pin_id,
                pin_mass=new.pin_mass,
                per_keg=new.pins_per_keg,
            ),
        )
    if new.plate_length is not None and new.plate_width is not None:
        yield Question(
            preservative.RULE,
            name,
            preservative.PreservativeInput(
                stretch=stretch,
                tie_kind=kind,
                renewed_share=share,
                plate_length=new.plate_length,
                plate_width=new.plate_width,
                adze_margin=new.adze_margin,
                coats=new.preservative_coats,
                coverage=new.preservative_coverage,
                surface=new.preservative_surface,
                product=new.preservative_id,
                coverage_rough=new.coverage_rough,
                coverage_smooth=new.coverage_smooth,
                coverage_sprayed=new.coverage_sprayed,
                drum_volume=new.drum_volume,
            ),
        )
    yield Question(
        salvage.RULE,
        name,
        salvage.SalvageInput(
            stretch=stretch,
            tie_kind=kind,
            renewed_share=share,
            old_mass_per_length=old.mass_per_length,
            worn_share=old.worn_share,
            relay_share=old.relay_share,
            reroll_share=old.reroll_share,
            scrap_share=old.scrap_share,
            relay_wear=old.relay_wear,
            reroll_wear=old.reroll_wear,
            old_rail_length=old.rail_length,
            bars_per_joint=old.bars_per_joint,
            bolts_per_joint=old.bolts_per_joint,
            bar_mass=old.bar_mass,
            pair_mass=old.pair_mass,
            bolt_mass=old.bolt_mass,
            plated_share=old.plated_share,
            plate_mass=old.plate_mass,
            old_spikes_per_plate=old.spikes_per_plate,
            spike_mass=old.spike_mass,
            keg_mass=old.keg_mass,
            per_keg=old.spikes_per_keg,
            old_anchors=old.anchors,
            anchor_mass=old.anchor_mass,
            recovered_share=old.recovered_share,
            anchors_reapplied=None if again is None else again.given,
            plates_reused=True if new.plates == "reused" else None,
        ),
    )
    yield Question(anchors.RULE, name, anchors_input(part, again))
    yield Question(
        cribbing.RULE,
        name,
        cribbing.CribbingInput(
            anchors=float(found[anchors.RULE.id].anchors),
            pocket_length=new.pocket_length,
            pocket_width=new.pocket_width,
            pocket_depth=new.pocket_depth,
            full_share=new.full_share,
            ballast_density=new.ballast_density,
        ),
    )
    if new.joints is not None:
        yield Question(
            rail_mass.RULE,
            name,
            rail_mass.RailMassInput(
                mass_per_length=new.mass_per_length,
                length=worked_length(stretch),
                rail_lines=rail_count(segment.rails),
                stock_length=new.joints.rail_length,
            ),
        )
    yield Question(
        work.RULE,
        name,
        work.WorkInput(
            stretch=stretch,
            tie_kind=kind,
            renewed_share=share,
            old_spikes_per_plate=old.spikes_per_plate,
            plated_share=old.plated_share,
            broken_share=old.broken_share,
            old_anchors=old.anchors,
            old_rail_length=old.rail_length,
            pattern=new.spikes,
            track_class=segment.track_class,
            joint_rail_length=None if new.joints is None else new.joints.rail_length,
            bored_share=new.bored_share,
            anchors=new.anchors,
            zones=part.zones,
            elastic_fasteners=new.elastic_fasteners,
            working_day=DAY,  # work is counted here and not timed: it decides nothing
        ),
    )
    for item in segment.custom:
        yield Question(custom.RULE, name, own_items.question(part, item))
