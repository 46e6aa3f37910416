"""Old anchors of a job: what every segment needs and gives, put to the rule that pools them."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from railrules_api.domain.errors import below
from railrules_api.rules.quantities import anchor_reuse, anchors, salvage
from railrules_api.rules.takeoff.segments import AnchorsAgain, anchors_input, stretch_of

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from railrules_api.domain.anchoring import AnchorZone
    from railrules_api.rules.takeoff.job import Job, Segment


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


def _place(segment: Segment, zones: Sequence[AnchorZone]) -> anchor_reuse.AnchorPlace:
    old, new = segment.old, segment.new
    return anchor_reuse.AnchorPlace(
        needed=float(anchors.evaluate(anchors_input(segment, zones)).anchors),
        recovered=salvage.anchors_recovered(stretch_of(segment), old.anchors, old.recovered_share),
        fit_share=new.anchors_reapplied_share,
        rail_base=new.base_width,
        old_rail_base=old.base_width,
    )


def pools_of(job: Job, zones: Mapping[str, Sequence[AnchorZone]]) -> tuple[Pool, ...]:
    """Return the pools of a job in which any anchor is to be applied again: by product, and by base of the new rail."""
    by_kind: dict[tuple[str, float | None], list[int]] = {}
    for position, segment in enumerate(job.segments):
        by_kind.setdefault((segment.new.anchor_id or "", segment.new.base_width), []).append(position)
    pools = []
    for (product, _), positions in by_kind.items():
        if not any(job.segments[position].new.anchors_reapplied_share for position in positions):
            continue
        places = []
        for position in positions:
            segment = job.segments[position]
            with below("segments", position):
                places.append(_place(segment, zones.get(segment.track or "", ())))
        play = job.segments[positions[0]].new.anchor_base_play
        given = anchor_reuse.AnchorReuseInput(places=tuple(places), base_play=play)
        pools.append(Pool(product, tuple(positions), given))
    return tuple(pools)


def by_segment(pool: Pool, found: anchor_reuse.AnchorReuseResult) -> dict[int, AnchorsAgain]:
    """Return what each segment of a pool takes and gives, by its position in the job."""
    return {
        position: AnchorsAgain(place.applied, place.given) for position, place in zip(pool.positions, found.places, strict=True)
    }
