package daubline.charts;

import daubline.analysis.record.LogData;
import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.Quantity;
import daubline.base.Trail;
import daubline.base.Variable;
import daubline.base.Variables;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The course of one fire as lines and marks over the time since first light.
 *
 * @param lines measured values by variable, each in its usual unit
 * @param charges charges by material
 * @param phases begin of each phase with its name
 * @param events taps and incidents
 * @param lit local wall time of first light in seconds of the day; empty when the log has no wall time
 */
record RunCourse(List<Line> lines, Map<Material, List<Mark>> charges, List<Mark> phases, List<Mark> events, OptionalDouble lit) {

  /** Something at a time, in seconds since first light. */
  record Mark(double seconds, String kind, String text, double mass, LogData entry) {
  }

  /** A value at a time, with where it comes from. */
  record Point(double seconds, double value, Trail from) {
  }

  /** Values of one variable over time. */
  record Line(Variable variable, List<Point> points) {
  }

  static RunCourse of(List<LogData> log, Variables variables) {
    Optional<Clock> clock = log.stream().map(Clock::of).flatMap(Optional::stream).findFirst();
    Map<String, Line> lines = new LinkedHashMap<>();
    Map<Material, List<Mark>> charges = new LinkedHashMap<>();
    List<Mark> phases = new ArrayList<>();
    List<Mark> events = new ArrayList<>();
    for (LogData entry : log) {
      double t = seconds(entry, clock);
      if (Double.isNaN(t)) {
        continue;
      }
      entry.charged().forEach(c -> charges.computeIfAbsent(c.material(), m -> new ArrayList<>()).add(new Mark(t, "charge", "", c.mass().isNumber() ? c.mass().value()
          : Double.NaN, entry)));
      entry.values().forEach((id, statements) -> variables.find(id).filter(RunCourse::isDrawn).ifPresent(variable -> {
        Amount amount = statements.get(0).amount();
        if (amount.isNumber()) {
          lines.computeIfAbsent(id, i -> new Line(variable, new ArrayList<>())).points().add(new Point(t, variable.unit().fromCanonical(amount.value()), statements.get(0).trail()));
        }
      }));
      if (entry.kind().equals("phase")) {
        phases.add(new Mark(t, "phase", entry.text(), Double.NaN, entry));
      } else if ((entry.incident() || entry.kind().equals("tap")) && entry.isPublic()) {
        events.add(new Mark(t, entry.incident() ? "incident" : "tap", entry.text(), Double.NaN, entry));
      }
    }
    lines.values().forEach(line -> line.points().sort((a, b) -> Double.compare(a.seconds(), b.seconds())));
    return new RunCourse(List.copyOf(lines.values()), charges, phases, events, clock.map(Clock::lit).map(OptionalDouble::of).orElse(OptionalDouble.empty()));
  }

  private static boolean isDrawn(Variable variable) {
    return variable.quantity() == Quantity.TEMPERATURE || variable.id().equals("air_flow") || variable.id().equals("bellows_strokes_per_minute")
        || variable.id().equals("inlet_pressure");
  }

  private static double seconds(LogData entry, Optional<Clock> clock) {
    return Double.isNaN(entry.elapsed()) ? clock.map(c -> c.since(entry)).orElse(Double.NaN) : entry.elapsed();
  }

  /** The wall clock at first light, from an entry that has both times. */
  private record Clock(OffsetDateTime at, double elapsed) {

    static Optional<Clock> of(LogData entry) {
      return Double.isNaN(entry.elapsed()) ? Optional.empty() : time(entry).map(t -> new Clock(t, entry.elapsed()));
    }

    private static Optional<OffsetDateTime> time(LogData entry) {
      try {
        return entry.at().isEmpty() ? Optional.empty() : Optional.of(OffsetDateTime.parse(entry.at()));
      } catch (DateTimeException e) {
        return Optional.empty();
      }
    }

    double since(LogData entry) {
      return time(entry).map(t -> t.toEpochSecond() - at.toEpochSecond() + elapsed).orElse(Double.NaN);
    }

    double lit() {
      return at.toLocalTime().toSecondOfDay() - elapsed;
    }
  }

  /** Whether there is more than a mark or two. */
  boolean isWorthDrawing() {
    return lines.stream().anyMatch(l -> l.points().size() > 1) || charges.values().stream().mapToInt(List::size).sum() > 1;
  }

  /** The lines of temperatures, or the others. */
  List<Line> lines(boolean temperatures) {
    return lines.stream().filter(l -> (l.variable().quantity() == Quantity.TEMPERATURE) == temperatures && !l.points().isEmpty()).toList();
  }

  /** First and last time of anything. */
  double[] span() {
    double[] span = {0, 60};
    lines.forEach(l -> l.points().forEach(p -> stretch(span, p.seconds())));
    charges.values().forEach(list -> list.forEach(m -> stretch(span, m.seconds())));
    phases.forEach(m -> stretch(span, m.seconds()));
    events.forEach(m -> stretch(span, m.seconds()));
    return span;
  }

  private static void stretch(double[] span, double seconds) {
    span[0] = Math.min(span[0], seconds);
    span[1] = Math.max(span[1], seconds);
  }
}
