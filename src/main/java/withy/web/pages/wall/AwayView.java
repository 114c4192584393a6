package withy.web.pages.wall;

import org.jspecify.annotations.Nullable;
import withy.web.pages.Link;

/**
 * The question about a mark that was taken away.
 *
 * @param tell shows what stood there; null once it is shown
 * @param stood what stood there; null until it is shown
 */
public record AwayView(@Nullable Link tell, @Nullable CallView stood, Link putBack) {}
