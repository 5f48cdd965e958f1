package daubline.record;

import daubline.base.ClockText;
import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.base.Quantity;
import daubline.base.Units;
import daubline.model.LogEntry;
import daubline.model.Trial;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

/**
 * Times of a run log as paper has them: a clock time ("14:35", "1435"), "~" before it when it is only about, or minutes
 * since the fire was lit ("+215"). The trial's date is added; a time more than twelve hours earlier than the row above
 * has passed midnight.
 */
final class LogClock {

  private static final long HALF_DAY_MINUTES = 720;

  private final Desk desk;
  private final Trial trial;

  LogClock(Desk desk, Trial trial) {
    this.desk = desk;
    this.trial = trial;
  }

  String print(LogEntry entry) {
    String about = entry.isAbout() ? "~" : "";
    Optional<LocalDateTime> at = local(entry.getAt());
    if (at.isPresent()) {
      LocalTime time = at.get().toLocalTime();
      return about + (time.getSecond() == 0 ? time.withNano(0).toString() : ClockText.iso(time.withNano(0)));
    }
    return entry.getElapsed() == null ? about : about + "+" + Columns.plain(desk, entry.getElapsed() / 60);
  }

  /** Wall time of an ISO text, without its offset. */
  static Optional<LocalDateTime> local(String at) {
    try {
      return at == null ? Optional.empty() : Optional.of(at.matches(".*(Z|[+-]\\d{2}:\\d{2})$") ? OffsetDateTime.parse(at).toLocalDateTime() : LocalDateTime.parse(at));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** Whether an entry is earlier than one above it and not said to be late or concluded afterwards. */
  Optional<Finding> odd(LogEntry entry) {
    double before = trial.getLog().stream().takeWhile(e -> e != entry).filter(e -> e.getElapsed() != null).mapToDouble(LogEntry::getElapsed).max().orElse(Double.NaN);
    boolean back = entry.getElapsed() != null && entry.getElapsed() < before && !entry.isLate() && !entry.isInferred();
    return back ? Optional.of(Finding.warning("log.order", "", "earlier than a row above", "mark it as late, or correct its time; the original is kept")) : Optional.empty();
  }

  Entry<LogEntry> read(String typed) {
    boolean about = typed.startsWith("~") || typed.startsWith("≈");
    String text = about ? typed.substring(1).strip() : typed;
    if (text.isEmpty()) {
      return Entry.of(entry -> put(entry, null, null, false));
    }
    return text.startsWith("+") ? elapsed(text.substring(1).strip(), about) : clock(text.matches("\\d{3,4}") ? text.replaceFirst("(\\d\\d)$", ":$1") : text, about);
  }

  private Entry<LogEntry> elapsed(String text, boolean about) {
    Optional<Double> number = Columns.number(desk, text, Units.find(Quantity.TIME, "min").orElseThrow());
    if (number.isEmpty()) {
      return Entry.wrong(Numbers.complaint(text, desk.decimal().get()));
    }
    double seconds = number.get();
    return Entry.of(entry -> put(entry, Alignment.lit(trial).map(s -> iso(s.plusSeconds(Math.round(seconds)))).orElse(null), seconds, about));
  }

  private Entry<LogEntry> clock(String text, boolean about) {
    Optional<LocalTime> time = ClockText.read(text);
    if (time.isEmpty()) {
      return Entry.wrong("time.form", "“" + text + "” is no time", "write it as 14:35, ~14:35 when it is only about, or +215 for minutes since the fire was lit");
    }
    Optional<LocalDate> day = day();
    return day.isEmpty() ? Entry.wrong("time.day", "the trial has no date to go with “" + text + "”", "give the trial its date on the page of facts, as 2031-08-16")
        : Entry.of(entry -> {
          LocalDateTime at = onward(entry, day.get().atTime(time.get()));
          LocalDateTime zero = Alignment.lit(trial).orElse(at);
          put(entry, iso(at), (double) Duration.between(zero, at).toSeconds(), about);
        });
  }

  private Optional<LocalDate> day() {
    try {
      return trial.getOn() == null || trial.getOn().length() < 10 ? Optional.empty() : Optional.of(LocalDate.parse(trial.getOn().substring(0, 10)));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private LocalDateTime onward(LogEntry entry, LocalDateTime at) {
    List<LocalDateTime> above = trial.getLog().stream().takeWhile(e -> e != entry).flatMap(e -> local(e.getAt()).stream()).toList();
    LocalDateTime on = at;
    while (!above.isEmpty() && Duration.between(on, above.get(above.size() - 1)).toMinutes() > HALF_DAY_MINUTES) {
      on = on.plusDays(1);
    }
    return on;
  }

  private static String iso(LocalDateTime at) {
    return at.toLocalDate() + "T" + ClockText.iso(at.toLocalTime().withNano(0));
  }

  private static void put(LogEntry entry, String at, Double elapsed, boolean about) {
    entry.setAt(at);
    entry.setElapsed(elapsed);
    entry.setAbout(about);
  }
}
