package withy.web.pages.wall;

import java.util.List;

/**
 * What can be put to which class.
 *
 * @param action to which the form is sent
 */
public record RoomForm(String action, List<RoomChoice> classes, List<RoomChoice> questions) {}
