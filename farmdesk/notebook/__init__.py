"""The season file: what was written down, kept in order, whole, and joined to what stood before it."""
