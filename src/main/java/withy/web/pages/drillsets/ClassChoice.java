package withy.web.pages.drillsets;

/** A class that can be given a drill set. */
public record ClassChoice(String id, String name) {}
