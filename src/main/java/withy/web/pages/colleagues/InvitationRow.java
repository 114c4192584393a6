package withy.web.pages.colleagues;

import org.jspecify.annotations.Nullable;

/**
 * An open invitation.
 *
 * @param code and the link that holds it; null once they can be shown no more
 */
public record InvitationRow(
    String id, String made, String expires, @Nullable String code, @Nullable String link) {}
