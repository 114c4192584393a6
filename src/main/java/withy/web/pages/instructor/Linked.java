package withy.web.pages.instructor;

/**
 * Something that leads to the answers behind it.
 *
 * @param text what is seen; where it stands says what it is about
 * @param says what is heard by those who hear the link alone; it begins with the text
 * @param behind the address of the answers
 */
public record Linked(String text, String says, String behind) {}
