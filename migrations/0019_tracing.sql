-- What becomes of a sheet after its session, and what is under suspicion. A keeper that was named later is a fate that changed.

CREATE TABLE fate_change (
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    sheet_id INTEGER NOT NULL REFERENCES sheet (id),
    fate     TEXT NOT NULL CHECK (fate IN ('negative', 'keeper', 'reject', 'test', 'practice')),
    cause    TEXT CHECK (cause IS NULL OR fate = 'reject'),
    PRIMARY KEY (sheet_id, entry_id)
) STRICT, WITHOUT ROWID;

INSERT INTO fate_change (entry_id, sheet_id, fate, cause) SELECT entry_id, sheet_id, 'keeper', NULL FROM keeper;
DROP TABLE keeper;
CREATE INDEX fate_change_by_entry ON fate_change (entry_id);

CREATE TABLE sheet_note (
    entry_id   INTEGER NOT NULL REFERENCES entry (id),
    sheet_id   INTEGER NOT NULL REFERENCES sheet (id),
    what       TEXT NOT NULL CHECK (what <> ''),
    result     TEXT NOT NULL,
    has_passed INTEGER CHECK (has_passed IN (0, 1)),
    PRIMARY KEY (sheet_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE INDEX sheet_note_by_entry ON sheet_note (entry_id);

CREATE TABLE filing (
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    sheet_id INTEGER NOT NULL REFERENCES sheet (id),
    place    TEXT NOT NULL CHECK (place <> ''),
    PRIMARY KEY (sheet_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE INDEX filing_by_entry ON filing (entry_id);

-- Suspicion is raised of a delivery or of one place: a box, a bottle, a bath; or lifted again.
CREATE TABLE suspicion (
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    lot_id   INTEGER REFERENCES lot (id),
    place_id INTEGER REFERENCES place (id),
    raised   INTEGER NOT NULL CHECK (raised IN (0, 1)),
    reason   TEXT NOT NULL,
    CHECK ((lot_id IS NULL) <> (place_id IS NULL))
) STRICT;

CREATE INDEX suspicion_by_entry ON suspicion (entry_id);
CREATE INDEX suspicion_of_lot ON suspicion (lot_id) WHERE lot_id IS NOT NULL;
CREATE INDEX suspicion_of_place ON suspicion (place_id) WHERE place_id IS NOT NULL;

-- What tracing goes along, from either end.
CREATE INDEX sheet_by_box ON sheet (box_id);
CREATE INDEX lot_by_number ON lot (batch COLLATE NOCASE) WHERE batch <> '';
CREATE INDEX container_by_lot ON container (lot_id);
CREATE INDEX plan_end_by_entry ON plan_end (entry_id);
