"""Which string a piece is cut from: held against trying every way that a train which goes ahead could lay."""

from __future__ import annotations

import random
from itertools import pairwise

import pytest

from railrules_api.domain.coming_off import Wanted, strings_for
from railrules_api.domain.strings import Rail

Limits = tuple[int | None, float | None]


def at_hand(groups: list[list[int]], pieces: list[Wanted], index: int, limits: Limits) -> list[int]:
    """Return the strings of which the train still has the rest where a piece begins."""
    train_strings, reach = limits
    piece, found = pieces[index], []
    for number, group in enumerate(groups):
        away = piece.begin - pieces[group[-1]].end
        same_train = train_strings is None or number // train_strings == (len(groups) - 1) // train_strings
        if away >= 0 and same_train and (reach is None or away <= reach):
            found.append(number)
    return found


def fewest_strings(pieces: list[Wanted], string: float, saw: float, limits: Limits) -> int:
    """Fewest strings by trying every way to lay the pieces, one after the other."""
    least = len(pieces)

    def put(index: int, groups: list[list[int]], left: list[float]) -> None:
        nonlocal least
        if len(groups) >= least:
            return
        if index == len(pieces):
            least = len(groups)
            return
        need = pieces[index].steel
        for number in at_hand(groups, pieces, index, limits):
            if not pieces[index].whole and left[number] >= need:
                again, rest = [list(group) for group in groups], list(left)
                again[number].append(index)
                rest[number] -= need + saw
                put(index + 1, again, rest)
        put(index + 1, [*groups, [index]], [*left, string - need - saw])

    put(0, [], [])
    return least


def drawn(chance: random.Random, string: int) -> list[Wanted]:
    found = []
    for _ in range(chance.randint(1, 7)):
        begin, length = chance.randint(0, 120), chance.choice((string, chance.randint(2, string - 1)))
        rail: Rail = "left" if chance.random() < 0.5 else "right"
        found.append(Wanted(float(begin), rail, float(begin + length), float(length), length == string, closes=False))
    return sorted(found)


@pytest.mark.parametrize("limits", [(None, None), (2, None), (None, 20.0), (2, 20.0), (1, None), (None, 0.0)])
def test_few_strings_come_off_and_only_what_is_at_hand_is_laid(limits: Limits) -> None:
    chance = random.Random(7)
    train_strings, reach = limits
    more = 0
    for _ in range(400):
        string, saw = chance.randint(10, 40), float(chance.randint(0, 2))
        pieces = drawn(chance, string)
        groups = strings_for(pieces, string=float(string), saw=saw, train_strings=train_strings, reach=reach)
        assert sorted(piece for group in groups for piece in group) == pieces
        assert [group[0] for group in groups] == sorted(group[0] for group in groups)
        for number, group in enumerate(groups):
            assert sum(piece.steel for piece in group) + saw * (len(group) - 1) <= string
            assert all(other.begin >= one.end for one, other in pairwise(group))
            assert reach is None or all(other.begin - one.end <= reach for one, other in pairwise(group))
            if train_strings is not None:
                gone = [later[0] for later in groups[(number // train_strings + 1) * train_strings :]]
                assert all(piece <= later for piece in group for later in gone)
        least = fewest_strings(pieces, float(string), saw, limits)
        assert least <= len(groups) <= least + 1
        more += len(groups) > least
    # the shortest left-over that holds a piece is a good choice, not always the best
    assert more <= 12


def piece(begin: float, end: float, steel: float, rail: str = "left") -> Wanted:
    return Wanted(begin, "left" if rail == "left" else "right", end, steel, whole=False, closes=True)


def test_the_other_rail_beside_a_cut_piece_gets_a_string_of_its_own() -> None:
    beside = [piece(0.0, 60.0, 60.0), piece(5.0, 35.0, 30.0, "right")]
    assert [len(group) for group in strings_for(beside, string=100.0, saw=0.0)] == [1, 1]
    ahead = [piece(0.0, 60.0, 60.0), piece(60.0, 90.0, 30.0, "right")]
    assert [len(group) for group in strings_for(ahead, string=100.0, saw=0.0)] == [2]


def test_a_left_over_stays_behind_when_its_train_is_empty_or_it_is_out_of_reach() -> None:
    far = [piece(0.0, 60.0, 60.0), piece(100.0, 190.0, 90.0), piece(1000.0, 1030.0, 30.0)]
    assert [len(group) for group in strings_for(far, string=100.0, saw=0.0)] == [2, 1]
    assert [len(group) for group in strings_for(far, string=100.0, saw=0.0, train_strings=2)] == [2, 1]
    assert [len(group) for group in strings_for(far, string=100.0, saw=0.0, train_strings=1)] == [1, 1, 1]
    assert [len(group) for group in strings_for(far, string=100.0, saw=0.0, reach=939.0)] == [1, 1, 1]
    assert [len(group) for group in strings_for(far, string=100.0, saw=0.0, reach=940.0)] == [2, 1]
