-- Parts: what they are, what lies on the shelf, what is on order. Amounts are whole thousandths of the item's unit.
CREATE TABLE IF NOT EXISTS item (
    id VARCHAR NOT NULL,
    ordinal INTEGER NOT NULL,
    name VARCHAR NOT NULL,
    unit VARCHAR NOT NULL,
    order_days INTEGER NOT NULL,
    disposable BOOLEAN NOT NULL,
    CONSTRAINT item_key PRIMARY KEY (id)
);

-- The task that uses the part; null where the shelf does not know the part.
ALTER TABLE work_part ADD COLUMN IF NOT EXISTS task_id VARCHAR;

-- An item that a part can be: by model years, or by numbers where there is a prefix; a limit that is null is none.
CREATE TABLE IF NOT EXISTS part_variant (
    work_id VARCHAR NOT NULL,
    part_ordinal INTEGER NOT NULL,
    ordinal INTEGER NOT NULL,
    item_id VARCHAR NOT NULL,
    classes VARCHAR NOT NULL,
    year_from INTEGER,
    year_to INTEGER,
    prefix VARCHAR,
    number_from BIGINT,
    number_to BIGINT,
    CONSTRAINT part_variant_key PRIMARY KEY (work_id, part_ordinal, ordinal),
    CONSTRAINT variant_of_part FOREIGN KEY (work_id, part_ordinal) REFERENCES work_part (work_id, ordinal)
);

ALTER TABLE point ADD COLUMN IF NOT EXISTS renewed_with VARCHAR;

-- Which item went in, or will, and who said so.
ALTER TABLE line_part ADD COLUMN IF NOT EXISTS fitted_item_id VARCHAR;
ALTER TABLE line_part ADD COLUMN IF NOT EXISTS fitted_by VARCHAR;
ALTER TABLE line_part ADD COLUMN IF NOT EXISTS fitted_at TIMESTAMP WITH TIME ZONE;

CREATE TABLE IF NOT EXISTS stock (
    item_id VARCHAR NOT NULL,
    bin VARCHAR NOT NULL,
    amount BIGINT NOT NULL,
    CONSTRAINT stock_key PRIMARY KEY (item_id)
);

CREATE TABLE IF NOT EXISTS part_order (
    id VARCHAR NOT NULL,
    item_id VARCHAR NOT NULL,
    amount BIGINT NOT NULL,
    ordered_at TIMESTAMP WITH TIME ZONE NOT NULL,
    due_at TIMESTAMP WITH TIME ZONE NOT NULL,
    come_at TIMESTAMP WITH TIME ZONE,
    CONSTRAINT part_order_key PRIMARY KEY (id),
    CONSTRAINT part_order_of_some CHECK (amount > 0)
);
CREATE INDEX IF NOT EXISTS part_order_by_come ON part_order (come_at);

-- Never changed: all movements of an item add up to its stock. The source is the visit it was taken for, or the order it came with.
CREATE TABLE IF NOT EXISTS stock_movement (
    id VARCHAR NOT NULL,
    item_id VARCHAR NOT NULL,
    kind VARCHAR NOT NULL,
    change_amount BIGINT NOT NULL,
    moved_at TIMESTAMP WITH TIME ZONE NOT NULL,
    moved_by VARCHAR NOT NULL,
    source_id VARCHAR,
    CONSTRAINT stock_movement_key PRIMARY KEY (id)
);
CREATE INDEX IF NOT EXISTS stock_movement_by_item ON stock_movement (item_id, moved_at);
