package withy.web.pages.wall;

import org.jspecify.annotations.Nullable;

/**
 * How many gave an answer.
 *
 * @param right whether it is right
 * @param sailed what becomes of the boat; null where she does not sail it
 */
public record AnswerRow(String text, int times, boolean right, @Nullable String sailed) {}
