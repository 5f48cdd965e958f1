package daubline.engine.design;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Three factors that are shares of one whole: what one gains the others lose, so that no trial can change one of them alone.
 *
 * @param parts the indices of the factors, rising
 * @param whole what they add up to, in their unit, above zero
 */
public record Mixture(int[] parts, double whole) {

  /** Shares weighed out on a scale need not add up more closely than this (common practice, no source). */
  private static final double CLOSE = 0.01;
  private static final int PARTS = 3;
  private static final int LEAST_TRIALS = 3;

  public Mixture {
    parts = parts.clone();
  }

  /** The first three measured factors of one unit that add up to the same whole in every trial; empty when there are none. */
  public static Optional<Mixture> of(Design design) {
    List<Factor> factors = design.factors();
    int[] measured = IntStream.range(0, factors.size()).filter(j -> !factors.get(j).isCategory()).toArray();
    for (int a = 0; a < measured.length; a++) {
      for (int b = a + 1; b < measured.length; b++) {
        for (int c = b + 1; c < measured.length; c++) {
          Optional<Mixture> found = of(design, measured[a], measured[b], measured[c]);
          if (found.isPresent()) {
            return found;
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Mixture> of(Design design, int... three) {
    String unit = design.factors().get(three[0]).unit();
    boolean oneUnit = IntStream.of(three).allMatch(j -> design.factors().get(j).unit().equals(unit));
    double[][] shares = design.settings().stream().map(s -> shares(design.factors(), three, s)).toArray(double[][]::new);
    double whole = Arrays.stream(shares).mapToDouble(s -> Arrays.stream(s).sum()).average().orElse(0);
    boolean adds = Arrays.stream(shares).allMatch(s -> Math.abs(Arrays.stream(s).sum() - whole) <= CLOSE * whole && Arrays.stream(s).allMatch(v -> v >= 0));
    // what never changed is no part of a mixture that was varied
    boolean varied = IntStream.range(0, PARTS).allMatch(k -> Arrays.stream(shares).mapToDouble(s -> s[k]).distinct().count() > 1);
    return oneUnit && adds && varied && whole > 0 && shares.length >= LEAST_TRIALS ? Optional.of(new Mixture(three, whole)) : Optional.empty();
  }

  private static double[] shares(List<Factor> factors, int[] parts, double[] setting) {
    return IntStream.of(parts).mapToDouble(j -> factors.get(j).decode(setting[j])).toArray();
  }

  /** The three parts of a coded setting, in their unit. */
  public double[] shares(List<Factor> factors, double[] setting) {
    return shares(factors, parts, setting);
  }

  /** A coded setting with these parts in place of its own. */
  public double[] with(List<Factor> factors, double[] setting, double... shares) {
    double[] changed = setting.clone();
    for (int k = 0; k < PARTS; k++) {
      changed[parts[k]] = factors.get(parts[k]).code(shares[k]);
    }
    return changed;
  }

  /** Whether a factor is one of the parts. */
  public boolean holds(int factor) {
    return IntStream.of(parts).anyMatch(j -> j == factor);
  }

  /** The names of the parts. */
  public List<String> names(List<Factor> factors) {
    return IntStream.of(parts).mapToObj(j -> factors.get(j).name()).toList();
  }
}
