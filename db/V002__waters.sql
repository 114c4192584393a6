-- The text of a water's file, with the id and the title under which it is read; the digest is that
-- of all three, so that nothing is kept twice. It stays as long as anything asks for it.
CREATE TABLE water_file (
  digest CHAR(64) PRIMARY KEY,
  water VARCHAR(60) NOT NULL,
  title VARCHAR(60) NOT NULL,
  text CLOB NOT NULL
);

-- An instructor's own waters.
CREATE TABLE water (
  id CHAR(32) PRIMARY KEY,
  instructor CHAR(32) NOT NULL REFERENCES instructor (id),
  file CHAR(64) NOT NULL REFERENCES water_file (digest),
  imported_at TIMESTAMP(9) WITH TIME ZONE NOT NULL
);

CREATE INDEX water_of_instructor ON water (instructor, imported_at);

-- The water in which all items of a drill lie, as it was when the drill was assigned; null where
-- waters are generated.
ALTER TABLE assignment ADD COLUMN water_file CHAR(64);

ALTER TABLE assignment ADD CONSTRAINT assignment_water FOREIGN KEY (water_file)
  REFERENCES water_file (digest);
