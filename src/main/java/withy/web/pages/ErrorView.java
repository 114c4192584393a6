package withy.web.pages;

import org.jspecify.annotations.Nullable;

/**
 * A page that is not what was asked for.
 *
 * @param reference stands in the log beside what broke; null where nothing broke
 */
record ErrorView(String heading, String what, String next, @Nullable String reference) {}
