"""The calculation sheet as a page: HTML with MathML, one style sheet inside, nothing fetched."""

from __future__ import annotations

import base64
import hashlib
from functools import cache
from html import escape
from importlib.resources import files
from typing import TYPE_CHECKING

from railrules_api.sheets import columns, mathml
from railrules_api.sheets.mathml import expression, in_parts, symbol

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from railrules_api.sheets.model import CheckRow, InputGroup, OrderRow, Sheet, StoodIn, Table, Worked
    from railrules_api.sheets.working import WorkedLine

ROUNDING = (
    "Rules are worked in full precision. On this sheet every result is printed to six figures, or in full where it is a whole "
    "number, and the numbers it is worked from to as many as it takes that the printed result follows from the printed numbers, "
    "to half a unit of its last digit. What is bought is rounded up once, on the total: ⌈ ⌉ stands for that."
)
DIGEST = (
    "The digest is the SHA-256 of the request as the service understood it: JSON without spaces, names sorted, without the title "
    "block and without `explain`. The same digest and versions give the same answer."
)


@cache
def style(name: str) -> str:
    """Return the style sheet of the page, and with it that of a medium: `browser` or `paper`."""
    folder = files("railrules_api.sheets")
    return "".join(folder.joinpath(f"{part}.css").read_text(encoding="utf-8") for part in ("style", name))


def policy() -> str:
    """Return the content security policy under which the page shows: its own style, nothing else."""
    digest = base64.b64encode(hashlib.sha256(style("browser").encode()).digest()).decode()
    return f"default-src 'none'; style-src 'sha256-{digest}'; frame-ancestors 'none'"


# ---------------------------------------------------------------- the title block


_LONG, _SUBJECT = 56, 80
"""Characters of an entry of the title block beyond which it is set smaller, and of its subject beyond which it is cut."""
_EQUALS = '<mo form="infix">=</mo>'
_SHEETS = '<span class="sheets"></span>'


def _field(label: str, value: str, kind: str = "", span: int = 1) -> str:
    long = " long" if len(value) > _LONG and not kind else ""
    inside = f'<span class="label">{escape(label)}</span><span class="value{long}">{value}</span>'
    columns = f' colspan="{span}"' if span > 1 else ""
    return f'<td class="{kind or "text"}"{columns}>{inside}</td>'


def _block(sheet: Sheet) -> str:
    block, (service, catalogue, rulebook) = sheet.block, sheet.versions
    digest = f'<span class="digest">{sheet.digest[:32]}<wbr>{sheet.digest[32:]}</span>'
    subject = sheet.title if len(sheet.title) <= _SUBJECT else f"{sheet.title[: _SUBJECT - 1]}\u2026"  # the heading has all of it
    versions = f"service {service}, catalogue {catalogue}, rulebook {rulebook}"
    return (
        '<header class="block" aria-label="Title block"><table role="presentation">'
        f"<tr>{_field('Project', escape(block.project), span=2)}{_field('Location', escape(block.location), span=2)}</tr>"
        f"<tr>{_field('Subject', escape(subject), span=2)}{_field('Date', escape(block.date))}"
        f"{_field('Sheet', _SHEETS, 'sheet')}</tr>"
        f"<tr>{_field('Prepared', escape(block.prepared), span=2)}{_field('Checked', escape(block.checked), span=2)}</tr>"
        f"<tr>{_field('Versions', escape(versions), 'small', 2)}{_field('Input digest', digest, 'small', 2)}</tr>"
        "</table></header>"
    )


# ---------------------------------------------------------------- tables


def _row(cells: Iterable[str], right: frozenset[int] = frozenset(), tag: str = "td") -> str:
    scope = ' scope="col"' if tag == "th" else ""
    number = ' class="number"'
    parts = (f"<{tag}{scope}{number if place in right else ''}>{text}</{tag}>" for place, text in enumerate(cells))
    return f"<tr>{''.join(parts)}</tr>"


def _symbol(name: str) -> str:
    return mathml.math(symbol(name)) if name else ""


