package withy.web.pages.instructor;

/**
 * A mark that is taken for another.
 *
 * @param behind the address of the answers that did
 */
public record ConfusionRow(String shown, String answered, String base, String behind) {}
