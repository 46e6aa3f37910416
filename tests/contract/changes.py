"""Changes of the document that break somebody's program, and changes that break nobody's.

They are made on the document itself, cut down to a few operations so that each comparison takes a second or two.
"""

from __future__ import annotations

import copy
from collections.abc import Callable, Iterator
from typing import Any

KEPT = ("/v1/rail-sections", "/v1/rail-sections/{id}", "/v1/thermal/force", "/v1/quantities/anchors", "/v1/takeoffs")
Tree = dict[str, Any]


# ---------------------------------------------------------------- a small document of the same make


def _references(tree: Any) -> Iterator[str]:
    if isinstance(tree, dict):
        if isinstance(tree.get("$ref"), str):
            yield tree["$ref"]
        for value in tree.values():
            yield from _references(value)
    elif isinstance(tree, list):
        for item in tree:
            yield from _references(item)


def _bare(tree: Any) -> Any:
    """Return a tree without its examples: a gate has nothing to say of them, and they are most of the bytes."""
    if isinstance(tree, dict):
        return {key: _bare(value) for key, value in tree.items() if key not in ("examples", "example")}
    return [_bare(item) for item in tree] if isinstance(tree, list) else tree


def small(document: Tree) -> Tree:
    """Return a document of a few operations with what they refer to."""
    made: Tree = _bare({**document, "paths": {path: document["paths"][path] for path in KEPT}})
    parts, made["components"] = made["components"], {"securitySchemes": document["components"]["securitySchemes"]}
    waiting = [made["paths"]]
    while waiting:
        for reference in _references(waiting.pop()):
            group, name = reference.removeprefix("#/components/").split("/")
            if name not in made["components"].setdefault(group, {}):
                made["components"][group][name] = parts[group][name]
                waiting.append(parts[group][name])
    return made


# ---------------------------------------------------------------- the corpus

Change = Callable[[Tree], None]
BREAKS: dict[str, Change] = {}
HARMLESS: dict[str, Change] = {}


def _case(into: dict[str, Change]) -> Callable[[Change], Change]:
    def add(change: Change) -> Change:
        into[change.__name__.replace("_", " ")] = change
        return change

    return add


breaks, harmless = _case(BREAKS), _case(HARMLESS)


def _list(tree: Tree) -> Tree:
    found: Tree = tree["paths"]["/v1/rail-sections"]["get"]
    return found


def _parameter(tree: Tree, name: str) -> Tree:
    return next(item for item in _list(tree)["parameters"] if item["name"] == name)


def _force(tree: Tree) -> Tree:
    found: Tree = tree["paths"]["/v1/thermal/force"]["post"]
    return found


def _schema(tree: Tree, name: str) -> Tree:
    found: Tree = tree["components"]["schemas"][name]
    return found


def _property(tree: Tree, schema: str, name: str) -> Tree:
    found: Tree = _schema(tree, schema)["properties"][name]
    return found


@breaks
def path_removed(tree: Tree) -> None:
    del tree["paths"]["/v1/thermal/force"]


@breaks
def path_renamed(tree: Tree) -> None:
    tree["paths"]["/v1/thermal/forces"] = tree["paths"].pop("/v1/thermal/force")


@breaks
def method_changed(tree: Tree) -> None:
    item = tree["paths"]["/v1/thermal/force"]
    item["put"] = item.pop("post")


@breaks
def query_parameter_removed(tree: Tree) -> None:
    _list(tree)["parameters"].remove(_parameter(tree, "standard"))


@breaks
def query_parameter_renamed(tree: Tree) -> None:
    _parameter(tree, "standard")["name"] = "norm"


@breaks
def query_parameter_required(tree: Tree) -> None:
    _parameter(tree, "standard")["required"] = True


@breaks
def required_query_parameter_added(tree: Tree) -> None:
    _list(tree)["parameters"].append({"name": "year", "in": "query", "required": True, "schema": {"type": "integer"}})


@breaks
def parameter_maximum_lowered(tree: Tree) -> None:
    _parameter(tree, "mass_to")["schema"]["maximum"] = 1000


@breaks
def parameter_minimum_raised(tree: Tree) -> None:
    _parameter(tree, "mass_from")["schema"]["minimum"] = 10


