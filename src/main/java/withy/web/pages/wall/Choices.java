package withy.web.pages.wall;

import java.util.List;
import withy.web.pages.Link;

/**
 * Some ways to show the same water, of which one is chosen.
 *
 * @param keepsStep whether the boat stays where she is
 */
public record Choices(String label, List<Link> links, boolean keepsStep) {}
