package withy.web.pages.colleagues;

/** The way into a school, with what was typed. */
public record JoinSchoolView(String code, String name) {}
