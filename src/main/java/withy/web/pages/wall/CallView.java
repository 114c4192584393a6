package withy.web.pages.wall;

/** A mark as it is called aloud, and what to do about it. */
public record CallView(String name, String order) {}
