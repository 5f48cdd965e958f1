package daubline.engine.stats;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * First-order propagation of uncertainty (JCGM 100:2008, 5.1.2 and 5.2.2), with effective degrees of freedom (G.4.1) and
 * the second-order terms of independent inputs (note to 5.1.2).
 *
 * @param value the model at the means
 * @param sigma combined standard uncertainty, first order
 * @param secondOrder combined standard uncertainty with second-order terms, NaN when inputs are correlated
 * @param freedom effective degrees of freedom, infinite when every input's uncertainty is known
 * @param sensitivities derivative of the model by each input
 */
public record Propagation(double value, double sigma, double secondOrder, double freedom, double[] sensitivities) {

  /** Independent inputs. */
  public static Propagation of(ToDoubleFunction<double[]> model, List<Uncertain> inputs) {
    double[][] none = new double[inputs.size()][inputs.size()];
    for (int i = 0; i < none.length; i++) {
      none[i][i] = 1;
    }
    Propagation first = of(model, inputs, none);
    double more = new SecondOrder(model, inputs).variance();
    return new Propagation(first.value, first.sigma, Math.sqrt(Math.max(0, first.sigma * first.sigma + more)), first.freedom, first.sensitivities);
  }

  /**
   * Correlated inputs.
   *
   * @param correlation correlation of each pair of inputs, 1 on the diagonal
   */
  public static Propagation of(ToDoubleFunction<double[]> model, List<Uncertain> inputs, double[][] correlation) {
    double[] at = inputs.stream().mapToDouble(Uncertain::mean).toArray();
    double[] slopes = new double[at.length];
    for (int i = 0; i < at.length; i++) {
      slopes[i] = slope(model, at, i, inputs.get(i).sigma());
    }
    double variance = 0;
    double welch = 0;
    for (int i = 0; i < at.length; i++) {
      double own = slopes[i] * inputs.get(i).sigma();
      welch += Math.pow(own, 4) / inputs.get(i).freedom();
      for (int j = 0; j < at.length; j++) {
        variance += own * slopes[j] * inputs.get(j).sigma() * correlation[i][j];
      }
    }
    double sigma = Math.sqrt(Math.max(0, variance));
    return new Propagation(model.applyAsDouble(at), sigma, Double.NaN, welch > 0 ? Math.pow(sigma, 4) / welch : Double.POSITIVE_INFINITY, slopes);
  }

  /** Correlation of two results of the same inputs, first order (JCGM 100:2008, H.2.3). */
  public static double correlation(Propagation a, Propagation b, List<Uncertain> inputs, double[][] correlation) {
    double sum = 0;
    for (int i = 0; i < inputs.size(); i++) {
      for (int j = 0; j < inputs.size(); j++) {
        sum += a.sensitivities[i] * b.sensitivities[j] * inputs.get(i).sigma() * inputs.get(j).sigma() * correlation[i][j];
      }
    }
    return sum / (a.sigma * b.sigma);
  }

  private static double slope(ToDoubleFunction<double[]> model, double[] at, int i, double sigma) {
    if (sigma == 0) {
      return 0;
    }
    double step = sigma / 100;
    return (shifted(model, at, i, step) - shifted(model, at, i, -step)) / (2 * step);
  }

  private static double shifted(ToDoubleFunction<double[]> model, double[] at, int i, double step) {
    double[] moved = at.clone();
    moved[i] += step;
    return model.applyAsDouble(moved);
  }

  /** The terms ½ (f_ij)² + f_i f_ijj, times u_i² u_j², by central differences. */
  private record SecondOrder(ToDoubleFunction<double[]> model, List<Uncertain> inputs) {

    double variance() {
      double[] at = inputs.stream().mapToDouble(Uncertain::mean).toArray();
      double sum = 0;
      for (int i = 0; i < at.length; i++) {
        for (int j = 0; j < at.length; j++) {
          double ui = inputs.get(i).sigma();
          double uj = inputs.get(j).sigma();
          if (ui > 0 && uj > 0) {
            double mixed = mixed(at, i, j, ui, uj);
            double third = (curvature(at, i, ui / 2, j, uj) - curvature(at, i, -ui / 2, j, uj)) / ui;
            sum += (mixed * mixed / 2 + slope(model, at, i, ui) * third) * ui * ui * uj * uj;
          }
        }
      }
      return sum;
    }

    private double mixed(double[] at, int i, int j, double ui, double uj) {
      if (i == j) {
        return curvature(at, i, 0, i, ui);
      }
      double hi = ui / 2;
      double hj = uj / 2;
      return (two(at, i, hi, j, hj) - two(at, i, hi, j, -hj) - two(at, i, -hi, j, hj) + two(at, i, -hi, j, -hj)) / (4 * hi * hj);
    }

    private double curvature(double[] at, int i, double shift, int j, double uj) {
      double h = uj / 2;
      return (two(at, i, shift, j, h) - 2 * two(at, i, shift, j, 0) + two(at, i, shift, j, -h)) / (h * h);
    }

    private double two(double[] at, int i, double di, int j, double dj) {
      double[] moved = at.clone();
      moved[i] += di;
      moved[j] += dj;
      return model.applyAsDouble(moved);
    }
  }
}
