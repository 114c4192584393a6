-- Ids are 128 random bits made by the application, 32 hexadecimal digits.

CREATE TABLE instructor (
  id CHAR(32) PRIMARY KEY,
  name VARCHAR(60) NOT NULL,
  folded VARCHAR(240) NOT NULL UNIQUE,
  password_hash VARCHAR(200) NOT NULL
);

CREATE TABLE school_class (
  id CHAR(32) PRIMARY KEY,
  name VARCHAR(60) NOT NULL,
  practice VARCHAR(20) NOT NULL,
  code VARCHAR(12) NOT NULL UNIQUE,
  -- null until somebody sets the server up
  instructor CHAR(32) REFERENCES instructor (id)
);

-- The nickname is the one personal thing that is kept of a learner.
CREATE TABLE learner (
  id CHAR(32) PRIMARY KEY,
  school_class CHAR(32) NOT NULL REFERENCES school_class (id),
  nickname VARCHAR(24) NOT NULL,
  folded VARCHAR(96) NOT NULL,
  return_digest CHAR(64) NOT NULL UNIQUE,
  UNIQUE (school_class, folded)
);

CREATE TABLE assignment (
  id CHAR(32) PRIMARY KEY,
  school_class CHAR(32) NOT NULL REFERENCES school_class (id),
  title VARCHAR(60) NOT NULL,
  concepts VARCHAR(2000) NOT NULL,
  forms VARCHAR(2000) NOT NULL,
  time_of_day VARCHAR(10),
  item_count INT NOT NULL,
  due TIMESTAMP(9) WITH TIME ZONE,
  assigned_at TIMESTAMP(9) WITH TIME ZONE NOT NULL
);

-- From the seed the item is drawn again; choices: token=value, in the order shown.
CREATE TABLE issued_item (
  id CHAR(32) PRIMARY KEY,
  learner CHAR(32) NOT NULL REFERENCES learner (id),
  assignment CHAR(32) NOT NULL REFERENCES assignment (id),
  position INT NOT NULL,
  practice VARCHAR(20) NOT NULL,
  concept VARCHAR(40) NOT NULL,
  seed BIGINT NOT NULL,
  item_index INT NOT NULL,
  generator_version INT NOT NULL,
  choices VARCHAR(4000) NOT NULL,
  issued_at TIMESTAMP(9) WITH TIME ZONE NOT NULL,
  UNIQUE (learner, assignment, position)
);

-- One response an item, one an id that the learner's device made. All that statistics need stands
-- here, so that they never depend on what the generator draws today.
CREATE TABLE response (
  item CHAR(32) PRIMARY KEY REFERENCES issued_item (id),
  learner CHAR(32) NOT NULL REFERENCES learner (id),
  client_id UUID NOT NULL,
  school_class CHAR(32) NOT NULL REFERENCES school_class (id),
  assignment CHAR(32) NOT NULL REFERENCES assignment (id),
  form VARCHAR(40) NOT NULL,
  practice VARCHAR(20) NOT NULL,
  concepts VARCHAR(2000) NOT NULL,
  answer_key VARCHAR(200) NOT NULL,
  -- null for "not sure"
  chosen VARCHAR(200),
  misconception VARCHAR(60),
  -- value=misconception, in the order shown
  offered VARCHAR(4000) NOT NULL,
  correct BOOLEAN NOT NULL,
  shown_ms BIGINT NOT NULL,
  answered_at TIMESTAMP(9) WITH TIME ZONE NOT NULL,
  UNIQUE (learner, client_id)
);

CREATE INDEX response_of_class ON response (school_class, answered_at, item);

CREATE INDEX response_of_assignment ON response (assignment, learner, answered_at);

-- Of the token only its digest; exactly one of instructor and learner.
CREATE TABLE open_session (
  digest CHAR(64) PRIMARY KEY,
  instructor CHAR(32) REFERENCES instructor (id),
  learner CHAR(32) REFERENCES learner (id),
  opened_at TIMESTAMP(9) WITH TIME ZONE NOT NULL,
  used_at TIMESTAMP(9) WITH TIME ZONE NOT NULL,
  CHECK ((instructor IS NULL) <> (learner IS NULL))
);

CREATE INDEX open_session_of_learner ON open_session (learner);
