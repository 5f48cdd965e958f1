package daubline.analysis.record;

import daubline.analysis.StudySnapshot;
import daubline.analysis.TrialData;
import daubline.base.Amount;
import daubline.engine.stats.DecayFit;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is left of the wall of one furnace, visit after visit: the height of the standing wall against the years since the
 * first observation, and what two simple laws make of it. Neither law is a fact of the trade; that walls fall in steps is.
 *
 * @param trial id of the trial
 * @param name its name
 * @param points what was observed, in order of time
 * @param share the law that the same share goes each year; empty when nothing can be fitted
 * @param amount the law that the same height goes each year; empty when nothing can be fitted
 * @param ended why the watching ended, or empty
 */
public record DecayCurve(String trial, String name, List<Point> points, Optional<DecayFit> share, Optional<DecayFit> amount, String ended) {

  /** What is watched. */
  public static final String VARIABLE = "surviving_height";
  private static final double DAYS_PER_YEAR = 365.25;

  /**
   * One observation.
   *
   * @param on the day
   * @param years years since the first
   * @param height what was observed, m
   */
  public record Point(LocalDate on, double years, Amount height) {
  }

  /** The furnaces of a study that were seen at least twice. */
  public static List<DecayCurve> of(StudySnapshot study) {
    List<DecayCurve> all = new ArrayList<>();
    for (TrialData trial : study.trials()) {
      study.record().trial(trial.id()).map(record -> of(trial, record)).filter(c -> c.points().size() > 1).ifPresent(all::add);
    }
    return all;
  }

  private static DecayCurve of(TrialData trial, TrialRecord record) {
    List<TrialRecord.VisitData> seen = record.visits().stream().filter(v -> day(v.visitedOn()).isPresent())
        .filter(v -> v.values().containsKey(VARIABLE) && v.values().get(VARIABLE).isNumber())
        .sorted(java.util.Comparator.comparing(v -> day(v.visitedOn()).orElseThrow())).toList();
    List<Point> points = new ArrayList<>();
    for (TrialRecord.VisitData visit : seen) {
      LocalDate on = day(visit.visitedOn()).orElseThrow();
      points.add(new Point(on, ChronoUnit.DAYS.between(points.isEmpty() ? on : points.get(0).on(), on) / DAYS_PER_YEAR, visit.values().get(VARIABLE)));
    }
    String ended = record.visits().stream().map(TrialRecord.VisitData::endedBecause).filter(e -> !e.isEmpty()).findFirst().orElse("");
    return new DecayCurve(trial.id(), trial.name(), List.copyOf(points), fit(points, true), fit(points, false), ended);
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return text.length() < 10 ? Optional.empty() : Optional.of(LocalDate.parse(text.substring(0, 10)));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static Optional<DecayFit> fit(List<Point> points, boolean exponential) {
    double[] years = points.stream().mapToDouble(Point::years).toArray();
    double[] heights = points.stream().mapToDouble(p -> p.height().value()).toArray();
    boolean can = points.size() > 1 && years[years.length - 1] > years[0] && (!exponential || java.util.Arrays.stream(heights).allMatch(h -> h > 0));
    return can ? Optional.of(DecayFit.of(years, heights, exponential)) : Optional.empty();
  }
}
