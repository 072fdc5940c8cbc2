-- Items of which nothing is there, and holders in which nothing is, are looked up when they are asked for.

CREATE INDEX item_by_kind ON item (kind);
CREATE INDEX item_with_minimum ON item (id) WHERE minimum_on_hand IS NOT NULL;
