package withy.web.pages.instructor;

/**
 * What a learner does not know.
 *
 * @param behind the address of their answers on it
 */
public record UnknownRow(
    String concept, String belief, String knows, String exact, String answers, String behind) {}
