-- What figures need to be true: the other parts of a developer, how an item keeps in the cold, and whether a delivery had a price at all.

ALTER TABLE item_handling ADD COLUMN other_parts TEXT CHECK (other_parts <> ''); -- the items of part B, C… with commas between
ALTER TABLE item_handling ADD COLUMN freezer_days INTEGER CHECK (freezer_days BETWEEN 0 AND 365); -- that a year there adds
ALTER TABLE item_handling ADD COLUMN fridge_days INTEGER CHECK (fridge_days BETWEEN 0 AND 365);
ALTER TABLE item_handling ADD COLUMN thaw_hours INTEGER CHECK (thaw_hours BETWEEN 0 AND 240);

-- 0 where nobody said a price: its cost of nothing is then unknown, not a gift.
ALTER TABLE lot ADD COLUMN is_priced INTEGER NOT NULL DEFAULT 1 CHECK (is_priced IN (0, 1));
CREATE INDEX lot_without_price ON lot (id) WHERE is_priced = 0;

ALTER TABLE plan_sheets ADD COLUMN batch INTEGER CHECK (batch > 0); -- the batch that the user put the line into; null for the plan's choice
