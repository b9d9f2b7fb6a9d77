-- What the foreman insists on for a task: its place, its start, its person; what is null is for the plan to say.
CREATE TABLE IF NOT EXISTS task_pin (
    visit_id VARCHAR NOT NULL,
    task_id VARCHAR NOT NULL,
    place_id VARCHAR,
    start_at TIMESTAMP WITH TIME ZONE,
    person_id VARCHAR,
    CONSTRAINT task_pin_key PRIMARY KEY (visit_id, task_id),
    CONSTRAINT task_pin_of_visit FOREIGN KEY (visit_id) REFERENCES visit (id),
    CONSTRAINT task_pin_holds CHECK (place_id IS NOT NULL OR start_at IS NOT NULL OR person_id IS NOT NULL)
);
