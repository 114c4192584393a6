package withy.web.pages.instructor;

/** The first start, with what was typed. */
public record SetUpView(String code, String name) {}
