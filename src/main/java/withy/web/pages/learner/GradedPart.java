package withy.web.pages.learner;

/** One part of a mark that was put together, or one mark of a passage, and what is right. */
public record GradedPart(String feature, boolean right, String given, String key) {}
