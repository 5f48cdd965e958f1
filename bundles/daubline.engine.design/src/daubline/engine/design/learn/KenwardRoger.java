package daubline.engine.design.learn;

import daubline.engine.stats.Cholesky;
import daubline.engine.stats.Matrices;

/**
 * Covariance and tests of the coefficients of a {@link MixedModel}, made larger and shorter of freedom for the variances
 * being estimated (Kenward &amp; Roger 1997, Biometrics 53, 983–997).
 */
public final class KenwardRoger {

  private final double[][] w;
  private final double[][] phi;
  private final double[] beta;
  private final double[][][] slopes;
  private final double[][] covariance;

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

  KenwardRoger(double[][] x, Grouping[] parts, double[][] w, double[][] vInverse, double[][] phi, double[] beta) {
    this.w = w;
    this.phi = phi;
    this.beta = beta;
    int k = parts.length;
    slopes = new double[k][][];
    double[][] vx = Matrices.times(vInverse, x);
    double[][][] vvx = new double[k][][];
    for (int i = 0; i < k; i++) {
      vvx[i] = parts[i].spread(vx);
      slopes[i] = Matrices.times(Matrices.transpose(vx), vvx[i]);
    }
    double[][] sum = new double[x[0].length][x[0].length];
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        double[][] q = Matrices.times(Matrices.transpose(vvx[i]), Matrices.times(vInverse, vvx[j]));
        double[][] pp = Matrices.times(slopes[i], Matrices.times(phi, slopes[j]));
        sum = Matrices.plus(sum, w[i][j], Matrices.plus(q, -1, pp));
      }
    }
    covariance = Matrices.plus(phi, 2, Matrices.times(phi, Matrices.times(sum, phi)));
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
    double[][] theta = Matrices.quadratic(rows, Cholesky.of(across(rows, phi)).inverse());
    double a1 = 0;
    double a2 = 0;
    double[][][] tp = new double[slopes.length][][];
    for (int i = 0; i < tp.length; i++) {
      // slopes carry a minus sign that drops out of every product of two
      tp[i] = Matrices.times(theta, Matrices.times(phi, Matrices.times(slopes[i], phi)));
    }
    for (int i = 0; i < tp.length; i++) {
      for (int j = 0; j < tp.length; j++) {
        a1 += w[i][j] * diagonal(tp[i]) * diagonal(tp[j]);
        a2 += w[i][j] * Matrices.trace(Matrices.transpose(tp[i]), tp[j]);
      }
    }
    double[] estimate = Matrices.times(rows, beta);
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
