"""Relay jobs made up by a seeded die: every seed gives the same job, and every job is one that the service answers."""

from __future__ import annotations

import random
from typing import Any

Tree = dict[str, Any]

INCH = 0.0254
FOOT = 0.3048
SLOT = 120.0
"""Curves and features get slots of their own along a segment, so that they never meet and leave room for pieces of rail [m]."""


def metres(value: float) -> Tree:
    return {"value": value, "unit": "m"}


def _old(dice: random.Random) -> Tree:
    relay, reroll = dice.uniform(0.0, 0.5), dice.uniform(0.0, 0.5)
    old: Tree = {
        "section": dice.choice(("90RA-A", "100RE", "115RE")),
        "spikes_per_plate": dice.choice((2.0, 2.5, 4.0)),
        "plate": "2-11",
        "spike": "5-1-2x9-16-200-supplier",
        "anchor": "drive-on",
        "worn_share": dice.uniform(0.0, 0.1),
        "relay_share": relay,
        "reroll_share": reroll,
        "recovered_share": dice.uniform(0.5, 1.0),
        "plated_share": dice.uniform(0.5, 1.0),
        "broken_share": dice.uniform(0.0, 0.1),
    }
    if dice.random() < 0.7:
        old |= {"rail_length": metres(dice.choice((33, 39)) * FOOT), "joint_bar": "flange-74-mills", "bolts_per_joint": 4}
    if dice.random() < 0.3:
        del old["relay_share"], old["reroll_share"]
        old |= {"relay_wear": 0.03, "reroll_wear": 0.07}
    if dice.random() < 0.7:
        old["anchor_pattern"] = dice.choice(("jointed-8-two-way", "box-every-other-tie"))
    return old


def _new(dice: random.Random, *, welded: bool) -> Tree:
    new: Tree = {
        "section": dice.choice(("115RE", "115RE", "136RE")),
        "plates": dice.choice(("new", "new", "reused")),
        "spike_pattern": dice.choice(("by-curvature", "four-per-plate", "vose")),
        "spike": "6x5-8-200-by-mass",
        "plug": "cedar-5-8",
        "hole_filling": dice.choice(("plugs", "compound")),
        "hole_shape": dice.choice(("square", "round")),
        "pinned_every": dice.randint(1, 7),
        "pins_per_plate": dice.choice((0, 2)),
        "pin": "hold-down-pin",
        "anchor_pattern": dice.choice(("box-every-other-tie", "box-every-tie", "jointed-8-two-way")),
        "anchor": "drive-on",
        "bored_share": dice.uniform(0.0, 1.0),
        "full_share": dice.uniform(0.0, 1.0),
        "anchors_reapplied_share": dice.choice((0.0, dice.uniform(0.0, 1.0), 1.0)),
    }
    if dice.random() < 0.3:
        new |= {"preservative": "copper-brush-on", "preservative_surface": dice.choice(("rough", "smooth", "sprayed"))}
    if dice.random() < 0.3:
        new["plate_spike"] = "screw-15-16x6-memory"
    # one plate serves one base width: 5 1/2 in of 115RE, 6 in of 136RE
    new["plate"] = "8-14" if new["section"] == "115RE" else "12-14"
    if not welded:
        new["joints"] = {
            "rail_length": metres(39 * FOOT),
            "joint_bar": "115RE-24",
            "bolts_per_joint": dice.choice((4, 6)),
            "bonds_per_joint": dice.choice((0, 1)),
        }
    return new


def _curve(dice: random.Random, begin: float, end: float) -> Tree:
    return {
        "begin": metres(begin),
        "end": metres(end),
        "radius": metres(dice.choice((dice.uniform(200, 3000), 436.6, 873.2))),
        "hand": dice.choice(("left", "right")),
    }


def _feature(dice: random.Random, begin: float, end: float, *, welded: bool) -> Tree:
    kinds = ["turnout", "rail-crossing", "road-crossing", "open-deck-bridge", "ballast-deck-bridge"]
    points = ["insulated-joint", "bolted-joint"] if welded else []
    kind = dice.choice(kinds + points)
    if kind in points:
        return {"kind": kind, "begin": metres(begin)}
    feature = {"kind": kind, "begin": metres(begin), "end": metres(begin + dice.uniform(0.1, 0.9) * (end - begin)), "name": kind}
    if dice.random() < 0.2:
        feature["rule"] = {
            "rail_through": True,
            "ties_through": True,
            "within": "as-adjoining",
            "approach_length": metres(dice.uniform(5.0, 80.0)),
            "breaks_string": dice.random() < 0.3,
        }
    return feature


def _insulated_joints(dice: random.Random, begin: float) -> list[Tree]:
    """Return insulated joints, some nearer to each other than a rail is long: short pieces hold more of them than joints."""
    made, station = [], begin
    for _ in range(dice.randint(1, 4)):
        station += dice.uniform(0.5, 20.0)
        made.append({"kind": "insulated-joint", "begin": metres(station)})
    return made


