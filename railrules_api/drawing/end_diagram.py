"""Force and movement along welded rail near an end or a break, drawn from the law of restraint of the rule itself."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final, NamedTuple

from railrules_api.domain.kinds import Kind
from railrules_api.domain.slip import Restraint, Slip, free_end
from railrules_api.drawing.marks import line, text
from railrules_api.drawing.plot import Plot
from railrules_api.drawing.sheet import Head, document, legend, path, shown, unit_of
from railrules_api.rules.thermal.restraint_fields import restraint
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from railrules_api.drawing.sheet import Swatch
    from railrules_api.rules.thermal.break_gap import BreakGapInput, BreakGapResult
    from railrules_api.rules.thermal.end_movement import EndMovementInput, EndMovementResult
    from railrules_api.units import System

_UPPER: Final = (28.0, 26.0, 250.0, 82.0)
_LOWER: Final = (28.0, 98.0, 250.0, 150.0)
_STEPS: Final = 160


class End(NamedTuple):
    """One rail end that is let go: its constants, and what is released there."""

    released: float
    axial_stiffness: float
    held: Restraint
    slip: Slip

    @classmethod
    def of(cls, released: float, axial_stiffness: float, held: Restraint) -> End:
        """Work the end out [N, N]."""
        return cls(released, axial_stiffness, held, free_end(released, axial_stiffness, held))

    def share(self, distance: float) -> float:
        """Return the share of the released force that the rail has again at a distance from its end."""
        if self.released <= 0.0:
            return 1.0
        reach = math.inf if self.held.law == "elastic" else self.released / self.held.resistance
        return self.slip.force_share(distance, reach)

    def movement(self, distance: float) -> float:
        """Return how far the rail moves at a distance from its end [m]: what is missing of the force beyond, over E A."""
        if self.released <= 0.0:
            return 0.0
        slip, decay = self.slip.slip_length, self.slip.decay_length
        left = 1.0 - self.share(max(distance, slip))
        moved = left * self.released * decay / self.axial_stiffness
        if distance < slip:
            # in the slipping length the missing force falls in a straight line
            mean = 1.0 - (self.share(distance) + self.share(math.nextafter(slip, 0.0))) / 2
            moved += mean * self.released * (slip - distance) / self.axial_stiffness
        return moved

    @property
    def reach(self) -> float:
        """How far the end is felt, near enough [m]."""
        return self.slip.slip_length + 5 * self.slip.decay_length


def _units(system: System) -> tuple[str, str, str]:
    return unit_of(system, "ft", "m"), unit_of(system, "kip", "kN"), unit_of(system, "in", "mm")


def _label(kind: Kind, unit: str) -> str:
    return UNITS[kind][unit].label


def draw_end(given: EndMovementInput, found: EndMovementResult, system: System) -> str:
    """Draw force and movement from the end of the rail inwards, hottest and coldest."""
    along, force, small = _units(system)
    axial = given.elastic_modulus * given.area
    held = restraint(given.law, given.resistance, given.stiffness)
    ends = [
        (End.of(max(0.0, abs(full) - given.joint_force), axial, held), full, style, sign)
        for full, style, sign in ((found.hot_force, "main", 1.0), (found.cold_force, "other", -1.0))
    ]
    far = max(1.25 * max(end.reach for end, *_ in ends), 1.0)
    distances = [far * step / _STEPS for step in range(_STEPS + 1)]
    distances = sorted({*distances, *(end.slip.slip_length for end, *_ in ends)})

    def across(value: float) -> float:
        return UNITS[Kind.LENGTH][along].from_si(value)

    def in_force(value: float) -> float:
        return UNITS[Kind.FORCE][force].from_si(value)

    def in_small(value: float) -> float:
        return UNITS[Kind.LENGTH][small].from_si(value)

    forces, moves = [], []
    for end, full, style, sign in ends:
        joint = min(abs(full), given.joint_force)
        forces.append((style, [(across(x), in_force(sign * (joint + end.released * end.share(x)))) for x in distances]))
        moves.append((style, [(across(x), in_small(sign * end.movement(x))) for x in distances]))
    parts = _two(
        forces, moves, _names(system), up=(f"force, {_label(Kind.FORCE, force)}", f"movement, {_label(Kind.LENGTH, small)}")
    )
    breathing = across(found.breathing_length)
    if found.breathing_length > 0.0:
        lower = Plot.over([0, across(far)], [y for _, points in moves for _, y in points] + [0.0], _LOWER, 6)
        x = lower.across.at(breathing)
        parts += _through(x)
        parts.append(
            text(
                x - 1.2,
                _LOWER[3] - 1.6,
                f"breathing length {shown(found.breathing_length, Kind.LENGTH, along)}",
                "cell halo",
                "end",
            )
        )
        parts += lower.dot(
            0, in_small(found.hot_movement), f"end moves out {shown(found.hot_movement, Kind.LENGTH, small, 2)}", lift=-1.2
        )
        parts += lower.dot(
            0, -in_small(found.cold_movement), f"end draws in {shown(found.cold_movement, Kind.LENGTH, small, 2)}", lift=1.9
        )
    parts += legend(166.0, _legend(hot=True), columns=3)
    joint_text = shown(given.joint_force, Kind.FORCE, force)
    head = Head(
        name="Movement at the end of welded rail",
        title=f"One rail, {given.law} restraint; the joint at its end holds {joint_text}",
        right=f"travel {shown(found.travel, Kind.LENGTH, small, 2)}",
        right_below="compression and outward movement upwards",
        foot="First movement from a rail free of force at its neutral temperature; later restraint also resists the way back.",
        about="Force and movement of one rail from its end inwards at the hottest and the coldest rail temperature.",
    )
    return document(head, parts)


def draw_break(given: BreakGapInput, found: BreakGapResult, system: System) -> str:
    """Draw force and movement on both sides of a break."""
    along, force, small = _units(system)
    axial = given.elastic_modulus * given.area
    end = End.of(abs(found.force), axial, restraint(given.law, given.resistance, given.stiffness))
    far = max(1.25 * end.reach, 1.0)
    half = sorted({*(far * step / _STEPS for step in range(_STEPS + 1)), end.slip.slip_length})
    length, power, fine = UNITS[Kind.LENGTH][along], UNITS[Kind.FORCE][force], UNITS[Kind.LENGTH][small]
    both = [-x for x in reversed(half[1:])] + half
    forces = [("other", [(length.from_si(x), power.from_si(-end.released * end.share(abs(x)))) for x in both])]
    left = [(length.from_si(-x), fine.from_si(-end.movement(x))) for x in reversed(half)]
    right = [(length.from_si(x), fine.from_si(end.movement(x))) for x in half]
    names = f"distance from the break, {length.label}"
    moves = [("main", left), ("main", right)]
    parts = _two(forces, moves, names, up=(f"force, {power.label}", f"movement, {fine.label}"))
    lower = Plot.over(
        [x for _, points in moves for x, _ in points], [y for _, points in moves for _, y in points] + [0.0], _LOWER, 6
    )
    upper = Plot.over(
        [x for _, points in forces for x, _ in points], [y for _, points in forces for _, y in points] + [0.0], _UPPER, 6
    )
    edge = fine.from_si(found.end_movement)
    x = lower.across.at(0.0)
    parts += [line(x, lower.up.at(edge), x, lower.up.at(-edge), "stroke")]
    parts.append(text(x + 2, lower.up.at(0.0) - 1.4, f"gap {shown(found.gap, Kind.LENGTH, small, 2)}", "size halo"))
    for side in (-1, 1):
        if found.slip_length > 0.0:
            x = upper.across.at(side * length.from_si(found.slip_length))
            parts += _through(x)
    if found.slip_length > 0.0:
        x = upper.across.at(length.from_si(found.slip_length))
        parts.append(
            text(x - 1.2, _UPPER[1] + 3, f"slips over {shown(found.slip_length, Kind.LENGTH, along)}", "cell halo", "end")
        )
    parts += legend(166.0, _legend(hot=False), columns=3)
    limit = shown(given.gap_limit, Kind.LENGTH, small, 2)
    verdict = "within" if found.gap <= given.gap_limit else "BEYOND"
    drop = shown(found.temperature_drop, Kind.TEMPERATURE_CHANGE, unit_of(system, "delta_degF", "delta_degC"))
    head = Head(
        name="Gap at a break of cold rail",
        title=f"One rail, {given.law} restraint, {drop} below neutral",
        right=f"gap {shown(found.gap, Kind.LENGTH, small, 2)}",
        right_below=f"{verdict} the largest accepted, {limit}",
        foot="Holds where the rail runs on beyond the slip length; a joint, turnout or bridge nearer changes the gap.",
        about="Force and movement of one rail on both sides of a break.",
    )
    return document(head, parts)


def _through(x: float) -> list[str]:
    """Return an upright line through both diagrams that leaves the numbers between them free."""
    return [path(((x, box[1]), (x, box[3])), "limit") for box in (_UPPER, _LOWER)]


def _names(system: System) -> str:
    return f"distance from the end, {_label(Kind.LENGTH, unit_of(system, 'ft', 'm'))}"


def _two(
    forces: list[tuple[str, list[tuple[float, float]]]],
    moves: list[tuple[str, list[tuple[float, float]]]],
    across: str,
    up: tuple[str, str],
) -> list[str]:
    parts: list[str] = []
    for curves, box, name in ((forces, _UPPER, up[0]), (moves, _LOWER, up[1])):
        xs = [x for _, points in curves for x, _ in points]
        ys = [y for _, points in curves for _, y in points]
        plot = Plot.over(xs, [*ys, 0.0], box, 6)
        parts += plot.axes(across, name)
        parts += [plot.curve(points, style) for style, points in curves]
    return parts


def _legend(*, hot: bool) -> list[Swatch]:
    def stroke(style: str) -> Swatch:
        return "", lambda x, y: line(x, y, x + 7, y, style)

    if hot:
        return [
            ("hottest rail", stroke("main")[1]),
            ("coldest rail", stroke("other")[1]),
            ("how far the end is felt", stroke("limit")[1]),
        ]
    return [
        ("force, tension downwards", stroke("other")[1]),
        ("movement, away from the break on each side", stroke("main")[1]),
        ("where the rail stops slipping", stroke("limit")[1]),
    ]
