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
from railrules_api.sheets.model import STATUS

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from railrules_api.sheets.model import CheckRow, InputGroup, OrderRow, Sheet, Step, StoodIn, Table, Worked
    from railrules_api.sheets.working import WorkedLine

ROUNDING = (
    "Rules are worked in full precision. On this sheet every result is printed to six figures, or in full where it is a whole "
    "number, and the numbers it is worked from to as many as it takes that the printed result follows from the printed numbers, "
    "to half a unit of its last digit. What is bought is rounded up once, on the total: ⌈ ⌉ stands for that."
)
SUMMARY = (
    "This is the summary of a sheet. The whole sheet has the layout of the rail, every line of the bill, the inputs with their "
    "sources and the working of every number."
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
    table = columns.folded(table)
    heading = f"<h{level}>{escape(table.title)}</h{level}>" if table.title else ""
    letters = {place for place, heading in enumerate(table.headings) if heading == "Symbol"}
    rows = "".join(
        _row((_symbol(text) if place in letters else escape(text) for place, text in enumerate(row)), table.right)
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
        of = f"{escape('; '.join(check.of))}. " if check.of else ""
        kind = "fails" if check.verdict == "FAILS" else "other"
        yield (
            f'<tbody class="check {kind}"><tr><td class="verdict" rowspan="2"><span class="sign">{check.sign}</span> '
            f"{check.verdict}</td><td>{governing}<b>{escape(check.title)}</b></td>"
            f'<td class="number">{escape(check.demand)}</td><td class="number">{escape(check.capacity)}</td>'
            f'<td class="number">{escape(check.utilisation)}</td></tr>'
            f'<tr><td colspan="4" class="advice">{of}{escape(f"{check.advice} {check.rule}: {check.place}.")}</td></tr>'
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


def _stood_in(title: str, values: list[tuple[StoodIn, int]]) -> Iterator[str]:
    if not values:
        return
    yield f"<h2>{escape(title)}</h2>"
    rows = "".join(
        _row(
            (
                escape(value.number),
                escape(value.about.rstrip(".")) + (f'<div class="of">{escape(value.note)}</div>' if value.note else ""),
                escape(value.value),
                f"{escape(value.origin)}, {escape(value.name)}",
                f"{STATUS[value.place.status]} [{source}]",
            )
        )
        for value, source in values
    )
    head = _row(("No.", "What", "Value", "From", "Source"), tag="th")
    yield f'<table class="told"><thead>{head}</thead><tbody>{rows}</tbody></table>'


# ---------------------------------------------------------------- lines


def _formula(line: WorkedLine) -> str:
    """Return a formula in symbols, or in words where it is told so."""
    if not line.exact:
        words = f"{_symbol(line.symbol)}{' = ' if line.symbol else ''}{mathml.in_words(line.formula)}"
        return f'<div class="formula words">{words}</div>'
    lead = f"{symbol(line.symbol)}{_EQUALS}" if line.symbol else ""
    same = " same" if _is_same(line) else ""
    return f'<div class="formula{same}">{in_parts(line.formula, lead=lead)}</div>'


def _is_same(line: WorkedLine) -> bool:
    """Tell whether a line only hands on what another symbol stands for: its number twice would tell nothing."""
    return line.exact and line.formula.isidentifier() and len(line.results) == 1


def _numbers(line: WorkedLine, *, part: bool = False) -> str:
    """Return a formula with its numbers, and the result; nothing where no numbers are put in.

    Where the formula stands on the line itself, a number handed on as it is is not told again.
    """
    if not line.numbers or (_is_same(line) and not part):
        return ""
    about = f' <span class="of">({escape(line.units)})</span>' if line.units else ""
    note = f'<div class="of">{escape(line.note)}</div>' if line.note else ""
    numbers = in_parts(line.text, line.numbers, lead=_EQUALS)
    told = line.results[1:] if line.text.isidentifier() else line.results  # a number that was read is not told twice
    results = "".join(f"<wbr>{mathml.math(_EQUALS + mathml.number(result))}" for result in told)
    return f'<div class="numbers">{numbers}{results}{about}{note}</div>'


def _step(rule: str, step: Step) -> Iterator[str]:
    """Yield the rows of a formula: with its numbers at once where one line holds for all, else part by part below it."""
    first = step.lines[0][1]
    letter = f"{_symbol(first.symbol)} " if first.symbol else ""
    meaning = f'{letter}<span class="meaning">{escape(first.meaning)}</span>'
    reference = f'<div class="reference">{escape(rule)} {first.number}</div>'
    if len(step.lines) == 1 and not first.of:
        of = "; ".join(step.lines[0][0])
        holds = f'<div class="of">{escape(of)}</div>' if of else ""
        value = mathml.math(mathml.number(first.results[-1]))
        yield (
            f'<tr class="line"><td>{meaning}{holds}</td><td>{_formula(first)}{_numbers(first)}</td>'
            f'<td class="number result">{value}{reference}</td></tr>'
        )
        return
    yield f'<tr class="step"><td>{meaning}</td><td>{_formula(first)}</td><td class="number">{reference}</td></tr>'
    for parts, line in step.lines:
        yield (
            f'<tr class="line part"><td>{escape(_part(parts, line))}</td><td>{_numbers(line, part=True)}</td>'
            f'<td class="number result">{mathml.math(mathml.number(line.results[-1]))}</td></tr>'
        )


def _part(parts: tuple[str, ...], line: WorkedLine) -> str:
    """Return what a line is about: parts of the job, and the part of the result."""
    return ": ".join(filter(None, ("; ".join(parts), line.of)))


def _worked(worked: Worked) -> Iterator[str]:
    of = f" <span class=of>{escape(worked.of[0])}</span>" if len(worked.of) == 1 else ""  # the lines name more than one
    sources = " ".join(f"[{number}]" for number in worked.sources)
    yield f'<section class="working"><h3>{escape(worked.title)}{of} <span class="of">sources {sources}</span></h3>'
    head = _row(("Result", "Formula and numbers", "Value"), frozenset({2}), "th")
    yield f'<table class="lines"><thead>{head}</thead><tbody>'
    for step in worked.steps:
        yield from _step(worked.rule, step)
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
    if sheet.checks:
        sign, words = sheet.verdict
        yield f'<p class="total"><span class="sign">{sign}</span> {words}</p>'
    yield from _checks(sheet.checks)
    yield from _orders(sheet.orders)
    yield "<h2>Results</h2>"
    yield from (_table(table) for table in sheet.tables if not table.detail)
    yield _list("Cautions", (escape(text) for text in sheet.cautions))
    if sheet.block.extent == "summary":
        yield f'<p class="note">{escape(SUMMARY)}</p>'
    else:
        yield from _details(sheet)
    yield f'<p class="note">{escape(DIGEST)} <span class="digest">{sheet.digest}</span></p>'


def _details(sheet: Sheet) -> Iterator[str]:
    details = [_table(table) for table in sheet.tables if table.detail]
    if details:
        yield "<h2>Details</h2>"
        yield from details
    yield from _inputs(sheet.inputs)
    yield from _stood_in("Defaults that stood in", [told for told in sheet.stood_in if told[0].number.startswith("D")])
    yield from _stood_in("Catalogue values used", [told for told in sheet.stood_in if told[0].number.startswith("C")])
    yield _list("Assumptions", (f"<b>{escape(title)}.</b> {escape(text)}" for title, text in sheet.assumptions))
    yield "<h2>Working</h2>"
    yield f'<p class="note">{escape(ROUNDING)}</p>'
    for worked in sheet.workings:
        yield from _worked(worked)
    yield _list("Sources", (escape(source.text) for source in sheet.sources), "ol")


def page(sheet: Sheet, dress: str | None = None) -> str:
    """Return the sheet as a page of HTML, in the style given or that for browsers."""
    return (
        '<!doctype html>\n<html lang="en"><head><meta charset="utf-8">'
        '<meta name="viewport" content="width=device-width, initial-scale=1">'
        f"<title>{escape(sheet.title)}</title><style>{dress or style('browser')}</style></head>\n"
        f"<body>{_block(sheet)}\n<main>\n" + "\n".join(_parts(sheet)) + "\n</main></body></html>\n"
    )
