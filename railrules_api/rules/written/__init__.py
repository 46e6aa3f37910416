"""Formulas that are told in words, written out with the numbers of one use of their rule.

A sum over a list, a row of a table, a choice between cases and a root that was searched for are no arithmetic on the fields of
a rule; each has a way to be written as arithmetic for the numbers at hand, so that a reader can follow every line of a sheet.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Final

from railrules_api.rules.written import buckling, fastenings, rail, sections, thermal, work

if TYPE_CHECKING:
    from collections.abc import Iterable

    from railrules_api.rules.model import Rule
    from railrules_api.rules.written.terms import Way, Written

WAYS: Final[dict[tuple[str, str], Way]] = {
    **fastenings.WAYS, **rail.WAYS, **work.WAYS, **thermal.WAYS, **buckling.WAYS, **sections.WAYS,
}  # fmt: skip


def way_of(rule: Rule[Any, Any], place: int) -> Way | None:
    """Return how a formula of a rule is written out; `place` counts from 1. None where it is arithmetic as it stands."""
    formula = rule.formulas[place - 1]
    if formula.exact:
        return None
    several = sum(other.gives == formula.gives for other in rule.formulas) > 1
    return WAYS.get((rule.id, formula.gives)) or (WAYS.get((rule.id, f"{formula.gives} {place}")) if several else None)


def written(rule: Rule[Any, Any], place: int, given: Any, found: Any) -> Iterable[Written]:  # noqa: ANN401  any rule's records
    """Write a formula of a rule out for one use; nothing where it is arithmetic as it stands, or gives nothing here."""
    way = way_of(rule, place)
    return way(given, found) if way is not None and rule.formulas[place - 1].holds_for(given) else ()
