package withy.usecase;

/**
 * Somebody who learns in a class.
 *
 * @param nickname the one personal thing that is kept; unique in the class
 */
public record Learner(String id, String schoolClass, String nickname) {}
