"""The frame that all pages share, and the small pieces of HTML they are made of."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING, Final

from railrules_api import __version__
from railrules_api.drawing.sheet import STYLE_HASH

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

POLICY: Final = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
"""What a page may load: its own files, and drawings that the service has just sent."""
HEADERS: Final = {"Content-Security-Policy": POLICY.replace("style-src 'self'", f"style-src 'self' '{STYLE_HASH}'")}
"""The style of a drawing is let in too: a drawing opened in a tab of its own is held to the policy of the page it came from."""

PLACES: Final = (("/", "Job"), ("/handbook", "Handbook"), ("/docs", "Reference"))
_STATUS: Final = {
    "published": "read in the source",
    "computed": "computed",
    "derived": "worked out",
    "fitted": "fitted by us",
    "from-memory": "from memory",
    "common-practice": "common practice",
}


def page(  # noqa: PLR0913  what a page is made of
    title: str, body: str, *, here: str = "", scripts: Sequence[str] = (), styles: Sequence[str] = (), text: bool = True
) -> bytes:
    """Return a whole page.

    Args:
        title: of the page.
        body: what stands in `main`.
        here: path of the place in the navigation that the page belongs to.
        scripts: names of static scripts.
        styles: names of further static style sheets, before the pages' own.
        text: it is read rather than worked with, so its lines are kept short.
    """
    links = "".join(
        f'<a href="{path}"{" aria-current=" + chr(34) + "page" + chr(34) if path == here else ""}>{name}</a>'
        for path, name in PLACES
    )
    sheets = "".join(f'<link rel="stylesheet" href="/static/{name}">' for name in (*styles, "style.css"))
    loaded = "".join(f'<script src="/static/{name}" defer></script>' for name in scripts)
    kind = ' class="text"' if text else ""
    return (
        '<!doctype html>\n<html lang="en"><head><meta charset="utf-8">'
        '<meta name="viewport" content="width=device-width, initial-scale=1">'
        f'<title>{escape(title)}</title><link rel="icon" href="/static/icon.svg" type="image/svg+xml">{sheets}{loaded}</head>\n'
        '<body><a class="skip" href="#main">Skip to the content</a>'
        '<header class="top"><div class="in"><a class="mark" href="/">railrules</a>'
        f'<nav aria-label="Places">{links}</nav></div><div class="way"></div></header>\n'
        f'<main id="main"{kind}>{body}</main>\n'
        f"<footer><p>railrules {escape(__version__)}. Answers do not replace the railroad's own standards, local codes or "
        'licensed practice. <a href="/openapi.json">OpenAPI document</a></p></footer></body></html>\n'
    ).encode()


def table(caption: str, heads: Sequence[str], rows: Iterable[Sequence[str]], *, right: Sequence[int] = ()) -> str:
    """Return a table whose cells are HTML already; wide ones scroll within themselves, by keyboard too."""

    def cell(index: int, inside: str) -> str:
        return f"<td{' class=' + chr(34) + 'n' + chr(34) if index in right else ''}>{inside}</td>"

    head = "".join(
        f'<th scope="col"{" class=" + chr(34) + "n" + chr(34) if index in right else ""}>{escape(name)}</th>'
        for index, name in enumerate(heads)
    )
    body = "".join(f"<tr>{''.join(cell(index, value) for index, value in enumerate(row))}</tr>" for row in rows)
    return (
        f'<div class="wide" tabindex="0" role="region" aria-label="{escape(caption)}"><table><caption>{escape(caption)}</caption>'
        f"<thead><tr>{head}</tr></thead><tbody>{body}</tbody></table></div>"
    )


def cite(title: str, where: str, status: str) -> str:
    """Return a place in a source as HTML."""
    return f'{escape(title)}, {escape(where)} <span class="tag">{_STATUS[status]}</span>'