@breaks
def parameter_length_lowered(tree: Tree) -> None:
    _parameter(tree, "standard")["schema"]["maxLength"] = 8


@breaks
def parameter_enum_narrowed(tree: Tree) -> None:
    _parameter(tree, "units")["schema"]["enum"].remove("si")


@breaks
def parameter_type_changed(tree: Tree) -> None:
    _parameter(tree, "mass_from")["schema"] = {"type": "string", "maxLength": 20}


@breaks
def request_property_required(tree: Tree) -> None:
    _schema(tree, "ThermalForceRequest")["required"].append("section")


@breaks
def required_request_property_added(tree: Tree) -> None:
    _schema(tree, "ThermalForceRequest")["properties"]["railroad"] = {"type": "string", "maxLength": 80}
    _schema(tree, "ThermalForceRequest")["required"].append("railroad")


@breaks
def request_property_removed_from_a_closed_object(tree: Tree) -> None:
    del _schema(tree, "ThermalForceRequest")["properties"]["section"]


@breaks
def request_property_renamed(tree: Tree) -> None:
    properties = _schema(tree, "ThermalForceRequest")["properties"]
    properties["rail"] = properties.pop("section")


@breaks
def request_property_type_changed(tree: Tree) -> None:
    properties = _schema(tree, "ThermalForceRequest")["properties"]
    properties["explain"] = {"type": "string", "maxLength": 10, "description": properties["explain"]["description"]}


@breaks
def request_quantity_made_a_plain_number(tree: Tree) -> None:
    _schema(tree, "ThermalForceRequest")["properties"]["rail_temperature"] = {"type": "number", "minimum": -100, "maximum": 100}


@breaks
def request_text_shortened(tree: Tree) -> None:
    _property(tree, "ThermalForceRequest", "section")["maxLength"] = 10


@breaks
def request_text_with_a_least_length(tree: Tree) -> None:
    _property(tree, "ThermalForceRequest", "section")["minLength"] = 5


@breaks
def request_pattern_narrowed(tree: Tree) -> None:
    _property(tree, "ThermalForceRequest", "section")["pattern"] = "^[0-9]+$"


@breaks
def request_list_shortened(tree: Tree) -> None:
    _property(tree, "AnchorsRequest", "zones")["maxItems"] = 2


@breaks
def request_list_with_a_least_number(tree: Tree) -> None:
    _property(tree, "AnchorsRequest", "zones")["minItems"] = 1


@breaks
def request_maximum_lowered(tree: Tree) -> None:
    _property(tree, "AnchorsRequest", "reapplied_share")["maximum"] = 0.5


@breaks
def request_minimum_raised(tree: Tree) -> None:
    _property(tree, "AnchorsRequest", "reapplied_share")["minimum"] = 0.5


@breaks
def request_minimum_made_exclusive(tree: Tree) -> None:
    schema = _property(tree, "AnchorsRequest", "reapplied_share")
    schema["exclusiveMinimum"] = schema.pop("minimum")


@breaks
def request_number_made_an_integer(tree: Tree) -> None:
    schema = _property(tree, "AnchorsRequest", "old_anchors")
    schema["type"], schema["format"] = "integer", "int64"


@breaks
def request_unit_removed(tree: Tree) -> None:
    # the kind is sent and answered: a caller may send the unit that is gone
    _property(tree, "Temperature", "unit")["enum"].remove("degF")


@breaks
def request_word_removed(tree: Tree) -> None:
    _property(tree, "Stretch", "rails")["enum"].remove("high")


@breaks
def request_form_removed(tree: Tree) -> None:
    content = _force(tree)["requestBody"]["content"]
    content["application/xml"] = content.pop("application/json")


@breaks
def nested_request_property_required(tree: Tree) -> None:
    _schema(tree, "TieSetting").setdefault("required", []).append("origin")


@breaks
def answer_property_removed(tree: Tree) -> None:
    del _schema(tree, "ThermalForceAnswer")["properties"]["sources"]
    _schema(tree, "ThermalForceAnswer")["required"].remove("sources")


@breaks
def answer_property_optional(tree: Tree) -> None:
    _schema(tree, "ThermalForceAnswer")["required"].remove("result")


