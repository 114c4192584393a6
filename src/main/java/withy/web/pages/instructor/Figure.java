package withy.web.pages.instructor;

/**
 * A figure of the review.
 *
 * @param text rounded, to be read
 * @param exact in full, as the export has it
 * @param says what the figure means, in one sentence
 * @param behind the address of the answers behind it
 */
public record Figure(String label, String text, String exact, String says, String behind) {}
