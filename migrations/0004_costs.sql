-- What the stock's value changed by in each month, so that the costs of a year cost no more to read in an old ledger than in a young one.
-- Derived from the movements by the trigger below, as the balances are; stock is every real place (100 and up) that is no bath.

CREATE TABLE stock_month (
    month  TEXT PRIMARY KEY CHECK (month GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]'),
    change INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

INSERT INTO stock_month (month, change)
SELECT substr(e.date, 1, 7), sum(iif(t.id >= 100 AND t.kind <> 'bath', m.value, 0) - iif(f.id >= 100 AND f.kind <> 'bath', m.value, 0))
FROM movement m JOIN entry e ON e.id = m.entry_id JOIN place f ON f.id = m.from_place JOIN place t ON t.id = m.to_place
GROUP BY 1;

CREATE TRIGGER movement_changes_month AFTER INSERT ON movement WHEN NEW.value > 0
BEGIN
    INSERT INTO stock_month (month, change)
    SELECT substr(e.date, 1, 7),
        iif(t.id >= 100 AND t.kind <> 'bath', NEW.value, 0) - iif(f.id >= 100 AND f.kind <> 'bath', NEW.value, 0)
    FROM entry e, place f, place t WHERE e.id = NEW.entry_id AND f.id = NEW.from_place AND t.id = NEW.to_place
    ON CONFLICT DO UPDATE SET change = change + excluded.change;
END;
