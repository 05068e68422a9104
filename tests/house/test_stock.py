"""Statistical factors stay out of stock: the books move on scale weights alone."""

from pathlib import Path

import farmdesk

ROOT = Path(farmdesk.__file__).parent


def test_ico_factors_are_known_to_reports_only() -> None:
    users = {
        path.relative_to(ROOT).parts[0]
        for path in ROOT.rglob("*.py")
        if "green_equivalent_g" in path.read_text(encoding="utf-8")
    }
    assert users <= {"science", "papers"}
