package daubline.engine.inference.kernel;

import java.util.List;

/**
 * Where the normal deviates of a number come from when it was worked out of parts that other criteria read too: a weighted
 * sum of the deviates of the parts.
 *
 * @param names names of the parts; none for a number of its own
 * @param loadings weight of each part; their squares sum to one
 */
public record Mixture(List<String> names, List<Double> loadings) {

  /** A number that shares nothing. */
  public static final Mixture OWN = new Mixture(List.of(), List.of());

  public Mixture {
    names = List.copyOf(names);
    loadings = List.copyOf(loadings);
  }

  /** The logarithm of the ratio of two parts of equal uncertainty. */
  public static Mixture ratio(String numerator, String denominator) {
    return new Mixture(List.of(numerator, denominator), List.of(Math.sqrt(0.5), -Math.sqrt(0.5)));
  }

  /** Standard normal deviates; not to be changed. */
  double[] normals(Draws draws) {
    if (names.isEmpty()) {
      return draws.normals(0);
    }
    double[] mixed = new double[draws.count()];
    for (int i = 0; i < names.size(); i++) {
      double[] part = draws.named(names.get(i)).normals(0);
      double loading = loadings.get(i);
      for (int m = 0; m < mixed.length; m++) {
        mixed[m] += loading * part[m];
      }
    }
    return mixed;
  }
}
