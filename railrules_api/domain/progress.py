"""How far long work has come: told to whoever wants to know, and costing nothing where nobody does."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import TypeAlias, TypeVar

Thing = TypeVar("Thing")
Tell: TypeAlias = Callable[[str, int, int], object]
"""Is told a stage, how many steps of it are done, and how many it has. What it raises ends the work."""


def told(things: Sequence[Thing], stage: str, tell: Tell | None) -> Iterable[Thing]:
    """Return things to be worked one after another; before each, and after the last, it is told how many are done.

    >>> [thing for thing in told("ab", "letters", lambda *so_far: print(*so_far))]
    letters 0 2
    letters 1 2
    letters 2 2
    ['a', 'b']

    Args:
        things: what is worked.
        stage: what the work is called.
        tell: who is told; None for nobody, and then the things are returned as they are.
    """
    return things if tell is None else _told(things, stage, tell)


def _told(things: Sequence[Thing], stage: str, tell: Tell) -> Iterator[Thing]:
    for done, thing in enumerate(things):
        tell(stage, done, len(things))
        yield thing
    tell(stage, len(things), len(things))
