package withy.web.pages.instructor;

/** What a learner does not know. */
public record UnknownRow(
    String concept, String belief, String knows, String exact, String answers) {}
