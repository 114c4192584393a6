package withy.web.pages.drillsets;

/**
 * What is wrong in a file.
 *
 * @param place where, as {@code forms[1]}; empty for the whole of it
 */
public record PlacedProblem(String place, String text) {}
