package withy.web.pages.wall;

/**
 * Something that changes while the boat runs.
 *
 * @param id by which the script finds it
 */
public record ValueRow(String id, String label, String value) {}
