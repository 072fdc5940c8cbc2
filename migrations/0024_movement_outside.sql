-- What came from outside, was lost, gained or discarded is a small part of the movements: costs find it without a walk over all that
-- sessions used. 1 is the supplier, 5 lost or gained, 6 discarded.

CREATE INDEX movement_outside ON movement (entry_id) WHERE to_place IN (1, 5, 6) OR from_place IN (1, 5, 6);
