-- What was used of each item on each day, so that what is needed can be told without reading the whole history. Derived from sessions and movements as
-- entries are written: film by the sheets that were developed, all else by what left a container for good.

CREATE TABLE use_day (
    item_id  INTEGER NOT NULL REFERENCES item (id) DEFERRABLE INITIALLY DEFERRED,
    date     TEXT NOT NULL CHECK (date(date) IS date),
    quantity INTEGER NOT NULL CHECK (quantity > 0), -- in the item's base units
    PRIMARY KEY (item_id, date)
) STRICT, WITHOUT ROWID;

INSERT INTO use_day (item_id, date, quantity)
SELECT item_id, date, sum(quantity)
FROM (
    SELECT l.item_id, e.date, s.sheets AS quantity
    FROM standing_entry e JOIN session_sheets s ON s.entry_id = e.id JOIN lot l ON l.id = s.lot_id
    WHERE s.fate IN ('negative', 'keeper', 'reject')
    UNION ALL
    SELECT f.item_id, e.date, m.quantity
    FROM standing_entry e JOIN movement m ON m.entry_id = e.id JOIN container f ON f.place_id = m.from_place
    WHERE m.to_place IN (4, 7, 8) OR EXISTS (SELECT 1 FROM bath b WHERE b.place_id = m.to_place))
GROUP BY item_id, date HAVING sum(quantity) > 0;
