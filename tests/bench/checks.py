"""What each safety check costs over all of its check cases, and what the properties of a section not seen before cost."""

from __future__ import annotations

import json
import tomllib
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

import msgspec

from railrules_api.api.replying import answer, answer_struct, bind
from railrules_api.api.resources import calculation_of
from railrules_api.domain.fields import slots_of
from railrules_api.rules.registry import ALL
from railrules_api.rules.sections import properties
from tests.bench.in_process import Cost, cost_of
from tests.bench.measure import costs

if TYPE_CHECKING:
    from collections.abc import Callable

    from railrules_api.api.service import Service

CASES = Path(__file__).parent.parent / "checks"
_DEFECT: dict[str, Any] = {
    "section": "136RE",
    "rail_temperature": {"value": 145, "unit": "degF"},
    "neutral_temperature": {"value": 95, "unit": "degF"},
    "lateral_resistance": {"value": 100, "unit": "lbf_per_in"},
    "stiffness": {"value": 100, "unit": "lbf_per_in2"},
    "defect_amplitude": {"value": 1.5, "unit": "in"},
    "defect_half_length": {"value": 15, "unit": "ft"},
    "shape": "three-lobes",
    "held": "throughout",
    "margin_rule": "lower-rise",
}


def _is_check(name: str) -> bool:
    return name.startswith(("thermal.", "strength.", "regulation."))


def check_costs(service: Service) -> dict[str, Cost]:
    """Return the cost of every rule of safety, its check cases asked in turn, and of buckling with a line defect."""
    bodies: dict[str, list[bytes]] = {rule.id: [] for rule in ALL if _is_check(rule.id)}
    for file in sorted(CASES.glob("*.toml")):
        for case in tomllib.loads(file.read_text(encoding="utf-8"))["case"]:
            if case["rule"] in bodies:
                bodies[case["rule"]].append(json.dumps(case["inputs"]).encode())
    found = {rule: cost_of(calculation_of(rule), asked, service, rounds=3) for rule, asked in bodies.items()}
    traced: dict[str, dict[str, Any]] = {"straight": {}, "3-degree curve": {"degree": {"value": 3, "unit": "deg"}}}
    for name, more in traced.items():
        body = json.dumps({**_DEFECT, **more}).encode()
        found[f"thermal.buckling, line defect, {name}"] = cost_of(calculation_of("thermal.buckling"), [body], service, rounds=3)
    return found


def holds_against(rule: str) -> bool:
    """Tell whether a rule's answer has a verdict in it."""
    record = next(known for known in ALL if known.id == rule.partition(",")[0])
    return any(slot.name == "checks" for slot in slots_of(record.output))


def section_costs(service: Service, name: str = "136RE") -> dict[str, float]:
    """Return the cost of a section's properties over that of decoding and encoding the same answer once.

    What is kept from one question to the next is forgotten before each question, but where the name says `seen before`.
    """
    resource = calculation_of("sections.properties")
    works: dict[str, Callable[[], object]] = {}
    floors: dict[str, tuple[str, str]] = {}
    asked: dict[str, dict[str, Any]] = {
        "new": {},
        "worn": {"vertical_wear": {"value": 0.25, "unit": "in"}},
        "new, with torsion": {"torsion": True},
    }
    for title, more in asked.items():
        body = json.dumps({"section": name, **more}).encode()
        bound = bind(resource, body, service)
        struct: Any = answer_struct(resource, bound, service)
        sent = msgspec.json.encode(struct)
        works[f"{title}: encode"] = partial(msgspec.json.encode, struct)
        works[f"{title}: decode"] = partial(msgspec.json.decode, sent, type=type(struct))

        def fresh(given: Any = bound.given) -> object:
            properties.drawn.cache_clear()
            properties.torsion_of.cache_clear()
            return properties.evaluate(given)

        def whole(body: bytes = body) -> object:
            properties.drawn.cache_clear()
            properties.torsion_of.cache_clear()
            return answer(resource, body, service)

        works[f"{title}: properties"] = fresh
        works[f"{title}: properties, seen before"] = partial(properties.evaluate, bound.given)
        works[f"{title}: whole request"] = whole
        works[f"{title}: whole request, seen before"] = partial(answer, resource, body, service)
        floors |= {key: (f"{title}: encode", f"{title}: decode") for key in works if key.startswith(f"{title}: ")}
    found = costs(works, rounds=5)
    return {
        f"{name} {key}": cost / (found[floors[key][0]] + found[floors[key][1]])
        for key, cost in found.items()
        if not key.endswith(("encode", "decode"))
    }
