package daubline.engine.design.search;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Run;
import daubline.engine.design.Space;
import daubline.engine.design.Starts;
import daubline.engine.stats.Cholesky;
import daubline.engine.stats.Matrices;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Optimal designs by exchanging one coordinate at a time from random starts (Meyer &amp; Nachtsheim 1995). A coordinate
 * that is fixed with the furnace or the day is exchanged for all its trials at once (Jones &amp; Goos 2007). Trials
 * already burnt stay; forbidden settings are skipped.
 */
public final class CoordinateExchange {

  private static final int MOST_PASSES = 100;
  private static final double LEAST_GAIN = 1e-9;
  private static final double LEAST_FINE_GAIN = 1e-13;
  private static final double FINEST = 1e-7;

  private final SearchRequest request;
  private final Model model;
  private final List<Groups.Group> groups;
  private final double[][] precision;
  private final double[][] moments;
  private final double[][] settings;
  private final int[][] columns;
  private final double[][] steps;
  private Information information;

  private CoordinateExchange(Prepared prepared, RandomStream random) {
    request = prepared.request;
    model = request.model();
    groups = prepared.groups.changeable();
    precision = prepared.precision;
    moments = prepared.moments;
    columns = prepared.columns;
    steps = prepared.steps;
    settings = prepared.groups.draw(random);
    information = new Information(model.matrix(List.of(settings)), precision, moments);
  }

  /** What all starts share. */
  private static final class Prepared {
    final SearchRequest request;
    final Groups groups;
    final double[][] precision;
    final double[][] moments;
    final int[][] columns;
    final double[][] steps;

    Prepared(SearchRequest request) {
      this.request = request;
      groups = new Groups(request);
      precision = request.strata().precision(request.allFurnaces(), request.allDays());
      moments = request.criterion() == Criterion.PREDICTION ? request.model().moments(request.space().region()) : null;
      int k = request.space().factors().size();
      columns = new int[k][];
      steps = new double[k][];
      for (int j = 0; j < k; j++) {
        columns[j] = request.model().columnsWith(j);
        steps[j] = Space.steps(request.space().factors().get(j), request.steps());
      }
    }
  }

  /**
   * A design found.
   *
   * @param design the trials, those already burnt first
   * @param logDeterminant the natural logarithm of |XᵀV⁻¹X|
   * @param averageVariance the variance of a prediction averaged over the region, in units of the variance of a trial
   */
  public record Found(Design design, double logDeterminant, double averageVariance) {
  }

  private record Outcome(double[][] settings, double criterion) {
  }

  /**
   * Searches.
   *
   * @throws IllegalArgumentException when no allowed or no estimable design was found
   * @throws java.util.concurrent.CancellationException when progress asks to stop
   */
  public static Found search(SearchRequest request, Progress progress) {
    Prepared prepared = new Prepared(request);
    long key = RandomStream.key(request.seed(), "coordinate exchange");
    Outcome best = Starts.best(request.starts(), i -> new CoordinateExchange(prepared,
        new RandomStream(RandomStream.key(key, i))).run(progress), Comparator.comparingDouble(o -> rounded(o.criterion)), progress);
    if (best.criterion == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException("no design of " + best.settings.length + " trials in these furnaces lets all of "
          + request.model().terms().size() + " terms be told apart; add trials or furnaces, or leave out a term");
    }
    return found(request, prepared, best.settings);
  }

  /** Starts that end in the same optimum differ in the last digits only; rounding lets the earliest of them win. */
  private static double rounded(double criterion) {
    return Double.isInfinite(criterion) ? criterion : Math.rint(criterion * 1e10) / 1e10;
  }

