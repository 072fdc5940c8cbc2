-- Each name that was given has a digest of its own, so that one that nothing uses any more cannot be altered unseen. Names that were given before this have
-- none until the next entry is recorded. Two entries may share a place in a day: when one is put back to where it was, and in a join.

CREATE TABLE said_next (
    id          INTEGER PRIMARY KEY,
    key         TEXT NOT NULL UNIQUE CHECK (key <> ''),
    kind        TEXT NOT NULL CHECK (kind <> ''),
    about       TEXT,                   -- the key of the entry that it takes back or puts right
    name        TEXT COLLATE NOCASE,    -- what it defines
    date        TEXT NOT NULL CHECK (date(date) IS date),
    ord         INTEGER NOT NULL CHECK (ord > 0), -- its place among the entries of its day
    recorded_at TEXT NOT NULL,
    json        TEXT NOT NULL CHECK (json_valid(json)),
    digest      TEXT NOT NULL
) STRICT;
INSERT INTO said_next (id, key, kind, about, name, date, ord, recorded_at, json, digest)
SELECT id, key, kind, about, name, date, ord, recorded_at, json, digest FROM said;

CREATE TABLE said_name_next (
    key    TEXT NOT NULL REFERENCES said_next (key),
    slot   TEXT NOT NULL COLLATE NOCASE,
    series TEXT NOT NULL COLLATE NOCASE,
    number INTEGER NOT NULL CHECK (number > 0),
    digest TEXT NOT NULL DEFAULT '',
    PRIMARY KEY (key, slot),
    UNIQUE (series, number)
) STRICT, WITHOUT ROWID;
INSERT INTO said_name_next (key, slot, series, number) SELECT key, slot, series, number FROM said_name;

DROP TABLE said_name;
DROP TABLE said;
ALTER TABLE said_next RENAME TO said;
ALTER TABLE said_name_next RENAME TO said_name;
CREATE INDEX said_by_time ON said (recorded_at, key);
CREATE INDEX said_about ON said (about) WHERE about IS NOT NULL;
CREATE INDEX said_by_name ON said (kind, name) WHERE name IS NOT NULL;
CREATE INDEX said_name_without_digest ON said_name (key) WHERE digest = '';
