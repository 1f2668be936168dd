-- Design plans: where the turf lies and which heads water it. Frozen once released.
-- Numbers stand as typed, in the units of the plan; a changed plan is a new revision of its code.

CREATE TABLE design_plan (
    id            INTEGER PRIMARY KEY,
    code          TEXT NOT NULL CHECK (code <> ''),
    revision      INTEGER NOT NULL DEFAULT 0,
    site          INTEGER NOT NULL REFERENCES site(id),
    name          TEXT,
    length_unit   TEXT NOT NULL,
    flow_unit     TEXT NOT NULL,
    pressure_unit TEXT NOT NULL,
    import        INTEGER REFERENCES import(id),
    UNIQUE (code, revision)
) STRICT;

-- kind: 1 turf, 2 ground that should get no water, 3 obstacle. ring 0 is the outer one, then its holes.
CREATE TABLE design_outline (
    plan    INTEGER NOT NULL REFERENCES design_plan(id),
    kind    INTEGER NOT NULL CHECK (kind IN (1, 2, 3)),
    polygon INTEGER NOT NULL,
    ring    INTEGER NOT NULL,
    point   INTEGER NOT NULL,
    x REAL NOT NULL, y REAL NOT NULL,
    PRIMARY KEY (plan, kind, polygon, ring, point)
) STRICT, WITHOUT ROWID;

-- arc and facing in degrees, facing clockwise from north.
CREATE TABLE design_head (
    plan     INTEGER NOT NULL REFERENCES design_plan(id),
    number   INTEGER NOT NULL,        -- order in the plan, from 1
    head     TEXT NOT NULL CHECK (head <> ''),
    x REAL NOT NULL, y REAL NOT NULL,
    radius   REAL CHECK (radius > 0),
    flow     REAL CHECK (flow > 0),
    nozzle   TEXT,
    pressure REAL CHECK (pressure > 0),
    arc      REAL NOT NULL CHECK (arc > 0 AND arc <= 360),
    facing   REAL NOT NULL,
    station  TEXT,
    profile  TEXT NOT NULL,
    PRIMARY KEY (plan, number),
    UNIQUE (plan, head)
) STRICT, WITHOUT ROWID;

CREATE TABLE design_nozzle (
    plan    INTEGER NOT NULL REFERENCES design_plan(id),
    nozzle  TEXT NOT NULL CHECK (nozzle <> ''),
    lowest  REAL, highest REAL,       -- operating range; NULL: not stated
    PRIMARY KEY (plan, nozzle)
) STRICT, WITHOUT ROWID;

CREATE TABLE design_nozzle_row (
    plan     INTEGER NOT NULL,
    nozzle   TEXT NOT NULL,
    pressure REAL NOT NULL CHECK (pressure > 0),
    radius   REAL NOT NULL CHECK (radius > 0),
    flow     REAL NOT NULL CHECK (flow > 0),
    PRIMARY KEY (plan, nozzle, pressure),
    FOREIGN KEY (plan, nozzle) REFERENCES design_nozzle(plan, nozzle)
) STRICT, WITHOUT ROWID;

CREATE TABLE design_profile (
    plan     INTEGER NOT NULL REFERENCES design_plan(id),
    profile  TEXT NOT NULL CHECK (profile <> ''),
    distance REAL NOT NULL CHECK (distance >= 0),
    rate     REAL NOT NULL CHECK (rate >= 0),
    PRIMARY KEY (plan, profile, distance)
) STRICT, WITHOUT ROWID;

-- kind: 1 pipe, 2 lane of a travelling gun, 3 centre pivot. Of a pivot, point 0 is its centre and each
-- further row a span, its length in x.
CREATE TABLE design_line (
    plan   INTEGER NOT NULL REFERENCES design_plan(id),
    kind   INTEGER NOT NULL CHECK (kind IN (1, 2, 3)),
    number INTEGER NOT NULL,
    point  INTEGER NOT NULL,
    line   TEXT,                      -- its name
    size   TEXT,                      -- of a pipe, as printed
    x REAL NOT NULL, y REAL,
    PRIMARY KEY (plan, kind, number, point)
) STRICT, WITHOUT ROWID;

-- What the reader of the plan had to fill in, as sentences.
CREATE TABLE design_assumed (
    plan     INTEGER NOT NULL REFERENCES design_plan(id),
    number   INTEGER NOT NULL,
    sentence TEXT NOT NULL,
    PRIMARY KEY (plan, number)
) STRICT, WITHOUT ROWID;
