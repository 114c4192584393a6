package withy.web.pages.marks;

import java.util.List;
import withy.web.pages.Link;

/**
 * All marks of a practice.
 *
 * @param night whether the pictures are dark
 * @param notes what it says that no mark shows
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
    List<CardGroup> groups,
    List<Note> notes) {
  /** A fact, and where it is laid down. */
  record Note(String text, List<MarkView.Source> sources) {}
}
