-- The records of one workshop. Only what H2's regular mode and PostgreSQL 15 both take; a landed file is never edited.
-- Lists of ids that are never asked for by themselves are texts with one id a line.

CREATE TABLE IF NOT EXISTS schema_history (
    version INTEGER NOT NULL,
    name VARCHAR NOT NULL,
    checksum VARCHAR NOT NULL,
    CONSTRAINT schema_history_key PRIMARY KEY (version)
);

-- Whoever changes anything holds its only row until the change is committed.
CREATE TABLE IF NOT EXISTS shop_lock (
    id INTEGER NOT NULL,
    CONSTRAINT shop_lock_key PRIMARY KEY (id),
    CONSTRAINT shop_lock_single CHECK (id = 1)
);
INSERT INTO shop_lock (id) SELECT 1 WHERE NOT EXISTS (SELECT 1 FROM shop_lock);

CREATE TABLE IF NOT EXISTS journal (
    id BIGINT GENERATED ALWAYS AS IDENTITY,
    change_id VARCHAR(36) NOT NULL,
    happened_at TIMESTAMP WITH TIME ZONE NOT NULL,
    who VARCHAR NOT NULL,
    terminal VARCHAR NOT NULL,
    what VARCHAR NOT NULL,
    before_text VARCHAR NOT NULL,
    after_text VARCHAR NOT NULL,
    CONSTRAINT journal_key PRIMARY KEY (id),
    CONSTRAINT change_made_once UNIQUE (change_id)
);

CREATE TABLE IF NOT EXISTS serial (
    id INTEGER NOT NULL,
    next_number BIGINT NOT NULL,
    CONSTRAINT serial_key PRIMARY KEY (id),
    CONSTRAINT serial_single CHECK (id = 1)
);

CREATE TABLE IF NOT EXISTS setting (
    name VARCHAR NOT NULL,
    text VARCHAR NOT NULL,
    CONSTRAINT setting_key PRIMARY KEY (name)
);

CREATE TABLE IF NOT EXISTS shop (
    id INTEGER NOT NULL,
    name VARCHAR NOT NULL,
    zone VARCHAR NOT NULL,
    CONSTRAINT shop_key PRIMARY KEY (id),
    CONSTRAINT shop_single CHECK (id = 1)
);

CREATE TABLE IF NOT EXISTS workday (
    weekday VARCHAR NOT NULL,
    CONSTRAINT workday_key PRIMARY KEY (weekday)
);

-- rated_kg is null for a place that stands on the ground.
CREATE TABLE IF NOT EXISTS place (
    id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    name VARCHAR NOT NULL,
    kind VARCHAR NOT NULL,
    rated_kg INTEGER,
    CONSTRAINT place_key PRIMARY KEY (id),
    CONSTRAINT place_rated CHECK (rated_kg > 0)
);

CREATE TABLE IF NOT EXISTS person (
    id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    name VARCHAR NOT NULL,
    role VARCHAR NOT NULL,
    pace_percent INTEGER NOT NULL,
    CONSTRAINT person_key PRIMARY KEY (id)
);

CREATE TABLE IF NOT EXISTS person_skill (
    person_id VARCHAR NOT NULL,
    skill VARCHAR NOT NULL,
    CONSTRAINT person_skill_key PRIMARY KEY (person_id, skill),
    CONSTRAINT skill_of_person FOREIGN KEY (person_id) REFERENCES person (id)
);

CREATE TABLE IF NOT EXISTS person_window (
    person_id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    overtime BOOLEAN NOT NULL,
    from_time TIME(6) NOT NULL,
    to_time TIME(6) NOT NULL,
    CONSTRAINT person_window_key PRIMARY KEY (person_id, ordinal),
    CONSTRAINT window_of_person FOREIGN KEY (person_id) REFERENCES person (id)
);

CREATE TABLE IF NOT EXISTS catalogue (
    id INTEGER NOT NULL,
    test_drive_minutes INTEGER NOT NULL,
    sign_off_minutes INTEGER NOT NULL,
    machine_spread DOUBLE PRECISION NOT NULL,
    person_spread DOUBLE PRECISION NOT NULL,
    CONSTRAINT catalogue_key PRIMARY KEY (id),
    CONSTRAINT catalogue_single CHECK (id = 1)
);

CREATE TABLE IF NOT EXISTS spread (
    kind VARCHAR NOT NULL,
    deviation DOUBLE PRECISION NOT NULL,
    CONSTRAINT spread_key PRIMARY KEY (kind)
);

