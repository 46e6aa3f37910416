"""Invented railroads by the segment, from a seed: the same seed gives the same network, for benchmarks and demonstrations.

Lines, places, curves and objects are made up; only the catalogue rows they name are real. A network is a list of jobs, one for
each line that is relaid, in the form of takeoff requests.
"""

from __future__ import annotations

from random import Random
from typing import TYPE_CHECKING, Any, Final, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Iterator

LONGEST_LINE: Final = 40
"""Segments of one line: some 80 miles, as long as such a job gets."""
MOST: Final = 20_000
"""Segments that one job may have."""
_FIRST: Final = (
    "Ash",
    "Birch",
    "Cinder",
    "Dun",
    "Elder",
    "Fallow",
    "Gorse",
    "Hazel",
    "Kestrel",
    "Lark",
    "Marl",
    "Osier",
    "Quill",
    "Tarn",
)
_LAST: Final = ("back", "bank", "brook", "combe", "fell", "ford", "ham", "holt", "ley", "mere", "moor", "ridge", "stead", "well")
_KINDS: Final = (
    "road-crossing",
    "road-crossing",
    "road-crossing",
    "turnout",
    "open-deck-bridge",
    "ballast-deck-bridge",
    "insulated-joint",
)
_LENGTHS: Final = {
    "road-crossing": (8.0, 20.0),
    "turnout": (30.0, 60.0),
    "open-deck-bridge": (15.0, 80.0),
    "ballast-deck-bridge": (15.0, 120.0),
}
_APART: Final = 160.0
"""Clear distance between two fixed objects and to a segment's ends [m]: room for the approaches and for a field weld between."""


class _Rail(NamedTuple):
    """A section that is laid, and what goes with it."""

    section: str
    plate: str


_NEW: Final = (_Rail("115RE", "8-14"), _Rail("136RE", "13-14-3-4"), _Rail("136RE", "16"))
_OLD: Final = (_Rail("90RA-A", "2-11"), _Rail("100RA-A", "3-12"), _Rail("ASCE85", "1-10"))


def _length(metres: float) -> dict[str, Any]:
    return {"value": round(metres, 2), "unit": "m"}


def _share(random: Random, most: float) -> float:
    return round(random.random() * most, 2)


def _old(random: Random) -> dict[str, Any]:
    rail = random.choice(_OLD)
    return {
        "section": rail.section,
        "rail_length": {"value": random.choice((33.0, 39.0)), "unit": "ft"},
        "bolts_per_joint": random.choice((4, 6)),
        "bolt_mass": {"value": 1.99, "unit": "lb"},
        "spikes_per_plate": random.choice((2.0, 2.0, 4.0)),
        "spike": "5-1-2x9-16-200-supplier",
        "plate": rail.plate,
        "anchor_pattern": random.choice(("jointed-8-one-way", "jointed-8-two-way")),
        "anchor": "drive-on",
        "worn_share": _share(random, 0.1),
        "reroll_share": _share(random, 0.8),
        "recovered_share": 0.95,
    }


def _new(random: Random) -> dict[str, Any]:
    rail = random.choice(_NEW)
    found: dict[str, Any] = {
        "section": rail.section,
        "plates": "new" if random.random() < 0.8 else "reused",  # noqa: PLR2004  four relays in five
        "plate": rail.plate,
        "spike_pattern": random.choice(("by-curvature", "by-curvature", "two-per-plate")),
        "spike": "6x5-8-200-by-mass",
        "plug": "cedar-5-8",
        "anchor_pattern": random.choice(("box-every-other-tie", "box-every-other-tie", "box-every-third-tie")),
        "anchor": "drive-on",
    }
    if random.random() < 0.5:  # noqa: PLR2004  half of the lines
        found |= {"pinned_every": 5, "pins_per_plate": 2, "pin": "hold-down-pin"}
    return found


def _ties(random: Random) -> dict[str, Any]:
    if random.random() < 0.5:  # noqa: PLR2004  half of the lines
        return {"count": 24.0, "per_length": {"value": 39.0, "unit": "ft"}}
    return {"spacing": {"value": random.choice((19.5, 20.0, 21.0)), "unit": "in"}}


