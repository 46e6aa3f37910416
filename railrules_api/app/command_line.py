"""The command `railrules`: serve, takeoff, sections, section, rules, spec, sample."""

from __future__ import annotations

import argparse
import json
import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

from railrules_api import __version__

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from railrules_api.api.service import Service

GOOD, CHECK_FAILS, BAD_INPUT = 0, 1, 2


def _service(arguments: argparse.Namespace) -> Service:
    from railrules_api.api.service import start  # noqa: PLC0415  --help and --version need no catalogue

    return start(arguments.rulebook)


def _serve(arguments: argparse.Namespace) -> int:
    from railrules_api.app.serving import keys  # noqa: PLC0415  only this command needs the server
    from railrules_api.app.serving.server import is_loopback, serve  # noqa: PLC0415
    from railrules_api.app.serving.settings import SettingsError, from_environment, rows  # noqa: PLC0415
    from railrules_api.app.tables import table  # noqa: PLC0415

    try:
        settings = from_environment(os.environ)
        if arguments.settings:
            print(table(("variable", "value", "unit", "what it does"), rows(settings), right=(1,)))
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


def _takeoff(arguments: argparse.Namespace) -> int:
    from railrules_api.api.calculations import answer, answer_csv  # noqa: PLC0415
    from railrules_api.api.problems import ProblemError  # noqa: PLC0415
    from railrules_api.api.resources import calculation_of  # noqa: PLC0415
    from railrules_api.app import job_file, report, segment_files  # noqa: PLC0415

    table = None
    if arguments.segments:
        body, table = segment_files.job(arguments.job, arguments.segments)
    else:
        body = job_file.job(arguments.job)
    for name in ("units", "explain"):
        if getattr(arguments, name) is not None:
            body[name] = getattr(arguments, name)
    encoded = json.dumps(body).encode()
    service, resource = _service(arguments), calculation_of("takeoffs")
    try:
        if arguments.output == "csv":
            sys.stdout.write(answer_csv(resource, encoded, service).decode().replace("\r\n", "\n"))
            return GOOD
        text = answer(resource, encoded, service).decode()
    except ProblemError as problem:
        if table is None:
            raise
        print(f"refused: {problem.detail}", file=sys.stderr)
        for fault in problem.faults:
            print(f"  {table.where(fault.pointer) or fault.pointer or '/'}: {fault.detail}", file=sys.stderr)
        return BAD_INPUT
    found: dict[str, Any] = json.loads(text)
    print(text if arguments.output == "json" else report.render(found))
    failed = any(item["check"]["verdict"] == "fails" for item in found["result"]["checks"])
    return CHECK_FAILS if failed and arguments.strict else GOOD


def _sections(arguments: argparse.Namespace) -> int:
    from railrules_api.app.tables import number, table  # noqa: PLC0415

    rows = [
        (
            row.id,
            row.title,
            *(
                "" if (value := row.values.get(column)) is None else f"{value.printed} {value.unit}"
                for column in ("mass_per_length", "height", "base_width", "area")
            ),
            ", ".join(row.texts.get("standard", ())),
        )
        for row in _service(arguments).catalogue.tables["rail-sections"].rows.values()
    ]
    print(table(("id", "name", "mass", "height", "base", "area", "standard"), rows))
    print(f"{number(len(rows))} sections; `railrules section ID` shows one with the source of every value")
    return GOOD


