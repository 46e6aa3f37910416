"""The registry is whole: ids, sources, defaults, catalogue columns, and one meaning for one name."""

from __future__ import annotations

import ast
import re
from collections import defaultdict

import pytest

from railrules_api.api.resources import calculations
from railrules_api.api.service import Service
from railrules_api.api.wire import answer_type, request_type
from railrules_api.domain.fields import Slot, slots_of
from railrules_api.domain.kinds import Kind
from railrules_api.rules.model import Rule
from railrules_api.rules.registry import ALL, RESOURCES

RULES = {rule.id: rule for rule in RESOURCES}


def records_of(record: type, found: dict[type, None] | None = None) -> dict[type, None]:
    found = {} if found is None else found
    if record not in found:
        found[record] = None
        for slot in slots_of(record):
            if slot.record is not None:
                records_of(slot.record, found)
    return found


def slots_in(rule: Rule[object, object]) -> list[tuple[type, Slot]]:
    records = {**records_of(rule.input), **records_of(rule.output)}
    return [(record, slot) for record in records for slot in slots_of(record)]


def test_ids_are_unique_and_well_formed() -> None:
    assert len({rule.id for rule in RESOURCES}) == len(RESOURCES)
    assert all(re.fullmatch(r"[a-z]+\.[a-z]+(-[a-z]+)*", rule.id) for rule in ALL)


@pytest.mark.parametrize("rule", RULES.values(), ids=RULES)
def test_a_rule_names_known_sources_and_places(rule: Rule[object, object], service: Service) -> None:
    cites = [*rule.cites, *(caution.cite for caution in rule.cautions)]
    assert rule.cites
    for cite in cites:
        assert cite.source in service.catalogue.sources
        assert cite.where.strip()


@pytest.mark.parametrize("rule", RULES.values(), ids=RULES)
def test_a_rule_is_described(rule: Rule[object, object]) -> None:
    assert rule.title
    assert rule.summary.endswith(".")
    assert not rule.title.endswith(".")
    for record, slot in slots_in(rule):
        assert record.__doc__, record
        assert slot.field.about.endswith((".", "`")), (record.__name__, slot.name, slot.field.about)


@pytest.mark.parametrize("rule", RULES.values(), ids=RULES)
def test_defaults_and_catalogue_columns_exist(rule: Rule[object, object], service: Service) -> None:
    for record in records_of(rule.input):
        for slot in slots_of(record):
            field = slot.field
            if field.default:
                default = service.catalogue.rulebook.defaults[field.default]
                assert default.kind == (None if field.taken else field.kind), (record.__name__, slot.name)
            if field.taken is not None:
                table = service.catalogue.tables[field.taken.table]
                assert field.taken.column in {"", "id", *table.columns}, (record.__name__, slot.name)


@pytest.mark.parametrize("rule", RULES.values(), ids=RULES)
def test_formulas_give_outputs_and_parse(rule: Rule[object, object]) -> None:
    outputs = {slot.name for slot in slots_of(rule.output)}
    assert rule.formulas
    for formula in rule.formulas:
        assert formula.gives in outputs
        if formula.when is not None:
            words = next(slot.words for slot in slots_of(rule.input) if slot.name == formula.when[0])
            assert formula.when[1] in words
        if formula.exact:
            ast.parse(formula.text, mode="eval")


def test_one_name_has_one_kind_everywhere() -> None:
    kinds: dict[str, set[Kind | None]] = defaultdict(set)
    for rule in RESOURCES:
        for _, slot in slots_in(rule):
            if slot.shape == "quantity":
                kinds[slot.name].add(slot.field.kind)
    assert {name: found for name, found in kinds.items() if len(found) > 1} == {}


def test_no_two_schemas_share_a_name() -> None:
    names: dict[str, object] = {}
    sent = {record for rule in RESOURCES for record in records_of(rule.input)}
    answered = {record for rule in RESOURCES for record in records_of(rule.output)}
    models = [request_type(record) for record in sent] + [answer_type(record) for record in answered]
    models += [model for resource in calculations() for model in (resource.request, resource.answer)]
    for model in models:
        assert names.setdefault(model.__name__, model) is model, model.__name__
