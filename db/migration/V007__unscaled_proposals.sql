-- A sketch without dimension says so in every list.
ALTER TABLE proposal ADD COLUMN unscaled BOOLEAN DEFAULT FALSE NOT NULL;
