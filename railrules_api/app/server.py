"""The server process: an ASGI server around the application, its flags in code."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pathlib import Path

    from litestar import Litestar

LOOPBACK = ("127.0.0.1", "::1", "localhost")


def serve(*, host: str, port: int, rulebooks: tuple[Path, ...]) -> None:
    """Run the service until it is told to stop.

    One process: answers are pure, so several copies behind a balancer answer alike.
    """
    import uvicorn  # noqa: PLC0415  only this command needs the server

    uvicorn.run(
        application(rulebooks),
        host=host,
        port=port,
        loop="uvloop",
        http="httptools",
        log_level="info",
        access_log=False,
        server_header=False,
        timeout_keep_alive=30,
        timeout_graceful_shutdown=20,
    )


def application(rulebooks: tuple[Path, ...] = ()) -> Litestar:
    """Build the application as the server runs it.

    Raises:
        CatalogueError: a row of the data or of a rulebook is wrong.
    """
    from railrules_api.api.app import create_app  # noqa: PLC0415  keeps the command line quick to start
    from railrules_api.api.service import start  # noqa: PLC0415

    return create_app(start(rulebooks))
