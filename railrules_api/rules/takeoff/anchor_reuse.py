"""Old anchors of a job: what every segment needs and gives, put to the rule that pools them."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.errors import RefusedError, below
from railrules_api.rules.quantities import anchor_reuse, anchors, salvage
from railrules_api.rules.takeoff.parts import Part
from railrules_api.rules.takeoff.places import in_segment
from railrules_api.rules.takeoff.segments import AnchorsAgain, anchors_input

if TYPE_CHECKING:
    from collections.abc import Sequence


class Pool(NamedTuple):
    """Segments whose new anchors are of one kind, so that old anchors go between them, and the question about them.

    Attributes:
        of: the anchor, for the answer.
        positions: which segments of the job.
        given: the question to `quantities.anchor-reuse`.
    """

    of: str
    positions: tuple[int, ...]
    given: anchor_reuse.AnchorReuseInput


def _place(part: Part) -> anchor_reuse.AnchorPlace:
    old, new = part.segment.old, part.segment.new
    asked = anchors_input(part)
    try:
        needed = anchors.evaluate(asked).anchors
    except RefusedError as error:
        raise in_segment(error, anchors.RULE, asked, part.segment) from error
    with below("old"):
        recovered = salvage.anchors_recovered(part.stretch, old.anchors, old.recovered_share, pattern_field="anchors")
    return anchor_reuse.AnchorPlace(
        needed=float(needed),
        recovered=recovered,
        fit_share=new.anchors_reapplied_share,
        rail_base=new.base_width,
        old_rail_base=old.base_width,
    )


def pools_of(parts: Sequence[Part]) -> tuple[Pool, ...]:
    """Return the pools of a job in which any anchor is to be applied again: by product, and by base of the new rail."""
    by_kind: dict[tuple[str, float | None], list[int]] = {}
    for position, part in enumerate(parts):
        new = part.segment.new
        by_kind.setdefault((new.anchor_id or "", new.base_width), []).append(position)
    pools = []
    for (product, _), positions in by_kind.items():
        if not any(parts[position].segment.new.anchors_reapplied_share for position in positions):
            continue
        places = []
        for position in positions:
            with below("segments", position):
                places.append(_place(parts[position]))
        play = parts[positions[0]].segment.new.anchor_base_play
        given = anchor_reuse.AnchorReuseInput(places=tuple(places), base_play=play)
        pools.append(Pool(product, tuple(positions), given))
    return tuple(pools)


def by_segment(pool: Pool, found: anchor_reuse.AnchorReuseResult) -> dict[int, AnchorsAgain]:
    """Return what each segment of a pool takes and gives, by its position in the job."""
    return {
        position: AnchorsAgain(place.applied, place.given) for position, place in zip(pool.positions, found.places, strict=True)
    }
