"""The static files of the pages: a closed list, each with a validator."""

from __future__ import annotations

import hashlib
from functools import cache
from importlib.resources import files
from typing import Final

from railrules_api.api.operations import Reply

TYPES: Final = {
    "style.css": "text/css",
    "front.js": "text/javascript",
    "front-answer.js": "text/javascript",
    "front-files.js": "text/javascript",
    "docs.js": "text/javascript",
    "docs.css": "text/css",
    "icon.svg": "image/svg+xml",
    "demo-job.json": "application/json",
    "swagger-ui-bundle.js": "text/javascript",
    "swagger-ui.css": "text/css",
    "swagger-ui-licence.txt": "text/plain",
}
_FOLDERS: Final = {
    "swagger-ui-bundle.js": "swagger/swagger-ui-bundle.js",
    "swagger-ui.css": "swagger/swagger-ui.css",
    "swagger-ui-licence.txt": "swagger/LICENSE",
}
CACHE: Final = "public, max-age=3600, stale-while-revalidate=86400"


def read(name: str) -> bytes:
    """Return a packaged file of the pages."""
    return files("railrules_api.pages").joinpath(name).read_bytes()


@cache
def asset(name: str) -> Reply | None:
    """Return a static file as a reply; None where there is none of the name."""
    media_type = TYPES.get(name)
    if media_type is None:
        return None
    body = read(f"static/{_FOLDERS.get(name, name)}")
    return Reply(body, media_type=media_type, etag=f'"{hashlib.sha256(body).hexdigest()[:24]}"', cache=CACHE)
