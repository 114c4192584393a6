package withy.web.pages.instructor;

/** An option as an instructor sees it. */
public record KeyedOption(String text, boolean key, String belief) {}
