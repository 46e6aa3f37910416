"""What a rule is: a pure function with a name, a formula, sources and cautions."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, Literal, TypeVar

Input = TypeVar("Input")
Output = TypeVar("Output")

Status = Literal["published", "derived", "from-memory", "common-practice"]
"""How far a statement can be trusted: read in the cited document, worked out from one, remembered, or a fact of the trade."""


@dataclass(frozen=True, slots=True)
class Cite:
    """A place in a source.

    Attributes:
        source: id in `data/sources.toml`.
        where: section, table, page or equation; never empty.
        status: how the statement was obtained.
    """

    source: str
    where: str
    status: Status


@dataclass(frozen=True, slots=True)
class Caution:
    """Something a user of the answer must know.

    Attributes:
        code: stable identifier.
        text: the caution in full sentences.
        cite: where it stands.
    """

    code: str
    text: str
    cite: Cite


@dataclass(frozen=True, slots=True)
class Formula:
    """One equation of a rule in the symbols of its fields, as a Python expression on coherent SI numbers.

    Attributes:
        gives: name of the output field it yields.
        text: right-hand side, e.g. `E * A * alpha * (T - T_N)`; the functions ceil, floor, sqrt, sin, min, max, abs, sum
            may stand in it.
        exact: the text can be evaluated as it stands; False where it is a description in words, a sum over a list, a row of a
            table or a root: `rules/written` then says what it comes to in one use.
        when: an input field and the word that it must have for the equation to hold; None where it always holds.
    """

    gives: str
    text: str
    exact: bool = True
    when: tuple[str, str] | None = None

    def holds_for(self, given: object) -> bool:
        """Tell whether the equation holds for an input of its rule."""
        return self.when is None or getattr(given, self.when[0]) == self.when[1]


@dataclass(frozen=True, slots=True, kw_only=True)
class Rule(Generic[Input, Output]):
    """A registry record.

    Attributes:
        id: `family.name`, stable for ever.
        title: what it answers, in a few words.
        summary: one paragraph: what is computed and on which assumptions.
        formulas: the equations, in the order they are applied.
        cites: where the rule comes from, at least one.
        input: described dataclass of what it needs.
        output: described dataclass of what it answers.
        evaluate: the pure function.
        cautions: what every answer of the rule carries.
        since: service version that introduced it.
        columns: takes NumPy columns in place of floats.
        resource: path of its resource below the version, where it is not that of the id.
    """

    id: str
    title: str
    summary: str
    formulas: tuple[Formula, ...]
    cites: tuple[Cite, ...]
    input: type[Input]
    output: type[Output]
    evaluate: Callable[[Input], Output]
    cautions: tuple[Caution, ...] = ()
    since: str = "0.1.0"
    columns: bool = False
    resource: str = ""

    @property
    def path(self) -> str:
        """Path of its resource below the version: `quantities/tie-plates` for `quantities.tie-plates`."""
        return self.resource or self.id.replace(".", "/")


class Working:
    """One use of one rule.

    Attributes:
        rule: the rule.
        of: part of the job it was asked for; empty for a single question.
        given: its input.
    """

    __slots__ = ("_found", "given", "of", "rule")

    def __init__(self, rule: Rule[Any, Any], of: str, given: Any, found: Any = None) -> None:  # noqa: ANN401  any rule's records
        """Keep a use of a rule; without what was found, that is worked out when somebody wants to see it."""
        self.rule = rule
        self.of = of
        self.given = given
        self._found = found

    @property
    def found(self) -> Any:  # noqa: ANN401  any rule's record
        """Its output."""
        if self._found is None:
            self._found = self.rule.evaluate(self.given)
        return self._found
