#!/usr/bin/env bash
# The whole check: bash installer/check.sh. Sets up as start.sh does, with the test tools; words after it go to pytest.
set -euo pipefail
source "$(dirname "${BASH_SOURCE[0]}")/prepare.sh"

prepare requirements
# psychrolib, which the tests compare with, comes as source only: it is built with a locked setuptools.
prepare requirements-build
prepare requirements-check --no-build-isolation --use-pep517 --no-binary=psychrolib
cd "$root"
export QT_QPA_PLATFORM=offscreen
failed=()
run() {
  printf '\n== %s\n' "$1"
  "${@:2}" || failed+=("$1")
}
run "ruff check" "$py" -m ruff check
run "ruff format --check" "$py" -m ruff format --check
run "lint-imports" "$py" -c 'from importlinter.cli import lint_imports_command as run; run()'
run "mypy" "$py" -m mypy
scratch=$(mktemp -d) # a folder of its own, so that two checks at once do not clear up after each other
trap 'rm -rf "$scratch"' EXIT
run "pytest" "$py" -m pytest -n 2 --dist loadfile --basetemp="$scratch/tests" "$@"
if ((${#failed[@]})); then
  printf '\nNot in order: %s\n' "$(printf '%s, ' "${failed[@]}" | sed 's/, $//')"
  exit 1
fi
printf '\nAll in order.\n'
