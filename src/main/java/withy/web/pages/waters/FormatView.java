package withy.web.pages.waters;

/**
 * How to prepare the file of a water.
 *
 * @param example the id of a water whose file can be looked at
 */
public record FormatView(String example) {}
