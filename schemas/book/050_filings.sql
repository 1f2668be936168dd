-- Filings frozen in the book: sent ones as they were written, received ones as they were opened.
-- json is data/filing.json, byte for byte; sha256 is the digest of the bag's manifest, the filing's name.
CREATE TABLE filing (
    id        INTEGER PRIMARY KEY,
    code      TEXT NOT NULL CHECK (code <> ''),
    sha256    TEXT NOT NULL UNIQUE CHECK (length(sha256) = 64),
    direction TEXT NOT NULL CHECK (direction IN ('sent', 'received')),
    site      TEXT NOT NULL,
    json      TEXT NOT NULL,
    key       TEXT,                   -- hexadecimal public key of its signature; NULL: not signed
    file      TEXT NOT NULL,          -- name without its folder
    at        TEXT NOT NULL,
    who       TEXT NOT NULL
) STRICT;

-- What may occur in one application only: photos, invoices, runs of catches.
CREATE TABLE filing_fingerprint (
    filing    INTEGER NOT NULL REFERENCES filing(id),
    kind      TEXT NOT NULL,
    key       TEXT NOT NULL,          -- SHA-256
    PRIMARY KEY (kind, key, filing)
) STRICT, WITHOUT ROWID;