def _table(table: Table, level: int = 3) -> str:
    heading = f"<h{level}>{escape(table.title)}</h{level}>" if table.title else ""
    letters = table.headings.index("Symbol") if "Symbol" in table.headings else None
    rows = "".join(
        _row((_symbol(text) if place == letters else escape(text) for place, text in enumerate(row)), table.right)
        for row in table.rows
    )
    note = f'<p class="note">{escape(table.note)}</p>' if table.note else ""
    head = _row((escape(text) for text in table.headings), table.right, "th")
    shares, dense = columns.shares(table)
    wide = f' class="{dense}"' if dense else ""
    group = "".join(f'<col class="w{share}">' for share in shares)
    return f"{heading}<table{wide}><colgroup>{group}</colgroup><thead>{head}</thead><tbody>{rows}</tbody></table>{note}"


def _checks(checks: tuple[CheckRow, ...]) -> Iterator[str]:
    yield "<h2>Checks</h2>"
    if not checks:
        yield "<p>The rule makes no check; its answer is a quantity.</p>"
        return
    yield '<table class="checks"><thead>'
    yield _row(("Verdict", "Check", "Demand", "Capacity", "Used"), frozenset({2, 3, 4}), "th")
    yield "</thead>"
    for place, check in enumerate(checks):
        governing = '<span class="governing">governing</span> ' if place == 0 else ""
        of = f' <span class="of">{escape("; ".join(check.of))}</span>' if check.of else ""
        kind = "fails" if check.verdict == "FAILS" else "other"
        yield (
            f'<tbody class="check {kind}"><tr><td class="verdict" rowspan="2"><span class="sign">{check.sign}</span> '
            f"{check.verdict}</td><td>{governing}<b>{escape(check.title)}</b>{of}</td>"
            f'<td class="number">{escape(check.demand)}</td><td class="number">{escape(check.capacity)}</td>'
            f'<td class="number">{escape(check.utilisation)}</td></tr>'
            f'<tr><td colspan="4" class="advice">{escape(check.advice)} {escape(check.rule)}: {escape(check.place)}.</td></tr>'
            "</tbody>"
        )
    yield "</table>"


def _inputs(groups: tuple[InputGroup, ...]) -> Iterator[str]:
    yield "<h2>Inputs</h2>"
    yield '<p class="note">“given” stands in the request. D and C numbers are defaults and catalogue values, told below.</p>'
    for group in groups:
        if group.title:
            yield f"<h3>{escape(group.title)}</h3>"
        if group.note:
            yield f'<p class="note">{escape(group.note)}</p>'
        if group.table is not None:
            yield _table(group.table)
        if group.rows:
            rows = "".join(
                f'<tr class="{"given" if row.origin == "given" else "stood-in"}"><td>{escape(row.meaning)}</td>'
                f'<td>{_symbol(row.symbol)}</td><td class="number">{escape(row.value)}</td><td>{escape(row.origin)}</td></tr>'
                for row in group.rows
            )
            head = _row(("Input", "Symbol", "Value", "From"), frozenset({2}), "th")
            yield f'<table class="inputs"><thead>{head}</thead><tbody>{rows}</tbody></table>'


def _stood_in(title: str, values: list[StoodIn]) -> Iterator[str]:
    if not values:
        return
    yield f"<h2>{escape(title)}</h2>"
    rows = "".join(
        _row(
            (
                escape(value.number),
                f"{escape(value.about.rstrip('.'))} <span class=of>{escape(value.origin)}, {escape(value.name)}</span>",
                escape(value.value),
                escape(value.place.text),
            )
        )
        for value in values
    )
    head = _row(("No.", "What", "Value", "Source"), tag="th")
    yield f'<table class="told"><thead>{head}</thead><tbody>{rows}</tbody></table>'


# ---------------------------------------------------------------- lines


def _line(line: WorkedLine) -> Iterator[str]:
    """Yield the rows of a formula: in symbols, and with its numbers and the result."""
    lead = f"{symbol(line.symbol)}{_EQUALS}" if line.symbol else ""
    if not line.exact:
        words = f"{_symbol(line.symbol)}{' = ' if line.symbol else ''}{escape(line.formula)}"
        yield f'<div class="formula words">{words}</div>'
        return
    yield f'<div class="formula">{in_parts(line.formula, lead=lead)}</div>'
    if line.numbers:
        about = f' <span class="of">({escape(line.units)})</span>' if line.units else ""
        numbers = in_parts(line.formula, line.numbers, lead=_EQUALS)
        results = "".join(f"<wbr>{mathml.math(_EQUALS + mathml.number(result))}" for result in line.results)
        yield f'<div class="numbers">{numbers}{results}{about}</div>'


