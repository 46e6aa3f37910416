"""Masses that a job gives to items of which no rule knows any."""

from __future__ import annotations

from typing import TYPE_CHECKING

from railrules_api.domain.errors import below, refuse
from railrules_api.domain.kinds import Kind

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from railrules_api.rules.ordering import ItemTerms
    from railrules_api.rules.quantities.lines import Line
    from railrules_api.rules.takeoff.job import ItemMass, Job


def _of_one(given: ItemMass, lines: list[Line]) -> float:
    """Return the mass of one piece or of one cubic metre [kg].

    Raises:
        RefusedError: neither or both are given, it is not what the item is measured in, or the mass is known already.
    """
    if (given.mass_each is None) == (given.density is None):
        raise refuse("mass_each", reason="give one of mass_each and density", value=given.mass_each)
    kinds = {line.net.kind for line in lines}
    if given.mass_each is not None:
        if kinds - {None}:
            raise refuse("mass_each", reason=f"{given.item} is measured, not counted", value=given.mass_each)
    elif kinds - {Kind.VOLUME}:
        raise refuse("density", reason=f"{given.item} is not measured by volume", value=given.density)
    counted = [line for line in lines if line.net.value]
    if counted and all(line.mass is not None for line in counted):
        raise refuse(
            "item", reason="its mass is known: it stands with the item in the segments or the catalogue", value=given.item
        )
    return given.mass_each if given.mass_each is not None else given.density or 0.0


def masses_of(job: Job, terms: Mapping[str, ItemTerms], bill: Iterable[Line]) -> dict[str, float]:
    """Return the masses that a job gives, of one piece or of one cubic metre, by item [kg].

    Raises:
        RefusedError: a mass contradicts itself or its item, stands twice, or is of an item that is in no line and no catalogue.
    """
    masses: dict[str, float] = {}
    if not job.masses:
        return masses
    by_item: dict[str, list[Line]] = {}
    for line in bill:
        by_item.setdefault(line.item, []).append(line)
    for position, given in enumerate(job.masses):
        with below("masses", position):
            if given.item in masses:
                raise refuse("item", reason="has a mass already", value=given.item)
            if given.item not in by_item and given.item not in terms:
                allowed = tuple(sorted({*by_item, *terms}))[:200]
                raise refuse("item", reason="no such item", value=given.item, allowed=allowed)
            masses[given.item] = _of_one(given, by_item.get(given.item, []))
    return masses
