package withy.web.pages.waters;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The waters of an instructor, and the form to import one.
 *
 * @param title as typed
 * @param text of the file that was sent and refused; empty otherwise
 */
public record WatersView(
    List<WaterRow> waters,
    @Nullable String news,
    String title,
    String text,
    List<PlacedProblem> problems) {}
