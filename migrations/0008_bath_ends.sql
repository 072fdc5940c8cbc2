-- Ends of baths beside area and age: the indicator of a stop, the ceiling and the control strips of a replenished developer.

ALTER TABLE item_handling ADD COLUMN indicator TEXT CHECK (indicator <> ''); -- the colour at which it is spent
ALTER TABLE item_handling ADD COLUMN replenisher_ceiling INTEGER CHECK (replenisher_ceiling > 0); -- per cent of the bath's volume

CREATE TABLE control_strip (
    entry_id  INTEGER PRIMARY KEY REFERENCES entry (id),
    place_id  INTEGER NOT NULL REFERENCES bath (place_id),
    result    TEXT NOT NULL CHECK (result <> ''),
    is_within INTEGER NOT NULL CHECK (is_within IN (0, 1))
) STRICT;

CREATE INDEX control_strip_by_bath ON control_strip (place_id);

CREATE TRIGGER control_strip_is_never_changed BEFORE UPDATE ON control_strip BEGIN SELECT RAISE(ABORT, 'a control strip is never changed; record a correction'); END;
CREATE TRIGGER control_strip_is_never_deleted BEFORE DELETE ON control_strip BEGIN SELECT RAISE(ABORT, 'a control strip is never deleted; record a correction'); END;
