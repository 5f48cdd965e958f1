package daubline.engine.design.learn;

import daubline.engine.stats.Cholesky;
import daubline.engine.stats.Matrices;
import java.util.List;

/**
 * A linear model with random furnaces (and days): y = Xβ + ΣZu + e, fitted by restricted maximum likelihood with
 * Fisher scoring; tests and intervals after Kenward &amp; Roger 1997, Biometrics 53, 983–997.
 */
public final class MixedModel {

  private static final double[] RATIOS = {0, 0.02, 0.1, 0.3, 0.6, 1, 1.7, 3, 6, 12, 30, 100};
  private static final double[] FEW_RATIOS = {0, 0.3, 1, 3, 12};
  private static final int MOST_STEPS = 200;
  /** How near a negative variance may come to the value at which a group would have none left. */
  private static final double NEAREST = 0.98;

  private final double[] y;
  private final double[][] x;
  private final Grouping[] parts;
  private final boolean bounded;
  private double[] variances;
  private Solved solved;

  /** Everything at one set of variances. */
  private final class Solved {
    final double[][] vInverse;
    final double[][] phi;
    final double[] beta;
    final double[][] projection;
    final double[] py;
    final double criterion;

    private Solved(double[][] vInverse, double logV) {
      this.vInverse = vInverse;
      double[][] vx = Matrices.times(vInverse, x);
      Cholesky information = independent(Cholesky.of(Matrices.times(Matrices.transpose(x), vx)));
      phi = information.inverse();
      beta = Matrices.times(phi, Matrices.times(Matrices.transpose(vx), y));
      projection = Matrices.plus(vInverse, -1, Matrices.times(vx, Matrices.times(phi, Matrices.transpose(vx))));
      py = Matrices.times(projection, y);
      criterion = logV + information.logDeterminant() + Matrices.dot(y, py)
          + (y.length - x[0].length) * Math.log(2 * Math.PI);
    }
  }

  private MixedModel(double[] y, double[][] x, List<int[]> groupings, boolean bounded) {
    this.y = y;
    this.x = x;
    this.bounded = bounded;
    parts = new Grouping[groupings.size() + 1];
    for (int k = 0; k < groupings.size(); k++) {
      parts[k] = new Grouping(groupings.get(k));
    }
    parts[groupings.size()] = Grouping.alone(y.length);
  }

  /**
   * Fits.
   *
   * @param y the outcomes
   * @param x independent columns by rows
   * @param groupings for each stratum the group of each trial
   * @param bounded whether a variance between groups must not be negative. Left free, a negative estimate stands for
   *     groups more alike than chance, and keeps the intervals honest when there are few furnaces
   * @throws IllegalArgumentException when there are not more trials than columns, or the columns depend on each other
   */
  public static MixedModel fit(double[] y, double[][] x, List<int[]> groupings, boolean bounded) {
    if (y.length != x.length || y.length <= x[0].length) {
      throw new IllegalArgumentException(y.length + " trials cannot carry a model of " + x[0].length + " unknowns and "
          + "its error; leave out terms");
    }
    MixedModel model = new MixedModel(y, x, groupings, bounded);
    model.start();
    model.score();
    return model;
  }

  private Cholesky covariance(double[] at) {
    double[][] v = new double[y.length][y.length];
    for (int i = 0; i < v.length; i++) {
      for (int j = 0; j <= i; j++) {
        for (int k = 0; k < parts.length; k++) {
          v[i][j] += parts[k].together(i, j) ? at[k] : 0;
        }
      }
    }
    return Cholesky.of(v);
  }

  private Solved solve(double[] at) {
    Cholesky factored = covariance(at);
    return factored.isDefinite() ? new Solved(factored.inverse(), factored.logDeterminant()) : null;
  }

  /** The least value of a variance between groups: zero, or where the covariance of a whole group stays well above zero. */
  private double least(int k, double trial) {
    if (bounded) {
      return 0;
    }
    return -NEAREST * trial / parts[k].largest() / (parts.length - 1);
  }

  /** Looks at a coarse grid of ratios, so that scoring begins near the highest peak. */
  private void start() {
    double[] ratios = parts.length > 2 ? FEW_RATIOS : RATIOS;
    int[] index = new int[parts.length - 1];
    double best = Double.POSITIVE_INFINITY;
    boolean more = true;
    while (more) {
      double[] at = new double[parts.length];
      for (int k = 0; k < index.length; k++) {
        at[k] = ratios[index[k]];
      }
      at[parts.length - 1] = 1;
      double[] looked = look(at);
      if (looked[0] < best) {
        best = looked[0];
        variances = java.util.Arrays.stream(at).map(v -> v * looked[1]).toArray();
      }
      more = advance(index, ratios.length);
    }
    solved = solve(variances);
  }

