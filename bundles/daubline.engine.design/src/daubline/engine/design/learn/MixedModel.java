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
  private static final int MOST_STEPS = 200;
  /** How near a negative variance may come to the value at which a group would have none left. */
  private static final double NEAREST = 0.98;

  private final double[] y;
  private final double[][] x;
  private final double[][][] parts;
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
      Cholesky information = Cholesky.of(Matrices.times(Matrices.transpose(x), vx));
      if (!information.isDefinite()) {
        throw new IllegalArgumentException("the columns of the model depend on each other in these trials");
      }
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
    int n = y.length;
    parts = new double[groupings.size() + 1][n][n];
    for (int k = 0; k < parts.length; k++) {
      int[] group = k < groupings.size() ? groupings.get(k) : null;
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          parts[k][i][j] = (group == null ? i == j : group[i] == group[j]) ? 1 : 0;
        }
      }
    }
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

  private Solved solve(double[] at) {
    double[][] v = new double[y.length][y.length];
    for (int k = 0; k < parts.length; k++) {
      v = Matrices.plus(v, at[k], parts[k]);
    }
    Cholesky factored = Cholesky.of(v);
    return factored.isDefinite() ? new Solved(factored.inverse(), factored.logDeterminant()) : null;
  }

  /** The least value of a variance between groups: zero, or where the covariance of a whole group stays well above zero. */
  private double least(int k, double trial) {
    if (bounded) {
      return 0;
    }
    double largest = 1;
    for (double[] row : parts[k]) {
      largest = Math.max(largest, java.util.Arrays.stream(row).sum());
    }
    return -NEAREST * trial / largest / (parts.length - 1);
  }

  /** Looks at a coarse grid of ratios, so that scoring begins near the highest peak. */
  private void start() {
    int[] index = new int[parts.length - 1];
    double best = Double.POSITIVE_INFINITY;
    double[] chosen = null;
    boolean more = true;
    while (more) {
      double[] at = new double[parts.length];
      for (int k = 0; k < index.length; k++) {
        at[k] = RATIOS[index[k]];
      }
      at[parts.length - 1] = 1;
      Solved s = solve(at);
      double scale = Math.max(Matrices.dot(y, s.py) / (y.length - x[0].length), Double.MIN_NORMAL);
      double criterion = s.criterion - Matrices.dot(y, s.py) + (y.length - x[0].length) * Math.log(scale);
      if (criterion < best) {
        best = criterion;
        chosen = java.util.Arrays.stream(at).map(v -> v * scale).toArray();
      }
      more = advance(index);
    }
    variances = chosen;
    solved = solve(chosen);
  }

  private static boolean advance(int[] index) {
    for (int k = 0; k < index.length; k++) {
      if (++index[k] < RATIOS.length) {
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
    return Matrices.dot(solved.py, Matrices.times(parts[k], solved.py)) - Matrices.trace(solved.projection, parts[k]);
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
    double[][][] products = new double[free.length][][];
    for (int a = 0; a < free.length; a++) {
      products[a] = Matrices.times(solved.projection, parts[free[a]]);
    }
    double[][] information = new double[free.length][free.length];
    for (int a = 0; a < free.length; a++) {
      for (int b = 0; b <= a; b++) {
        information[a][b] = Matrices.trace(Matrices.transpose(products[a]), products[b]) / 2;
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

  /**
   * The test of several combinations of the coefficients at once.
   *
   * @param f the scaled ratio
   * @param numerator how many combinations
   * @param freedom the degrees of freedom below the line
   * @param p the probability of a ratio as large by chance
   */
  public record Test(double f, int numerator, double freedom, double p) {
  }

  /** Kenward and Roger's adjusted inference, prepared once for all tests. */
  public Adjusted adjusted() {
    return new Adjusted();
  }

  /** The adjusted covariance and the tests made with it. */
  public final class Adjusted {

    private final double[][][] slopes = new double[parts.length][][];
    private final double[][] w;
    private final double[][] covariance;

    private Adjusted() {
      int k = parts.length;
      w = Cholesky.of(information(java.util.stream.IntStream.range(0, k).toArray())).inverse();
      double[][] vx = Matrices.times(solved.vInverse, x);
      double[][][] vvx = new double[k][][];
      for (int i = 0; i < k; i++) {
        vvx[i] = Matrices.times(parts[i], vx);
        slopes[i] = Matrices.times(Matrices.transpose(vx), vvx[i]);
      }
      double[][] sum = new double[x[0].length][x[0].length];
      for (int i = 0; i < k; i++) {
        for (int j = 0; j < k; j++) {
          double[][] q = Matrices.times(Matrices.transpose(vvx[i]), Matrices.times(solved.vInverse, vvx[j]));
          double[][] pp = Matrices.times(slopes[i], Matrices.times(solved.phi, slopes[j]));
          sum = Matrices.plus(sum, w[i][j], Matrices.plus(q, -1, pp));
        }
      }
      covariance = Matrices.plus(solved.phi, 2, Matrices.times(solved.phi, Matrices.times(sum, solved.phi)));
    }

    /** The covariance of the coefficients, made larger for the uncertainty of the variances. */
    public double[][] covariance() {
      return covariance;
    }

    /** The degrees of freedom of one combination of the coefficients. */
    public double freedom(double[] combination) {
      return test(new double[][] {combination}).freedom;
    }

    /** Tests rows of combinations against zero. */
    public Test test(double[][] rows) {
      int l = rows.length;
      double[][] theta = Matrices.quadratic(rows, Cholesky.of(across(rows, solved.phi)).inverse());
      double a1 = 0;
      double a2 = 0;
      double[][][] tp = new double[parts.length][][];
      for (int i = 0; i < tp.length; i++) {
        // slopes carry a minus sign that drops out of every product of two
        tp[i] = Matrices.times(theta, Matrices.times(solved.phi, Matrices.times(slopes[i], solved.phi)));
      }
      for (int i = 0; i < tp.length; i++) {
        for (int j = 0; j < tp.length; j++) {
          a1 += w[i][j] * diagonal(tp[i]) * diagonal(tp[j]);
          a2 += w[i][j] * Matrices.trace(Matrices.transpose(tp[i]), tp[j]);
        }
      }
      double[] estimate = Matrices.times(rows, solved.beta);
      double f = Matrices.dot(estimate, Cholesky.of(across(rows, covariance)).solve(estimate)) / l;
      return scaled(f, l, a1, a2);
    }

    private double[][] across(double[][] rows, double[][] c) {
      return Matrices.times(rows, Matrices.times(c, Matrices.transpose(rows)));
    }

    private double diagonal(double[][] m) {
      double sum = 0;
      for (int i = 0; i < m.length; i++) {
        sum += m[i][i];
      }
      return sum;
    }

    /** Equations (7)–(9) of Kenward and Roger. */
    private Test scaled(double f, int l, double a1, double a2) {
      if (l == 1) {
        // the equations reduce to this, without their pole at two degrees of freedom
        return new Test(f, 1, 2 / a2, Tails.f(f, 1, 2 / a2));
      }
      double b = (a1 + 6 * a2) / (2 * l);
      double g = ((l + 1) * a1 - (l + 4) * a2) / ((l + 2) * a2);
      double below = 3 * l + 2 * (1 - g);
      double c1 = g / below;
      double c2 = (l - g) / below;
      double c3 = (l + 2 - g) / below;
      double mean = 1 / (1 - a2 / l);
      double variance = 2.0 / l * (1 + c1 * b) / ((1 - c2 * b) * (1 - c2 * b) * (1 - c3 * b));
      double rho = variance / (2 * mean * mean);
      double m = 4 + (l + 2) / (l * rho - 1);
      double lambda = m / (mean * (m - 2));
      return new Test(lambda * f, l, m, Tails.f(lambda * f, l, m));
    }
  }
}
