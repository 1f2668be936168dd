-- The record book, version 1. Frozen once released: later changes come as new numbered files.
-- Values stand as they were typed, with their unit beside them; NULL is "not recorded".
-- Nothing measured is overwritten or deleted: a correction is a new row with the next revision,
-- which replaces the row of the same key with the revision before it.

CREATE TABLE import (
    id      INTEGER PRIMARY KEY,
    file    TEXT NOT NULL,            -- as named by the user, without its folder
    kind    TEXT NOT NULL,
    sha256  TEXT NOT NULL,            -- of the file's bytes
    at      TEXT NOT NULL,            -- when, UTC, ISO 8601; given by the caller
    added   INTEGER NOT NULL
) STRICT;

CREATE TABLE journal (
    id      INTEGER PRIMARY KEY,
    at      TEXT NOT NULL,
    who     TEXT NOT NULL,
    what    TEXT NOT NULL,            -- a sentence for a person
    record  TEXT NOT NULL,            -- kind and code, such as "meter M-3"
    detail  TEXT                      -- JSON with old and new values, where there are any
) STRICT;

CREATE TABLE site (
    id             INTEGER PRIMARY KEY,
    code           TEXT NOT NULL UNIQUE CHECK (code <> ''),
    name           TEXT NOT NULL,
    organisation   TEXT,
    latitude       REAL NOT NULL CHECK (latitude BETWEEN -90 AND 90),
    longitude      REAL CHECK (longitude BETWEEN -180 AND 180),
    elevation      REAL,
    elevation_unit TEXT,
    time_zone      TEXT NOT NULL DEFAULT 'UTC0',
    weather        TEXT,              -- station code; the station may come later
    import         INTEGER REFERENCES import(id),
    CHECK ((elevation IS NULL) = (elevation_unit IS NULL))
) STRICT;

CREATE TABLE meter (
    id         INTEGER PRIMARY KEY,
    code       TEXT NOT NULL UNIQUE CHECK (code <> ''),
    site       INTEGER NOT NULL REFERENCES site(id),
    unit       TEXT NOT NULL,
    multiplier REAL NOT NULL DEFAULT 1 CHECK (multiplier > 0),
    digits     INTEGER CHECK (digits BETWEEN 1 AND 15),
    parent     INTEGER REFERENCES meter(id),
    installed  TEXT,
    removed    TEXT,
    replaces   INTEGER REFERENCES meter(id),
    import     INTEGER REFERENCES import(id)
) STRICT;

CREATE TABLE area (
    id              INTEGER PRIMARY KEY,
    code            TEXT NOT NULL UNIQUE CHECK (code <> ''),
    site            INTEGER NOT NULL REFERENCES site(id),
    name            TEXT,
    size            REAL NOT NULL CHECK (size > 0),
    size_unit       TEXT NOT NULL,
    plant           TEXT,
    coefficient     REAL CHECK (coefficient >= 0),
    head_type       TEXT,
    soil            TEXT,
    root_depth      REAL,
    root_depth_unit TEXT,
    slope_percent   REAL,
    meter           INTEGER REFERENCES meter(id),
    share           REAL CHECK (share BETWEEN 0 AND 1),
    import          INTEGER REFERENCES import(id),
    CHECK ((root_depth IS NULL) = (root_depth_unit IS NULL))
) STRICT;

-- at: UTC seconds since 1970. span 0: the register stood at value at that instant; span > 0: that
-- volume passed in the span seconds that end at that instant. kind: 1 measured, 2 estimated,
-- 3 corrected. Keyed by meter first, so a meter's season is one range of the tree.
CREATE TABLE reading (
    meter    INTEGER NOT NULL REFERENCES meter(id),
    at       INTEGER NOT NULL,
    span     INTEGER NOT NULL DEFAULT 0 CHECK (span >= 0),
    revision INTEGER NOT NULL DEFAULT 0,
    value    REAL NOT NULL,
    -- A range and not IN (1, 2, 3): SQLite builds a table for such a list, for every row inserted.
    kind     INTEGER NOT NULL CHECK (kind BETWEEN 1 AND 3),
    import   INTEGER REFERENCES import(id),
    PRIMARY KEY (meter, at, span, revision)
) STRICT, WITHOUT ROWID;

