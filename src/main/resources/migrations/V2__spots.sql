-- A spot that is worked on: the question as it was asked, in ids. What became known of it since, with an attempt or
-- without, is added and never written over. Which attempts were made on it the attempts themselves say, so that the log
-- and what was tried on a spot cannot differ.
CREATE TABLE spot (
  seq ${serial},
  id VARCHAR(12) NOT NULL UNIQUE,
  at_millis BIGINT NOT NULL,
  idempotency_key VARCHAR(200) UNIQUE,
  fingerprint CHAR(64),
  body TEXT NOT NULL,
  CHECK ((idempotency_key IS NULL) = (fingerprint IS NULL))
);

CREATE TABLE spot_said (
  seq ${serial},
  spot VARCHAR(12) NOT NULL REFERENCES spot (id),
  attempt VARCHAR(36) UNIQUE REFERENCES attempt (id),
  body TEXT NOT NULL
);

CREATE INDEX spot_said_of ON spot_said (spot);
CREATE INDEX attempt_on ON attempt (spot);
