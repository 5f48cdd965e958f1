package daubline.intake;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads times of a run log. */
public final class Times {

  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2})[:.h](\\d{2})(?::(\\d{2}))?(?:\\s*([aApP])\\.?[mM]\\.?)?");
  private static final Pattern ISO =
      Pattern.compile("\\d{4}-\\d{2}-\\d{2}[T ]\\d{2}:\\d{2}(:\\d{2}(\\.\\d+)?)?(Z|[+-]\\d{2}:\\d{2})?");

  private final Row row;

  Times(Row row) {
    this.row = row;
  }

  /**
   * The time of a cell in ISO form with its date; null when the cell is empty or cannot be read, which is noted.
   *
   * @param day the date for a bare time of day
   */
  String at(String column, String day) {
    String text = row.text(column);
    if (text.isEmpty() || ISO.matcher(text).matches()) {
      return text.isEmpty() ? null : text.replace(' ', 'T');
    }
    Optional<LocalTime> time = clock(text);
    if (time.isEmpty()) {
      row.error("time.form", column, "“" + text + "” is no time", "write it as 14:35, or as 2031-08-16T14:35");
      return null;
    }
    if (day == null || !day.matches("\\d{4}-\\d{2}-\\d{2}")) {
      row.error("time.day", column, "the trial has no date to go with “" + text + "”",
          "give the trial its date, or write date and time as 2031-08-16T14:35");
      return null;
    }
    return day + "T" + (time.get().getSecond() == 0 ? time.get() + ":00" : time.get().toString());
  }

  /** A time of day with or without seconds, in 24 hours or with a.m. and p.m. */
  public static Optional<LocalTime> clock(String text) {
    Matcher m = CLOCK.matcher(text.strip());
    if (!m.matches()) {
      return Optional.empty();
    }
    try {
      int hour = Integer.parseInt(m.group(1));
      if (m.group(4) != null && (hour < 1 || hour > 12)) {
        return Optional.empty();
      }
      int shift = m.group(4) == null ? hour : hour % 12 + (m.group(4).equalsIgnoreCase("p") ? 12 : 0);
      return Optional.of(LocalTime.of(shift, Integer.parseInt(m.group(2)), m.group(3) == null ? 0
          : Integer.parseInt(m.group(3))));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
