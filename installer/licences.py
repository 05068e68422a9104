"""Gather the notices of what Farmdesk hands on: `.venv/bin/python installer/licences.py` after a change of the lock.

Every package in requirements.lock gets one file in resources/licences, made of the licence texts that the
package itself carries; the fonts' notices come from resources/fonts. Qt.txt, GPL-3.0.txt and LGPL-3.0.txt are
kept by hand, because PySide6 carries no text of its own.
"""

from __future__ import annotations

import re
from importlib.metadata import Distribution, distribution
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
TO = ROOT / "resources" / "licences"
TEXT = re.compile(r"licen[cs]e|copying|notice", re.IGNORECASE)
OURS = {"pyside6-essentials", "shiboken6"}


def locked() -> list[str]:
    """Names of the packages in the lock file of the program itself."""
    return re.findall(r"^([\w.-]+)==", (ROOT / "installer" / "requirements.lock").read_text(), re.MULTILINE)


def notice(package: Distribution) -> str:
    """The package's name and version, the licence it states, and each of its licence texts once."""
    name = package.metadata["Name"].lower().replace("_", "-")
    stated = package.metadata["License-Expression"] or (package.metadata["License"] or "see below").splitlines()[0]
    parts = [f"{name} {package.version}\nLicence as the package states it: {stated}"]
    seen = set()
    for file in sorted(package.files or [], key=str):
        path = Path(str(package.locate_file(file)))
        if not TEXT.search(str(file)) or path.suffix.startswith((".py", ".so")):
            continue
        text = path.read_text(encoding="utf-8", errors="replace").strip()
        if text not in seen:
            seen.add(text)
            parts.append(f"{'-' * 78}\n{re.sub(r'^.*dist-info/(licenses/)?', '', str(file))}\n\n{text}")
    if name in OURS:
        parts.append("Used under LGPL-3.0-only; see Qt.txt, LGPL-3.0.txt and GPL-3.0.txt beside this file.")
    elif not seen:
        raise SystemExit(f"{name} carries no licence text; write its notice by hand.")
    return "\n\n".join(parts) + "\n"


def main() -> None:
    """Write all notices anew."""
    for name in locked():
        (TO / f"{name}.txt").write_text(notice(distribution(name)), encoding="utf-8")
    for font in sorted((ROOT / "resources" / "fonts").glob("*-LICENSE.md")):
        family = font.name.removesuffix("-LICENSE.md")
        (TO / f"{family}.txt").write_text(f"{family} (fonts)\n\n{font.read_text(encoding='utf-8')}", encoding="utf-8")


if __name__ == "__main__":
    main()
