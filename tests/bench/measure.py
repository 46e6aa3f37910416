"""CPU time of calls and of other processes, taken in turns so that a busy machine troubles all alike."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Mapping, Sequence


def costs(works: Mapping[str, Callable[[], object]], *, seconds: float = 0.05, rounds: int = 5) -> dict[str, float]:
    """Return the least CPU time of a call of each, all called in turns [s].

    Args:
        works: what is called, by name.
        seconds: CPU time of each in one round.
        rounds: how many; in a single one each is called once, without a call before it.
    """
    calls = dict.fromkeys(works, 1)
    for name, work in works.items():
        if rounds == 1:
            break  # what is called once is long enough
        work()
        began = time.process_time()
        work()
        calls[name] = max(1, int(seconds / max(time.process_time() - began, 1e-7)))
    least = dict.fromkeys(works, float("inf"))
    for _ in range(rounds):
        for name, work in works.items():
            began = time.process_time()
            for _ in range(calls[name]):
                work()
            least[name] = min(least[name], (time.process_time() - began) / calls[name])
    return least


def in_turn(works: Sequence[Callable[[], object]]) -> Callable[[], object]:
    """Return a call that does the next of several things each time, so that nothing kept from the last one helps."""
    position = 0

    def work() -> object:
        nonlocal position
        position = (position + 1) % len(works)
        return works[position]()

    return work


def cpu_of(process: int) -> float:
    """Return the CPU time that all threads of a process have had [s]."""
    total = 0
    for task in Path(f"/proc/{process}/task").iterdir():
        try:
            total += int((task / "schedstat").read_text().split()[0])
        except FileNotFoundError:
            continue
    return total / 1e9


def memory_of(process: int) -> float:
    """Return the memory of a process that is its own share [MB]."""
    for line in Path(f"/proc/{process}/smaps_rollup").read_text().splitlines():
        if line.startswith("Pss:"):
            return int(line.split()[1]) / 1024
    raise ValueError(f"nothing is known of the memory of process {process}")


def peak_of(process: int) -> float:
    """Return the most memory that a process has ever had at once [MB]."""
    for line in Path(f"/proc/{process}/status").read_text().splitlines():
        if line.startswith("VmHWM:"):
            return int(line.split()[1]) / 1024
    raise ValueError(f"nothing is known of the memory of process {process}")


@contextmanager
def python(*arguments: str) -> Iterator[subprocess.Popen[bytes]]:
    """Run this interpreter on a module until the block ends."""
    environment = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    child = subprocess.Popen([sys.executable, "-m", *arguments], env=environment, stdout=subprocess.DEVNULL)
    try:
        yield child
    finally:
        child.terminate()
        child.wait(20)
