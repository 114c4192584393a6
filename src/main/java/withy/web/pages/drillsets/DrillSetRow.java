package withy.web.pages.drillsets;

/** A drill set in a list. */
public record DrillSetRow(String id, String title, String about) {}
