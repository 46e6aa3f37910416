"""What the service says to every good request we have, and to requests a little beside them: no word or number changes unseen.

Numbers are kept to nine digits, which is more than any source has and less than machines differ in.
`make kept` writes the files anew; what then differs belongs into `openapi/CHANGELOG.md`.
"""

from __future__ import annotations

import copy
import hashlib
import json
from pathlib import Path
from typing import TYPE_CHECKING, Any

from railrules_api.api.operations import Asked
from railrules_api.api.problems import ProblemError
from railrules_api.api.service import start
from railrules_api.domain.fields import slots_of
from railrules_api.rules.registry import BY_ID
from tests.hostile.extremes import examples, leaves_of, operation_of, replaced
from tests.mutation.kept_sums import SUMS, sums

if TYPE_CHECKING:
    from collections.abc import Iterator

    from railrules_api.api.service import Service
    from railrules_api.domain.fields import Slot

FOLDER = Path(__file__).parent
ANSWERS, REFUSALS = FOLDER / "answers.jsonl", FOLDER / "refusals.jsonl"
DEAR = ("sections.properties", "strength.vertical-bending", "takeoffs", "thermal.buckling")
"""Rules that take long: only their first examples are probed."""


def _rounded(tree: Any) -> Any:
    if isinstance(tree, float):
        return float(f"{tree:.9g}")
    if isinstance(tree, dict):
        return {key: _rounded(value) for key, value in tree.items()}
    if isinstance(tree, list):
        return [_rounded(value) for value in tree]
    return tree


def _asked(service: Service, rule: str, body: dict[str, Any]) -> Any:
    operation = operation_of(rule)
    reply = operation.handler(service, Asked({}, {}, json.dumps({**body, "units": "si"}).encode(), operation.media_types[0]))
    found = json.loads(reply.body)
    return _rounded([found["result"], found.get("orders", [])])


def _line(*parts: Any) -> str:
    return json.dumps(parts, ensure_ascii=False, separators=(",", ":"))


def rules() -> list[str]:
    """Return every rule that is asked."""
    return sorted({rule for rule, _ in examples()})


def _bodies(of: str) -> list[dict[str, Any]]:
    return [body for rule, body in examples() if rule == of]


# ---------------------------------------------------------------- probes


def _changed(tree: Any, record: type | None, donors: list[Any]) -> Iterator[Any]:
    """Yield a tree with one member left out, one word replaced by another one, or one member more, from a like tree."""
    if isinstance(tree, list):
        for position, item in enumerate(tree[:3]):
            inner = [donor[0] for donor in donors if isinstance(donor, list) and donor]
            yield from ([*tree[:position], changed, *tree[position + 1 :]] for changed in _changed(item, record, inner))
        if len(tree) > 1:
            yield tree[::-1]
        yield tree + tree[:1]
    elif isinstance(tree, dict):
        donors = [donor for donor in donors if isinstance(donor, dict)]
        slots = {slot.name: slot for slot in slots_of(record)} if record is not None else {}
        for name in tree:
            yield {key: other for key, other in tree.items() if key != name}
            if name in slots:
                yield from ({**tree, name: value} for value in _other_values(tree[name], slots[name], donors))
        for name, value in {name: value for donor in donors for name, value in donor.items() if name not in tree}.items():
            yield {**tree, name: copy.deepcopy(value)}
        for name, slot in slots.items():
            if name not in tree and slot.shape == "word":
                yield from ({**tree, name: word} for word in slot.words)


def _other_values(value: Any, slot: Slot, donors: list[dict[str, Any]]) -> Iterator[Any]:
    if slot.shape == "word":
        yield from (word for word in slot.words if word != value)
    elif slot.shape == "flag":
        yield not value
    elif isinstance(value, (dict, list)) and slot.record is not None:
        yield from _changed(value, slot.record, [donor[slot.name] for donor in donors if slot.name in donor])


def _moved(rule: str, body: dict[str, Any]) -> Iterator[dict[str, Any]]:
    """Yield a body with one number set aside a little or far."""
    for path, _ in leaves_of(rule, body):
        place: Any = body
        for step in path:
            place = place[step]
        for value in (0.0, -1.0, 1e15, place * 1.1, place * 0.9, place + 1, place - 1, place * 10, place / 10, -place):
            yield replaced(body, {path: value})


def probes(rule: str) -> Iterator[dict[str, Any]]:
    """Yield requests a little beside the good ones."""
    bodies = _bodies(rule)
    for body in bodies[: 1 if rule in DEAR else None]:
        yield from _changed(body, BY_ID[rule].input, bodies)
        if rule != "sections.properties":
            yield from _moved(rule, body)


# ---------------------------------------------------------------- what is kept


def answers(service: Service, rule: str) -> Iterator[str]:
    """Yield a line for every good request to a rule: the rule, and the result with its orders."""
    for body in _bodies(rule):
        yield _line(rule, *_asked(service, rule, body))


def _probed(service: Service, rule: str) -> Iterator[tuple[str, Any]]:
    for body in probes(rule):
        try:
            yield "", _asked(service, rule, body)
        except ProblemError as problem:
            for fault in problem.faults:
                told = [fault.pointer, fault.detail, fault.value, fault.minimum, fault.maximum, fault.unit, fault.allowed]
                yield _line(rule, *(_rounded(part) if isinstance(part, (str, float, list)) else None for part in told)), None


def refusals(service: Service, rule: str) -> Iterator[str]:
    """Yield a line for every different refusal of the probes, and a last one: a digest of what was answered to the others."""
    seen: set[str] = set()
    digest, count = hashlib.sha256(), 0
    for line, answer in _probed(service, rule):
        if not line:
            count += 1
            digest.update(_line(answer).encode())
            continue
        # values that only differ in their numbers are the same refusal
        told = json.loads(line)
        key = _line(told[0], told[1], told[2], *told[4:]) if told[1].count("/") > 1 else line
        if key not in seen:
            seen.add(key)
            yield line
    yield _line(rule, "answered", count, digest.hexdigest())


def main() -> None:
    """Write the files."""
    service = start()
    for file, lines in ((ANSWERS, answers), (REFUSALS, refusals), (SUMS, sums)):
        text = "".join(f"{line}\n" for rule in rules() for line in lines(service, rule))
        file.write_text(text, encoding="utf-8")


if __name__ == "__main__":
    main()
