"""The sheet of segments, whose ties follow their spacing, and what the pages of a workbook share."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final

from railrules_api.domain.kinds import Kind
from railrules_api.domain.track import rail_count, worked_spans
from railrules_api.rules.quantities import ties
from railrules_api.sheets.book import Changeable, Column, Formula
from railrules_api.units import answer_unit

if TYPE_CHECKING:
    from railrules_api.sheets.book import Book, Page
    from railrules_api.sheets.model import Material
    from railrules_api.units import System

_LAST_ROW: Final = 100_000


def in_answer(value: float, kind: Kind | None, system: System, preferred: tuple[str, str] | None = None) -> float:
    """Return an SI value in the unit of the answer."""
    return value if kind is None else answer_unit(kind, system, preferred).from_si(value) + 0.0


def label(kind: Kind | None, system: System, preferred: tuple[str, str] | None = None) -> str:
    """Return the label of the answer's unit."""
    return "each" if kind is None else answer_unit(kind, system, preferred).label


@dataclass(frozen=True, slots=True)
class SegmentRow:
    """Where a segment stands on its sheet, and what its lines may follow."""

    row: int
    name: str
    spacing: float
    share: float
    ties: int
    rails: int


def column_of(page: Page, heading: str) -> str:
    """Return the whole of a column as a range of another sheet."""
    first = page.place(heading, 2, fixed=True)
    last = page.place(heading, _LAST_ROW, fixed=True)
    return f"{page.sheet.get_name()}!{first}:{last}"


def segments(book: Book, material: Material) -> tuple[Page, list[SegmentRow]]:
    """Write the segments, with ties that follow their spacing, and the worked parts that they are counted in."""
    system, long = material.system, label(Kind.LENGTH, material.system)
    short = ("in", "mm")
    limits = (Column(f"Begin, {long}"), Column(f"End, {long}"))
    part_columns = (Column("No.", "whole"), Column("Segment", "text"), *limits, Column("Ties", "whole"))
    columns = (
        Column("No.", "whole"), Column("Segment", "text"), Column("Track", "text"), Column(f"Begin, {long}"),
        Column(f"End, {long}"), Column(f"Length, {long}"), Column("Rails", "whole"),
        Column(f"Tie spacing, {label(Kind.LENGTH, system, short)}"), Column(f"Tie origin, {long}"), Column("Ties", "whole"),
        Column("Share renewed", "share"), Column("Ties renewed"), Column("Anchors", "whole"), Column("Notes", "text"),
    )  # fmt: skip
    about = "Grey cells may be changed: ties follow. Lines that cannot say `ask again`: send the changed job to the service."
    page = book.page("Segments", about, columns, kept=2, widest=60)
    taken = "The parts of each segment that the work takes in; ties stand at origin + k * spacing."
    parts = book.page("Parts", taken, part_columns)
    asked = {working.of: working for working in material.workings if working.rule is ties.RULE}
    per = 12 if system == "us" else 1000
    rows: list[SegmentRow] = []
    for number, summary in enumerate(material.found.segments, 1):
        working = asked[summary.name]
        stretch, share = working.given.stretch, working.given.renewed_share
        spacing_at = f"Segments!{page.place(columns[7].heading, fixed=True)}"
        origin_at = f"Segments!{page.place(columns[8].heading, fixed=True)}"
        for span in worked_spans(stretch):
            begin, end = parts.place(part_columns[2].heading), parts.place(part_columns[3].heading)
            reach = "-INT(-ROUND(({0}-" + f"{origin_at})*{per}/{spacing_at},6))"
            count = ties.evaluate(_one_span(working.given, span.begin, span.end)).ties
            book.add(
                parts,
                (
                    number, summary.name, in_answer(span.begin, Kind.LENGTH, system), in_answer(span.end, Kind.LENGTH, system),
                    Formula(f"={reach.format(end)}-({reach.format(begin)})", count),
                ),
            )  # fmt: skip
        counted = f"=SUMIF({column_of(parts, 'No.')},{page.place('No.')},{column_of(parts, 'Ties')})"
        renewed = f"={page.place('Ties')}*{page.place('Share renewed')}"
        length = f"={page.place(columns[4].heading)}-{page.place(columns[3].heading)}"
        spacing = in_answer(summary.spacing, Kind.LENGTH, system, short)
        at = book.add(
            page,
            (
                number, summary.name, summary.track, in_answer(summary.begin, Kind.LENGTH, system),
                in_answer(summary.end, Kind.LENGTH, system), Formula(length, in_answer(summary.length, Kind.LENGTH, system)),
                rail_count(stretch.rails), Changeable(spacing, f"spacing_{number}", 1.0),
                in_answer(stretch.ties.origin, Kind.LENGTH, system), Formula(counted, summary.ties),
                Changeable(share, f"renewed_share_{number}"), Formula(renewed, working.found.ties_renewed),
                summary.anchors, "; ".join(summary.notes),
            ),
        )  # fmt: skip
        rows.append(SegmentRow(at, summary.name, spacing, share, summary.ties, rail_count(stretch.rails)))
    book.close(page)
    book.close(parts)
    return page, rows


def _one_span(given: Any, begin: float, end: float) -> Any:  # noqa: ANN401  the input of the rule of ties
    stretch = type(given.stretch)(begin=begin, end=end, rails="both", ties=given.stretch.ties)
    return ties.TiesInput(stretch=stretch, renewed_share=given.renewed_share)
