"""A server process of our own on a free loopback port, and a caller that speaks to it in bytes."""

from __future__ import annotations

import contextlib
import json
import os
import signal
import socket
import subprocess
import sys
import threading
import time
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator

ROOT = Path(__file__).parents[2]
GUARD = 60.0
"""No step of a test takes so long [s]; a hang fails, whatever the machine does besides."""


@dataclass
class Answer:
    """What came back: status, header fields (lower case) and body; `cut` when the connection was reset."""

    status: int
    headers: dict[str, str]
    body: bytes
    cut: bool = False


@dataclass
class Serving:
    """A running server."""

    process: subprocess.Popen[bytes]
    port: int
    management_port: int
    log: Path

    def connect(self) -> socket.socket:
        """Open a connection."""
        return socket.create_connection(("127.0.0.1", self.port), timeout=GUARD)

    def ask(self, sent: bytes) -> Answer:
        """Send bytes, as many as are taken, while reading the first answer."""
        with self.connect() as connection:

            def write() -> None:
                # a refusal comes before all is sent, and then the rest has nowhere to go
                with contextlib.suppress(OSError):
                    connection.sendall(sent)

            writer = threading.Thread(target=write, daemon=True)
            writer.start()
            answer = read_answer(connection)
            with contextlib.suppress(OSError):
                connection.shutdown(socket.SHUT_RDWR)
            writer.join(GUARD)
            return answer

    def get(self, path: str, headers: str = "") -> Answer:
        """Ask for a resource."""
        return self.ask(f"GET {path} HTTP/1.1\r\nHost: a\r\nConnection: close\r\n{headers}\r\n".encode())

    def manage(self, path: str) -> Answer:
        """Ask the operator's listener."""
        with socket.create_connection(("127.0.0.1", self.management_port), timeout=GUARD) as connection:
            connection.sendall(f"GET {path} HTTP/1.1\r\nHost: a\r\n\r\n".encode())
            return read_answer(connection)

    def metric(self, name: str) -> float:
        """Return one number of the metrics."""
        for line in self.manage("/metrics").body.decode().splitlines():
            if line.startswith(name + " "):
                return float(line.rpartition(" ")[2])
        raise AssertionError(f"no metric {name}")

    def workers(self) -> list[int]:
        """Return the process ids of the workers that live, from the kernel's own list."""
        text = Path(f"/proc/{self.process.pid}/task/{self.process.pid}/children").read_text()
        return [int(word) for word in text.split()]

    def peak_memory(self) -> int:
        """Return the largest resident size that a worker has had [bytes]."""
        peaks = []
        for worker in self.workers():
            status = Path(f"/proc/{worker}/status").read_text()
            peaks += [int(line.split()[1]) * 1024 for line in status.splitlines() if line.startswith("VmHWM")]
        return max(peaks)

    def processor_time(self) -> float:
        """Return the processor time that the workers have used [s]."""
        ticks = 0
        for worker in self.workers():
            fields = Path(f"/proc/{worker}/stat").read_text().rpartition(")")[2].split()
            ticks += int(fields[11]) + int(fields[12])
        return ticks / os.sysconf("SC_CLK_TCK")

    def lines(self) -> list[dict[str, object]]:
        """Return the log."""
        return [json.loads(line) for line in self.log.read_text().splitlines()]

    def wait_until(self, what: str, *, seconds: float = GUARD, fails: bool = False) -> None:
        """Wait until the operator's listener answers 200 (or no longer does) at a path."""
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            with contextlib.suppress(OSError):
                if (self.manage(what).status == 200) is not fails:
                    return
            if self.process.poll() is not None:
                break
            time.sleep(0.02)
        raise AssertionError(f"{what} never came; log: {self.log.read_text()[-2000:]}")


def read_answer(connection: socket.socket) -> Answer:
    """Read one answer."""
    received = b""
    cut = False
    while b"\r\n\r\n" not in received:
        try:
            data = connection.recv(65_536)
        except ConnectionError:
            data, cut = b"", True
        if not data:
            return Answer(0, {}, received, cut)
        received += data
    head, _, body = received.partition(b"\r\n\r\n")
    first, *lines = head.decode("latin-1").split("\r\n")
    headers = {name.lower(): value.strip() for name, _, value in (line.partition(":") for line in lines)}
    chunked = headers.get("transfer-encoding") == "chunked"

    def whole() -> bool:
        return body.endswith(b"0\r\n\r\n") if chunked else len(body) >= int(headers.get("content-length", "0"))

    while not whole():
        try:
            data = connection.recv(65_536)
        except ConnectionError:
            data, cut = b"", True
        if not data:
            break
        body += data
    if chunked:
        body = b"".join(body.split(b"\r\n")[1::2])
    return Answer(int(first.split()[1]), headers, body, cut)


def free_port() -> int:
    """Return a port that is free now."""
    with socket.create_server(("127.0.0.1", 0)) as listener:
        return int(listener.getsockname()[1])


@contextlib.contextmanager
def serving(folder: Path, *flags: str, **settings: object) -> Iterator[Serving]:
    """Run a server with settings, ready; end it whatever happens."""
    port, management_port = free_port(), free_port()
    log = folder / "log"
    # the environment of the tests must not decide what they test
    environment = {name: value for name, value in os.environ.items() if not name.startswith("RAILRULES_")}
    environment |= {f"RAILRULES_{name.upper()}": str(value) for name, value in settings.items()}
    environment["PYTHONPATH"] = str(ROOT)
    command = [sys.executable, "-m", "railrules_api", "serve", "--port", str(port), "--management-port", str(management_port)]
    with log.open("wb") as output:
        process = subprocess.Popen([*command, *flags], stdout=output, stderr=subprocess.STDOUT, env=environment, cwd=ROOT)
    server = Serving(process, port, management_port, log)
    try:
        server.wait_until("/health/ready")
        yield server
    finally:
        if process.poll() is None:
            process.send_signal(signal.SIGTERM)
            process.send_signal(signal.SIGTERM)
            try:
                process.wait(GUARD)
            except subprocess.TimeoutExpired:
                process.kill()
                process.wait(GUARD)
