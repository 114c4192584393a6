package withy.web.pages.marks;

import java.util.List;
import withy.web.pages.Link;

/**
 * All marks of a practice.
 *
 * @param night whether the pictures are dark
 */
record MarksView(
    String practice,
    boolean wall,
    boolean still,
    boolean night,
    List<Link> sights,
    List<Link> switches,
    List<Link> practices,
    Link poster,
    List<CardGroup> groups) {}
