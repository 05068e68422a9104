"""The season desk of a small coffee farm: one notebook, one picture folded from it, and good paper."""

__version__ = "1.0.0"