def _worked(worked: Worked) -> Iterator[str]:
    of = f' <span class="of">{escape(worked.of)}</span>' if worked.of else ""
    yield f'<section class="working"><h3>{escape(worked.title)}{of}</h3>'
    head = _row(("Result", "Formula and numbers", "Value"), frozenset({2}), "th")
    yield f'<table class="lines"><thead>{head}</thead><tbody>'
    sources = " ".join(f"[{number}]" for number in worked.sources)
    for line in worked.lines:
        letter = f"{_symbol(line.symbol)} " if line.symbol else ""
        yield (
            f'<tr class="line"><td>{letter}<span class="meaning">{escape(line.meaning)}</span></td>'
            f'<td>{"".join(_line(line))}</td><td class="number result">{mathml.math(mathml.number(line.results[-1]))}'
            f'<div class="reference">{escape(worked.rule)} {line.number} {sources}</div></td></tr>'
        )
    yield "</tbody></table></section>"


def _orders(rows: tuple[OrderRow, ...]) -> Iterator[str]:
    if not rows:
        return
    yield "<h2>To order</h2>"
    head = _row(("Item", "From net to order", "Order", "Packages", "Mass"), frozenset({2, 3, 4}), "th")
    yield f'<table class="orders"><thead>{head}</thead><tbody>'
    for row in rows:
        product = f' <span class="of">{escape(row.product)}</span>' if row.product else ""
        steps = f'<div class="numbers">{mathml.math(expression(row.order.formula, row.order.numbers))}</div>'
        packages = ""
        if row.packages is not None:
            steps += f'<div class="packing">{mathml.math(expression(row.packages.formula, row.packages.numbers))}</div>'
            count = row.packages.results[-1]
            packages = f"{count.text}\u00a0{row.package}{'' if count.value == 1 else 's'}"
        yield (
            f'<tr class="order"><td>{escape(row.title)}{product}</td><td>{steps}</td>'
            f'<td class="number result">{mathml.math(mathml.number(row.order.results[-1]))}</td>'
            f'<td class="number">{escape(packages)}</td><td class="number">{escape(row.mass)}</td></tr>'
        )
    yield "</tbody></table>"


# ---------------------------------------------------------------- the page


def _list(title: str, items: Iterable[str], tag: str = "ul") -> str:
    inside = "".join(f"<li>{item}</li>" for item in items)
    return f"<h2>{escape(title)}</h2><{tag}>{inside}</{tag}>" if inside else ""


def _parts(sheet: Sheet) -> Iterator[str]:
    yield f"<h1>{escape(sheet.title)}</h1>"
    if sheet.subject:
        yield f'<p class="subject">{escape(sheet.subject)}</p>'
    yield f'<p class="summary">{escape(sheet.summary)}</p>'
    yield from _checks(sheet.checks)
    yield from _orders(sheet.orders)
    yield "<h2>Results</h2>"
    yield from (_table(table) for table in sheet.tables)
    yield from _inputs(sheet.inputs)
    yield from _stood_in("Defaults that stood in", [value for value in sheet.stood_in if value.number.startswith("D")])
    yield from _stood_in("Catalogue values used", [value for value in sheet.stood_in if value.number.startswith("C")])
    yield _list("Assumptions", (f"<b>{escape(title)}.</b> {escape(text)}" for title, text in sheet.assumptions))
    yield "<h2>Working</h2>"
    yield f'<p class="note">{escape(ROUNDING)}</p>'
    for worked in sheet.workings:
        yield from _worked(worked)
    yield _list("Cautions", (escape(text) for text in sheet.cautions))
    yield _list("Sources", (escape(source.text) for source in sheet.sources), "ol")
    yield f'<p class="note">{escape(DIGEST)} <span class="digest">{sheet.digest}</span></p>'


def page(sheet: Sheet, dress: str | None = None) -> str:
    """Return the sheet as a page of HTML, in the style given or that for browsers."""
    return (
        '<!doctype html>\n<html lang="en"><head><meta charset="utf-8">'
        '<meta name="viewport" content="width=device-width, initial-scale=1">'
        f"<title>{escape(sheet.title)}</title><style>{dress or style('browser')}</style></head>\n"
        f"<body>{_block(sheet)}\n<main>\n" + "\n".join(_parts(sheet)) + "\n</main></body></html>\n"
    )
