package withy.web.pages.instructor;

/** One class of the instructor's list. */
public record ClassRow(String id, String name, String practice, String code) {}
