package withy.web.pages.marks;

import java.util.List;

/** Marks of one group of the standard. */
record CardGroup(String id, String name, List<MarkCard> cards) {}
