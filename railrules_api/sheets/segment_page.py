"""The sheets of segments and of their parts, where ties follow their spacing, and what the pages of a workbook share."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final, NamedTuple

from railrules_api.domain.kinds import Kind
from railrules_api.domain.track import rail_count
from railrules_api.rules.quantities import custom, ties
from railrules_api.sheets.book import Changeable, Column, Formula
from railrules_api.sheets.parts import parts_of, runs_of
from railrules_api.units import answer_unit

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from railrules_api.rules.model import Working
    from railrules_api.rules.quantities.custom import CustomInput
    from railrules_api.sheets.book import Book, Cell, Page
    from railrules_api.sheets.model import Material
    from railrules_api.sheets.parts import Part
    from railrules_api.units import System

_LAST_ROW: Final = 100_000
_SHORT: Final = ("in", "mm")


def in_answer(value: float, kind: Kind | None, system: System, preferred: tuple[str, str] | None = None) -> float:
    """Return an SI value in the unit of the answer."""
    return value if kind is None else answer_unit(kind, system, preferred).from_si(value) + 0.0


def label(kind: Kind | None, system: System, preferred: tuple[str, str] | None = None) -> str:
    """Return the label of the answer's unit."""
    return "each" if kind is None else answer_unit(kind, system, preferred).label


def column_of(page: Page, heading: str) -> str:
    """Return the whole of a column as a range of another sheet."""
    first = page.place(heading, 2, fixed=True)
    last = page.place(heading, _LAST_ROW, fixed=True)
    return f"{page.sheet.get_name()}!{first}:{last}"


@dataclass(frozen=True, slots=True)
class Followed:
    """A number on the sheet of segments that others may follow: how they call its cell, and what the service answers."""

    at: str
    value: float


@dataclass(frozen=True, slots=True, kw_only=True)
class SegmentRow:
    """What the lines of a segment may follow.

    Attributes:
        name: of the segment.
        given: what was asked of it, by rule.
        own_items: what was asked of its items of the job's own, by name; None where two have one name.
        rails: rails renewed.
        spacing: of its ties.
        share: of its ties that is renewed.
        ties: that stand in it.
        renewed: ties renewed.
        pinned: ties whose plates are pinned.
        spikes: driven at one rail, without those of joint ties.
        anchors: applied at all renewed rails; None where they go by rail length, which no formula of cells follows.
    """

    name: str
    given: Mapping[str, Any]
    own_items: Mapping[str, CustomInput | None]
    rails: int
    spacing: Followed
    share: Followed
    ties: Followed
    renewed: Followed
    pinned: Followed
    spikes: Followed
    anchors: Followed | None


_NUMBER, _NAME = Column("No.", "whole"), Column("Segment", "text")


def _limits(long: str) -> tuple[Column, Column]:
    return Column(f"Begin, {long}"), Column(f"End, {long}")


def _part_columns(long: str) -> tuple[Column, ...]:
    return (
        _NUMBER, _NAME, *_limits(long), Column("First tie", "whole"), Column("Next tie", "whole"), Column("Ties", "whole"),
        Column("Boxed every", "whole"), Column("Boxed ties", "whole"), Column("Pinned every", "whole"),
        Column("Pinned ties", "whole"), Column("Spikes a plate", "whole"), Column("Spikes at a rail", "whole"),
    )  # fmt: skip


class _Of(NamedTuple):
    """The segment that a part is of: its number and name, and the cells of its tie spacing and origin."""

    number: int
    name: str
    spacing: str
    origin: str


def _write_part(book: Book, page: Page, of: _Of, part: Part, system: System) -> None:
    """Write a part with formulas that do what `domain.counting` does."""
    begin, end = (page.place(column.heading) for column in _limits(label(Kind.LENGTH, system)))
    per = 12 if system == "us" else 1000  # of the unit of the spacing to that of stations
    first, beyond = page.place("First tie"), page.place("Next tie")

    def from_station(station: str, value: int) -> Formula:
        return Formula(f"=-INT(-ROUND(({station}-{of.origin})*{per}/{of.spacing},6))", value)

    def multiples(heading: str, every: int | None) -> Formula:
        at = page.place(heading)
        return Formula(f'=IF({at}="",0,INT(-{first}/{at})-INT(-{beyond}/{at}))', part.every(every))

    book.add(
        page,
        (
            of.number, of.name, in_answer(part.begin, Kind.LENGTH, system), in_answer(part.end, Kind.LENGTH, system),
            from_station(begin, part.first), from_station(end, part.beyond), Formula(f"={beyond}-{first}", part.ties),
            part.boxed_every, multiples("Boxed every", part.boxed_every), part.pinned_every,
            multiples("Pinned every", part.pinned_every), part.spikes,
            Formula(f"={page.place('Ties')}*{page.place('Spikes a plate')}", part.ties * part.spikes),
        ),
    )  # fmt: skip


