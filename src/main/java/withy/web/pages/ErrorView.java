package withy.web.pages;

/** A page that is not what was asked for. */
record ErrorView(String heading, String what, String next) {}
