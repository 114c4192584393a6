package withy.web.pages.instructor;

/**
 * A learner who needs help with a concept.
 *
 * @param behind the address of their answers on it
 */
public record HelpRow(String nickname, String belief, String answers, String behind) {}
