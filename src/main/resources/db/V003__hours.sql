-- Hours that stand up: corrections to clock entries, hands lent, other work that is planned, what was agreed to be charged.

-- other_kind may also be AT_WORK (in the shop), REST, MEAL or OFF_DUTY (breaks).
ALTER TABLE clock_entry ADD COLUMN IF NOT EXISTS task_id VARCHAR;

-- What a person was called away from to lend a hand.
ALTER TABLE clock_entry ADD COLUMN IF NOT EXISTS lent_visit_id VARCHAR;
ALTER TABLE clock_entry ADD COLUMN IF NOT EXISTS lent_step VARCHAR;
ALTER TABLE clock_entry ADD COLUMN IF NOT EXISTS lent_task_id VARCHAR;

-- A correction is a row of its own. It names the row it stands for (or a presence, AYYYY-MM-DD.N), and who answers for it.
ALTER TABLE clock_entry ADD COLUMN IF NOT EXISTS replaces_id VARCHAR;
ALTER TABLE clock_entry ADD COLUMN IF NOT EXISTS struck BOOLEAN;
ALTER TABLE clock_entry ADD COLUMN IF NOT EXISTS corrected_by VARCHAR;
ALTER TABLE clock_entry ADD COLUMN IF NOT EXISTS corrected_at TIMESTAMP WITH TIME ZONE;
ALTER TABLE clock_entry ADD COLUMN IF NOT EXISTS why VARCHAR;
CREATE INDEX IF NOT EXISTS clock_entry_by_replaced ON clock_entry (replaces_id);

ALTER TABLE opening ADD COLUMN IF NOT EXISTS closed_by VARCHAR;

ALTER TABLE visit_line ADD COLUMN IF NOT EXISTS agreed_minutes INTEGER;

CREATE INDEX IF NOT EXISTS journal_by_time ON journal (happened_at);
CREATE INDEX IF NOT EXISTS promise_by_time ON promise (ready_at);

CREATE TABLE IF NOT EXISTS errand (
    id VARCHAR NOT NULL,
    person_id VARCHAR NOT NULL,
    other_kind VARCHAR NOT NULL,
    from_at TIMESTAMP WITH TIME ZONE NOT NULL,
    minutes INTEGER NOT NULL,
    note VARCHAR NOT NULL,
    state VARCHAR NOT NULL,
    CONSTRAINT errand_key PRIMARY KEY (id),
    CONSTRAINT errand_takes_time CHECK (minutes > 0)
);
CREATE INDEX IF NOT EXISTS errand_by_state ON errand (state);
