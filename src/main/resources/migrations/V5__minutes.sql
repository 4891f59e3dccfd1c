-- How long it took, so that minutes are learned without parsing a body. Rows from before keep theirs in the body and teach none.
ALTER TABLE attempt ADD COLUMN minutes DOUBLE PRECISION;
