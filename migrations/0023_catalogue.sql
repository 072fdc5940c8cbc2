-- Thousands of items and holders: what is there, and what was recorded last, is found without a walk over all that is defined.

CREATE INDEX item_by_kind ON item (kind);
CREATE INDEX item_with_minimum ON item (id) WHERE minimum_on_hand IS NOT NULL;

CREATE INDEX entry_that_decides ON entry (date, ord)
    WHERE undoes IS NULL AND amends IS NULL AND counts = 1 AND kind NOT IN ('item', 'process', 'holder');
