"""The corpus of each fuzz target, as the last long run left it: `tests/fuzz/corpus/TARGET.zip`.

python -m tests.fuzz.corpus keep TARGET FOLDER      # after a run: `make fuzz` does it
"""

from __future__ import annotations

import sys
import zipfile
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator

FOLDER = Path(__file__).with_name("corpus")


def kept(target: str) -> Iterator[bytes]:
    """Return the inputs that are kept for a target."""
    with zipfile.ZipFile(FOLDER / f"{target}.zip") as archive:
        for name in archive.namelist():
            yield archive.read(name)


def keep(target: str, folder: Path) -> int:
    """Keep a folder of inputs for a target, the same bytes from the same inputs; return how many they are."""
    FOLDER.mkdir(exist_ok=True)
    inputs = sorted(file for file in folder.iterdir() if file.is_file())
    with zipfile.ZipFile(FOLDER / f"{target}.zip", "w", zipfile.ZIP_DEFLATED, compresslevel=9) as archive:
        for file in inputs:
            archive.writestr(zipfile.ZipInfo(file.name), file.read_bytes(), zipfile.ZIP_DEFLATED, 9)
    return len(inputs)


if __name__ == "__main__":
    print(keep(sys.argv[2], Path(sys.argv[3])), "inputs kept")  # noqa: T201  a command tells what it did
