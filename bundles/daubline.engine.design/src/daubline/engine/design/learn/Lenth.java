package daubline.engine.design.learn;

import daubline.engine.stats.Quantiles;
import daubline.engine.stats.RandomStream;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Lenth's pseudo standard error (Lenth 1989, Technometrics 31, 469–473) for effects without a repeat, with critical
 * values by simulation (Ye &amp; Hamada 2000, J. Quality Technology 32, 57–66), since those from t are far too wide.
 *
 * @param first one and a half times the median size of the effects
 * @param error the pseudo standard error
 * @param single the ratio to it that one effect out of nothing exceeds with probability alpha
 * @param any the ratio that the largest of all exceeds with probability alpha
 */
public record Lenth(double first, double error, double single, double any) {

  private static final int SIMULATIONS = 40_000;

  /**
   * For effects with equal standard errors, the mean left out.
   *
   * @param effects three or more
   * @param alpha the rate of false alarms, such as 0.05
   * @param seed the seed of the simulation
   */
  public static Lenth of(double[] effects, double alpha, long seed) {
    if (effects.length < 3) {
      throw new IllegalArgumentException("Lenth's method needs three effects, not " + effects.length);
    }
    double first = 1.5 * median(effects, Double.POSITIVE_INFINITY);
    double[] critical = critical(effects.length, alpha, SIMULATIONS, seed);
    return new Lenth(first, error(effects), critical[0], critical[1]);
  }

  /** The pseudo standard error of effects. */
  static double error(double[] effects) {
    return 1.5 * median(effects, 2.5 * 1.5 * median(effects, Double.POSITIVE_INFINITY));
  }

  private static double median(double[] effects, double below) {
    double[] sizes = Arrays.stream(effects).map(Math::abs).filter(c -> c < below).toArray();
    return sizes.length == 0 ? 0 : Quantiles.of(sizes, 0.5)[0];
  }

  /** The critical ratios for one effect and for the largest of m, by simulation of m effects of nothing. */
  static double[] critical(int m, double alpha, int simulations, long seed) {
    long key = RandomStream.key(RandomStream.key(seed, "half-normal"), m);
    double[] singles = new double[simulations * m];
    double[] largest = new double[simulations];
    IntStream.range(0, simulations).parallel().forEach(s -> {
      double[] effects = new RandomStream(RandomStream.key(key, s)).normals(m);
      double error = error(effects);
      for (int i = 0; i < m; i++) {
        singles[s * m + i] = Math.abs(effects[i]) / error;
        largest[s] = Math.max(largest[s], singles[s * m + i]);
      }
    });
    return new double[] {Quantiles.of(singles, 1 - alpha)[0], Quantiles.of(largest, 1 - alpha)[0]};
  }

  /** The half-normal scores of m sizes in rising order: Φ⁻¹(½ + ½ (i − ½)/m). */
  public static double[] scores(int m) {
    org.hipparchus.distribution.continuous.NormalDistribution normal = new org.hipparchus.distribution.continuous.NormalDistribution();
    return IntStream.range(0, m).mapToDouble(i -> normal.inverseCumulativeProbability(0.5 + 0.5 * (i + 0.5) / m)).toArray();
  }
}
