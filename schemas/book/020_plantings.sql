-- What happened on an area that changes what its turf uses. Frozen once released.
-- kind: 1 sod harvest, 2 establishment, 3 overseeding, 4 shade. A correction is the next revision.
CREATE TABLE planting (
    area        INTEGER NOT NULL REFERENCES area(id),
    kind        INTEGER NOT NULL CHECK (kind IN (1, 2, 3, 4)),
    first_day   TEXT NOT NULL,
    revision    INTEGER NOT NULL DEFAULT 0,
    last_day    TEXT CHECK (last_day >= first_day),
    key         TEXT,                 -- of sod_stages.csv, establishment.csv or plants.csv
    coefficient REAL CHECK (coefficient >= 0),
    import      INTEGER REFERENCES import(id),
    PRIMARY KEY (area, kind, first_day, revision)
) STRICT, WITHOUT ROWID;
