-- Holders and the boxes of exposed film are places; a sheet has a row of its own from the day it leaves its box. What a sheet went
-- through is read from its standing entries, so a correction undoes it.

CREATE TABLE holder (
    id        INTEGER PRIMARY KEY,
    code      TEXT NOT NULL UNIQUE COLLATE NOCASE,
    format    TEXT NOT NULL,
    notch     TEXT NOT NULL,
    bought_on TEXT CHECK (bought_on IS NULL OR date(bought_on) IS bought_on)
) STRICT;

CREATE TABLE holder_side (
    place_id  INTEGER PRIMARY KEY REFERENCES place (id),
    holder_id INTEGER NOT NULL REFERENCES holder (id),
    number    INTEGER NOT NULL CHECK (number > 0),
    name      TEXT NOT NULL COLLATE NOCASE,
    UNIQUE (holder_id, number)
) STRICT;

CREATE TABLE side_service (
    entry_id   INTEGER NOT NULL REFERENCES entry (id),
    place_id   INTEGER NOT NULL REFERENCES holder_side (place_id),
    in_service INTEGER NOT NULL CHECK (in_service IN (0, 1)),
    reason     TEXT NOT NULL,
    PRIMARY KEY (place_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE cleaning (
    entry_id  INTEGER NOT NULL REFERENCES entry (id),
    holder_id INTEGER NOT NULL REFERENCES holder (id),
    bagged    INTEGER NOT NULL CHECK (bagged IN (0, 1)),
    PRIMARY KEY (holder_id, entry_id)
) STRICT, WITHOUT ROWID;

-- One box for each film and group, for good: empty, it has no label.
CREATE TABLE exposed_box (
    place_id INTEGER PRIMARY KEY REFERENCES place (id),
    item_id  INTEGER NOT NULL REFERENCES item (id),
    "group"  TEXT NOT NULL COLLATE NOCASE,
    UNIQUE (item_id, "group")
) STRICT;

CREATE TABLE sheet (
    id       INTEGER PRIMARY KEY,
    entry_id INTEGER NOT NULL REFERENCES entry (id), -- the load or session with which it left its box
    lot_id   INTEGER NOT NULL REFERENCES lot (id),
    box_id   INTEGER NOT NULL REFERENCES place (id),
    side_id  INTEGER REFERENCES holder_side (place_id), -- none when it went straight into the tray
    cost     INTEGER NOT NULL CHECK (cost >= 0)
) STRICT;

CREATE INDEX sheet_by_entry ON sheet (entry_id);
CREATE INDEX sheet_by_side ON sheet (side_id) WHERE side_id IS NOT NULL;

CREATE TABLE sheet_move (
    entry_id   INTEGER NOT NULL REFERENCES entry (id),
    sheet_id   INTEGER NOT NULL REFERENCES sheet (id),
    from_place INTEGER NOT NULL REFERENCES place (id),
    to_place   INTEGER NOT NULL REFERENCES place (id),
    PRIMARY KEY (sheet_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE INDEX sheet_move_by_entry ON sheet_move (entry_id);
CREATE INDEX sheet_move_to ON sheet_move (to_place) WHERE to_place >= 100;
CREATE INDEX sheet_move_from ON sheet_move (from_place) WHERE from_place >= 100;

CREATE TABLE exposure (
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    sheet_id INTEGER NOT NULL REFERENCES sheet (id),
    date     TEXT NOT NULL CHECK (date(date) IS date),
    "group"  TEXT NOT NULL,
    line     TEXT NOT NULL,
    PRIMARY KEY (sheet_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE INDEX exposure_by_entry ON exposure (entry_id);

CREATE TABLE sheet_fate (
    entry_id INTEGER NOT NULL REFERENCES session (entry_id),
    sheet_id INTEGER NOT NULL REFERENCES sheet (id),
    position INTEGER NOT NULL CHECK (position > 0), -- among the session's sheets
    batch    INTEGER NOT NULL CHECK (batch > 0),
    fate     TEXT NOT NULL CHECK (fate IN ('negative', 'keeper', 'reject', 'test', 'practice')),
    cause    TEXT CHECK (cause IS NULL OR fate = 'reject'),
    negative TEXT UNIQUE COLLATE NOCASE, -- never given again, so a session that was reversed keeps its numbers
    year     INTEGER,
    running  INTEGER,
    PRIMARY KEY (sheet_id, entry_id),
    CHECK ((negative IS NULL) = (year IS NULL) AND (negative IS NULL) = (running IS NULL))
) STRICT, WITHOUT ROWID;

CREATE INDEX sheet_fate_by_entry ON sheet_fate (entry_id, position);
CREATE INDEX sheet_fate_by_number ON sheet_fate (year, running) WHERE year IS NOT NULL;

CREATE INDEX sheet_fate_by_cause ON sheet_fate (cause) WHERE cause IS NOT NULL;

CREATE TABLE keeper (
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    sheet_id INTEGER NOT NULL REFERENCES sheet (id),
    PRIMARY KEY (sheet_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE INDEX keeper_by_entry ON keeper (entry_id);

-- Sheets that were developed before and went through the baths again.
CREATE TABLE dummy (
    entry_id INTEGER NOT NULL REFERENCES session (entry_id),
    line     INTEGER NOT NULL,
    item_id  INTEGER NOT NULL REFERENCES item (id),
    sheets   INTEGER NOT NULL CHECK (sheets > 0),
    area     INTEGER NOT NULL CHECK (area >= 0),
    "group"  TEXT NOT NULL,
    note     TEXT NOT NULL,
    PRIMARY KEY (entry_id, line)
) STRICT, WITHOUT ROWID;

CREATE TABLE storage_move (
    entry_id   INTEGER NOT NULL REFERENCES entry (id),
    place_id   INTEGER NOT NULL REFERENCES container (place_id),
    storage    TEXT NOT NULL,
    opens_from TEXT CHECK (opens_from IS NULL OR date(opens_from) IS opens_from),
    PRIMARY KEY (place_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE lot_speed (
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    lot_id   INTEGER NOT NULL REFERENCES lot (id),
    speed    INTEGER NOT NULL CHECK (speed > 0),
    PRIMARY KEY (lot_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER sheet_is_never_changed BEFORE UPDATE ON sheet BEGIN SELECT RAISE(ABORT, 'a sheet is never changed; record a correction'); END;
CREATE TRIGGER sheet_is_never_deleted BEFORE DELETE ON sheet BEGIN SELECT RAISE(ABORT, 'a sheet is never deleted; record a correction'); END;
CREATE TRIGGER sheet_move_is_never_changed BEFORE UPDATE ON sheet_move BEGIN SELECT RAISE(ABORT, 'a sheet''s way is never changed; record a correction'); END;
CREATE TRIGGER sheet_move_is_never_deleted BEFORE DELETE ON sheet_move BEGIN SELECT RAISE(ABORT, 'a sheet''s way is never deleted; record a correction'); END;
CREATE TRIGGER exposure_is_never_changed BEFORE UPDATE ON exposure BEGIN SELECT RAISE(ABORT, 'an exposure is never changed; record a correction'); END;
CREATE TRIGGER exposure_is_never_deleted BEFORE DELETE ON exposure BEGIN SELECT RAISE(ABORT, 'an exposure is never deleted; record a correction'); END;
CREATE TRIGGER sheet_fate_is_never_changed BEFORE UPDATE ON sheet_fate BEGIN SELECT RAISE(ABORT, 'a fate is never changed; record a correction'); END;
CREATE TRIGGER sheet_fate_is_never_deleted BEFORE DELETE ON sheet_fate BEGIN SELECT RAISE(ABORT, 'a fate is never deleted; record a correction'); END;
