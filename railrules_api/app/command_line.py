"""The command `railrules-server`: serve, spec, sample. What asks the service is `railrules`, the command of the client."""

from __future__ import annotations

import argparse
import json
import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from railrules_api import __version__

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from railrules_api.api.service import Service

GOOD, BAD_INPUT = 0, 2


def _service(arguments: argparse.Namespace) -> Service:
    from railrules_api.api.service import start  # noqa: PLC0415  --help and --version need no catalogue

    return start(arguments.rulebook)


def _serve(arguments: argparse.Namespace) -> int:
    from railrules_api.app.serving import keys  # noqa: PLC0415  only this command needs the server
    from railrules_api.app.serving.server import is_loopback, serve  # noqa: PLC0415
    from railrules_api.app.serving.settings import SettingsError, from_environment, rows  # noqa: PLC0415

    try:
        settings = from_environment(os.environ)
        if arguments.settings:
            for variable, value, unit, about in rows(settings):
                print(f"{variable:36}{value:>12} {unit:10} {about}")
            return GOOD
        if arguments.new_key:
            key, entry = keys.made(arguments.new_key)
            print(f"the key, shown this once: {key}\nits entry for the file of keys:\n\n{entry}")
            return GOOD
        outside = [host for host in (arguments.host, arguments.management_host) if not is_loopback(host)]
        # keys protect the API only: the operator's own listener has none, so it always takes the flag
        if outside and not arguments.open_to_network and (arguments.keys is None or arguments.management_host in outside):
            print(f"{outside[-1]} is not a loopback address; add --open-to-network if that is meant", file=sys.stderr)
            return BAD_INPUT
        return serve(
            host=arguments.host,
            port=arguments.port,
            management_host=arguments.management_host,
            management_port=arguments.management_port,
            rulebooks=tuple(arguments.rulebook),
            key_file=arguments.keys,
            settings=settings,
        )
    except (SettingsError, keys.KeysError, OSError) as error:
        print(error, file=sys.stderr)
        return BAD_INPUT


def _sample(arguments: argparse.Namespace) -> int:
    from railrules_api.app import sample  # noqa: PLC0415

    if arguments.lines:
        for job in sample.network(arguments.segments, arguments.seed):
            print(json.dumps(job, separators=(",", ":")))
    elif arguments.segments > sample.MOST:
        print(f"one job takes {sample.MOST} segments at most; add --lines for a job a line", file=sys.stderr)
        return BAD_INPUT
    else:
        print(json.dumps(sample.job(arguments.segments, arguments.seed)))
    return GOOD


def _count(text: str) -> int:
    """Return a whole number above zero.

    Raises:
        ValueError: it is not one; the parser says so.
    """
    count = int(text)
    if count < 1:
        raise ValueError(text)
    return count


def _spec(arguments: argparse.Namespace) -> int:
    from railrules_api.api.document import text  # noqa: PLC0415

    sys.stdout.write(text(_service(arguments)))
    return GOOD


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="railrules-server", description="The service: rail relay quantities and welded rail checks over HTTP."
    )
    parser.add_argument("--version", action="version", version=f"railrules-server {__version__}")
    shared = argparse.ArgumentParser(add_help=False)
    shared.add_argument(
        "--rulebook",
        type=Path,
        action="append",
        default=[],
        metavar="FILE",
        help="a house's rulebook (TOML); the last is in force",
    )
    commands = parser.add_subparsers(required=True, metavar="COMMAND")

    def command(name: str, about: str, run: Callable[[argparse.Namespace], int]) -> argparse.ArgumentParser:
        found = commands.add_parser(name, help=about, description=about, parents=[shared])
        found.set_defaults(run=run)
        return found

    serving = command("serve", "Run the service.", _serve)
    serving.add_argument("--host", default="127.0.0.1", help="address to listen on (127.0.0.1)")
    serving.add_argument("--port", type=int, default=8000, help="port to listen on (8000)")
    serving.add_argument("--management-host", default="127.0.0.1", help="address for health and metrics (127.0.0.1)")
    serving.add_argument("--management-port", type=int, default=8001, help="port for health and metrics (8001)")
    serving.add_argument("--keys", type=Path, metavar="FILE", help="a file of API keys (TOML); without it the service is open")
    serving.add_argument("--new-key", metavar="NAME", help="make an API key, print it and its entry, and stop")
    serving.add_argument("--settings", action="store_true", help="list the settings (environment variables) and stop")
    serving.add_argument("--open-to-network", action="store_true", help="allow an address that is not a loopback one")
    command("spec", "Print the OpenAPI document.", _spec)
    sample = command("sample", "Print an invented relay job, or a network of them, made from a seed.", _sample)
    sample.add_argument("--segments", type=_count, default=10, help="segments in all (10)")
    sample.add_argument("--seed", type=int, default=1, help="number that the network is made from (1)")
    sample.add_argument("--lines", action="store_true", help="a network: a job a line, as POST /v1/takeoffs/bulk reads them")
    return parser


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command line; return 0 when good, 2 on bad input."""
    from railrules_api.catalogue import CatalogueError  # noqa: PLC0415  --help and --version need no catalogue

    chosen = _parser().parse_args(arguments)
    try:
        code: int = chosen.run(chosen)
    except CatalogueError as error:
        print(error, file=sys.stderr)
        return BAD_INPUT
    return code
