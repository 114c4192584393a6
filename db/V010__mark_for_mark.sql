-- Behind a pair of marks, one taken for the other: few of all answers, whatever the history of a
-- class. Form and both marks stand in the key, so that they are counted without the wide rows; what
-- follows puts the newest last, as in the other lists of responses.
CREATE INDEX response_taken ON response
  (school_class, form, answer_key, chosen, answered_at, item);
