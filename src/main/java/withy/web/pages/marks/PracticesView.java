package withy.web.pages.marks;

import java.util.List;

/**
 * The practices to choose from.
 *
 * @param missing whether the page stands in place of one that does not exist
 */
record PracticesView(boolean missing, List<MarkCard> practices) {}
