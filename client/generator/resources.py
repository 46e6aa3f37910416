"""Source of `operations.py`: one class a resource, one method an operation, for blocking and for asynchronous use."""

from __future__ import annotations

from typing import TYPE_CHECKING

from generator.reading import GenerationError, camel, snake
from generator.writing import call, docstring, safe_name, sentence, type_of

if TYPE_CHECKING:
    from generator.reading import Answer, Document, Operation

_TAB = "    "
ERRORS = {
    400: "BadRequestError",
    401: "UnauthorizedError",
    403: "ForbiddenError",
    404: "NotFoundError",
    405: "MethodNotAllowedError",
    406: "NotAcceptableError",
    413: "TooLargeError",
    415: "UnsupportedMediaTypeError",
    422: "RefusedError",
    429: "TooManyRequestsError",
    500: "ServiceFailedError",
    503: "UnavailableError",
}
"""Error of the client for each status; a test holds it against the client's own table."""
_OWN_FAULT = (405, 406, 415)
"""Statuses that only a fault of the client itself can bring about: not worth a line in every docstring."""
_LONGEST = 100
_RESERVED = {"timeout", "retries", "headers", "request_id", "idempotency_key", "on_response", "progress", "self"}
_PROGRESS = "True for a bar (the extra `progress`), or a function that is told how far the work has come."
_OPTIONS = "settings of this call alone: timeout, retries, headers, request_id, idempotency_key, on_response."
_ALSO = {"rail_sections": "sections"}
"""Resources that go by a shorter name as well, the one that is used at work."""
_COMFORTS = {"takeoffs": "Takeoffs"}
"""Hand-written classes of `_takeoffs.py` that the class of a resource rests on; each has its twin for awaiting."""
_HEAD = '''"""Resources of {title} {version}, named as the trade names them. Made from the OpenAPI document; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, {typing}

from railrules_client._calls import Operation
{models}{comforts}
if TYPE_CHECKING:
{collections}
    from railrules_client._calls import AsyncCaller, Caller, CallOptions
'''


def _method_name(operation: Operation, answer: Answer) -> str:
    plain = answer is operation.answers[0]
    return safe_name(operation.name if plain else f"{operation.name}_{answer.suffix}")


def _constant(operation: Operation, answer: Answer) -> str:
    plain = answer is operation.answers[0]
    return f"_{snake(operation.id)}{'' if plain else f'_{answer.suffix}'}".upper()


def _answer_type(answer: Answer) -> str:
    if answer.component is not None:
        return camel(answer.component)
    return "str" if answer.text else "bytes"


def _request_name(operation: Operation) -> str:
    words = snake(operation.request or "body").split("_")
    return words[-1]


def _operation_lines(operation: Operation, answer: Answer) -> list[str]:
    arguments = [
        f'"{operation.id}"',
        f'"{operation.method}"',
        f'"{operation.path}"',
        f'accept="{answer.media_type}"',
        f"answer={_answer_type(answer)}",
    ]
    if operation.request_media_type is not None:
        arguments.append(f'content_type="{operation.request_media_type}"')
    return call("", f"{_constant(operation, answer)}: Final = Operation", arguments, "")


def _signature(operation: Operation, *, told: bool) -> list[str]:
    """Return the parameters: path and request by position, query by name, then the options of the call."""
    path = [item for item in operation.parameters if item.place == "path"]
    query = [item for item in operation.parameters if item.place == "query"]
    clash = {safe_name(item.name) for item in operation.parameters} & _RESERVED
    if clash:
        raise GenerationError(f"{operation.id}: parameters named like options of a call: {sorted(clash)}")
    arguments = ["self", *(f"{safe_name(item.name)}: {type_of(item.schema, answer=False)}" for item in path)]
    if operation.request is not None:
        arguments.append(f"{_request_name(operation)}: {camel(operation.request)} | Mapping[str, object]")
    elif operation.request_media_type is not None:
        arguments.append("body: bytes")
    if len(arguments) > 1:
        arguments.append("/")
    if query or told:
        arguments.append("*")
    for item in sorted(query, key=lambda item: not item.required):
        kind = type_of(item.schema, answer=False)
        arguments.append(f"{safe_name(item.name)}: {kind}" if item.required else f"{safe_name(item.name)}: {kind} | None = None")
    if told:
        arguments.append("progress: bool | Callable[[Progress], object] = False")
    return [*arguments, "**options: Unpack[CallOptions]"]


