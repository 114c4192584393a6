-- For the list of an instructor's classes, and to see whether a class has answered since: learners,
-- answers and the last moment by class stand in the key itself, so that the wide rows of sums are
-- not read at all. It serves the reference to school_class too, in place of the index made for it.
CREATE INDEX learner_sums_of_class ON learner_sums (school_class, answers, last_answered, learner);

-- For those who answered last on the whole server, by which is told how common each belief is: the
-- first few hundred of the key in place of sorting everybody.
CREATE INDEX learner_sums_latest ON learner_sums (last_answered DESC, learner);
