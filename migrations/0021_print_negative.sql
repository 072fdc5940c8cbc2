-- Which negatives were printed in a print session.

CREATE TABLE print_negative (
    entry_id INTEGER NOT NULL REFERENCES print_session (entry_id),
    position INTEGER NOT NULL CHECK (position >= 1),
    sheet_id INTEGER NOT NULL REFERENCES sheet (id),
    PRIMARY KEY (entry_id, position)
) STRICT, WITHOUT ROWID;

CREATE INDEX print_negative_of_sheet ON print_negative (sheet_id);