def _tells(operation: Operation, answer: Answer) -> bool:
    """Return whether a method can tell how far the answer is: that for JSON, where there is a form that does."""
    return operation.lines is not None and answer is operation.answers[0]


def _documented(operation: Operation, answer: Answer, document: Document) -> list[str]:
    asked = [(safe_name(item.name), sentence(item.about)) for item in operation.parameters]
    if operation.request is not None:
        request = f"see `{camel(operation.request)}`; a mapping is sent as it stands."
        asked.append((_request_name(operation), request))
    elif operation.request_media_type is not None:
        asked.append(("body", f"of type {operation.request_media_type}."))
    if _tells(operation, answer):
        asked.append(("progress", _PROGRESS))
    asked.append(("**options", _OPTIONS))
    described = document.schemas.get(answer.component or "", {}).get("description", "")
    returned = sentence(described.split("\n")[0]) or f"The answer as {answer.media_type}."
    raised = [
        (ERRORS.get(status, "ProblemError"), f"{about} ({status}).")
        for status, about in operation.problems
        if status not in _OWN_FAULT
    ]
    summary = operation.summary if answer is operation.answers[0] else f"{operation.summary}, as {answer.media_type}"
    text = f"{summary}\n\n{operation.description}" if operation.description else summary
    return docstring(_TAB * 2, text, [("Args", asked), ("Returns", [("", returned)]), ("Raises", raised)])


def _method(operation: Operation, answer: Answer, document: Document, *, asynchronous: bool) -> list[str]:
    arguments = [_constant(operation, answer), "options"]
    for place in ("path", "query"):
        named = [f'"{item.name}": {safe_name(item.name)}' for item in operation.parameters if item.place == place]
        one = f"{place}={{{', '.join(named)}}}"
        if named and len(one) < _LONGEST:
            arguments.append(one)
        elif named:
            inner = "".join(f"\n{_TAB * 4}{item}," for item in named)
            arguments.append(f"{place}={{{inner}\n{_TAB * 3}}}")
    if operation.request is not None:
        arguments.append(f"body={_request_name(operation)}")
    elif operation.request_media_type is not None:
        arguments.append("body=body")
    called = "self._caller.call"
    if _tells(operation, answer) and operation.lines is not None:
        called = "self._watched"
        arguments.insert(1, _constant(operation, operation.lines))
        arguments.append("progress=progress")
    word, wait = ("async def", "await ") if asynchronous else ("def", "")
    return [
        *call(
            _TAB,
            f"{word} {_method_name(operation, answer)}",
            _signature(operation, told=_tells(operation, answer)),
            f" -> {_answer_type(answer)}:",
        ),
        *_documented(operation, answer, document),
        *call(_TAB * 2, f"return {wait}{called}", arguments, ""),
    ]


def _about_group(group: str, operations: list[Operation], document: Document) -> str:
    tags = {operation.tag for operation in operations}
    if tags == {group} or tags == {group.replace("_", "-")}:
        return document.tags.get(operations[0].tag, "")
    return "; ".join([operations[0].summary, *(item.summary[0].lower() + item.summary[1:] for item in operations[1:])])


def _groups(document: Document) -> dict[str, list[Operation]]:
    found: dict[str, list[Operation]] = {}
    for operation in document.operations:
        found.setdefault(operation.group, []).append(operation)
    return dict(sorted(found.items()))


