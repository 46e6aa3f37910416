"""The work plan of a job: what the segments ask of the gang, added up and put to the rule that times it."""

from __future__ import annotations

from math import fsum
from typing import TYPE_CHECKING, Final

from railrules_api.domain.amounts import Amount
from railrules_api.rules.quantities import work
from railrules_api.rules.quantities.given import worked_length
from railrules_api.rules.quantities.work_plan import OperationAmount, Production, WorkPlanInput

if TYPE_CHECKING:
    from collections.abc import Iterable

    from railrules_api.rules.model import Working

UNTIMED: Final = Production(working_day=86_400.0)
"""No rates: nothing is timed, so that the working day decides nothing."""


def plan_input(workings: Iterable[Working], production: Production | None) -> WorkPlanInput:
    """Return the question to `quantities.work-plan` for all the segments whose work has been counted."""
    given = production or UNTIMED
    counted = [working for working in workings if working.rule is work.RULE]
    found: list[work.WorkResult] = [working.found for working in counted]
    lengths = [worked_length(working.given.stretch) for working in counted]
    amounts = []
    for operations in zip(*(result.operations for result in found), strict=True):
        total = Amount(fsum(operation.amount.value for operation in operations), operations[0].amount.kind)
        amounts.append(OperationAmount(operation=operations[0].operation, amount=total))
    return WorkPlanInput(
        ties=sum(result.ties for result in found),
        length=fsum(lengths),
        amounts=tuple(amounts),
        rates=given.rates,
        working_day=given.working_day,
        occupancy=given.occupancy,
        occupancy_lost=given.occupancy_lost,
    )
