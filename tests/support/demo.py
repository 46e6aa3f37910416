"""The demo job, as shipped."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

DEMO = Path(str(files("railrules_api").joinpath("data/demo/job.toml")))
