-- Whoever has a password that somebody else set chooses their own before anything else. Until now nobody had to.

ALTER TABLE person ADD COLUMN password_change_due BOOLEAN DEFAULT FALSE NOT NULL;
