-- What is asked at every change must not take longer the more years there are.
CREATE INDEX IF NOT EXISTS clock_entry_by_visit ON clock_entry (visit_id);

CREATE INDEX IF NOT EXISTS clock_entry_by_correction ON clock_entry (corrected_at);