def _own_items(workings: Iterable[Working]) -> dict[str, CustomInput | None]:
    """Return what was asked of a segment's own items, of all that was asked of it."""
    found: dict[str, CustomInput | None] = {}
    for working in workings:
        if working.rule is custom.RULE:
            found[working.given.item] = None if working.given.item in found else working.given
    return found


def segments(book: Book, material: Material) -> list[SegmentRow]:
    """Write the segments, with ties that follow their spacing, and the parts that they are counted in."""
    system, long = material.system, label(Kind.LENGTH, material.system)
    spacing_column = f"Tie spacing, {label(Kind.LENGTH, system, _SHORT)}"
    columns = (
        _NUMBER, _NAME, Column("Track", "text"), *_limits(long), Column(f"Length, {long}"), Column("Rails", "whole"),
        Column(spacing_column), Column(f"Tie origin, {long}"), Column("Ties", "whole"), Column("Share renewed", "share"),
        Column("Ties renewed"), Column("Anchors", "whole"), Column("Boxed ties", "whole"), Column("Pinned ties", "whole"),
        Column("Spikes at a rail", "whole"), Column("Notes", "text"),
    )  # fmt: skip
    about = "Grey cells may be changed: what is counted by ties follows, and what cannot says `ask again`. Checks do not follow."
    page = book.page("Segments", about, columns, kept=2, widest=40)
    taken = "The parts of each segment that are worked, cut where curvature or anchoring changes; ties at origin + k * spacing."
    parts = book.page("Parts", taken, _part_columns(long), kept=2)
    rows: list[SegmentRow] = []
    by_name: dict[str, list[Working]] = {summary.name: [] for summary in material.found.segments}
    for working in material.workings:
        if working.of in by_name:
            by_name[working.of].append(working)
    for number, summary in enumerate(material.found.segments, 1):
        asked = by_name[summary.name]
        given = {working.rule.id: working.given for working in asked}
        stretch, share = given[ties.RULE.id].stretch, given[ties.RULE.id].renewed_share
        rails, pieces = rail_count(stretch.rails), tuple(parts_of(given))
        tie_at = (f"Segments!{page.place(heading, fixed=True)}" for heading in (spacing_column, f"Tie origin, {long}"))
        of = _Of(number, summary.name, *tie_at)
        for piece in pieces:
            _write_part(book, parts, of, piece, system)
        counts = {
            "Ties": sum(piece.ties for piece in pieces),
            "Boxed ties": sum(piece.every(piece.boxed_every) for piece in pieces),
            "Pinned ties": sum(piece.every(piece.pinned_every) for piece in pieces),
            "Spikes at a rail": sum(piece.ties * piece.spikes for piece in pieces),
        }
        added = {
            heading: Formula(f"=SUMIF({column_of(parts, 'No.')},{page.place('No.')},{column_of(parts, heading)})", count)
            for heading, count in counts.items()
        }
        boxed_alone = all(run.per_rail is None for run in runs_of(given))
        applied: Cell = summary.anchors
        if boxed_alone:
            applied = Formula(f"=2*{page.place('Boxed ties')}*{page.place('Rails')}", summary.anchors)
        begin, end = (page.place(column.heading) for column in _limits(long))
        spacing = in_answer(summary.spacing, Kind.LENGTH, system, _SHORT)
        row = book.add(
            page,
            (
                number, summary.name, summary.track, in_answer(summary.begin, Kind.LENGTH, system),
                in_answer(summary.end, Kind.LENGTH, system),
                Formula(f"={end}-{begin}", in_answer(summary.length, Kind.LENGTH, system)), rails,
                Changeable(spacing, f"spacing_{number}", 1.0), in_answer(stretch.ties.origin, Kind.LENGTH, system),
                added["Ties"], Changeable(share, f"renewed_share_{number}"),
                Formula(f"={page.place('Ties')}*{page.place('Share renewed')}", summary.ties * share), applied,
                added["Boxed ties"], added["Pinned ties"], added["Spikes at a rail"], "; ".join(summary.notes),
            ),
        )  # fmt: skip

        def followed(heading: str, value: float, row: int = row) -> Followed:
            return Followed(f"Segments!{page.place(heading, row, fixed=True)}", value)

        rows.append(
            SegmentRow(
                name=summary.name, given=given, own_items=_own_items(asked), rails=rails,
                spacing=followed(spacing_column, spacing),
                share=followed("Share renewed", share), ties=followed("Ties", counts["Ties"]),
                renewed=followed("Ties renewed", summary.ties * share), pinned=followed("Pinned ties", counts["Pinned ties"]),
                spikes=followed("Spikes at a rail", counts["Spikes at a rail"]),
                anchors=followed("Anchors", summary.anchors) if boxed_alone else None,
            )
        )  # fmt: skip
    book.close(page)
    book.close(parts)
    return rows
