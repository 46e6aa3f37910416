"""How a caller finds out what there is: the document at `/openapi.json` and the API catalogue of RFC 9727."""

from __future__ import annotations

import hashlib
import threading
from typing import TYPE_CHECKING

import msgspec

from railrules_api.api import document
from railrules_api.api.operations import Asked, Operation, Reply

if TYPE_CHECKING:
    from railrules_api.api.service import Service

CATALOGUE_PATH = "/.well-known/api-catalog"
CATALOGUE_TYPE = 'application/linkset+json; profile="https://www.rfc-editor.org/info/rfc9727"'
_CACHE = "public, max-age=3600, stale-while-revalidate=86400"


def _etag(body: bytes) -> str:
    return f'"{hashlib.sha256(body).hexdigest()[:24]}"'


class _Document:
    """The document's bytes, made when they are first asked for: working every example takes a second or two."""

    def __init__(self) -> None:
        self._reply: Reply | None = None
        self._lock = threading.Lock()

    def __call__(self, service: Service, _asked: Asked) -> Reply:
        with self._lock:
            if self._reply is None:
                body = document.text(service).encode()
                self._reply = Reply(body, etag=_etag(body), cache=_CACHE)
            return self._reply


def _linkset() -> Reply:
    api = {
        "anchor": "/",
        "service-desc": [{"href": "/openapi.json", "type": "application/json", "title": "OpenAPI 3.1 document"}],
        "service-meta": [{"href": "/v1/rules", "type": "application/json", "title": "Registry of rules with their sources"}],
        "status": [{"href": "/health/ready", "type": "application/json"}],
        "license": [{"href": "https://www.apache.org/licenses/LICENSE-2.0", "type": "text/html"}],
    }
    catalogue = {"anchor": CATALOGUE_PATH, "item": [{"href": "/"}]}
    body = msgspec.json.encode({"linkset": [catalogue, api]})
    link = f'<{CATALOGUE_PATH}>; rel="api-catalog"; type="application/linkset+json"'
    return Reply(body, media_type=CATALOGUE_TYPE, etag=_etag(body), cache=_CACHE, headers={"Link": link})


def operations() -> tuple[Operation, ...]:
    """Return the operations that tell of the others; the document, which is one of them, does not hold them."""
    linkset = _linkset()
    return (
        Operation(
            method="GET", path="/openapi.json", id="getDocument", tag="service", summary="The OpenAPI document",
            description="What this service answers.", answer=None, handler=_Document(), slow=True,
        ),
        Operation(
            method="GET", path=CATALOGUE_PATH, id="getApiCatalog", tag="service", summary="The API catalogue",
            description="Links to the document, the registry and the state of the service.", answer=None,
            handler=lambda _service, _asked: linkset, media_types=("application/linkset+json", "application/json"),
        ),
    )  # fmt: skip
