#!/usr/bin/env bash
# Opens the practice season: bash installer/start.sh. The first start sets up .venv; later ones need no network.
set -euo pipefail
source "$(dirname "${BASH_SOURCE[0]}")/prepare.sh"

# A display that is named may still be gone, and Qt would abort: so one small process tries it first.
window_opens() {
  has_display && (
    ulimit -c 0
    "$py" -c 'from PySide6.QtGui import QGuiApplication as App; App([])' || exit 1 # said here, the abort is not reported by the shell
  ) >/dev/null 2>&1
}

prepare requirements
if window_opens; then
  exec "$py" -P -m farmdesk "$@"
fi
folder=$("$py" -P -c 'from farmdesk import paths; print(paths.data_folder() / "practice-pictures")')
echo "There is no display to open a window on, so the practice papers and a picture of every page are written to $folder."
export QT_QPA_PLATFORM=offscreen
exec "$py" -P -m farmdesk pictures --to "$folder"
