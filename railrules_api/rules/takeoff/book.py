"""The book of a takeoff: every rule asked, and what of its answers goes into the bill and among the checks."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Annotated, Any

from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import Field
from railrules_api.domain.kinds import Kind
from railrules_api.domain.records import lean
from railrules_api.rules.checks import Check, checks_in
from railrules_api.rules.model import Rule, Working
from railrules_api.rules.takeoff.needs import needs_of

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_api.rules.quantities.lines import Line
    from railrules_api.rules.takeoff.job import Job


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class JobLine:
    """A line of the bill: what one rule says of one part of the job."""

    of: Annotated[str, Field("Segment, or section of new rail.")]
    rule: Annotated[str, Field("Id of the rule.")]
    item: Annotated[str, Field("Id of the item.")]
    product: Annotated[str, Field("Catalogue id of the product; empty where none is named.")]
    net: Annotated[Amount, Field("Exact amount, before allowance and rounding.")]
    mass: Annotated[float | None, Field("Mass of the net amount; left out where none is known.", kind=Kind.MASS)] = None


@lean
@dataclass(frozen=True, slots=True, kw_only=True)
class JobCheck:
    """A check and the part of the job it is about."""

    of: Annotated[str, Field("Segment, or section of new rail; empty for the whole job.")]
    rule: Annotated[str, Field("Id of the rule.")]
    check: Annotated[Check, Field("The check.")]
    needs: Annotated[
        tuple[str, ...],
        Field("Where in the job to give what it lacks, as JSON pointers: any of them; empty where nothing lacks."),
    ] = ()


_GRAVITY = {"fails": 0, "not-checked": 1, "passes": 2}


class Book:
    """What a takeoff has asked so far, in order.

    Attributes:
        workings: every use of a rule.
        lines: the bill, line by line.
        bill: the same lines as the rules gave them.
    """

    __slots__ = ("_checks", "_known", "bill", "lines", "workings")

    def __init__(self) -> None:
        """Begin an empty book."""
        self.workings: list[Working] = []
        self.lines: list[JobLine] = []
        self.bill: list[Line] = []
        self._checks: list[tuple[JobCheck, Any]] = []
        self._known: dict[tuple[str, Any], Any] = {}

    def ask(self, rule: Rule[Any, Any], of: str, given: Any) -> Any:  # noqa: ANN401  any rule's records
        """Put a question to a rule and enter the answer."""
        return self.enter(rule, of, given, rule.evaluate(given))

    def ask_once(self, rule: Rule[Any, Any], of: str, given: Any) -> Any:  # noqa: ANN401  any rule's records
        """Put a question that many parts have in common: what was answered to an equal one is entered again."""
        found = self._known.get((rule.id, given))
        if found is None:
            found = self._known[rule.id, given] = rule.evaluate(given)
        return self.enter(rule, of, given, found)

    def enter(self, rule: Rule[Any, Any], of: str, given: Any, found: Any) -> Any:  # noqa: ANN401  any rule's records
        """Enter an answer to a question."""
        self.workings.append(Working(rule, of, given, found))
        for line in getattr(found, "lines", ()):
            self.bill.append(line)
            self.lines.append(JobLine(of=of, rule=rule.id, item=line.item, product=line.product, net=line.net, mass=line.mass))
        for check in checks_in(found):
            self._checks.append((JobCheck(of=of, rule=rule.id, check=check), given))
        return found

    def weigh(self, masses: Mapping[str, float]) -> None:
        """Put masses, of one piece or of one cubic metre, to the lines of items of which the rules know none."""
        for position, line in enumerate(self.bill):
            if line.mass is None and line.item in masses:
                mass = line.net.value * masses[line.item]
                self.bill[position] = replace(line, mass=mass)
                self.lines[position] = replace(self.lines[position], mass=mass)

    def checks(self, job: Job, segments: Mapping[str, int]) -> tuple[JobCheck, ...]:
        """Return every check, failed ones first, then those that lack an input, then by utilisation.

        Args:
            job: the job.
            segments: positions of the segments that parts of the job are about, or of the first of several, by the part's name.
        """
        told = [
            replace(item, needs=needs_of(job, item.rule, given, item.check, segments.get(item.of, 0)))
            if item.check.verdict == "not-checked"
            else item
            for item, given in self._checks
        ]
        return tuple(sorted(told, key=lambda item: (_GRAVITY[item.check.verdict], -(item.check.utilisation or 0.0))))
