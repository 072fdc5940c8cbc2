-- Planning: plans kept with a day, and processes that remember their versions, so that a session tells which one it was run with.

ALTER TABLE process ADD COLUMN version INTEGER NOT NULL DEFAULT 1 CHECK (version > 0);
ALTER TABLE process_step ADD COLUMN volumes_by_format TEXT; -- 4x5=600 11x14=2000, in millilitres
ALTER TABLE process_step ADD COLUMN celsius TEXT;

CREATE TABLE process_version (
    process_id INTEGER NOT NULL REFERENCES process (id),
    version    INTEGER NOT NULL CHECK (version > 0),
    entry_id   INTEGER REFERENCES entry (id), -- null for what was defined before versions were kept
    PRIMARY KEY (process_id, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE process_version_step (
    process_id        INTEGER NOT NULL,
    version           INTEGER NOT NULL,
    number            INTEGER NOT NULL CHECK (number > 0),
    role              TEXT NOT NULL,
    item_id           INTEGER REFERENCES item (id),
    dilution          TEXT,
    working_volume    INTEGER CHECK (working_volume >= 0),
    amount            INTEGER CHECK (amount >= 0),
    use               TEXT NOT NULL CHECK (use IN ('one-shot', 'reused')),
    per               TEXT NOT NULL CHECK (per IN ('session', 'batch', 'sheet', 'litre')),
    minutes           TEXT,
    note              TEXT NOT NULL,
    volumes_by_format TEXT,
    celsius           TEXT,
    PRIMARY KEY (process_id, version, number),
    FOREIGN KEY (process_id, version) REFERENCES process_version (process_id, version)
) STRICT, WITHOUT ROWID;

INSERT INTO process_version (process_id, version, entry_id) SELECT id, 1, NULL FROM process;
INSERT INTO process_version_step (process_id, version, number, role, item_id, dilution, working_volume, amount, use, per, minutes, note)
SELECT process_id, 1, number, role, item_id, dilution, working_volume, amount, use, per, minutes, note FROM process_step;

CREATE TRIGGER process_version_is_never_changed BEFORE UPDATE ON process_version BEGIN SELECT RAISE(ABORT, 'a version of a process is never changed; define the process anew'); END;
CREATE TRIGGER process_version_is_never_deleted BEFORE DELETE ON process_version BEGIN SELECT RAISE(ABORT, 'a version of a process is never deleted; define the process anew'); END;
CREATE TRIGGER process_version_step_is_never_changed BEFORE UPDATE ON process_version_step BEGIN SELECT RAISE(ABORT, 'a version of a process is never changed; define the process anew'); END;
CREATE TRIGGER process_version_step_is_never_deleted BEFORE DELETE ON process_version_step BEGIN SELECT RAISE(ABORT, 'a version of a process is never deleted; define the process anew'); END;

ALTER TABLE session ADD COLUMN process_version INTEGER NOT NULL DEFAULT 1 CHECK (process_version > 0);

CREATE TABLE plan (
    entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
    name     TEXT NOT NULL COLLATE NOCASE CHECK (name <> ''),
    date     TEXT NOT NULL CHECK (date(date) IS date), -- the day it is planned for
    is_trip  INTEGER NOT NULL CHECK (is_trip IN (0, 1)),
    process  TEXT NOT NULL,
    times    TEXT NOT NULL, -- developing times: 11 N-1=9
    bath     TEXT
) STRICT;

CREATE INDEX plan_by_name ON plan (name);

CREATE TABLE plan_sheets (
    entry_id INTEGER NOT NULL REFERENCES plan (entry_id),
    number   INTEGER NOT NULL CHECK (number > 0),
    item_id  INTEGER NOT NULL REFERENCES item (id),
    sheets   INTEGER NOT NULL CHECK (sheets > 0),
    "group"  TEXT NOT NULL,
    subject  TEXT NOT NULL,
    holder   TEXT NOT NULL,
    "from"   TEXT, -- holder sides, a box of exposed sheets, or sheets by number
    PRIMARY KEY (entry_id, number)
) STRICT, WITHOUT ROWID;

-- A plan ends with the session that realises it, or is given up.
CREATE TABLE plan_end (
    plan_id  INTEGER NOT NULL REFERENCES plan (entry_id),
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    reason   TEXT NOT NULL CHECK (reason <> ''),
    PRIMARY KEY (plan_id, entry_id)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER plan_is_never_changed BEFORE UPDATE ON plan BEGIN SELECT RAISE(ABORT, 'a plan is never changed; plan anew under its name'); END;
CREATE TRIGGER plan_is_never_deleted BEFORE DELETE ON plan BEGIN SELECT RAISE(ABORT, 'a plan is never deleted; end it'); END;
CREATE TRIGGER plan_sheets_are_never_changed BEFORE UPDATE ON plan_sheets BEGIN SELECT RAISE(ABORT, 'a plan is never changed; plan anew under its name'); END;
CREATE TRIGGER plan_sheets_are_never_deleted BEFORE DELETE ON plan_sheets BEGIN SELECT RAISE(ABORT, 'a plan is never deleted; end it'); END;
CREATE TRIGGER plan_end_is_never_changed BEFORE UPDATE ON plan_end BEGIN SELECT RAISE(ABORT, 'the end of a plan is never changed; record a correction'); END;
CREATE TRIGGER plan_end_is_never_deleted BEFORE DELETE ON plan_end BEGIN SELECT RAISE(ABORT, 'the end of a plan is never deleted; record a correction'); END;
