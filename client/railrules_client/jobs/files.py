"""Job files for people: TOML or JSON in which a quantity may be written `"39 ft"` in place of `{value = 39, unit = "ft"}`."""

from __future__ import annotations

import json
import tomllib
from typing import TYPE_CHECKING, TypeAlias, cast

from railrules_client._units import parse
from railrules_client.jobs.shapes import slots_of

if TYPE_CHECKING:
    from msgspec import Struct

    from railrules_client.jobs.shapes import Slot
    from railrules_client.jobs.sources import Source

Tree: TypeAlias = "dict[str, object]"
"""An object of JSON."""
PLACED = ("curves", "features", "left_out", "begin_closing", "end_closing")
"""What belongs to one place on the line and is never taken over from another segment."""


class JobFileError(ValueError):
    """A job file that cannot be read; the message names the file and the place."""


def tree_of(path: Source) -> Tree:
    """Read a TOML or JSON file as a tree.

    Raises:
        JobFileError: it is not there, not of either form, or not an object.
    """
    try:
        text = path.read().decode()
    except (OSError, UnicodeDecodeError) as error:
        raise JobFileError(f"{path}: {error}") from error
    try:
        tree: object = json.loads(text) if path.suffix == ".json" else tomllib.loads(text)
    except (ValueError, RecursionError) as error:
        raise JobFileError(f"{path}: {error}") from error
    if not isinstance(tree, dict):
        raise JobFileError(f"{path}: an object with the job's fields is wanted at the top")
    return cast("Tree", tree)


def like(segments: list[object], path: Source) -> list[object]:
    """Give each segment that is `like` an earlier one what it does not say itself; curves and features are never taken over.

    Raises:
        JobFileError: no earlier segment has the name.
    """
    done: dict[str, Tree] = {}
    result: list[object] = []
    for segment in segments:
        if not isinstance(segment, dict):
            result.append(segment)
            continue
        own = dict(cast("Tree", segment))
        name = own.pop("like", None)
        if name is not None:
            if not isinstance(name, str) or name not in done:
                raise JobFileError(f"{path}: segment {own.get('name')!r} is like {name!r}, and no earlier segment has that name")
            own = {**{key: value for key, value in done[name].items() if key not in PLACED}, **own}
        done[str(own.get("name"))] = own
        result.append(own)
    return result


def _spoken(text: str, slot: Slot) -> object:
    """Return the quantity that a text speaks of; the text itself where it speaks of none of the kind."""
    try:
        value, unit = parse(text)
    except ValueError:
        return text
    return {"value": value, "unit": unit} if unit in slot.codes else text


def with_quantities(tree: object, record: type[Struct]) -> object:
    """Return a tree in which every spoken quantity of a record stands in its wire form; the service judges the rest."""
    if not isinstance(tree, dict):
        return tree
    result = dict(cast("Tree", tree))
    for slot in slots_of(record):
        value = result.get(slot.name)
        if slot.shape == "quantity" and isinstance(value, str):
            result[slot.name] = _spoken(value, slot)
        elif slot.shape == "record" and slot.record is not None and slot.name in result:
            result[slot.name] = with_quantities(value, slot.record)
        elif slot.shape == "records" and slot.record is not None and isinstance(value, list):
            result[slot.name] = [with_quantities(item, slot.record) for item in cast("list[object]", value)]
    return result
