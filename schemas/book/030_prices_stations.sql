-- Prices, pumps, stations and watering rules; what is known of an area besides its record.

-- site NULL: holds for every site that has no rate of its own. valid_to NULL: still holds.
CREATE TABLE water_rate (
    id              INTEGER PRIMARY KEY,
    code            TEXT NOT NULL UNIQUE CHECK (code <> ''),
    site            INTEGER REFERENCES site(id),
    valid_from      TEXT NOT NULL,
    valid_to        TEXT,
    unit            TEXT NOT NULL,
    currency        TEXT NOT NULL,
    fixed_per_month REAL NOT NULL DEFAULT 0 CHECK (fixed_per_month >= 0),
    sewer_price     REAL CHECK (sewer_price >= 0),
    sewer_share     REAL NOT NULL DEFAULT 1 CHECK (sewer_share BETWEEN 0 AND 1),
    import          INTEGER REFERENCES import(id),
    CHECK (valid_to IS NULL OR valid_to >= valid_from)
) STRICT;

-- number: from 1, lowest tier first. up_to NULL: the last tier.
CREATE TABLE water_rate_tier (
    rate   INTEGER NOT NULL REFERENCES water_rate(id),
    number INTEGER NOT NULL,
    up_to  REAL CHECK (up_to > 0),
    price  REAL NOT NULL CHECK (price >= 0),
    PRIMARY KEY (rate, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE energy_rate (
    id            INTEGER PRIMARY KEY,
    code          TEXT NOT NULL UNIQUE CHECK (code <> ''),
    site          INTEGER REFERENCES site(id),
    valid_from    TEXT NOT NULL,
    valid_to      TEXT,
    currency      TEXT NOT NULL,
    price_per_kwh REAL NOT NULL CHECK (price_per_kwh >= 0),
    import        INTEGER REFERENCES import(id),
    CHECK (valid_to IS NULL OR valid_to >= valid_from)
) STRICT;

CREATE TABLE pump (
    id            INTEGER PRIMARY KEY,
    code          TEXT NOT NULL UNIQUE CHECK (code <> ''),
    site          INTEGER NOT NULL REFERENCES site(id),
    lift REAL, lift_unit TEXT,
    pressure REAL, pressure_unit TEXT,
    friction REAL, friction_unit TEXT,
    efficiency    REAL NOT NULL CHECK (efficiency > 0 AND efficiency <= 1),
    share         REAL NOT NULL DEFAULT 1 CHECK (share BETWEEN 0 AND 1),
    import        INTEGER REFERENCES import(id),
    CHECK ((lift IS NULL) = (lift_unit IS NULL)),
    CHECK ((pressure IS NULL) = (pressure_unit IS NULL)),
    CHECK ((friction IS NULL) = (friction_unit IS NULL))
) STRICT;

-- off_target NULL: not known. special: 1 for a special landscape area of an ordinance.
CREATE TABLE area_setting (
    area              INTEGER PRIMARY KEY REFERENCES area(id),
    off_target        REAL CHECK (off_target BETWEEN 0 AND 1),
    off_target_source TEXT,
    special           INTEGER NOT NULL DEFAULT 0 CHECK (special IN (0, 1))
) STRICT;

-- rate: net application rate. arc: of its heads, degrees; NULL: all the way round or not recorded.
CREATE TABLE station (
    id          INTEGER PRIMARY KEY,
    code        TEXT NOT NULL UNIQUE CHECK (code <> ''),
    area        INTEGER NOT NULL REFERENCES area(id),
    name        TEXT,
    rate        REAL CHECK (rate > 0), rate_unit TEXT,
    rate_source TEXT,
    arc         REAL CHECK (arc > 0 AND arc <= 360),
    flow        REAL CHECK (flow > 0), flow_unit TEXT,
    import      INTEGER REFERENCES import(id),
    CHECK ((rate IS NULL) = (rate_unit IS NULL)),
    CHECK ((flow IS NULL) = (flow_unit IS NULL))
) STRICT;

-- days: bit 0 Monday to bit 6 Sunday. starts, ends: minutes after midnight on the site's clock; a
-- window that ends before it starts runs past midnight.
CREATE TABLE watering_rule (
    site             INTEGER PRIMARY KEY REFERENCES site(id),
    days             INTEGER NOT NULL CHECK (days BETWEEN 1 AND 127),
    starts           INTEGER NOT NULL CHECK (starts BETWEEN 0 AND 1439),
    ends             INTEGER NOT NULL CHECK (ends BETWEEN 0 AND 1439),
    stations_at_once INTEGER NOT NULL DEFAULT 1 CHECK (stations_at_once >= 1),
    CHECK (starts <> ends)
) STRICT;
