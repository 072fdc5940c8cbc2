-- Formats of the user's own, and other areas for those that are known. Areas are in hundredths of a square millimetre.

CREATE TABLE film_format (
    code TEXT PRIMARY KEY COLLATE NOCASE CHECK (code <> ''),
    unit TEXT NOT NULL CHECK (unit IN ('sheet', 'roll')),
    area INTEGER NOT NULL CHECK (area > 0)
) STRICT;
