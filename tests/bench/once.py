"""One takeoff in a process of its own: `python -m tests.bench.once SEGMENTS` prints how much memory it takes [MB]."""

from __future__ import annotations

import json
import os
import sys

from railrules_api.api.replying import answer
from railrules_api.api.resources import calculation_of
from railrules_api.api.service import start
from railrules_api.app import sample
from tests.bench.measure import peak_of


def main() -> None:
    """Answer a small job, then the one asked for."""
    resource, service = calculation_of("takeoffs"), start()
    body = json.dumps(sample.job(int(sys.argv[1]), 1)).encode()
    answer(resource, json.dumps(sample.job(1, 0)).encode(), service)
    before = peak_of(os.getpid())
    answer(resource, body, service)
    sys.stdout.write(f"{peak_of(os.getpid()) - before:.1f}\n")


if __name__ == "__main__":
    main()