def _curves(random: Random, begin: float, end: float) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = []
    place = begin + random.uniform(100.0, 1500.0)
    while place < end - 400.0:  # the shortest curve and a bit of tangent [m]
        limit = min(end - 50.0, place + random.uniform(150.0, 900.0))
        found.append(
            {
                "begin": _length(place),
                "end": _length(limit),
                "degree": {"value": random.choice((0.5, 1.0, 1.0, 1.5, 2.0, 3.0, 4.0, 6.0)), "unit": "deg"},
                "hand": random.choice(("left", "right")),
            }
        )
        place = limit + random.uniform(200.0, 3000.0)
    return found


def _features(random: Random, begin: float, end: float) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = []
    place = begin + _APART + random.uniform(0.0, 1200.0)
    while True:
        kind = random.choice(_KINDS)
        shortest, longest = _LENGTHS.get(kind, (0.0, 0.0))
        limit = place + random.uniform(shortest, longest)
        if limit > end - _APART:
            return found
        feature = {"kind": kind, "begin": _length(place)}
        if longest:
            feature |= {"end": _length(limit), "name": f"{kind.replace('-', ' ')} {place / 1609.344:.2f}"}
        found.append(feature)
        place = limit + _APART + random.expovariate(1 / 1500.0)


def _line(random: Random, count: int, first: int, track: dict[str, str]) -> Iterator[dict[str, Any]]:
    """Yield the segments of a line, end to end; every fifth or so is a single curve of which one rail is worn."""
    place = round(random.uniform(0.0, 400.0) * 1609.344, 2)
    old, new, ties = _old(random), _new(random), _ties(random)
    share = _share(random, 0.3)
    for number in range(count):
        one_rail = random.random() < 0.2  # noqa: PLR2004  every fifth
        end = round(place + (random.uniform(250.0, 900.0) if one_rail else random.uniform(1200.0, 5500.0)), 2)
        segment: dict[str, Any] = {
            "name": f"{random.choice(_FIRST)}{random.choice(_LAST)} {first + number}",
            **track,
            "begin": _length(place),
            "end": _length(end),
            "rails": "both",
            "tie_kind": "wood",
            "renewed_share": share,
            "ties": ties,
            "old": old,
            "new": new,
        }
        if one_rail:
            degree = {"value": random.choice((3.0, 4.0, 5.0, 6.0)), "unit": "deg"}
            hand = random.choice(("left", "right"))
            segment |= {
                "rails": random.choice(("high", "low")),
                "curves": [{"begin": _length(place), "end": _length(end), "degree": degree, "hand": hand}],
            }
        else:
            segment |= {"curves": _curves(random, place, end), "features": _features(random, place, end)}
        yield segment
        place = end


def job(segments: int, seed: int) -> dict[str, Any]:
    """Return one relay job with this many segments, as the body of a takeoff request: one line, or as many as it takes."""
    random = Random(seed)  # noqa: S311  a repeatable network is the point
    name = f"{random.choice(_FIRST)}{random.choice(_LAST)} Subdivision"
    coldest = random.randrange(-30, 21)
    parts: list[dict[str, Any]] = []
    while len(parts) < segments:
        track = {} if segments <= LONGEST_LINE else {"track": f"line {1 + len(parts) // LONGEST_LINE}"}
        parts += _line(random, min(LONGEST_LINE, segments - len(parts)), len(parts) + 1, track)
    return {
        "name": f"{name}, invented (seed {seed})",
        "segments": parts,
        "supply": {
            "string": {"stock": [{"length": {"value": 80.0, "unit": "ft"}, "count": 18}], "process": "flash-butt"},
            "tie_in": "compromise-weld",
            "fixed_tie_in": "compromise-weld",
            "rack_strings": 40,
        },
        "temperatures": {
            "hottest_rail": {"value": float(random.randrange(110, 141)), "unit": "degF"},
            "coldest_rail": {"value": float(coldest), "unit": "degF"},
            "laying_rail": {"value": float(random.randrange(60, 96)), "unit": "degF"},
        },
    }


def network(segments: int, seed: int) -> Iterator[dict[str, Any]]:
    """Yield the jobs of an invented network with this many segments in all, line by line."""
    random = Random(seed)  # noqa: S311  a repeatable network is the point
    left = segments
    while left:
        count = min(left, random.randint(4, LONGEST_LINE))
        yield job(count, random.getrandbits(32))
        left -= count
