-- A currency that the first delivery named goes when that delivery is taken back; a setting of its own belongs to no other entry.

ALTER TABLE setting ADD COLUMN entry_id INTEGER REFERENCES entry (id);
