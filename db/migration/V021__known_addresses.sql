-- From where people have signed in: a hash of person and network, with which no limit over all addresses shuts them out.
CREATE TABLE known_address (
    hash         VARCHAR(64) PRIMARY KEY,
    last_used_at TIMESTAMP(6) WITH TIME ZONE NOT NULL
);
