"""A pytest plugin that asks the tests about many mutants within one run: `tests.mutation.run` starts it.

Tests are collected and set up once. Every one of them is then run without a mutant, which tells how long it takes and which
functions it reaches. For a mutant the process is forked; the child puts the changed function in place and runs the tests that
reach it, those that killed a mutant of the same function before and then the quick ones first, until one fails. A mutant that no
test has seen when the budget is spent has survived: that errs to its side.
"""

from __future__ import annotations

import functools
import gc
import json
import os
import resource
import select
import signal
import time
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest
from _pytest.runner import runtestprotocol
from hypothesis import Phase, settings
from mutmut.mutation import trampoline  # type: ignore[import-untyped, import-not-found, unused-ignore]

from tests.mutation.run import function_of

if TYPE_CHECKING:
    from collections.abc import Callable

MEMORY = 6 * 2**30
ENVIRONMENT = "MUTATION_TASK"
"""Names the file that says what to do."""
FRESH = "MUTATION_FRESH"
"""Names a mutant that is in place from the first import on: for functions whose work is done before any test begins."""
_NOW = "now"

settings.register_profile("mutation", deadline=None, database=None, phases=(Phase.explicit, Phase.generate))

_reached: set[str] = set()
_tables: dict[str, dict[str, Callable[..., Any]]] = {}


def _wrap(mutants: dict[str, Callable[..., Any]], is_classmethod: bool = False) -> Callable[..., Any]:  # noqa: FBT001, FBT002
    """Stand in for mutmut's own, which asks the environment at each call: one look into a dictionary."""

    def decorate(function: Callable[..., Any]) -> Callable[..., Any]:
        name = f"{function.__module__}.{function.__qualname__}"
        _tables[name] = mutants
        fresh = os.environ.get(FRESH, "")
        place = fresh.rpartition(".")[2] if fresh and function_of(fresh) == name else _NOW

        @functools.wraps(function)
        def called(*args: Any, **keywords: Any) -> Any:
            _reached.add(name)
            chosen = mutants.get(place) or mutants["_mutmut_orig"]
            if is_classmethod:
                return getattr(args[0], chosen.__name__)(*args[1:], **keywords)
            return chosen(*args, **keywords)

        return called

    return decorate


trampoline.wrap_in_trampoline = _wrap


_FORGET = ("railrules_api.rules", "railrules_api.domain", "tests.")


def _memories() -> list[Any]:
    """Return every cache of what may have been worked without a mutant."""
    caches = [thing for thing in gc.get_objects() if isinstance(thing, functools._lru_cache_wrapper)]  # noqa: SLF001
    return [cache for cache in caches if cache.__module__.startswith(_FORGET)]


@dataclass
class _Child:
    mutant: str
    told: int
    begun: float


