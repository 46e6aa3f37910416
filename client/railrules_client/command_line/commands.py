"""What the commands do. They ask the service as everybody does: in this process, or at its address."""

from __future__ import annotations

import contextlib
import importlib.util
import json
import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any, cast

import msgspec

from railrules_client import Client, ProblemError, comparing, jobs, quantity, tables
from railrules_client._client import URL_VARIABLE
from railrules_client._retrying import PASSING
from railrules_client._units import code_of
from railrules_client.command_line import report
from railrules_client.tables import plain, shown

if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable, Generator, Iterator

    import httpx

    from railrules_client.jobs import Job
    from railrules_client.models import Progress
    from railrules_client.tables import Table

__all__ = ["PASSING"]
GOOD, CHECK_FAILS, BAD_INPUT, ANSWERED_NOT = 0, 1, 2, 3
SERVER_ERROR = 500
APPLICATION = "railrules-command"


class BadInputError(Exception):
    """What was asked for cannot be done; the message says why."""


def _client(arguments: argparse.Namespace) -> Client:
    server: str = arguments.server or os.environ.get(URL_VARIABLE, "").strip()
    if not server:
        return Client.in_process(rulebooks=cast("list[Path]", arguments.rulebook))
    if arguments.rulebook:
        raise BadInputError("--rulebook is for the service in this process; the one at an address has its own")
    try:
        return Client(server, application=APPLICATION)
    except ValueError as error:
        raise BadInputError(str(error)) from error


def _job(arguments: argparse.Namespace, path: Path, *, changed: bool = True) -> Job:
    fields = {name: value for name in ("units", "explain") if (value := getattr(arguments, name, None)) is not None}
    found = jobs.read(path, *cast("list[Path]", arguments.segments), **fields)
    return found.changed(_changes(arguments)) if changed else found


def _changes(arguments: argparse.Namespace) -> dict[str, str]:
    found: dict[str, str] = {}
    for change in cast("list[str]", arguments.changes):
        name, sign, value = change.partition("=")
        if not sign:
            raise BadInputError(f"--set {change}: FIELD=VALUE is wanted")
        found[name.strip()] = value.strip()
    return found


@contextlib.contextmanager
def _told(job: Job) -> Generator[None, None, None]:
    """Tell what the service refuses by its place in the job's files.

    Raises:
        BadInputError: the service refuses it.
    """
    try:
        yield
    except ProblemError as error:
        if error.status >= SERVER_ERROR or error.status in PASSING:
            raise
        raise BadInputError(job.told(error)) from error


def _write(text: str) -> None:
    sys.stdout.write(text if text.endswith("\n") else f"{text}\n")


# ---------------------------------------------------------------- jobs


def takeoff(arguments: argparse.Namespace) -> int:
    """Answer a job."""
    found = _job(arguments, arguments.job)
    form: str = "json" if arguments.json else arguments.output
    raw: list[httpx.Response] = []
    with _client(arguments) as client, _told(found):
        if form == "csv":
            sys.stdout.write(client.takeoffs.create_csv(found.request).replace("\r\n", "\n"))
            if not (arguments.strict or arguments.xlsx):
                return GOOD
        with _stages() as progress:
            answer = client.takeoffs.create(found.request, progress=progress, on_response=raw.append)
    if form == "json":
        _write(raw[0].text)
    elif form == "table":
        tree: dict[str, Any] = json.loads(raw[0].content)
        _write(report.render(tree))
    if arguments.xlsx:
        _to_file(lambda: answer.to_xlsx(cast("Path", arguments.xlsx)))
    failed = any(item.check.verdict == "fails" for item in answer.result.checks)
    return CHECK_FAILS if failed and arguments.strict else GOOD


