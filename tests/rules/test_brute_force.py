"""Closed forms against counting one by one: ten thousand random tracks, stations in whole sixteenths of an inch."""

from __future__ import annotations

import random
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from railrules_api.domain.anchoring import AnchorZone
from railrules_api.domain.patterns import AnchorPattern, AnchorsPerRailLength, SpikeBand, SpikePattern
from railrules_api.domain.track import Curve, Rails, Span, Stretch, TieSetting
from railrules_api.rules.quantities import anchors, plate_pins, spikes, tie_plates, ties

UNIT = 0.0254 / 16
TRACKS = 10_000


@dataclass(frozen=True)
class Track:
    """A track in whole sixteenths of an inch."""

    begin: int
    end: int
    origin: int
    spacing: int
    rails: Rails
    curves: tuple[tuple[int, int, int], ...]  # begin, end, radius in metres
    left_out: tuple[tuple[int, int], ...]
    zones: tuple[tuple[int, int, int | None], ...]  # begin, end, every n-th or None
    every: int | None
    panel: tuple[int, int, int] | None  # rail length, forward, back-up
    pin_every: int

    def in_si(self) -> Stretch:
        return Stretch(
            begin=self.begin * UNIT,
            end=self.end * UNIT,
            rails=self.rails,
            ties=TieSetting(spacing=self.spacing * UNIT, origin=self.origin * UNIT),
            curves=tuple(
                Curve(begin=begin * UNIT, end=end * UNIT, radius=float(radius), hand="left") for begin, end, radius in self.curves
            ),
            left_out=tuple(Span(begin=begin * UNIT, end=end * UNIT) for begin, end in self.left_out),
        )

    def tie_numbers(self) -> list[int]:
        first = -((self.origin - self.begin) // self.spacing)
        numbers = []
        number = first - 2
        while (station := self.origin + number * self.spacing) < self.end:
            if station >= self.begin and not any(begin <= station < end for begin, end in self.left_out):
                numbers.append(number)
            number += 1
        return numbers


def random_track(dice: random.Random) -> Track:
    spacing = dice.choice((288, 312, 320, 336, 352, 384, dice.randint(280, 500)))
    begin = dice.randint(-40_000, 40_000) if dice.random() < 0.5 else dice.randint(-60, 60) * spacing
    length = dice.randint(1, 40) * spacing + (dice.randint(0, spacing) if dice.random() < 0.5 else 0)
    end = begin + length

    def inside(most: int) -> list[tuple[int, int]]:
        cuts = sorted(dice.sample(range(begin, end + 1), 2 * dice.randint(0, most)))
        return list(zip(cuts[::2], cuts[1::2], strict=True))

    def zone() -> tuple[int, int, int | None]:
        start = dice.choice((dice.randint(begin - 4000, end), begin + dice.randint(-5, 20) * spacing))
        return start, start + dice.randint(1, 8000), dice.choice((1, 1, 1, 2, 3, 4, None))

    panel = None
    if dice.random() < 0.4:
        rail_length = dice.choice((7488, 5760, dice.randint(4000, 9000)))
        fewest = rail_length // spacing
        panel = (rail_length, dice.randint(0, min(12, fewest)), dice.randint(0, min(12, fewest)))
    return Track(
        begin=begin,
        end=end,
        origin=dice.choice((0, dice.randint(-5000, 5000))),
        spacing=spacing,
        rails=dice.choice(("both", "left", "right")),
        curves=tuple((*limits, dice.choice((100, 291, 600, 1000))) for limits in inside(2)),
        left_out=tuple(inside(2)),
        zones=tuple(zone() for _ in range(dice.randint(0, 4))),
        every=None if panel or dice.random() < 0.1 else dice.randint(1, 5),
        panel=panel,
        pin_every=dice.randint(1, 9),
    )


def panel_anchors(track: Track, number: int) -> tuple[int, int]:
    """Return the forward and back-up anchors of one rail at a tie, by laying out its rail length tie by tie."""
    assert track.panel is not None
    rail_length, forward, back_up = track.panel
    panel = number * track.spacing // rail_length
    inside = [k for k in range(number - 60, number + 60) if panel * rail_length <= k * track.spacing < (panel + 1) * rail_length]
    many, few = max(forward, back_up), min(forward, back_up)
    places = [inside[int(Fraction(2 * j + 1, 2) * len(inside) / many)] for j in range(many)]
    boxed = [places[int(Fraction(2 * j + 1, 2) * many / few)] for j in range(few)]
    held = places.count(number), boxed.count(number)
    return held if forward >= back_up else (held[1], held[0])


def tie_anchors(track: Track, number: int) -> tuple[tuple[int, int], bool]:
    """Return the anchors of one rail at a tie, and whether it lies in a zone."""
    station = track.origin + number * track.spacing
    asked = [every for begin, end, every in track.zones if begin <= station < end]
    if None in asked:
        return (0, 0), True
    density = Fraction(0)
    if track.panel is not None:
        density = Fraction((track.panel[1] + track.panel[2]) * track.spacing, track.panel[0])
    elif track.every is not None:
        density = Fraction(2, track.every)
    densest = min((every for every in asked if every is not None), default=None)
    every = track.every
    if densest is not None and Fraction(2, densest) >= density:
        every = densest
    elif track.panel is not None:
        return panel_anchors(track, number), bool(asked)
    boxed = int(every is not None and number % every == 0)
    return (boxed, boxed), bool(asked)


def pattern_of(track: Track) -> AnchorPattern:
    if track.panel is None:
        return AnchorPattern(boxed_every=track.every)
    length, forward, back_up = track.panel
    return AnchorPattern(per_rail=AnchorsPerRailLength(rail_length=length * UNIT, forward=forward, back_up=back_up))


def zone_of(begin: int, end: int, every: int | None) -> AnchorZone:
    anchoring: Literal["boxed", "none"] = "none" if every is None else "boxed"
    return AnchorZone(begin=begin * UNIT, end=end * UNIT, anchoring=anchoring, boxed_every=every, reason=f"{begin}")


SPIKING = SpikePattern(
    bands=(
        SpikeBand(at_least_radius=900.0, rail_spikes=2, plate_spikes=0),
        SpikeBand(at_least_radius=600.0, rail_spikes=2, plate_spikes=1),
        SpikeBand(rail_spikes=3, plate_spikes=2),
    ),
    extra_at_joint_ties=0,
)
BY_RADIUS = {None: (2, 0), 1000: (2, 0), 600: (2, 1), 291: (3, 2), 100: (3, 2)}


def test_closed_forms_agree_with_counting_tie_by_tie() -> None:
    dice = random.Random(20_260_101)
    seen = 0
    for _ in range(TRACKS):
        track = random_track(dice)
        stretch = track.in_si()
        numbers = track.tie_numbers()
        rails = 2 if track.rails == "both" else 1
        seen += len(numbers)
        assert ties.evaluate(ties.TiesInput(stretch=stretch, renewed_share=0.0)).ties == len(numbers), track
        plates = tie_plates.evaluate(
            tie_plates.TiePlatesInput(stretch=stretch, tie_kind="wood", plated_share=1.0, recovered_share=1.0)
        )
        assert plates.plates == len(numbers) * rails, track
        pins = plate_pins.evaluate(
            plate_pins.PlatePinsInput(stretch=stretch, tie_kind="wood", every=track.pin_every, per_plate=2)
        )
        assert pins.pins == 2 * rails * sum(number % track.pin_every == 0 for number in numbers), track
        spiked = spikes.evaluate(spikes.SpikesInput(stretch=stretch, tie_kind="wood", pattern=SPIKING, sharp_curve_radius=291.0))
        rail_spikes = plate_spikes = 0
        for number in numbers:
            station = track.origin + number * track.spacing
            radius = next((radius for begin, end, radius in track.curves if begin <= station < end), None)
            rail_spikes += rails * BY_RADIUS[radius][0]
            plate_spikes += rails * BY_RADIUS[radius][1]
        assert (spiked.rail_spikes, spiked.plate_spikes) == (rail_spikes, plate_spikes), track
        held = anchors.evaluate(
            anchors.AnchorsInput(
                stretch=stretch,
                pattern=pattern_of(track),
                zones=tuple(zone_of(*zone) for zone in track.zones),
                reapplied_share=0.0,
            )
        )
        counted = [tie_anchors(track, number) for number in numbers]
        assert held.ties == len(numbers), track
        assert held.anchors_forward == rails * sum(anchors[0] for anchors, _ in counted), track
        assert held.anchors_back_up == rails * sum(anchors[1] for anchors, _ in counted), track
        assert held.anchored_ties == sum(anchors != (0, 0) for anchors, _ in counted), track
        assert held.anchors_in_zones == rails * sum(sum(anchors) for anchors, in_zone in counted if in_zone), track
        assert sum(zone.ties for zone in held.zones) == sum(in_zone for _, in_zone in counted), track
        for one, other in zip(held.zones, held.zones[1:], strict=False):
            assert one.end <= other.begin, track
    assert seen > 10 * TRACKS
