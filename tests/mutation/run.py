"""Mutation testing of the rules and of counting: changes the code in small ways and asks whether a test sees it.

    python -m tests.mutation.run [--sample N] [--seed S] [--children N]      # `make mutation`
    python -m tests.mutation.run --only railrules_api/domain/counting.py --tests tests/test_check_cases.py   # while working on it

It works in a copy of the tree (`build/mutation/tree`), with mutmut from an environment of its own. Without a sample every mutant
is tried, which takes hours; with one, mutants are drawn from all of them by the seed. What survives is told with its change in
`build/mutation/survivors.txt`; those that change nothing that could be seen stand in `equivalent.toml`, each with its reason.
It fails when fewer than `LEAST` of the mutants are killed, not counting those.
"""

# ruff: noqa: T201  a command tells what it found
from __future__ import annotations

import argparse
import json
import random
import re
import shutil
import subprocess
import sys
import tomllib
from collections import Counter
from pathlib import Path

ROOT = Path(__file__).parents[2]
FOLDER = ROOT / "build/mutation"
TREE = FOLDER / "tree"
EQUIVALENT = Path(__file__).with_name("equivalent.toml")
LEAST = 0.90
MUTATED = ("railrules_api/rules/*", "railrules_api/domain/*.py")
"""Every rule, and the domain's modules of counting, layout, runs, anchoring, strings, track and bending."""
TESTS = ("tests/rules", "tests/domain/test_bending.py", "tests/mutation", "tests/test_check_cases.py", "tests/test_takeoff.py")
SLOW = (
    "tests/rules/test_whole_jobs.py",
    "tests/rules/test_thermal_any_input.py",
    "tests/rules/test_brute_force.py",
    "tests/rules/test_string_layout.py::test_random_jobs_are_laid_as_asked",
    "tests/test_takeoff.py::test_cutting_a_segment_changes_no_count_of_what_stands_on_ties",
    "tests/mutation/test_kept.py::test_refusals[takeoffs]",
)
"""Left out: they would see more, and take longer for one mutant than all the others together."""
_KILLED = {1, 3, 24, 36, 152, 255, -24}
"""Exit codes of a test run that failed, or that went on without end."""
_CONFIGURATION = """[mutmut]
source_paths=
    railrules_api
only_mutate=
    {mutated}
do_not_mutate=
    railrules_api/domain/profile/*
    railrules_api/domain/stability/*
also_copy=
    client
    openapi
    README.md
    LICENSE
pytest_add_cli_args=
    -p
    no:cacheprovider
    --hypothesis-seed=0
    -o
    disable_test_id_escaping_and_forfeit_all_rights_to_community_support=true
    {slow}
pytest_add_cli_args_test_selection=
    {tests}
use_git_change_detection=false
track_dependencies=false
"""


def _copy(mutated: list[str], tests: list[str]) -> None:
    """Copy what git knows, as it stands now."""
    shutil.rmtree(TREE, ignore_errors=True)
    command = ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"]
    listed = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True).stdout
    for name in filter(None, listed.split("\0")):
        if (ROOT / name).is_file():
            (TREE / name).parent.mkdir(parents=True, exist_ok=True)
            shutil.copyfile(ROOT / name, TREE / name)
    slow = "\n    ".join(f"--deselect={test}" for test in SLOW)
    made = _CONFIGURATION.format(mutated="\n    ".join(mutated), tests="\n    ".join(tests), slow=slow)
    (TREE / "setup.cfg").write_text(made, encoding="utf-8")


def _mutmut(*arguments: str, quiet: bool = True) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "mutmut", *arguments]
    return subprocess.run(command, cwd=TREE, text=True, check=False, capture_output=quiet)


def _codes() -> dict[str, int | None]:
    """Return what became of every mutant, None for those not tried."""
    found: dict[str, int | None] = {}
    for file in sorted((TREE / "mutants").rglob("*.meta")):
        found |= json.loads(file.read_text(encoding="utf-8"))["exit_code_by_key"]
    return found


def change_of(shown: str) -> str:
    """Return the lines that differ in what mutmut shows of a mutant, without their indent: what a survivor is known by."""
    lines = [line for line in shown.splitlines() if re.match(r"[-+](?![-+]{2})", line)]
    return "\n".join(line[0] + " " + line[1:].strip() for line in lines)


def function_of(mutant: str) -> str:
    """Return the function that a mutant is of.

    >>> function_of("railrules_api.rules.radius.x_at_least__mutmut_3")
    'railrules_api.rules.radius.at_least'
    """
    module, _, name = mutant.rpartition("__mutmut_")[0].rpartition(".")
    return f"{module}.{name.removeprefix('x_').removeprefix('xǁ').replace('ǁ', '.')}"


def main(arguments: list[str]) -> int:
    """Run; return 0 when enough mutants are killed."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--sample", type=int, default=0, help="how many mutants to try (0: all)")
    parser.add_argument("--seed", type=int, default=1, help="what the sample is drawn by")
    parser.add_argument("--children", type=int, default=2, help="how many are tried at once")
    parser.add_argument("--only", action="append", help="a module to change, in place of all of them")
    parser.add_argument("--tests", action="append", help="tests to ask, in place of all of them")
    given = parser.parse_args(arguments)
    _copy(given.only or list(MUTATED), given.tests or list(TESTS))
    children = f"--max-children={given.children}"
    # makes the mutants, and learns which test reaches which function
    first = _mutmut("run", children, "no.such.mutant")
    names = sorted(_codes())
    if not names or not (TREE / "mutants/mutmut-stats.json").exists():
        print(first.stdout[-4000:], first.stderr[-4000:])
        return 1
    chosen = sorted(random.Random(given.seed).sample(names, given.sample)) if given.sample else names
    print(f"{len(names)} mutants, {len(chosen)} of them tried", flush=True)
    _mutmut("run", children, *chosen)
    codes = _codes()
    survivors = [name for name in chosen if codes[name] not in _KILLED]
    known = {(entry["function"], entry["change"].strip()) for entry in tomllib.loads(EQUIVALENT.read_text())["mutant"]}
    told, equivalent = [], 0
    for name in survivors:
        change = change_of(_mutmut("show", name).stdout)
        if (function_of(name), change) in known:
            equivalent += 1
        else:
            told.append(f"{name}  ({codes[name]})\n{change}\n")
    (FOLDER / "survivors.txt").write_text("\n".join(told), encoding="utf-8")
    killed = len(chosen) - len(survivors)
    score = killed / (len(chosen) - equivalent)
    by_code = Counter(str(codes[name]) for name in chosen)
    print(f"killed {killed} of {len(chosen)} ({killed / len(chosen):.1%}); {equivalent} change nothing that could be seen;")
    print(f"score {score:.1%}, at least {LEAST:.0%} is wanted; exit codes {dict(by_code)}; seed {given.seed}")
    for package, names_of in _packages(chosen).items():
        print(f"  {package}: {sum(codes[name] in _KILLED for name in names_of)} of {len(names_of)}")
    return int(score < LEAST)


def _packages(names: list[str]) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {}
    for name in names:
        found.setdefault(".".join(name.split(".")[1:3]), []).append(name)
    return found


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
