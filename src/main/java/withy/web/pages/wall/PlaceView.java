package withy.web.pages.wall;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.web.pages.Link;

/**
 * What a place is that somebody pressed on.
 *
 * @param take takes the mark away that stands there; null where none stands
 */
public record PlaceView(List<String> words, @Nullable Link take) {}
