-- What is learned about baths, what bottles and lots need to know about their lives, stock solutions, waste jugs.

INSERT INTO place (id, kind, code) VALUES (7, 'mixing', 'mixing'), (8, 'prints', 'prints');

-- The settings of an item that only some have.
CREATE TABLE item_handling (
    item_id           INTEGER PRIMARY KEY REFERENCES item (id),
    floating_lid_days INTEGER CHECK (floating_lid_days > 0),
    density           INTEGER CHECK (density > 0),      -- milligrams per millilitre
    dead_volume       INTEGER CHECK (dead_volume >= 0), -- base units that stay in each container
    replenisher       INTEGER CHECK (replenisher > 0),  -- microlitres per 80 sq in
    stock_of          TEXT
) STRICT;

-- The same capacity on other bases, to be read side by side.
CREATE TABLE item_capacity (
    item_id   INTEGER NOT NULL REFERENCES item (id),
    number    INTEGER NOT NULL,
    basis     TEXT NOT NULL,
    per_litre INTEGER NOT NULL CHECK (per_litre > 0),
    PRIMARY KEY (item_id, number)
) STRICT, WITHOUT ROWID;

-- How long each formula version of an item keeps: a changed recipe does not touch the life of what was bought before.
CREATE TABLE formula (
    item_id           INTEGER NOT NULL REFERENCES item (id),
    version           TEXT NOT NULL,
    sealed_days       INTEGER,
    opened_full_days  INTEGER,
    opened_part_days  INTEGER,
    working_full_days INTEGER,
    working_part_days INTEGER,
    tray_hours        INTEGER,
    floating_lid_days INTEGER,
    PRIMARY KEY (item_id, version)
) STRICT, WITHOUT ROWID;

INSERT INTO formula (item_id, version, sealed_days, opened_full_days, opened_part_days, working_full_days, working_part_days, tray_hours)
SELECT id, formula, sealed_days, opened_full_days, opened_part_days, working_full_days, working_part_days, tray_hours FROM item;

-- Where a lot comes from beside its delivery: the formula version it came with, or the item it was mixed from.
CREATE TABLE lot_origin (
    lot_id     INTEGER PRIMARY KEY REFERENCES lot (id),
    formula    TEXT NOT NULL,
    mixed_from TEXT
) STRICT;

INSERT INTO lot_origin (lot_id, formula) SELECT l.id, i.formula FROM lot l JOIN item i ON i.id = l.item_id;

CREATE TABLE clearing_test (
    entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
    place_id INTEGER NOT NULL REFERENCES bath (place_id),
    item_id  INTEGER NOT NULL REFERENCES item (id), -- the film
    tenths   INTEGER NOT NULL CHECK (tenths > 0),   -- of a second
    is_fresh INTEGER NOT NULL CHECK (is_fresh IN (0, 1))
) STRICT;

CREATE INDEX clearing_test_by_bath ON clearing_test (place_id);
CREATE INDEX clearing_test_by_film ON clearing_test (item_id) WHERE is_fresh = 1;

CREATE TABLE bath_observation (
    entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
    place_id INTEGER NOT NULL REFERENCES bath (place_id),
    sign     TEXT NOT NULL,
    ends_use INTEGER NOT NULL CHECK (ends_use IN (0, 1))
) STRICT;

CREATE INDEX bath_observation_by_bath ON bath_observation (place_id);

CREATE TABLE silver_test (
    entry_id             INTEGER PRIMARY KEY REFERENCES entry (id),
    place_id             INTEGER NOT NULL REFERENCES bath (place_id),
    milligrams_per_litre INTEGER NOT NULL CHECK (milligrams_per_litre >= 0)
) STRICT;

CREATE INDEX silver_test_by_bath ON silver_test (place_id);

CREATE TABLE residual_test (
    entry_id   INTEGER PRIMARY KEY REFERENCES entry (id),
    place_id   INTEGER NOT NULL REFERENCES bath (place_id),
    session    TEXT,
    kind       TEXT NOT NULL CHECK (kind IN ('silver', 'fixer')),
    result     TEXT NOT NULL,
    has_passed INTEGER NOT NULL CHECK (has_passed IN (0, 1))
) STRICT;

