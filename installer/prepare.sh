# shellcheck shell=bash
# Read by start.sh and check.sh. `prepare NAME` leaves a .venv that holds what installer/NAME.lock names, and sees
# that the system has the libraries Qt needs; words after the name go to pip. The network is asked only where
# something is missing.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
venv=$root/.venv
py=$venv/bin/python
# Caches of fonts and shaders stay in .venv too: nothing outside the checkout is touched but the person's own data.
export PYTHONPATH=$root PYTHONNOUSERSITE=1 XDG_CACHE_HOME=$venv/cache
unset PYTHONHOME PIP_USER PIP_TARGET PIP_PREFIX

# Library = Debian package, as ldd shows them for the Qt of PySide6 6.11. The first list is needed to draw at all,
# the second to open a window under X11.
to_draw=(libEGL.so.1=libegl1 libGL.so.1=libgl1 libdbus-1.so.3=libdbus-1-3 libfontconfig.so.1=libfontconfig1
  libgthread-2.0.so.0=libglib2.0-0 libxkbcommon.so.0=libxkbcommon0)
to_open=(libxkbcommon-x11.so.0=libxkbcommon-x11-0 libxcb-cursor.so.0=libxcb-cursor0 libxcb-icccm.so.4=libxcb-icccm4
  libxcb-image.so.0=libxcb-image0 libxcb-keysyms.so.1=libxcb-keysyms1 libxcb-randr.so.0=libxcb-randr0
  libxcb-render-util.so.0=libxcb-render-util0 libxcb-shape.so.0=libxcb-shape0 libxcb-xkb.so.1=libxcb-xkb1)

say() { printf '%s\n' "$*" >&2; }
stop() {
  say "$*"
  exit 1
}

has_display() {
  [[ -n ${DISPLAY-}${WAYLAND_DISPLAY-} && ${QT_QPA_PLATFORM-} != offscreen && ${QT_QPA_PLATFORM-} != minimal ]]
}

# The Debian packages of those libraries that the loader does not know.
missing() {
  local known pair
  known=$(PATH=$PATH:/usr/sbin:/sbin ldconfig -p) || return 0
  for pair in "$@"; do
    [[ $known == *$'\t'"${pair%%=*} "* ]] || printf '%s ' "${pair#*=}"
  done
}

# Add Debian packages through apt where we may, else say the one line to run.
add() {
  local as_root=()
  [[ $(id -u) == 0 ]] || as_root=(sudo -n)
  if command -v apt-get >/dev/null && "${as_root[@]}" true 2>/dev/null; then
    say "Adding $*."
    "${as_root[@]}" apt-get -qq update >/dev/null || true # a list that is a day old will do
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
      apt-get -qq install -y --no-install-recommends "$@" >/dev/null && return
  fi
  stop "Something is missing on this computer; please run this line, then start again: sudo apt-get install -y $*"
}

find_python() {
  for python in python3 python3.13 python3.12 python3.11 python3.14; do
    "$python" -c 'import sys; sys.exit(not (3, 11) <= sys.version_info < (3, 15))' 2>/dev/null && return
  done
  stop "Farmdesk needs Python 3.11 to 3.14, and this computer has $(python3 -V 2>/dev/null || echo none)."
}

# PySide6 6.11 is built against glibc 2.34 on x86_64 and 2.39 on aarch64.
check_system() {
  "$python" - <<'END' || exit 1
import platform, sys
needed = {"x86_64": (2, 34), "aarch64": (2, 39)}.get(platform.machine())
name, version = platform.libc_ver()
if needed is None or name != "glibc" or tuple(map(int, version.split(".")[:2])) < needed:
    sys.exit("Farmdesk needs Linux on x86_64 with glibc 2.34 (Debian 12) or on aarch64 with glibc 2.39 (Debian 13) "
             f"or newer, and this is {platform.machine()} with {name or 'another C library'} {version}.")
END
}

make_venv() {
  find_python
  check_system
  "$python" -c 'import ensurepip' 2>/dev/null ||
    add "$("$python" -c 'import sys; print("python%d.%d-venv" % sys.version_info[:2])')"
  "$py" -c 'import pip, sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null || "$python" -m venv --clear "$venv"
}

prepare() {
  local lock=$root/installer/$1.lock stamp=$venv/$1.stamp lock_is needed
  exec 9<"$root/installer"
  flock 9 # two starts at once would spoil each other's .venv
  needed=$(missing "${to_draw[@]}")
  ! has_display || needed+=$(missing "${to_open[@]}")
  # shellcheck disable=SC2086 # one word a package
  [[ -z $needed ]] || add $needed
  lock_is=$(sha256sum <"$lock")
  if [[ $(cat "$stamp" 2>/dev/null) != "$lock_is" ]] || ! "$py" -c 'import PySide6' 2>/dev/null; then
    make_venv
    say "Setting up Farmdesk, once: fetching what installer/$1.lock names, up to 300 MB."
    rm -f "$stamp"
    "$py" -m pip install --quiet --no-input --disable-pip-version-check --no-cache-dir --no-deps \
      --only-binary=:all: --require-hashes "${@:2}" -r "$lock" >&2 ||
      stop "The packages could not be fetched or did not match their hashes; with a network, run the same line again."
    echo "$lock_is" >"$stamp"
  fi
  exec 9<&-
}
