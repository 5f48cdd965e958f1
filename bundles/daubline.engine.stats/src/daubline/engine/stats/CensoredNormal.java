package daubline.engine.stats;

import java.util.Arrays;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * A linear model with normal errors of which some responses are known only to lie below a value (Tobin 1958, Econometrica
 * 26, 24–36), by maximum likelihood.
 *
 * @param coefficients intercept first, then one for each column
 * @param sigma standard deviation of the errors
 * @param logLikelihood logarithm of the likelihood at its maximum
 */
public record CensoredNormal(double[] coefficients, double sigma, double logLikelihood) {

  private static final int EVALUATIONS = 200_000;

  /**
   * Fits the model.
   *
   * @param columns predictors, one row for each observation; rows may be empty
   * @param y the responses, or the bound where it is censored
   * @param below whether a response is known only to lie at or below y
   */
  public static CensoredNormal fit(double[][] columns, double[] y, boolean[] below) {
    Scaling scaling = Scaling.of(columns);
    double[] start = new double[columns[0].length + 2];
    start[0] = mean(y);
    start[start.length - 1] = Math.log(Math.max(1e-12, spread(y)));
    for (int restart = 0; restart < 8; restart++) {
      start = climb(p -> logLikelihood(p, scaling.rows(), y, below), start);
    }
    double sigma = Math.exp(start[start.length - 1]);
    return new CensoredNormal(scaling.original(start), sigma, logLikelihood(start, scaling.rows(), y, below));
  }

  private static double[] climb(MultivariateFunction function, double[] start) {
    double[] steps = new double[start.length];
    Arrays.fill(steps, 0.5);
    return new SimplexOptimizer(new SimpleValueChecker(1e-15, 1e-14)).optimize(new MaxEval(EVALUATIONS), new ObjectiveFunction(function),
        GoalType.MAXIMIZE, new InitialGuess(start), new NelderMeadSimplex(steps)).getPoint();
  }

  private static double logLikelihood(double[] p, double[][] rows, double[] y, boolean[] below) {
    double logSigma = p[p.length - 1];
    double sum = 0;
    for (int i = 0; i < y.length; i++) {
      double mean = p[0];
      for (int c = 0; c < rows[i].length; c++) {
        mean += p[c + 1] * rows[i][c];
      }
      double z = (y[i] - mean) / Math.exp(logSigma);
      sum += below[i] ? Gaussian.logCdf(z) : -z * z / 2 - logSigma - Math.log(2 * Math.PI) / 2;
    }
    return sum;
  }

  private static double mean(double[] y) {
    return Arrays.stream(y).average().orElseThrow();
  }

  private static double spread(double[] y) {
    double mean = mean(y);
    return Math.sqrt(Arrays.stream(y).map(v -> (v - mean) * (v - mean)).average().orElseThrow());
  }

  /** Columns centred and scaled, so that the search is well conditioned. */
  private record Scaling(double[][] rows, double[] means, double[] spreads) {

    static Scaling of(double[][] columns) {
      int n = columns[0].length;
      double[] means = new double[n];
      double[] spreads = new double[n];
      double[][] rows = new double[columns.length][n];
      for (int c = 0; c < n; c++) {
        int column = c;
        double[] values = Arrays.stream(columns).mapToDouble(r -> r[column]).toArray();
        means[c] = mean(values);
        spreads[c] = Math.max(spread(values), 1e-300);
        for (int i = 0; i < rows.length; i++) {
          rows[i][c] = (values[i] - means[c]) / spreads[c];
        }
      }
      return new Scaling(rows, means, spreads);
    }

    double[] original(double[] p) {
      double[] b = new double[means.length + 1];
      b[0] = p[0];
      for (int c = 0; c < means.length; c++) {
        b[c + 1] = p[c + 1] / spreads[c];
        b[0] -= b[c + 1] * means[c];
      }
      return b;
    }
  }
}
