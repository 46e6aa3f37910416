"""Packages that a job names: one product comes in packages of one size, whichever segment says so."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from railrules_api.domain.errors import refuse

if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Mapping

    from railrules_api.domain.amounts import Amount
    from railrules_api.rules.quantities.lines import Line
    from railrules_api.rules.takeoff.job import Job

_BUNDLES: Final = "plates_per_bundle"
_FIELDS: Final[Mapping[str, str]] = {
    "tie-plates": _BUNDLES,
    "tie-plates-left": _BUNDLES,
    "tie-plates-right": _BUNDLES,
    "spikes": "spikes_per_keg",
    "tie-plugs": "plugs_per_bundle",
    "plate-pins": "pins_per_keg",
    "anchors": "anchors_per_bag",
    "preservative": "drum_volume",
}
"""For each item that a segment says the package of: the field of the new track."""


def check(job: Job, lines: Iterable[tuple[str, Line]], positions: Mapping[str, int], settled: Collection[str]) -> None:
    """Refuse a job in which two segments name packages of different size for one product: it is ordered in one.

    Args:
        job: the job.
        lines: the bill, each line with the part of the job that it is of.
        positions: where segments stand in the job, by the part's name.
        settled: items whose package the job itself says.

    Raises:
        RefusedError: see above; at the later of the two.
    """
    known: dict[tuple[str, str], Amount] = {}
    for of, line in lines:
        if line.package_size is None or line.item in settled:
            continue
        first = known.setdefault((line.item, line.product), line.package_size)
        if first != line.package_size:
            new = job.segments[positions[of]].new
            other = line.item == "spikes" and line.product == new.plate_spike
            raise refuse(
                "segments", positions[of], "new", "plate_spikes_per_keg" if other else _FIELDS[line.item],
                reason="another segment says otherwise of the same product: say the same, or give the job's `packaging`",
                value=line.package_size.value, allowed=(f"{first.value:g}",) if first.kind is None else (),
            )  # fmt: skip
