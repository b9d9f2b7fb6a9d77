-- Which of two records of one machine stands, and since when: a record with merged_into is not in the books any more.
ALTER TABLE machine ADD COLUMN IF NOT EXISTS merged_into VARCHAR;
ALTER TABLE machine ADD COLUMN IF NOT EXISTS merged_at TIMESTAMP WITH TIME ZONE;

CREATE INDEX IF NOT EXISTS visit_by_machine ON visit (machine_id);
-- The tag a visit had last: tag_number is empty again once the machine went home.
ALTER TABLE visit ADD COLUMN IF NOT EXISTS last_tag INTEGER;
UPDATE visit SET last_tag = tag_number WHERE last_tag IS NULL;
