package withy.web.pages.marks;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;
import withy.web.pages.Fact;
import withy.web.pages.Link;

/**
 * One mark and all that its practice says of it.
 *
 * @param pictures the mark as it is shown: seen, or its light and the strip of it
 * @param lights every light in common use
 * @param shapes the shapes it may have, where it may have several
 * @param mistakes beliefs, and where they lead
 */
record MarkView(
    String name,
    String practice,
    String group,
    boolean wall,
    boolean still,
    boolean night,
    List<Link> sights,
    List<Link> switches,
    Link all,
    List<Svg> pictures,
    String caption,
    String meaning,
    String demand,
    List<Fact> facts,
    List<MarkCard> lights,
    List<MarkCard> shapes,
    List<Fact> mistakes,
    List<Source> sources,
    @Nullable Link previous,
    @Nullable Link next) {
  /**
   * Where it is laid down.
   *
   * @param fromMemory whether the document was not at hand
   */
  record Source(String text, boolean fromMemory) {}
}
