"""The workbook of a takeoff: the service's numbers in typed cells, live where a person would change an input."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from railrules_api.domain.fields import slots_of
from railrules_api.sheets import bill, segment_page
from railrules_api.sheets.book import Book, Column, Formula
from railrules_api.sheets.records import cell as cell_text
from railrules_api.sheets.records import words
from railrules_api.sheets.sheet import VERDICTS, checks_of, needed, verdict_of
from railrules_api.sheets.working import number_of, usual_unit

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from railrules_api.domain.fields import Slot
    from railrules_api.rules.takeoff.result import TakeoffResult
    from railrules_api.sheets.book import Cell, Page
    from railrules_api.sheets.model import Material
    from railrules_api.units import System

_CENTS, _FRONT = 2, 70


def _value(slot: Slot, value: Any, system: System) -> Cell:  # noqa: ANN401  a field of any record
    if isinstance(value, bool):
        return value
    number = number_of(slot, value)
    if number is None:
        return cell_text(slot, value, system)
    unit = usual_unit(number, system)
    return number.value if unit is None else unit.from_si(number.value) + 0.0


def _columns(slots: Sequence[Slot], records: Sequence[Any], system: System) -> list[Column]:
    found: list[Column] = []
    for slot in slots:
        numbers = [number for record in records if (number := number_of(slot, getattr(record, slot.name))) is not None]
        unit = usual_unit(numbers[0], system) if numbers else None
        kind = ("whole" if slot.shape == "count" else "number") if numbers else "text"
        found.append(Column(words(slot.name) + (f", {unit.label}" if unit else ""), kind))  # type: ignore[arg-type]
    return found


def _records(book: Book, name: str, about: str, groups: Iterable[tuple[str, Sequence[Any]]], system: System) -> None:
    """Write records of one type, each with the part of the job it is about; no records, no sheet."""
    flat = [(of, record) for of, records in groups for record in records]
    if not flat:
        return
    every = [record for _, record in flat]
    slots = [slot for slot in slots_of(type(every[0])) if slot.shape not in ("record", "records")]
    page = book.page(name, about, [Column("Of", "text"), *_columns(slots, every, system)])
    for of, record in flat:
        book.add(page, [of, *(_value(slot, getattr(record, slot.name), system) for slot in slots)])
    book.close(page)


def _supply(book: Book, material: Material) -> None:
    """Write the supply of each section down the page: it has many single values."""
    if not material.found.rail:
        return
    heads = (Column("Of", "text"), Column("What", "text"), Column("Value"), Column("Unit", "text"), Column("In words", "text"))
    page = book.page("Supply", "New rail, made and laid.", heads, widest=60)
    for plan in material.found.rail:
        for slot in slots_of(type(plan.supply)):
            value = getattr(plan.supply, slot.name)
            if slot.shape in ("record", "records") or value is None:
                continue
            number = number_of(slot, value)
            unit = None if number is None else usual_unit(number, material.system)
            cells = (_value(slot, value, material.system), unit and unit.label, None)
            told = (None, None, cell_text(slot, value, material.system))
            book.add(page, (plan.of, slot.field.about, *(told if number is None else cells)))
    book.close(page)


def _checks(book: Book, material: Material) -> None:
    columns = (
        Column("Verdict", "text"), Column("Check", "text"), Column("Of", "text"), Column("Demand"), Column("Capacity"),
        Column("Unit", "text"), Column("Used", "share"), Column("Would pass with", "text"),
        Column("Governed by, or needs", "text"), Column("Rule", "text"), Column("Place", "text"),
    )  # fmt: skip
    about = "The governing check first. A check that lacks an input is not passed."
    page = book.page("Checks", about, columns, kept=2, widest=26)
    for of, rule, check, needs in checks_of(material):
        sign, word = VERDICTS[check.verdict]
        used: Cell = None
        if check.utilisation is not None:
            used = Formula(f"={page.place('Demand')}/{page.place('Capacity')}", check.utilisation)
        held = check.demand or check.capacity
        unit = "" if held is None else bill.unit_of(held, material.system)
        amounts = (None if one is None else bill.amount_in(one, material.system) for one in (check.demand, check.capacity))
        book.add(
            page,
            (
                f"{sign} {word}", check.title, of, *amounts, unit, used, check.would_pass,
                needed(check, needs), rule, check.place,
            ),
        )  # fmt: skip
    book.close(page)


def _defaults(book: Book, material: Material) -> None:
    heads = ("No.", "What", "Value", "From", "Name", "Source", "Place", "Status")
    about = "What stood in for what the request leaves open: D defaults of the rulebook, C values of the catalogue."
    page = book.page("Defaults", about, [Column(head, "text") for head in heads], widest=28)
    for value in material.stood_in:
        place = value.place
        book.add(page, (value.number, value.about, value.value, value.origin, value.name, place.title, place.where, place.status))
    book.close(page)


def _sources(book: Book, material: Material) -> None:
    heads = ("Rule", "Source", "Place", "Status")
    page = book.page("Sources", "Where the rules come from.", [Column(head, "text") for head in heads], widest=60)
    rules = {working.rule.id: working.rule for working in material.workings}
    for rule in rules.values():
        for cite in rule.cites:
            book.add(page, (rule.id, material.title_of(cite.source), cite.where, cite.status))
    for text, place in material.cautions:
        book.add(page, ("caution", text, f"{place.title}: {place.where}", place.status))
    book.close(page)


def _front(book: Book, material: Material) -> Page:
    columns = (Column("About the job", "text"), Column("Entry", "text"))
    about = "Relay takeoff. Grey cells on the other sheets may be changed; what follows from them is live."
    page = book.page("Job", about, columns, widest=_FRONT)
    block, (service, catalogue, rulebook) = material.block, material.versions
    rows = (
        ("Job", material.found.name), ("Project", block.project), ("Location", block.location), ("Prepared", block.prepared),
        ("Checked", block.checked), ("Date", block.date), ("Service", service), ("Catalogue", catalogue), ("Rulebook", rulebook),
        ("Input digest (SHA-256)", material.digest), ("Checks", " ".join(verdict_of(material))),
        ("Changed cells", "A change here is not checked by the service: send the changed job to it before you order."),
    )  # fmt: skip
    for row in rows:
        book.add(page, row)
    return page


def _names(found: TakeoffResult) -> list[str]:
    """Return the names of the sheets, what is read first in front; a sheet that would be empty is left out."""
    lists = {
        "Zones": any(segment.zones for segment in found.segments),
        "Supply": bool(found.rail),
        "Strings": any(plan.layout.pieces for plan in found.rail),
        "Welds": any(plan.layout.welds for plan in found.rail),
        "Trains": any(plan.trains.loads for plan in found.rail),
    }
    kept = [name for name, there in lists.items() if there]
    return ["Job", "Bill", "Salvage", "Work", "Checks", "Segments", *kept, "Lines", "Parts", "Defaults", "Sources"]


def _money(book: Book, front: Page, found: TakeoffResult, cost: str, credit: str) -> None:
    """Write what the job costs below what it is about."""
    money = found.money
    suffix = "" if money is None else f", {money.currency}"
    rows = [
        ("Cost", f"={cost}", 0 if money is None else money.cost),
        ("Credit", f"={credit}", 0 if money is None else money.credit),
        ("Balance", f"={cost}-{credit}", 0 if money is None else money.balance),
    ]
    for word, formula, value in rows:
        front.sheet.write_string(front.row, 0, f"{word}{suffix}", book.plain["text"])
        front.sheet.write_formula(front.row, 1, formula, book.front_money, float(value))
        front.row += 1
    front.sheet.set_column(0, 0, 26)
    front.sheet.set_column(1, 1, _FRONT)


def encode(material: Material) -> bytes:
    """Return the workbook of a takeoff: the same answer gives the same bytes."""
    found, system = material.found, material.system
    decimals = material.given.prices.decimals if found.money is not None else _CENTS
    names = _names(found)
    book = Book(names, found.name, material.block, decimals)
    sheet = bill.lines(book, material, segment_page.segments(book, material))
    cost = bill.bill(book, material, sheet, decimals)
    credit = bill.salvage(book, material, sheet, decimals)
    _money(book, _front(book, material), found, cost, credit)
    bill.work(book, material, sheet)
    zones = ((segment.name, segment.zones) for segment in found.segments)
    _records(book, "Zones", "Anchor zones as used.", zones, system)
    _supply(book, material)
    _records(book, "Strings", "Every piece of rail by station.", ((plan.of, plan.layout.pieces) for plan in found.rail), system)
    _records(book, "Welds", "Field welds by station.", ((plan.of, plan.layout.welds) for plan in found.rail), system)
    _records(book, "Trains", "Train loads.", ((plan.of, plan.trains.loads) for plan in found.rail), system)
    _checks(book, material)
    _defaults(book, material)
    _sources(book, material)
    return book.done()