@breaks
def answer_property_renamed(tree: Tree) -> None:
    schema = _schema(tree, "ThermalForceAnswer")
    schema["properties"]["citations"] = schema["properties"].pop("sources")
    schema["required"][schema["required"].index("sources")] = "citations"


@breaks
def answer_property_nullable(tree: Tree) -> None:
    _property(tree, "ThermalForceAnswer", "title")["type"] = ["string", "null"]


@breaks
def answer_integer_made_a_number(tree: Tree) -> None:
    schema = _property(tree, "Assumption", "uses")
    schema["type"], schema["format"] = "number", "double"


@breaks
def answer_type_changed(tree: Tree) -> None:
    schema = _property(tree, "ThermalForceAnswer", "title")
    schema.clear()
    schema.update({"type": "array", "maxItems": 10, "items": {"type": "string", "maxLength": 200}})


@breaks
def answer_word_added(tree: Tree) -> None:
    _property(tree, "Citation", "status")["enum"].append("guessed")


@breaks
def answer_form_removed(tree: Tree) -> None:
    del tree["paths"]["/v1/takeoffs"]["post"]["responses"]["200"]["content"]["text/csv"]


@breaks
def answer_status_removed(tree: Tree) -> None:
    responses = _force(tree)["responses"]
    responses["201"] = responses.pop("200")


@breaks
def answer_header_removed(tree: Tree) -> None:
    del _list(tree)["responses"]["200"]["headers"]["ETag"]


@breaks
def keys_made_necessary(tree: Tree) -> None:
    tree["security"] = [{"ApiKey": []}]


@harmless
def nothing(tree: Tree) -> None:
    del tree["info"]["summary"]


@harmless
def descriptions_reworded(tree: Tree) -> None:
    _force(tree)["description"] += " Reworded."
    _property(tree, "ThermalForceRequest", "section")["description"] = "Which rail."


@harmless
def path_added(tree: Tree) -> None:
    made = copy.deepcopy(_force(tree))
    made["operationId"] = "calculateStress"
    tree["paths"]["/v1/thermal/stress"] = {"post": made}


@harmless
def optional_query_parameter_added(tree: Tree) -> None:
    _list(tree)["parameters"].append(
        {"name": "year", "in": "query", "schema": {"type": "integer", "minimum": 1800, "maximum": 2200}}
    )


@harmless
def optional_request_property_added(tree: Tree) -> None:
    _schema(tree, "ThermalForceRequest")["properties"]["remark"] = {"type": "string", "maxLength": 80}


@harmless
def answer_property_added(tree: Tree) -> None:
    _schema(tree, "ThermalForceAnswer")["properties"]["remark"] = {"type": "string", "maxLength": 80}


@harmless
def request_property_no_longer_required(tree: Tree) -> None:
    _schema(tree, "ThermalForceRequest")["required"].remove("rail_temperature")


@harmless
def parameter_maximum_raised(tree: Tree) -> None:
    _parameter(tree, "mass_to")["schema"]["maximum"] = 2_000_000


@harmless
def parameter_word_added(tree: Tree) -> None:
    _parameter(tree, "units")["schema"]["enum"].append("source")


@harmless
def request_list_lengthened(tree: Tree) -> None:
    _property(tree, "AnchorsRequest", "zones")["maxItems"] = 5000


@harmless
def request_text_lengthened(tree: Tree) -> None:
    _property(tree, "ThermalForceRequest", "section")["maxLength"] = 200


@harmless
def answer_form_added(tree: Tree) -> None:
    content = _force(tree)["responses"]["200"]["content"]
    content["text/markdown"] = {"schema": {"type": "string", "maxLength": 1000}}


@harmless
def answer_header_added(tree: Tree) -> None:
    headers = _force(tree)["responses"]["200"]["headers"]
    headers["Server-Timing"] = {"description": "Time spent.", "schema": {"type": "string", "maxLength": 200}}


@harmless
def tag_reworded(tree: Tree) -> None:
    tree["tags"][0]["description"] = "Reworded."


@harmless
def operation_deprecated(tree: Tree) -> None:
    _force(tree)["deprecated"] = True


def changed(document: Tree, change: Change) -> Tree:
    """Return a changed copy of a document."""
    tree = copy.deepcopy(document)
    change(tree)
    return tree
