package withy.web.pages.colleagues;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The instructors of a school, and the invitations that one of them made. */
public record SchoolView(
    List<String> instructors, List<InvitationRow> invitations, @Nullable String news) {}
