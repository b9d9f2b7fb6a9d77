-- What makers ask for, what was lent, where machines are washed down first.

ALTER TABLE owner ADD COLUMN IF NOT EXISTS wash_down_first BOOLEAN DEFAULT FALSE NOT NULL;
ALTER TABLE visit ADD COLUMN IF NOT EXISTS wash_down_first BOOLEAN DEFAULT FALSE NOT NULL;

-- Minutes are invented, like those of the catalogue that comes with the program.
ALTER TABLE catalogue ADD COLUMN IF NOT EXISTS wash_down_sign_minutes INTEGER DEFAULT 5 NOT NULL;
ALTER TABLE catalogue ADD COLUMN IF NOT EXISTS wash_down_pad_minutes INTEGER DEFAULT 15 NOT NULL;
INSERT INTO usual_task (task, name, caution)
    SELECT 'SIGN_WASH_DOWN', 'Sign the wash-down', '' FROM catalogue
    WHERE NOT EXISTS (SELECT 1 FROM usual_task WHERE task = 'SIGN_WASH_DOWN');
INSERT INTO usual_task (task, name, caution)
    SELECT 'CLEAN_PAD', 'Clean the pad', '' FROM catalogue
    WHERE NOT EXISTS (SELECT 1 FROM usual_task WHERE task = 'CLEAN_PAD');

-- A line that the maker pays comes from a notice. An empty prefix and no numbers: any number.
CREATE TABLE IF NOT EXISTS notice (
    id VARCHAR NOT NULL,
    title VARCHAR NOT NULL,
    classes VARCHAR NOT NULL,
    label VARCHAR NOT NULL,
    year_from INTEGER,
    year_to INTEGER,
    prefix VARCHAR NOT NULL,
    number_from BIGINT,
    number_to BIGINT,
    work_id VARCHAR NOT NULL,
    CONSTRAINT notice_key PRIMARY KEY (id)
);

CREATE TABLE IF NOT EXISTS notice_taken (
    id VARCHAR NOT NULL,
    visit_id VARCHAR NOT NULL,
    notice_id VARCHAR NOT NULL,
    machine_id VARCHAR NOT NULL,
    line_id VARCHAR NOT NULL,
    state VARCHAR NOT NULL,
    CONSTRAINT notice_taken_key PRIMARY KEY (id)
);
CREATE INDEX IF NOT EXISTS notice_taken_by_machine ON notice_taken (machine_id);

-- machine_id names a machine of ours that is on the books; without it, label says what was lent.
CREATE TABLE IF NOT EXISTS loan (
    id VARCHAR NOT NULL,
    machine_id VARCHAR,
    label VARCHAR NOT NULL,
    visit_id VARCHAR NOT NULL,
    owner_id VARCHAR NOT NULL,
    out_at TIMESTAMP WITH TIME ZONE NOT NULL,
    back_at TIMESTAMP WITH TIME ZONE,
    CONSTRAINT loan_key PRIMARY KEY (id)
);
CREATE INDEX IF NOT EXISTS loan_by_visit ON loan (visit_id);
