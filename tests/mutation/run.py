"""Mutation testing of the rules and of counting: changes the code in small ways and asks whether a test sees it.

    python -m tests.mutation.run [--sample N] [--seed S] [--children N]      # `make mutation`
    python -m tests.mutation.run --only railrules_api/domain/counting.py     # while working on it
    python -m tests.mutation.run --again                                     # what survived the last time, after a new test

It works in a copy of the tree (`build/mutation/tree`), from an environment of its own. mutmut makes the mutants,
`tests.mutation.loop` tries them. What survives is told with its change in `build/mutation/survivors.txt`; those that change
nothing that could be seen stand in `equivalent.toml`, each with its reason. It fails when fewer than `LEAST` of the mutants are
killed, not counting those.
"""

# ruff: noqa: T201  a command tells what it found
from __future__ import annotations

import argparse
import ast
import json
import os
import random
import shutil
import subprocess
import sys
import time
import tomllib
from collections import Counter
from difflib import unified_diff
from functools import cache
from importlib import import_module
from multiprocessing import Pool
from pathlib import Path

ROOT = Path(__file__).parents[2]
FOLDER = ROOT / "build/mutation"
TREE = FOLDER / "tree"
EQUIVALENT = Path(__file__).with_name("equivalent.toml")
LEAST = 0.90
MUTATED = ("railrules_api/rules/**/*.py", "railrules_api/domain/*.py")
"""Every rule, and the domain's modules of counting, layout, runs, anchoring, strings, track, laying and bending."""
TESTS = ("tests/rules", "tests/domain/test_bending.py", "tests/mutation", "tests/test_check_cases.py", "tests/test_takeoff.py")
SLOW = (
    "tests/rules/test_thermal_any_input.py",
    "tests/rules/test_brute_force.py",
    "tests/test_takeoff.py::test_cutting_a_segment_changes_no_count_of_what_stands_on_ties",
)
"""Left out: they would see more, and take longer for one mutant than all the others together."""
ON_START = ("tests/mutation/test_kept.py", "tests/test_check_cases.py", "tests/test_registry.py")
"""What is asked about functions whose work is done before any test begins."""
BUDGET, PATIENCE = 10, 300
"""Seconds of tests that a mutant is put to, by what they take without one; seconds until it is given up, which is no kill."""
KILLED = ("killed", "endless", "crashed")


def _copy() -> None:
    """Copy what git knows, as it stands now."""
    shutil.rmtree(TREE, ignore_errors=True)
    command = ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"]
    listed = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True).stdout
    for name in filter(None, listed.split("\0")):
        if (ROOT / name).is_file():
            (TREE / name).parent.mkdir(parents=True, exist_ok=True)
            shutil.copyfile(ROOT / name, TREE / name)
    (TREE / "setup.cfg").write_text("[mutmut]\nsource_paths=\n    railrules_api\n", encoding="utf-8")


def _changed(name: str) -> list[str]:
    """Put all mutants of a file into the copy of it, beside the original functions; return their names."""
    os.chdir(TREE)  # mutmut looks for its configuration where it stands, and stands in an environment of its own
    making, naming = import_module("mutmut.mutation.file_mutation"), import_module("mutmut.utils.format_utils")
    file = TREE / name
    made = making.mutate_file_contents(name, file.read_text(encoding="utf-8"))
    file.write_text(made.code, encoding="utf-8")
    return [naming.get_mutant_name(Path(name), mutant) for mutant in made.mutant_names]


@cache
def _functions(module: str) -> dict[str, list[str]]:
    """Return the lines of every function of a changed module, those of methods without their indent."""
    file = TREE / f"{module.replace('.', '/')}.py"
    text = (file if file.exists() else file.with_suffix("") / "__init__.py").read_text(encoding="utf-8")
    lines = text.splitlines()
    found = [node for node in ast.walk(ast.parse(text)) if isinstance(node, ast.FunctionDef)]
    return {node.name: [line.strip() for line in lines[node.lineno : node.end_lineno]] for node in found}


def change_of(mutant: str) -> str:
    """Return the lines that a mutant differs in, without their indent: what a survivor is known by."""
    module, _, name = mutant.rpartition(".")
    functions = _functions(module)
    before, after = functions[f"{name.partition('__mutmut_')[0]}__mutmut_orig"], functions[name]
    lines = list(unified_diff(before, after, n=0, lineterm=""))[2:]
    return "\n".join(f"{line[0]} {line[1:]}" for line in lines if line[0] in "-+")


def function_of(mutant: str) -> str:
    """Return the function that a mutant is of.

    >>> function_of("railrules_api.rules.radius.x_at_least__mutmut_3")
    'railrules_api.rules.radius.at_least'
    """
    module, _, name = mutant.rpartition("__mutmut_")[0].rpartition(".")
    return f"{module}.{name.removeprefix('x_').removeprefix('xǁ').replace('ǁ', '.')}"


