package withy.web.pages.instructor;

/** A learner who needs help with a concept. */
public record HelpRow(String nickname, String belief, String answers) {}
