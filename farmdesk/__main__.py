"""`python -m farmdesk`: what stands on the command line decides."""

from __future__ import annotations

import sys

from farmdesk.cli import main

if __name__ == "__main__":
    sys.exit(main())
