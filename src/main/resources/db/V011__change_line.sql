-- Each change with everything needed to do it again, until the owner of the file has written it to the day's file of changes.
-- A line that is long stands here in parts.
CREATE TABLE IF NOT EXISTS change_line (
    journal_id BIGINT NOT NULL,
    part INTEGER NOT NULL,
    line VARCHAR NOT NULL,
    CONSTRAINT change_line_key PRIMARY KEY (journal_id, part)
);
