-- The ledger: items, lots and places; entries and the movements they consist of; what entries establish beside movements.
-- Quantities are whole base units: microlitres, milligrams, ones. Areas are hundredths of a square millimetre.
-- Money is millionths of the ledger's currency. Dates are ISO 8601 text. Nothing that happened is ever changed or deleted.

PRAGMA application_id = 1416776772; -- "TrLd"

CREATE TABLE setting (
    name  TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE entry (
    id          INTEGER PRIMARY KEY,
    key         TEXT NOT NULL UNIQUE CHECK (key <> ''),
    kind        TEXT NOT NULL CHECK (kind <> ''),
    date        TEXT NOT NULL CHECK (date(date) IS date),
    recorded_at TEXT NOT NULL,
    summary     TEXT NOT NULL,
    note        TEXT NOT NULL,
    reverses    INTEGER REFERENCES entry (id)
) STRICT;

CREATE INDEX entry_by_date ON entry (date);
CREATE UNIQUE INDEX entry_is_reversed_once ON entry (reverses) WHERE reverses IS NOT NULL;

-- The entries that stand: neither a correction nor reversed by one.
CREATE VIEW standing_entry AS
SELECT e.* FROM entry e
WHERE e.reverses IS NULL AND NOT EXISTS (SELECT 1 FROM entry c WHERE c.reverses = e.id);

CREATE TABLE item (
    id                  INTEGER PRIMARY KEY,
    code                TEXT NOT NULL UNIQUE COLLATE NOCASE,
    name                TEXT NOT NULL,
    kind                TEXT NOT NULL CHECK (kind IN ('film', 'chemical', 'supply')),
    role                TEXT NOT NULL,
    format              TEXT,
    unit                TEXT NOT NULL CHECK (unit IN ('ml', 'g', 'sheet', 'roll', 'piece')),
    pack                INTEGER NOT NULL CHECK (pack > 0),
    dilution            TEXT,
    capacity_per_litre  INTEGER CHECK (capacity_per_litre > 0),
    capacity_basis      TEXT,
    minimum_per_80      INTEGER CHECK (minimum_per_80 >= 0),
    fixer_weight        INTEGER NOT NULL CHECK (fixer_weight > 0), -- thousandths
    sealed_days         INTEGER,
    opened_full_days    INTEGER,
    opened_part_days    INTEGER,
    working_full_days   INTEGER,
    working_part_days   INTEGER,
    tray_hours          INTEGER,
    lead_time_days      INTEGER,
    service_level       TEXT,
    minimum_on_hand     INTEGER,
    formula             TEXT NOT NULL,
    cautions            TEXT NOT NULL,
    CHECK ((capacity_per_litre IS NULL) = (capacity_basis IS NULL)),
    CHECK ((kind = 'film') = (format IS NOT NULL))
) STRICT;

CREATE TABLE process (
    id   INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE COLLATE NOCASE
) STRICT;

CREATE TABLE process_step (
    process_id     INTEGER NOT NULL REFERENCES process (id),
    number         INTEGER NOT NULL CHECK (number > 0),
    role           TEXT NOT NULL,
    item_id        INTEGER REFERENCES item (id),
    dilution       TEXT,
    working_volume INTEGER CHECK (working_volume >= 0),
    amount         INTEGER CHECK (amount >= 0),
    use            TEXT NOT NULL CHECK (use IN ('one-shot', 'reused')),
    per            TEXT NOT NULL CHECK (per IN ('session', 'batch', 'sheet', 'litre')),
    minutes        TEXT,
    note           TEXT NOT NULL,
    PRIMARY KEY (process_id, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE place (
    id       INTEGER PRIMARY KEY,
    kind     TEXT NOT NULL,
    code     TEXT NOT NULL COLLATE NOCASE,
    entry_id INTEGER REFERENCES entry (id),
    CHECK (id < 100 OR entry_id IS NOT NULL) -- the single places come with the ledger, all others with an entry
) STRICT;

CREATE INDEX place_by_code ON place (code);

INSERT INTO place (id, kind, code) VALUES
    (1, 'supplier', 'supplier'),
    (2, 'filed negatives', 'filed negatives'),
    (3, 'rejects', 'rejects'),
    (4, 'drain', 'drain'),
    (5, 'lost or gained', 'lost or gained'),
    (6, 'thrown away', 'thrown away');

CREATE TABLE lot (
    id         INTEGER PRIMARY KEY,
    entry_id   INTEGER NOT NULL REFERENCES entry (id),
    item_id    INTEGER NOT NULL REFERENCES item (id),
    quantity   INTEGER NOT NULL CHECK (quantity > 0),
    cost       INTEGER NOT NULL CHECK (cost >= 0),
    batch      TEXT NOT NULL,
    expires_on TEXT CHECK (expires_on IS NULL OR date(expires_on) IS expires_on),
    storage    TEXT NOT NULL,
    packs      TEXT NOT NULL,
    price      INTEGER NOT NULL CHECK (price >= 0), -- of one pack, in the purchase's currency, as are the next three
    discount   INTEGER NOT NULL CHECK (discount >= 0),
    shipping   INTEGER NOT NULL CHECK (shipping >= 0),
    duty       INTEGER NOT NULL CHECK (duty >= 0),
    currency   TEXT,
    rate       TEXT
) STRICT;

CREATE INDEX lot_by_item ON lot (item_id);

CREATE TABLE container (
    place_id INTEGER PRIMARY KEY REFERENCES place (id),
    lot_id   INTEGER NOT NULL REFERENCES lot (id),
    item_id  INTEGER NOT NULL REFERENCES item (id),
    number   INTEGER NOT NULL CHECK (number > 0),
    size     INTEGER NOT NULL CHECK (size > 0)
) STRICT;

CREATE INDEX container_by_number ON container (item_id, number);

CREATE TABLE opening (
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    place_id INTEGER NOT NULL REFERENCES container (place_id),
    PRIMARY KEY (place_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE bath (
    place_id           INTEGER PRIMARY KEY REFERENCES place (id),
    entry_id           INTEGER NOT NULL REFERENCES entry (id),
    item_id            INTEGER NOT NULL REFERENCES item (id),
    role               TEXT NOT NULL,
    material           TEXT NOT NULL CHECK (material IN ('film', 'paper')),
    working_volume     INTEGER NOT NULL CHECK (working_volume > 0),
    dilution           TEXT NOT NULL,
    capacity_per_litre INTEGER CHECK (capacity_per_litre > 0),
    capacity_basis     TEXT,
    paired_with        TEXT,
    rotations          INTEGER NOT NULL CHECK (rotations >= 0)
) STRICT;

CREATE INDEX bath_by_entry ON bath (entry_id);

CREATE TABLE bath_work (
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    place_id INTEGER NOT NULL REFERENCES bath (place_id),
    is_first INTEGER NOT NULL CHECK (is_first IN (0, 1)),
    area     INTEGER NOT NULL CHECK (area >= 0),
    weighted INTEGER NOT NULL CHECK (weighted >= 0),
    PRIMARY KEY (place_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE INDEX bath_work_by_entry ON bath_work (entry_id);

-- What has passed through a bath that counts, in all: derived by the two triggers below, as the balances are.
CREATE TABLE bath_total (
    place_id INTEGER PRIMARY KEY REFERENCES bath (place_id),
    area     INTEGER NOT NULL CHECK (area >= 0),
    weighted INTEGER NOT NULL CHECK (weighted >= 0)
) STRICT;

CREATE TRIGGER bath_work_counts AFTER INSERT ON bath_work WHEN NEW.is_first = 1
BEGIN
    INSERT INTO bath_total (place_id, area, weighted) VALUES (NEW.place_id, NEW.area, NEW.weighted)
        ON CONFLICT DO UPDATE SET area = area + excluded.area, weighted = weighted + excluded.weighted;
END;

CREATE TRIGGER correction_takes_work_back AFTER INSERT ON entry WHEN NEW.reverses IS NOT NULL
BEGIN
    UPDATE bath_total SET area = bath_total.area - w.area, weighted = bath_total.weighted - w.weighted
        FROM bath_work w WHERE w.entry_id = NEW.reverses AND w.is_first = 1 AND w.place_id = bath_total.place_id;
END;

CREATE TABLE bath_end (
    place_id INTEGER NOT NULL REFERENCES bath (place_id),
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    reason   TEXT NOT NULL,
    PRIMARY KEY (place_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE session (
    entry_id   INTEGER PRIMARY KEY REFERENCES entry (id),
    code       TEXT NOT NULL COLLATE NOCASE,
    process    TEXT NOT NULL,
    bath_id    INTEGER REFERENCES bath (place_id),
    developer  INTEGER NOT NULL CHECK (developer >= 0) -- microlitres of concentrate
) STRICT;

CREATE INDEX session_by_code ON session (code);

CREATE TABLE session_sheets (
    entry_id INTEGER NOT NULL REFERENCES session (entry_id),
    number   INTEGER NOT NULL, -- in the order of the sheets
    line     INTEGER NOT NULL,
    lot_id   INTEGER NOT NULL REFERENCES lot (id),
    sheets   INTEGER NOT NULL CHECK (sheets > 0),
    area     INTEGER NOT NULL CHECK (area >= 0),
    cost     INTEGER NOT NULL CHECK (cost >= 0),
    "group"  TEXT NOT NULL,
    fate     TEXT NOT NULL CHECK (fate IN ('negative', 'keeper', 'reject', 'test', 'practice')),
    note     TEXT NOT NULL,
    PRIMARY KEY (entry_id, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE movement (
    id         INTEGER PRIMARY KEY,
    entry_id   INTEGER NOT NULL REFERENCES entry (id),
    lot_id     INTEGER NOT NULL REFERENCES lot (id),
    from_place INTEGER NOT NULL REFERENCES place (id),
    to_place   INTEGER NOT NULL REFERENCES place (id) CHECK (to_place <> from_place),
    quantity   INTEGER NOT NULL CHECK (quantity > 0),
    value      INTEGER NOT NULL CHECK (value >= 0)
) STRICT;

CREATE INDEX movement_by_entry ON movement (entry_id);
CREATE INDEX movement_by_lot ON movement (lot_id);
CREATE INDEX movement_from ON movement (from_place) WHERE from_place >= 100;
CREATE INDEX movement_to ON movement (to_place) WHERE to_place >= 100;

-- What a place holds of a lot: derived from the movements by the trigger below, in the same transaction. A real place (100 and up)
-- never holds less than nothing. What is empty has no row, so that reading the shelf does not slow down as the history grows.
CREATE TABLE balance (
    place_id INTEGER NOT NULL REFERENCES place (id),
    lot_id   INTEGER NOT NULL REFERENCES lot (id),
    quantity INTEGER NOT NULL,
    value    INTEGER NOT NULL,
    PRIMARY KEY (place_id, lot_id),
    CONSTRAINT no_place_below_nothing CHECK (place_id < 100 OR (quantity >= 0 AND value >= 0))
) STRICT, WITHOUT ROWID;

CREATE TRIGGER movement_moves AFTER INSERT ON movement
BEGIN
    INSERT OR IGNORE INTO balance (place_id, lot_id, quantity, value) VALUES (NEW.from_place, NEW.lot_id, 0, 0);
    UPDATE balance SET quantity = quantity - NEW.quantity, value = value - NEW.value
        WHERE place_id = NEW.from_place AND lot_id = NEW.lot_id;
    DELETE FROM balance WHERE place_id = NEW.from_place AND lot_id = NEW.lot_id AND quantity = 0 AND value = 0;
    INSERT INTO balance (place_id, lot_id, quantity, value) VALUES (NEW.to_place, NEW.lot_id, NEW.quantity, NEW.value)
        ON CONFLICT DO UPDATE SET quantity = quantity + excluded.quantity, value = value + excluded.value;
    DELETE FROM balance WHERE place_id = NEW.to_place AND lot_id = NEW.lot_id AND quantity = 0 AND value = 0;
END;

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'an entry is never changed; record a correction'); END;
CREATE TRIGGER entry_is_never_deleted BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'an entry is never deleted; record a correction'); END;
CREATE TRIGGER movement_is_never_changed BEFORE UPDATE ON movement BEGIN SELECT RAISE(ABORT, 'a movement is never changed; record a correction'); END;
CREATE TRIGGER movement_is_never_deleted BEFORE DELETE ON movement BEGIN SELECT RAISE(ABORT, 'a movement is never deleted; record a correction'); END;
CREATE TRIGGER lot_is_never_changed BEFORE UPDATE ON lot BEGIN SELECT RAISE(ABORT, 'a lot is never changed; record a correction'); END;
CREATE TRIGGER lot_is_never_deleted BEFORE DELETE ON lot BEGIN SELECT RAISE(ABORT, 'a lot is never deleted; record a correction'); END;
CREATE TRIGGER session_sheets_are_never_changed BEFORE UPDATE ON session_sheets BEGIN SELECT RAISE(ABORT, 'a session is never changed; record a correction'); END;
CREATE TRIGGER session_sheets_are_never_deleted BEFORE DELETE ON session_sheets BEGIN SELECT RAISE(ABORT, 'a session is never deleted; record a correction'); END;
CREATE TRIGGER bath_work_is_never_changed BEFORE UPDATE ON bath_work BEGIN SELECT RAISE(ABORT, 'a bath''s work is never changed; record a correction'); END;
CREATE TRIGGER bath_work_is_never_deleted BEFORE DELETE ON bath_work BEGIN SELECT RAISE(ABORT, 'a bath''s work is never deleted; record a correction'); END;
