package withy.usecase;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import withy.core.Term;

/**
 * Which responses of a class stand behind a figure; what is null does not matter.
 *
 * @param learner by id
 * @param assignment by id
 * @param concept that was measured, by its word
 * @param form by its word
 * @param key what was right
 * @param option what was chosen
 * @param misconception that led to the answer, by its word
 * @param since the moment from which they were given on
 * @param until the moment before which they were given
 */
public record Behind(
    String schoolClass,
    @Nullable String learner,
    @Nullable String assignment,
    @Nullable String concept,
    @Nullable String form,
    @Nullable String key,
    @Nullable String option,
    @Nullable String misconception,
    Which which,
    @Nullable Instant since,
    @Nullable Instant until) {
  /** Whenever they were given. */
  public Behind(
      String schoolClass,
      @Nullable String learner,
      @Nullable String assignment,
      @Nullable String concept,
      @Nullable String form,
      @Nullable String key,
      @Nullable String option,
      @Nullable String misconception,
      Which which) {
    this(
        schoolClass,
        learner,
        assignment,
        concept,
        form,
        key,
        option,
        misconception,
        which,
        null,
        null);
  }

  /** All of a class. */
  public static Behind all(String schoolClass) {
    return new Behind(schoolClass, null, null, null, null, null, null, null, Which.ALL);
  }

  /** All of a class to items of one kind, which a form and a concept make. */
  public static Behind kind(String schoolClass, String form, String concept) {
    return new Behind(schoolClass, null, null, concept, form, null, null, null, Which.ALL);
  }

  /** Which of the responses that are otherwise alike. */
  public enum Which implements Term {
    ALL,
    RIGHT,
    /** Those that were not right, "not sure" among them. */
    WRONG,
    /** "Not sure". */
    UNSURE,
    /** Those that came too fast for the item to have been read. */
    RAPID,
    /** The first of each learner on the concept that it measures. */
    FIRST
  }
}
