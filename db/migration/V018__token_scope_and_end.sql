-- A token may read only, or write as well, and it ends. Tokens made before this one write, as they did, and end as if made now.
ALTER TABLE access_token ADD COLUMN scope VARCHAR(10) DEFAULT 'WRITE' NOT NULL;
ALTER TABLE access_token ADD COLUMN expires_at TIMESTAMP(6) WITH TIME ZONE;
UPDATE access_token SET expires_at = CURRENT_TIMESTAMP + INTERVAL '90' DAY;
ALTER TABLE access_token ALTER COLUMN expires_at SET NOT NULL;
ALTER TABLE access_token ALTER COLUMN scope DROP DEFAULT;
ALTER TABLE access_token ADD CONSTRAINT access_token_scope_known CHECK (scope IN ('READ', 'WRITE'));
ALTER TABLE access_token ADD CONSTRAINT access_token_ends_after_it_began CHECK (expires_at > created_at);
