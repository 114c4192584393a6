package withy.web.pages.instructor;

/** The instructors' door, with what was typed. */
public record SignInView(String name, boolean firstStart) {}
