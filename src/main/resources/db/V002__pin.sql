-- What is kept of people's PINs: no PIN, only a salted hash of it; salt and hash are hexadecimal digits.
-- wait_until is null where the PIN may be tried at once.
CREATE TABLE IF NOT EXISTS pin (
    person_id VARCHAR NOT NULL,
    salt VARCHAR NOT NULL,
    hash VARCHAR NOT NULL,
    iterations INTEGER NOT NULL,
    wrong_tries INTEGER NOT NULL,
    wait_until TIMESTAMP WITH TIME ZONE,
    CONSTRAINT pin_key PRIMARY KEY (person_id),
    CONSTRAINT pin_of_person FOREIGN KEY (person_id) REFERENCES person (id),
    CONSTRAINT pin_iterations CHECK (iterations > 0),
    CONSTRAINT pin_wrong_tries CHECK (wrong_tries >= 0)
);
