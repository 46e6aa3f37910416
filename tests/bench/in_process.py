"""Costs of answers without a server: against the floor, per rule, and against quantities of a units library."""

from __future__ import annotations

import json
import math
import subprocess
import sys
from functools import partial
from itertools import islice
from typing import TYPE_CHECKING, Any, NamedTuple

import msgspec

from railrules_api.api.bulk_run import Lines, Run
from railrules_api.api.decoding import decode
from railrules_api.api.examples import requests
from railrules_api.api.replying import answer, answer_struct, bind, worked
from railrules_api.api.resources import calculation_of, calculations, operations
from railrules_api.app import sample
from tests.bench import with_units
from tests.bench.measure import costs, in_turn

if TYPE_CHECKING:
    from railrules_api.api.calculations import Calculation
    from railrules_api.api.service import Service


class Cost(NamedTuple):
    """What an answer costs.

    Attributes:
        whole: CPU time from bytes to bytes [s].
        floor: CPU time to decode the request and encode the answer [s].
        steps: CPU time of binding, of the rules, and of writing and encoding [s].
        bytes_in: bytes of the request.
        bytes_out: bytes of the answer.
    """

    whole: float
    floor: float
    steps: tuple[float, float, float]
    bytes_in: int
    bytes_out: int


def cost_of(resource: Calculation, bodies: list[bytes], service: Service, *, rounds: int = 5) -> Cost:
    """Return the cost of an answer, the mean over several requests asked in turn."""
    bound = [bind(resource, body, service) for body in bodies]
    structs: list[Any] = [answer_struct(resource, one, service) for one in bound]
    found = costs(
        {
            "whole": in_turn([partial(answer, resource, body, service) for body in bodies]),
            "decode": in_turn([partial(decode, body, resource.request) for body in bodies]),
            "encode": in_turn([partial(msgspec.json.encode, struct) for struct in structs]),
            "bind": in_turn([partial(bind, resource, body, service) for body in bodies]),
            "rules": in_turn([partial(worked, resource, one, service, finite=False) for one in bound]),
        },
        rounds=rounds,
    )
    sizes = [len(msgspec.json.encode(struct)) for struct in structs]
    return Cost(
        found["whole"],
        found["decode"] + found["encode"],
        (found["bind"], found["rules"], max(0.0, found["whole"] - found["bind"] - found["rules"])),
        sum(map(len, bodies)) // len(bodies),
        sum(sizes) // len(sizes),
    )


def takeoff_costs(service: Service, sizes: tuple[int, ...]) -> dict[int, Cost]:
    """Return the costs of takeoffs by their number of segments."""
    resource = calculation_of("takeoffs")
    found = {}
    for size in sizes:
        # more requests than layouts are kept from one to the next
        several = 6 if size < 1000 else 1
        bodies = [json.dumps(sample.job(size, seed)).encode() for seed in range(several)]
        found[size] = cost_of(resource, bodies, service, rounds=5 if size < 1000 else 1)
    return found


def memory_of_one(segments: int) -> float:
    """Return how much memory a takeoff takes at its most, in a process of its own [MB]."""
    command = [sys.executable, "-m", "tests.bench.once", str(segments)]
    return float(subprocess.run(command, stdout=subprocess.PIPE, check=True).stdout)


def rule_costs(service: Service) -> dict[str, Cost]:
    """Return the cost of every rule on its example of the document."""
    found = {}
    for operation in operations():
        example = requests().get(operation.id)
        if operation.request is None or example is None or operation.tag == "takeoffs":
            continue
        resource = next((known for known in calculations() if known.path == operation.path), None)
        if resource is not None:
            found[resource.rule.id] = cost_of(resource, [json.dumps(example).encode()], service, rounds=3)
    return found


def bulk_costs(service: Service, jobs: int) -> dict[str, float]:
    """Return the CPU time of a stream of jobs and of its floors, for each segment [s].

    Whole lines against decoding the same lines and encoding the same answers, totals only against decoding alone.
    """
    resource = calculation_of("takeoffs")
    network = list(islice(sample.network(jobs * sample.LONGEST_LINE, 5), jobs))
    segments = sum(len(job["segments"]) for job in network)
    lines = [json.dumps(job).encode() for job in network]
    body = b"\n".join(lines)
    decoder, encoder = msgspec.json.Decoder(resource.request), msgspec.json.Encoder()
    structs: list[Any] = [answer_struct(resource, bind(resource, line, service), service) for line in lines]

    def stream(*, totals_only: bool) -> None:
        run, cutter = Run(resource, service, totals_only=totals_only), Lines()
        run.work([*cutter.feed(body), *cutter.end()])
        run.trailer()

    found = costs(
        {
            "whole": partial(stream, totals_only=False),
            "totals": partial(stream, totals_only=True),
            "decode": partial(decoder.decode_lines, body),
            "encode": partial(encoder.encode_lines, structs),
        },
        rounds=3,
    )
    return {name: cost / segments for name, cost in found.items()}


def units_costs() -> dict[str, float]:
    """Return the CPU time of a small part of a takeoff: plainly, by the rules, and with pint [s]."""
    works = {"plain": with_units.plain(), "rules": with_units.by_rules(), "pint": with_units.with_pint()}
    results = [work() for work in works.values()]
    for other in results[1:]:
        assert all(math.isclose(one, two, rel_tol=1e-12) for one, two in zip(results[0], other, strict=True))
    return costs(works)
