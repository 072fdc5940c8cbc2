-- One entry may deliver several lines of an order: a purchase of several items. Before, an entry was the key.

CREATE TABLE order_line_delivery (
    entry_id INTEGER NOT NULL REFERENCES entry (id),
    order_id INTEGER NOT NULL,
    item_id  INTEGER NOT NULL,
    quantity INTEGER NOT NULL CHECK (quantity > 0),
    FOREIGN KEY (order_id, item_id) REFERENCES order_line (order_id, item_id)
) STRICT;

INSERT INTO order_line_delivery (entry_id, order_id, item_id, quantity)
SELECT entry_id, order_id, item_id, quantity FROM order_delivery ORDER BY entry_id;

DROP TABLE order_delivery;
ALTER TABLE order_line_delivery RENAME TO order_delivery;

CREATE INDEX order_delivery_by_line ON order_delivery (order_id, item_id);
CREATE TRIGGER order_delivery_is_never_changed BEFORE UPDATE ON order_delivery BEGIN SELECT RAISE(ABORT, 'a delivery is never changed; record a correction'); END;
CREATE TRIGGER order_delivery_is_never_deleted BEFORE DELETE ON order_delivery BEGIN SELECT RAISE(ABORT, 'a delivery is never deleted; record a correction'); END;
