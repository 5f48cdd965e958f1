package daubline.engine.design.learn;

import daubline.engine.design.Model;
import daubline.engine.stats.Matrices;
import java.util.Arrays;

/**
 * A fitted model, for predictions and response surfaces.
 *
 * @param model the model
 * @param kept the columns fitted
 * @param coefficients their coefficients
 * @param covariance the covariance of these; NaN without error
 * @param freedom the degrees of freedom of a prediction
 */
public record Fitted(Model model, int[] kept, double[] coefficients, double[][] covariance, double freedom) {

  /**
   * An expected outcome.
   *
   * @param mean the expectation
   * @param standardError its standard error
   * @param low the lower end of the interval
   * @param high the upper end
   */
  public record Expectation(double mean, double standardError, double low, double high) {
  }

  /** The expected outcome at a coded setting. */
  public Expectation at(double[] setting, double confidence) {
    double[] all = model.row(setting);
    double[] row = Arrays.stream(kept).mapToDouble(c -> all[c]).toArray();
    double mean = Matrices.dot(row, coefficients);
    double error = Math.sqrt(Matrices.dot(row, Matrices.times(covariance, row)));
    double reach = Tails.within(confidence, freedom) * error;
    return new Expectation(mean, error, mean - reach, mean + reach);
  }
}
