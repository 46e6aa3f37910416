"""From the words of a command line to an exit code."""

from __future__ import annotations

import argparse
import importlib
import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING, cast

from railrules_client import InProcessError, ProblemError, RailrulesError, UnreadableAnswerError, __version__
from railrules_client.command_line import commands
from railrules_client.command_line.commands import ANSWERED_NOT, BAD_INPUT, GOOD, BadInputError
from railrules_client.jobs import JobFileError

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

_CODES = "exit codes: 0 good; 1 a check fails; 2 bad input; 3 the service did not answer"
_FILE = {"bash": "_shtab_compgen_files", "zsh": "_files", "fish": "__fish_complete_path"}


def _shared() -> dict[str, argparse.ArgumentParser]:
    """Return the options that several commands have."""
    asking = argparse.ArgumentParser(add_help=False)
    asking.add_argument(
        "--server",
        metavar="URL",
        help="address of a service; RAILRULES_URL when left out, and without that none: in this process",
    )
    asking.add_argument(
        "--rulebook", type=Path, action="append", default=[], metavar="FILE",
        help="a house's rulebook (TOML) for the service in this process; the last is in force",
    )  # fmt: skip
    json = argparse.ArgumentParser(add_help=False)
    json.add_argument("--json", action="store_true", help="print JSON")
    reading = argparse.ArgumentParser(add_help=False)
    reading.add_argument(
        "--segments", type=Path, nargs="+", default=[], metavar="FILE",
        help="spreadsheets (CSV, XLSX) with the segments and their curves, features, left_out, custom",
    )  # fmt: skip
    reading.add_argument(
        "--set", dest="changes", action="append", default=[], metavar="FIELD=VALUE",
        help="change a field of the job: segments.*.new.section=115RE, temperatures.hottest_rail='126 degF'",
    )  # fmt: skip
    reading.add_argument("--units", choices=("us", "si"), help="units of the answer, in place of the job's own")
    return {"asking": asking, "json": json, "reading": reading}


def parser() -> argparse.ArgumentParser:
    """Return the parser of the command."""
    return _parsers()[0]


