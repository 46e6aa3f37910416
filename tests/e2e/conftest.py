"""A browser with every host but the service's own shut out. Needs chromium (`CHROMIUM` names it) and axe-core from npm."""

from __future__ import annotations

import os
import shutil
import socket
import threading
import time
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from collections.abc import Iterator

    from playwright.sync_api import Browser

FLAGS = [
    "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
    "--disable-component-update", "--disable-sync", "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
]  # fmt: skip
AXE = Path(__file__).parent / "node_modules/axe-core/axe.min.js"


@pytest.fixture(scope="session")
def address() -> Iterator[str]:
    """Serve on a free port, in a thread of this process."""
    import uvicorn  # noqa: PLC0415

    from railrules_api.app.serving.server import application  # noqa: PLC0415

    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port = probe.getsockname()[1]
    server = uvicorn.Server(uvicorn.Config(application(), host="127.0.0.1", port=port, log_level="warning"))
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    while not server.started:
        time.sleep(0.05)
    yield f"http://127.0.0.1:{port}"
    server.should_exit = True
    thread.join(timeout=20)


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    playwright = pytest.importorskip("playwright.sync_api")
    found = os.environ.get("CHROMIUM") or shutil.which("chromium") or shutil.which("chromium-browser")
    assert found, "no chromium; install it, or name it in CHROMIUM"
    with playwright.sync_playwright() as driver:
        running = driver.chromium.launch(executable_path=found, args=FLAGS)
        yield running
        running.close()


@pytest.fixture(scope="session")
def axe() -> str:
    assert AXE.exists(), "no axe-core; make e2e brings it"
    return AXE.read_text(encoding="utf-8")
