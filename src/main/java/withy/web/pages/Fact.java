package withy.web.pages;

/** What is said of a thing under a label. */
public record Fact(String label, String text) {}
