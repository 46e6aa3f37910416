"""Keys: kept as digests, compared whatever is sent, each with its quota."""

from __future__ import annotations

import asyncio
import hmac
import json
import time
from typing import TYPE_CHECKING, Any

import pytest

from railrules_api.app.command_line import main
from railrules_api.app.serving import keys
from railrules_api.app.serving.board import Board
from tests.hostile.asgi import Told, ask, gate_of
from tests.hostile.serving import serving

if TYPE_CHECKING:
    from pathlib import Path


def told_by(gate: Any, authorization: str | None) -> Told:
    headers = {} if authorization is None else {"authorization": authorization}
    return asyncio.run(ask(gate, headers=headers))


@pytest.fixture
def pair(tmp_path: Path) -> tuple[str, Path]:
    key, entry = keys.made("yard-office")
    file = tmp_path / "keys.toml"
    _, closed = keys.made("old")
    file.write_text(entry.replace("quota = 600", "quota = 3") + closed.replace("open = true", "open = false"))
    return key, file


def test_a_key_is_kept_nowhere_and_its_digest_finds_it(pair: tuple[str, Path]) -> None:
    key, file = pair
    assert key not in file.read_text()
    assert key.rpartition("_")[2] not in file.read_text()
    assert len(key.split("_", 2)[2]) >= 43  # 256 bits
    found = keys.recognised(f"Bearer {key}".encode(), keys.load(file))
    assert found is not None
    assert (found.name, found.quota, found.open) == ("yard-office", 3, True)


def test_two_keys_of_a_name_differ() -> None:
    assert keys.made("a")[0] != keys.made("a")[0]


def test_what_is_no_key(pair: tuple[str, Path]) -> None:
    key, file = pair
    known = keys.load(file)
    wrong = [
        b"",
        b"Bearer",
        b"Bearer ",
        b"Basic " + key.encode(),
        key.encode(),
        f"Bearer {key}x".encode(),
        f"Bearer {key[:-1]}".encode(),
        b"Bearer rr_yard-office_",
        b"Bearer rr__",
        b"Bearer rr_nobody_" + key.encode()[15:],
        b"Bearer \xff\xfe",
        b"Bearer " + b"a" * 30_000,
    ]
    assert [keys.recognised(sent, known) for sent in wrong] == [None] * len(wrong)
    assert keys.recognised(f"bearer  {key} ".encode(), known) is not None


def test_every_check_compares_in_constant_time(pair: tuple[str, Path], monkeypatch: pytest.MonkeyPatch) -> None:
    key, file = pair
    compared: list[tuple[str, str]] = []
    real = hmac.compare_digest

    def watched(one: str, other: str) -> bool:
        compared.append((one, other))
        return real(one, other)

    monkeypatch.setattr(hmac, "compare_digest", watched)
    for sent in (b"", b"Bearer rr_nobody_x", f"Bearer {key}".encode()):
        keys.recognised(sent, keys.load(file))
    assert len(compared) == 3
    assert {len(text) for both in compared for text in both} == {64}