def random_segment(dice: random.Random, name: str, begin: float, *, welded: bool = True) -> Tree:
    """Return a segment that begins at a station, in the form of a request."""
    slots = dice.randint(3, 12)
    length = slots * SLOT + dice.uniform(0.0, 50.0)
    spacing = dice.choice((19.5 * INCH, 20 * INCH, 0.6, 24 * INCH, dice.uniform(0.45, 0.65)))
    segment: Tree = {
        "name": name,
        "begin": metres(begin),
        "end": metres(begin + length),
        "rails": dice.choice(("both", "both", "both", "left", "right")),
        "tie_kind": "wood",
        "ties": {"spacing": metres(spacing), "origin": metres(dice.choice((0.0, dice.uniform(-1.0, 1.0))))},
        "renewed_share": dice.choice((0.0, dice.uniform(0.0, 1.0), 1.0)),
        "old": _old(dice),
        "new": _new(dice, welded=welded),
    }
    if dice.random() < 0.15:
        segment["tie_kind"] = dice.choice(("concrete", "steel"))
        segment["new"]["elastic_fasteners"] = True
        del segment["new"]["anchor_pattern"]
    if dice.random() < 0.5:
        segment["track_class"] = dice.randint(1, 5)
        segment["sound_ties"] = dice.randint(4, 24)
        if dice.random() < 0.5:
            segment["new"]["spike_pattern"] = "by-class-and-curvature"
    if dice.random() < 0.15:
        segment["curves"] = [_curve(dice, begin, begin + length)]
        segment["rails"] = dice.choice(("high", "low"))
        free = list(range(slots))
    else:
        free = list(range(slots))
        curved = sorted(dice.sample(free, dice.randint(0, min(3, slots - 1))))
        if curved:
            segment["curves"] = [
                _curve(dice, begin + slot * SLOT, begin + (slot + dice.uniform(0.2, 1.0)) * SLOT) for slot in curved
            ]
    # objects stand in every third slot at most, so that rail can be laid between them
    placed = sorted(dice.sample(range(1, slots - 1, 3), min(dice.randint(0, 2), len(range(1, slots - 1, 3)))))
    if placed:
        segment["features"] = [
            _feature(dice, begin + (slot + 0.3) * SLOT, begin + (slot + 0.7) * SLOT, welded=welded) for slot in placed
        ]
    free = sorted({*range(slots - 1)} - {*placed})
    if dice.random() < 0.2 and free:
        slot = dice.choice(free)
        segment["left_out"] = [{"begin": metres(begin + (slot + 0.3) * SLOT), "end": metres(begin + (slot + 0.6) * SLOT)}]
    if not welded:
        segment.setdefault("features", []).extend(_insulated_joints(dice, begin + (slots - 1) * SLOT))
    if dice.random() < 0.3:
        segment["custom"] = [
            {"item": "rail pads", "per_seat": 1, "mass_each": {"value": 0.3, "unit": "kg"}},
            # a part between two ties takes away more than it asks for
            {"item": "clips", "per_seat": 2} | ({"per_joint": -4, "per_rail": 1} if "joints" in segment["new"] else {}),
            {"item": "sign posts", "pieces": 2, "per_length": metres(1000.0), "per_tie": 0.001},
        ]
    return segment


def random_job(seed: int, segments: int = 4, *, singly: float = 0.15) -> Tree:
    """Return a job of some segments along one or two tracks, in the form of a request.

    Args:
        seed: of the die.
        segments: how many.
        singly: share of the segments that are laid of single rails, about; the first is laid of strings.
    """
    dice = random.Random(seed)
    tracks = dice.choice(([None], ["main 1", "main 2"]))
    reached = dict.fromkeys(tracks, dice.uniform(-2000.0, 20_000.0))
    made = []
    for number in range(segments):
        track = dice.choice(tracks)
        segment = random_segment(dice, f"segment {number}", reached[track], welded=number == 0 or dice.random() >= singly)
        if track is not None:
            segment["track"] = track
        reached[track] = segment["end"]["value"] + dice.choice((0.0, 0.0, dice.uniform(1.0, 5000.0)))
        made.append(segment)
    # one product comes in bundles of one size, whichever segments say so
    bundle = dice.choice((20, 250))
    for segment in made:
        if dice.random() < 0.3:
            segment["new"]["plates_per_bundle"] = bundle
    stock = [{"length": metres(80 * FOOT), "count": dice.randint(8, 20)}]
    job: Tree = {
        "name": f"made up by {seed}",
        "segments": made,
        "supply": {
            "string": {"stock": stock, "process": dice.choice(("flash-butt", "gas-pressure"))},
            "tie_in": dice.choice(("weld", "compromise-weld", "joint", "compromise-joint")),
            "fixed_tie_in": dice.choice(("weld", "joint")),
            "joints": {"joint_bar": "115RE-36", "nuts_per_bolt": 1, "washers_per_bolt": 1},
            "work_block": metres(dice.choice((400.0, 1609.344)) * max(1.0, segments / 50)),
            "rack_strings": dice.randint(2, 60),
        },
        "temperatures": {"hottest_rail": {"value": 50, "unit": "degC"}, "coldest_rail": {"value": -20, "unit": "degC"}},
        "allowances": [{"item": "spikes", "share": 0.03}],
        "hauling": {
            "vehicles": [
                {"name": "truck", "capacity": {"value": 20, "unit": "t"}},
                {"name": "gondola", "capacity": {"value": 90, "unit": "t"}, "items": ["salvage-rail-scrap", "tie-plates"]},
            ]
        },
        "production": {
            "rates": [
                {
                    "operation": "drive-spikes",
                    "done": {"value": dice.randint(500, 2000), "unit": "each"},
                    "time": {"value": 1, "unit": "h"},
                    "crews": dice.randint(1, 4),
                },
                {
                    "operation": "set-rail",
                    "done": metres(dice.uniform(100, 400)),
                    "time": {"value": 1, "unit": "h"},
                    "crews": 1,
                },
            ],
            "occupancy": {"value": 6, "unit": "h"},
        },
    }
    return job
