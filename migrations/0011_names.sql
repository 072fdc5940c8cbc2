-- One word for each thing: kinds of entries, causes, places, steps, tests and settings get the names that are kept from now on, in what was
-- written before as well. Nothing but names changes, so the guards are lifted for it and set again.

DROP TRIGGER IF EXISTS entry_is_never_changed;
DROP TRIGGER IF EXISTS sheet_fate_is_never_changed;
DROP TRIGGER IF EXISTS process_version_step_is_never_changed;

UPDATE entry SET kind = CASE kind
    WHEN 'receipt' THEN 'delivery' WHEN 'purchase' THEN 'delivery' WHEN 'correction' THEN 'undo' ELSE 'exposure-index' END
WHERE kind IN ('receipt', 'purchase', 'correction', 'speed');

-- The identities of rows that were imported follow the files' names, so that importing them again adds nothing. Where a purchase had the
-- name that is another row's reference, it keeps its old identity.
UPDATE entry SET key = 'deliveries:' || substr(key, 11) WHERE key GLOB 'purchases:*' AND key NOT GLOB 'purchases:purchase *';
UPDATE OR IGNORE entry SET key = 'deliveries:' || substr(key, 20) WHERE key GLOB 'purchases:purchase *';
UPDATE entry SET key = 'undone:' || substr(key, 13) WHERE key GLOB 'corrections:*';
UPDATE entry SET key = 'exposure_indexes:' || substr(key, 8) WHERE key GLOB 'speeds:*';

UPDATE sheet_fate SET cause = CASE cause
    WHEN 'double' THEN 'double exposure' WHEN 'blank' THEN 'unexposed' ELSE 'loaded backwards' END
WHERE cause IN ('double', 'blank', 'wrong way round');

UPDATE process_step SET role = CASE role WHEN 'soak' THEN 'presoak' ELSE 'final rinse' END WHERE role IN ('soak', 'last rinse');
UPDATE process_version_step SET role = CASE role WHEN 'soak' THEN 'presoak' ELSE 'final rinse' END WHERE role IN ('soak', 'last rinse');

UPDATE place SET kind = 'used up', code = 'used up' WHERE id = 4;
UPDATE place SET kind = 'discarded', code = 'discarded' WHERE id = 6;

UPDATE setting SET name = 'residual-hypo-limit' WHERE name = 'residual-fixer-limit';
UPDATE setting SET name = 'exhausted-multiple' WHERE name = 'spent-multiple';
UPDATE setting SET name = 'full-shuffle-seconds' WHERE name = 'pass-seconds';

ALTER TABLE entry RENAME COLUMN reverses TO undoes;
ALTER TABLE item RENAME COLUMN fixer_weight TO fixer_factor;
ALTER TABLE exposure RENAME COLUMN line TO subject;
ALTER TABLE lot_speed RENAME TO lot_exposure_index;
ALTER TABLE lot_exposure_index RENAME COLUMN speed TO exposure_index;

CREATE TABLE residual_hypo_or_silver (
    entry_id   INTEGER PRIMARY KEY REFERENCES entry (id),
    place_id   INTEGER NOT NULL REFERENCES bath (place_id),
    session    TEXT,
    kind       TEXT NOT NULL CHECK (kind IN ('silver', 'hypo')),
    result     TEXT NOT NULL,
    has_passed INTEGER NOT NULL CHECK (has_passed IN (0, 1))
) STRICT;

INSERT INTO residual_hypo_or_silver (entry_id, place_id, session, kind, result, has_passed)
SELECT entry_id, place_id, session, iif(kind = 'fixer', 'hypo', kind), result, has_passed FROM residual_test ORDER BY entry_id;

DROP TABLE residual_test;
ALTER TABLE residual_hypo_or_silver RENAME TO residual_test;
CREATE INDEX residual_test_by_bath ON residual_test (place_id);

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'an entry is never changed; undo it'); END;
CREATE TRIGGER sheet_fate_is_never_changed BEFORE UPDATE ON sheet_fate BEGIN SELECT RAISE(ABORT, 'a fate is never changed; undo its session'); END;
CREATE TRIGGER process_version_step_is_never_changed BEFORE UPDATE ON process_version_step BEGIN SELECT RAISE(ABORT, 'a version of a process is never changed; define the process again'); END;