-- One row per set of units that a weather table came in.
CREATE TABLE weather_units (
    id           INTEGER PRIMARY KEY,
    temperature  TEXT NOT NULL, radiation TEXT NOT NULL, wind TEXT NOT NULL, rain TEXT NOT NULL,
    reference_et TEXT NOT NULL,      -- empty where the table had no such column
    UNIQUE (temperature, radiation, wind, rain, reference_et)
) STRICT;

CREATE TABLE weather_station (
    id             INTEGER PRIMARY KEY,
    code           TEXT NOT NULL UNIQUE CHECK (code <> ''),
    latitude       REAL, longitude REAL,
    elevation      REAL, elevation_unit TEXT,
    wind_height_m  REAL              -- of the anemometer; NULL: not recorded
) STRICT;

CREATE TABLE weather_day (
    station      INTEGER NOT NULL REFERENCES weather_station(id),
    date         TEXT NOT NULL,
    revision     INTEGER NOT NULL DEFAULT 0,
    units        INTEGER NOT NULL REFERENCES weather_units(id),
    tmax REAL, tmin REAL, tmean REAL, tdew REAL,
    rhmax REAL, rhmin REAL, rhmean REAL,
    ea_kpa REAL, solar REAL, sunshine_h REAL, wind REAL, rain REAL, reference_et REAL,
    import       INTEGER REFERENCES import(id),
    PRIMARY KEY (station, date, revision)
) STRICT, WITHOUT ROWID;

-- layout: 1 grid, 2 pivot, 3 traveller, 4 irregular, 5 lateral. catch_unit: 1 mL, 2 mm, 3 in.
CREATE TABLE catch_test (
    id                INTEGER PRIMARY KEY,
    code              TEXT NOT NULL UNIQUE CHECK (code <> ''),
    area              INTEGER NOT NULL REFERENCES area(id),
    date              TEXT NOT NULL,
    layout            INTEGER NOT NULL CHECK (layout IN (1, 2, 3, 4, 5)),
    throat_area       REAL, throat_area_unit TEXT,
    minutes           REAL CHECK (minutes > 0),
    wind              REAL, wind_unit TEXT,
    lane_spacing      REAL, lane_spacing_unit TEXT,
    opposite_pulls    INTEGER NOT NULL DEFAULT 0 CHECK (opposite_pulls IN (0, 1)),
    position_unit     TEXT NOT NULL,
    catch_unit        INTEGER NOT NULL CHECK (catch_unit IN (1, 2, 3)),
    can_size          REAL, can_size_unit TEXT,
    flow              REAL, flow_unit TEXT,
    travel_speed      REAL, travel_speed_unit TEXT,
    edge_offset       REAL, edge_offset_unit TEXT,
    import            INTEGER REFERENCES import(id)
) STRICT;

-- When several stations water the tested area: each one's run, and what it left in each can.
CREATE TABLE catch_station (
    test      INTEGER NOT NULL REFERENCES catch_test(id),
    number    INTEGER NOT NULL,       -- running order, from 1
    station   TEXT NOT NULL,
    minutes   REAL NOT NULL,
    PRIMARY KEY (test, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE catch_by_station (
    test      INTEGER NOT NULL REFERENCES catch_test(id),
    number    INTEGER NOT NULL,       -- of the can
    station   TEXT NOT NULL,
    reading   REAL NOT NULL,
    PRIMARY KEY (test, number, station)
) STRICT, WITHOUT ROWID;

-- side: 1 left, 2 right.
CREATE TABLE catch_can (
    test      INTEGER NOT NULL REFERENCES catch_test(id),
    number    INTEGER NOT NULL,       -- order on the sheet, from 1
    can       TEXT NOT NULL,
    x REAL, y REAL, distance REAL, side INTEGER CHECK (side IN (1, 2)),
    reading   REAL NOT NULL CHECK (reading >= 0),
    excluded  TEXT,
    PRIMARY KEY (test, number),
    UNIQUE (test, can)
) STRICT, WITHOUT ROWID;