def _section(arguments: argparse.Namespace) -> int:
    from railrules_api.api.calculations import answer  # noqa: PLC0415
    from railrules_api.api.resources import calculation_of  # noqa: PLC0415
    from railrules_api.app.tables import number, table  # noqa: PLC0415

    service = _service(arguments)
    catalogue = service.catalogue
    row = catalogue.row("rail-sections", arguments.id)
    if row is None:
        near = ", ".join(catalogue.near("rail-sections", arguments.id))
        print(f"no section {arguments.id!r}" + (f"; near: {near}" if near else ""), file=sys.stderr)
        return BAD_INPUT
    rows = [
        (name, f"{value.printed} {value.unit}", value.status, f"{catalogue.sources[value.source].title}, {value.where}")
        for name, value in row.values.items()
    ]
    print(row.title)
    print(table(("property", "value", "status", "source"), rows))
    if row.notes:
        print(row.notes)
    profile = catalogue.profiles.get(row.id)
    if profile is None:
        print("\nIts drawing is not known, so nothing is computed.")
        return GOOD
    units = "us" if profile.row.unit == "in" else "si"
    body = json.dumps({"section": row.id, "units": units, "torsion": True}).encode()
    found: dict[str, Any] = json.loads(answer(calculation_of("sections.properties"), body, service))["result"]
    print("\nComputed from the outline, beside what is printed")
    compared = [
        (
            item["property"],
            f"{number(item['printed']['value'], 4)} {item['printed']['unit']}",
            f"{number(item['computed']['value'], 4)} {item['computed']['unit']}",
            f"{100 * item['difference']:+.2f} %",
            "" if item["agrees"] else "apart",
        )
        for item in found["comparison"]
    ]
    print(table(("property", "printed", "computed", "difference", ""), compared, right=(1, 2, 3)))
    for note in found["notes"]:
        print(note)
    twisting = found["section"]["torsion"]
    constant, centre = (
        f"{number(twisting[name]['value'], 3)} {twisting[name]['unit']}" for name in ("torsion_constant", "shear_centre")
    )
    print(
        f"torsion constant {constant}, shear centre {centre} above the base; two divisions of the edge lie "
        f"{100 * twisting['relative_error']:.1f} % apart before extrapolation"
    )
    print("\nMeasures of the outline")
    places = [
        (group, origin.status, f"{catalogue.sources[origin.source].title}, {origin.where}", origin.note)
        for group, origin in profile.row.origins.items()
    ]
    print(table(("group", "status", "source", "note"), places))
    return GOOD


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


def _rules(_arguments: argparse.Namespace) -> int:
    from railrules_api.app.tables import table  # noqa: PLC0415
    from railrules_api.rules.registry import RESOURCES  # noqa: PLC0415

    print(table(("id", "answers", "resource"), [(rule.id, rule.title, f"/v1/{rule.path}") for rule in RESOURCES]))
    return GOOD


def _spec(arguments: argparse.Namespace) -> int:
    from railrules_api.api.document import text  # noqa: PLC0415

    sys.stdout.write(text(_service(arguments)))
    return GOOD


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="railrules", description="Rail relay quantities and welded rail checks from named rules with named sources."
    )
    parser.add_argument("--version", action="version", version=f"railrules {__version__}")
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
    takeoff = command("takeoff", "Answer a relay job from a TOML or JSON file.", _takeoff)
    takeoff.add_argument("job", type=Path, help="the job file")
    takeoff.add_argument(
        "--segments",
        type=Path,
        nargs="+",
        default=[],
        metavar="FILE",
        help="segments from a CSV file or XLSX workbook, and further CSV files named curves, features, left_out or custom",
    )
    takeoff.add_argument("--output", choices=("table", "json", "csv"), default="table", help="form of the answer (table)")
    takeoff.add_argument("--units", choices=("us", "si"), help="units of the answer, in place of the job's own")
    takeoff.add_argument("--explain", action="store_true", default=None, help="add every formula with its numbers (json)")
    takeoff.add_argument("--strict", action="store_true", help="exit with 1 when a check fails")
    command("sections", "List the rail sections.", _sections)
    section = command("section", "Show one rail section with the source of every value.", _section)
    section.add_argument("id", help="id of the section, e.g. 136RE")
    command("rules", "List the rules.", _rules)
    command("spec", "Print the OpenAPI document.", _spec)
    sample = command("sample", "Print an invented relay job, or a network of them, made from a seed.", _sample)
    sample.add_argument("--segments", type=_count, default=10, help="segments in all (10)")
    sample.add_argument("--seed", type=int, default=1, help="number that the network is made from (1)")
    sample.add_argument("--lines", action="store_true", help="a network: a job a line, as POST /v1/takeoffs/bulk reads them")
    return parser


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command line; return 0 when good, 1 when a check fails under --strict, 2 on bad input."""
    from railrules_api.api.problems import ProblemError  # noqa: PLC0415
    from railrules_api.app.job_file import JobFileError  # noqa: PLC0415
    from railrules_api.catalogue import CatalogueError  # noqa: PLC0415

    chosen = _parser().parse_args(arguments)
    try:
        code: int = chosen.run(chosen)
    except ProblemError as problem:
        print(f"refused: {problem.detail}", file=sys.stderr)
        for fault in problem.faults:
            print(f"  {fault.pointer or '/'}: {fault.detail}", file=sys.stderr)
        return BAD_INPUT
    except (JobFileError, CatalogueError) as error:
        print(error, file=sys.stderr)
        return BAD_INPUT
    return code
