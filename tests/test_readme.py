"""What the README tells is true: its request, its script, its commands, its files."""

from __future__ import annotations

import contextlib
import io
import json
import re
from pathlib import Path

import pytest
from railrules_client.command_line import running as of_the_client

from railrules_api.api.service import Service
from railrules_api.app import command_line as of_the_service
from tests.support.asking import ask

ROOT = Path(__file__).parents[1]
TEXT = (ROOT / "README.md").read_text(encoding="utf-8")


def blocks(language: str) -> list[str]:
    return re.findall(rf"^```{language}\n(.*?)^```$", TEXT, re.DOTALL | re.MULTILINE)


def test_the_request_gives_the_answer_that_is_shown(service: Service) -> None:
    body = next(found.group(1) for block in blocks("sh") if (found := re.search(r"-d '(.*?)'", block, re.DOTALL)))
    answer = ask(service, "thermal.force", json.loads(body))
    shown = json.loads(blocks("json")[0])
    assert answer["rule"] == shown["rule"]
    for name, value in shown["result"].items():
        assert answer["result"][name]["unit"] == value["unit"]
        assert answer["result"][name]["value"] == pytest.approx(value["value"], rel=1e-9)
    for assumption in shown["assumptions"]:
        assert any(assumption.items() <= told.items() for told in answer["assumptions"]), assumption


def test_the_script_runs() -> None:
    printed = io.StringIO()
    with contextlib.redirect_stdout(printed):
        exec(blocks("python")[0], {})  # the README's own script
    assert re.match(r"6,?500 anchors; .+", printed.getvalue())


def test_commands_and_targets_exist(capsys: pytest.CaptureFixture[str]) -> None:
    for name, main in (("railrules", of_the_client.main), ("railrules-server", of_the_service.main)):
        commands = {found for block in blocks("sh") for found in re.findall(rf"^{name} (\w+)", block, re.MULTILINE)}
        assert commands
        for command in commands:
            with pytest.raises(SystemExit, match="0"):
                main([command, "--help"])
    capsys.readouterr()
    targets = re.findall(r"make (\w+)", TEXT)
    makefile = (ROOT / "Makefile").read_text(encoding="utf-8")
    assert targets
    assert all(re.search(rf"^{target}:", makefile, re.MULTILINE) for target in targets)


def test_files_that_are_named_are_there() -> None:
    for name in re.findall(r"`((?:[\w]+/)+[\w./]*|[A-Z]+\.md)`", TEXT):
        if not name.startswith(("application/", "text/", "image/")):  # media types look like paths
            assert (ROOT / name).exists(), name
