package withy.web.pages.courses;

/** A class that takes a course. */
public record ClassLink(String id, String name) {}
