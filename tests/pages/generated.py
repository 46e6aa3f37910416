"""Files of the pages that are made from others: the check cases with their results, and the demo job as JSON.

python -m tests.pages.generated      writes both anew
"""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

from railrules_api.api.service import Service, start
from railrules_api.units import UNITS
from tests.support.asking import ask
from tests.support.demo import demo_job
from tests.test_check_cases import at, cases, in_unit

PAGES = Path(__file__).parents[2] / "railrules_api/pages"
CASES = PAGES / "checks.json"
JOB = PAGES / "static/demo-job.json"
_QUANTITY = re.compile(r'\{\s*"value": ([^,\s]+),\s*"unit": ("[^"]+")\s*\}')
_LABELS = {code: unit.label for units in UNITS.values() for code, unit in units.items()}


def _text(value: Any, unit: str = "") -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float | int):
        # seven digits: enough to see a difference, few enough that no processor's last bit shows
        text = f"{value:.7g}"
        return f"{float(text):,.10g} {unit}".strip() if abs(value) >= 1e4 else f"{text} {unit}".strip()
    if isinstance(value, list):
        return ", ".join(_text(item) for item in value)
    if isinstance(value, dict):
        return _text(value["value"], "" if value.get("unit") == "each" else _LABELS.get(value.get("unit", ""), ""))
    return str(value)


def _line(field: str, found: Any, expected: Any) -> dict[str, str]:
    if isinstance(expected, dict) and "unit" in expected:
        unit = str(_LABELS.get(expected["unit"], expected["unit"]))
        return {
            "field": field,
            "expected": _text(expected["value"], unit),
            "found": _text(in_unit(found, expected["unit"]), unit),
        }
    wanted = expected["value"] if isinstance(expected, dict) else expected
    return {"field": field, "expected": _text(wanted), "found": _text(found)}


def worked_cases(service: Service) -> dict[str, list[dict[str, Any]]]:
    """Work every case and tell what was expected and what came."""
    found: dict[str, list[dict[str, Any]]] = {}
    for case in cases():
        result = ask(service, case["rule"], case["inputs"])["result"]
        found.setdefault(case["rule"], []).append(
            {
                "title": case["title"],
                "kind": case["kind"],
                "source": case["cite"]["source"],
                "where": case["cite"]["where"],
                "lines": [_line(path, at(result, path), expected) for path, expected in case["expect"].items()],
            }
        )
    return found


def case_file(service: Service) -> str:
    """Return the file of check cases as it should be."""
    return json.dumps(worked_cases(service), ensure_ascii=False, indent=0) + "\n"


def job_text() -> str:
    """Return the demo job in wire form, each quantity on one line."""
    text = json.dumps(demo_job(), ensure_ascii=False, indent=2)
    return _QUANTITY.sub(r'{"value": \1, "unit": \2}', text) + "\n"


if __name__ == "__main__":
    CASES.write_text(case_file(start()), encoding="utf-8")
    JOB.write_text(job_text(), encoding="utf-8")
