-- The tag a visit had last: tag_number is empty again once the machine went home.
ALTER TABLE visit ADD COLUMN IF NOT EXISTS last_tag INTEGER;
UPDATE visit SET last_tag = tag_number WHERE last_tag IS NULL;
