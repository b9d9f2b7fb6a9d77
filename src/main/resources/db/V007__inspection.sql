-- What is inspected, found, measured, asked and handed over, and what machines took home to be looked at again.

-- The work that puts a point right.
ALTER TABLE point ADD COLUMN IF NOT EXISTS fixed_by VARCHAR;

-- Ids of points, one a line; null before there were any. The meter as it was read when the machine came.
ALTER TABLE visit ADD COLUMN IF NOT EXISTS also_look_at VARCHAR;
ALTER TABLE visit ADD COLUMN IF NOT EXISTS intake_meter_hours INTEGER;

-- How it was given back, where that had to be said.
ALTER TABLE visit ADD COLUMN IF NOT EXISTS handed_by VARCHAR;
ALTER TABLE visit ADD COLUMN IF NOT EXISTS handed_to VARCHAR;
ALTER TABLE visit ADD COLUMN IF NOT EXISTS handed_told VARCHAR;
ALTER TABLE visit ADD COLUMN IF NOT EXISTS handed_at TIMESTAMP WITH TIME ZONE;

-- What the owner said of having it fixed.
ALTER TABLE finding ADD COLUMN IF NOT EXISTS owner_answer VARCHAR;
ALTER TABLE finding ADD COLUMN IF NOT EXISTS asked_work VARCHAR;
ALTER TABLE finding ADD COLUMN IF NOT EXISTS asked_by VARCHAR;
ALTER TABLE finding ADD COLUMN IF NOT EXISTS asked_of VARCHAR;
ALTER TABLE finding ADD COLUMN IF NOT EXISTS asked_at TIMESTAMP WITH TIME ZONE;

-- The findings a machine took home: the newest of each point that was not found good since.
CREATE TABLE IF NOT EXISTS carried (
    machine_id VARCHAR NOT NULL,
    point_id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    visit_id VARCHAR NOT NULL,
    mark VARCHAR NOT NULL,
    measured DOUBLE PRECISION,
    note VARCHAR NOT NULL,
    found_by VARCHAR NOT NULL,
    found_at TIMESTAMP WITH TIME ZONE NOT NULL,
    owner_answer VARCHAR,
    asked_work VARCHAR,
    asked_by VARCHAR,
    asked_of VARCHAR,
    asked_at TIMESTAMP WITH TIME ZONE,
    CONSTRAINT carried_key PRIMARY KEY (machine_id, point_id),
    CONSTRAINT carried_by_machine FOREIGN KEY (machine_id) REFERENCES machine (id)
);
