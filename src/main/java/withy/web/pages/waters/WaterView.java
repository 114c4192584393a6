package withy.web.pages.waters;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;
import withy.web.pages.Link;

/** A water under a practice. */
public record WaterView(
    String id,
    String title,
    boolean own,
    @Nullable String news,
    Svg chart,
    List<Link> practices,
    List<Link> times,
    List<String> facts,
    List<PlacedProblem> remarks) {}
