package withy.web.pages.learner;

/** One option of an item. */
public record Choice(String value, String text) {}