  /** The criterion at ratios, with the best scale and that scale, at less cost than {@link Solved}. */
  private double[] look(double[] ratios) {
    Cholesky v = covariance(ratios);
    double[][] columns = Matrices.transpose(x);
    double[][] half = new double[columns.length][];
    for (int c = 0; c < half.length; c++) {
      half[c] = v.half(columns[c]);
    }
    double[] halfY = v.half(y);
    Cholesky information = independent(Cholesky.of(Matrices.times(half, Matrices.transpose(half))));
    double[] beta = information.half(Matrices.times(half, halfY));
    int freedom = y.length - x[0].length;
    double scale = Math.max((Matrices.dot(halfY, halfY) - Matrices.dot(beta, beta)) / freedom, Double.MIN_NORMAL);
    return new double[] {v.logDeterminant() + information.logDeterminant() + freedom * Math.log(scale), scale};
  }

  private static Cholesky independent(Cholesky information) {
    if (!information.isDefinite()) {
      throw new IllegalArgumentException("the columns of the model depend on each other in these trials");
    }
    return information;
  }

  private static boolean advance(int[] index, int length) {
    for (int k = 0; k < index.length; k++) {
      if (++index[k] < length) {
        return true;
      }
      index[k] = 0;
    }
    return false;
  }

  private void score() {
    for (int step = 0; step < MOST_STEPS; step++) {
      boolean[] held = held();
      double[] move = direction(held);
      double length = 1;
      Solved next = null;
      double[] at = null;
      for (int half = 0; half < 40 && (next == null || next.criterion > solved.criterion + 1e-12); half++) {
        at = moved(move, length);
        next = solve(at);
        length /= 2;
      }
      double change = change(at);
      if (next == null || next.criterion > solved.criterion + 1e-12) {
        return;
      }
      variances = at;
      solved = next;
      if (change < 1e-11) {
        return;
      }
    }
  }

  private boolean[] held() {
    boolean[] held = new boolean[parts.length];
    for (int k = 0; k < parts.length - 1; k++) {
      held[k] = variances[k] <= least(k, variances[parts.length - 1]) * (1 - 1e-9) && slope(k) <= 0;
    }
    return held;
  }

  /** Half the rise of the log likelihood with one variance, times two. */
  private double slope(int k) {
    return parts[k].quadratic(solved.py) - parts[k].trace(solved.projection);
  }

  private double[] direction(boolean[] held) {
    int[] free = java.util.stream.IntStream.range(0, held.length).filter(k -> !held[k]).toArray();
    double[][] information = information(free);
    double[] score = new double[free.length];
    for (int a = 0; a < free.length; a++) {
      score[a] = slope(free[a]) / 2;
    }
    double[] part = Cholesky.of(information).isDefinite() ? Cholesky.of(information).solve(score) : new double[free.length];
    double[] move = new double[held.length];
    for (int a = 0; a < free.length; a++) {
      move[free[a]] = part[a];
    }
    return move;
  }

  private double[][] information(int[] free) {
    double[][] information = new double[free.length][free.length];
    for (int a = 0; a < free.length; a++) {
      for (int b = 0; b <= a; b++) {
        information[a][b] = parts[free[a]].trace(solved.projection, parts[free[b]]) / 2;
        information[b][a] = information[a][b];
      }
    }
    return information;
  }

  private double[] moved(double[] move, double length) {
    double[] at = new double[move.length];
    int trial = at.length - 1;
    at[trial] = Math.max(variances[trial] + length * move[trial], variances[trial] * 1e-3);
    for (int k = 0; k < trial; k++) {
      at[k] = Math.max(variances[k] + length * move[k], least(k, at[trial]));
    }
    return at;
  }

  private double change(double[] at) {
    double change = 0;
    for (int k = 0; k < at.length; k++) {
      change = Math.max(change, Math.abs(at[k] - variances[k]) / variances[at.length - 1]);
    }
    return change;
  }

  /** The variances: one for each stratum, then the one between trials. */
  public double[] variances() {
    return variances.clone();
  }

  /** Minus twice the restricted log likelihood. */
  public double criterion() {
    return solved.criterion;
  }

  /** The coefficients. */
  public double[] coefficients() {
    return solved.beta.clone();
  }

  /** The covariance of the coefficients as if the variances were known. */
  public double[][] plainCovariance() {
    return solved.phi;
  }

  /** Kenward and Roger's adjusted inference, prepared once for all tests. */
  public KenwardRoger adjusted() {
    double[][] w = Cholesky.of(information(java.util.stream.IntStream.range(0, parts.length).toArray())).inverse();
    return new KenwardRoger(x, parts, w, solved.vInverse, solved.phi, solved.beta);
  }
}
