-- The activity record: what was done to what the studio keeps. Lines are added and never changed; each holds the hash of the
-- one before (docs/operations.md says how it is computed).

CREATE TABLE activity_line (
    -- Counts from 1 without gaps.
    number        BIGINT PRIMARY KEY,
    done_at       TIMESTAMP(6) WITH TIME ZONE NOT NULL,
    -- NULL for what the server did by itself. No foreign key: the record stands by itself.
    person_id     BIGINT,
    person_name   VARCHAR(100)    NOT NULL,
    action        VARCHAR(40)     NOT NULL,
    kind          VARCHAR(40)     NOT NULL,
    subject       VARCHAR(200)    NOT NULL,
    title         VARCHAR(300)    NOT NULL,
    -- JSON: [{"field": "...", "from": "...", "to": "..."}, ...]
    changes       VARCHAR(1000000) NOT NULL,
    previous_hash VARCHAR(64)     NOT NULL,
    hash          VARCHAR(64)     NOT NULL,
    CONSTRAINT activity_line_counts CHECK (number >= 1),
    CONSTRAINT activity_line_hashes_whole CHECK (CHAR_LENGTH(previous_hash) = 64 AND CHAR_LENGTH(hash) = 64)
);

CREATE INDEX activity_line_by_subject ON activity_line (kind, subject, number);
CREATE INDEX activity_line_by_person ON activity_line (person_id, number);
CREATE INDEX activity_line_by_time ON activity_line (done_at, number);

-- The one row says how long the record is and which hash its last line has. Whoever adds a line holds it.
CREATE TABLE activity_head (
    id         INTEGER PRIMARY KEY,
    line_count BIGINT      NOT NULL,
    hash       VARCHAR(64) NOT NULL,
    CONSTRAINT activity_head_one CHECK (id = 1),
    CONSTRAINT activity_head_counts CHECK (line_count >= 0),
    CONSTRAINT activity_head_hash_whole CHECK (CHAR_LENGTH(hash) = 64)
);
