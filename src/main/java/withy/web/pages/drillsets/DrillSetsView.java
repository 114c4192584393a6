package withy.web.pages.drillsets;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The drill sets that an instructor can use, and the form to import one.
 *
 * @param text of the file that was sent and refused; empty otherwise
 */
public record DrillSetsView(
    List<DrillSetRow> own,
    List<DrillSetRow> school,
    List<DrillSetRow> authored,
    @Nullable String news,
    String text,
    List<PlacedProblem> problems) {}