def check(arguments: argparse.Namespace) -> int:
    """Tell whether a job's checks hold."""
    found = _job(arguments, arguments.job)
    with _client(arguments) as client, _told(found), _stages() as progress:
        answer = client.takeoffs.create(found.request, progress=progress)
    checks = answer.result.checks
    table = tables.of(checks, "checks") if checks else tables.Table("checks", ())
    counts = {word: sum(item.check.verdict == word for item in checks) for word in ("fails", "not-checked", "passes")}
    if arguments.json:
        _json({"job": answer.result.name, "counts": counts, "checks": list(table)})
    else:
        rows = [
            (
                shown(item.check.verdict),
                item.of,
                item.check.title,
                "" if item.check.utilisation is msgspec.UNSET else f"{100 * item.check.utilisation:.0f} %",
                report.lacking(item.needs, item.check.governing)
                if item.check.verdict == "not-checked"
                else item.check.would_pass,
            )
            for item in checks
        ]
        _write(plain(("verdict", "of", "check", "used", "would pass with"), rows, right=(3,)) if rows else "no checks")
        _write(f"{counts['fails']} fail, {counts['not-checked']} open, {counts['passes']} pass")
    failed = counts["fails"] or (arguments.strict and counts["not-checked"])
    return CHECK_FAILS if failed else GOOD


def compare(arguments: argparse.Namespace) -> int:
    """Put two jobs side by side."""
    if arguments.second is None and not arguments.changes:
        raise BadInputError("give the second job, or say with --set how it differs from the first")
    first = _job(arguments, arguments.first, changed=arguments.second is not None and bool(arguments.changes))
    second = _job(arguments, arguments.second or arguments.first)
    with _client(arguments) as client:
        with _told(first), _stages() as progress:
            one = client.takeoffs.create(first.request, progress=progress)
        with _told(second), _stages() as progress:
            other = client.takeoffs.create(second.request, progress=progress)
    found = comparing.compare(one, other, jobs=(first.request, second.request))
    chosen: dict[str, Table] = found.to_tables() if arguments.all else found.differing()
    if arguments.json:
        _json({name: list(table) for name, table in chosen.items()})
    elif arguments.all:
        _write("\n\n".join(f"{name.upper()}\n{table}" for name, table in chosen.items()))
    else:
        _write(str(found))
    if arguments.csv:
        _to_file(lambda: found.to_csv(cast("Path", arguments.csv)))
    if arguments.xlsx:
        _to_file(lambda: found.to_xlsx(cast("Path", arguments.xlsx)))
    return CHECK_FAILS if arguments.strict and len(found.newly_failing) else GOOD


def _to_file(write: object) -> None:
    try:
        cast("Any", write)()
    except (OSError, ImportError) as error:
        raise BadInputError(str(error)) from error


def job(arguments: argparse.Namespace) -> int:
    """Print a job as a request."""
    _json(_job(arguments, arguments.job).request)
    return GOOD


def _lines(path: Path) -> Iterator[bytes]:
    if str(path) == "-":
        yield from (line for line in sys.stdin.buffer if line.strip())
        return
    try:
        with path.open("rb") as file:
            yield from (line for line in file if line.strip())
    except OSError as error:
        raise BadInputError(str(error)) from error


def _progress() -> bool | Callable[[int], object]:
    """Return a bar where a person looks on: that of tqdm, or a count where that is not installed."""
    if not sys.stderr.isatty():
        return False
    if importlib.util.find_spec("tqdm") is not None:
        return True
    counted = [0]

    def tell(jobs: int) -> None:
        counted[0] += jobs
        sys.stderr.write(f"\r{counted[0]:,} jobs ")
        sys.stderr.flush()

    return tell


@contextlib.contextmanager
def _stages() -> Generator[bool | Callable[[Progress], object], None, None]:
    """Return who is told how far one long answer is, where a person looks on; the line is wiped at the end."""
    if not sys.stderr.isatty():
        yield False
        return
    if importlib.util.find_spec("tqdm") is not None:
        yield True
        return

    def tell(progress: Progress) -> None:
        sys.stderr.write(f"\r\x1b[K{progress.stage}: {progress.done:,} of {progress.of:,} ")
        sys.stderr.flush()

    try:
        yield tell
    finally:
        sys.stderr.write("\r\x1b[K")
        sys.stderr.flush()


def bulk(arguments: argparse.Namespace) -> int:
    """Answer many jobs."""
    if arguments.connections < 1:
        raise BadInputError("--connections: at least 1 is wanted")
    with contextlib.ExitStack() as stack:
        client = stack.enter_context(_client(arguments))
        out = sys.stdout.buffer
        if arguments.out:
            try:
                out = stack.enter_context(cast("Path", arguments.out).open("wb"))
            except OSError as error:
                raise BadInputError(str(error)) from error
        run = client.takeoffs.stream(
            _lines(arguments.jobs), totals_only=arguments.totals, units=arguments.units,
            connections=arguments.connections, progress=_progress(),
        )  # fmt: skip
        for done in stack.enter_context(run):
            told: dict[str, object] = {"number": done.number}
            told |= {"answer": done.answer} if done.answer is not None else {"problem": done.problem}
            out.write(msgspec.json.encode(told) + b"\n")
        if arguments.totals:
            out.write(msgspec.json.encode({"totals": run.totals}) + b"\n")
        out.flush()
    again = f", {run.resumed} times sent again what had no answer" if run.resumed else ""
    print(f"{run.done:,} jobs, {run.refused:,} refused{again}", file=sys.stderr)
    return BAD_INPUT if run.refused else GOOD


