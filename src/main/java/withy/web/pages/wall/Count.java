package withy.web.pages.wall;

/** How many have answered, and whether the class was shown the answer. */
public record Count(String words, boolean revealed) {}
