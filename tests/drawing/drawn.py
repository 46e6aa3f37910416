"""Drawings of the demo job and of the check cases, and what can be read off an SVG."""

from __future__ import annotations

import json
import re
from typing import TYPE_CHECKING, Any
from xml.etree import ElementTree as ET

from railrules_api.api.replying import bind, worked
from railrules_api.api.resources import calculation_of
from tests.support.demo import demo_job

if TYPE_CHECKING:
    from railrules_api.api.service import Service

SVG = "{http://www.w3.org/2000/svg}"
_FIRST = re.compile(r"M(-?[\d.]+) (-?[\d.]+)")


def job_body(**changes: Any) -> dict[str, Any]:
    return {**demo_job(), **changes}


def answered(service: Service, rule: str, body: dict[str, Any]) -> tuple[Any, Any, Any]:
    """Return what a rule was given, what it found, and the unit system."""
    resource = calculation_of(rule)
    bound = bind(resource, json.dumps(body).encode(), service)
    found, _ = worked(resource, bound, service)
    return bound.given, found, bound.system


def tree(text: str) -> ET.Element:
    return ET.fromstring(text)


def marks(root: ET.Element, *kinds: str) -> list[tuple[float, float]]:
    """Return where the marks of some kinds stand that are not in the legend: the first point of each."""
    found = []
    for group in root.iter(f"{SVG}g"):
        if group.get("data-mark") in kinds:
            match = _FIRST.match(group[0].get("d", ""))
            assert match is not None
            found.append((float(match.group(1)), float(match.group(2))))
    return [place for place in found if place[1] < 158.0]


def words(root: ET.Element) -> list[str]:
    return ["".join(item.itertext()) for item in root.iter(f"{SVG}text")]
