"""Write the generated half of the client from the OpenAPI document, or check that it is what the document makes.

`python client/generator/generate.py` writes it; with `--check` it prints a diff and exits with 1 where it is stale.
"""

from __future__ import annotations

import argparse
import difflib
import json
import sys
from pathlib import Path

_CLIENT = Path(__file__).resolve().parents[1]
if str(_CLIENT) not in sys.path:  # so that it runs as a script, with nothing installed
    sys.path.insert(0, str(_CLIENT))

from generator import models, resources  # noqa: E402
from generator.reading import GenerationError, read  # noqa: E402

_DOCUMENT = _CLIENT.parent / "openapi" / "openapi.json"
_TARGET = _CLIENT / "railrules_client" / "_generated"
_MARK = '"""Made from the OpenAPI document; do not edit."""\n'


def files(text: str) -> dict[str, str]:
    """Return the generated files, by name, for the text of a document.

    Raises:
        GenerationError: the document says something that the generator does not know.
    """
    document = read(json.loads(text))
    return {"__init__.py": _MARK, "models.py": models.source(document), "operations.py": resources.source(document)}


def differences(made: dict[str, str], folder: Path) -> str:
    """Return a unified diff from the files in a folder to the files as made; empty where they agree."""
    names = sorted({*made, *(path.name for path in folder.glob("*.py"))})
    lines: list[str] = []
    for name in names:
        path = folder / name
        present = path.read_text(encoding="utf-8") if path.is_file() else ""
        lines += difflib.unified_diff(
            present.splitlines(keepends=True), made.get(name, "").splitlines(keepends=True), f"present/{name}", f"made/{name}"
        )
    return "".join(lines)


def main(arguments: list[str] | None = None) -> int:
    """Run the command; return its exit status."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("--check", action="store_true", help="compare only; print a diff and exit with 1 where stale")
    parser.add_argument("--document", type=Path, default=_DOCUMENT, help="the OpenAPI document")
    parser.add_argument("--out", type=Path, default=_TARGET, help="the folder of the generated files")
    given = parser.parse_args(arguments)
    document: Path = given.document
    out: Path = given.out
    try:
        made = files(document.read_text(encoding="utf-8"))
    except (GenerationError, OSError, KeyError, json.JSONDecodeError) as error:
        sys.stderr.write(f"{document}: {type(error).__name__}: {error}\n")
        return 2
    if given.check:
        found = differences(made, out)
        if found:
            sys.stdout.write(f"{found}the client is stale: run make client\n")
        return 1 if found else 0
    out.mkdir(parents=True, exist_ok=True)
    for path in out.glob("*.py"):
        if path.name not in made:
            path.unlink()
    for name, text in made.items():
        path = out / name
        if not path.is_file() or path.read_bytes() != text.encode():  # an unchanged file keeps its time and its bytecode
            path.write_bytes(text.encode())
    return 0


if __name__ == "__main__":
    sys.exit(main())
