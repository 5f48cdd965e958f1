package daubline.intake;

import daubline.base.ClockText;
import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads times of a run log. */
public final class Times {

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
    Optional<LocalTime> time = ClockText.read(text);
    if (time.isEmpty()) {
      row.error("time.form", column, "“" + text + "” is no time", "write it as 14:35, or as 2031-08-16T14:35");
      return null;
    }
    if (day == null || !day.matches("\\d{4}-\\d{2}-\\d{2}")) {
      row.error("time.day", column, "the trial has no date to go with “" + text + "”",
          "give the trial its date, or write date and time as 2031-08-16T14:35");
      return null;
    }
    return day + "T" + ClockText.iso(time.get());
  }
}
