"""The server: sockets, keys and workers around the application, its flags in code."""

from __future__ import annotations

import contextlib
import ipaddress
import socket
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pathlib import Path

    from litestar import Litestar

    from railrules_api.app.serving.settings import ServerSettings


def is_loopback(host: str) -> bool:
    """Tell whether an address reaches this machine only.

    >>> is_loopback("127.0.0.1"), is_loopback("localhost"), is_loopback("0.0.0.0"), is_loopback("example.org")
    (True, True, False, False)
    """
    if host == "localhost":
        return True
    with contextlib.suppress(ValueError):
        return ipaddress.ip_address(host).is_loopback
    return False


def listening(host: str, port: int, backlog: int) -> socket.socket:
    """Return a socket that listens.

    Raises:
        OSError: the address is taken, or is not one.
    """
    family = socket.getaddrinfo(host, port, type=socket.SOCK_STREAM)[0][0]
    return socket.create_server((host, port), family=family, backlog=backlog)


def serve(  # noqa: PLR0913  the flags of one command
    *,
    host: str,
    port: int,
    management_host: str,
    management_port: int,
    rulebooks: tuple[Path, ...],
    key_file: Path | None,
    settings: ServerSettings,
) -> int:
    """Run the service until it is told to stop; return the exit code.

    Answers are pure, so workers share nothing but counters, and several copies behind a balancer answer alike.

    Raises:
        CatalogueError: a row of the data or of a rulebook is wrong.
        KeysError: the file of keys cannot be used.
        OSError: an address is taken.
        SettingsError: a setting asks for a library that is not there.
    """
    from railrules_api.app.serving import keys, logs  # noqa: PLC0415  only this command needs the server
    from railrules_api.app.serving.board import Board  # noqa: PLC0415
    from railrules_api.app.serving.routes import every_route  # noqa: PLC0415
    from railrules_api.app.serving.supervisor import Supervisor  # noqa: PLC0415
    from railrules_api.app.serving.tuning import tune  # noqa: PLC0415
    from railrules_api.app.serving.worker import tracing_of  # noqa: PLC0415

    known = keys.load(key_file) if key_file else {}
    tracing_of(settings)  # a setting that cannot be kept is told now, not by workers that die
    app, routes = application(rulebooks, settings), every_route()
    tune()
    with listening(host, port, settings.backlog) as listener, listening(management_host, management_port, 64) as management:
        logs.install()
        logs.line(
            "listening",
            host=host,
            port=listener.getsockname()[1],
            management_port=management.getsockname()[1],
            workers=settings.workers,
            keys=len(known),
        )
        board = Board(settings.workers, routes.templates, len(known))
        return Supervisor(app, settings, board, known, routes, listener, management).run()


def application(rulebooks: tuple[Path, ...] = (), settings: ServerSettings | None = None) -> Litestar:
    """Build the application as the server runs it.

    Raises:
        CatalogueError: a row of the data or of a rulebook is wrong.
    """
    from railrules_api.api.app import create_app  # noqa: PLC0415  keeps the command line quick to start
    from railrules_api.api.service import start  # noqa: PLC0415
    from railrules_api.app.serving.settings import ServerSettings, rows  # noqa: PLC0415
    from railrules_api.pages.routes import pages  # noqa: PLC0415

    # the usual settings: what an operator has made of them is not for everybody to read
    return create_app(start(rulebooks, settings), pages(rows(ServerSettings(workers=2))))
