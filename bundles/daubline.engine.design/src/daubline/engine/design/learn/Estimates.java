package daubline.engine.design.learn;

import daubline.engine.design.Design;
import daubline.engine.design.Model;
import daubline.engine.design.judge.Freedom;
import daubline.engine.stats.LeastSquares;
import daubline.engine.stats.Matrices;
import java.util.Arrays;
import java.util.List;

/**
 * The coefficients with the error of their own stratum, by the method that the trials allow.
 *
 * @param method how they were got
 * @param kept the columns that can be told apart
 * @param coefficients of these
 * @param covariance of these; NaN without error
 * @param freedom the degrees of freedom of each; 0 without error
 * @param trialVariance between trials; NaN without error
 * @param furnaceVariance between furnaces; NaN when not asked
 */
record Estimates(EffectsReport.Method method, int[] kept, double[] coefficients, double[][] covariance, double[] freedom,
    double trialVariance, double furnaceVariance) {

  /** With fewer degrees of freedom an interval from t says little; the half-normal plot says more. */
  private static final int LEAST_FREEDOM = 4;

  static Estimates of(Design design, Model model, double[] y) {
    double[][] all = model.matrix(design.settings());
    int[] kept = LeastSquares.independent(all);
    double[][] x = Arrays.stream(all).map(r -> Arrays.stream(kept).mapToDouble(c -> r[c]).toArray()).toArray(double[][]::new);
    Freedom freedom = Freedom.of(design, x, false);
    if (design.sharesFurnaces() && freedom.trials() > 0 && y.length > kept.length + 1) {
      return withFurnaces(design, x, kept, y, freedom);
    }
    return alone(x, kept, y, design.sharesFurnaces());
  }

  private static Estimates alone(double[][] x, int[] kept, double[] y, boolean shares) {
    LeastSquares.Fit fit = LeastSquares.fit(x, y);
    boolean judged = fit.freedom() >= LEAST_FREEDOM && !shares;
    double variance = judged || fit.freedom() > 0 && !shares ? fit.variance() : Double.NaN;
    double[][] covariance = scaled(fit.inverse(), variance);
    double[] freedom = new double[kept.length];
    Arrays.fill(freedom, judged ? fit.freedom() : 0);
    return new Estimates(judged ? EffectsReport.Method.LEAST_SQUARES : EffectsReport.Method.HALF_NORMAL, kept, fit.coefficients(),
        covariance, freedom, variance, Double.NaN);
  }

  private static double[][] scaled(double[][] m, double f) {
    return Arrays.stream(m).map(r -> Arrays.stream(r).map(v -> v * f).toArray()).toArray(double[][]::new);
  }

  /**
   * The furnaces' variance is left free to be negative for the intervals; bounded at zero the errors of furnace effects
   * come out too small when there are few furnaces. What is shown as variance is never below zero.
   */
  private static Estimates withFurnaces(Design design, double[][] x, int[] kept, double[] y, Freedom left) {
    MixedModel mixed = MixedModel.fit(y, x, List.of(design.furnaces()), false);
    KenwardRoger adjusted;
    try {
      adjusted = mixed.adjusted();
    } catch (IllegalStateException e) {
      // no information about the furnaces' variance at this estimate
      mixed = MixedModel.fit(y, x, List.of(design.furnaces()), true);
      adjusted = mixed.adjusted();
    }
    double[] freedom = new double[kept.length];
    for (int c = 0; c < freedom.length; c++) {
      double[] one = new double[kept.length];
      one[c] = 1;
      freedom[c] = left.ofColumn()[c] > 0 ? adjusted.freedom(one) : 0;
    }
    return new Estimates(EffectsReport.Method.FURNACES, kept, mixed.coefficients(), adjusted.covariance(), freedom,
        mixed.variances()[1], Math.max(0, mixed.variances()[0]));
  }

  /** Coefficients divided by what their standard errors would be for a variance of one. */
  double[] standardised(Design design, Model model) {
    double[][] x = Arrays.stream(model.matrix(design.settings()))
        .map(r -> Arrays.stream(kept).mapToDouble(c -> r[c]).toArray()).toArray(double[][]::new);
    double[][] inverse = daubline.engine.stats.Cholesky.of(Matrices.square(x)).inverse();
    double[] scaled = new double[kept.length];
    for (int c = 0; c < scaled.length; c++) {
      scaled[c] = coefficients[c] / Math.sqrt(inverse[c][c]);
    }
    return scaled;
  }
}
