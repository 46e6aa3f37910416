"""The client on every Python it is for, with the lowest and with the highest dependencies it allows.

`python -m tests.client.matrix [3.12 ...]` makes an environment for each, installs the client as a wheel with every extra, and
runs `tests/client/everywhere.py` in it. A Python that is not on this machine is named, and fails the run.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PYTHONS = ("3.11", "3.12", "3.13")
RESOLUTIONS = ("lowest-direct", "highest")
HERE_NOTHING_IS = tempfile.gettempdir()
UV = str(Path(sys.executable).parent / "uv")


def _found(version: str) -> str | None:
    """Return the interpreter of a version, where this machine has one that runs."""
    asked = subprocess.run([UV, "python", "find", version], capture_output=True, text=True, check=False, cwd=HERE_NOTHING_IS)
    kept = Path(os.environ.get("PYENV_ROOT", Path.home() / ".pyenv")) / "versions"
    known = [asked.stdout.strip(), shutil.which(f"python{version}"), *map(str, kept.glob(f"{version}.*/bin/python"))]
    for python in filter(None, known):
        said = subprocess.run(
            [python, "-c", "import sys; print(*sys.version_info[:2], sep='.')"], capture_output=True, check=False
        )
        if said.stdout.decode().strip() == version:
            return python
    return None


def _run(*words: str) -> str:
    clean = {name: value for name, value in os.environ.items() if name not in ("VIRTUAL_ENV", "PYTHONPATH")}
    done = subprocess.run(words, capture_output=True, text=True, check=False, cwd=HERE_NOTHING_IS, env=clean)
    if done.returncode:
        sys.exit(f"{' '.join(words)}\n{done.stdout}{done.stderr}")
    return done.stdout


def checked(version: str, python: str, resolution: str, wheel: Path, folder: Path) -> str:
    """Install the wheel into an environment of its own, run the checks there, and return what they say."""
    environment = folder / f"{version}-{resolution}"
    _run(UV, "venv", "--quiet", "--clear", "--python", python, str(environment))
    inside = str(environment / "bin" / "python")
    install = (UV, "pip", "install", "--quiet", "--python", inside)
    # what the client asks for itself, lowest or highest; what that asks for in turn is as new as it goes
    _run(*install, "--resolution", resolution, "--all-extras", "--requirements", str(ROOT / "client" / "pyproject.toml"))
    _run(*install, "--no-deps", str(wheel))
    return _run(inside, "-I", str(ROOT / "tests" / "client" / "everywhere.py")).strip()


def main(wanted: list[str]) -> int:
    """Run the matrix; return 1 where something could not be run."""
    missing = []
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        _run(UV, "build", "--quiet", "--wheel", "--out-dir", str(folder), str(ROOT / "client"))
        (wheel,) = folder.glob("*.whl")
        for version in wanted or PYTHONS:
            python = _found(version)
            if python is None:
                missing.append(version)
                continue
            for resolution in RESOLUTIONS:
                sys.stdout.write(f"{version} {resolution}: {checked(version, python, resolution, wheel, folder)}\n")
                sys.stdout.flush()
    if missing:
        sys.stdout.write(f"not on this machine: Python {', '.join(missing)}\n")
    return 1 if missing else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
