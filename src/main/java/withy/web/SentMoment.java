package withy.web;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;

/** A moment as callers send it, of years that can be kept and said. */
public final class SentMoment {
  private static final Instant EARLIEST = Instant.parse("0001-01-01T00:00:00Z");
  private static final Instant LATEST = Instant.parse("9999-12-31T23:59:59.999999999Z");

  private SentMoment() {}

  /**
   * The moment of a text, as RFC 3339 writes it: with the offset of its clock.
   *
   * @throws DateTimeException if it is none, or lies outside the years 1 to 9999
   */
  public static Instant of(String text) {
    return near(OffsetDateTime.parse(text).toInstant());
  }

  /**
   * The same moment.
   *
   * @throws DateTimeException if it lies outside the years 1 to 9999: some of those no database
   *     holds
   */
  public static Instant near(Instant moment) {
    if (moment.isBefore(EARLIEST) || moment.isAfter(LATEST)) {
      throw new DateTimeException(moment + " is outside the years 1 to 9999");
    }
    return moment;
  }
}