@dataclass
class Loop:
    """What is known of the tests, and how far the work is."""

    task: dict[str, Any]
    seconds: dict[int, float] = field(default_factory=dict)
    reaching: dict[str, set[int]] = field(default_factory=dict)
    killers: dict[str, list[int]] = field(default_factory=dict)
    early: set[str] = field(default_factory=set)
    items: list[pytest.Item] = field(default_factory=list)
    memories: list[Any] = field(default_factory=list)

    @pytest.hookimpl(tryfirst=True)
    def pytest_runtestloop(self, session: pytest.Session) -> bool:
        """Do everything in place of pytest's own loop."""
        self.early |= _reached
        # a server that runs in a thread does not live on in a child
        self.items = [item for item in session.items if "http" not in getattr(item, "fixturenames", ())]
        self._without_a_mutant()
        gc.collect()
        self.memories = _memories()
        gc.freeze()
        with Path(self.task["results"]).open("w", encoding="utf-8") as results:
            self._all(results)
        return True

    def _without_a_mutant(self) -> None:
        failed = []
        for position, item in enumerate(self.items):
            _reached.clear()
            begun = time.process_time()
            # the first item comes after the last: what belongs to the whole session stays set up
            following = self.items[(position + 1) % len(self.items)]
            if any(report.failed for report in runtestprotocol(item, log=False, nextitem=following)):
                failed.append(item.nodeid)
                continue
            self.seconds[position] = time.process_time() - begun
            for name in _reached:
                self.reaching.setdefault(name, set()).add(position)
        Path(self.task["facts"]).write_text(
            json.dumps({"tests": len(self.seconds), "failed": failed, "seconds": sum(self.seconds.values())}), encoding="utf-8"
        )

    def _order(self, mutant: str) -> list[int]:
        function = function_of(mutant)
        killers = self.killers.get(function, [])
        others = sorted(self.reaching.get(function, set()) - set(killers), key=lambda place: self.seconds[place])
        chosen: list[int] = []
        spent = 0.0
        for place in [*killers, *others]:
            spent += self.seconds[place]
            if chosen and spent > self.task["budget"]:
                break
            chosen.append(place)
        return chosen

    def _all(self, results: Any) -> None:
        waiting = list(reversed(self.task["mutants"]))
        running: dict[int, _Child] = {}
        while waiting or running:
            if time.monotonic() > self.task["until"]:
                waiting.clear()
            while waiting and len(running) < self.task["children"]:
                mutant = waiting.pop()
                order = self._order(mutant)
                if order:
                    process, told = self._fork(mutant, order)
                    running[process] = _Child(mutant, told, time.monotonic())
                else:
                    self._tell(results, mutant, "untested", "")
            ready, _, _ = select.select([child.told for child in running.values()], [], [], 1.0)
            for pid, child in list(running.items()):
                late = time.monotonic() - child.begun > self.task["patience"]
                if late:
                    os.kill(pid, signal.SIGKILL)
                if late or child.told in ready:
                    del running[pid]
                    self._ended(results, pid, child, late=late)

    def _ended(self, results: Any, pid: int, child: _Child, *, late: bool) -> None:
        said = b"".join(iter(lambda: os.read(child.told, 4096), b""))
        os.close(child.told)
        _, status = os.waitpid(pid, 0)
        *begun, last = said.decode().split() or [""]
        if late:
            self._tell(results, child.mutant, "stuck", "")
        elif not last:
            raise RuntimeError(f"{child.mutant} could not be tried")
        elif last == "survived":
            self._tell(results, child.mutant, "survived", "")
        else:
            killer = int(last if last != "failed" else begun[-1])
            known = self.killers.setdefault(function_of(child.mutant), [])
            if killer in known:
                known.remove(killer)
            known.insert(0, killer)
            how = "killed" if os.WIFEXITED(status) else "endless" if os.WTERMSIG(status) == signal.SIGPROF else "crashed"
            self._tell(results, child.mutant, how, self.items[killer].nodeid)

    def _tell(self, results: Any, mutant: str, verdict: str, test: str) -> None:
        early = function_of(mutant) in self.early
        results.write(json.dumps({"mutant": mutant, "verdict": verdict, "test": test, "early": early}) + "\n")
        results.flush()

    def _fork(self, mutant: str, order: list[int]) -> tuple[int, int]:
        reading, writing = os.pipe()
        pid = os.fork()
        if pid:
            os.close(writing)
            return pid, reading
        # in the child, which never returns: it says which test it is at, and at the end what came of it
        os.close(reading)
        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
        signal.signal(signal.SIGPROF, signal.SIG_DFL)
        table = _tables[function_of(mutant)]
        table[_NOW] = table[mutant.rpartition(".")[2]]
        for cache in self.memories:
            cache.cache_clear()
        try:
            for place, following in zip(order, [*order[1:], order[0]], strict=True):
                os.write(writing, b"%d " % place)
                signal.setitimer(signal.ITIMER_PROF, 3 + 10 * self.seconds[place])
                if any(report.failed for report in runtestprotocol(self.items[place], log=False, nextitem=self.items[following])):
                    os.write(writing, b"failed")
                    os._exit(0)
            os.write(writing, b"survived")
        except BaseException:  # noqa: BLE001  whatever it is, the mutant did it
            os.write(writing, b"failed")
        os._exit(0)


def pytest_configure(config: pytest.Config) -> None:
    """Take the loop over."""
    task = os.environ.get(ENVIRONMENT)
    if task:
        config.pluginmanager.register(Loop(json.loads(Path(task).read_text(encoding="utf-8"))))
