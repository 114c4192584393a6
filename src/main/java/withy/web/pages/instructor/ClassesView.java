package withy.web.pages.instructor;

import java.util.List;

/** The instructor's classes, and the form to make one. */
public record ClassesView(List<ClassRow> classes, String name, List<Choice> practices) {}
