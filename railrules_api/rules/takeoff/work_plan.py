"""The work plan of a job: what the segments ask of the gang, added up and put to the rule that times it."""

from __future__ import annotations

from math import fsum
from typing import TYPE_CHECKING, Final

from railrules_api.domain.amounts import Amount
from railrules_api.rules.quantities import work
from railrules_api.rules.quantities.given import worked_length
from railrules_api.rules.quantities.work_plan import OperationAmount, Production, WorkPlanInput

if TYPE_CHECKING:
    from railrules_api.rules.quantities.work_plan import Task

UNTIMED: Final = Production(working_day=86_400.0)
"""No rates: nothing is timed, so that the working day decides nothing."""


class Gang:
    """What the segments ask of the gang, segment by segment."""

    __slots__ = ("amounts", "lengths", "ties")

    def __init__(self) -> None:
        """Begin with no segment."""
        self.ties = 0
        self.lengths: list[float] = []
        self.amounts: dict[Task, list[Amount]] = {}

    def add(self, given: work.WorkInput) -> None:
        """Count the operations of a segment.

        Raises:
            RefusedError: the stretch, a pattern or a zone contradicts itself.
        """
        counts = work.counts(given)
        self.ties += int(counts["level-cribs"].value)
        self.lengths.append(worked_length(given.stretch))
        for task, amount in counts.items():
            self.amounts.setdefault(task, []).append(amount)

    def plan_input(self, production: Production | None) -> WorkPlanInput:
        """Return the question to `quantities.work-plan` for all the segments."""
        given = production or UNTIMED
        return WorkPlanInput(
            ties=self.ties,
            length=fsum(self.lengths),
            amounts=tuple(
                OperationAmount(operation=task, amount=Amount(fsum([amount.value for amount in amounts]), amounts[0].kind))
                for task, amounts in self.amounts.items()
            ),
            rates=given.rates,
            working_day=given.working_day,
            occupancy=given.occupancy,
            occupancy_lost=given.occupancy_lost,
        )
