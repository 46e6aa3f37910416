"""A service of our own on a free port, for the tools that speak HTTP."""

from __future__ import annotations

import contextlib
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.request
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[2]
_PATIENCE = 30.0


def _free_ports(many: int) -> list[int]:
    with contextlib.ExitStack() as stack:
        probes = [stack.enter_context(socket.socket()) for _ in range(many)]
        for probe in probes:
            probe.bind(("127.0.0.1", 0))
        return [int(probe.getsockname()[1]) for probe in probes]


@contextlib.contextmanager
def running_service() -> Iterator[str]:
    """Run `railrules-server serve` and give its address; it is told to stop at the end."""
    port, management = _free_ports(2)
    address = f"http://127.0.0.1:{port}"
    command = [
        sys.executable, "-m", "railrules_api", "serve", "--host", "127.0.0.1", "--port", str(port),
        "--management-port", str(management),
    ]  # fmt: skip
    with subprocess.Popen(command, cwd=ROOT, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL) as server:
        try:
            _wait_for(f"{address}/health/ready", server)
            # it is made when it is first asked for, which on a busy machine is longer than the tools wait
            urllib.request.urlopen(f"{address}/openapi.json", timeout=60).close()
            yield address
        finally:
            server.terminate()
            try:
                server.wait(_PATIENCE)
            except subprocess.TimeoutExpired:
                server.kill()


def _wait_for(url: str, server: subprocess.Popen[bytes]) -> None:
    until = time.monotonic() + _PATIENCE
    while time.monotonic() < until:
        if server.poll() is not None:
            raise RuntimeError(f"the service ended with {server.returncode} before it answered")
        with contextlib.suppress(urllib.error.URLError, ConnectionError), urllib.request.urlopen(url, timeout=1) as answer:
            if answer.status == 200:
                return
        time.sleep(0.1)
    raise RuntimeError("the service did not answer in time")
