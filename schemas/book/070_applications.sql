-- Rebate applications. Their figures stand in their filings; the status is the last row of the
-- history, which only grows.
CREATE TABLE application (
    id        INTEGER PRIMARY KEY,
    code      TEXT NOT NULL UNIQUE CHECK (code <> ''),
    applicant TEXT NOT NULL,
    site      TEXT NOT NULL,
    program   TEXT NOT NULL,
    currency  TEXT NOT NULL
) STRICT;

CREATE TABLE application_filing (
    application INTEGER NOT NULL REFERENCES application(id),
    filing      INTEGER NOT NULL REFERENCES filing(id),
    role        TEXT NOT NULL CHECK (role IN ('before', 'after', 'both')),
    PRIMARY KEY (application, filing)
) STRICT, WITHOUT ROWID;

-- status: 1 received, 2 incomplete, 3 under review, 4 approved, 5 declined, 6 paid.
CREATE TABLE application_status (
    application INTEGER NOT NULL REFERENCES application(id),
    number      INTEGER NOT NULL,     -- from 1
    at          TEXT NOT NULL,
    who         TEXT NOT NULL,
    status      INTEGER NOT NULL CHECK (status BETWEEN 1 AND 6),
    note        TEXT,
    amount      REAL CHECK (amount >= 0),
    PRIMARY KEY (application, number)
) STRICT, WITHOUT ROWID;
