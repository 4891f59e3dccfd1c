-- An attempt that was taken back: a word said later, as nothing that was kept is written over. The attempt stays where it is; it
-- is no longer taken for tried, nor learned from.
CREATE TABLE undone (
  seq ${serial},
  attempt VARCHAR(36) NOT NULL UNIQUE REFERENCES attempt (id),
  at_millis BIGINT NOT NULL,
  said_by VARCHAR(64) NOT NULL,
  why TEXT NOT NULL,
  idempotency_key VARCHAR(200) UNIQUE,
  fingerprint CHAR(64),
  CHECK ((idempotency_key IS NULL) = (fingerprint IS NULL))
);

-- What is told of a spot may come with a sender's key, as an attempt may.
ALTER TABLE spot_said ADD COLUMN idempotency_key VARCHAR(200);
ALTER TABLE spot_said ADD COLUMN fingerprint CHAR(64);
CREATE UNIQUE INDEX spot_said_key ON spot_said (idempotency_key);
