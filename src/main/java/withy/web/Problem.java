package withy.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;
import withy.wording.Wording;

/**
 * A problem document (RFC 9457), its texts ready to be read.
 *
 * @param type names the kind of problem
 * @param instance the path that was called
 * @param field the field that is wrong, null where it is none
 * @param reference stands in the log beside what happened; null where nothing broke
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Problem(
    String type,
    String title,
    int status,
    String detail,
    String instance,
    @Nullable String field,
    @Nullable String reference) {

  /** The media type of problem documents. */
  public static final String MEDIA_TYPE = "application/problem+json; charset=utf-8";

  /** The problem that a declined call has, in words. */
  static Problem of(Declined declined, Wording words, String instance) {
    return of(declined, words, instance, null);
  }

  static Problem of(Declined declined, Wording words, String instance, @Nullable String reference) {
    Fault fault = declined.fault();
    String key = "problem." + fault.id();
    return new Problem(
        "urn:problem:withy:" + fault.id(),
        words.text(key + ".title"),
        fault.status(),
        words.text(key + ".detail", declined.arguments().toArray()),
        instance,
        declined.field(),
        reference);
  }
}