def _class(group: str, operations: list[Operation], document: Document, *, asynchronous: bool) -> list[str]:
    prefix = "Async" if asynchronous else ""
    about = sentence(_about_group(group, operations, document))
    known = operations if group in _COMFORTS else []
    base = f"({prefix}{_COMFORTS[group]})" if group in _COMFORTS else ""
    lines = [
        f"class {prefix}{camel(group)}Resource{base}:",
        *docstring(_TAB, f"`client.{group}`. {about}".strip()),
        "",
        *(f"{_TAB}_{operation.name} = {_constant(operation, operation.answers[0])}" for operation in known),
        *([""] if known else []),
        f"{_TAB}def __init__(self, caller: {prefix}Caller) -> None:",
        f'{_TAB * 2}"""Reach the operations through a caller."""',
        f"{_TAB * 2}self._caller = caller",
    ]
    for operation in operations:
        for answer in () if operation.streamed and known else operation.answers:
            if answer is operation.lines:
                continue
            lines += ["", *_method(operation, answer, document, asynchronous=asynchronous)]
    return lines


def _root(groups: dict[str, list[Operation]], *, asynchronous: bool) -> list[str]:
    prefix = "Async" if asynchronous else ""
    lines = [
        f"class {prefix}Resources:",
        f'{_TAB}"""Every resource of the service."""',
        "",
        f"{_TAB}def __init__(self, caller: {prefix}Caller) -> None:",
        f'{_TAB * 2}"""Reach the resources through a caller."""',
    ]
    return lines + [
        line
        for group in groups
        for line in (
            f"{_TAB * 2}self.{group}: {prefix}{camel(group)}Resource = {prefix}{camel(group)}Resource(caller)",
            *([f"{_TAB * 2}self.{_ALSO[group]}: {prefix}{camel(group)}Resource = self.{group}"] if group in _ALSO else []),
        )
    ]


def source(document: Document) -> str:
    """Return the text of `operations.py`.

    Raises:
        GenerationError: an operation is of a form the generator does not know.
    """
    groups = _groups(document)
    pairs = [(operation, answer) for operation in document.operations for answer in operation.answers]
    parts = ["\n".join(line for pair in pairs for line in _operation_lines(*pair))]
    for asynchronous in (False, True):
        for group, operations in groups.items():
            parts.append("\n".join(_class(group, operations, document, asynchronous=asynchronous)))
        parts.append("\n".join(_root(groups, asynchronous=asynchronous)))
    body = "\n\n\n".join(parts)
    needed = sorted(
        {_answer_type(answer) for _, answer in pairs if answer.component}
        | {camel(operation.request) for operation, _ in pairs if operation.request}
    )
    answers = [name for name in needed if any(_answer_type(answer) == name for _, answer in pairs)]
    requests = [name for name in needed if name not in answers]
    if any(operation.lines for operation in document.operations):
        requests.append("Progress")
        requests.sort()
    collections = [name for name in ("Callable", "Mapping", "Sequence") if f"{name}[" in body]
    lines = call("", "from railrules_client._generated.models import ", answers, "") if answers else []
    checked = call(_TAB, "from railrules_client._generated.models import ", requests, "") if requests else []
    comforts = sorted(f"{prefix}{name}" for group, name in _COMFORTS.items() if group in groups for prefix in ("", "Async"))
    head = _HEAD.format(
        comforts=f"from railrules_client._takeoffs import {', '.join(comforts)}\n" if comforts else "",
        title=document.title,
        version=document.version,
        typing=", ".join(["Final", *(["Literal"] if "Literal[" in body else []), "Unpack"]),
        models="\n".join(_imported(lines)) + "\n",
        collections=f"{_TAB}from collections.abc import {', '.join(collections)}\n" if collections else "",
    )
    typing_only = "\n".join(_imported(checked))
    exported = sorted(f"{prefix}{camel(group)}Resource" for group in groups for prefix in ("", "Async"))
    listed = "\n".join(["__all__ = [", *(f'{_TAB}"{name}",' for name in sorted([*exported, "AsyncResources", "Resources"])), "]"])
    gap = "\n" if typing_only else ""
    return f"{head}{typing_only}{gap}\n{body}\n\n\n{listed}\n"


def _imported(lines: list[str]) -> list[str]:
    """Turn the form of a call into the form of an import."""
    if len(lines) == 1:
        return [lines[0].replace("(", "").replace(")", "")]
    return lines
