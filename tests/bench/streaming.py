"""A caller of the bulk stream, in a process of its own: `python -m tests.bench.streaming PORT SEGMENTS full|totals`.

Writes jobs while it reads answers, keeps none of either, and prints as JSON what it has sent, received and taken: once after a
short stream, once after the long one.
"""

from __future__ import annotations

import json
import os
import socket
import sys
import threading
from itertools import islice

from railrules_api.app import sample
from tests.bench.measure import peak_of

WARM = 400
"""Segments of the stream before."""
KEPT = 60
"""Different jobs, sent again and again: to make up a million would take longer than to answer them."""


def stream(port: int, segments: int, kind: str) -> dict[str, int]:
    """Send jobs of so many segments at least; return what went each way."""
    counted = {"segments": 0, "sent": 0, "received": 0}
    network = islice(sample.network(10**6, 5), KEPT)
    jobs = [(len(job["segments"]), json.dumps(job).encode() + b"\n") for job in network]
    head = f"POST /v1/takeoffs/bulk?answer={kind} HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/x-ndjson\r\n"
    with socket.create_connection(("127.0.0.1", port)) as connection:
        connection.settimeout(600)
        connection.sendall(f"{head}Transfer-Encoding: chunked\r\n\r\n".encode())

        def write() -> None:
            number = 0
            while counted["segments"] < segments:
                size, line = jobs[number % len(jobs)]
                connection.sendall(b"%x\r\n%b\r\n" % (len(line), line))
                counted["segments"] += size
                counted["sent"] += len(line)
                number += 1
            connection.sendall(b"0\r\n\r\n")

        writer = threading.Thread(target=write)
        writer.start()
        last = b""
        while not last.endswith(b"\r\n0\r\n\r\n"):
            got = connection.recv(2**16)
            assert got, "the answer was cut"
            counted["received"] += len(got)
            last = (last + got)[-64:]
        writer.join()
    return counted


def main() -> None:
    """Stream, and tell."""
    port, segments, kind = int(sys.argv[1]), int(sys.argv[2]), sys.argv[3]
    total = {"segments": 0, "sent": 0, "received": 0}
    for size in (WARM, segments):
        counted = stream(port, size, kind)
        total = {name: total[name] + count for name, count in counted.items()}
        sys.stdout.write(json.dumps({**total, "client MB": peak_of(os.getpid())}) + "\n")
        sys.stdout.flush()


if __name__ == "__main__":
    main()