  private static Found found(SearchRequest request, Prepared prepared, double[][] settings) {
    List<Run> runs = new ArrayList<>();
    int[] furnaces = request.allFurnaces();
    int[] days = request.allDays();
    for (int i = 0; i < settings.length; i++) {
      runs.add(new Run(settings[i], furnaces[i], days[i], i < request.done().size()));
    }
    Cholesky m = Cholesky.of(Matrices.quadratic(request.model().matrix(List.of(settings)), prepared.precision));
    double[][] moments = prepared.moments != null ? prepared.moments : request.model().moments(request.space().region());
    Design design = new Design(request.criterion().word() + " design of " + request.furnaces().length + " trials",
        request.space().factors(), runs, List.of());
    return new Found(design, m.logDeterminant(), Matrices.trace(m.inverse(), moments));
  }

  private Outcome run(Progress progress) {
    for (int pass = 0; pass < MOST_PASSES && pass(0); pass++) {
      progress.check();
    }
    for (double h = 0.25; request.polish() && h > FINEST; h /= 2) {
      for (int pass = 0; pass < MOST_PASSES && pass(h); pass++) {
        progress.check();
      }
    }
    double[][] x = model.matrix(List.of(settings));
    return new Outcome(settings, Information.exact(x, precision, moments));
  }

  /** Tries every coordinate once; h zero tries the steps, otherwise the settings at a distance h. */
  private boolean pass(double h) {
    information.refresh();
    boolean better = false;
    for (Groups.Group group : groups) {
      Factor factor = request.space().factors().get(group.factor());
      if (h == 0 || factor.codes().length == 0) {
        better |= group.trials().length == 1 ? single(group, h) : together(group, h);
      }
    }
    return better;
  }

  private double[] tries(Groups.Group group, double h) {
    double now = settings[group.trials()[0]][group.factor()];
    return h == 0 ? steps[group.factor()] : new double[] {Math.max(-1, now - h), Math.min(1, now + h)};
  }

  private boolean single(Groups.Group group, double h) {
    int i = group.trials()[0];
    int j = group.factor();
    int[] changed = columns[j];
    double now = settings[i][j];
    double most = h == 0 ? LEAST_GAIN : LEAST_FINE_GAIN;
    double best = now;
    double[] bestDelta = null;
    information.select(i);
    for (double value : tries(group, h)) {
      settings[i][j] = value;
      if (value == now || !request.space().allows(settings[i])) {
        continue;
      }
      double[] delta = new double[changed.length];
      for (int s = 0; s < delta.length; s++) {
        delta[s] = model.value(changed[s], settings[i]) - information.x[i][changed[s]];
      }
      double gain = information.gain(changed, delta);
      if (gain > most) {
        most = gain;
        best = value;
        bestDelta = delta;
      }
    }
    settings[i][j] = best;
    if (bestDelta != null) {
      information.apply(changed, bestDelta);
      if (most > 1e3) {
        // a leap out of a singular start leaves few digits in the updated inverse
        information.refresh();
      }
    }
    return bestDelta != null;
  }

  private boolean together(Groups.Group group, double h) {
    double now = settings[group.trials()[0]][group.factor()];
    double best = now;
    double least = criterion();
    double margin = (h == 0 ? LEAST_GAIN : LEAST_FINE_GAIN) * Math.max(1, Math.abs(least));
    for (double value : tries(group, h)) {
      if (value != now && allowed(group, value)) {
        set(group, value);
        double criterion = criterion();
        if (criterion < least - margin) {
          least = criterion;
          best = value;
        }
      }
    }
    set(group, best);
    if (best != now) {
      information = new Information(model.matrix(List.of(settings)), precision, moments);
    }
    return best != now;
  }

  private double criterion() {
    return Information.exact(model.matrix(List.of(settings)), precision, moments);
  }

  private boolean allowed(Groups.Group group, double value) {
    for (int t : group.trials()) {
      double[] setting = settings[t].clone();
      setting[group.factor()] = value;
      if (!request.space().allows(setting)) {
        return false;
      }
    }
    return true;
  }

  private void set(Groups.Group group, double value) {
    for (int t : group.trials()) {
      settings[t][group.factor()] = value;
    }
  }
}
