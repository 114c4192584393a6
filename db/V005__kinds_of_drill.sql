-- What kind of drill it is, when it opens (null: at once), and from what the items of a fixed one
-- are drawn, which are the same for everybody.
ALTER TABLE assignment ADD COLUMN kind VARCHAR(20) DEFAULT 'adaptive' NOT NULL;

ALTER TABLE assignment ADD COLUMN opens_at TIMESTAMP(9) WITH TIME ZONE;

ALTER TABLE assignment ADD COLUMN seed BIGINT DEFAULT 0 NOT NULL;

-- Whether a learner began it alone: then it is no drill of the class.
ALTER TABLE assignment ADD COLUMN own BOOLEAN DEFAULT FALSE NOT NULL;

-- Whom a drill is for; nobody here: the whole class.
CREATE TABLE assignment_learner (
  assignment CHAR(32) NOT NULL REFERENCES assignment (id),
  learner CHAR(32) NOT NULL REFERENCES learner (id),
  PRIMARY KEY (assignment, learner)
);

-- A later due time for one learner.
CREATE TABLE extension (
  assignment CHAR(32) NOT NULL REFERENCES assignment (id),
  learner CHAR(32) NOT NULL REFERENCES learner (id),
  due TIMESTAMP(9) WITH TIME ZONE NOT NULL,
  PRIMARY KEY (assignment, learner)
);
