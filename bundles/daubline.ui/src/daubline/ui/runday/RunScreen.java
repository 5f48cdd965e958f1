package daubline.ui.runday;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.record.runday.Prompt;
import daubline.record.runday.RunDay;
import daubline.record.runday.RunTotals;
import daubline.ui.Words;
import daubline.ui.prefs.Preferred;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the run day shows at a moment, in words. */
final class RunScreen {

  private static final DateTimeFormatter WALL = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /**
   * One figure of the clock.
   *
   * @param due whether it calls for something; said by a word too, not by colour alone
   */
  record Figure(String text, String word, boolean due) {
  }

  private RunScreen() {
  }

  /** The clock: wall time, since lit, since the last charge, what is due next. */
  static List<Figure> clock(RunDay day, Trial trial) {
    double now = day.elapsed();
    RunTotals totals = RunTotals.of(trial);
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure(day.clock().now().format(WALL), Words.of("run.wall"), false));
    figures.add(new Figure(day.isLit() ? span(now) : "–", Words.of("run.elapsed"), false));
    figures.add(new Figure(Double.isNaN(totals.lastCharge()) || !day.isLit() ? "–" : span(now - totals.lastCharge()), Words.of("run.sinceCharge"), false));
    Optional<Prompt> next = next(day);
    figures.add(new Figure(next.map(p -> (p.due() <= now ? "+" : "") + span(Math.abs(p.due() - now))).orElse("–"),
        next.map(p -> Words.of("run.prompt." + p.id())).orElse(Words.of("run.nothing")), next.filter(p -> p.due() <= now).isPresent()));
    return figures;
  }

  static Optional<Prompt> next(RunDay day) {
    return day.prompts().all().stream().findFirst();
  }

  /** Hours, minutes and seconds; minutes and seconds below an hour. */
  static String span(double seconds) {
    long s = Math.max(0, (long) Math.floor(seconds));
    return s < 3600 ? String.format(Locale.ROOT, "%d:%02d", s / 60, s % 60) : String.format(Locale.ROOT, "%d:%02d:%02d", s / 3600, s / 60 % 60, s % 60);
  }

  /** The running totals, a line each. */
  static List<String> totals(RunDay day, Trial trial) {
    RunTotals t = RunTotals.of(trial);
    List<String> lines = new ArrayList<>(List.of(Words.of("run.ore", mass(t.ore()), t.charges()), Words.of("run.fuel", mass(t.fuel()))));
    if (!Double.isNaN(t.ratio())) {
      lines.add(Words.of("run.ratio", Preferred.number(Double.parseDouble(Printed.number(t.ratio(), 2)))));
    }
    if (!Double.isNaN(t.interval())) {
      lines.add(Words.of("run.interval", span(t.interval())));
    }
    if (!Double.isNaN(t.level())) {
      lines.add(Words.of("run.level", Printed.number(t.level() * 100, 2) + " cm"));
    }
    if (!t.descentText().isEmpty()) {
      lines.add(Words.of("run.descent", t.descentText()));
    }
    if (!Double.isNaN(t.finish())) {
      lines.add(Words.of("run.finish", span(t.finish()), day.clock().now().plusSeconds(Math.round(t.finish() - day.elapsed())).format(WALL)));
    }
    double strokes = day.strokes().perMinute();
    if (!Double.isNaN(strokes)) {
      lines.add(Words.of("run.strokes", Printed.number(strokes, 2)));
    }
    return lines;
  }

  private static String mass(Amount amount) {
    return Printed.withUnit(amount, daubline.base.Units.canonical(daubline.base.Quantity.MASS));
  }

  /** The stop criteria of the series. */
  static String stop(Trial trial) {
    String own = trial.eContainer() instanceof Series series ? series.getStopCriteria() : null;
    return own == null || own.isBlank() ? Words.of("run.stop.none") : Words.of("run.stop", own);
  }

  /** The step of the extraction that the next stroke of its key stamps. */
  static String extraction(RunDay day) {
    return day.checklist().next().map(s -> Words.of("run.extraction", s)).orElse(Words.of("run.extraction.done"));
  }
}