CREATE TABLE IF NOT EXISTS usual_task (
    task VARCHAR NOT NULL,
    name VARCHAR NOT NULL,
    caution VARCHAR NOT NULL,
    CONSTRAINT usual_task_key PRIMARY KEY (task)
);

CREATE TABLE IF NOT EXISTS machine_class (
    id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    name VARCHAR NOT NULL,
    mass_kg INTEGER NOT NULL,
    wash_minutes VARCHAR NOT NULL,
    driven_minutes INTEGER NOT NULL,
    pushed_minutes INTEGER NOT NULL,
    raise_minutes INTEGER NOT NULL,
    lower_minutes INTEGER NOT NULL,
    CONSTRAINT machine_class_key PRIMARY KEY (id)
);

CREATE TABLE IF NOT EXISTS point (
    class_id VARCHAR NOT NULL,
    id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    name VARCHAR NOT NULL,
    location VARCHAR NOT NULL,
    step VARCHAR NOT NULL,
    due VARCHAR NOT NULL,
    inspect_minutes INTEGER NOT NULL,
    uncover_minutes VARCHAR NOT NULL,
    caution VARCHAR NOT NULL,
    stops_riding BOOLEAN NOT NULL,
    unit VARCHAR,
    low DOUBLE PRECISION,
    high DOUBLE PRECISION,
    CONSTRAINT point_key PRIMARY KEY (class_id, id),
    CONSTRAINT point_of_class FOREIGN KEY (class_id) REFERENCES machine_class (id)
);

CREATE TABLE IF NOT EXISTS work (
    id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    name VARCHAR NOT NULL,
    choice VARCHAR NOT NULL,
    classes VARCHAR NOT NULL,
    depth VARCHAR NOT NULL,
    CONSTRAINT work_key PRIMARY KEY (id)
);

CREATE TABLE IF NOT EXISTS work_task (
    work_id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    id VARCHAR NOT NULL,
    name VARCHAR NOT NULL,
    step VARCHAR NOT NULL,
    skill VARCHAR NOT NULL,
    kinds VARCHAR NOT NULL,
    hands_on INTEGER NOT NULL,
    unattended INTEGER NOT NULL,
    after_tasks VARCHAR NOT NULL,
    checked_by_another BOOLEAN NOT NULL,
    caution VARCHAR NOT NULL,
    CONSTRAINT work_task_key PRIMARY KEY (work_id, ordinal),
    CONSTRAINT task_of_work FOREIGN KEY (work_id) REFERENCES work (id)
);

CREATE TABLE IF NOT EXISTS work_part (
    work_id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    name VARCHAR NOT NULL,
    quantity VARCHAR NOT NULL,
    CONSTRAINT work_part_key PRIMARY KEY (work_id, ordinal),
    CONSTRAINT part_of_work FOREIGN KEY (work_id) REFERENCES work (id)
);

CREATE TABLE IF NOT EXISTS owner (
    id VARCHAR NOT NULL,
    name VARCHAR NOT NULL,
    phone VARCHAR NOT NULL,
    CONSTRAINT owner_key PRIMARY KEY (id)
);

CREATE TABLE IF NOT EXISTS machine (
    id VARCHAR NOT NULL,
    owner_id VARCHAR NOT NULL,
    class_id VARCHAR NOT NULL,
    label VARCHAR NOT NULL,
    model_year INTEGER,
    number VARCHAR NOT NULL,
    mass_kg INTEGER NOT NULL,
    meter_hours INTEGER,
    CONSTRAINT machine_key PRIMARY KEY (id),
    CONSTRAINT machine_of_owner FOREIGN KEY (owner_id) REFERENCES owner (id)
);

-- tag_number is the tag it has or last had, ended_at when it went, was cancelled or did not come.
CREATE TABLE IF NOT EXISTS visit (
    id VARCHAR NOT NULL,
    machine_id VARCHAR NOT NULL,
    tag_number INTEGER,
    state VARCHAR NOT NULL,
    arrives_at TIMESTAMP WITH TIME ZONE NOT NULL,
    mud VARCHAR NOT NULL,
    depth VARCHAR NOT NULL,
    runs BOOLEAN NOT NULL,
    rolls BOOLEAN NOT NULL,
    steers BOOLEAN NOT NULL,
    stops BOOLEAN NOT NULL,
    note VARCHAR NOT NULL,
    hold_reason VARCHAR,
    hold_note VARCHAR,
    hold_since TIMESTAMP WITH TIME ZONE,
    hold_until TIMESTAMP WITH TIME ZONE,
    finished_at TIMESTAMP WITH TIME ZONE,
    ended_at TIMESTAMP WITH TIME ZONE,
    CONSTRAINT visit_key PRIMARY KEY (id),
    CONSTRAINT visit_of_machine FOREIGN KEY (machine_id) REFERENCES machine (id)
);
CREATE INDEX IF NOT EXISTS visit_by_end ON visit (ended_at);
CREATE INDEX IF NOT EXISTS visit_by_finish ON visit (finished_at);

