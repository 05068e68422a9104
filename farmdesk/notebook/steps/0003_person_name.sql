CREATE TABLE person_before AS SELECT * FROM person;

DROP TABLE person;

CREATE TABLE person (
  code TEXT NOT NULL,
  role TEXT NOT NULL,
  pay TEXT NOT NULL,
  name TEXT NOT NULL,
  named INTEGER NOT NULL,
  born INTEGER,
  CONSTRAINT pk_person PRIMARY KEY (code),
  CONSTRAINT ck_person_named_yes_or_no CHECK (named IN (0, 1))
) STRICT;

INSERT INTO person SELECT *, '', 0, NULL FROM person_before ORDER BY rowid;

DROP TABLE person_before;
