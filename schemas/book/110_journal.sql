-- What was decided about a record before, found without reading the whole journal. Frozen once released.
CREATE INDEX journal_of_record ON journal (record) WHERE detail IS NOT NULL;
