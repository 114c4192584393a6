package withy.web.pages.courses;

/** A course in a list. */
public record CourseRow(String id, String name, String practical, String classes) {}
