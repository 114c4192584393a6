package withy.web.pages;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import withy.web.SentMoment;
import withy.wording.Wording;

/** Days and hours as a person says them, in the time zone of the server. */
public final class Days {
  private static final int SHORTEST = "2026-03-14T18:00".length();

  private final ZoneId zone;
  private final DateTimeFormatter spoken;
  private final DateTimeFormatter day;
  private final DateTimeFormatter shortDay;
  private final DateTimeFormatter dayOfYear;

  Days(Wording wording, ZoneId zone) {
    this.zone = zone;
    this.spoken =
        DateTimeFormatter.ofPattern(wording.text("page.day-and-hour"), wording.locale())
            .withZone(zone);
    this.day = DateTimeFormatter.ofPattern(wording.text("page.day"), wording.locale());
    this.shortDay = DateTimeFormatter.ofPattern(wording.text("page.day-short"), wording.locale());
    this.dayOfYear =
        DateTimeFormatter.ofPattern(wording.text("page.day-of-year"), wording.locale());
  }

  /** The time zone. */
  public ZoneId zoneId() {
    return zone;
  }

  /** "Saturday 14 March". */
  public String day(LocalDate date) {
    return day.format(date);
  }

  /** "Saturday 14 March 2026". */
  public String dayOfYear(LocalDate date) {
    return dayOfYear.format(date);
  }

  /** "14 March". */
  public String shortDay(LocalDate date) {
    return shortDay.format(date);
  }

  /** The first minute of a day, as a field for day and time holds it. */
  public String startOf(LocalDate day) {
    return day.atStartOfDay().toString();
  }

  /** The last minute of a day, as a field for day and time holds it. */
  public String endOf(LocalDate date) {
    return date.atTime(23, 59).toString();
  }

  /** The name of the time zone. */
  public String zone() {
    return zone.getId();
  }

  /** "Saturday 14 March, 18:00". */
  public String said(Instant instant) {
    return spoken.format(instant);
  }

  /** As a field for day and time holds it; the reverse of {@link #read}. */
  public String typed(Instant instant) {
    return LocalDateTime.ofInstant(instant, zone).toString().substring(0, SHORTEST);
  }

  /** What a field for day and time holds, as browsers send it; empty if it is no day and time. */
  public Optional<Instant> read(String typed) {
    try {
      return Optional.of(
          SentMoment.near(LocalDateTime.parse(typed.replace(' ', 'T')).atZone(zone).toInstant()));
    } catch (DateTimeException malformed) {
      return Optional.empty();
    }
  }
}
