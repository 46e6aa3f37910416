"""Print the table of costs, the table of growth, and as the last line the same as JSON. Nothing here asserts a time.

The floor of a request is what it takes to read it and to write its answer: decode the body into the request's struct, encode the
answer's struct. Everything above it is ours. Times are CPU time, ratios are of times taken in turns in this run.
"""

from __future__ import annotations

import argparse
import json
import sys
from typing import TYPE_CHECKING

from railrules_api.api.service import start
from tests.bench import over_http
from tests.bench.checks import check_costs, holds_against, section_costs
from tests.bench.client_import import import_cost
from tests.bench.in_process import bulk_costs, memory_of_one, rule_costs, takeoff_costs, units_costs

if TYPE_CHECKING:
    from railrules_api.api.service import Service
    from tests.bench.in_process import Cost

CHECKS = ("thermal.force", "thermal.break-gap", "thermal.buckling", "strength.vertical-bending", "thermal.restraint")
GOALS: dict[str, tuple[str, float]] = {
    "GET one rail section, with ETag": ("<=", 1.5),
    "POST takeoff of 1": ("<=", 3.5),
    "takeoff of 1000 segments, x floor": ("<=", 2.5),
    "a segment of 10000, x a segment of 10": ("<=", 1.1),
    "pint, x the rules with their lines, checks and notes": (">=", 100.0),
    "FastAPI, POST takeoff of 1": (">=", 2.0),
    "FastAPI, POST takeoff of 100": (">=", 3.0),
    "start to first answer, x bare application": ("<=", 3.0),
    "import of the client, x import of httpx alone": ("<=", 1.5),
    "idle memory MB": ("<=", 90.0),
    "p99 beside takeoffs, x quiet p99": ("<=", 10.0),
    "bulk, whole lines: floor, % of all": (">=", 45.0),
    "bulk, totals only: decoding alone, % of all": (">=", 50.0),
    "bulk, whole lines: growth of the server MB": ("<=", 64.0),
    "bulk, whole lines: growth of a client MB": ("<=", 64.0),
}
"""What we aim at, by row; each goal is printed beside what was measured, and none fails the run."""


def _say(text: str) -> None:
    sys.stdout.write(f"{text}\n")
    sys.stdout.flush()


class Report:
    """Rows of one table after another, and all of their numbers for the last line."""

    def __init__(self) -> None:
        self.numbers: dict[str, float] = {}

    def heading(self, text: str) -> None:
        """Print the heading of a table."""
        _say(f"\n{text}\n{'-' * len(text)}")

    def row(self, name: str, value: float, unit: str = "x", note: str = "") -> None:
        """Print a row and keep its number."""
        self.numbers[name] = round(value, 4)
        if name in GOALS:
            sense, goal = GOALS[name]
            told = "met" if _met(value, sense, goal) else "not met"
            note = f"{note}  goal {sense} {goal:g}: {told}".lstrip()
        _say(f"{name:62}{value:>12,.2f} {unit:8}{note}".rstrip())


def _takeoffs(report: Report, found: dict[int, Cost]) -> None:
    report.heading("takeoff against the floor: decode + encode of the same bytes")
    for size, cost in found.items():
        bound, rules, written = (share / cost.whole * 100 for share in cost.steps)
        note = f"read and bind {bound:.0f} %, rules {rules:.0f} %, write {written:.0f} %"
        report.row(f"takeoff of {size} segments, x floor", cost.whole / cost.floor, note=note)
        report.row(f"takeoff of {size} segments, per segment", cost.whole / size * 1e6, "CPU µs")
    if 10 in found and (larger := max(found)) > 10:
        ratio = (found[larger].whole / larger) / (found[10].whole / 10)
        report.row(f"a segment of {larger}, x a segment of 10", ratio)


def _rules(report: Report, found: dict[str, Cost]) -> None:
    report.heading("rules on the document's examples against the same floor")
    for rule, cost in sorted(found.items(), key=lambda item: -item[1].whole):
        mark = "check" if rule in CHECKS else "section" if rule.startswith("sections.") else ""
        report.row(f"{rule}, x floor", cost.whole / cost.floor, note=f"{cost.whole * 1e6:,.0f} CPU µs  {mark}")


def _checks(report: Report, service: Service) -> None:
    report.heading("rules of safety over all of their check cases, against the same floor")
    for rule, cost in check_costs(service).items():
        mark = "check" if holds_against(rule) else ""
        report.row(f"{rule}, all cases, x floor", cost.whole / cost.floor, note=f"{cost.whole * 1e6:,.0f} CPU µs  {mark}")
    report.heading("section properties, x decode + encode of the same answer once; 10 is what the properties may take")
    for name, ratio in section_costs(service).items():
        report.row(name, ratio)


def _units(report: Report) -> None:
    report.heading("a small part of a takeoff with a quantity of pint for every value")
    found = units_costs()
    report.row("pint, x the rules with their lines, checks and notes", found["pint"] / found["rules"])
    report.row("pint, x plain arithmetic", found["pint"] / found["plain"])


