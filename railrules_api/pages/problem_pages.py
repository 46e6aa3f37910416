"""What the `type` of a problem leads to: what it means and what to do about it."""

from __future__ import annotations

from html import escape
from typing import Final

from railrules_api.api.problems import FURTHER, TITLES
from railrules_api.pages.layout import page

ADVICE: Final = {
    "malformed": (
        "The body is not JSON, or a query parameter is unknown, stands twice or has a value that it cannot have.",
        "Read `detail`: it names the place. A body must be one JSON object in UTF-8, without NaN or Infinity.",
    ),
    "not-found": (
        "No resource has this path, or no row this id.",
        "Near ids stand in `detail`. The OpenAPI document lists every path.",
    ),
    "method-not-allowed": (
        "The resource is there but does not know the method.",
        "The `Allow` header lists those it knows: lists and rows are read with GET, calculations are asked with POST.",
    ),
    "not-acceptable": (
        "The `Accept` header names no form that the answer comes in.",
        "`detail` lists the forms. Leave the header out to get the usual one.",
    ),
    "too-large": ("The body is larger than the service reads.", "Split the job, or let the operator raise the limit."),
    "unsupported-media-type": (
        "The body is not sent as JSON.",
        "Set `Content-Type: application/json`. Forms and files are not read.",
    ),
    "refused": (
        "The request is understood, but values in it are missing, of the wrong kind, out of range, or contradict each other.",
        (
            "`errors` lists every fault: a JSON pointer to the value, what is wrong with it, what was sent, and the allowed "
            "range in the unit that was sent. Where a catalogue id is not known, `allowed` has the nearest ones."
        ),
    ),
    "idempotency-key-malformed": (
        "The header `Idempotency-Key` is not one string between quotes, or stands twice.",
        'Send it once: `"` and 1 to 128 of `A-Z a-z 0-9 . _ ~ -` and `"`, or `"sha-256:` and the SHA-256 of the body and `"`.',
    ),
    "idempotency-key-of-another-request": (
        "The `Idempotency-Key` says that it is the SHA-256 of the body, and it is not: the body is another one, or was changed.",
        "Send the body again with its own key. Nothing is kept under a key, so no other request is in the way.",
    ),
    "too-many-requests": ("More requests came than the service takes.", "Wait as long as `Retry-After` says and send it again."),
    "internal": (
        "The service failed on this request. The fault is ours.",
        "Sending it again gives the same. Report the request and the `X-Request-Id` of the answer.",
    ),
    "unavailable": ("The service cannot take the request now.", "Wait as long as `Retry-After` says and send it again."),
}


def _marked(words: str) -> str:
    """Return words with what stands between backquotes as code."""
    pieces = escape(words).split("`")
    return "".join(f"<code>{piece}</code>" if index % 2 else piece for index, piece in enumerate(pieces))


def _kinds() -> dict[str, tuple[int, str]]:
    """Return status and title of every kind of problem, by slug."""
    return {slug: (status, title) for status, (slug, title) in TITLES.items()} | dict(FURTHER)


def index() -> bytes:
    """Return the list of problems."""
    rows = "".join(
        f'<li><a href="/problems/{slug}">{escape(title)}</a> <code>{status}</code></li>'
        for slug, (status, title) in sorted(_kinds().items(), key=lambda kind: kind[1][0])
    )
    body = (
        '<p class="soft small"><a href="/handbook">Handbook</a> / problems</p><h1>Problems</h1>'
        '<p class="lead">Whatever fails, the '
        "answer is one problem (RFC 9457), <code>application/problem+json</code>, and its <code>type</code> leads here.</p>"
        f"<ul>{rows}</ul>"
    )
    return page("Problems", body, here="/handbook")


def problem_page(slug: str) -> bytes | None:
    """Return the page of a kind of problem; None where there is no such kind."""
    found = _kinds().get(slug)
    if found is None:
        return None
    status, title = found
    means, do = ADVICE.get(slug, ("The request failed.", "Read `detail`."))
    body = (
        f'<p class="soft small"><a href="/problems">Problems</a> / <code>{slug}</code></p><h1>{escape(title)}</h1>'
        f'<p class="lead">HTTP status {status}</p><h2>What it means</h2><p>{_marked(means)}</p>'
        f"<h2>What to do</h2><p>{_marked(do)}</p>"
    )
    return page(f"Problem: {title}", body, here="/handbook")
