"""The least: pandas reads the file as text, the two columns are parsed, one executemany in one transaction."""

import json
import resource
import sqlite3
import sys
import time
from pathlib import Path

import pandas as pd

TABLE = """
CREATE TABLE logger_row (
  entry_seq INTEGER NOT NULL,
  at_utc_s INTEGER NOT NULL,
  value REAL NOT NULL,
  CONSTRAINT pk_logger_row PRIMARY KEY (entry_seq, at_utc_s)
) WITHOUT ROWID, STRICT
"""
folder = Path(sys.argv[1])
target = folder / "floor-read.db"
target.unlink(missing_ok=True)
db = sqlite3.connect(target, isolation_level=None)
db.execute("PRAGMA journal_mode=DELETE")
db.execute("PRAGMA synchronous=FULL")
db.execute(TABLE)

begun = time.perf_counter()
table = pd.read_csv(folder / "logger.csv", dtype=str)
stamp = pd.to_datetime(table.iloc[:, 0], format="%Y-%m-%dT%H:%M:%S")
at_utc_s = (stamp.dt.as_unit("s").astype("int64") + 6 * 3600).tolist()  # this farm sets no clock
value = pd.to_numeric(table.iloc[:, 1]).tolist()
db.execute("BEGIN IMMEDIATE")
db.executemany("INSERT INTO logger_row VALUES (?, ?, ?)", zip([1] * len(value), at_utc_s, value, strict=True))
db.execute("COMMIT")
took = time.perf_counter() - begun

assert db.execute("SELECT count(*), min(at_utc_s) FROM logger_row").fetchone() == (len(value), 1_735_945_200)
db.close()
print(json.dumps({"file_s": took, "peak_mb": resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024}))
