#!/usr/bin/env bash
# Gathers every sentence of the program for its translators and makes what the program reads:
# bash installer/words.sh. Sentences that are gone are dropped; new ones wait as "unfinished" in the .ts files.
set -euo pipefail
source "$(dirname "${BASH_SOURCE[0]}")/prepare.sh"

prepare requirements
cd "$root"
"$py" installer/words.py resources/translations/farmdesk_*.ts
for ts in resources/translations/farmdesk_*.ts; do
  "$(dirname "$py")/pyside6-lrelease" -silent "$ts" -qm "${ts%.ts}.qm"
done
