"""The handbook's pages of rules, made from the registry: nothing is said here that the registry does not say."""

from __future__ import annotations

import json
from functools import cache
from html import escape
from typing import TYPE_CHECKING, Any, Final

from railrules_api.api.registry_pages import rule_record
from railrules_api.api.sheet_form import SHEETS, XLSX
from railrules_api.domain.fields import slots_of
from railrules_api.drawing.registry import MEDIA_TYPE, is_drawn
from railrules_api.pages.assets import read
from railrules_api.pages.layout import cite, page, table
from railrules_api.rules.registry import BY_ID, RESOURCES
from railrules_api.sheets import mathml
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.api.envelope import CautionNote
    from railrules_api.api.service import Service
    from railrules_api.domain.fields import Field, Slot
    from railrules_api.rules.model import Formula, Rule

FAMILIES: Final = {
    "quantities": "What a relay takes, leaves and hauls",
    "thermal": "Force, laying, breaks, restraint and stability",
    "strength": "Bending under wheels and in haulage",
    "regulation": "Track against the federal standards",
    "sections": "Rails whole and worn",
    "takeoffs": "The whole job",
}
_DEPTH: Final = 4


@cache
def check_cases() -> dict[str, list[dict[str, Any]]]:
    """Return the check cases with their results by rule, as the tests have put them down."""
    found: dict[str, list[dict[str, Any]]] = json.loads(read("checks.json"))
    return found


def _link(rule: Rule[Any, Any]) -> str:
    return f'<li><a href="/handbook/rules/{rule.id}">{escape(rule.title)}</a> <code>{rule.id}</code></li>'


def index(service: Service) -> bytes:
    """Return the handbook's first page."""
    parts = [read("text/handbook.html").decode()]
    for family, title in FAMILIES.items():
        rules = [rule for rule in RESOURCES if rule.id.partition(".")[0] == family]
        if rules:
            links = "".join(_link(rule) for rule in rules)
            parts.append(f'<h2>{escape(title)}</h2><ul class="rules">{links}</ul>')
    count = sum(len(cases) for cases in check_cases().values())
    parts.append(
        f'<p class="soft small">{len(RESOURCES)} rules, {count} check cases. Catalogue {escape(service.catalogue.version)}.</p>'
    )
    return page("Handbook of rules", "".join(parts), here="/handbook", text=False)


def _formula(rule: Rule[Any, Any], formula: Formula) -> str:
    slot = {slot.name: slot for slot in slots_of(rule.output)}[formula.gives]
    about = escape(slot.field.about)
    name = mathml.symbol(slot.field.symbol) if slot.field.symbol else f"<mtext>{escape(formula.gives.replace('_', ' '))}</mtext>"
    if formula.exact:
        told = mathml.math(f"<mrow>{name}<mo>=</mo>{mathml.expression(formula.text)}</mrow>")
    else:
        told = f"{mathml.math(name)}: {mathml.in_words(formula.text)}"
    holds = f"{escape(' '.join(formula.when))}: " if formula.when else ""
    return f'<div class="formula" tabindex="0">{holds}{told}<div class="soft small">{about}</div></div>'


def _number(value: float) -> str:
    return f"{value:g}"


def _limits(field: Field) -> str:
    words = []
    if field.above is not None:
        words.append(f"above {_number(field.above)}")
    if field.at_least is not None:
        words.append(f"at least {_number(field.at_least)}")
    if field.at_most is not None:
        words.append(f"at most {_number(field.at_most)}")
    if not words or field.kind is None:
        return ", ".join(words)
    unit = next(unit.label for unit in UNITS[field.kind].values() if unit.factor == 1.0 and unit.offset == 0.0)
    return escape(f"{', '.join(words)} {unit}")


def _what(slot: Slot) -> str:
    if slot.words:
        return ", ".join(f"<code>{escape(word)}</code>" for word in slot.words)
    kind = f" ({slot.field.kind.value.replace('_', ' ')})" if slot.field.kind is not None else ""
    return slot.shape + kind


