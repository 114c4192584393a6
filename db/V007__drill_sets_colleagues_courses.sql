-- Drill sets that instructors keep. The text is the file that is exported, without its water, so
-- that whatever a composition comes to hold needs no column. Nothing that was assigned or answered
-- refers to a set: it can be deleted at any time.
CREATE TABLE drill_set (
  id CHAR(32) PRIMARY KEY,
  -- the index made for this reference serves the list of an instructor's sets
  instructor CHAR(32) NOT NULL REFERENCES instructor (id),
  text VARCHAR(20000) NOT NULL,
  -- the water in which it is set, as it was; null where waters are generated
  water_file CHAR(64) REFERENCES water_file (digest),
  -- whether the other instructors see it; one table is a school, and few sets are kept, so that
  -- looking through all is quicker than an index on two values would be
  shared BOOLEAN DEFAULT FALSE NOT NULL,
  kept_at TIMESTAMP(9) WITH TIME ZONE NOT NULL
);

-- Codes with which instructors invite colleagues. Only the digest of a code is kept; the row goes
-- when the code is used or withdrawn.
CREATE TABLE invitation (
  id CHAR(32) PRIMARY KEY,
  digest CHAR(64) NOT NULL UNIQUE,
  instructor CHAR(32) NOT NULL REFERENCES instructor (id),
  made_at TIMESTAMP(9) WITH TIME ZONE NOT NULL,
  expires_at TIMESTAMP(9) WITH TIME ZONE NOT NULL
);

-- What classes prepare for.
CREATE TABLE course (
  id CHAR(32) PRIMARY KEY,
  instructor CHAR(32) NOT NULL REFERENCES instructor (id),
  name VARCHAR(60) NOT NULL,
  practical DATE NOT NULL
);

-- The waters to be sailed, in order, each as it was when it was chosen.
CREATE TABLE course_water (
  course CHAR(32) NOT NULL REFERENCES course (id),
  position INT NOT NULL,
  water_file CHAR(64) NOT NULL REFERENCES water_file (digest),
  PRIMARY KEY (course, position)
);

-- A class is in one course or in none.
CREATE TABLE course_class (
  school_class CHAR(32) PRIMARY KEY REFERENCES school_class (id),
  course CHAR(32) NOT NULL REFERENCES course (id)
);

-- The days of a course as its instructor planned them. Where the text is null the drill is what the
-- plan proposes for these concepts; else it is this drill set, as it was when it was chosen.
CREATE TABLE course_session (
  course CHAR(32) NOT NULL REFERENCES course (id),
  position INT NOT NULL,
  held_on DATE NOT NULL,
  purpose VARCHAR(20) NOT NULL,
  together BOOLEAN NOT NULL,
  -- concepts met on that day for the first time, and those met before
  first_met VARCHAR(2000) NOT NULL,
  again VARCHAR(2000) NOT NULL,
  -- days since the day before it in the plan, and until the practical
  gap INT NOT NULL,
  days_left INT NOT NULL,
  water_file CHAR(64) REFERENCES water_file (digest),
  text VARCHAR(20000),
  set_water_file CHAR(64) REFERENCES water_file (digest),
  PRIMARY KEY (course, position)
);
