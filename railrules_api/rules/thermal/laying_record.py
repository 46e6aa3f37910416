"""The record of laying or adjusting a string: which fields, and who asks for them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Final

from railrules_api.domain.amounts import SMALL, Amount
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind

REGULATION: Final = "49 CFR 213.119(j)(1): rail temperature, location and date, kept for at least one year"
CONTRACT: Final = "Section 34 11 70, record of each string"
ADVICE: Final = "good practice: without it the neutral temperature cannot be worked out later"


@dataclass(frozen=True, slots=True, kw_only=True)
class RecordItem:
    """One field of the record."""

    name: Annotated[str, Field("What to write down.")]
    value: Annotated[Amount | None, Field("The value, where the calculation knows it; to be replaced by what was measured.")] = (
        None
    )
    place: Annotated[str, Field("Who asks for it.")]


def laying_record(
    *, length: float, rail_temperature: float, gap: float, movement: float, neutral: float
) -> tuple[RecordItem, ...]:
    """Return the fields to record, with the values that the calculation knows filled in.

    Args:
        length: length adjusted [m].
        rail_temperature: rail temperature at the adjustment [K].
        gap: gap to leave [m].
        movement: movement given to the free end [m].
        neutral: neutral temperature achieved [K].
    """
    return (
        RecordItem(name="Rail temperature", value=Amount(rail_temperature, Kind.TEMPERATURE), place=REGULATION),
        RecordItem(name="Location: line, track, rail, stations of both ends", place=REGULATION),
        RecordItem(name="Date", place=REGULATION),
        RecordItem(name="Time of day, air temperature and weather", place=CONTRACT),
        RecordItem(name="Rail section, maker, year and month rolled; heat numbers of the end rails", place=CONTRACT),
        RecordItem(name="Length of string", value=Amount(length, Kind.LENGTH), place=CONTRACT),
        RecordItem(name="Gap at the rail ends, to the nearest 1/8 in", value=Amount(gap, Kind.LENGTH, SMALL), place=CONTRACT),
        RecordItem(name="Movement given to the free end", value=Amount(movement, Kind.LENGTH, SMALL), place=CONTRACT),
        RecordItem(name="Neutral temperature achieved", value=Amount(neutral, Kind.TEMPERATURE), place=ADVICE),
        RecordItem(name="Rail added or removed, and where", place=ADVICE),
    )
