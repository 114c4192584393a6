package withy.web.pages.wall;

import java.util.List;

/**
 * What can be put to which class.
 *
 * @param action to which the form is sent
 * @param sides at each step of the voyage the question about the next mark; empty where there is
 *     none to ask about
 */
public record RoomForm(
    String action, List<RoomChoice> classes, List<RoomChoice> questions, List<String> sides) {}
