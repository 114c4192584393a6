package withy.web.pages.instructor;

/**
 * A part of a form that most people leave as it is, and that stands closed for them.
 *
 * @param now what is chosen in it, so that nobody opens it only to look
 * @param chosen whether somebody has chosen something in it, so that it stands open
 */
public record ComposeGroup(String now, boolean chosen) {}
