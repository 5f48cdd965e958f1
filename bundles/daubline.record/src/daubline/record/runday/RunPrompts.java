package daubline.record.runday;

import daubline.model.LogEntry;
import daubline.model.Trial;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * What is due next, from the plan of the trial: the planned interval of charges (or the pace of the last ones) and the
 * planned shift at the bellows; temperatures and levels at the interval at which they were taken so far. A prompt can be
 * put off, or skipped with a reason, which the log keeps.
 */
public final class RunPrompts {

  private static final int PACE = 3;

  private final Trial trial;
  private final Map<String, Double> putOff = new HashMap<>();

  /** The prompts of a trial. */
  public RunPrompts(Trial trial) {
    this.trial = trial;
  }

  /** What is due, soonest first; nothing before the fire is lit or after the extraction began. */
  public List<Prompt> all() {
    boolean burning = trial.getLog().stream().anyMatch(e -> e.getElapsed() != null)
        && trial.getLog().stream().noneMatch(e -> "extraction".equals(e.getKind()));
    List<Prompt> all = new ArrayList<>();
    if (burning) {
      RunTotals totals = RunTotals.of(trial);
      boolean done = RunTotals.planned(trial, "ore_total").stream().anyMatch(t -> totals.ore().value() >= t - 1e-9);
      add(all, "charge", totals.lastCharge(), done ? Double.NaN : interval("charge"));
      add(all, "relief", last(e -> "relief".equals(e.getKind())), interval("relief"));
      add(all, "temperature", last(e -> "temperature".equals(e.getKind())), interval("temperature"));
      add(all, "level", last(e -> "level".equals(e.getKind())), interval("level"));
    }
    all.sort(Comparator.comparingDouble(Prompt::due));
    return all;
  }

  private void add(List<Prompt> all, String id, double last, double interval) {
    if (!Double.isNaN(interval) && interval > 0) {
      double due = (Double.isNaN(last) ? 0 : last) + interval;
      all.add(new Prompt(id, Math.max(due, putOff.getOrDefault(id, Double.NEGATIVE_INFINITY))));
    }
  }

  private double last(Predicate<LogEntry> which) {
    return trial.getLog().stream().filter(which).filter(e -> e.getElapsed() != null).mapToDouble(LogEntry::getElapsed).max().orElse(Double.NaN);
  }

  private double pace(Predicate<LogEntry> which) {
    double[] times = trial.getLog().stream().filter(which).filter(e -> e.getElapsed() != null).mapToDouble(LogEntry::getElapsed).sorted().toArray();
    int from = Math.max(0, times.length - PACE);
    return times.length < 2 ? Double.NaN : (times[times.length - 1] - times[from]) / (times.length - 1 - from);
  }

  /** The usual time between two of a kind, s; NaN when there is none. */
  double interval(String id) {
    return switch (id) {
      case "charge" -> RunTotals.planned(trial, "charge_interval").orElse(RunTotals.of(trial).interval());
      case "relief" -> RunTotals.planned(trial, "bellows_shift").orElse(Double.NaN);
      default -> pace(e -> id.equals(e.getKind()));
    };
  }

  /** Puts a prompt off until a time, s since the fire was lit. */
  public void putOff(String id, double until) {
    putOff.put(id, until);
  }
}
