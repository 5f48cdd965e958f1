package daubline.base;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of day as people write them. */
public final class ClockText {

  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2})[:.h](\\d{2})(?::(\\d{2}))?(?:\\s*([aApP])\\.?[mM]\\.?)?");

  private ClockText() {
  }

  /** A time of day with or without seconds, in 24 hours or with a.m. and p.m.; empty when the text is none. */
  public static Optional<LocalTime> read(String text) {
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
      return Optional.of(LocalTime.of(shift, Integer.parseInt(m.group(2)), m.group(3) == null ? 0 : Integer.parseInt(m.group(3))));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** The time with seconds, as ISO dates carry it. */
  public static String iso(LocalTime time) {
    return time.getSecond() == 0 && time.getNano() == 0 ? time.withSecond(0).withNano(0) + ":00" : time.toString();
  }
}