-- Tags come back: a row names the visit that holds the tag now.
CREATE TABLE IF NOT EXISTS tag (
    number INTEGER NOT NULL,
    visit_id VARCHAR NOT NULL,
    CONSTRAINT tag_taken PRIMARY KEY (number),
    CONSTRAINT tag_of_visit FOREIGN KEY (visit_id) REFERENCES visit (id)
);

CREATE TABLE IF NOT EXISTS visit_line (
    visit_id VARCHAR NOT NULL,
    id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    work_id VARCHAR NOT NULL,
    name VARCHAR NOT NULL,
    payer VARCHAR NOT NULL,
    CONSTRAINT visit_line_key PRIMARY KEY (visit_id, id),
    CONSTRAINT line_of_visit FOREIGN KEY (visit_id) REFERENCES visit (id)
);

CREATE TABLE IF NOT EXISTS line_part (
    visit_id VARCHAR NOT NULL,
    line_id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    name VARCHAR NOT NULL,
    quantity VARCHAR NOT NULL,
    CONSTRAINT line_part_key PRIMARY KEY (visit_id, line_id, ordinal),
    CONSTRAINT part_of_line FOREIGN KEY (visit_id, line_id) REFERENCES visit_line (visit_id, id)
);

CREATE TABLE IF NOT EXISTS stay (
    visit_id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    step VARCHAR NOT NULL,
    kinds VARCHAR NOT NULL,
    place_id VARCHAR,
    CONSTRAINT stay_key PRIMARY KEY (visit_id, ordinal),
    CONSTRAINT stay_of_visit FOREIGN KEY (visit_id) REFERENCES visit (id)
);

CREATE TABLE IF NOT EXISTS task (
    visit_id VARCHAR NOT NULL,
    id VARCHAR NOT NULL,
    stay_ordinal INTEGER NOT NULL,
    ordinal INTEGER NOT NULL,
    name VARCHAR NOT NULL,
    kind VARCHAR NOT NULL,
    skill VARCHAR NOT NULL,
    hands_on INTEGER NOT NULL,
    unattended INTEGER NOT NULL,
    after_tasks VARCHAR NOT NULL,
    not_by_tasks VARCHAR NOT NULL,
    line_ids VARCHAR NOT NULL,
    caution VARCHAR NOT NULL,
    status VARCHAR NOT NULL,
    person_id VARCHAR,
    began_at TIMESTAMP WITH TIME ZONE,
    since_at TIMESTAMP WITH TIME ZONE,
    minutes_left INTEGER NOT NULL,
    ended_at TIMESTAMP WITH TIME ZONE,
    CONSTRAINT task_key PRIMARY KEY (visit_id, id),
    CONSTRAINT task_of_stay FOREIGN KEY (visit_id, stay_ordinal) REFERENCES stay (visit_id, ordinal)
);

CREATE TABLE IF NOT EXISTS promise (
    visit_id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    ready_at TIMESTAMP WITH TIME ZONE NOT NULL,
    said_by VARCHAR NOT NULL,
    said_to VARCHAR NOT NULL,
    said_at TIMESTAMP WITH TIME ZONE NOT NULL,
    why VARCHAR NOT NULL,
    owners_wish BOOLEAN NOT NULL,
    CONSTRAINT promise_key PRIMARY KEY (visit_id, ordinal),
    CONSTRAINT promise_of_visit FOREIGN KEY (visit_id) REFERENCES visit (id)
);

CREATE TABLE IF NOT EXISTS finding (
    visit_id VARCHAR NOT NULL,
    point_id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    mark VARCHAR NOT NULL,
    measured DOUBLE PRECISION,
    note VARCHAR NOT NULL,
    found_by VARCHAR NOT NULL,
    found_at TIMESTAMP WITH TIME ZONE NOT NULL,
    CONSTRAINT finding_key PRIMARY KEY (visit_id, point_id),
    CONSTRAINT finding_of_visit FOREIGN KEY (visit_id) REFERENCES visit (id)
);

