package daubline.base;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** In which order the parts of a date are shown and typed. A study keeps them as year, month and day (ISO 8601), whatever is shown. */
public enum DateOrder {
  /** 2031-08-16. */
  YEAR_FIRST("-"),
  /** 16.08.2031. */
  DAY_FIRST("."),
  /** 08/16/2031. */
  MONTH_FIRST("/");

  private static final Pattern KEPT = Pattern.compile("(\\d{4})-(\\d{2})(?:-(\\d{2})([T ].*)?)?");
  private static final Pattern TYPED = Pattern.compile("(\\d{1,2})([./])(\\d{1,2})\\2(\\d{4})([T ].*)?");

  private final String sign;

  DateOrder(String sign) {
    this.sign = sign;
  }

  /** A date as it is shown: a day with or without its time, or a month; any other text stays as it is. */
  public String show(String kept) {
    Matcher m = KEPT.matcher(kept);
    if (this == YEAR_FIRST || !m.matches()) {
      return kept;
    }
    String month = m.group(3) == null ? m.group(2) : this == DAY_FIRST ? m.group(3) + sign + m.group(2) : m.group(2) + sign + m.group(3);
    return month + sign + m.group(1) + (m.group(4) == null ? "" : m.group(4));
  }

  /** A date typed in this order as it is kept; any other text, and a day that no calendar has, stays as it is. */
  public String read(String typed) {
    Matcher m = TYPED.matcher(typed.strip());
    if (this == YEAR_FIRST || !m.matches() || !m.group(2).equals(sign)) {
      return typed;
    }
    try {
      int first = Integer.parseInt(m.group(1));
      int second = Integer.parseInt(m.group(3));
      LocalDate day = LocalDate.of(Integer.parseInt(m.group(4)), this == DAY_FIRST ? second : first, this == DAY_FIRST ? first : second);
      return day + (m.group(5) == null ? "" : m.group(5));
    } catch (DateTimeException e) {
      return typed;
    }
  }
}
