-- Weather of a site from several stations, and hourly weather. Frozen once released.

-- site.weather: the code of a station, or several with "; " between them, mixed by inverse distance
-- to this power. NULL: 2. Without a meaning for a single station.
ALTER TABLE site ADD COLUMN weather_power REAL CHECK (weather_power > 0);

-- start: UTC seconds since 1970; the row is about the `seconds` from there on. Values as typed: solar
-- over the period, or its mean where the unit is w_m2. Corrections and completions are rows of the
-- next revision, as for weather_day.
CREATE TABLE weather_hour (
    station      INTEGER NOT NULL REFERENCES weather_station(id),
    start        INTEGER NOT NULL,
    revision     INTEGER NOT NULL DEFAULT 0,
    seconds      INTEGER NOT NULL CHECK (seconds BETWEEN 60 AND 3600),
    units        INTEGER NOT NULL REFERENCES weather_units(id),
    temperature REAL, tdew REAL, rh REAL, ea_kpa REAL, solar REAL, wind REAL, rain REAL,
    import       INTEGER REFERENCES import(id),
    PRIMARY KEY (station, start, revision)
) STRICT, WITHOUT ROWID;
