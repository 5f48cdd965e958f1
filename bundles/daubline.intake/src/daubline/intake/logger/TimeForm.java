package daubline.intake.logger;

import daubline.base.ClockText;
import daubline.base.DecimalSign;
import daubline.base.Numbers;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.DateOrder;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a logger writes times. The text of a form is kept in the study: {@code HH:mm:ss} for a time of day,
 * {@code yyyy-MM-dd HH:mm:ss} or with another order of the date, {@code s}, {@code min} or {@code h} for a count since the
 * start, {@code unix} for seconds since 1970, {@code every 2 s} for rows without times.
 *
 * @param text the form's text
 */
public record TimeForm(String text) {

  /** A time of day. */
  static final TimeForm CLOCK = new TimeForm("HH:mm:ss");
  /** Seconds since 1970. */
  static final TimeForm UNIX = new TimeForm("unix");

  private static final double DAY = 86_400;
  private static final double NANOS = 1e9;

  /** Date and time in one cell. */
  static TimeForm dated(DateOrder order) {
    return new TimeForm(switch (order) {
      case YMD -> "yyyy-MM-dd HH:mm:ss";
      case DMY -> "dd.MM.yyyy HH:mm:ss";
      case MDY -> "MM/dd/yyyy HH:mm:ss";
    });
  }

  /** A count since the start, in a unit of time. */
  static TimeForm count(Unit unit) {
    return new TimeForm(unit.symbol());
  }

  /** Rows at a fixed interval. */
  static TimeForm every(double seconds) {
    return new TimeForm("every " + Printed.number(seconds, 9) + " s");
  }

  /** Seconds between rows without times; empty for other forms. */
  OptionalDouble interval() {
    return text.startsWith("every ") ? OptionalDouble.of(Double.parseDouble(text.substring(6, text.length() - 2)))
        : OptionalDouble.empty();
  }

  private boolean isDated() {
    return text.contains("y");
  }

  /** Whether the time of day alone is written, so that the date must come from elsewhere. */
  boolean isClock() {
    return text.startsWith("H");
  }

  private DateOrder order() {
    return text.startsWith("y") ? DateOrder.YMD : text.startsWith("d") ? DateOrder.DMY : DateOrder.MDY;
  }

  /** The time of a cell in seconds, from midnight, 1970 or the start; empty when the cell is no such time. */
  OptionalDouble seconds(String cell, DecimalSign decimal) {
    if (isClock()) {
      return clock(cell);
    }
    if (isDated()) {
      return dated(cell);
    }
    Optional<Double> number = Numbers.parse(cell, decimal);
    if (number.isEmpty()) {
      return OptionalDouble.empty();
    }
    double factor = text.equals(UNIX.text) ? number.get() > 1e11 ? 1e-3 : 1 : Units.find(Quantity.TIME, text)
        .map(Unit::factor).orElse(1.0);
    return OptionalDouble.of(number.get() * factor);
  }

  private OptionalDouble dated(String cell) {
    int split = cell.indexOf('T') > 0 ? cell.indexOf('T') : cell.indexOf(' ');
    if (split < 0) {
      return OptionalDouble.empty();
    }
    Optional<LocalDate> date = order().read(cell.substring(0, split));
    OptionalDouble time = clock(cell.substring(split + 1).strip().replaceFirst("(Z|[+-]\\d{2}:?\\d{2})$", ""));
    return date.isEmpty() || time.isEmpty() ? OptionalDouble.empty()
        : OptionalDouble.of(date.get().atStartOfDay().toEpochSecond(ZoneOffset.UTC) + time.getAsDouble());
  }

  private static OptionalDouble clock(String cell) {
    int fraction = Math.max(cell.lastIndexOf('.'), cell.lastIndexOf(','));
    boolean split = fraction > 0 && cell.chars().filter(c -> c == ':').count() == 2 && cell.substring(fraction
        + 1).matches("\\d{1,9}");
    Optional<LocalTime> time = ClockText.read(split ? cell.substring(0, fraction) : cell);
    double rest = split ? Double.parseDouble("0." + cell.substring(fraction + 1)) : 0;
    return time.isPresent() ? OptionalDouble.of(time.get().toNanoOfDay() / NANOS + rest) : OptionalDouble.empty();
  }

  /** The time as one that goes on: a time of day that falls back by more than half a day has passed midnight. */
  double onward(double seconds, double before) {
    double on = seconds;
    while (isClock() && on < before - DAY / 2) {
      on += DAY;
    }
    return on;
  }

  /** The date and time of a first row as the study keeps them; empty when the form tells no date. */
  Optional<String> start(String cell) {
    if (isDated()) {
      OptionalDouble seconds = dated(cell);
      return seconds.isEmpty() ? Optional.empty()
          : Optional.of(iso((long) Math.floor(seconds.getAsDouble())));
    }
    OptionalDouble unix = text.equals(UNIX.text) ? seconds(cell, DecimalSign.POINT) : OptionalDouble.empty();
    return unix.isPresent() ? Optional.of(iso((long) unix.getAsDouble()) + "Z") : Optional.empty();
  }

  private static String iso(long seconds) {
    return LocalDateTime.ofEpochSecond(seconds, 0, ZoneOffset.UTC).format(DateTimeFormatter.ISO_LOCAL_DATE_TIME);
  }
}
