-- The one item that all learners of an assignment get alike, put to a class in its room.
CREATE TABLE room_item (
  assignment CHAR(32) PRIMARY KEY REFERENCES assignment (id),
  practice VARCHAR(20) NOT NULL,
  -- the name of the drawn water in which it lies; null where the assignment keeps a file, or none
  drawn VARCHAR(60),
  seed BIGINT NOT NULL,
  item_index INT NOT NULL,
  generator_version INT NOT NULL,
  -- null until the class was shown the answer
  revealed_at TIMESTAMP(9) WITH TIME ZONE
);
