-- What meters showed, how often services come again, and who was rung about one.

-- How often a work is to be done, whichever comes first, and which smaller ones count as done with it.
CREATE TABLE IF NOT EXISTS work_interval (
    work_id VARCHAR NOT NULL,
    hours INTEGER,
    kilometres INTEGER,
    months INTEGER,
    includes VARCHAR NOT NULL,
    CONSTRAINT work_interval_key PRIMARY KEY (work_id),
    CONSTRAINT interval_of_work FOREIGN KEY (work_id) REFERENCES work (id),
    CONSTRAINT work_interval_ends CHECK (hours > 0 OR kilometres > 0 OR months > 0)
);

-- told: AS_EXPECTED, NEW_METER or RIGHT_AS_TYPED. Readings are added, never changed.
CREATE TABLE IF NOT EXISTS meter_reading (
    id VARCHAR NOT NULL,
    machine_id VARCHAR NOT NULL,
    read_at TIMESTAMP WITH TIME ZONE NOT NULL,
    unit VARCHAR NOT NULL,
    shown DOUBLE PRECISION NOT NULL,
    told VARCHAR NOT NULL,
    read_by VARCHAR NOT NULL,
    CONSTRAINT meter_reading_key PRIMARY KEY (id),
    CONSTRAINT reading_of_machine FOREIGN KEY (machine_id) REFERENCES machine (id),
    CONSTRAINT meter_reading_shown CHECK (shown >= 0)
);
CREATE INDEX IF NOT EXISTS meter_reading_by_machine ON meter_reading (machine_id, read_at);

-- said: BOOKED, AGAIN (on again_on) or NOT_COMING.
CREATE TABLE IF NOT EXISTS rung (
    id VARCHAR NOT NULL,
    machine_id VARCHAR NOT NULL,
    rung_at TIMESTAMP WITH TIME ZONE NOT NULL,
    rung_by VARCHAR NOT NULL,
    said VARCHAR NOT NULL,
    again_on DATE,
    note VARCHAR NOT NULL,
    CONSTRAINT rung_key PRIMARY KEY (id),
    CONSTRAINT rung_of_machine FOREIGN KEY (machine_id) REFERENCES machine (id)
);
CREATE INDEX IF NOT EXISTS rung_by_machine ON rung (machine_id, rung_at);

CREATE INDEX IF NOT EXISTS visit_line_by_work ON visit_line (work_id);