def _stands_in(slot: Slot) -> str:
    field, words = slot.field, []
    if field.default:
        words.append(f"rulebook <code>{escape(field.default)}</code>")
    if field.taken is not None:
        words.append(f"catalogue <code>{escape(f'{field.taken.table} {field.taken.column}'.strip())}</code>")
    if slot.optional:
        words.append("may be left out")
    return "; ".join(words)


def _rows(record: type, prefix: str = "", depth: int = 0) -> Iterator[tuple[str, ...]]:
    """Yield a row for each field, those of a record within below it."""
    for slot in slots_of(record):
        field = slot.field
        symbol = mathml.math(mathml.symbol(field.symbol)) if field.symbol else ""
        name = f"<code>{escape(prefix + slot.name)}</code>"
        yield (name, escape(field.about), symbol, _what(slot), _limits(field), _stands_in(slot))
        if slot.record is not None and depth < _DEPTH:
            yield from _rows(slot.record, f"{prefix}{slot.name}{'[]' if slot.shape == 'records' else ''}.", depth + 1)


_HEADS: Final = ("field", "meaning", "symbol", "what", "limits, SI", "stands in when left out")


def _case_rows(rule_id: str, service: Service) -> Iterator[tuple[str, ...]]:
    for case in check_cases()[rule_id]:
        source = service.catalogue.sources[case["source"]].title
        place = f'{escape(source)}, {escape(case["where"])} <span class="tag">{escape(case["kind"])}</span>'
        for number, line in enumerate(case["lines"]):
            first = (escape(case["title"]), place) if number == 0 else ("", "")
            yield (*first, f"<code>{escape(line['field'])}</code>", escape(line["expected"]), escape(line["found"]))


def _cases(rule_id: str, service: Service) -> str:
    if rule_id not in check_cases():
        return "<p>It has no arithmetic of its own; the cases of the rules it asks hold for it.</p>"
    return table(
        "Cases the rule is held against",
        ("case", "source", "field", "expected", "answered"),
        _case_rows(rule_id, service),
        right=(3, 4),
    )


def _caution(caution: CautionNote) -> str:
    place = cite(caution.cite.title, caution.cite.where, caution.cite.status)
    return f'<div class="caution">{escape(caution.text)}<div class="soft small">{place}</div></div>'


def rule_page(service: Service, rule_id: str) -> bytes | None:
    """Return the page of a rule; None where there is no such rule."""
    rule = BY_ID.get(rule_id)
    if rule is None:
        return None
    record = rule_record(rule, service)
    drawn = f", drawing ({MEDIA_TYPE})" if is_drawn(rule.id) else ""
    forms = f"JSON, calculation sheet ({' or '.join(SHEETS)}){drawn}{f', workbook ({XLSX})' if rule.id == 'takeoffs' else ''}"
    parts = [
        f'<p class="soft small"><a href="/handbook">Handbook</a> / <code>{rule.id}</code></p><h1>{escape(rule.title)}</h1>',
        f'<p class="lead">{escape(rule.summary)}</p>',
        f"<p>Asked by <code>POST /v1/{rule.path}</code>; the answer comes as {forms}. Since {escape(rule.since)}.</p>",
        "<h2>Formula</h2>",
        *(_formula(rule, formula) for formula in rule.formulas),
        '<p class="soft small">Numbers in the formulas are coherent SI: metres, kilograms, newtons, pascals, kelvins.</p>',
        "<h2>Cautions</h2>" if record.cautions else "",
        *(_caution(caution) for caution in record.cautions),
        "<h2>Sources</h2><ul>",
        *(f"<li>{cite(place.title, place.where, place.status)}</li>" for place in record.cites),
        "</ul><h2>Input</h2>",
        table("What the rule needs", _HEADS, _rows(rule.input)),
        "<h2>Answer</h2>",
        table("What the rule answers", _HEADS[:5], (row[:5] for row in _rows(rule.output))),
        "<h2>Check cases</h2>",
        _cases(rule.id, service),
    ]
    return page(f"{rule.title} · handbook", "".join(parts), here="/handbook", text=False)
