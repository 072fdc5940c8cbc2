-- What was typed into a form and not saved yet: no part of what was said, of the export or of a join. A form keeps one.

CREATE TABLE draft (
    form TEXT PRIMARY KEY NOT NULL CHECK (length(form) > 0), -- the form and what it is about
    text TEXT NOT NULL CHECK (json_valid(text))              -- what stands in its fields
) STRICT;
