CREATE TABLE block_before AS SELECT * FROM block;

DROP TABLE block;

CREATE TABLE block (
  code TEXT NOT NULL,
  name TEXT NOT NULL,
  area_ha REAL NOT NULL,
  low_m REAL NOT NULL,
  high_m REAL NOT NULL,
  variety TEXT NOT NULL,
  trees_n INTEGER NOT NULL,
  planted INTEGER,
  shade TEXT NOT NULL,
  organic TEXT NOT NULL,
  name_local TEXT NOT NULL,
  boundary TEXT NOT NULL,
  CONSTRAINT pk_block PRIMARY KEY (code)
) STRICT;

INSERT INTO block SELECT *, '' FROM block_before;

DROP TABLE block_before;
