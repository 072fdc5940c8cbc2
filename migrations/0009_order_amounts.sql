-- What a supplier says about an order may be other packs or another price as well. Null: as it was.

ALTER TABLE order_line_change ADD COLUMN packs INTEGER CHECK (packs > 0);
ALTER TABLE order_line_change ADD COLUMN quantity INTEGER CHECK (quantity > 0);
ALTER TABLE order_line_change ADD COLUMN price INTEGER CHECK (price >= 0); -- of one pack