@pytest.mark.parametrize(
    "text",
    [
        "",
        "nonsense",
        "a = 1",
        '[a]\nsha256 = "abc"',
        '[A]\nsha256 = "' + "0" * 64 + '"',
        '[a]\nsha256 = "' + "0" * 64 + '"\nquota = 0',
        '[a]\nsha256 = "' + "0" * 64 + '"\nquota = true',
        '[a]\nsha256 = "' + "0" * 64 + '"\nopen = 1',
        '[a]\nsha256 = "' + "0" * 64 + '"\nadmin = true',
        "[a]\nquota = 1",
    ],
)
def test_a_file_that_is_wrong_stops_the_start(text: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "keys.toml"
    file.write_text(text)
    assert main(["serve", "--keys", str(file)]) == 2
    assert "0000" not in capsys.readouterr().err


def test_401_403_and_429(pair: tuple[str, Path], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(time, "time", lambda: 1_800_000_020.0)  # the middle of a window, so that it does not end on the way
    key, file = pair
    known = keys.load(file)
    gate, inner = gate_of(known)
    for sent in (None, "Bearer rr_yard-office_guess"):
        told = told_by(gate, sent)
        assert (told.status, told.headers["www-authenticate"]) == (401, 'Bearer realm="railrules"')
    assert gate.part.board.event("refused_key") == 2
    left = [told_by(gate, f"Bearer {key}") for _ in range(4)]
    assert [told.status for told in left] == [200, 200, 200, 429]
    assert [told.headers["ratelimit"] for told in left] == [f'"default";r={rest};t=41' for rest in (2, 1, 0, 0)]
    assert {told.headers["ratelimit-policy"] for told in left} == {'"default";q=3;w=60'}
    assert left[3].headers["retry-after"] == "41"
    assert json.loads(left[3].body)["type"] == "/problems/too-many-requests"
    monkeypatch.setattr(time, "time", lambda: 1_800_000_062.0)
    assert told_by(gate, f"Bearer {key}").status == 200  # the next window
    assert all(b"authorization" not in seen["headers"] for seen in inner.seen)


def test_a_closed_key_is_403(tmp_path: Path) -> None:
    key, entry = keys.made("old")
    file = tmp_path / "keys.toml"
    file.write_text(entry.replace("open = true", "open = false"))
    gate, inner = gate_of(keys.load(file))
    told = told_by(gate, f"Bearer {key}")
    assert (told.status, json.loads(told.body)["type"]) == (403, "/problems/forbidden")
    assert not inner.seen


def test_health_takes_no_key(pair: tuple[str, Path]) -> None:
    gate, _ = gate_of(keys.load(pair[1]))
    assert asyncio.run(ask(gate, "/health/live", method="GET")).status == 200
    assert asyncio.run(ask(gate, "/healthy", method="GET")).status == 401


def test_a_quota_is_that_of_all_workers_together() -> None:
    board = Board(3, (), 2)
    parts = [board.part(worker) for worker in range(3)]
    assert [parts[turn % 3].use(1, 5.0) for turn in range(6)] == [1.0, 2.0, 3.0, 4.0, 5.0, 6.0]
    assert parts[0].use(1, 6.0) == 1.0
    assert board.used(0, 5.0) == 0.0


def test_new_key_prints_it_once_with_its_entry(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    assert main(["serve", "--new-key", "depot"]) == 0
    printed = capsys.readouterr().out
    key = next(word for word in printed.split() if word.startswith("rr_depot_"))
    file = tmp_path / "keys.toml"
    file.write_text(printed.partition("\n\n")[2])
    assert keys.recognised(f"Bearer {key}".encode(), keys.load(file)) is not None
    assert main(["serve", "--new-key", "Depot!"]) == 2


@pytest.mark.parametrize(
    "flags", [["--host", "0.0.0.0"], ["--management-host", "0.0.0.0"], ["--host", "example.org"], ["--host", "::"]]
)
def test_the_network_takes_a_flag(flags: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["serve", *flags]) == 2
    assert "--open-to-network" in capsys.readouterr().err


def test_keys_do_not_open_the_operators_listener(pair: tuple[str, Path], capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["serve", "--keys", str(pair[1]), "--management-host", "0.0.0.0"]) == 2
    assert "--open-to-network" in capsys.readouterr().err


def test_over_a_socket_with_keys_on_every_address(pair: tuple[str, Path], tmp_path: Path) -> None:
    key, file = pair
    with serving(tmp_path, "--keys", str(file), "--host", "0.0.0.0", workers=2, drain_seconds=0) as server:
        assert server.get("/v1/rules").status == 401
        assert server.get("/health/live").status == 200
        assert server.get("/v1/rules", f"Authorization: Bearer {key}\r\n").status == 200
        assert server.get("/metrics", f"Authorization: Bearer {key}\r\n").status == 404
        text = server.log.read_text()
        assert key not in text
        assert "yard-office" in text
