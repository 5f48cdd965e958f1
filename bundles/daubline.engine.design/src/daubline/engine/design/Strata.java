package daubline.engine.design;

import java.util.stream.IntStream;

/**
 * How much trials of one furnace, and of one day, resemble each other: the variance between furnaces and between days
 * as multiples of the variance between trials, so that V = I + furnace·ZZᵀ + day·YYᵀ.
 *
 * @param furnace zero or more; 1 is a cautious default while nothing is known
 * @param day zero or more
 */
public record Strata(double furnace, double day) {

  /** Trials that do not resemble each other more in one furnace than in two. */
  public static final Strata NONE = new Strata(0, 0);
  /** Furnaces as different as trials; days alike. The usual planning value in split-plot work (Jones &amp; Goos 2007). */
  public static final Strata USUAL = new Strata(1, 0);

  public Strata {
    if (!(furnace >= 0 && day >= 0) || Double.isInfinite(furnace + day)) {
      throw new IllegalArgumentException("variance ratios must be zero or more: furnace " + furnace + ", day " + day);
    }
  }

  /** V for these furnaces and days, in units of the variance between trials. */
  public double[][] covariance(int[] furnaces, int[] days) {
    int n = furnaces.length;
    double[][] v = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        v[i][j] = (i == j ? 1 : 0) + (furnaces[i] == furnaces[j] ? furnace : 0) + (days[i] == days[j] ? day : 0);
      }
    }
    return v;
  }

  /** V for a design. */
  public double[][] covariance(Design design) {
    return covariance(design.furnaces(), design.days());
  }

  /** The inverse of V. */
  public double[][] precision(int[] furnaces, int[] days) {
    if (furnace == 0 && day == 0) {
      return IntStream.range(0, furnaces.length).mapToObj(i -> {
        double[] row = new double[furnaces.length];
        row[i] = 1;
        return row;
      }).toArray(double[][]::new);
    }
    return daubline.engine.stats.Cholesky.of(covariance(furnaces, days)).inverse();
  }
}
