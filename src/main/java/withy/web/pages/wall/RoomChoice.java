package withy.web.pages.wall;

/** A class, or a question that can be put to it. */
public record RoomChoice(String value, String text, boolean chosen) {}
