"""The live part of a workbook: segments and their ties, the lines, and what is ordered, recovered and paid."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from railrules_api.domain.amounts import Amount
from railrules_api.domain.kinds import Kind
from railrules_api.rules.takeoff.money import PER
from railrules_api.sheets import following
from railrules_api.sheets.book import Changeable, Column, Formula
from railrules_api.sheets.orders import selling
from railrules_api.sheets.segment_page import column_of, in_answer, label
from railrules_api.units import UNITS, answer_unit

if TYPE_CHECKING:
    from collections.abc import Iterable

    from railrules_api.rules.ordering import Order
    from railrules_api.rules.takeoff.book import JobLine
    from railrules_api.rules.takeoff.money import Cost
    from railrules_api.sheets.book import Book, Cell, Page
    from railrules_api.sheets.model import Material
    from railrules_api.sheets.orders import Selling
    from railrules_api.sheets.segment_page import SegmentRow
    from railrules_api.units import System


def amount_in(amount: Amount, system: System) -> float:
    """Return an amount in the unit of the answer."""
    return in_answer(amount.value, amount.kind, system, amount.answer)


def unit_of(amount: Amount, system: System) -> str:
    """Return the label of the unit in which the answer has an amount."""
    return label(amount.kind, system, amount.answer)


_AS_ANSWERED: Final = "as answered"
_ASK_AGAIN: Final = "ask again"


def _line_net(line: JobLine, segment: SegmentRow | None, value: float) -> tuple[Cell, Cell]:
    """Return the net of a line, live where it follows from the ties of its segment, and whether it is up to date."""
    if segment is None:
        return value, _AS_ANSWERED
    net = following.net_of(line, segment, value)
    if net is not None:
        return net, _AS_ANSWERED
    kept = (f"ABS({cell.at}-{cell.value!r})<0.000001" for cell in (segment.spacing, segment.share))
    return value, Formula(f'=IF(AND({",".join(kept)}),"{_AS_ANSWERED}","{_ASK_AGAIN}")', _AS_ANSWERED)


_LINE_COLUMNS: Final = (
    Column("Total no.", "whole"), Column("Of", "text"), Column("Rule", "text"), Column("Item", "text"), Column("Product", "text"),
    Column("Net"), Column("Unit", "text"), Column("Mass"), Column("Mass unit", "text"), Column("State", "text"),
)  # fmt: skip


def _mass_of_line(line: JobLine, page: Page, system: System) -> Cell:
    """Return the mass of a line, which goes with its net."""
    if line.mass is None:
        return None
    net, mass = amount_in(line.net, system), in_answer(line.mass, Kind.MASS, system)
    return Formula(f"={page.place('Net')}*{mass / net!r}", mass) if net else mass


def lines(book: Book, material: Material, rows: Iterable[SegmentRow]) -> Page:
    """Write the bill line by line."""
    system = material.system
    numbers = {(order.item, order.product): number for number, order in enumerate(material.orders, 1)}
    by_name = {row.name: row for row in rows}
    about = "What each rule says of each part of the job; totals on the other sheets add these up."
    sheet = book.page("Lines", about, _LINE_COLUMNS)
    for line in material.found.lines:
        net, state = _line_net(line, by_name.get(line.of), amount_in(line.net, system))
        mass = _mass_of_line(line, sheet, system)
        book.add(
            sheet,
            (
                numbers[line.item, line.product], line.of, line.rule, line.item, line.product, net, unit_of(line.net, system),
                mass, "" if mass is None else label(Kind.MASS, system), state,
            ),
        )  # fmt: skip
    book.close(sheet)
    return sheet


# ---------------------------------------------------------------- totals


def _net(order: Order, number: int, sheet: Page, system: System) -> Formula:
    added = f"=SUMIF({column_of(sheet, 'Total no.')},{number},{column_of(sheet, 'Net')})"
    return Formula(added, amount_in(order.net, system))


def _state(number: int, sheet: Page) -> Formula:
    again = f'COUNTIFS({column_of(sheet, "Total no.")},{number},{column_of(sheet, "State")},"{_ASK_AGAIN}")'
    return Formula(f'=IF({again}>0,"{_ASK_AGAIN}","{_AS_ANSWERED}")', _AS_ANSWERED)


def _priced(order: Order, cost: Cost | None, system: System) -> tuple[str, str, float]:
    """Return what a price is by, which column is priced, and the factor from that column's unit to the price's."""
    amount = "Order" if order.direction == "order" else "Net"
    if cost is None:
        return unit_of(order.order, system), amount, 1.0
    if cost.per == "each":
        return "each", amount, 1.0
    if cost.per == "package":
        return "package", "Packages", 1.0
    kind, size = PER[cost.per]
    text = next(unit.label for code, unit in UNITS[kind].items() if code == cost.per)
    same = order.order.kind is kind
    priced = amount if same else f"{_MASS}, {label(Kind.MASS, system)}"
    return text, priced, answer_unit(kind, system, order.order.answer if same else None).factor / float(size)


def _total_columns(system: System, between: tuple[Column, ...]) -> tuple[Column, ...]:
    """Return the columns of a sheet of totals; what is bought has more of them between net and mass."""
    weight = label(Kind.MASS, system)
    return (
        Column("No.", "whole"), Column("Item", "text"), Column("Product", "text"), Column("Net"), Column("Unit", "text"),
        *between, Column(f"{_EACH}, {weight}"), Column(f"{_MASS}, {weight}"), Column("Price", "money"), Column("Per", "text"),
        Column("Priced"), Column("Amount", "money"), Column("State", "text"),
    )  # fmt: skip


_EACH, _MASS = "Mass of one", "Mass"
_BOUGHT: Final = (
    Column("Allowance", "share"), Column("Sold by"), Column("Order"), Column("Package", "text"), Column("Holds"),
    Column("Packages", "whole"),
)  # fmt: skip


def _cost_of(material: Material, order: Order) -> Cost | None:
    money = material.found.money
    found = () if money is None else money.costs
    return next((cost for cost in found if (cost.item, cost.product) == (order.item, order.product)), None)


def _money_cells(page: Page, order: Order, cost: Cost | None, system: System, decimals: int) -> tuple[Cell, ...]:
    per, priced, factor = _priced(order, cost, system)
    quantity = f'=IF({page.place("Price")}="","",ROUND({page.place(priced)}*{factor!r},6))'
    amount = f'=IF({page.place("Price")}="","",ROUND({page.place("Priced")}*{page.place("Price")},{decimals}))'
    price = Changeable(None if cost is None else float(cost.price), f"price_{order.item}")
    return (
        price, per, Formula(quantity, "" if cost is None else float(cost.quantity)),
        Formula(amount, "" if cost is None else float(cost.amount)),
    )  # fmt: skip


def _package_cells(page: Page, order: Order, sold: Selling, system: System) -> tuple[Cell, ...]:
    if sold.size is None or order.packages is None:
        return None, None, None
    same = sold.size.kind is order.order.kind
    held = page.place("Order" if same else f"{_MASS}, {label(Kind.MASS, system)}")
    size = in_answer(sold.size.value, sold.size.kind, system, order.order.answer if same else None)
    unit = unit_of(order.order, system) if same else label(sold.size.kind, system)
    counted = f"=ROUNDUP(ROUND({held}/{page.place('Holds')},6),0)"
    return (
        f"{order.package}, {unit}", Changeable(size, f"package_{order.item}", 1e-6),
        Formula(counted, order.packages),
    )  # fmt: skip


def _mass_cells(page: Page, amount: Amount, mass: float | None, column: str, system: System) -> tuple[Cell, Cell]:
    """Return the mass of one piece or unit and the mass of all; nothing where it is not known."""
    if mass is None or not amount.value:
        return None, None
    shown, weight = amount_in(amount, system), in_answer(mass, Kind.MASS, system)
    each = f"{_EACH}, {label(Kind.MASS, system)}"
    return weight / shown, Formula(f"={page.place(column)}*{page.place(each)}", weight)


def bill(book: Book, material: Material, sheet: Page, decimals: int) -> str:
    """Write what is ordered; return the cell of the cost."""
    system = material.system
    about = "Grey cells may be changed: allowance, what a package holds, price. Orders, packages, mass and amount follow."
    page = book.page("Bill", about, _total_columns(system, _BOUGHT), kept=3, widest=22)
    packaging = getattr(material.given, "packaging", ())
    sold = selling(material.orders, material.workings, material.terms, packaging)
    first = page.row
    for number, order in enumerate(material.orders, 1):
        if order.direction != "order":
            continue
        how = sold[order.item, order.product]
        step = None if how.step is None else in_answer(how.step, order.net.kind, system, order.net.answer)
        formula = f"{page.place('Net')}*(1+{page.place('Allowance')})"
        if step is not None:
            formula = f"ROUNDUP(ROUND({formula}/{page.place('Sold by')},6),0)*{page.place('Sold by')}"
        book.add(
            page,
            (
                number, order.title, order.product, _net(order, number, sheet, system), unit_of(order.net, system),
                Changeable(order.allowance, f"allowance_{order.item}"), step,
                Formula(f"={formula}", amount_in(order.order, system)),
                *_package_cells(page, order, how, system), *_mass_cells(page, order.order, order.order_mass, "Order", system),
                *_money_cells(page, order, _cost_of(material, order), system, decimals), _state(number, sheet),
            ),
        )  # fmt: skip
    return _total(book, page, first, "Cost", material.found.money and float(material.found.money.cost))


def _total(book: Book, page: Page, first: int, word: str, value: float | None) -> str:
    """Write the sum of the amounts below their column; return its address."""
    column = f"{page.place('Amount', first)}:{page.place('Amount', max(first, page.row - 1))}"
    if page.row == first:
        page.row += 1  # nothing to add up: the sum looks at an empty row
    cells: list[Cell] = [None] * len(page.columns)
    cells[1] = word
    cells[[item.heading for item in page.columns].index("Amount")] = Formula(f"=SUM({column})", value or 0.0)
    at = book.add(page, cells, strong=True)
    book.close(page)
    return f"{page.sheet.get_name()}!{page.place('Amount', at, fixed=True)}"


def salvage(book: Book, material: Material, sheet: Page, decimals: int) -> str:
    """Write what comes out and what it brings; return the cell of the credit."""
    system = material.system
    about = "What is recovered, as it is: neither allowance nor rounding. Grey cells may be changed."
    page = book.page("Salvage", about, _total_columns(system, ()), kept=3)
    first = page.row
    for number, order in enumerate(material.orders, 1):
        if order.direction == "recover":
            book.add(
                page,
                (
                    number, order.title, order.product, _net(order, number, sheet, system), unit_of(order.net, system),
                    *_mass_cells(page, order.net, order.net_mass, "Net", system),
                    *_money_cells(page, order, _cost_of(material, order), system, decimals), _state(number, sheet),
                ),
            )  # fmt: skip
    return _total(book, page, first, "Credit", material.found.money and float(material.found.money.credit))


def work(book: Book, material: Material, sheet: Page) -> None:
    """Write the work and haulage."""
    columns = (Column("No.", "whole"), Column("Item", "text"), Column("Net"), Column("Unit", "text"), Column("State", "text"))
    page = book.page("Work", "Work and haulage, as counted.", columns, kept=2)
    for number, order in enumerate(material.orders, 1):
        if order.direction == "work":
            net = _net(order, number, sheet, material.system)
            book.add(page, (number, order.title, net, unit_of(order.net, material.system), _state(number, sheet)))
    book.close(page)
