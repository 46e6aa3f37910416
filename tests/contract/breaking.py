"""The gate against breaking changes, and the proof that it works.

    python -m tests.contract.breaking gate      # the committed document against the last released one
    python -m tests.contract.breaking prove     # seeded breaks are found, harmless changes pass
    python -m tests.contract.breaking release   # the committed document becomes a released one, today

The first two run `redocly diff` (Node); the corpus stands in `changes.py`.

A version is released when its head in the changelog has a date. `openapi/released` holds the document of each released version
and of no other: what is still being worked on promises nothing, and is held against the release before it.
"""

# ruff: noqa: T201  a command tells what it found
from __future__ import annotations

import json
import re
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterable, Mapping
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, date, datetime
from pathlib import Path

from tests.contract.changes import BREAKS, HARMLESS, Change, Tree, changed, small

ROOT = Path(__file__).parents[2]
CURRENT = ROOT / "openapi/openapi.json"
RELEASED = ROOT / "openapi/released"
CHANGELOG = ROOT / "openapi/CHANGELOG.md"
RULES = ROOT / "openapi/lint/redocly.yaml"
REDOCLY = ROOT / "openapi/lint/node_modules/.bin/redocly"


# ---------------------------------------------------------------- running the tool


def compared(base: Path, revision: Path, *flags: str) -> tuple[int, str]:
    """Run `redocly diff`; return its exit status and what it printed."""
    command = [str(REDOCLY), "diff", str(base), str(revision), "--config", str(RULES), "--fail-on", "major", *flags]
    done = subprocess.run(command, capture_output=True, text=True, check=False, env=environment())
    return done.returncode, done.stdout + done.stderr


def is_stopped(base: Path, revision: Path) -> bool:
    """Tell whether the gate stops a revision, and for a break that it names, not for a document it cannot read."""
    status, told = compared(base, revision, "--format", "json")
    majors: int = json.loads(told[told.index("{") : told.rindex("}") + 1])["summary"]["major"]
    assert (status != 0) == (majors > 0), told
    return status != 0


def environment() -> dict[str, str]:
    """Return the environment in which the tools run: nothing is sent anywhere; without Node, say so and end."""
    node = shutil.which("node")
    if node is None or not REDOCLY.exists():
        print("Node 20 and the packages of openapi/lint are needed: npm ci --prefix openapi/lint", file=sys.stderr)
        sys.exit(2)
    return {
        "PATH": f"{Path(node).parent}:/usr/bin:/bin",
        "HOME": tempfile.gettempdir(),
        "REDOCLY_TELEMETRY": "off",
        "REDOCLY_SUPPRESS_UPDATE_NOTICE": "true",
    }


# ---------------------------------------------------------------- what has been released

UNRELEASED = "unreleased"
_HEAD = re.compile(r"^## \[(\d+\.\d+\.\d+)\] - (\d{4}-\d{2}-\d{2}|unreleased)$", re.MULTILINE)


def heads(changelog: str) -> dict[str, str]:
    """Return the versions of a changelog with their dates, or `unreleased`, the newest first."""
    return dict(_HEAD.findall(changelog))


def kept(folder: Path) -> dict[str, Path]:
    """Return the released documents of a folder by their versions."""
    return {path.stem.removeprefix("openapi-"): path for path in folder.glob("openapi-*.json")}


def at_odds(version: str, told: Mapping[str, str], files: Iterable[str]) -> list[str]:
    """Tell where the committed version, the heads of the changelog and the released documents do not agree."""
    dated = {head for head, date in told.items() if date != UNRELEASED}
    found = [] if version in told else [f"openapi/CHANGELOG.md has no head for {version}"]
    found += [f"{head} is unreleased beside {version}" for head in told if head not in dated and head != version]
    found += [f"{head} is released, and openapi/released has no document of it" for head in sorted(dated - {*files})]
    found += [f"openapi/released has a document of {head}, which is not released" for head in sorted({*files} - dated)]
    return found


def last_released(files: Mapping[str, Path]) -> Path | None:
    """Return the released document with the highest version; None before the first release."""
    return files[max(files, key=lambda version: [int(part) for part in version.split(".")])] if files else None


def gate() -> int:
    """Hold the committed document against the last released one; return 0 when nobody's program breaks."""
    version = json.loads(CURRENT.read_text(encoding="utf-8"))["info"]["version"]
    files = kept(RELEASED)
    faults = at_odds(version, heads(CHANGELOG.read_text(encoding="utf-8")), files)
    if faults:
        print(*faults, sep="\n", file=sys.stderr)
        return 1
    base = last_released(files)
    if base is None:
        print(f"{version} will be the first release: there is nothing yet that a caller could rely on")
        return 0
    status, told = compared(base, CURRENT, "--check-version")
    print(told)
    return status


def release(today: date | None = None) -> int:
    """Date the head of the committed version and keep its document; return 0 when that is done."""
    version = json.loads(CURRENT.read_text(encoding="utf-8"))["info"]["version"]
    text = CHANGELOG.read_text(encoding="utf-8")
    if heads(text).get(version) != UNRELEASED:
        print(f"{version} is released already, or openapi/CHANGELOG.md has no head for it: raise the version", file=sys.stderr)
        return 1
    head = f"## [{version}] - "
    CHANGELOG.write_text(text.replace(f"{head}{UNRELEASED}", f"{head}{today or datetime.now(UTC).date()}"), encoding="utf-8")
    RELEASED.mkdir(exist_ok=True)
    shutil.copyfile(CURRENT, RELEASED / f"openapi-{version}.json")
    return 0


def _raised(document: Tree, place: int) -> str:
    parts = [int(part) for part in document["info"]["version"].split(".")]
    return ".".join(map(str, [*parts[:place], parts[place] + 1, *[0] * (2 - place)]))


def prove() -> int:
    """Hold the gate against the corpus; return 0 when it finds every break and passes everything harmless."""
    document = small(json.loads(CURRENT.read_text(encoding="utf-8")))
    wrong: list[str] = []
    same, patch, minor = document["info"]["version"], _raised(document, 2), _raised(document, 1)
    versions = ((same, True), (patch, True), (minor, False))
    with tempfile.TemporaryDirectory() as folder:
        base = Path(folder, "base.json")
        base.write_text(json.dumps(document), encoding="utf-8")

        def verdict(item: tuple[str, Change, bool]) -> tuple[str, bool, bool]:
            name, change, is_break = item
            revision = Path(folder, f"{name}.json")
            revision.write_text(json.dumps(changed(document, change)), encoding="utf-8")
            return name, is_break, is_stopped(base, revision)

        cases = [(name, change, True) for name, change in BREAKS.items()]
        cases += [(name, change, False) for name, change in HARMLESS.items()]
        with ThreadPoolExecutor(2) as pool:
            for name, is_break, stopped in pool.map(verdict, cases):
                if stopped != is_break:
                    wrong.append(name)
                    print(f"{'missed' if is_break else 'false alarm'}: {name}")
        for version, stopped in versions:  # a path is added, which asks for a minor version
            told = changed(document, HARMLESS["path added"])
            told["info"]["version"] = version
            revision = Path(folder, f"version {version}.json")
            revision.write_text(json.dumps(told), encoding="utf-8")
            if (compared(base, revision, "--check-version")[0] != 0) != stopped:
                wrong.append(version)
                print(f"wrong: an added path with version {version}")
    print(f"{len(BREAKS)} breaks, {len(HARMLESS)} harmless changes, {len(versions)} versions; wrong verdicts: {len(wrong)}")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit({"gate": gate, "prove": prove, "release": release}[sys.argv[1]]())
