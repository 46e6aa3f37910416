"""Rulebooks: the defaults that stand in for what a caller leaves out, under one name.

The built-in one is `data/defaults.toml`. A house writes its own in the same form and overrides what it does otherwise;
a request overrides single entries. Whatever is overridden is checked against the entry it replaces.
"""

from __future__ import annotations

import dataclasses
import hashlib
from dataclasses import dataclass
from types import MappingProxyType
from typing import TYPE_CHECKING

from railrules_api.catalogue.model import Provenance, Row, Status, plain
from railrules_api.domain.errors import refuse
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Mapping

    from railrules_api.domain.kinds import Kind

REQUEST = Provenance(source="request", where="rulebook entries of the request", status="common-practice")


@dataclass(frozen=True, slots=True, kw_only=True)
class Given:
    """What somebody wants an entry to be: a number with its unit, or a word.

    Attributes:
        number: the number; None for a word.
        unit: its unit code; empty for counts, pure numbers and words.
        word: the word; None for a number.
        printed: the number's digits, where they are to be kept as written.
    """

    number: float | None = None
    unit: str = ""
    word: str | None = None
    printed: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Default:
    """A rulebook entry: what stands in when the caller leaves an input out.

    Attributes:
        id: what a rule's field names as its default.
        about: meaning, one sentence.
        si: SI for a quantity, an int for a count, a float for a number, a str for a word.
        printed: as the data file has it.
        unit: unit code of the printed value; empty for numbers and words.
        kind: kind of quantity; None for numbers and words.
        provenance: where it comes from.
        rulebook: id of the rulebook that set it.
        table: the catalogue table whose row a word names; empty for other words.
        words: the words it may be; empty where any will do.
        at_least: smallest value a house may set, SI; None when there is none.
        at_most: largest value a house may set, SI; None when there is none.
    """

    id: str
    about: str
    si: float | str
    printed: str
    unit: str
    kind: Kind | None
    provenance: Provenance
    rulebook: str
    table: str = ""
    words: tuple[str, ...] = ()
    at_least: float | None = None
    at_most: float | None = None

    @property
    def source(self) -> str:
        """Id of the source."""
        return self.provenance.source

    @property
    def where(self) -> str:
        """Place in the source."""
        return self.provenance.where

    @property
    def status(self) -> Status:
        """How the value was obtained."""
        return self.provenance.status

    def replaced(self, given: Given, provenance: Provenance, rulebook: str) -> Default:
        """Return the entry with another value of the same kind.

        Raises:
            RefusedError: it is no such value, of another kind, or outside the entry's limits; paths are value, unit, word.
        """
        if isinstance(self.si, str):
            word = self._word(given)
            return dataclasses.replace(self, si=word, printed=word, provenance=provenance, rulebook=rulebook)
        if given.word is not None or given.number is None:
            raise refuse("value", reason=f"{self.id} is a number; give its value", value=given.word)
        si = self._number(given.number, given.unit)
        shown = given.printed or f"{given.number:.12g}"
        return dataclasses.replace(self, si=si, printed=shown, unit=given.unit, provenance=provenance, rulebook=rulebook)

    def _word(self, given: Given) -> str:
        if given.word is None or given.number is not None or given.unit:
            raise refuse("word", reason=f"{self.id} is a word; give that alone", value=given.word, allowed=self.words)
        if self.words and given.word not in self.words:
            reason = f"no such row in {self.table}" if self.table else "not one of the accepted words"
            raise refuse("word", reason=reason, value=given.word, allowed=self.words)
        return given.word

    def _number(self, number: float, unit: str) -> float:
        si = number
        if self.kind is not None:
            codes = UNITS[self.kind]
            if unit not in codes:
                raise refuse("unit", reason=f"not a unit of {self.kind}", value=unit, allowed=tuple(codes))
            si = codes[unit].to_si(number)
        elif unit:
            raise refuse("unit", reason=f"{self.id} has no unit", value=unit)
        if isinstance(self.si, int) and si != int(si):
            raise refuse("value", reason="must be a whole number", value=number)
        if (self.at_least is not None and si < self.at_least) or (self.at_most is not None and si > self.at_most):
            reason = "outside the limits of this entry"
            raise refuse("value", reason=reason, value=si, minimum=self.at_least, maximum=self.at_most)
        return int(si) if isinstance(self.si, int) else float(si)


@dataclass(frozen=True, slots=True, kw_only=True)
class Rulebook:
    """Defaults under one name. A house rulebook holds all of them: its own, and the built-in ones that it leaves alone.

    Attributes:
        id: its name.
        edition: its edition, as its author writes it.
        title: its name for people.
        digest: short digest of its text, so that an answer can be traced to the very file.
        defaults: entries by id.
        rows: patterns of its own, by table and id.
    """

    id: str
    edition: str
    title: str
    digest: str
    defaults: Mapping[str, Default]
    rows: Mapping[str, Mapping[str, Row]]

    def replacing(self, name: str, *, number: float | None = None, unit: str = "", word: str | None = None) -> Rulebook:
        """Return the rulebook with one entry replaced by what a request says; its edition and digest tell the difference.

        Raises:
            RefusedError: there is no such entry, or it cannot have that value; paths are id, value, unit, word.
        """
        default = self.defaults.get(name)
        if default is None:
            close = tuple(known for known in self.defaults if plain(name) and plain(name) in plain(known))
            raise refuse("id", reason="no such rulebook entry", value=name, allowed=close[:5])
        entry = default.replaced(Given(number=number, unit=unit, word=word), REQUEST, self.id)
        change = f"{self.digest} {name} {entry.printed} {entry.unit}"
        return dataclasses.replace(
            self,
            edition=self.edition if self.edition.endswith(_CHANGED) else self.edition + _CHANGED,
            digest=hashlib.sha256(change.encode()).hexdigest()[:8],
            defaults=MappingProxyType({**self.defaults, name: entry}),
        )


_CHANGED = ", changed by the request"