def _http(report: Report, *, quick: bool) -> None:
    report.heading("requests against static bytes of the same server, server CPU time")
    ratios, others = over_http.against_static()
    for name, ratio in ratios.items():
        report.row(name, ratio, "CPU µs" if name.endswith("µs") else "x")
    report.heading("FastAPI + pydantic on the same schemas and rules, x this service")
    for name, ratio in others.items():
        report.row(f"FastAPI, {name}", ratio)
    if not others:
        _say("skipped: fastapi is not installed")
    report.heading("start and memory")
    for name, value in over_http.start_and_memory().items():
        report.row(name, value, "MB" if "MB" in name else "x")
    report.heading("a busy neighbour: a catalogue GET beside takeoffs of 1,000 segments, wall time")
    for name, value in over_http.busy_neighbour(200 if quick else 1000).items():
        report.row(name, value, "ms" if name.endswith("ms") else "" if "meanwhile" in name else "x")


def _bulk(report: Report, service: Service, segments: int, *, quick: bool) -> dict[str, float]:
    report.heading("the bulk stream, lines of up to 40 segments, against its floors")
    found = bulk_costs(service, 3 if quick else 10)
    floor = found["decode"] + found["encode"]
    report.row("bulk, whole lines: a segment", found["whole"] * 1e6, "CPU µs", f"floor {floor * 1e6:.1f}")
    report.row("bulk, whole lines: floor, % of all", floor / found["whole"] * 100, "%")
    report.row("bulk, totals only: a segment", found["totals"] * 1e6, "CPU µs", f"decode {found['decode'] * 1e6:.1f}")
    report.row("bulk, totals only: decoding alone, % of all", found["decode"] / found["totals"] * 100, "%")
    stream: dict[str, float] = {}
    for kind, totals_only in (("whole lines", False), ("totals only", True)):
        stream = over_http.bulk_memory(segments, totals_only=totals_only)
        count = f"over {stream['segments']:,.0f} segments"
        report.row(f"bulk, {kind}: growth of the server MB", stream["server growth MB"], "MB", count)
        report.row(f"bulk, {kind}: growth of a client MB", stream["client growth MB"], "MB", count)
        report.row(f"bulk, {kind}: segments a CPU second of the server", stream["segments"] / stream["server s"], "")
    return stream


def _client(report: Report) -> None:
    report.heading("the client")
    cost = import_cost()
    report.row("import of the client, x import of httpx alone", cost.client / cost.http_alone, note=f"{cost.modules} modules")


def _growth(found: dict[int, Cost], stream: dict[str, float]) -> None:
    _say("\ngrowth: what it takes, and what to use")
    _say(f"{'segments':>10} {'CPU time':>12} {'memory':>12} {'sent':>12} {'answered':>12}   use")
    for size, cost in found.items():
        _say(
            f"{size:>10,} {cost.whole:>10.3f} s {memory_of_one(size):>9.1f} MB {cost.bytes_in / 1e6:>9.3f} MB "
            f"{cost.bytes_out / 1e6:>9.3f} MB   "
            "a request: POST /v1/takeoffs"
        )
    for size in (10**5, 10**6):
        share = size / stream["segments"]
        use = "the bulk stream, or an engine over railrules_api.columns" if size > 10**5 else "the bulk stream"
        scaled = "" if 0.9 < share < 1.1 else f" (scaled from {stream['segments']:,.0f})"
        _say(
            f"{size:>10,} {share * stream['server s']:>10.0f} s {stream['server growth MB']:>9.1f} MB "
            f"{share * stream['bytes in'] / 1e6:>9.0f} MB "
            f"{'totals only':>12}   {use}{scaled}"
        )


def main(arguments: list[str]) -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench", description=__doc__)
    parser.add_argument("--quick", action="store_true", help="smaller jobs, for a look")
    parser.add_argument(
        "--full", action="store_true", help="a million segments through the bulk stream, both ways: an hour or so"
    )
    chosen = parser.parse_args(arguments)
    report, service = Report(), start()
    sizes = (1, 10, 100) if chosen.quick else (1, 10, 100, 1_000, 10_000)
    found = takeoff_costs(service, sizes)
    _takeoffs(report, found)
    _rules(report, rule_costs(service))
    _checks(report, service)
    _units(report)
    _http(report, quick=chosen.quick)
    stream = _bulk(report, service, 10**6 if chosen.full else 1_000 if chosen.quick else 10_000, quick=chosen.quick)
    _growth(found, stream)
    _client(report)
    missed = [
        name for name, (sense, goal) in GOALS.items() if name in report.numbers and not _met(report.numbers[name], sense, goal)
    ]
    _say(f"\ngoals not met: {', '.join(missed) or 'none'}")
    _say(json.dumps(report.numbers))


def _met(value: float, sense: str, goal: float) -> bool:
    return value <= goal if sense == "<=" else value >= goal


if __name__ == "__main__":
    main(sys.argv[1:])
