-- What stands at a meter besides its readings. Frozen once released.

-- An hour counter on a pump: the register counts hours, volume = hours x rated flow.
ALTER TABLE meter ADD COLUMN rated_flow REAL CHECK (rated_flow > 0);
ALTER TABLE meter ADD COLUMN rated_flow_unit TEXT;
-- Nominal size of the bore, for the largest flow that can be true.
ALTER TABLE meter ADD COLUMN size REAL CHECK (size > 0);
ALTER TABLE meter ADD COLUMN size_unit TEXT;

-- A register taken out and another put in under the same code. NULL: as before.
CREATE TABLE meter_exchange (
    meter       INTEGER NOT NULL REFERENCES meter(id),
    at          INTEGER NOT NULL,     -- UTC seconds since 1970
    final_value REAL NOT NULL,        -- of the old register
    first_value REAL NOT NULL,        -- of the new one
    unit        TEXT,
    multiplier  REAL CHECK (multiplier > 0),
    digits      INTEGER CHECK (digits BETWEEN 1 AND 15),
    import      INTEGER REFERENCES import(id),
    PRIMARY KEY (meter, at)
) STRICT, WITHOUT ROWID;

-- The volume that the supplier charged for the days from first_day up to but without end_day.
CREATE TABLE bill (
    meter     INTEGER NOT NULL REFERENCES meter(id),
    first_day TEXT NOT NULL,
    end_day   TEXT NOT NULL CHECK (end_day > first_day),
    revision  INTEGER NOT NULL DEFAULT 0,
    volume    REAL NOT NULL,
    unit      TEXT NOT NULL,
    import    INTEGER REFERENCES import(id),
    PRIMARY KEY (meter, first_day, end_day, revision)
) STRICT, WITHOUT ROWID;

-- The outline of an area as a GeoJSON MultiPolygon (longitude and latitude, or the plane of a
-- drawing), and the size measured from it. A new outline is the next revision.
CREATE TABLE area_outline (
    area        INTEGER NOT NULL REFERENCES area(id),
    revision    INTEGER NOT NULL,
    outline     TEXT NOT NULL,
    measured_m2 REAL NOT NULL CHECK (measured_m2 > 0),
    import      INTEGER REFERENCES import(id),
    PRIMARY KEY (area, revision)
) STRICT;
