package daubline.base;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The order of day, month and year in dates: of a file, or as a person wants them shown. A study keeps them as year, month and day
 * (ISO 8601), whatever is shown.
 */
public enum DateOrder {
  /** 2031-08-16 */
  YMD("ymd", "-"),
  /** 16.08.2031 */
  DMY("dmy", "."),
  /** 08/16/2031 */
  MDY("mdy", "/");

  private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-./](\\d{1,2})[-./](\\d{1,2})");
  private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})([-./])(\\d{1,2})[-./](\\d{4})");

  private static final Pattern KEPT = Pattern.compile("(\\d{4})-(\\d{2})(?:-(\\d{2})([T ].*)?)?");
  private static final Pattern TIMED = Pattern.compile("(\\S+?)([T ].*)?");

  private final String word;
  private final String sign;

  DateOrder(String word, String sign) {
    this.word = word;
    this.sign = sign;
  }

  /** The word by which settings name it. */
  public String word() {
    return word;
  }

  /** The order of a word; empty when there is none. */
  public static Optional<DateOrder> find(String word) {
    return Arrays.stream(values()).filter(o -> o.word.equals(word)).findFirst();
  }

  /** Whether a text looks like a whole date in any order. */
  public static boolean isDate(String text) {
    return YEAR_FIRST.matcher(text).matches() || YEAR_LAST.matcher(text).matches();
  }

  /**
   * Finds the order that all dates share: one above twelve tells day from month, dots are only written day first.
   *
   * @return empty when none tells or when they contradict each other
   */
  public static Optional<DateOrder> decide(Collection<String> dates) {
    boolean dayFirst = dates.stream().anyMatch(d -> part(d, 1) > 12 || YEAR_LAST.matcher(d).matches() && d.contains("."));
    boolean monthFirst = dates.stream().anyMatch(d -> part(d, 3) > 12);
    boolean yearLast = dates.stream().anyMatch(d -> YEAR_LAST.matcher(d).matches());
    if (!yearLast) {
      return Optional.of(YMD);
    }
    return dayFirst == monthFirst ? Optional.empty() : Optional.of(dayFirst ? DMY : MDY);
  }

  private static int part(String date, int group) {
    Matcher m = YEAR_LAST.matcher(date);
    return m.matches() ? Integer.parseInt(m.group(group)) : 0;
  }

  /** Reads a date written in this order, or with the year first; empty when it is none. */
  public Optional<LocalDate> read(String text) {
    try {
      Matcher m = YEAR_FIRST.matcher(text);
      if (m.matches()) {
        return Optional.of(LocalDate.of(number(m, 1), number(m, 2), number(m, 3)));
      }
      m = YEAR_LAST.matcher(text);
      if (!m.matches() || this == YMD) {
        return Optional.empty();
      }
      return Optional.of(LocalDate.of(number(m, 4), number(m, this == DMY ? 3 : 1), number(m, this == DMY ? 1 : 3)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static int number(Matcher m, int group) {
    return Integer.parseInt(m.group(group));
  }

  /** A date as it is shown: a day with or without its time, or a month; any other text stays as it is. */
  public String show(String kept) {
    Matcher m = KEPT.matcher(kept);
    if (this == YMD || !m.matches()) {
      return kept;
    }
    String month = m.group(3) == null ? m.group(2) : this == DMY ? m.group(3) + sign + m.group(2) : m.group(2) + sign + m.group(3);
    return month + sign + m.group(1) + (m.group(4) == null ? "" : m.group(4));
  }

  /** A date typed as it is shown, as it is kept; any other text, and a day that no calendar has, stays as it is. */
  public String keep(String typed) {
    Matcher m = TIMED.matcher(typed.strip());
    if (this == YMD || !m.matches() || !m.group(1).contains(sign)) {
      return typed;
    }
    String time = m.group(2) == null ? "" : m.group(2);
    return read(m.group(1)).map(day -> day + time).orElse(typed);
  }
}
