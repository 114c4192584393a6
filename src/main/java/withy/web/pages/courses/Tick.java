package withy.web.pages.courses;

/** Something to tick or to choose. */
public record Tick(String value, String text, boolean chosen) {}
