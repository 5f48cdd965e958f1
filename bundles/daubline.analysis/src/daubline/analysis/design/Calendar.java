package daubline.analysis.design;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The days of a season.
 *
 * @param first the first day
 * @param days how many days it has
 * @param weekdays the days of the week on which work is done
 * @param off days without work
 */
public record Calendar(LocalDate first, int days, Set<DayOfWeek> weekdays, Set<LocalDate> off) {

  /** How long a season may be at most, in days. */
  private static final int MOST = 3650;

  public Calendar {
    weekdays = Set.copyOf(weekdays);
    off = Set.copyOf(off);
  }

  /**
   * Reads a calendar as typed.
   *
   * @throws IllegalArgumentException saying which date or weekday cannot be read
   */
  static Calendar of(String first, String last, String weekdays, String daysOff) {
    LocalDate from = date(first).orElseThrow(() -> new IllegalArgumentException("the first day “" + first + "” is not a date"));
    LocalDate until = date(last).orElseThrow(() -> new IllegalArgumentException("the last day “" + last + "” is not a date"));
    long days = ChronoUnit.DAYS.between(from, until) + 1;
    if (days < 1 || days > MOST) {
      throw new IllegalArgumentException("the last day " + last + " is " + (days < 1 ? "before the first" : "more than ten years after the first"));
    }
    Set<LocalDate> off = FactorReader.list(daysOff.replace(',', ';')).stream()
        .map(d -> date(d).orElseThrow(() -> new IllegalArgumentException("the day off “" + d + "” is not a date"))).collect(Collectors.toSet());
    return new Calendar(from, (int) days, weekdays(weekdays), off);
  }

  /** A date as 2031-05-10; empty when it is none. */
  static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text.strip()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static Set<DayOfWeek> weekdays(String text) {
    List<String> names = FactorReader.list(text.replace(',', ';'));
    return names.isEmpty() ? EnumSet.allOf(DayOfWeek.class) : names.stream().map(Calendar::weekday).collect(Collectors.toSet());
  }

  /** A day of the week in English or German, short or long. */
  private static DayOfWeek weekday(String name) {
    String wanted = name.toLowerCase(Locale.ROOT).replaceAll("s$|\\.$", "");
    return Arrays.stream(DayOfWeek.values()).filter(d -> List.of(Locale.ENGLISH, Locale.GERMAN).stream().anyMatch(l ->
        List.of(TextStyle.FULL, TextStyle.SHORT).stream().anyMatch(s -> d.getDisplayName(s, l).toLowerCase(Locale.ROOT).replaceAll("s$|\\.$", "").equals(wanted))))
        .findFirst().orElseThrow(() -> new IllegalArgumentException("“" + name + "” is not a day of the week"));
  }

  /** Whether work is done on a day counted from 0. */
  public boolean isOpen(int day) {
    LocalDate date = date(day);
    return weekdays.contains(date.getDayOfWeek()) && !off.contains(date);
  }

  /** The date of a day counted from 0. */
  public LocalDate date(int day) {
    return first.plusDays(day);
  }

  /** A date as a day counted from 0. */
  int day(LocalDate date) {
    return (int) ChronoUnit.DAYS.between(first, date);
  }
}
