-- Answers to posts that carried an Idempotency-Key, kept for a day so that the same post sent again is not done again.
-- status is null while the first one is still being worked on.

CREATE TABLE idempotent_answer (
    person_id       BIGINT       NOT NULL,
    idempotency_key VARCHAR(200) NOT NULL,
    request_hash    VARCHAR(64)  NOT NULL,
    claimed_at      TIMESTAMP(6) WITH TIME ZONE NOT NULL,
    status          INTEGER,
    content_type    VARCHAR(200),
    location        VARCHAR(2000),
    etag            VARCHAR(200),
    body            VARCHAR(1000000),
    CONSTRAINT idempotent_answer_key PRIMARY KEY (person_id, idempotency_key),
    CONSTRAINT idempotent_answer_of_person FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT idempotent_answer_hash_whole CHECK (CHAR_LENGTH(request_hash) = 64),
    CONSTRAINT idempotent_answer_status_known CHECK (status BETWEEN 100 AND 599)
);

CREATE INDEX idempotent_answer_by_age ON idempotent_answer (claimed_at);
