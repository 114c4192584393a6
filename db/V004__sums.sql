-- What the answers of a learner add up to, written in the transaction of each response. One row a
-- learner, since one answer touches its concept, its form and several pairs of marks at once: one
-- row rewritten costs one write of some kilobytes, rows of their own would cost five and their keys.
-- A row whose format is not that of the program is counted anew from the responses.
-- Its keys: the learner for an answer and the learner's own page; the class, by the index that the
-- reference makes, for the review of a class and the list of classes.
CREATE TABLE learner_sums (
  learner CHAR(32) PRIMARY KEY REFERENCES learner (id),
  school_class CHAR(32) NOT NULL REFERENCES school_class (id),
  answers INT NOT NULL,
  last_answered TIMESTAMP(9) WITH TIME ZONE,
  format INT NOT NULL,
  sums VARCHAR(1000000) NOT NULL
);

INSERT INTO learner_sums (learner, school_class, answers, last_answered, format, sums)
SELECT l.id, l.school_class, COUNT(r.item), MAX(r.answered_at), 0, ''
FROM learner l LEFT JOIN response r ON r.learner = l.id
GROUP BY l.id, l.school_class;

ALTER TABLE response ADD COLUMN rapid BOOLEAN DEFAULT FALSE NOT NULL;
