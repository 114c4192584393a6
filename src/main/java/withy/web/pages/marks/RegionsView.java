package withy.web.pages.marks;

import java.util.List;
import withy.web.pages.Link;

/** The marks that differ between the regions, side by side. */
record RegionsView(
    boolean wall,
    boolean still,
    boolean night,
    List<Link> sights,
    List<Link> switches,
    List<MarkCard> regionA,
    List<MarkCard> regionB) {}
