"""The demo job, as shipped."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path
from typing import Any

from railrules_client import jobs

DEMO = Path(str(files("railrules_api").joinpath("data/demo/job.toml")))


def demo_job() -> dict[str, Any]:
    """Return it as a request."""
    return jobs.read(DEMO).request
