-- The deposit came off and a mark was left: cleared, with one thing more. A column of its own leaves every row as it is.
ALTER TABLE attempt ADD COLUMN marked SMALLINT NOT NULL DEFAULT 0 CHECK (marked IN (0, 1));
