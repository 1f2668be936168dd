-- What the auditor noted beside the catches. Frozen once released.

-- 0: nothing was noted; 1: notes were kept, even if there is no row (an inspection that found nothing).
ALTER TABLE catch_test ADD COLUMN pressures_noted INTEGER NOT NULL DEFAULT 0 CHECK (pressures_noted IN (0, 1));
ALTER TABLE catch_test ADD COLUMN inspected INTEGER NOT NULL DEFAULT 0 CHECK (inspected IN (0, 1));

CREATE TABLE catch_pressure (
    test        INTEGER NOT NULL REFERENCES catch_test(id),
    number      INTEGER NOT NULL,     -- order on the sheet, from 1
    place       TEXT NOT NULL,
    pressure    REAL NOT NULL, pressure_unit TEXT NOT NULL,
    nozzle_low  REAL, nozzle_low_unit TEXT,
    nozzle_high REAL, nozzle_high_unit TEXT,
    PRIMARY KEY (test, number)
) STRICT, WITHOUT ROWID;

-- kind: a key of schemas/reference/findings.csv. severity: 1 minor, 2 moderate, 3 severe.
CREATE TABLE catch_finding (
    test      INTEGER NOT NULL REFERENCES catch_test(id),
    number    INTEGER NOT NULL,
    kind      TEXT NOT NULL,
    place     TEXT,
    count     INTEGER NOT NULL CHECK (count > 0),
    severity  INTEGER NOT NULL CHECK (severity IN (1, 2, 3)),
    corrected INTEGER NOT NULL CHECK (corrected IN (0, 1)),
    note      TEXT,
    PRIMARY KEY (test, number)
) STRICT, WITHOUT ROWID;
