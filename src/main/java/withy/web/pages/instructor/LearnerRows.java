package withy.web.pages.instructor;

import java.util.List;

/** A learner and what they do not know. */
public record LearnerRows(String id, String nickname, List<UnknownRow> rows) {}
