"""Job files for people: TOML or JSON in which a quantity may be written `"39 ft"` in place of `{value = 39, unit = "ft"}`."""

from __future__ import annotations

import json
import re
import tomllib
from typing import TYPE_CHECKING, Any

from railrules_api.api.wire import EACH, GOODS
from railrules_api.domain.fields import slots_of
from railrules_api.rules.takeoff.job import Job
from railrules_api.units import UNITS

if TYPE_CHECKING:
    from pathlib import Path

    from railrules_api.domain.kinds import Kind

_SPOKEN = re.compile(r"^\s*([-+]?[0-9][0-9,]*(?:\.[0-9]+)?(?:[eE][-+]?[0-9]+)?)\s*([A-Za-z_][A-Za-z0-9_]*)\s*$")


class JobFileError(ValueError):
    """A job file that cannot be read; the message names the file and the place."""


def read(path: Path) -> dict[str, Any]:
    """Read a TOML or JSON file as a tree.

    Raises:
        JobFileError: it is not there, not of either form, or not an object.
    """
    try:
        text = path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as error:
        raise JobFileError(f"{path}: {error}") from error
    try:
        tree = json.loads(text) if path.suffix.lower() == ".json" else tomllib.loads(text)
    except (json.JSONDecodeError, tomllib.TOMLDecodeError, RecursionError) as error:
        raise JobFileError(f"{path}: {error}") from error
    if not isinstance(tree, dict):
        raise JobFileError(f"{path}: an object with the job's fields is wanted at the top")
    return tree


def _like(segments: list[Any], path: Path) -> list[Any]:
    """Give each segment that is `like` an earlier one what it does not say itself; curves and features are never taken over."""
    done: dict[str, dict[str, Any]] = {}
    result: list[Any] = []
    for segment in segments:
        if not isinstance(segment, dict):
            result.append(segment)
            continue
        own = dict(segment)
        name = own.pop("like", None)
        if name is not None:
            if name not in done:
                raise JobFileError(f"{path}: segment {own.get('name')!r} is like {name!r}, and no earlier segment has that name")
            own = {**{key: value for key, value in done[name].items() if key not in _PLACED}, **own}
        done[str(own.get("name"))] = own
        result.append(own)
    return result


_PLACED = ("curves", "features", "left_out", "begin_closing", "end_closing")


def job(path: Path) -> dict[str, Any]:
    """Read a job file as the body of a takeoff request.

    Raises:
        JobFileError: it cannot be read, or a segment is like one that is not there.
    """
    tree = read(path)
    if isinstance(tree.get("segments"), list):
        tree["segments"] = _like(tree["segments"], path)
    body = with_quantities(tree, Job)
    assert isinstance(body, dict)
    return body


def spoken(text: str, kind: Kind) -> dict[str, Any] | str:
    """Return the quantity that a text speaks of; the text itself where it speaks of none of the kind."""
    found = _SPOKEN.match(text)
    if found is None or found.group(2) not in UNITS[kind]:
        return text
    return {"value": float(found.group(1).replace(",", "")), "unit": found.group(2)}


def spoken_amount(text: str) -> dict[str, Any] | str:
    """Return the amount that a text speaks of, `"900 each"` or `"300 ft"`; the text itself where it speaks of none."""
    found = _SPOKEN.match(text)
    if found is None or (found.group(2) != EACH and not any(found.group(2) in UNITS[kind] for kind in GOODS)):
        return text
    return {"value": float(found.group(1).replace(",", "")), "unit": found.group(2)}


def with_quantities(tree: Any, record: type) -> Any:  # noqa: ANN401  a JSON tree
    """Return a tree in which every spoken quantity of a record stands in its wire form; the service judges the rest."""
    if not isinstance(tree, dict):
        return tree
    result = dict(tree)
    for slot in slots_of(record):
        value = result.get(slot.name)
        if slot.shape == "quantity" and isinstance(value, str) and slot.field.kind is not None:
            result[slot.name] = spoken(value, slot.field.kind)
        elif slot.shape == "amount" and isinstance(value, str):
            result[slot.name] = spoken_amount(value)
        elif slot.shape == "record" and slot.record is not None and slot.name in result:
            result[slot.name] = with_quantities(value, slot.record)
        elif slot.shape == "records" and slot.record is not None and isinstance(value, list):
            result[slot.name] = [with_quantities(item, slot.record) for item in value]
    return result
