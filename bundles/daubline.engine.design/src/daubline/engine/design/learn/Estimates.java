package daubline.engine.design.learn;

import daubline.engine.design.Design;
import daubline.engine.design.Model;
import daubline.engine.stats.LeastSquares;
import daubline.engine.stats.Matrices;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The coefficients with the error of their own stratum, by the method that the trials allow.
 *
 * @param method how they were got
 * @param layers the strata that counted
 * @param kept the columns that can be told apart
 * @param coefficients of these
 * @param covariance of these; NaN without error
 * @param freedom the degrees of freedom of each; 0 without error
 * @param trialVariance between trials; NaN without error
 * @param furnaceVariance between furnaces; NaN when not asked
 * @param dayVariance between days; NaN when not asked
 */
record Estimates(EffectsReport.Method method, Layers layers, int[] kept, double[] coefficients, double[][] covariance, double[] freedom,
    double trialVariance, double furnaceVariance, double dayVariance) {

  /** With fewer degrees of freedom an interval from t says little; the half-normal plot of three effects or more says more. */
  private static final int LEAST_FREEDOM = 4;
  private static final int LEAST_PLOTTED = 3;

  static Estimates of(Design design, Model model, double[] y) {
    double[][] all = model.matrix(design.settings());
    int[] kept = LeastSquares.independent(all);
    double[][] x = Arrays.stream(all).map(r -> Arrays.stream(kept).mapToDouble(c -> r[c]).toArray()).toArray(double[][]::new);
    Layers layers = Layers.of(design, x);
    if (layers.any() && layers.freedom().trials() > 0 && y.length > kept.length + 1) {
      return stratified(design, x, kept, y, layers);
    }
    return alone(x, kept, y, layers);
  }

  private static Estimates alone(double[][] x, int[] kept, double[] y, Layers layers) {
    LeastSquares.Fit fit = LeastSquares.fit(x, y);
    boolean judged = fit.freedom() >= (kept.length - 1 < LEAST_PLOTTED ? 1 : LEAST_FREEDOM) && !layers.any();
    double variance = judged || fit.freedom() > 0 && !layers.any() ? fit.variance() : Double.NaN;
    double[][] covariance = scaled(fit.inverse(), variance);
    double[] freedom = new double[kept.length];
    Arrays.fill(freedom, judged ? fit.freedom() : 0);
    return new Estimates(judged ? EffectsReport.Method.LEAST_SQUARES : EffectsReport.Method.HALF_NORMAL, layers, kept, fit.coefficients(),
        covariance, freedom, variance, Double.NaN, Double.NaN);
  }

  private static double[][] scaled(double[][] m, double f) {
    return Arrays.stream(m).map(r -> Arrays.stream(r).map(v -> v * f).toArray()).toArray(double[][]::new);
  }

  /**
   * The variances between furnaces and days are left free to be negative for the intervals; bounded at zero the errors of furnace
   * effects come out too small when there are few furnaces. What is shown as variance is never below zero.
   */
  private static Estimates stratified(Design design, double[][] x, int[] kept, double[] y, Layers layers) {
    for (boolean bounded : new boolean[] {false, true}) {
      try {
        Estimates found = mixed(design, x, kept, y, layers, bounded);
        return found.tellsTooLittle() ? LayerByLayer.of(design, x, kept, y, layers).orElseGet(found::withoutLittle) : found;
      } catch (IllegalStateException e) {
        // no information about a variance between groups at this estimate: bounded, or without days, there may be
      }
    }
    Layers fewer = layers.days() ? layers.withoutDays(design, x) : layers;
    return layers.days() && fewer.any() ? stratified(design, x, kept, y, fewer) : alone(x, kept, y, fewer);
  }

  /** Less than one degree of freedom: the groups are so few that how far they differ is not known, and no interval from it says anything. */
  private boolean tellsTooLittle() {
    return IntStream.range(1, kept.length).anyMatch(c -> layers.freedom().ofColumn()[c] > 0 && !(freedom[c] >= 1));
  }

  /** The same without intervals where less than one degree of freedom stands behind them. */
  private Estimates withoutLittle() {
    return new Estimates(method, layers, kept, coefficients, covariance, Arrays.stream(freedom).map(f -> f >= 1 ? f : 0).toArray(), trialVariance, furnaceVariance, dayVariance);
  }

  private static Estimates mixed(Design design, double[][] x, int[] kept, double[] y, Layers layers, boolean bounded) {
    MixedModel mixed = MixedModel.fit(y, x, layers.groups(design), bounded);
    KenwardRoger adjusted = mixed.adjusted();
    double[] freedom = new double[kept.length];
    for (int c = 0; c < freedom.length; c++) {
      double[] one = new double[kept.length];
      one[c] = 1;
      freedom[c] = layers.freedom().ofColumn()[c] > 0 ? adjusted.freedom(one) : 0;
    }
    double[] v = mixed.variances();
    return new Estimates(layers.method(), layers, kept, mixed.coefficients(), adjusted.covariance(), freedom, v[v.length - 1],
        layers.furnaces() ? Math.max(0, v[0]) : Double.NaN, layers.days() ? Math.max(0, v[v.length - 2]) : Double.NaN);
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
