"""Guard of the client's own interface: what was there yesterday is there today, or the break was meant.

`python -m tests.client.interface check` compares the client with the interface kept in `client/interface/` and exits with 1 where
something that a user could call was taken away or changed; `accept` keeps the interface as it is now. What is added is no break.
The structs of requests and answers follow the OpenAPI document, whose own gate guards them.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

import griffe

CLIENT = Path(__file__).resolve().parents[2] / "client"
KEPT = CLIENT / "interface"
_NOT_OURS = ("railrules_client.models.", "railrules_client._generated.models.", "railrules_client.command_line.")
_INNER = ("_generated.operations", "_takeoffs", "_showing")
"""Modules that users import nothing from, and whose classes they call all the same: `client.takeoffs`, `answer.to_pandas()`."""
_NOT_KEPT = (
    "_generated/models.pyi", "models.pyi", "command_line", "_asgi.pyi", "_bulk.pyi", "_bulk_requests.pyi", "_caching.pyi",
    "_in_process.pyi", "_progress.pyi", "_retrying.pyi", "_sending.pyi", "_table_files.pyi", "_table_libraries.pyi",
)  # fmt: skip


def _loaded(folder: Path) -> griffe.Module:
    found = griffe.load("railrules_client", search_paths=[folder], try_relative_path=False, allow_inspection=False)
    assert isinstance(found, griffe.Module)
    assert found.filepath
    return found


def breaks(client: Path = CLIENT, kept: Path = KEPT) -> list[str]:
    """Return what a user of the kept interface would miss in a client.

    Raises:
        FileNotFoundError: no interface is kept.
    """
    if not (kept / "railrules_client" / "__init__.pyi").is_file():
        raise FileNotFoundError(f"no interface is kept in {kept}")
    found: list[str] = []
    old, new = _loaded(kept), _loaded(client)
    pairs = [(old, new), *((old[name], new[name]) for name in _INNER)]
    for breakage in (one for before, after in pairs for one in griffe.find_breaking_changes(before, after)):
        path = breakage.obj.path
        if path.startswith(_NOT_OURS):
            continue
        # the kept form leaves out values that are more than a number or a word
        if breakage.kind is griffe.BreakageKind.PARAMETER_CHANGED_DEFAULT and str(breakage.old_value).endswith("= ..."):
            continue
        if breakage.kind is griffe.BreakageKind.ATTRIBUTE_CHANGED_VALUE:
            continue
        found.append(f"{path}: {breakage.kind.value}: {breakage.old_value} -> {breakage.new_value}"[:300])
    return sorted(set(found))


def accept() -> None:
    """Keep the interface as it is."""
    with tempfile.TemporaryDirectory() as folder:
        command = [sys.executable, "-c", "from mypy.stubgen import main; main()", "-q", "-p", "railrules_client", "-o", folder]
        subprocess.run(command, check=True, cwd=CLIENT)
        made = Path(folder) / "railrules_client"
        for name in _NOT_KEPT:
            path = made / name
            shutil.rmtree(path) if path.is_dir() else path.unlink()
        shutil.rmtree(KEPT, ignore_errors=True)
        shutil.copytree(made, KEPT / "railrules_client")


def main(words: list[str]) -> int:
    """Run the command; return its exit code."""
    if words == ["accept"]:
        accept()
        return 0
    found = breaks()
    for line in found:
        sys.stdout.write(f"{line}\n")
    if found:
        sys.stdout.write("the client's interface is broken; where that is meant: make interface\n")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
