"""Ties, plates, spikes, plugs, pins, preservative and anchors, written out."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from railrules_api.domain.amounts import Amount
from railrules_api.domain.anchoring import anchored_runs
from railrules_api.domain.counting import first_tie_from
from railrules_api.domain.kinds import Kind
from railrules_api.domain.track import spacing_of, tie_ranges
from railrules_api.rules.quantities.given import METRES_PER_MILE
from railrules_api.rules.quantities.sound_ties import is_sharp
from railrules_api.rules.written.terms import (
    Written,
    count,
    length,
    rails_of,
    read,
    small,
    ties_standing,
    weighted,
    worked,
)

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.domain.anchoring import Run
    from railrules_api.domain.track import Stretch
    from railrules_api.rules.quantities import (
        anchor_reuse,
        anchors,
        plate_pins,
        preservative,
        sound_ties,
        spikes,
        tie_plates,
        tie_plugs,
        ties,
    )
    from railrules_api.rules.written.terms import Numbers, Way


def _ties(given: ties.TiesInput, found: ties.TiesResult) -> Iterator[Written]:
    yield Written(*ties_standing(given.stretch), count(found.ties))


def _least(given: sound_ties.SoundTiesInput, found: sound_ties.SoundTiesResult) -> Iterator[Written]:
    place = "in a turnout or a curve of more than 2 degrees" if _is_sharp(given) else "tangent or a curve of up to 2 degrees"
    yield read(count(found.least), f"row of class {given.track_class}, column {place}")


def _is_sharp(given: sound_ties.SoundTiesInput) -> bool:
    return bool(given.in_turnout) or (given.degree is not None and is_sharp(given.degree))


# ---------------------------------------------------------------- seats


def on_wood(tie_kind: str, written: Written) -> Written:
    """Return what holds on wood ties; on others there is nothing to count."""
    if tie_kind == "wood":
        return written
    return read(written.result, f"none on {tie_kind} ties")


def ties_in(stretch: Stretch) -> float:
    """Return the ties of a stretch."""
    return sum(part.count for part in tie_ranges(stretch))


def kept(stretch: Stretch, share: float) -> tuple[str, Numbers]:
    """Return the seats of ties that stay: ties less those renewed, times renewed rails."""
    return "(n - n * q) * r", {"n": count(ties_in(stretch)), "q": count(share), "r": rails_of(stretch)}


def _plate_seats(given: tie_plates.TiePlatesInput, found: tie_plates.TiePlatesResult) -> Iterator[Written]:
    numbers = {"n": count(ties_in(given.stretch)), "r": rails_of(given.stretch)}
    yield on_wood(given.tie_kind, Written("n * r", numbers, count(found.seats)))


def _plates_new(given: tie_plates.TiePlatesInput, found: tie_plates.TiePlatesResult) -> Iterator[Written]:
    seats = count(found.seats)
    if given.reused:
        numbers = {"n_s": seats, "p": count(given.plated_share), "c": count(given.recovered_share)}
        yield Written("n_s * (1 - p * c)", numbers, count(found.plates_new), note="old plates are used again")
    else:
        yield Written("n_s", {"n_s": seats}, count(found.plates_new), note="all are new")


def _plate_mass(given: tie_plates.TiePlatesInput, found: tie_plates.TiePlatesResult) -> Iterator[Written]:
    if found.mass is not None and given.plate_mass is not None:
        numbers = {"n": count(found.plates), "m_1": Amount(given.plate_mass, Kind.MASS)}
        yield Written("n * m_1", numbers, Amount(found.mass, Kind.MASS))


def _plug_seats(given: tie_plugs.TiePlugsInput, found: tie_plugs.TiePlugsResult) -> Iterator[Written]:
    yield on_wood(given.tie_kind, Written(*kept(given.stretch, given.renewed_share), count(found.seats)))


def _adzed_seats(given: preservative.PreservativeInput, found: preservative.PreservativeResult) -> Iterator[Written]:
    yield on_wood(given.tie_kind, Written(*kept(given.stretch, given.renewed_share), count(found.seats)))


def _hole(given: tie_plugs.TiePlugsInput, found: tie_plugs.TiePlugsResult) -> Iterator[Written]:
    numbers = {"a": small(given.hole_side), "d": small(given.hole_depth)}
    round_hole = given.hole_shape == "round"
    text = "3.141592653589793 / 4 * a ** 2 * d" if round_hole else "a ** 2 * d"
    volume = Amount(found.hole_volume, Kind.VOLUME, ("in3", "l"))
    yield Written(text, numbers, volume, note=f"a {given.hole_shape} hole")


# ---------------------------------------------------------------- spikes


def _bands(given: spikes.SpikesInput, found: spikes.SpikesResult, field: str) -> Iterator[Written]:
    total = getattr(found, field)
    if total is None:
        return
    used = [(band, laid) for band, laid in zip(given.pattern.bands, found.bands, strict=True) if laid.ties]
    if not used:
        yield read(count(total), "no tie of this stretch is spiked")
        return
    rails = rails_of(given.stretch)
    terms = [(count(laid.ties), rails, count(getattr(band, field))) for band, laid in used]
    yield Written(*weighted(terms, "trk"), count(total))


def _field_spikes(given: spikes.SpikesInput, found: spikes.SpikesResult) -> Iterator[Written]:
    del given
    if found.field_spikes is not None and found.gage_spikes is not None:
        numbers = {"n_r": count(found.rail_spikes), "n_p": count(found.plate_spikes), "n_g": count(found.gage_spikes)}
        yield Written("n_r + n_p - n_g", numbers, count(found.field_spikes))


def joints_along(stretch: Stretch, rail_length: float | None, result: float) -> Written:
    """Write the joints of the renewed rails: rails times length over the length of one rail."""
    if rail_length is None:
        return read(count(result), "no joints are told of")
    text, numbers = worked(stretch, " / l")
    return Written(text, {**numbers, "l": length(rail_length)}, count(result))


def _spike_joints(given: spikes.SpikesInput, found: spikes.SpikesResult) -> Iterator[Written]:
    yield on_wood(given.tie_kind, joints_along(given.stretch, given.joint_rail_length, found.joints))


def _joint_spikes(given: spikes.SpikesInput, found: spikes.SpikesResult) -> Iterator[Written]:
    numbers = {"j": count(found.joints), "k_j": count(given.pattern.extra_at_joint_ties)}
    yield Written("j * k_j", numbers, count(found.joint_spikes))


# ---------------------------------------------------------------- ties by their number


def multiples(first: int, beyond: int, place: str, every: str) -> tuple[str, Numbers]:
    """Return how many whole numbers from `first` to before `beyond` are multiples of `every`."""
    return f"ceil(j{place} / {every}) - ceil(i{place} / {every})", {f"i{place}": count(first), f"j{place}": count(beyond)}


def _pinned(given: plate_pins.PlatePinsInput, found: plate_pins.PlatePinsResult) -> Iterator[Written]:
    spans: list[tuple[int, int]] = []
    for part in tie_ranges(given.stretch):
        if spans and spans[-1][1] == part.first:
            spans[-1] = (spans[-1][0], part.beyond)
        else:
            spans.append((part.first, part.beyond))
    if not spans:
        yield read(count(found.ties_pinned), "no tie stands here")
        return
    numbers: Numbers = {"m": count(given.every)}
    parts: list[str] = []
    for place, (first, beyond) in enumerate(spans, 1):
        text, more = multiples(first, beyond, f"_{place}", "m")
        parts.append(text)
        numbers.update(more)
    yield on_wood(given.tie_kind, Written(" + ".join(parts), numbers, count(found.ties_pinned)))


def _kegs(given: plate_pins.PlatePinsInput, found: plate_pins.PlatePinsResult) -> Iterator[Written]:
    if found.kegs is not None and given.per_keg is not None:
        yield Written("n / c", {"n": count(found.pins), "c": count(given.per_keg)}, count(found.kegs))


# ---------------------------------------------------------------- anchors


def _runs(given: anchors.AnchorsInput) -> tuple[Run, ...]:
    return anchored_runs(given.stretch, given.pattern, given.zones, forbidden=bool(given.elastic_fasteners))


def _ties_of(run: Run, stretch: Stretch) -> tuple[int, int]:
    first = first_tie_from(run.begin, origin=stretch.ties.origin, spacing=spacing_of(stretch.ties))
    return first, first + run.ties


def _one_run(run: Run, stretch: Stretch) -> Written:
    first, beyond = _ties_of(run, stretch)
    of = f"ties {first:,} to before {beyond:,}{': ' if run.reasons else ''}{', '.join(run.reasons)}"
    held = count(run.held.forward)
    if run.boxed_every is None:
        note = "spread evenly over the ties of each rail length" if run.per_rail else "none is anchored"
        return read(held, note, of)
    text, numbers = multiples(first, beyond, "", "m")
    return Written(text, {**numbers, "m": count(run.boxed_every)}, held, of)


def _way(runs: tuple[Run, ...], rails: Amount, held: list[int], result: float) -> Written:
    if not runs:
        return read(count(result), "no tie stands here")
    text, numbers = weighted([(rails, count(number)) for number in held], "rh")
    return Written(text, numbers, count(result), "all ties, all renewed rails")


def _forward(given: anchors.AnchorsInput, found: anchors.AnchorsResult) -> Iterator[Written]:
    runs = _runs(given)
    for run in runs:
        yield _one_run(run, given.stretch)
    yield _way(runs, rails_of(given.stretch), [run.held.forward for run in runs], found.anchors_forward)


def _back_up(given: anchors.AnchorsInput, found: anchors.AnchorsResult) -> Iterator[Written]:
    runs = _runs(given)
    yield _way(runs, rails_of(given.stretch), [run.held.back_up for run in runs], found.anchors_back_up)


def _per_mile(given: anchors.AnchorsInput, found: anchors.AnchorsResult) -> Iterator[Written]:
    result, rails, pattern = count(found.anchors_per_mile), rails_of(given.stretch), given.pattern
    mile = length(METRES_PER_MILE)
    if given.elastic_fasteners or (pattern.boxed_every is None and pattern.per_rail is None):
        yield read(result, "plain track carries none")
    elif pattern.boxed_every is not None:
        spacing = small(spacing_of(given.stretch.ties))
        yield Written("l * r * 2 / (m * s)", {"l": mile, "r": rails, "m": count(pattern.boxed_every), "s": spacing}, result)
    else:
        per = pattern.per_rail
        assert per is not None
        numbers = {"l": mile, "r": rails, "f": count(per.forward), "b": count(per.back_up), "l_r": length(per.rail_length)}
        yield Written("l * r * (f + b) / l_r", numbers, result)


def _reapplied(given: anchors.AnchorsInput, found: anchors.AnchorsResult) -> Iterator[Written]:
    numbers = {"n": count(found.anchors), "o": count(given.old_anchors or 0.0), "p": count(given.reapplied_share)}
    yield Written("min(n, o * p)", numbers, count(found.anchors_reapplied))


def _bags(given: anchors.AnchorsInput, found: anchors.AnchorsResult) -> Iterator[Written]:
    if found.bags is not None and given.per_bag is not None:
        yield Written("n_new / k", {"n_new": count(found.anchors_new), "k": count(given.per_bag)}, count(found.bags))


def _fit(given: anchor_reuse.AnchorReuseInput, found: anchor_reuse.AnchorReuseResult) -> Iterator[Written]:
    terms = [(count(place.recovered), count(place.fit_share)) for place in given.places]
    yield Written(*weighted(terms, "op"), count(found.fit))


def _places(given: anchor_reuse.AnchorReuseInput, found: anchor_reuse.AnchorReuseResult) -> Iterator[Written]:
    told = zip(given.places, found.places, strict=True)
    needed, fit, again = count(found.needed), count(found.fit), count(found.reapplied)
    for number, (place, reuse) in enumerate(told, 1):
        if found.needed:
            numbers = {"a": count(place.needed), "n_old": again, "n": needed}
            yield Written("a * n_old / n", numbers, count(reuse.applied), f"part {number}, applied")
        if found.fit:
            numbers = {"o": count(place.recovered), "p": count(place.fit_share), "n_old": again, "n_f": fit}
            yield Written("o * p * n_old / n_f", numbers, count(reuse.given), f"part {number}, given")


WAYS: Final[dict[tuple[str, str], Way]] = {
    ("quantities.ties", "ties"): _ties,
    ("quantities.sound-ties", "least"): _least,
    ("quantities.tie-plates", "seats"): _plate_seats,
    ("quantities.tie-plates", "plates_new"): _plates_new,
    ("quantities.tie-plates", "mass"): _plate_mass,
    ("quantities.spikes", "rail_spikes"): lambda given, found: _bands(given, found, "rail_spikes"),
    ("quantities.spikes", "plate_spikes"): lambda given, found: _bands(given, found, "plate_spikes"),
    ("quantities.spikes", "gage_spikes"): lambda given, found: _bands(given, found, "gage_spikes"),
    ("quantities.spikes", "field_spikes"): _field_spikes,
    ("quantities.spikes", "joints"): _spike_joints,
    ("quantities.spikes", "joint_spikes"): _joint_spikes,
    ("quantities.tie-plugs", "seats"): _plug_seats,
    ("quantities.tie-plugs", "hole_volume"): _hole,
    ("quantities.plate-pins", "ties_pinned"): _pinned,
    ("quantities.plate-pins", "kegs"): _kegs,
    ("quantities.preservative", "seats"): _adzed_seats,
    ("quantities.anchors", "anchors_forward"): _forward,
    ("quantities.anchors", "anchors_back_up"): _back_up,
    ("quantities.anchors", "anchors_per_mile"): _per_mile,
    ("quantities.anchors", "anchors_reapplied"): _reapplied,
    ("quantities.anchors", "bags"): _bags,
    ("quantities.anchor-reuse", "fit"): _fit,
    ("quantities.anchor-reuse", "places"): _places,
}