# ---------------------------------------------------------------- catalogue


def sections(arguments: argparse.Namespace) -> int:
    """List the rail sections."""
    with _client(arguments) as client:
        found = client.rail_sections.list()
    if arguments.json:
        _json(found)
        return GOOD
    rows = [
        (
            row.id,
            row.title,
            *(
                row.values[name].printed if name in row.values else ""
                for name in ("mass_per_length", "height", "base_width", "area")
            ),
            ", ".join(row.texts.get("standard", ())),
        )
        for row in found.rows
    ]
    _write(plain(("id", "name", "mass", "height", "base", "area", "standard"), rows))
    _write(f"{len(rows)} sections; `railrules section ID` shows one with the source of every value")
    return GOOD


def section(arguments: argparse.Namespace) -> int:
    """Show one rail section."""
    name = cast("str", arguments.id)
    with _client(arguments) as client:
        row = client.rail_sections.get(name)
        if arguments.json:
            _json(row)
            return GOOD
        _write(row.title)
        rows = [
            (key, value.printed, value.cite.status, f"{value.cite.title}, {value.cite.where}")
            for key, value in row.values.items()
        ]
        _write(plain(("property", "value", "status", "source"), rows))
        if row.notes:
            _write(row.notes)
        try:
            profile = client.rail_sections.profile(name)
        except ProblemError:
            _write("\nIts drawing is not known, so nothing is computed.")
            return GOOD
        measured = row.values.get("height")
        units = "si" if measured is not None and measured.value.unit == "mm" else "us"
        found = client.section_properties.calculate({"section": row.id, "units": units, "torsion": True}).result
    _write("\nComputed from the outline, beside what is printed")
    compared = [
        (
            item.property, shown(item.printed.value, item.printed.unit), shown(item.computed.value, item.computed.unit),
            f"{100 * item.difference:+.3f} %", "" if item.agrees else "apart",
        )
        for item in found.comparison
    ]  # fmt: skip
    _write(plain(("property", "printed", "computed", "difference", ""), compared, right=(1, 2, 3)))
    for note in found.notes:
        _write(note)
    twisting = found.section.torsion
    if twisting is not msgspec.UNSET:
        constant, centre = (shown(value.value, value.unit) for value in (twisting.torsion_constant, twisting.shear_centre))
        _write(
            f"torsion constant {constant}, shear centre {centre} above the base; two divisions of the edge lie "
            f"{100 * twisting.relative_error:.1f} % apart before extrapolation"
        )
    _write("\nMeasures of the outline")
    places = [
        (item.group, item.cite.status, f"{item.cite.title}, {item.cite.where}", "" if item.note is msgspec.UNSET else item.note)
        for item in profile.origins
    ]
    _write(plain(("group", "status", "source", "note"), places))
    if profile.note is not msgspec.UNSET:
        _write(profile.note)
    return GOOD


def rules(arguments: argparse.Namespace) -> int:
    """List the rules."""
    with _client(arguments) as client:
        found = client.rules.list()
    if arguments.json:
        _json(found)
    else:
        _write(plain(("id", "answers", "resource"), [(rule.id, rule.title, rule.resource) for rule in found.rules]))
    return GOOD


def convert(arguments: argparse.Namespace) -> int:
    """Convert a quantity."""
    text = " ".join(cast("list[str]", arguments.quantity))
    try:
        found = quantity(text).to(code_of(cast("str", arguments.unit)))
    except (ValueError, TypeError) as error:
        raise BadInputError(str(error)) from error
    if arguments.json:
        _json(found)
    else:
        _write(str(found))
    return GOOD


def _json(value: object) -> None:
    _write(msgspec.json.format(msgspec.json.encode(value), indent=2).decode())