-- Either a visit and a step, or a kind of other work.
CREATE TABLE IF NOT EXISTS clock_entry (
    id VARCHAR NOT NULL,
    person_id VARCHAR NOT NULL,
    visit_id VARCHAR,
    step VARCHAR,
    other_kind VARCHAR,
    from_at TIMESTAMP WITH TIME ZONE NOT NULL,
    to_at TIMESTAMP WITH TIME ZONE,
    CONSTRAINT clock_entry_key PRIMARY KEY (id),
    CONSTRAINT clock_entry_of_visit FOREIGN KEY (visit_id) REFERENCES visit (id),
    CONSTRAINT clock_entry_on_one CHECK ((other_kind IS NULL) = (visit_id IS NOT NULL AND step IS NOT NULL)),
    CONSTRAINT clock_entry_forwards CHECK (to_at >= from_at)
);
CREATE INDEX IF NOT EXISTS clock_entry_by_start ON clock_entry (from_at);

CREATE TABLE IF NOT EXISTS opening (
    opened_on DATE NOT NULL,
    opened_at TIMESTAMP WITH TIME ZONE NOT NULL,
    opened_by VARCHAR NOT NULL,
    closed_at TIMESTAMP WITH TIME ZONE,
    CONSTRAINT opening_key PRIMARY KEY (opened_on)
);

CREATE TABLE IF NOT EXISTS attendance (
    opened_on DATE NOT NULL,
    ordinal INTEGER NOT NULL,
    person_id VARCHAR NOT NULL,
    from_at TIMESTAMP WITH TIME ZONE NOT NULL,
    until_at TIMESTAMP WITH TIME ZONE NOT NULL,
    left_at TIMESTAMP WITH TIME ZONE,
    CONSTRAINT attendance_key PRIMARY KEY (opened_on, ordinal),
    CONSTRAINT attendance_of_opening FOREIGN KEY (opened_on) REFERENCES opening (opened_on)
);

CREATE TABLE IF NOT EXISTS hoist_check (
    opened_on DATE NOT NULL,
    ordinal INTEGER NOT NULL,
    place_id VARCHAR NOT NULL,
    checked_by VARCHAR NOT NULL,
    checked_at TIMESTAMP WITH TIME ZONE NOT NULL,
    locked_out VARCHAR,
    CONSTRAINT hoist_check_key PRIMARY KEY (opened_on, ordinal),
    CONSTRAINT hoist_check_of_opening FOREIGN KEY (opened_on) REFERENCES opening (opened_on)
);

-- The posted plan; its minutes count from origin_at.
CREATE TABLE IF NOT EXISTS plan_posted (
    id INTEGER NOT NULL,
    origin_at TIMESTAMP WITH TIME ZONE NOT NULL,
    cost BIGINT NOT NULL,
    bound BIGINT NOT NULL,
    seed BIGINT NOT NULL,
    tries BIGINT NOT NULL,
    millis BIGINT NOT NULL,
    CONSTRAINT plan_posted_key PRIMARY KEY (id),
    CONSTRAINT plan_posted_single CHECK (id = 1)
);

CREATE TABLE IF NOT EXISTS plan_unplaced (
    ordinal INTEGER NOT NULL,
    job VARCHAR NOT NULL,
    why VARCHAR NOT NULL,
    CONSTRAINT plan_unplaced_key PRIMARY KEY (ordinal)
);

CREATE TABLE IF NOT EXISTS plan_stay (
    job VARCHAR NOT NULL,
    stay INTEGER NOT NULL,
    ordinal INTEGER NOT NULL,
    place_id VARCHAR NOT NULL,
    from_minute INTEGER NOT NULL,
    to_minute INTEGER NOT NULL,
    CONSTRAINT plan_stay_key PRIMARY KEY (job, stay)
);

CREATE TABLE IF NOT EXISTS plan_task (
    job VARCHAR NOT NULL,
    stay INTEGER NOT NULL,
    task VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    person_id VARCHAR,
    with_people VARCHAR NOT NULL,
    start_minute INTEGER NOT NULL,
    end_minute INTEGER NOT NULL,
    CONSTRAINT plan_task_key PRIMARY KEY (job, stay, task)
);
