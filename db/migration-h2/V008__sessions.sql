-- Who is signed in where: the tables of Spring Session, with the type for bytes of this database.
-- Names and columns are the library's; expiry and access times are milliseconds since 1970.

CREATE TABLE spring_session (
    primary_id CHARACTER(36) NOT NULL,
    session_id CHARACTER(36) NOT NULL,
    creation_time BIGINT NOT NULL,
    last_access_time BIGINT NOT NULL,
    max_inactive_interval INTEGER NOT NULL,
    expiry_time BIGINT NOT NULL,
    principal_name CHARACTER VARYING(100),
    CONSTRAINT spring_session_pk PRIMARY KEY (primary_id)
);

CREATE UNIQUE INDEX spring_session_by_id ON spring_session (session_id);
CREATE INDEX spring_session_by_expiry ON spring_session (expiry_time);
CREATE INDEX spring_session_by_principal ON spring_session (principal_name);

CREATE TABLE spring_session_attributes (
    session_primary_id CHARACTER(36) NOT NULL,
    attribute_name CHARACTER VARYING(200) NOT NULL,
    attribute_bytes BINARY LARGE OBJECT NOT NULL,
    CONSTRAINT spring_session_attributes_pk PRIMARY KEY (session_primary_id, attribute_name),
    CONSTRAINT spring_session_attributes_of_session FOREIGN KEY (session_primary_id)
        REFERENCES spring_session (primary_id) ON DELETE CASCADE
);
