#!/usr/bin/env bash
# Writes the lock files and the notices anew from pyproject.toml: bash installer/lock.sh [--upgrade]. Needs the
# network and Python 3.11, the oldest we serve: what it may install, the newer ones may too.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
tools=$(mktemp -d)
trap 'rm -rf "$tools"' EXIT
python3.11 -m venv "$tools"
"$tools/bin/pip" install --quiet --disable-pip-version-check pip-tools

compile() { # name of the lock file, further words for pip-compile
  "$tools/bin/pip-compile" --quiet --generate-hashes --allow-unsafe --strip-extras --annotation-style line \
    --no-header --no-emit-options --no-emit-index-url --no-emit-find-links --no-emit-trusted-host \
    --output-file "installer/$1.lock" "${@:2}"
}
compile requirements "$@" pyproject.toml
compile requirements-check --extra check --constraint installer/requirements.lock "$@" pyproject.toml
echo setuptools | compile requirements-build "$@" -
source installer/prepare.sh
prepare requirements
"$py" installer/licences.py
