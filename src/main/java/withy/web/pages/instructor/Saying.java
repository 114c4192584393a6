package withy.web.pages.instructor;

import java.util.List;

/** Something that is said, and the answers that it is about. */
public record Saying(String said, List<Linked> about) {}
