"""Reading of the HTTP headers that decide an answer: Accept, Content-Type, If-None-Match."""

from __future__ import annotations


def media_type_of(header: str) -> str:
    """Return the bare media type of a Content-Type header, lower case."""
    return header.partition(";")[0].strip().lower()


def _quality(parameters: list[str]) -> float:
    for parameter in parameters:
        name, _, value = parameter.strip().partition("=")
        if name.strip().lower() == "q":
            try:
                return float(value)
            except ValueError:
                return 0.0
    return 1.0


def qualities(header: str) -> dict[str, float]:
    """Return the quality of each item of an Accept-like header, lower case, the last of two of one name."""
    found: dict[str, float] = {}
    for item in header.split(","):
        name, *parameters = item.split(";")
        if name.strip():
            found[name.strip().lower()] = _quality(parameters)
    return found


def accepted(header: str, offered: tuple[str, ...]) -> str | None:
    """Return the offered media type an Accept header likes best, the earlier offer on a tie; None when it likes none.

    >>> accepted("text/csv;q=0.9, application/*", ("application/json", "text/csv"))
    'application/json'
    """
    best: tuple[float, str] | None = None
    ranges = qualities(header)
    for media_type in offered:
        group = media_type.partition("/")[0] + "/*"
        quality = next((ranges[name] for name in (media_type, group, "*/*") if name in ranges), 0.0 if ranges else 1.0)
        if quality > 0.0 and (best is None or quality > best[0]):
            best = (quality, media_type)
    return best[1] if best else None


def etag_matches(header: str, etag: str) -> bool:
    """Tell whether an If-None-Match header names the validator, compared weakly as RFC 9110 asks."""
    tags = [tag.strip() for tag in header.split(",")]
    return tags == ["*"] or etag in tags or f"W/{etag}" in tags
