-- What was said is kept, entry by entry, and everything else follows from it. Entries of earlier versions stay as they were posted.

CREATE TABLE said (
    id          INTEGER PRIMARY KEY,
    key         TEXT NOT NULL UNIQUE CHECK (key <> ''),
    kind        TEXT NOT NULL CHECK (kind <> ''),
    about       TEXT,                   -- the key of the entry that it takes back or puts right
    name        TEXT COLLATE NOCASE,    -- what it defines
    date        TEXT NOT NULL CHECK (date(date) IS date),
    ord         INTEGER NOT NULL UNIQUE CHECK (ord > 0), -- its place among the entries of its day
    recorded_at TEXT NOT NULL UNIQUE,
    json        TEXT NOT NULL CHECK (json_valid(json)),
    digest      TEXT NOT NULL
) STRICT;
CREATE INDEX said_about ON said (about) WHERE about IS NOT NULL;
CREATE INDEX said_by_name ON said (kind, name) WHERE name IS NOT NULL;

-- The names that entries gave; none is ever given again.
CREATE TABLE said_name (
    key    TEXT NOT NULL REFERENCES said (key),
    slot   TEXT NOT NULL COLLATE NOCASE,
    series TEXT NOT NULL COLLATE NOCASE,
    number INTEGER NOT NULL CHECK (number > 0),
    PRIMARY KEY (key, slot),
    UNIQUE (series, number)
) STRICT, WITHOUT ROWID;

-- An entry that was taken back does not count; nor do the acts that take back and put right move anything themselves.
ALTER TABLE entry ADD COLUMN amends INTEGER REFERENCES entry (id);
ALTER TABLE entry ADD COLUMN ord INTEGER NOT NULL DEFAULT 0;
ALTER TABLE entry ADD COLUMN counts INTEGER NOT NULL DEFAULT 1 CHECK (counts IN (0, 1));
UPDATE entry SET ord = id;
UPDATE entry SET counts = 0 WHERE id IN (SELECT undoes FROM entry WHERE undoes IS NOT NULL);
DROP INDEX entry_is_reversed_once;
CREATE INDEX entry_undoes ON entry (undoes) WHERE undoes IS NOT NULL;
CREATE INDEX entry_amends ON entry (amends) WHERE amends IS NOT NULL;
DROP INDEX entry_by_date;
CREATE INDEX entry_by_date ON entry (date, ord);
DROP VIEW standing_entry;
CREATE VIEW standing_entry AS SELECT * FROM entry WHERE counts = 1 AND undoes IS NULL AND amends IS NULL;
DROP TRIGGER correction_takes_work_back;

-- What an entry wrote is found by the entry, since it may be written once more.
CREATE INDEX place_by_entry ON place (entry_id);
CREATE INDEX lot_by_entry ON lot (entry_id);
CREATE INDEX opening_by_entry ON opening (entry_id);
CREATE INDEX cleaning_by_entry ON cleaning (entry_id);
CREATE INDEX storage_move_by_entry ON storage_move (entry_id);
