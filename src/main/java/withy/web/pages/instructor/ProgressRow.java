package withy.web.pages.instructor;

/** How far a learner is with a drill. */
public record ProgressRow(String nickname, String answered, String last) {}
