# Every target sets up its own environment when it is missing or stale. Needs Python >= 3.11 and make, nothing else.
PYTHON ?= python3
HOST ?= 127.0.0.1
PORT ?= 8000
BIN := .venv/bin
STAMP := .venv/.made-from-lock

.PHONY: demo test check lint types contracts coverage drift spec client serve bench lock clean help

help:            ## list the targets
	@grep -E '^[a-z]+:.*##' $(MAKEFILE_LIST) | sed 's/:.*##/ -/'

$(STAMP): requirements.lock pyproject.toml client/pyproject.toml
	@$(PYTHON) -c 'import sys; sys.exit(sys.version_info < (3, 11) and "Python 3.11 or newer is needed; set PYTHON=...")'
	@test -x $(BIN)/python || $(PYTHON) -m venv .venv
	$(BIN)/python -m pip install --quiet --disable-pip-version-check --require-hashes --requirement requirements.lock
	$(BIN)/python -m pip install --quiet --disable-pip-version-check --no-deps --no-build-isolation --editable . --editable client
	@touch $(STAMP)

demo: $(STAMP)   ## the whole relay job of an invented railroad, answered
	@$(BIN)/railrules takeoff railrules_api/data/demo/job.toml

test: $(STAMP)   ## the test suite
	$(BIN)/pytest

check: lint types contracts coverage drift   ## everything CI checks

lint: $(STAMP)
	$(BIN)/ruff check .
	$(BIN)/ruff format --check .

types: $(STAMP)
	$(BIN)/mypy railrules_api client tests

contracts: $(STAMP)
	$(BIN)/lint-imports

coverage: $(STAMP)
	$(BIN)/pytest --cov --cov-report=term

drift: $(STAMP)  ## the committed document and client are what the code makes
	$(BIN)/railrules spec | diff -u openapi/openapi.json - || { echo 'openapi/openapi.json is stale: run make spec'; exit 1; }
	$(BIN)/python client/generator/generate.py --check

spec: $(STAMP)   ## write openapi/openapi.json from the code
	$(BIN)/railrules spec > openapi/openapi.json.new && mv openapi/openapi.json.new openapi/openapi.json

client: spec     ## write the client from the document
	$(BIN)/python client/generator/generate.py

serve: $(STAMP)  ## run the service on HOST and PORT
	$(BIN)/railrules serve --host $(HOST) --port $(PORT)

bench: $(STAMP)  ## costs as ratios, in one run
	$(BIN)/python -m tests.bench

lock: $(STAMP)   ## pin every dependency with its hashes
	$(BIN)/uv pip compile --quiet --universal --python-version 3.11 --generate-hashes --no-emit-index-url --no-emit-find-links \
	  --no-header --no-annotate --no-emit-package railrules pyproject.toml client/pyproject.toml --all-extras --output-file requirements.lock

clean:           ## remove the environment and caches
	rm -rf .venv .mypy_cache .ruff_cache .pytest_cache .hypothesis .import_linter_cache .coverage*