CREATE INDEX residual_test_by_bath ON residual_test (place_id);

CREATE TABLE bath_standing (
    entry_id  INTEGER NOT NULL REFERENCES entry (id),
    place_id  INTEGER NOT NULL REFERENCES bath (place_id),
    container TEXT NOT NULL CHECK (container IN ('full bottle', 'part-full bottle', 'floating lid', 'open tray')),
    PRIMARY KEY (place_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE bath_top_up (
    entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
    place_id INTEGER NOT NULL REFERENCES bath (place_id),
    added    INTEGER NOT NULL CHECK (added > 0),
    bled     INTEGER NOT NULL CHECK (bled >= 0)
) STRICT;

CREATE INDEX bath_top_up_by_bath ON bath_top_up (place_id);

-- A jug holds no stock: what is in it has been written off. It only has a volume and a story.
CREATE TABLE jug (
    place_id INTEGER PRIMARY KEY REFERENCES place (id),
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    contents TEXT NOT NULL,
    size     INTEGER NOT NULL CHECK (size > 0)
) STRICT;

CREATE INDEX jug_by_entry ON jug (entry_id);

CREATE TABLE jug_fill (
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    place_id INTEGER NOT NULL REFERENCES jug (place_id),
    volume   INTEGER NOT NULL CHECK (volume > 0),
    what     TEXT NOT NULL,
    material TEXT CHECK (material IN ('film', 'paper')),
    PRIMARY KEY (place_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE INDEX jug_fill_by_entry ON jug_fill (entry_id);

CREATE TABLE jug_handover (
    entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
    place_id INTEGER NOT NULL REFERENCES jug (place_id),
    "to"     TEXT NOT NULL
) STRICT;

CREATE INDEX jug_handover_by_jug ON jug_handover (place_id);

CREATE TABLE print_session (
    entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
    code     TEXT NOT NULL COLLATE NOCASE,
    bath_id  INTEGER REFERENCES bath (place_id)
) STRICT;

CREATE INDEX print_session_by_code ON print_session (code);

CREATE TABLE print_sheets (
    entry_id INTEGER NOT NULL REFERENCES print_session (entry_id),
    number   INTEGER NOT NULL,
    item_id  INTEGER NOT NULL REFERENCES item (id),
    sheets   INTEGER NOT NULL CHECK (sheets >= 0),
    strips   INTEGER NOT NULL CHECK (strips >= 0),
    area     INTEGER NOT NULL CHECK (area >= 0),
    cost     INTEGER NOT NULL CHECK (cost >= 0),
    purpose  TEXT NOT NULL CHECK (purpose IN ('final', 'work', 'strip')),
    note     TEXT NOT NULL,
    PRIMARY KEY (entry_id, number)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER clearing_test_is_never_changed BEFORE UPDATE ON clearing_test BEGIN SELECT RAISE(ABORT, 'a clearing test is never changed; record a correction'); END;
CREATE TRIGGER clearing_test_is_never_deleted BEFORE DELETE ON clearing_test BEGIN SELECT RAISE(ABORT, 'a clearing test is never deleted; record a correction'); END;
CREATE TRIGGER jug_fill_is_never_changed BEFORE UPDATE ON jug_fill BEGIN SELECT RAISE(ABORT, 'what went into a jug is never changed; record a correction'); END;
CREATE TRIGGER jug_fill_is_never_deleted BEFORE DELETE ON jug_fill BEGIN SELECT RAISE(ABORT, 'what went into a jug is never deleted; record a correction'); END;
CREATE TRIGGER print_sheets_are_never_changed BEFORE UPDATE ON print_sheets BEGIN SELECT RAISE(ABORT, 'a print session is never changed; record a correction'); END;
CREATE TRIGGER print_sheets_are_never_deleted BEFORE DELETE ON print_sheets BEGIN SELECT RAISE(ABORT, 'a print session is never deleted; record a correction'); END;
