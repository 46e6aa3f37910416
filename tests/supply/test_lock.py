"""One lock file: every version in it is exact and has hashes, and it covers what the container installs."""

from __future__ import annotations

import re
import tomllib
from importlib.metadata import PackageNotFoundError, requires, version
from pathlib import Path

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).parents[2]
_PIN = re.compile(r"([a-z0-9.-]+)==([^ ;]+)( ; [^\\]+)? \\")
_HASH = re.compile(r"    --hash=sha256:[0-9a-f]{64}( \\)?")


def pins() -> dict[str, list[str]]:
    """Return the versions of the lock by package; a package may have one for each version of Python."""
    found: dict[str, list[str]] = {}
    lines = (ROOT / "requirements.lock").read_text(encoding="utf-8").splitlines()
    open_pin = False
    for line in lines:
        pin = _PIN.fullmatch(line)
        if pin:
            assert not open_pin, f"no hash before {line}"
            found.setdefault(pin[1], []).append(pin[2])
            open_pin = True
        else:
            hashed = _HASH.fullmatch(line)
            assert hashed, line
            # the last hash of a pin has no backslash behind it
            open_pin = hashed[1] is not None
    assert not open_pin
    return found


def test_every_pin_is_exact_and_has_hashes_and_there_is_no_address() -> None:
    found = pins()
    assert len(found) > 100
    assert "://" not in (ROOT / "requirements.lock").read_text(encoding="utf-8")


def test_nothing_that_a_pin_needs_is_missing_from_the_lock() -> None:
    """The lock is installed without looking for more: an installer that looks takes what came out since, and refuses it."""
    locked = pins()
    seen = 0
    for name in locked:
        try:
            needed = [Requirement(text) for text in requires(name) or ()]
        except PackageNotFoundError:
            continue  # for another system or Python
        for requirement in needed:
            if requirement.marker is None or requirement.marker.evaluate({"extra": ""}):
                seen += 1
                versions = locked[canonicalize_name(requirement.name)]
                assert any(requirement.specifier.contains(one, prereleases=True) for one in versions), (name, str(requirement))
    assert seen > 100
    makefile = (ROOT / "Makefile").read_text(encoding="utf-8")
    installed = [line for line in makefile.splitlines() if "--requirement requirements.lock" in line]
    assert installed
    assert all("--no-deps --require-hashes" in line for line in installed)


def test_there_is_one_lock() -> None:
    assert [path.name for path in ROOT.glob("*.lock")] == ["requirements.lock"]


def test_what_the_container_installs_is_in_the_lock_as_it_is_here() -> None:
    dockerfile = (ROOT / "Dockerfile").read_text(encoding="utf-8")
    install = re.search(r"uv pip install [^\n]*\\\n[^\n]*", dockerfile)
    assert install
    assert {"--require-hashes", "--no-build"} <= {*install[0].split()}
    assert "--constraint requirements.lock --requirement pyproject.toml" in install[0]
    extras = {*re.findall(r"--extra (\w+)", install[0])}
    wanted: list[Requirement] = []
    for path in re.findall(r"--requirement (\S+)", install[0]):
        project = tomllib.loads((ROOT / path).read_text(encoding="utf-8"))["project"]
        wanted += [Requirement(text) for text in project["dependencies"]]
        wanted += [Requirement(text) for extra in extras for text in project["optional-dependencies"].get(extra, ())]
    locked, seen = pins(), set()
    while wanted:
        requirement = wanted.pop()
        name = canonicalize_name(requirement.name)
        if name in seen or (requirement.marker and not requirement.marker.evaluate({"extra": ""})):
            continue
        seen.add(name)
        try:
            assert version(name) in locked[name]
            wanted += [Requirement(text) for text in requires(name) or ()]
        except PackageNotFoundError as error:
            raise AssertionError(f"{name} is not installed") from error
    assert {"litestar", "msgspec", "uvicorn", "numpy"} <= seen
    assert not seen & {"pytest", "mypy", "hypothesis", "pip"}


def test_uv_comes_by_its_own_hashes_in_the_lock() -> None:
    """The Dockerfile takes uv's lines out of the lock; what its expression finds is one pin with all its hashes."""
    dockerfile = (ROOT / "Dockerfile").read_text(encoding="utf-8")
    assert r"sed -n '/^uv==/,/[^\\]$/p' requirements.lock > uv.lock" in dockerfile
    taken = re.search(r"^uv==[^\n]*\\\n(?:[^\n]*\\\n)*[^\n]*[^\\\n]\n", (ROOT / "requirements.lock").read_text(), re.MULTILINE)
    assert taken
    first, *hashes = taken[0].splitlines()
    assert _PIN.fullmatch(first)
    assert len(hashes) > 5
    assert all(_HASH.fullmatch(line) for line in hashes)
