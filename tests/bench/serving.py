"""Applications to measure, each in a process of its own: `python -m tests.bench.serving NAME PORT`."""

from __future__ import annotations

import sys
from typing import Any

import uvicorn
from litestar import Litestar, Response, get

BODY = b'{"status":"up","what":"static bytes, as long as a short answer is; nothing is looked up, checked or worked out for it"}'


@get("/static", media_type="application/json", sync_to_thread=False)
def static() -> Response[bytes]:
    """Answer with the same bytes whatever happens."""
    return Response(BODY, media_type="application/json")


def service_app() -> Litestar:
    """Return the service with one handler of static bytes beside its own."""
    from railrules_api.app.serving.server import application  # noqa: PLC0415  the bare application starts without it
    from railrules_api.app.serving.tuning import tune  # noqa: PLC0415

    app = application()
    tune()
    app.register(static)
    return app


def bare_app() -> Litestar:
    """Return a Litestar application that does nothing else."""
    return Litestar([static], openapi_config=None, logging_config=None)


def other_app() -> Any:
    """Return the takeoff as FastAPI and pydantic serve it."""
    from tests.bench.other_stack import app  # noqa: PLC0415  it may not be installed

    return app()


def main() -> None:
    """Serve one of them."""
    name, port = sys.argv[1:]
    app = {"service": service_app, "bare": bare_app, "other": other_app}[name]()
    uvicorn.run(app, port=int(port), loop="uvloop", http="httptools", ws="none", log_level="error", access_log=False)


if __name__ == "__main__":
    main()