def _pytest(tests: list[str], *arguments: str, **environment: str) -> int:
    command = [
        sys.executable, "-m", "pytest", "-p", "tests.mutation.loop", "-p", "no:cacheprovider", "-n", "0", "-s", "-q",
        "--hypothesis-seed=0", "--hypothesis-profile=mutation", *arguments, *(f"--deselect={test}" for test in SLOW), *tests,
    ]  # fmt: skip
    with (FOLDER / "pytest.log").open("w") as log:
        return subprocess.run(
            command, cwd=TREE, env={**os.environ, **environment}, stdout=log, stderr=log, check=False, timeout=None
        ).returncode


def _tried(mutants: list[str], tests: list[str], children: int, minutes: float) -> dict[str, str]:
    """Return what became of each mutant that was tried."""
    task, results, facts = FOLDER / "task.json", FOLDER / "results.jsonl", FOLDER / "facts.json"
    for old in (results, facts):
        old.unlink(missing_ok=True)
    until = time.monotonic() + minutes * 60  # the machine's own clock: the same in the run
    told = {"mutants": mutants, "children": children, "budget": BUDGET, "patience": PATIENCE, "until": until}
    task.write_text(json.dumps({**told, "results": str(results), "facts": str(facts)}), encoding="utf-8")
    _pytest(tests, MUTATION_TASK=str(task))
    found = json.loads(facts.read_text(encoding="utf-8"))
    print(f"{found['tests']} tests of {found['seconds']:.0f} s; those that fail without a mutant: {found['failed'] or 'none'}")
    entries = [json.loads(line) for line in results.read_text(encoding="utf-8").splitlines()]
    verdicts = {entry["mutant"]: entry["verdict"] for entry in entries}
    for entry in entries:
        if entry["early"] and entry["verdict"] not in KILLED and _pytest(list(ON_START), "-x", MUTATION_FRESH=entry["mutant"]):
            verdicts[entry["mutant"]] = "killed"
    return verdicts


def main(arguments: list[str]) -> int:
    """Run; return 0 when enough mutants are killed."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--sample", type=int, default=0, help="how many mutants to try (0: all)")
    parser.add_argument("--seed", type=int, default=1, help="what the sample and the order are drawn by")
    parser.add_argument("--minutes", type=float, default=24 * 60, help="when to stop; those tried until then are a sample")
    parser.add_argument("--children", type=int, default=os.cpu_count() or 1, help="how many are tried at once")
    parser.add_argument("--only", action="append", help="a module to change, in place of all of them")
    parser.add_argument("--tests", action="append", help="tests to ask, in place of all of them")
    parser.add_argument("--again", action="store_true", help="try those alone that survived the last time")
    given = parser.parse_args(arguments)
    begun = time.monotonic()
    survivors = FOLDER / "survivors.txt"
    before = {line.split()[0] for line in survivors.read_text().splitlines() if "__mutmut_" in line} if given.again else None
    _copy()
    files = sorted({str(file.relative_to(TREE)) for pattern in given.only or MUTATED for file in TREE.glob(pattern)})
    with Pool(given.children) as pool:
        names = sorted(name for made in pool.map(_changed, files, chunksize=1) for name in made)
    # in no order, so that a run that is stopped has tried a fair sample
    chosen = random.Random(given.seed).sample(names, given.sample or len(names))
    chosen = [name for name in chosen if before is None or name in before]
    print(f"{len(names)} mutants, {len(chosen)} of them chosen", flush=True)
    verdicts = _tried(chosen, given.tests or list(TESTS), given.children, given.minutes)
    chosen = sorted(verdicts)
    known = {(entry["function"], entry["change"].strip()) for entry in tomllib.loads(EQUIVALENT.read_text())["mutant"]}
    alive = [name for name in chosen if verdicts[name] not in KILLED]
    told = {name: change_of(name) for name in alive}
    equivalent = sum((function_of(name), change) in known for name, change in told.items())
    survivors.write_text(
        "\n".join(
            f"{name}  {verdicts[name]}\n{change}\n" for name, change in told.items() if (function_of(name), change) not in known
        ),
        encoding="utf-8",
    )
    killed = len(chosen) - len(alive)
    score = killed / max(1, len(chosen) - equivalent)
    print(
        f"killed {killed} of {len(chosen)} ({killed / max(1, len(chosen)):.1%}); {equivalent} change nothing that could be seen;"
    )
    print(f"score {score:.1%}, at least {LEAST:.0%} is wanted; {dict(Counter(verdicts.values()))}; seed {given.seed}")
    for package, names_of in _packages(chosen).items():
        print(f"  {package}: {sum(verdicts[name] in KILLED for name in names_of)} of {len(names_of)}")
    print(f"{time.monotonic() - begun:.0f} s")
    return int(score < LEAST)


def _packages(names: list[str]) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {}
    for name in names:
        found.setdefault(".".join(name.split(".")[1:3]), []).append(name)
    return found


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
