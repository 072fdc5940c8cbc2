-- A notice of Today that is to be quiet until a day; the last word about one holds.

CREATE TABLE snooze (
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    notice   TEXT NOT NULL CHECK (notice <> ''),               -- its kind: expires-soon
    about    TEXT NOT NULL COLLATE NOCASE CHECK (about <> ''), -- the bath, box, bottle, jug, side or item
    until    TEXT NOT NULL CHECK (date(until) IS until),       -- the day on which it is shown again
    reason   TEXT NOT NULL CHECK (reason <> ''),
    PRIMARY KEY (entry_id, about)
) STRICT, WITHOUT ROWID;