def _parsers() -> list[argparse.ArgumentParser]:
    """Return the parser of the command, and then those of its parts."""
    found = argparse.ArgumentParser(
        prog="railrules",
        description="Rail relay quantities and welded rail checks from named rules with named sources.",
        epilog=_CODES,
    )
    found.add_argument("--version", action="version", version=f"railrules {__version__}")
    shared = _shared()
    parsers = [found]
    every = found.add_subparsers(required=True, metavar="COMMAND")

    def command(name: str, about: str, run: Callable[[argparse.Namespace], int], *parts: str) -> argparse.ArgumentParser:
        made = every.add_parser(name, help=about, description=about, epilog=_CODES, parents=[shared[part] for part in parts])
        made.set_defaults(run=run)
        parsers.append(made)
        return made

    def files(made: argparse.ArgumentParser, name: str, about: str, **settings: str) -> None:
        made.add_argument(name, type=Path, help=about, metavar=name.upper(), **settings)  # type: ignore[arg-type]  # pyright: ignore[reportArgumentType]

    takeoff = command(
        "takeoff", "Answer a relay job: quantities, orders, checks, money.", commands.takeoff, "asking", "json", "reading"
    )
    files(takeoff, "job", "the job: TOML, JSON, CSV or XLSX")
    takeoff.add_argument("--output", choices=("table", "json", "csv"), default="table", help="form of the answer (table)")
    takeoff.add_argument("--xlsx", type=Path, metavar="FILE", help="write a workbook too, a sheet a table")
    takeoff.add_argument("--explain", action="store_true", default=None, help="add every formula with its numbers (json)")
    takeoff.add_argument("--strict", action="store_true", help="exit with 1 when a check fails")

    check = command(
        "check", "Tell whether a job's checks hold; exits with 1 when one fails.", commands.check, "asking", "json", "reading"
    )
    files(check, "job", "the job: TOML, JSON, CSV or XLSX")
    check.add_argument("--strict", action="store_true", help="a check that lacks an input fails too")

    compare = command("compare", "Put two jobs side by side, line by line.", commands.compare, "asking", "json", "reading")
    files(compare, "first", "a job: TOML, JSON, CSV or XLSX")
    files(compare, "second", "the other; when left out, the first as --set changes it", nargs="?")
    compare.add_argument("--all", action="store_true", help="every line, also those that stay the same")
    compare.add_argument("--csv", type=Path, metavar="FILE", help="write the orders side by side")
    compare.add_argument("--xlsx", type=Path, metavar="FILE", help="write a workbook, a sheet a table")
    compare.add_argument(
        "--strict", action="store_true", help="exit with 1 when a check fails in the second that did not in the first"
    )

    bulk = command("bulk", "Answer many jobs, one a line (NDJSON), with progress on a terminal.", commands.bulk, "asking")
    files(bulk, "jobs", "a file with a job a line; - for standard input")
    bulk.add_argument("--out", type=Path, metavar="FILE", help="where the answers go, a line each; standard output when left out")
    bulk.add_argument("--totals", action="store_true", help="only the totals by item and product, and the jobs that were refused")
    bulk.add_argument("--units", choices=("us", "si"), help="units of the totals")
    bulk.add_argument("--connections", type=int, default=2, metavar="N", help="requests on the way at once (2)")

    job = command("job", "Print a job file as the request that the service takes (JSON).", commands.job, "reading")
    files(job, "job", "the job: TOML, JSON, CSV or XLSX")

    command("sections", "List the rail sections.", commands.sections, "asking", "json")
    section = command("section", "Show one rail section with the source of every value.", commands.section, "asking", "json")
    section.add_argument("id", help="id of the section, e.g. 136RE")
    command("rules", "List the rules.", commands.rules, "asking", "json")
    convert = command("convert", "Convert a quantity, exactly: railrules convert '2-1/4 in' mm", commands.convert, "json")
    convert.add_argument("quantity", nargs="+", help="a number with its unit: 39 ft, '2-1/4 in', '95 degF', 136 lb/yd")
    convert.add_argument("unit", help="the unit wanted")
    completion = command("completion", "Print the script that completes this command in a shell.", _completion)
    completion.add_argument("shell", choices=("bash", "zsh", "fish"), help="the shell")
    return parsers


def _completion(arguments: argparse.Namespace) -> int:
    """Print a completion script."""
    try:
        library = importlib.import_module("shtab")
    except ModuleNotFoundError as error:
        told = "completion needs the extra `completion`: pip install 'railrules-client[completion]'"
        raise BadInputError(told) from error
    parsers = _parsers()
    for found in parsers:
        for action in found._actions:  # noqa: SLF001  # pyright: ignore[reportPrivateUsage]  argparse has no public list
            if action.type is Path:
                action.complete = _FILE  # type: ignore[attr-defined]  # pyright: ignore[reportAttributeAccessIssue]  shtab reads it
    complete = cast("Callable[..., str]", library.complete)
    print(complete(parsers[0], shell=cast("str", arguments.shell)))
    return GOOD


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command line.

    Args:
        arguments: the words behind the command; those of the process when left out.

    Returns:
        0 when good, 1 when a check fails, 2 on bad input, 3 when the service did not answer.
    """
    chosen = parser().parse_args(arguments)
    run = cast("Callable[[argparse.Namespace], int]", chosen.run)
    try:
        return run(chosen)
    except BrokenPipeError:  # the reader has what he wanted, as with `| head`
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return GOOD
    except (JobFileError, BadInputError, InProcessError) as error:
        print(error, file=sys.stderr)
        return BAD_INPUT
    except UnreadableAnswerError as error:
        print(error, file=sys.stderr)
        return ANSWERED_NOT
    except ProblemError as error:
        print(f"refused: {error.message}", file=sys.stderr)
        return BAD_INPUT if error.status < commands.SERVER_ERROR and error.status not in commands.PASSING else ANSWERED_NOT
    except RailrulesError as error:
        print(error, file=sys.stderr)
        return ANSWERED_NOT
