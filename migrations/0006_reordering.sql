-- Orders and what came of them, announced price rises, and how the user orders an item. What is read counts through standing entries only.

CREATE TABLE purchase_order (
    entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
    code     TEXT NOT NULL COLLATE NOCASE CHECK (code <> ''),
    supplier TEXT NOT NULL,
    prepaid  INTEGER NOT NULL CHECK (prepaid IN (0, 1))
) STRICT;

CREATE INDEX purchase_order_by_code ON purchase_order (code);

CREATE TABLE order_line (
    order_id     INTEGER NOT NULL REFERENCES purchase_order (entry_id),
    item_id      INTEGER NOT NULL REFERENCES item (id),
    number       INTEGER NOT NULL CHECK (number > 0),
    packs        INTEGER NOT NULL CHECK (packs > 0),
    quantity     INTEGER NOT NULL CHECK (quantity > 0),
    price        INTEGER NOT NULL CHECK (price >= 0), -- of one pack
    expected_on  TEXT CHECK (expected_on IS NULL OR date(expected_on) IS expected_on),
    back_ordered INTEGER NOT NULL CHECK (back_ordered IN (0, 1)),
    PRIMARY KEY (order_id, item_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE order_line_change (
    entry_id     INTEGER NOT NULL REFERENCES entry (id),
    order_id     INTEGER NOT NULL,
    item_id      INTEGER NOT NULL,
    expected_on  TEXT CHECK (expected_on IS NULL OR date(expected_on) IS expected_on), -- null: as it was
    back_ordered INTEGER CHECK (back_ordered IN (0, 1)),                               -- null: as it was
    cancelled    INTEGER NOT NULL CHECK (cancelled IN (0, 1)),
    PRIMARY KEY (order_id, item_id, entry_id),
    FOREIGN KEY (order_id, item_id) REFERENCES order_line (order_id, item_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE order_delivery (
    entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
    order_id INTEGER NOT NULL,
    item_id  INTEGER NOT NULL,
    quantity INTEGER NOT NULL CHECK (quantity > 0),
    FOREIGN KEY (order_id, item_id) REFERENCES order_line (order_id, item_id)
) STRICT;

CREATE INDEX order_delivery_by_line ON order_delivery (order_id, item_id);

CREATE TABLE price_rise (
    entry_id    INTEGER PRIMARY KEY REFERENCES entry (id),
    item_id     INTEGER NOT NULL REFERENCES item (id),
    starts_on   TEXT NOT NULL CHECK (date(starts_on) IS starts_on),
    thousandths INTEGER NOT NULL CHECK (thousandths > 0)
) STRICT;

CREATE TABLE order_terms (
    entry_id            INTEGER PRIMARY KEY REFERENCES entry (id),
    item_id             INTEGER NOT NULL REFERENCES item (id),
    cover_days          INTEGER CHECK (cover_days > 0),
    window_opens        TEXT, -- month and day: 10-01
    window_closes       TEXT,
    order_cost          INTEGER CHECK (order_cost >= 0),
    holding_thousandths INTEGER CHECK (holding_thousandths > 0),
    CHECK ((window_opens IS NULL) = (window_closes IS NULL))
) STRICT;

CREATE INDEX order_terms_by_item ON order_terms (item_id);

CREATE TRIGGER purchase_order_is_never_changed BEFORE UPDATE ON purchase_order BEGIN SELECT RAISE(ABORT, 'an order is never changed; record what the supplier says'); END;
CREATE TRIGGER purchase_order_is_never_deleted BEFORE DELETE ON purchase_order BEGIN SELECT RAISE(ABORT, 'an order is never deleted; cancel it or record a correction'); END;
CREATE TRIGGER order_line_is_never_changed BEFORE UPDATE ON order_line BEGIN SELECT RAISE(ABORT, 'an order is never changed; record what the supplier says'); END;
CREATE TRIGGER order_line_is_never_deleted BEFORE DELETE ON order_line BEGIN SELECT RAISE(ABORT, 'an order is never deleted; cancel it or record a correction'); END;
CREATE TRIGGER order_line_change_is_never_changed BEFORE UPDATE ON order_line_change BEGIN SELECT RAISE(ABORT, 'an order''s history is never changed; record a correction'); END;
CREATE TRIGGER order_line_change_is_never_deleted BEFORE DELETE ON order_line_change BEGIN SELECT RAISE(ABORT, 'an order''s history is never deleted; record a correction'); END;
CREATE TRIGGER order_delivery_is_never_changed BEFORE UPDATE ON order_delivery BEGIN SELECT RAISE(ABORT, 'a delivery is never changed; record a correction'); END;
CREATE TRIGGER order_delivery_is_never_deleted BEFORE DELETE ON order_delivery BEGIN SELECT RAISE(ABORT, 'a delivery is never deleted; record a correction'); END;
CREATE TRIGGER price_rise_is_never_changed BEFORE UPDATE ON price_rise BEGIN SELECT RAISE(ABORT, 'a price rise is never changed; record a correction'); END;
CREATE TRIGGER price_rise_is_never_deleted BEFORE DELETE ON price_rise BEGIN SELECT RAISE(ABORT, 'a price rise is never deleted; record a correction'); END;
CREATE TRIGGER order_terms_are_never_changed BEFORE UPDATE ON order_terms BEGIN SELECT RAISE(ABORT, 'order terms are never changed; set them anew'); END;
CREATE TRIGGER order_terms_are_never_deleted BEFORE DELETE ON order_terms BEGIN SELECT RAISE(ABORT, 'order terms are never deleted; set them anew'); END;
