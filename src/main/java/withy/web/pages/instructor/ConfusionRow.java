package withy.web.pages.instructor;

/** A mark that is taken for another. */
public record ConfusionRow(String shown, String answered, String base) {}
