-- What an answer measures: the first of its concepts, as every figure counts it. The database works
-- it out itself, so that it cannot come to differ.
ALTER TABLE response ADD COLUMN measured VARCHAR(2000)
  GENERATED ALWAYS AS (SUBSTRING(concepts FROM 1 FOR LOCATE(' ', CONCAT(concepts, ' ')) - 1));

-- The lists of responses behind the figures are read newest first, a page at a time, from where the
-- last page ended. Each key ends with moment and item, so that a page is a stretch of its index.
-- Behind a figure of the class on a concept; what narrows it further is looked for within that.
CREATE INDEX response_of_concept ON response (school_class, measured, answered_at, item);

-- Behind a figure of one learner, whose answers are few; on a concept in order, the first of them
-- at the end.
CREATE INDEX response_of_learner ON response (learner, measured, answered_at, item);

-- Behind a belief: the wrong answers that it led to, a small part of all; among the latest of them
-- are the items that show it.
CREATE INDEX response_of_belief ON response (school_class, misconception, answered_at, item);
