"""The table of pages: paths and what answers them. They are for people and stand in no document."""

from __future__ import annotations

import hashlib
import re
from html import escape
from typing import TYPE_CHECKING, Final

from railrules_api.api.operations import Asked, Operation, Parameter, Reply
from railrules_api.api.problems import ProblemError
from railrules_api.drawing.registry import MEDIA_TYPE
from railrules_api.drawing.sheet import STYLE_HASH
from railrules_api.pages import job_files, problem_pages, rule_pages, worked_relay
from railrules_api.pages.assets import CACHE, TYPES, asset, read
from railrules_api.pages.front import front
from railrules_api.pages.layout import HEADERS, cite, page, table

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from railrules_api.api.service import Service

    Settings = Sequence[tuple[str, str, str, str]]

_SHEET: Final = re.compile(r"[1-9][0-9]{0,3}")
HTML: Final = "text/html"  # the framework adds the character set
_DRAWN: Final = {"Content-Security-Policy": f"default-src 'none'; style-src '{STYLE_HASH}'; frame-ancestors 'none'"}
_FILE_TYPES: Final = tuple(dict.fromkeys(media_type.partition(";")[0] for media_type in TYPES.values()))
_TEXTS: Final = {
    "counting": "Counting rules · handbook",
    "rulebooks": "How to write a rulebook · handbook",
    "calling": "How to call the service · handbook",
    "running": "How to run the service · handbook",
}


def _reply(body: bytes, media_type: str = HTML) -> Reply:
    headers = _DRAWN if media_type == MEDIA_TYPE else HEADERS
    return Reply(body, media_type=media_type, etag=f'"{hashlib.sha256(body).hexdigest()[:24]}"', cache=CACHE, headers=headers)


def _found(body: bytes | None, media_type: str = HTML) -> Reply:
    if body is None:
        raise ProblemError(404, "no page at this path; GET /handbook lists them")
    return _reply(body, media_type)


def _rulebook_table(service: Service) -> str:
    rows = [
        (
            f"<code>{escape(entry.id)}</code>",
            escape(entry.about),
            escape(f"{entry.printed} {entry.unit}".strip()),
            cite(service.catalogue.sources[entry.source].title, entry.where, entry.status),
        )
        for entry in service.house.defaults.values()
    ]
    return table(f"Rulebook {service.house.id}, {service.house.edition}", ("id", "stands in for", "value", "source"), rows)


def _settings_table(settings: Settings) -> str:
    rows = [(f"<code>{escape(name)}</code>", *map(escape, (value, unit, about))) for name, value, unit, about in settings]
    return table("Settings of the server", ("variable", "usually", "unit", "what it does"), rows, right=(1,))


def _text(service: Service, name: str, settings: Settings) -> bytes:
    body = read(f"text/{name}.html").decode()
    if name == "rulebooks":
        body += _rulebook_table(service)
    elif name == "running":
        body += _settings_table(settings)
    return page(_TEXTS[name], body, here="/handbook", text=name not in {"rulebooks", "running"})


def _docs() -> bytes:
    body = read("text/docs.html").decode()
    scripts, styles = ("swagger-ui-bundle.js", "docs.js"), ("swagger-ui.css", "docs.css")
    return page("Reference", body, here="/docs", scripts=scripts, styles=styles, text=False)


def _handbook(service: Service, name: str, settings: Settings) -> bytes | None:
    return _text(service, name, settings) if name in _TEXTS else None


def _chart(service: Service, number: str) -> bytes | None:
    if not _SHEET.fullmatch(number):
        return None
    found = worked_relay.chart(service, int(number))
    return None if found is None else found.encode()


def _asset(asked: Asked) -> Reply:
    found = asset(asked.path["name"])
    if found is None:
        raise ProblemError(404, "no file of this name")
    return found


def _page(
    path: str,
    name: str,
    answer: Callable[[Service, Asked], Reply],
    *,
    media_types: tuple[str, ...] = ("text/html",),
    slow: bool = False,
) -> Operation:
    parameters = tuple(
        Parameter(part[1:-1], "path", "Which.", {"type": "string", "minLength": 1, "maxLength": 80})
        for part in path.split("/")
        if part.startswith("{")
    )
    return Operation(
        method="GET", path=path, id=name, tag="pages", summary=name, description="For people.", answer=None, handler=answer,
        parameters=parameters, media_types=media_types, slow=slow,
    )  # fmt: skip


def pages(settings: Settings = ()) -> tuple[Operation, ...]:
    """Return every page as an operation.

    Args:
        settings: variable, usual value, unit and meaning of each setting of the server that shows the pages.
    """
    return (
        _page("/", "pageFront", lambda service, _asked: _reply(front(service))),
        job_files.OPERATION,
        _page("/docs", "pageReference", lambda _service, _asked: _reply(_docs())),
        _page("/handbook", "pageHandbook", lambda service, _asked: _reply(rule_pages.index(service))),
        _page("/handbook/{name}", "pageText", lambda service, asked: _found(_handbook(service, asked.path["name"], settings))),
        _page("/handbook/rules/{id}", "pageRule", lambda service, asked: _found(rule_pages.rule_page(service, asked.path["id"]))),
        _page(
            "/handbook/worked-relay", "pageRelay", lambda service, _asked: _reply(worked_relay.worked_relay(service)), slow=True
        ),
        _page(
            "/handbook/worked-relay/{sheet}",
            "pageChart",
            lambda service, asked: _found(_chart(service, asked.path["sheet"]), MEDIA_TYPE),
            media_types=(MEDIA_TYPE,),
            slow=True,
        ),
        _page("/problems", "pageProblems", lambda _service, _asked: _reply(problem_pages.index())),
        _page("/problems/{slug}", "pageProblem", lambda _service, asked: _found(problem_pages.problem_page(asked.path["slug"]))),
        _page("/static/{name}", "pageFile", lambda _service, asked: _asset(asked), media_types=_FILE_TYPES),
    )
