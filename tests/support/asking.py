"""Putting questions to the service without HTTP, and turning described records back into request bodies."""

from __future__ import annotations

import json
from decimal import Decimal
from typing import Any

from railrules_api.api.replying import answer
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import Service
from railrules_api.domain.amounts import Amount
from railrules_api.domain.fields import slots_of
from railrules_api.domain.kinds import Kind
from railrules_api.units import si_unit


def ask(service: Service, rule: str, body: dict[str, Any] | bytes) -> dict[str, Any]:
    """Put a question to a rule and return its answer."""
    raw = body if isinstance(body, bytes) else json.dumps(body).encode()
    found: dict[str, Any] = json.loads(answer(calculation_of(rule), raw, service))
    return found


def _sent(value: Any, shape: str, kind: Kind | None) -> Any:
    if shape == "quantity":
        assert kind is not None
        return {"value": value, "unit": si_unit(kind).code}
    if shape == "amount":
        assert isinstance(value, Amount)
        return {"value": value.value, "unit": "each" if value.kind is None else si_unit(value.kind).code}
    if shape == "record":
        return body_of(value)
    if shape == "records":
        return [body_of(item) for item in value]
    if shape in ("numbers", "texts"):
        return list(value)
    return str(value) if isinstance(value, Decimal) else value


def body_of(record: Any) -> dict[str, Any]:
    """Return the request body, in SI units, that binds to a described record; what a catalogue row names is left out by id."""
    body: dict[str, Any] = {}
    for slot in slots_of(type(record)):
        value = getattr(record, slot.name)
        taken = slot.field.taken
        named = taken is not None and taken.column == "id" and slot.name not in {taken.by, "product"}
        if value is None or named:
            continue
        body[slot.name] = _sent(value, slot.shape, slot.field.kind)
    return body
