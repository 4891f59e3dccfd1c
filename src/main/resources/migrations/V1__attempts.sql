-- One row per attempt. The body is the attempt whole, as JSON; the columns beside it are what the log is searched and
-- learned from, so that learning does not parse a body. The key of a sender is kept in the row it made, so that both are
-- there or neither. seq grows in the order in which attempts were acknowledged.
CREATE TABLE attempt (
  seq ${serial},
  id VARCHAR(36) NOT NULL UNIQUE,
  shop VARCHAR(64) NOT NULL,
  spot VARCHAR(64),
  at_millis BIGINT NOT NULL,
  contaminant VARCHAR(64) NOT NULL,
  surface TEXT NOT NULL,
  age_hours DOUBLE PRECISION,
  warmest_c DOUBLE PRECISION,
  method VARCHAR(64) NOT NULL,
  outcome VARCHAR(9) NOT NULL CHECK (outcome IN ('cleared', 'partly', 'no-change', 'harm')),
  prepared SMALLINT NOT NULL CHECK (prepared IN (0, 1)),
  idempotency_key VARCHAR(200) UNIQUE,
  fingerprint CHAR(64),
  body TEXT NOT NULL,
  CHECK ((idempotency_key IS NULL) = (fingerprint IS NULL))
);
