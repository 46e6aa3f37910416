from __future__ import annotations

import math

import pytest

from railrules_api.rules.quantities import sound_ties as rule
from railrules_api.rules.quantities.sound_ties import SoundTiesInput

TABLE = [(1, 5, 6), (2, 8, 9), (3, 8, 10), (4, 12, 14), (5, 12, 14)]


@pytest.mark.parametrize(("track_class", "straight", "sharp"), TABLE)
def test_table_of_the_regulation(track_class: int, straight: int, sharp: int) -> None:
    def least(degree: float | None, *, in_turnout: bool = False) -> int:
        angle = None if degree is None else degree * math.pi / 180
        return rule.evaluate(SoundTiesInput(track_class=track_class, degree=angle, in_turnout=in_turnout)).least

    assert (least(None), least(2.0), least(0.5)) == (straight,) * 3
    assert (least(2.01), least(10.0), least(None, in_turnout=True)) == (sharp,) * 3


@pytest.mark.parametrize(("sound", "verdict"), [(None, "not-checked"), (12, "passes"), (11, "fails"), (0, "fails")])
def test_verdict(sound: int | None, verdict: str) -> None:
    check = rule.evaluate(SoundTiesInput(track_class=4, sound_ties=sound)).check
    assert check.verdict == verdict
    assert bool(check.would_pass) == (verdict == "fails")
