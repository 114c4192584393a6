package withy.web.pages.waters;

/**
 * What is wrong in a file.
 *
 * @param place where, as {@code features[12].properties.colour}; empty for the whole of it
 */
public record PlacedProblem(String place, String text) {}
