-- The page of a kind of question reads the newest answers of one form on one concept. Within the key
-- of a concept a form that is rare among its answers would be looked for through all of them, the
-- more the longer a class drills; here the newest thousands are one stretch, and whether a class has
-- answered a kind at all is one look.
CREATE INDEX response_of_kind ON response (school_class, measured, form, answered_at, item);
