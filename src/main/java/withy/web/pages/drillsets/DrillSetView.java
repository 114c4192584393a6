package withy.web.pages.drillsets;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.web.pages.Fact;

/**
 * A drill set.
 *
 * @param typed the title in the form, as typed
 * @param classes of the instructor's that it has items for
 * @param assignSays what to do where there is none
 */
public record DrillSetView(
    String id,
    String title,
    String typed,
    boolean own,
    boolean shared,
    String from,
    @Nullable String news,
    List<Fact> facts,
    List<ClassChoice> classes,
    String assignSays) {}
